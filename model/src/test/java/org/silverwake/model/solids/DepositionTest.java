// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.validation.Reference;

class DepositionTest {
    /** ROUNDING: a dozen operations. */
    private static final double EXACT = 1e-14;
    /** PRINTED: half of the fourth decimal. */
    private static final double PRINTED = 5e-5;

    private static final Deposition.Flow FLOW = new Deposition.Flow(0.5, 2, 0.05, 0.04, 0);

    /** Krone (1962): D = w C (1 - tau/tau_cd) below tau_cd, else nothing. */
    @ParameterizedTest
    @Reference(key = "krone1962", locator = "deposition law, from memory")
    @CsvSource({"0, 0.1, 1", "0.05, 0.1, 0.5", "0.09, 0.1, 0.1", "0.1, 0.1, 0", "3, 0.1, 0"})
    void kroneProbability(double shear, double critical, double expected) {
        assertThat(Deposition.krone(shear, critical)).isCloseTo(expected, within(EXACT));
    }

    /** Rouse number w/(0.41 u*): 0.0041 m/s and 0.01 m/s give 1; all suspended up to 0.8, all bed load from 2.5 (common practice, from memory). */
    @ParameterizedTest
    @Reference(key = "rouse1937", locator = "limits of suspension, from memory")
    @CsvSource({"0, 1", "0.8, 1", "1.65, 0.5", "2.5, 0", "40, 0"})
    void suspendedShareBetweenTheRouseLimits(double rouse, double expected) {
        assertThat(Deposition.rouse(0.0041, 0.01)).isCloseTo(1, within(EXACT));
        assertThat(Deposition.suspendedShare(rouse)).isCloseTo(expected, within(EXACT));
    }

    /**
     * Richardson &amp; Zaki (1954), w/w0 = (1 - c)^n: by hand for 265 kg/m3 of 2650 kg/m3, c = 0.1: Re 0.1: 0.9^4.65 =
     * 0.6127; Re 0.5: n = 4.35 x 0.5^-0.03 = 4.4414, 0.6263; Re 100: n = 4.45 x 100^-0.1 = 2.8078, 0.7439; Re 1000: 0.9^2.39 =
     * 0.7774. Exponents from memory.
     */
    @ParameterizedTest
    @Reference(key = "richardson1954", locator = "exponents by Reynolds number, from memory")
    @CsvSource({"0.1, 0.6127", "0.5, 0.6263", "100, 0.7439", "1000, 0.7774"})
    void hindranceAtTenPercentByVolume(double reynolds, double expected) {
        assertThat(Deposition.hindrance(265, 2650, reynolds)).isCloseTo(expected, within(PRINTED));
    }

    @Test
    void nothingIsHinderedUpToFiveGramsPerLiter() {
        assertThat(Deposition.hindrance(5, 2650, 0.1)).isEqualTo(1);
        assertThat(Deposition.hindrance(5.001, 2650, 0.1)).isLessThan(1).isGreaterThan(0.99);
        assertThat(Deposition.hindrance(3000, 2650, 0.1)).isZero();
    }

    @Test
    void aRetentionLengthReplacesEveryLaw() {
        // U/length = 0.5/2000 per s, whatever the settling velocity and the shear
        for (boolean cohesive : new boolean[] {true, false}) {
            ParticleClass grains = grains(cohesive, OptionalDouble.of(2000));
            assertThat(Deposition.rate(grains, 1, FLOW)).isCloseTo(2.5e-4, within(EXACT));
        }
    }

    @Test
    void finesSettleByKrone() {
        // w (1 - 0.04/0.1)/H = 1e-3 x 0.6/2
        assertThat(Deposition.rate(grains(true, OptionalDouble.empty()), 1e-3, FLOW))
                .isCloseTo(3e-4, within(EXACT));
    }

    @Test
    void sandSettlesWithWhatIsNotSuspended() {
        // P = 1.65 at w = 1.65 x 0.41 x 0.05 = 0.033825 m/s: half is suspended, w/2/H
        ParticleClass sand = grains(false, OptionalDouble.empty());
        assertThat(Deposition.rate(sand, 0.033825, FLOW)).isCloseTo(0.033825 / 4, within(EXACT));
        assertThat(Deposition.rate(sand, 0.01, FLOW))
                .as("P 0.49: all suspended")
                .isZero();
    }

    @Test
    void aFloodSetsSandDownNoFasterThanItsLength() {
        // U/1 km = 5e-4 per s where that is slower; fines are not touched
        Deposition.Flow flood = new Deposition.Flow(0.5, 2, 0.05, 0.04, 1000);
        assertThat(Deposition.rate(grains(false, OptionalDouble.empty()), 0.033825, flood))
                .isCloseTo(5e-4, within(EXACT));
        assertThat(Deposition.rate(grains(false, OptionalDouble.empty()), 0.01701, flood))
                .as("barely settling sand keeps its own slower rate")
                .isLessThan(5e-4)
                .isPositive();
        assertThat(Deposition.rate(grains(true, OptionalDouble.empty()), 1e-2, flood))
                .isCloseTo(3e-3, within(EXACT));
    }

    @Test
    void aRatingCurveGivesBackgroundSediment() {
        assertThat(new BackgroundSediment(0.02, 0).at(17)).isEqualTo(0.02);
        // 0.02 x 16^0.5
        assertThat(new BackgroundSediment(0.02, 0.5).at(16)).isCloseTo(0.08, within(EXACT));
    }

    private static ParticleClass grains(boolean cohesive, OptionalDouble retention) {
        return new ParticleClass("grains", 1e-4, 2650, new MeasuredSettling(1e-3), cohesive, 0.1, 5, retention, 1);
    }
}
