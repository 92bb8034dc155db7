// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Cuts by hand. */
class ReleaseCutsTest {
    /** ROUNDING: the simplex and a few operations; limits are met to 1e-9. */
    private static final double ROUNDING = 1e-8;

    private static final double SCALE = 1e-11;

    /** Limits 12 and 9, backgrounds 2 and 1; sites add 6, 10, 4 at the first and 0, 8, 4 at the second, in 1e-11. */
    private static ReleaseCuts cuts() {
        return ReleaseCuts.of(
                List.of(Limit.of("village", 12 * SCALE), Limit.of("intake", 9 * SCALE)),
                new double[] {2 * SCALE, 1 * SCALE},
                new double[][] {{6 * SCALE, 10 * SCALE, 4 * SCALE}, {0, 8 * SCALE, 4 * SCALE}},
                new double[] {3, 5, 2});
    }

    /** First: 2 + 20 (1 - f) ≤ 12, f ≥ 1/2. Second: 1 + 12 (1 - f) ≤ 9, f ≥ 1/3. So 1/2, of 10 kg. */
    @Test
    void equalCutIsTheLargestThatAnyLimitNeeds() {
        Cut cut = cuts().equal();
        assertThat(cut.cuts()).allSatisfy(f -> assertThat(f).isCloseTo(0.5, within(ROUNDING)));
        assertThat(cut.kilograms()).isCloseTo(5, within(ROUNDING));
        assertThat(cut.isSufficient()).isTrue();
        assertThat(cut.outcomes().get(0).ratio()).isCloseTo(1, within(ROUNDING));
        assertThat(cut.outcomes().get(1).planned() / SCALE).isCloseTo(7, within(ROUNDING));
    }

    /**
     * At 1, 2, 1.5 currency per kg full cuts cost 3, 10, 3. To save at the village: 6a + 10b + 4c ≥ 10; at the intake: 8b + 4c
     * ≥ 4. Cost per unit at the village: a 1/2, c 3/4, b 1. Corners: a = 1, c = 1 saves 10 and 4: both hold exactly, for 6. Any b
     * instead: from (1, 0, 1) along c down by 1, b up by 0.4 at the village: -3 + 4 > 0, dearer. From a down by 1, b up by
     * 0.6: -3 + 6 > 0. So 6 is the least.
     */
    @Test
    void leastCostCutsAreThoseWorkedByHand() {
        Cut cut = cuts().leastCost(new double[] {1, 2, 1.5});
        assertThat(cut.cost()).isCloseTo(6, within(ROUNDING));
        assertThat(cut.cuts().get(0)).isCloseTo(1, within(ROUNDING));
        assertThat(cut.cuts().get(1)).isCloseTo(0, within(ROUNDING));
        assertThat(cut.cuts().get(2)).isCloseTo(1, within(ROUNDING));
        assertThat(cut.kilograms()).isCloseTo(5, within(ROUNDING));
        assertThat(cut.isSufficient()).isTrue();
    }

    @Test
    void noCutWhereLimitsAreMet() {
        ReleaseCuts cuts = ReleaseCuts.of(
                List.of(Limit.of("village", 5)), new double[] {1}, new double[][] {{1, 2}}, new double[] {1, 1});
        assertThat(cuts.equal().kilograms()).isZero();
        assertThat(cuts.leastCost(new double[] {1, 1}).kilograms()).isZero();
    }

    /** A background of 7 over a limit of 5: the site upstream is cut in full, 2 remain; the other site not at all. */
    @Test
    void backgroundAboveALimitRemains() {
        ReleaseCuts cuts = ReleaseCuts.of(
                List.of(Limit.of("village", 5)), new double[] {7}, new double[][] {{1, 0}}, new double[] {1, 1});
        Cut least = cuts.leastCost(new double[] {1, 1});
        assertThat(least.isSufficient()).isFalse();
        assertThat(least.cuts().get(0)).isCloseTo(1, within(ROUNDING));
        assertThat(least.cuts().get(1)).isCloseTo(0, within(ROUNDING));
        assertThat(least.remaining().get(0).over()).isCloseTo(2, within(ROUNDING));
        assertThat(cuts.equal().remaining().get(0).over()).isCloseTo(2, within(ROUNDING));
    }

    @Test
    void badInputIsRefused() {
        List<Limit> limits = List.of(Limit.of("village", 5));
        assertThatThrownBy(() -> ReleaseCuts.of(limits, new double[] {-1}, new double[][] {{1}}, new double[] {1}))
                .hasMessageContaining("-1");
        assertThatThrownBy(() -> ReleaseCuts.of(limits, new double[] {1}, new double[][] {{1, 2}}, new double[] {1}))
                .hasMessageContaining("1 numbers");
    }
}
