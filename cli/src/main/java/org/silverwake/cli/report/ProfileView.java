// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.silverwake.cli.chart.Profile.GuidelineValue;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.ShownForm;
import org.silverwake.cli.scenario.Outputs.ShownMedium;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.SteadyResult;

/**
 * What profiles of water show: which part of it, in words, and what guidelines and samples go with it. Values of inorganic and
 * of total mercury are drawn together, those of MeHg with MeHg alone.
 *
 * @param part of the carried forms
 * @param quantity in words
 * @param filtered whether of filtered water
 * @param methyl whether MeHg alone
 * @param compared whether guidelines and samples are set beside it
 */
record ProfileView(SampledPart part, String quantity, boolean filtered, boolean methyl, boolean compared) {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final int DIGITS = 3;

    /** The substance and fraction of the guideline drawn, else total mercury of whole water. */
    static ProfileView shown(Outcome outcome) {
        Optional<Guideline> shown = Shown.guideline(outcome);
        Set<Substance> carried = outcome.scenario().mercury().substances();
        boolean filtered = shown.filter(g -> g.observable().fraction() == Fraction.FILTERED)
                .isPresent();
        Optional<Guideline> water = shown.filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                .filter(g -> g.observable().substance().isMercury());
        return new ProfileView(
                water.flatMap(g -> ReachValues.measure(g.observable(), carried))
                        .<SampledPart>map(ReachValues.Measure::observable)
                        .orElse(filtered ? SteadyResult.Fraction.FILTERED : SteadyResult.Fraction.WHOLE),
                water.map(g -> g.observable().words()).orElse("whole total Hg in surface water"),
                filtered,
                water.filter(g -> g.observable().substance() == Substance.METHYLMERCURY)
                        .isPresent(),
                true);
    }

    /** All mercury of whole water. */
    static ProfileView ofWhole() {
        return new ProfileView(SteadyResult.Fraction.WHOLE, "whole total Hg in surface water", false, false, true);
    }

    /** A form of mercury in water. */
    static ProfileView of(FormValues values) {
        boolean methyl = values.group().form() == ShownForm.METHYL;
        return new ProfileView(
                values.part(), values.words(), values.medium() == ShownMedium.FILTERED_WATER, methyl, methyl);
    }

    /** Whether a sample is drawn on it. */
    Predicate<Finding> samples() {
        return finding -> compared
                && finding.medium() == Medium.SURFACE_WATER
                && (finding.fraction() == Fraction.FILTERED) == filtered
                && (methyl
                        ? finding.substance() == Substance.METHYLMERCURY
                        : finding.substance() == Substance.TOTAL_MERCURY
                                || finding.substance() == Substance.INORGANIC_MERCURY);
    }

    /** Guideline values of river water of the same fraction. */
    List<GuidelineValue> guidelines(Outcome outcome) {
        List<GuidelineValue> values = new ArrayList<>();
        for (Guideline guideline : Shown.drawable(outcome)) {
            boolean same = compared
                    && guideline.observable().medium() == Medium.SURFACE_WATER
                    && (guideline.observable().fraction() == Fraction.FILTERED) == filtered
                    && (guideline.observable().substance() == Substance.METHYLMERCURY) == methyl
                    && guideline.observable().substance().isMercury()
                    && guideline.observable().averaging() != Averaging.BED;
            if (same) {
                values.add(new GuidelineValue(
                        guideline.displayName(),
                        Numbers.shown(guideline.value() * NANOGRAMS_PER_LITER, DIGITS) + " ng/L, "
                                + guideline.observable().substance().word()
                                + ", for the "
                                + guideline.observable().averaging().words().split(",")[0],
                        guideline.value() * NANOGRAMS_PER_LITER));
            }
        }
        return values;
    }
}
