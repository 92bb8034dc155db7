// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.Change;
import org.silverwake.cli.scenario.ScenarioInput.HistoryPlan;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.fish.FishYears;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.BedYears;
import org.silverwake.model.transport.History;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.YearsResult;

/** River and bed through the years, as the scenario's history says. */
final class HistoryStep {
    private static final String CONTENT = "bed-content";

    private HistoryStep() {}

    static Optional<YearsRun> run(
            ScenarioInput scenario, Basin basin, SteadyResult steady, Screening screening, Optional<FishRun> fish) {
        if (scenario.history().isEmpty()) {
            return Optional.empty();
        }
        HistoryPlan plan = scenario.history().get();
        List<Measure> measures = measures(scenario, screening);
        List<SampledPart> parts =
                measures.stream().map(m -> (SampledPart) m.observable()).toList();
        History history = new History(plan.years(), eras(scenario, basin), plan.order(), content(plan, basin));
        YearsResult years = BedYears.run(steady, history, parts);
        return Optional.of(new YearsRun(
                plan.firstYear(),
                scenario.mercury().substances(),
                measures,
                years,
                fish.filter(FishRun::isModelled).map(run -> through(run, years, measures, plan, scenario)),
                history.isTogether()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(difference(years, BedYears.run(steady, together(history), List.of())))));
    }

    private static FishYears through(
            FishRun fish, YearsResult years, List<Measure> measures, HistoryPlan plan, ScenarioInput scenario) {
        int present = scenario.project().date().getYear() - plan.firstYear();
        return FishYears.of(fish, years.mean(measures.indexOf(YearsRun.FISH)), present);
    }

    private static History together(History history) {
        return new History(history.years(), history.eras(), List.of(), history.content());
    }

    private static double difference(YearsResult years, YearsResult other) {
        double worst = 0;
        int reaches = years.input().hydraulics().reaches().size();
        for (int r = 0; r < reaches; r++) {
            double least = Double.POSITIVE_INFINITY;
            for (int year = 0; year < years.years(); year++) {
                least = Math.min(least, years.bed().low(year, r));
            }
            for (int year = 0; year < years.years(); year++) {
                double here = years.bed().high(year, r);
                if (here > 2 * least) {
                    worst = Math.max(worst, Math.abs(other.bed().high(year, r) - here) / here);
                }
            }
        }
        return worst;
    }

    /** What is kept of the water: total mercury always, what fish take up, and what guidelines of river water are values of. */
    private static List<Measure> measures(ScenarioInput scenario, Screening screening) {
        Set<Substance> carried = scenario.mercury().substances();
        Set<Measure> measures = new LinkedHashSet<>(List.of(Measure.WHOLE_WATER, Measure.FILTERED_WATER));
        if (carried.contains(Substance.METHYLMERCURY)) {
            measures.add(YearsRun.FISH);
        }
        for (Guideline guideline : screening.compared()) {
            ReachValues.measure(guideline.observable(), carried)
                    .filter(measure -> measure.medium() == Medium.SURFACE_WATER
                            && measure.substance() != Substance.SUSPENDED_SOLIDS)
                    .ifPresent(measures::add);
        }
        return List.copyOf(measures);
    }

    /** Eras begin where a change does, and a practice in force; every year while drums go on losing mercury. None without a history. */
    static List<History.Era> eras(ScenarioInput scenario, Basin basin) {
        if (scenario.history().isEmpty()) {
            return List.of();
        }
        HistoryPlan plan = scenario.history().get();
        Set<Integer> years = new TreeSet<>(List.of(plan.firstYear()));
        plan.changes().forEach(change -> years.add(change.year()));
        int last = plan.firstYear() + plan.years() - 1;
        for (OfferedPractice offered : scenario.fieldNotes().practicesInForce()) {
            int start = Math.max(plan.firstYear(), offered.practice().startYear());
            int until = offered.practice().bleed().isPresent() ? last : start;
            for (int year = start; year <= Math.min(until, last); year++) {
                years.add(year);
            }
        }
        List<History.Era> eras = new ArrayList<>();
        for (int year : years) {
            List<ScenarioInput.Site> sites =
                    NotedSites.expand(scenario.fieldNotes(), NotedSites.inForce(scenario.fieldNotes()), year);
            List<SiteRelease> releases = MercuryStep.releases(scenario, basin, sites);
            List<SiteRelease> then = new ArrayList<>();
            for (int i = 0; i < sites.size(); i++) {
                then.add(releases.get(i).times(factor(sites.get(i), plan.changes(), year)));
            }
            eras.add(new History.Era(year - plan.firstYear(), then));
        }
        return eras;
    }

    /** The latest change that holds for a site by a year; as stated before any. */
    private static double factor(ScenarioInput.Site site, List<Change> changes, int year) {
        double factor = 1;
        for (Change change : changes) {
            if (change.year() <= year && change.holdsFor(site)) {
                factor = change.factor();
            }
        }
        return factor;
    }

    private static Optional<List<Double>> content(HistoryPlan plan, Basin basin) {
        boolean mapped = false;
        List<Double> content = new ArrayList<>();
        for (int r = 0; r < basin.network().size(); r++) {
            Double own = basin.reach(r).numbers().get(CONTENT);
            mapped |= own != null;
            content.add(own != null ? own : plan.bedContent().orElse(0));
        }
        return mapped || plan.bedContent().isPresent() ? Optional.of(content) : Optional.empty();
    }
}
