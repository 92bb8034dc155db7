// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult.Fraction;

/** What is on top of the mixed concentration near the bank (model.md section 3; Fischer et al. 1979). */
class NearBankTest {
    /** ROUNDING. */
    private static final double SAME = 1e-9;

    private static final double MERCURY = 4e-7;
    private static final double FLOW = 16;

    /** U 0.4 m/s, H 0.8 m, B 50 m, u* from skin shear: L_m = 0.4 U B^2/(0.6 H u*). */
    private static TestRiver river(double... meters) {
        TestRiver river = new TestRiver();
        for (int k = 0; k < meters.length; k++) {
            river.reach("r" + k, k, k + 1, meters[k], k == 0 ? FLOW : 0, 0);
        }
        return river.cohesive("none", 0, 0.1, 100, 1);
    }

    private static TestRiver outfall(TestRiver river, double water) {
        return river.site("r0", MERCURY, OptionalDouble.of(1), 0, water, true);
    }

    private static double mixingLength(StateSolution solution) {
        double friction = StrictMath.sqrt(0.05 / 998.2); // density of water at 20 C, Kell (1975): 998.2 kg/m3
        double width = solution.water().head(0) / (0.4 * 0.8);
        return 0.4 * 0.4 * width * width / (0.6 * 0.8 * friction);
    }

    @Test
    void theFactorIsThatOfALineSourceAtTheBank() {
        StateSolution solution = outfall(river(1000, 2000, 400000), 0).run().solution(Bound.LAID_DOWN, 0);
        double mixing = mixingLength(solution);
        assertThat(mixing).isBetween(100e3, 130e3);
        double mixed = MERCURY / FLOW;
        double[] x = {50, 1000, 1000, 3000, 3000}; // at the head: one width
        for (int k = 0; k < x.length; k++) {
            Place place = k % 2 == 0 ? Place.HEAD : Place.END;
            double factor = 0.89 * StrictMath.sqrt(mixing / x[k]);
            // the width and the density of water are rounded above: 1e-5
            assertThat(solution.whole(k / 2, place, 0, true) / (mixed * factor)).isCloseTo(1, within(1e-5));
            assertThat(solution.whole(k / 2, place, 0, false) / mixed).isCloseTo(1, within(SAME));
        }
        assertThat(solution.whole(2, Place.END, 0, true) / mixed).isCloseTo(1, within(SAME));
        assertThat(solution.isNearBank(2)).isTrue();
        assertThat(solution.filtered(0, Place.END, 0, true) / solution.whole(0, Place.END, 0, true))
                .isCloseTo(solution.filteredShare(0), within(SAME));
    }

    @Test
    void reachesBeyondFullMixingAreNotMarked() {
        StateSolution solution = outfall(river(1000, 200000, 100), 0).run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.isNearBank(1)).isTrue();
        assertThat(solution.isNearBank(2)).isFalse();
    }

    @Test
    void anOutfallInMidChannelHasNoneOfIt() {
        TestRiver river = river(1000, 1000);
        river.site("r0", MERCURY, OptionalDouble.of(1), 0, 0, false);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.whole(0, Place.HEAD, 0, true)).isEqualTo(solution.whole(0, Place.HEAD, 0, false));
        assertThat(solution.isNearBank(0)).isFalse();
    }

    @Test
    void nowhereMoreThanInTheReleaseItself() {
        for (double water : new double[] {0.5, 1, 8}) {
            SteadyResult result = outfall(river(10, 1000, 5000), water).run();
            double own = MERCURY / water;
            for (int r = 0; r < 3; r++) {
                assertThat(result.largest(Bound.LAID_DOWN, 0, 0, r, Fraction.WHOLE))
                        .isLessThanOrEqualTo(own * (1 + SAME));
            }
            assertThat(result.largest(Bound.LAID_DOWN, 0, 0, 0, Fraction.WHOLE) / own)
                    .isCloseTo(1, within(SAME));
        }
    }

    @Test
    void itEndsAtABifurcation() {
        TestRiver river = river(1000);
        river.reach("left", 1, 2, 1000, 0, 0).reach("right", 1, 3, 1000, 0, 0);
        StateSolution solution = outfall(river, 0).run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.isNearBank(river.index("r0"))).isTrue();
        assertThat(solution.isNearBank(river.index("left"))).isFalse();
        assertThat(solution.isNearBank(river.index("right"))).isFalse();
    }

    @Test
    void itEndsAtAConfluenceThatBringsMoreThanHalf() {
        for (double brings : new double[] {0.99, 1.01}) {
            TestRiver river = river(1000, 1000);
            river.reach("side", 7, 1, 1000, FLOW * brings, 0);
            StateSolution solution = outfall(river, 0).run().solution(Bound.LAID_DOWN, 0);
            assertThat(solution.isNearBank(river.index("r1"))).isEqualTo(brings < 1);
        }
    }

    @Test
    void reachesWhollyNearerThanOneWidthAreKnown() {
        StateSolution solution = outfall(river(20, 25, 10, 400), 0).run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.isWithinOneWidth(0)).isTrue();
        assertThat(solution.isWithinOneWidth(1)).isTrue(); // 20 to 45 m, the river is 50 m wide
        assertThat(solution.isWithinOneWidth(2)).isFalse(); // 45 to 55 m
        assertThat(solution.isWithinOneWidth(3)).isFalse();
    }

    @Test
    void onlyTheSitesOwnPartIsRaised() {
        TestRiver river = river(1000, 1000);
        river.site("r0", MERCURY, 1);
        river.site("r1", MERCURY, OptionalDouble.of(1), 0, 0, true);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        double mixed = MERCURY / FLOW;
        double factor = 0.89 * StrictMath.sqrt(mixingLength(solution) / 1000);
        assertThat(solution.whole(1, Place.END, 0, true) / (mixed * (1 + factor)))
                .isCloseTo(1, within(1e-5));
    }
}
