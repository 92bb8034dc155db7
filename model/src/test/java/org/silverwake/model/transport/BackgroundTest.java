// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.water.Cells;

/** Background mercury and the content of what lays down (model.md 5.2). */
class BackgroundTest {
    /** ROUNDING. */
    private static final double SAME = 1e-12;

    private static final double CONTENT = 1e-7; // 0.1 mg/kg
    private static final double FILTERED = 1.5e-9; // 1.5 ng/L

    private static TestRiver river() {
        TestRiver river = new TestRiver();
        river.reach("a", 0, 2, 3000, 3, 0.6);
        river.reach("b", 1, 2, 2000, 0, 1.4);
        river.reach("c", 2, 3, 5000, 0, 2);
        river.sediment = 0.08;
        river.content = CONTENT;
        river.filtered = FILTERED;
        return river.cohesive("silt", 8e-5, 0.25, 120, 1);
    }

    @Test
    void itsLoadIsDischargeTimesWhatTheWaterBrings() {
        // 1,000 mg/L of soil at 0.1 mg/kg is 100 ng/L: model.md 5.2
        TestRiver soil = river();
        soil.sediment = 1;
        soil.filtered = 0;
        StateSolution muddy = soil.run().solution(Bound.LAID_DOWN, 0);
        assertThat(muddy.backgroundWhole(soil.index("c"), Place.END)).isCloseTo(100e-9, within(SAME * 1e-7));
        SteadyResult result = river().run();
        double each = 0.08 * CONTENT + FILTERED;
        for (Bound bound : Bound.both()) {
            StateSolution solution = result.solution(bound, 0);
            for (int c = 0; c < 3; c++) {
                assertThat(solution.backgroundWhole(c, Place.END) / each).isCloseTo(1, within(SAME));
                assertThat(solution.whole(c, Place.END, 0, true) / each).isCloseTo(1, within(SAME));
                double free = 1 / (1 + 120 * 0.08);
                assertThat(solution.backgroundFiltered(c, Place.END) / (free * each))
                        .isCloseTo(1, within(SAME));
            }
            assertThat(solution.balance(0).sum(Process.EXPORTED) / (7 * each)).isCloseTo(1, within(SAME));
        }
    }

    @Test
    void siteWaterDilutesIt() {
        TestRiver river = river();
        river.site("c", 0, OptionalDouble.of(1), 0, 5, false);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        double each = 0.08 * CONTENT + FILTERED;
        assertThat(solution.backgroundWhole(river.index("c"), Place.HEAD) / (0.5 * each))
                .isCloseTo(1, within(SAME));
    }

    @Test
    void withASedimentRatingItStillIsDischargeTimesContentTimesSediment() {
        // SSC = 0.02 Q: the river takes up what it holds from its own bed and banks, at the same content
        for (int pieces : new int[] {1, 8}) {
            TestRiver river = river();
            river.sediment = 0.02;
            river.sedimentExponent = 1;
            TransportInput input = river.input();
            Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(pieces);
            StateSolution solution = SteadyRun.solve(input, cells).solution(Bound.LAID_DOWN, 0);
            int last = cells.count() - 1;
            double mean = 0.5 * (solution.water().head(last) + 7);
            double expected = 0.02 * mean * CONTENT + FILTERED;
            assertThat(solution.backgroundWhole(last, Place.END) / expected).isCloseTo(1, within(SAME));
            assertThat(solution.worstClosure(0)).isLessThan(SAME);
        }
    }

    @Test
    void aSedimentRatingNeverTakesMercuryAway() {
        TestRiver river = river();
        river.sedimentExponent = -0.5;
        river.along.set(2, -4.0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        int c = river.index("c");
        double arriving = solution.backgroundWhole(0, Place.END)
                        * solution.water().end(0)
                + solution.backgroundWhole(1, Place.END) * solution.water().end(1);
        assertThat(solution.backgroundWhole(c, Place.END) * solution.water().end(c) / arriving)
                .isCloseTo(1, within(SAME));
    }

    @Test
    void bedContentIsTheSorbedContentOfSuspendedSolids() {
        // one class: what lays down carries f C / m, f = Kd m/(1 + Kd m)
        TestRiver river = river();
        SteadyResult result = river.run();
        double each = 0.08 * CONTENT + FILTERED;
        double sorbed = 120 * each / (1 + 120 * 0.08);
        for (Bound bound : Bound.both()) {
            for (int r = 0; r < 3; r++) {
                assertThat(result.isBedAssessed(r)).isTrue();
                assertThat(result.bed(bound, 0, r) / sorbed).isCloseTo(1, within(SAME));
            }
        }
        for (int r = 0; r < 3; r++) {
            assertThat(result.backgroundBed(r) / sorbed).isCloseTo(1, within(SAME));
        }
    }

    @Test
    void releasedMercuryAddsItsOwnSorbedContent() {
        TestRiver river = TestRiver.chain(1, 4000, 6);
        river.sediment = 0.06;
        river.content = CONTENT;
        river.cohesive("silt", 8e-5, 0.25, 120, 1).site("r0", 2e-7, 1);
        SteadyResult result = river.run();
        double f = 120 * 0.06 / (1 + 120 * 0.06);
        double x = f * 8e-5 * 0.8 / 0.8 * 4000 / 0.4; // f w p L/(H U), p = 1 - 0.05/0.25
        double meanLaid = 2e-7 / 6 * (1 - StrictMath.exp(-x)) / x;
        double background = f * CONTENT;
        assertThat(result.bed(Bound.LAID_DOWN, 0, 0) / (background + f * meanLaid / 0.06))
                .isCloseTo(1, within(SAME));
        assertThat(result.bed(Bound.CARRIED_THROUGH, 0, 0) / (background + f * 2e-7 / 6 / 0.06))
                .isCloseTo(1, within(SAME));
        assertThat(result.backgroundBed(0) / background).isCloseTo(1, within(SAME));
    }

    @Test
    void tailingsLayDownTheirOwnContent() {
        // tailings of 20 mg/kg, all grain-bound, no other solids: the bed holds 20 mg/kg in both bounds
        TestRiver river = TestRiver.chain(3, 4000, 6);
        river.cohesive("tailings", 8e-5, 0.25, 0, 1);
        river.site("r0", 2e-5 * 0.3, OptionalDouble.of(0), 0.3, 0, false);
        SteadyResult result = river.run();
        for (Bound bound : Bound.both()) {
            for (int r = 0; r < 3; r++) {
                assertThat(result.bed(bound, 0, r) / 2e-5).isCloseTo(1, within(SAME));
            }
        }
    }

    @Test
    void tailingsAndTheirMercuryStayTogetherWhenAFloodTakesThemOverbank() {
        TestRiver river = TestRiver.chain(3, 4000, 6);
        river.flood = List.of(true);
        river.overbank = 1e-4;
        river.cohesive("tailings", 8e-5, 0.25, 0, 1);
        river.site("r0", 2e-5 * 0.3, OptionalDouble.of(0), 0.3, 0, false);
        SteadyResult result = river.run();
        for (Bound bound : Bound.both()) {
            for (int r = 0; r < 3; r++) {
                assertThat(result.bed(bound, 0, r) / 2e-5).isCloseTo(1, within(SAME));
            }
        }
    }

    @Test
    void statesEnterTheBedByTheirSharesOfTheYear() {
        TestRiver river = TestRiver.chain(1, 4000, 6);
        river.flow = new double[] {1, 0, 3};
        river.share = new double[] {0.5, 0.2, 0.3};
        river.flood = List.of(false, false, false);
        river.cohesive("tailings", 8e-5, 0.25, 0, 1);
        river.sediment = 0.05;
        river.site("r0", 1e-7, OptionalDouble.of(0), 0, 0, false);
        SteadyResult result = river.run();
        // carried through: mercury laid down is k M tau in either wet state, solids k m Q tau
        double expected = (0.5 + 0.3) * 1e-7 / (0.05 * (0.5 * 6 + 0.3 * 18));
        assertThat(result.bed(Bound.CARRIED_THROUGH, 0, 0) / expected).isCloseTo(1, within(SAME));
        assertThat(result.isWet(1, 0)).isFalse();
        assertThat(result.largest(Bound.LAID_DOWN, 0, 1, 0, Fraction.WHOLE)).isZero();
        assertThat(result.solution(Bound.LAID_DOWN, 1).balance(0).sum(Process.HELD_DRY))
                .isEqualTo(1e-7);
    }

    @Test
    void whereNoSolidsDepositTheBedIsNotAssessed() {
        TestRiver river = river();
        river.skinShear = 0.3; // above tau_cd
        SteadyResult result = river.run();
        assertThat(result.isBedAssessed(0)).isFalse();
        TestRiver clear = river();
        clear.sediment = 0;
        assertThat(clear.run().isBedAssessed(0)).isFalse();
    }
}
