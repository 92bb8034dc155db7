// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;

/** What abstractions take out, by hand and against the budget. */
class AbstractedMercuryTest {
    /** ROUNDING: a few dozen products and sums, in percent. */
    private static final double ROUNDING = 1e-9;

    private static final double SECONDS_PER_YEAR = TestRiver.SECONDS_PER_YEAR;

    /** Nothing settles; 2 m3/s carry 10 kg/yr of a site; 0.5 m3/s are taken in each state. */
    private static TestRiver lossless() {
        TestRiver river = TestRiver.chain(3, 1000, 2);
        river.flow = new double[] {1, 4};
        river.share = new double[] {0.75, 0.25};
        river.flood = List.of(false, false);
        river.cohesive("fine", 0, 0.1, 200, 1).site("r0", 10 / SECONDS_PER_YEAR, 0.3);
        river.abstraction.put("r1", 0.5);
        return river;
    }

    /** 0.5 of 2 m3/s takes 10 x 0.5/2 = 2.5 kg/yr, 0.5 of 8 takes 0.625; the year has 0.75 x 2.5 + 0.25 x 0.625 = 2.03125. */
    @Test
    void byHandWithoutBackground() {
        TestRiver river = lossless();
        AbstractedMercury taken = AbstractedMercury.of(river.run(), river.index("r1"), List.of(1.0, 1.0));
        assertThat(taken.water(1)).isCloseTo(0.5, withinPercentage(ROUNDING));
        assertThat(taken.inState(0).low() * SECONDS_PER_YEAR).isCloseTo(2.5, withinPercentage(ROUNDING));
        assertThat(taken.inState(1).high() * SECONDS_PER_YEAR).isCloseTo(0.625, withinPercentage(ROUNDING));
        assertThat(taken.overYear().low() * SECONDS_PER_YEAR).isCloseTo(2.03125, withinPercentage(ROUNDING));
        assertThat(taken.overYear().high() * SECONDS_PER_YEAR).isCloseTo(2.03125, withinPercentage(ROUNDING));
    }

    /** Background: 0.1 kg/m3 x 2e-7 kg/kg + 1e-9 kg/m3 = 2.1e-8 kg/m3; times 0.5 m3/s. A fifth of it goes to one of two. */
    @Test
    void backgroundGoesAlong() {
        TestRiver river = TestRiver.chain(2, 1000, 2);
        river.sediment = 0.1;
        river.content = 2e-7;
        river.filtered = 1e-9;
        river.cohesive("fine", 0, 0.1, 200, 1);
        river.abstraction.put("r1", 0.5);
        SteadyResult result = river.run();
        assertThat(AbstractedMercury.of(result, river.index("r1"), List.of(1.0))
                        .overYear()
                        .high())
                .isCloseTo(0.5 * 2.1e-8, withinPercentage(ROUNDING));
        assertThat(AbstractedMercury.of(result, river.index("r1"), List.of(0.2))
                        .overYear()
                        .high())
                .isCloseTo(0.1 * 2.1e-8, withinPercentage(ROUNDING));
        assertThat(AbstractedMercury.of(result, river.index("r0"), List.of(1.0))
                        .overYear()
                        .high())
                .isZero();
        assertThatThrownBy(() -> AbstractedMercury.of(result, 0, List.of())).hasMessageContaining("per flow state");
    }

    /** In every state, bound and variant the points add up to the budget's term; one of them takes all the water there is. */
    @Test
    void pointsAddUpToTheBudget() {
        TestRiver river = lossless();
        river.sediment = 0.05;
        river.content = 1e-7;
        river.filtered = 1e-9;
        river.site("r0", 3e-7, OptionalDouble.empty(), 0.01, 0, false);
        river.cohesive("coarse", 2e-4, 0.1, 20, 0);
        river.sites.replaceAll(s -> new TestRiver.Site(
                s.name(), s.reach(), s.mercury(), s.exchangeable(), List.of(0.5, 0.5), s.solids(), 0, false));
        river.abstraction.put("r2", 1000.0);
        SteadyResult result = river.run();
        assertThat(result.variants()).isEqualTo(2);
        for (Bound bound : Bound.both()) {
            for (int s = 0; s < 2; s++) {
                for (int v = 0; v < 2; v++) {
                    StateSolution solution = result.solution(bound, s);
                    double sum = 0;
                    for (int r = 0; r < 3; r++) {
                        sum += solution.abstracted(r, v);
                    }
                    assertThat(sum).isPositive();
                    assertThat(sum).isCloseTo(solution.balance(v).sum(Process.ABSTRACTED), withinPercentage(ROUNDING));
                }
            }
        }
        AbstractedMercury last = AbstractedMercury.of(result, river.index("r2"), List.of(1.0, 1.0));
        assertThat(last.water(0)).isCloseTo(1.5, withinPercentage(ROUNDING));
        assertThat(last.overYear().high()).isGreaterThan(last.overYear().low());
    }

    /** 40 ha x 0.2 m x 1300 kg/m3 = 1.04e8 kg; 0.52 kg/yr add 5e-9 kg/kg/yr = 0.005 mg/kg/yr. */
    @Test
    void ploughLayer() {
        PloughLayer layer = new PloughLayer(40e4, 0.2, 1300);
        assertThat(layer.mass()).isCloseTo(1.04e8, withinPercentage(ROUNDING));
        assertThat(layer.added(0.52)).isCloseTo(5e-9, withinPercentage(ROUNDING));
        assertThatThrownBy(() -> new PloughLayer(0, 0.2, 1300)).hasMessageContaining("above 0");
    }
}
