// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.silverwake.cli.scenario.Carried;
import org.silverwake.cli.scenario.GuidelineFiles;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineChoice;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Receptor;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.ScreeningRule;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SuspendedValues;

/**
 * Step 7: values by reach and state for screening, and the guidelines chosen. Where a site's split is not known, the low
 * bound is the lower of the two extremes and the high bound the higher.
 */
final class ScreeningStep {
    private ScreeningStep() {}

    /**
     * What screening gave, with jurisdictions' gaps in words.
     *
     * @param screening answers
     * @param gaps "no national value" lines
     */
    record Outcome(Screening screening, List<String> gaps) {}

    static Outcome run(
            ScenarioInput scenario,
            Basin basin,
            SteadyResult result,
            Optional<Cyanide> cyanide,
            ReachClasses classes,
            Breaks breaks,
            Optional<FishRun> fish) {
        List<String> gaps = new ArrayList<>();
        List<Guideline> general = chosen(scenario, gaps);
        List<Guideline> all = withThoseOf(classes, scenario, general);
        Screening screening = Screening.of(
                values(scenario, basin, result, cyanide, breaks, all, fish),
                all,
                receptors(scenario, basin),
                ScreeningRule.of(scenario.settings()),
                GuidelineChoice.of(general.stream().map(Guideline::id).toList(), classes.groups()));
        return new Outcome(screening, List.copyOf(gaps));
    }

    private static List<Guideline> withThoseOf(ReachClasses classes, ScenarioInput scenario, List<Guideline> general) {
        Map<String, Guideline> all = new LinkedHashMap<>();
        general.forEach(g -> all.put(g.id(), g));
        GuidelineLibrary library = GuidelineFiles.library(scenario.guidelines().ownTable());
        classes.groups().stream()
                .flatMap(group -> group.guidelines().stream())
                .forEach(id -> all.putIfAbsent(id, library.require(id)));
        return List.copyOf(all.values());
    }

    static List<Guideline> chosen(ScenarioInput scenario, List<String> gaps) {
        Map<String, Guideline> chosen = new LinkedHashMap<>();
        GuidelineLibrary library = GuidelineFiles.library(scenario.guidelines().ownTable());
        for (String id : scenario.guidelines().ids()) {
            chosen.put(id, library.require(id));
        }
        scenario.guidelines().jurisdiction().ifPresent(name -> {
            GuidelineLibrary.Selection selection = library.forJurisdiction(name);
            selection.guidelines().forEach(g -> chosen.putIfAbsent(g.id(), g));
            gaps.addAll(selection.gaps());
        });
        return List.copyOf(chosen.values());
    }

    private static List<Receptor> receptors(ScenarioInput scenario, Basin basin) {
        List<PlacedPoint> points = basin.points("place");
        List<Receptor> receptors = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            ScenarioInput.Place place = scenario.places().get(i);
            receptors.add(new Receptor(
                    place.name(), OptionalInt.of(basin.reachAt(points.get(i))), place.people(), kind(place.uses())));
        }
        return receptors;
    }

    private static Receptor.Kind kind(List<PlaceUse> uses) {
        if (uses.contains(PlaceUse.DRINKING_INTAKE) || uses.contains(PlaceUse.RIVERSIDE_WELL)) {
            return Receptor.Kind.INTAKE;
        }
        return uses.contains(PlaceUse.VILLAGE) || uses.contains(PlaceUse.SCHOOL)
                ? Receptor.Kind.VILLAGE
                : Receptor.Kind.OTHER;
    }

    private static ReachValues values(
            ScenarioInput scenario,
            Basin basin,
            SteadyResult result,
            Optional<Cyanide> cyanide,
            Breaks breaks,
            List<Guideline> guidelines,
            Optional<FishRun> fish) {
        int n = basin.network().size();
        SuspendedValues solids = new SuspendedValues(result);
        ReachValues.Builder builder = ReachValues.builder(
                n,
                scenario.states().stream().map(ScenarioInput.FlowState::share).toList());
        Set<Measure> measures = measures(scenario, guidelines, builder);
        boolean background = scenario.background().solidsContent() > 0
                || scenario.states().stream().anyMatch(s -> s.lateralFilteredMercury() > 0);
        List<boolean[]> emptied = new ArrayList<>();
        for (int s = 0; s < scenario.states().size(); s++) {
            emptied.add(TakenWater.emptied(
                    basin.network(), result.input().hydraulics().water(s)));
        }
        CyanideStep.notGiven(scenario, basin).stream().forEach(builder::cyanideNotGiven);
        for (int r = 0; r < n; r++) {
            int reach = r;
            if (!isWetInAnyState(result, r)) {
                builder.notAssessed(r, NotAssessed.NO_WATER);
            } else if (!background && !result.isBelowSite(r)) {
                builder.notAssessed(r, breaks.doubt(r).orElse(NotAssessed.NO_SOURCE_UPSTREAM));
            } else if (isWithinOneWidth(result, r)
                    || cyanide.filter(c -> isWithinOneWidth(c.result(), reach)).isPresent()) {
                builder.notAssessed(r, NotAssessed.NEAR_BANK_OUTFALL);
            }
            breaks.doubt(r).ifPresent(why -> builder.neverBelow(reach, why));
            if (breaks.doubt(r).isEmpty() && emptied.stream().anyMatch(state -> state[reach])) {
                builder.neverBelow(r, NotAssessed.EMPTIED);
            }
            for (int s = 0; s < scenario.states().size(); s++) {
                if (result.isWet(s, r)) {
                    water(builder, result, solids, measures, s, r);
                    int state = s;
                    cyanide.ifPresent(c -> cyanide(builder, c, measures, state, reach));
                } else {
                    builder.noWater(s, r);
                }
            }
            if (result.isBedAssessed(r)) {
                builder.bed(Estimate.LAID_DOWN, r, result.bedLow(r));
                builder.bed(Estimate.CARRIED_THROUGH, r, result.bedHigh(r));
                builder.bed(Estimate.BACKGROUND, r, result.backgroundBed(r));
            }
        }
        fish.ifPresent(found -> FishStep.values(builder, result, breaks, found));
        return builder.build();
    }

    private static boolean isWetInAnyState(SteadyResult result, int reach) {
        for (int s = 0; s < result.input().stateCount(); s++) {
            if (result.isWet(s, reach)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWithinOneWidth(SteadyResult result, int reach) {
        for (int s = 0; s < result.input().stateCount(); s++) {
            if (result.solution(Bound.LAID_DOWN, s).isWithinOneWidth(reach)) {
                return true;
            }
        }
        return false;
    }

    /** What is computed: total mercury always, as tables and maps show it, and what guidelines are values of. */
    private static Set<Measure> measures(
            ScenarioInput scenario, List<Guideline> guidelines, ReachValues.Builder builder) {
        Set<Substance> carried = Carried.substances(scenario);
        carried.forEach(builder::carries);
        Set<Measure> measures =
                new LinkedHashSet<>(List.of(Measure.WHOLE_WATER, Measure.FILTERED_WATER, Measure.SUSPENDED_CONTENT));
        guidelines.forEach(g -> ReachValues.measure(g.observable(), carried).ifPresent(measures::add));
        if (carried.contains(Substance.METHYLMERCURY)) {
            measures.add(Measure.FILTERED_METHYL);
        }
        measures.remove(Measure.SUSPENDED_SOLIDS);
        return measures;
    }

    private static void water(
            ReachValues.Builder builder,
            SteadyResult result,
            SuspendedValues solids,
            Set<Measure> measures,
            int s,
            int r) {
        for (Estimate estimate : Estimate.values()) {
            Bound bound = estimate == Estimate.LAID_DOWN ? Bound.LAID_DOWN : Bound.CARRIED_THROUGH;
            double sediment =
                    estimate == Estimate.BACKGROUND ? solids.backgroundSediment(s, r) : solids.sediment(bound, s, r);
            builder.water(Measure.SUSPENDED_SOLIDS, estimate, s, r, sediment);
        }
        for (Measure measure : measures) {
            if (measure.substance().isCyanide()) {
                continue;
            }
            if (measure.medium() == Medium.SURFACE_WATER) {
                SampledPart part = measure.observable();
                builder.water(measure, Estimate.LAID_DOWN, s, r, result.low(s, r, part));
                builder.water(measure, Estimate.CARRIED_THROUGH, s, r, result.high(s, r, part));
                builder.water(measure, Estimate.BACKGROUND, s, r, result.background(s, r, part));
            } else if (solids.backgroundSediment(s, r) > 0) {
                SampledPart whole = whole(measure.substance());
                builder.water(measure, Estimate.LAID_DOWN, s, r, solids.contentLow(s, r, whole));
                builder.water(measure, Estimate.CARRIED_THROUGH, s, r, solids.contentHigh(s, r, whole));
                builder.water(measure, Estimate.BACKGROUND, s, r, solids.backgroundContent(s, r, whole));
            }
        }
    }

    /** All of it is dissolved, so whole and filtered water hold the same; the river itself has none. */
    private static void cyanide(ReachValues.Builder builder, Cyanide cyanide, Set<Measure> measures, int s, int r) {
        for (Measure measure : measures) {
            if (measure.substance().isCyanide()) {
                SampledPart part = measure.substance() == Substance.FREE_CYANIDE ? cyanide.free() : Cyanide.wad();
                builder.water(
                        measure, Estimate.LAID_DOWN, s, r, cyanide.result().low(s, r, part));
                builder.water(
                        measure,
                        Estimate.CARRIED_THROUGH,
                        s,
                        r,
                        cyanide.result().high(s, r, part));
                builder.water(measure, Estimate.BACKGROUND, s, r, 0);
            }
        }
    }

    private static SampledPart whole(Substance substance) {
        return new Measure(Medium.SURFACE_WATER, substance, Fraction.WHOLE).observable();
    }
}
