// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * By how much sites' releases must fall for all limits to be met, whatever the practice that does it. Solids and water stay as
 * they are, so that each value is a background and a contribution of each site, which falls as its release does:
 * {@code background + Σ contribution (1 - cut) ≤ allowed}.
 *
 * <p>Where the background and what falls with no cut exceed a limit, no cut meets it: then its sites are cut in full, and the
 * answer says what remains.
 */
public final class ReleaseCuts {
    private final List<Limit> limits;
    private final double[] background;
    private final double[][] contributions;
    private final double[] releases;

    private ReleaseCuts(List<Limit> limits, double[] background, double[][] contributions, double[] releases) {
        this.limits = limits;
        this.background = background;
        this.contributions = contributions;
        this.releases = releases;
    }

    /**
     * Cuts for these releases.
     *
     * @param background value at each limit with no site's release [any], ≥ 0
     * @param contributions by limit, then by site: what its release adds to the value [any], ≥ 0
     * @param releases what each site releases [kg/a], ≥ 0
     * @throws IllegalArgumentException if counts differ or a number is negative or not finite
     */
    public static ReleaseCuts of(List<Limit> limits, double[] background, double[][] contributions, double[] releases) {
        if (limits.isEmpty() || background.length != limits.size() || contributions.length != limits.size()) {
            throw new IllegalArgumentException(limits.size() + " limits, backgrounds at " + background.length
                    + ", contributions at " + contributions.length);
        }
        check(background, limits.size());
        check(releases, releases.length);
        double[][] own = new double[contributions.length][];
        for (int j = 0; j < own.length; j++) {
            check(contributions[j], releases.length);
            own[j] = contributions[j].clone();
        }
        return new ReleaseCuts(List.copyOf(limits), background.clone(), own, releases.clone());
    }

    private static void check(double[] numbers, int count) {
        if (numbers.length != count) {
            throw new IllegalArgumentException(count + " numbers expected, not " + numbers.length);
        }
        for (double number : numbers) {
            if (!(number >= 0) || Double.isInfinite(number)) {
                throw new IllegalArgumentException("Not a finite number from 0: " + number);
            }
        }
    }

    /** The smallest cut that, the same for all sites, meets all limits: at each limit (value - allowed) / contributions. */
    public Cut equal() {
        double cut = 0;
        for (int j = 0; j < limits.size(); j++) {
            double sum = sum(contributions[j]);
            double over = background[j] + sum - limits.get(j).allowed();
            if (over > 0 && sum > 0) {
                cut = Math.max(cut, Math.min(1, over / sum));
            }
        }
        double[] cuts = new double[releases.length];
        Arrays.fill(cuts, cut);
        return cut(cuts, new double[releases.length]);
    }

    /**
     * The cheapest cuts that meet all limits, by linear programming; of cuts that cost the same the earlier site's.
     *
     * @param costs what it costs to keep a kilogram out, at each site [currency/kg], ≥ 0
     * @throws IllegalArgumentException if there is not one cost for each site, or one is negative
     */
    public Cut leastCost(double[] costs) {
        check(costs, releases.length);
        List<Option> sites = new ArrayList<>();
        double[][] slopes = new double[limits.size()][releases.length];
        double[] none = new double[limits.size()];
        double[] ceilings = new double[limits.size()];
        for (int s = 0; s < releases.length; s++) {
            sites.add(new Option("cut", "site " + s, "", CostRange.of(costs[s] * releases[s]), releases[s]));
        }
        for (int j = 0; j < limits.size(); j++) {
            none[j] = background[j] + sum(contributions[j]);
            for (int s = 0; s < releases.length; s++) {
                slopes[j][s] = -contributions[j][s];
            }
            ceilings[j] = Math.max(1, background[j] / limits.get(j).allowed());
        }
        LinearProgram program = new Question(sites, limits, Adoption.PARTIAL, Level.MIDDLE)
                .under(LinearResponse.of(none, slopes), ceilings);
        Optional<double[]> cuts = Search.solve(program).unknowns();
        return cut(cuts.orElseThrow(() -> new IllegalStateException("No cuts meet what full cuts meet")), costs);
    }

    private Cut cut(double[] cuts, double[] costs) {
        double kilograms = 0;
        double cost = 0;
        for (int s = 0; s < cuts.length; s++) {
            kilograms += cuts[s] * releases[s];
            cost += cuts[s] * releases[s] * costs[s];
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int j = 0; j < limits.size(); j++) {
            double value = background[j];
            for (int s = 0; s < cuts.length; s++) {
                value += contributions[j][s] * (1 - cuts[s]);
            }
            outcomes.add(new Outcome(limits.get(j), background[j] + sum(contributions[j]), value));
        }
        return new Cut(Runs.key(cuts), kilograms, cost, outcomes);
    }

    private static double sum(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }
}
