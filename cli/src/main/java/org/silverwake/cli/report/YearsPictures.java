// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.silverwake.cli.chart.Profile.GuidelineValue;
import org.silverwake.cli.chart.YearCharts;
import org.silverwake.cli.chart.YearCourse;
import org.silverwake.cli.chart.YearStack;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.transport.YearBand;
import org.silverwake.model.transport.YearsResult.Whereabouts;

/** Charts of the years: water and bed at every place, and where all released mercury is. */
public final class YearsPictures {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final int DIGITS = 3;
    private static final String CAUTION =
            "A screening from a model, not a finding of safety. The estimate may be wrong by the"
                    + " stated factor, and times with it. Fish advice is the health authority's.";

    private final Outcome outcome;
    private final YearsRun run;

    private YearsPictures(Outcome outcome, YearsRun run) {
        this.outcome = outcome;
        this.run = run;
    }

    /** Draws all; nothing where the scenario has no history. */
    public static void draw(Outcome outcome, MapFiles files) {
        if (outcome.years().isEmpty()) {
            return;
        }
        YearsPictures pictures = new YearsPictures(outcome, outcome.years().get());
        for (PlacedPoint place : outcome.basin().points("place")) {
            YearCourse course = pictures.course(place);
            files.each(Profiles.fileName(place.request().name()), file -> YearCharts.write(course, file));
        }
        int variants = outcome.result().variants();
        for (int v = 0; v < variants; v++) {
            YearStack stack = pictures.stack(v);
            String name = variants == 1
                    ? "whereabouts"
                    : "whereabouts-" + Words.variant(outcome.result().input(), v);
            files.each(Profiles.fileName(name), file -> YearCharts.write(stack, file));
        }
    }

    private String imprint() {
        return outcome.scenario().project().preparedBy() + ", "
                + outcome.scenario().project().date();
    }

    private YearCourse course(PlacedPoint place) {
        int reach = outcome.basin().reachAt(place);
        List<YearCourse.Panel> panels = new ArrayList<>();
        List<Guideline> guidelines = Recoveries.guidelines(outcome, run).stream()
                .filter(g -> outcome.screening().applies(g, reach))
                .toList();
        Optional<Guideline> water = Shown.guideline(outcome)
                .filter(guidelines::contains)
                .filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                .or(() -> guidelines.stream()
                        .filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                        .findFirst());
        panels.add(panel(
                water.map(g -> g.observable().words() + ", "
                                + (g.observable().averaging() == Averaging.YEAR
                                        ? "mean of the year"
                                        : "highest in the year"))
                        .orElse("whole total Hg in surface water, mean of the year"),
                "ng/L",
                water.flatMap(run::band).orElse(run.result().mean(0)),
                reach,
                NANOGRAMS_PER_LITER,
                water));
        panels.add(panel(
                "total Hg in the bed, dry weight, mean of the year",
                "mg/kg",
                run.result().bed(),
                reach,
                MILLIGRAMS_PER_KILOGRAM,
                guidelines.stream()
                        .filter(g -> g.observable().averaging() == Averaging.BED)
                        .findFirst()));
        boolean isFished = outcome.scenario().places().stream()
                .anyMatch(
                        p -> p.name().equals(place.request().name()) && p.uses().contains(PlaceUse.FISHING));
        if (isFished && run.isKnown(Medium.FISH, reach)) {
            panels.add(panel(
                    "Hg in fish that eat fish (trophic level 4), wet weight",
                    "mg/kg",
                    run.fish().orElseThrow().contents(TrophicLevel.FOUR),
                    reach,
                    MILLIGRAMS_PER_KILOGRAM,
                    guidelines.stream()
                            .filter(g -> g.observable().medium() == Medium.FISH)
                            .findFirst()));
        }
        return new YearCourse(
                place.request().name() + ", " + outcome.scenario().project().title(),
                Recoveries.supposed(outcome),
                run.firstYear(),
                panels,
                CAUTION,
                imprint());
    }

    private YearCourse.Panel panel(
            String quantity, String unit, YearBand band, int reach, double factor, Optional<Guideline> guideline) {
        int years = run.result().years();
        return new YearCourse.Panel(
                quantity,
                unit,
                IntStream.range(0, years)
                        .mapToObj(year -> band.low(year, reach) * factor)
                        .toList(),
                IntStream.range(0, years)
                        .mapToObj(year -> band.high(year, reach) * factor)
                        .toList(),
                guideline.stream()
                        .map(g -> new GuidelineValue(
                                g.displayName(),
                                Numbers.shown(g.value() * factor, DIGITS) + " " + unit,
                                g.value() * factor))
                        .toList());
    }

    private YearStack stack(int variant) {
        Set<Whereabouts> stages = EnumSet.complementOf(EnumSet.of(Whereabouts.BEGAN, Whereabouts.RELEASED));
        List<YearStack.Layer> layers = new ArrayList<>();
        int years = run.result().years();
        for (Whereabouts stage : stages) {
            List<Double> amounts = IntStream.range(0, years)
                    .mapToObj(year -> run.result().amount(stage, year, variant))
                    .toList();
            if (amounts.stream().anyMatch(amount -> amount > 0)) {
                layers.add(new YearStack.Layer(Words.whereabouts(stage), amounts));
            }
        }
        if (layers.isEmpty()) {
            layers.add(new YearStack.Layer(
                    "nothing was released",
                    IntStream.range(0, years).mapToObj(y -> 0.0).toList()));
        }
        String split = Words.variant(outcome.result().input(), variant);
        return new YearStack(
                "Where the released mercury is, " + outcome.scenario().project().title(),
                (split.isEmpty() ? "" : "unknown split taken as " + split + ". ") + Recoveries.supposed(outcome),
                run.firstYear(),
                "all forms, background left out",
                "kg",
                layers,
                CAUTION,
                imprint());
    }
}
