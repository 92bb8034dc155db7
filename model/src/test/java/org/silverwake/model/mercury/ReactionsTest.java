// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.silverwake.model.water.ReachKind;

/** Small laws of the water column: dissolving droplets, temperature, light. */
class ReactionsTest {
    /** ROUNDING of a few operations, in percent. */
    private static final double ROUNDING_PERCENT = 1e-10;

    /** Numeric case 03 of the independent implementation: d 5 um, k_m 7.48e-4 m/s, 60 ug/L: 3.979311363972218e-6 1/s. */
    @Test
    void dissolvingAsInNumericCase03() {
        assertThat(RanzMarshall1952.rate(0.000748, 5e-6, ElementalMercury.SOLUBILITY, 1))
                .isCloseTo(3.979311363972218e-6, withinPercentage(ROUNDING_PERCENT));
    }

    /** A droplet at rest: Sh = 2, the exact solution of diffusion from a sphere (Fick). */
    @Test
    void dropletAtRestIsPureDiffusion() {
        assertThat(RanzMarshall1952.massTransfer(1e-6, 0, 1e-6, 1.7e-9)).isCloseTo(2 * 1.7e-9 / 1e-6, within(1e-15));
        assertThat(RanzMarshall1952.massTransfer(1e-4, 0.05, 1e-6, 1.7e-9)).isGreaterThan(2 * 1.7e-9 / 1e-4);
    }

    @Test
    void ratesGrowWithTemperatureAndFollowLightWhereTheyNeedIt() {
        FirstOrder dark = new FirstOrder(ByStateAndKind.same(1e-6), 1.07, false);
        assertThat(dark.at(0, ReachKind.CHANNEL, 20, 0.1)).isEqualTo(1e-6);
        assertThat(dark.at(0, ReachKind.CHANNEL, 30, 0.1))
                .isCloseTo(1e-6 * StrictMath.pow(1.07, 10), withinPercentage(ROUNDING_PERCENT));
        assertThat(new FirstOrder(ByStateAndKind.same(1e-6), 1, true).at(0, ReachKind.CHANNEL, 25, 0.1))
                .isCloseTo(1e-7, withinPercentage(ROUNDING_PERCENT));
    }

    /** Beer-Lambert, averaged: 1 in clear water, 1/(K H) where all light is taken up; K H = 1 gives 1 - 1/e. */
    @Test
    void meanLightOverTheDepth() {
        assertThat(FirstOrder.meanLight(0, 3)).isEqualTo(1);
        assertThat(FirstOrder.meanLight(1e-12, 1)).isCloseTo(1, within(1e-11));
        assertThat(FirstOrder.meanLight(0.5, 2)).isCloseTo(1 - 1 / Math.E, within(1e-15));
        assertThat(FirstOrder.meanLight(50, 4)).isCloseTo(1 / 200.0, withinPercentage(ROUNDING_PERCENT));
    }
}
