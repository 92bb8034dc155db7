// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.SitePath;
import org.silverwake.model.release.Spread;
import org.silverwake.model.release.YearBalance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/**
 * Mercury of a year in each scenario: what sites release by path, where else it goes by field notes, and what becomes of it in
 * the river by process and bound.
 */
final class MercuryByPath {
    private MercuryByPath() {}

    /** Lowest and highest over the extremes of an unknown split [kg/yr]. */
    record Amount(double low, double high) {}

    /**
     * One line.
     *
     * @param bound empty for what does not depend on it
     * @param amounts by scenario
     */
    record Row(String what, Optional<Bound> bound, List<Amount> amounts) {
        Row {
            amounts = List.copyOf(amounts);
        }
    }

    static List<Row> rows(Comparison comparison) {
        List<Row> rows = new ArrayList<>();
        List<Outcome> outcomes =
                comparison.scenarios().stream().map(NamedOutcome::outcome).toList();
        Set<ReleasePath> paths = EnumSet.noneOf(ReleasePath.class);
        outcomes.forEach(o -> o.scenario().sites().forEach(site -> paths.add(site.path())));
        for (ReleasePath path : paths) {
            rows.add(new Row(
                    "released, " + Words.path(path),
                    Optional.empty(),
                    outcomes.stream().map(o -> released(o, path)).toList()));
        }
        if (outcomes.stream().anyMatch(o -> !o.scenario().fieldNotes().noted().isEmpty())) {
            byNotes(rows, outcomes, "by field notes, used", YearBalance::used);
            byNotes(rows, outcomes, "by field notes, to the air (vapor hazard)", YearBalance::air);
            byNotes(rows, outcomes, "by field notes, in tailings kept", year -> year.rate(SitePath.KEPT));
            byNotes(rows, outcomes, "by field notes, got back", year -> year.sum(SitePath::isRecovered));
            byNotes(rows, outcomes, "by field notes, left in the gold", year -> year.rate(SitePath.PRODUCT));
        }
        Set<Bound> bounds = EnumSet.allOf(Bound.class);
        outcomes.forEach(o -> bounds.retainAll(o.result().bounds()));
        for (Balance.Process process : Balance.Process.values()) {
            for (Bound bound : bounds) {
                List<Amount> amounts =
                        outcomes.stream().map(o -> process(o, bound, process)).toList();
                if (amounts.stream().anyMatch(a -> a.high() > 0)) {
                    rows.add(new Row(Words.process(process), Optional.of(bound), amounts));
                }
            }
        }
        return rows;
    }

    private static void byNotes(
            List<Row> rows, List<Outcome> outcomes, String what, ToDoubleFunction<YearBalance> number) {
        rows.add(new Row(
                what,
                Optional.empty(),
                outcomes.stream().map(o -> byNotes(o, number)).toList()));
    }

    private static Amount byNotes(Outcome outcome, ToDoubleFunction<YearBalance> number) {
        FieldNotesPlan plan = outcome.scenario().fieldNotes();
        double low = 0;
        double high = 0;
        for (ScenarioInput.Site site : plan.sites()) {
            Optional<SiteBalance> balance = NotedSites.balance(plan, site);
            if (balance.isPresent()) {
                Spread range = balance.get().range(number);
                low += range.low() * Quantity.SECONDS_PER_YEAR;
                high += range.high() * Quantity.SECONDS_PER_YEAR;
            }
        }
        return new Amount(low, high);
    }

    private static Amount released(Outcome outcome, ReleasePath path) {
        double year = 0;
        List<ScenarioInput.Site> sites = outcome.scenario().sites();
        for (int i = 0; i < sites.size(); i++) {
            if (sites.get(i).path() == path) {
                year += outcome.result().input().meanRelease(i);
            }
        }
        return new Amount(year * Quantity.SECONDS_PER_YEAR, year * Quantity.SECONDS_PER_YEAR);
    }

    private static Amount process(Outcome outcome, Bound bound, Balance.Process process) {
        SteadyResult result = outcome.result();
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int v = 0; v < result.variants(); v++) {
            double year = result.yearly(bound, v, process) * Quantity.SECONDS_PER_YEAR;
            low = Math.min(low, year);
            high = Math.max(high, year);
        }
        return new Amount(low, high);
    }
}
