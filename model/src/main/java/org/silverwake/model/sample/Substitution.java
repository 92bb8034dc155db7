// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import java.util.List;

/**
 * What stands in for a limit when a mean is made: nothing, half of it, or all of it. The true mean of values that all lie
 * below their limits is between the first and the last; the middle one is a habit without a ground. Where the answer depends
 * on the choice, no mean gives it. (Helsel, Statistics for Censored Environmental Data Using Minitab and R, 2nd ed., 2012,
 * ch. 1 and 6, from memory: substitution invents a signal.)
 *
 * @param zero mean with 0 for every value below a limit [kg/m3 or kg/kg]
 * @param half mean with half the limit [kg/m3 or kg/kg]
 * @param limit mean with the limit itself [kg/m3 or kg/kg]
 */
public record Substitution(double zero, double half, double limit) {
    /**
     * The three means.
     *
     * @throws IllegalArgumentException if there is no value, or one above the measuring range, whose mean nobody knows
     */
    public static Substitution of(List<Reported> values) {
        if (values.isEmpty() || values.stream().anyMatch(v -> v.kind() == Reported.Kind.ABOVE)) {
            throw new IllegalArgumentException("a mean needs values, none of them above the measuring range");
        }
        double detected = 0;
        double limits = 0;
        for (Reported value : values) {
            if (value.isDetected()) {
                detected += value.value();
            } else {
                limits += value.value();
            }
        }
        int n = values.size();
        return new Substitution(detected / n, (detected + limits / 2) / n, (detected + limits) / n);
    }

    /**
     * Whether the mean is above a value under one choice and not under another.
     *
     * @param guideline the value [kg/m3 or kg/kg]
     */
    public boolean dependsOnChoice(double guideline) {
        return zero > guideline != limit > guideline || zero > guideline != half > guideline;
    }
}
