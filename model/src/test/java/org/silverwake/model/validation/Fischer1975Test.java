// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.water.Mixing;

/**
 * Longitudinal dispersion in 19 rivers. Measured values and channels from memory (Fischer 1968 and 1975, Godfrey &amp;
 * Frederick 1970, McQuivey &amp; Keefer 1974, Nordin &amp; Sabol 1974, as reprinted in later papers); the column "formula" is
 * Fischer's equation evaluated outside this program.
 */
@Reference(key = "fischer1975", locator = "D = 0.011 U^2 B^2/(H u*)")
class Fischer1975Test {
    private static final double FACTOR = 4;
    /** PRINTED: half of the last digit, plus a little for its rounding. */
    private static final double HALF_DIGIT = 0.501;

    /** One river: width, depth [m], velocity, shear velocity [m/s], measured, formula, place of its last digit [m2/s]. */
    record River(
            String name,
            double width,
            double depth,
            double u,
            double shear,
            double measured,
            double formula,
            double digit) {
        double computed() {
            return Mixing.longitudinal(u, width, depth, shear);
        }
    }

    static Stream<River> rivers() {
        return Stream.of(
                new River("Antietam Creek 1", 12.80, 0.30, 0.42, 0.057, 17.5, 18.6, 0.1),
                new River("Antietam Creek 2", 24.08, 0.98, 0.59, 0.098, 101.5, 23.1, 0.1),
                new River("Monocacy 1", 48.70, 0.55, 0.26, 0.052, 37.8, 61.7, 0.1),
                new River("Monocacy 2", 97.54, 1.15, 0.32, 0.058, 119.8, 160.7, 0.1),
                new River("Conococheague", 42.21, 0.69, 0.23, 0.064, 40.8, 23.5, 0.1),
                new River("Chattahoochee", 75.59, 1.95, 0.74, 0.138, 88.9, 127.9, 0.1),
                new River("Salt Creek", 32.00, 0.50, 0.24, 0.038, 52.2, 34.1, 0.1),
                new River("Bear Creek", 13.72, 0.85, 1.29, 0.553, 2.9, 7.3, 0.1),
                new River("Bayou Anacoco", 25.90, 0.94, 0.34, 0.067, 32.5, 13.5, 0.1),
                new River("Comite", 15.70, 0.23, 0.36, 0.039, 69.0, 39.2, 0.1),
                new River("Red River", 253.59, 1.62, 0.61, 0.032, 143.8, 5078, 1),
                new River("Sabine", 116.43, 1.65, 0.58, 0.054, 131.3, 563.0, 0.1),
                new River("Wind/Bighorn", 44.20, 1.37, 0.99, 0.142, 184.6, 108.3, 0.1),
                new River("Copper Creek", 18.29, 0.38, 0.15, 0.116, 20.7, 1.9, 0.1),
                new River("Powell", 36.78, 0.87, 0.13, 0.054, 15.5, 5.4, 0.1),
                new River("Clinch", 57.91, 2.45, 0.75, 0.104, 40.5, 81.4, 0.1),
                new River("Coachella Canal", 24.69, 1.58, 0.66, 0.041, 5.9, 45.1, 0.1),
                new River("Nooksack", 64.0, 0.76, 0.67, 0.27, 34.8, 98.6, 0.1),
                new River("Missouri", 180.59, 3.28, 1.62, 0.078, 1486, 3680, 1));
    }

    @ParameterizedTest
    @MethodSource("rivers")
    void formulaColumn(River river) {
        assertThat(river.computed()).as(river.name()).isCloseTo(river.formula(), within(HALF_DIGIT * river.digit()));
    }

    /** By the printed ratios (0.23, 0.09, 0.35, 35.3, 4.29, 7.62 and 13 others) 14 of 19 rivers lie within a factor of 4. */
    @Test
    void measuredColumnIsAFactorBandOnly() {
        long within = rivers().filter(r -> Math.max(r.computed() / r.measured(), r.measured() / r.computed()) <= FACTOR)
                .count();
        assertThat(within)
                .as("rivers within a factor of 4 of measurement, of 19")
                .isEqualTo(14);
    }
}
