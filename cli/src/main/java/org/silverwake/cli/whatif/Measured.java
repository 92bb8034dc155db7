// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/**
 * A quantity that guidelines are values of.
 *
 * @param kind where it is found
 * @param water what of the water it is; empty for bed and fish
 * @param words for legends
 * @param fixed why no lever moves it; empty where values are linear in what is released
 */
public record Measured(Kind kind, Optional<Measure> water, String words, Optional<String> fixed) {
    private static final String HELD_BACK =
            "methylation in the bed is held back by its ceiling, so that values are not in proportion to what is released;"
                    + " levers do not move them";

    /** Where a quantity is found. */
    public enum Kind {
        WATER,
        ON_SOLIDS,
        BED,
        FISH;

        /** Whether each flow state has values of its own. */
        public boolean isByState() {
            return this == WATER || this == ON_SOLIDS;
        }
    }

    /** A column: one bound and variant of the unknown split. */
    public record Column(Bound bound, int variant) {}

    /** Those of the values that are compared; total mercury of whole water where there is none. */
    public static List<Measured> of(Outcome outcome) {
        List<Measured> all = new ArrayList<>();
        outcome.screening()
                .compared()
                .forEach(guideline -> of(outcome, guideline)
                        .filter(measured -> !all.contains(measured))
                        .ifPresent(all::add));
        boolean fish = all.stream().anyMatch(measured -> measured.kind() == Kind.FISH);
        Measured methyl = ofWater(outcome.result(), Measure.FILTERED_METHYL);
        if (fish && FishRanges.isChain(outcome) && !all.contains(methyl)) {
            all.add(methyl);
        }
        if (all.isEmpty()) {
            all.add(ofWater(outcome.result(), Measure.WHOLE_WATER));
        }
        return all;
    }

    /** That of a guideline; empty where it is not modelled. */
    public static Optional<Measured> of(Outcome outcome, Guideline guideline) {
        Set<Substance> carried = outcome.screening().values().carried();
        if (!outcome.screening().isModelled(guideline)) {
            return Optional.empty();
        }
        Medium medium = guideline.observable().medium();
        if (medium == Medium.BED_SEDIMENT) {
            return Optional.of(new Measured(
                    Kind.BED, Optional.empty(), guideline.observable().words(), heldBack(outcome.result())));
        }
        if (medium == Medium.FISH) {
            return Optional.of(new Measured(
                    Kind.FISH,
                    Optional.empty(),
                    "Hg in fish of trophic level 4",
                    Optional.of(FishRanges.reason(outcome))));
        }
        return ReachValues.measure(guideline.observable(), carried).map(measure -> ofWater(outcome.result(), measure));
    }

    private static Measured ofWater(SteadyResult result, Measure measure) {
        Optional<String> fixed = heldBack(result);
        if (measure.substance().isCyanide()) {
            fixed = Optional.of("cyanide is not mercury; levers move mercury alone");
        } else if (measure.substance() == Substance.SUSPENDED_SOLIDS) {
            fixed = Optional.of("suspended solids are not mercury; levers move mercury alone");
        }
        Kind kind = measure.medium() == Medium.SUSPENDED_SOLIDS ? Kind.ON_SOLIDS : Kind.WATER;
        return new Measured(kind, Optional.of(measure), measure.observable().words(), fixed);
    }

    private static Optional<String> heldBack(SteadyResult result) {
        return result.isMethylationHeldBack() ? Optional.of(HELD_BACK) : Optional.empty();
    }

    /** Id in the data. */
    public String id() {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** Columns whose extremes are the low and the high estimate. */
    List<Column> columns(SteadyResult result) {
        List<Bound> bounds = water.map(measure -> result.bounds(part())).orElseGet(result::bounds);
        List<Column> columns = new ArrayList<>();
        for (Bound bound : bounds) {
            for (int v = 0; v < result.variants(); v++) {
                columns.add(new Column(bound, v));
            }
        }
        return columns;
    }

    /** What of a sample of water counts; of suspended solids, of whole water, as screening has it. */
    org.silverwake.model.transport.SampledPart part() {
        Measure measure = water.orElseThrow();
        return kind == Kind.ON_SOLIDS
                ? new Measure(Medium.SURFACE_WATER, measure.substance(), org.silverwake.model.screening.Fraction.WHOLE)
                        .observable()
                : measure.observable();
    }

    /** Number of value sets [-]. */
    int sets(SteadyResult result) {
        return kind.isByState() ? result.input().stateCount() : 1;
    }
}
