// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported;
import org.silverwake.model.screening.Substance;

/** How samples are worded and in which units they are shown. */
final class SampleWords {
    /** Factors within which samples are counted [-]. */
    static final List<Double> FACTORS = List.of(2.0, 5.0, 10.0);

    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_LITER = 1e3;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;

    private SampleWords() {}

    /** The unit in which a finding is shown. */
    static String unit(Finding finding) {
        if (!finding.medium().isWater()) {
            return "mg/kg";
        }
        return finding.substance() == Substance.SUSPENDED_SOLIDS ? "mg/L" : "ng/L";
    }

    /** A value in SI in the unit of {@link #unit}. */
    static double shown(Finding finding, double si) {
        return si
                * switch (unit(finding)) {
                    case "ng/L" -> NANOGRAMS_PER_LITER;
                    case "mg/L" -> MILLIGRAMS_PER_LITER;
                    default -> MILLIGRAMS_PER_KILOGRAM;
                };
    }

    /** "<", ">", "estimated" or "". */
    static String qualifier(Finding finding) {
        return finding.reported().kind() == Reported.Kind.ESTIMATED
                ? "estimated"
                : finding.reported().sign();
    }

    /** Names of the flow states a sample may belong to. */
    static String states(Outcome outcome, ComparedSample sample) {
        return sample.states().stream()
                .map(s -> outcome.scenario().states().get(s).name())
                .collect(Collectors.joining("; "));
    }

    /** How a sample stands to every guideline it may be held against. */
    static String answers(Outcome outcome, ComparedSample sample) {
        return SampleAgainst.of(outcome, sample).stream()
                .map(a -> a.guideline().id() + ": " + a.verdict().words())
                .collect(Collectors.joining("; "));
    }
}
