// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Planned.Choice;
import org.silverwake.cli.run.Planned.Held;
import org.silverwake.model.planning.Cut;
import org.silverwake.model.planning.Limit;
import org.silverwake.model.planning.ReleaseCuts;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.TransportInput;

/** By how much releases must fall, whatever does it, at the solids and water of the run. */
record SiteCuts(Cut equal, Optional<Cut> cheapest) {
    /**
     * What each discharge point contributes is what goes with its mercury alone; contributions are scaled to add up to the
     * value less its background, as the highest estimate may rest on one extreme here and another there.
     */
    static SiteCuts of(Outcome outcome, List<Held> held, List<Choice> choices) {
        TransportInput input = outcome.result().input();
        int sites = input.sites().size();
        double[] value = values(outcome, held, input);
        double[] background = values(outcome, held, without(input, -1));
        double[][] contributions = new double[held.size()][sites];
        for (int i = 0; i < sites; i++) {
            double[] rest = values(outcome, held, without(input, i));
            for (int k = 0; k < held.size(); k++) {
                contributions[k][i] = Math.max(0, value[k] - rest[k]);
            }
        }
        for (int k = 0; k < held.size(); k++) {
            double sum = Arrays.stream(contributions[k]).sum();
            double all = Math.max(0, value[k] - background[k]);
            for (int i = 0; i < sites && sum > 0; i++) {
                contributions[k][i] *= all / sum;
            }
        }
        double[] releases = new double[sites];
        for (int i = 0; i < sites; i++) {
            releases[i] = input.meanRelease(i) * Quantity.SECONDS_PER_YEAR;
        }
        List<Limit> limits = held.stream().map(Held::limit).toList();
        ReleaseCuts cuts = ReleaseCuts.of(limits, background, contributions, releases);
        return new SiteCuts(cuts.equal(), prices(outcome, choices).map(cuts::leastCost));
    }

    /** The same river with a discharge point's mercury left out, or that of all (-1). */
    private static TransportInput without(TransportInput input, int site) {
        List<SiteRelease> sites = new ArrayList<>();
        for (int i = 0; i < input.sites().size(); i++) {
            SiteRelease each = input.sites().get(i);
            sites.add(site < 0 || site == i ? each.withoutMercury() : each);
        }
        return input.withSites(sites);
    }

    private static double[] values(Outcome outcome, List<Held> held, TransportInput input) {
        Rerun run = Rerun.of(outcome, input);
        return held.stream()
                .mapToDouble(h -> PlanRun.value(outcome, run, h).orElse(0.0))
                .toArray();
    }

    /** Least cost of a kilogram kept out by any practice at each discharge point's site; empty where some site has none. */
    private static Optional<double[]> prices(Outcome outcome, List<Choice> choices) {
        var sites = outcome.scenario().sites();
        double[] prices = new double[sites.size()];
        for (int i = 0; i < prices.length; i++) {
            String where = sites.get(i).where();
            double least = choices.stream()
                    .filter(c -> c.site().where().equals(where) && c.option().kilograms() > 0)
                    .mapToDouble(c ->
                            Math.max(0, c.option().cost().middle()) / c.option().kilograms())
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            prices[i] = least;
        }
        return Arrays.stream(prices).allMatch(Double::isFinite) ? Optional.of(prices) : Optional.empty();
    }
}
