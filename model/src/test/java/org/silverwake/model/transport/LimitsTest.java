// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.water.Cells;

/** Slurry, dry reaches, abstractions, floods, and the figures that say how good a run is. */
class LimitsTest {
    /** ROUNDING. */
    private static final double SAME = 1e-12;

    private static TestRiver tailings(double solids) {
        TestRiver river = TestRiver.chain(3, 4000, 2);
        river.cohesive("tailings", 3e-4, 0.5, 40, 1);
        return river.site("r0", 1e-7, OptionalDouble.of(0.5), solids, 0, false);
    }

    @Test
    void aReachAboveFiveGramsPerLiterIsMarkedAsSlurry() {
        assertThat(tailings(9.9).run().solution(Bound.LAID_DOWN, 0).slurry()).isEmpty();
        SteadyResult result = tailings(10.1).run();
        assertThat(result.solution(Bound.LAID_DOWN, 0).slurry()).containsExactly(0);
        assertThat(result.solution(Bound.CARRIED_THROUGH, 0).slurry()).containsExactly(0, 1, 2);
    }

    @Test
    void aboveTwoHundredGramsPerLiterTheRunIsRefusedAndTheReachNamed() {
        assertThat(tailings(399).run().solution(Bound.LAID_DOWN, 0).slurry()).contains(0);
        assertThatThrownBy(() -> tailings(402).run())
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("reach r0")
                .hasMessageContaining("201 g/L")
                .hasMessageContaining("200 g/L");
    }

    @Test
    void solidsThatSettleWithinTheReachDoNotHideThatItIsSlurry() {
        TestRiver river = TestRiver.chain(1, 4000, 2);
        river.particles("measured", 0, true, 1, 0, OptionalDouble.of(50), 1);
        river.site("r0", 1e-7, OptionalDouble.of(0.5), 500, 0, false);
        assertThatThrownBy(river::run).isInstanceOf(OutsideModelException.class).hasMessageContaining("250 g/L");
    }

    @Test
    void hindranceGoesByTheMeanContentSoThatCuttingConvergesAtOrderTwo() {
        TestRiver river = tailings(200);
        river.length.set(0, 1000.0); // 100 g/L at its head, 43 at its end
        TransportInput input = river.input();
        double[] out = new double[5];
        Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(4);
        for (int k = 0; k < out.length; k++) {
            out[k] = SteadyRun.solve(input, cells).solution(Bound.LAID_DOWN, 0).loadOut(0, 1, 0);
            cells = cells.finer(2);
        }
        for (int k = 1; k + 2 < out.length; k++) {
            double order = StrictMath.log((out[k + 1] - out[k]) / (out[k + 2] - out[k + 1])) / StrictMath.log(2);
            assertThat(order).isCloseTo(2, within(0.1));
        }
    }

    @Test
    void mercuryReleasedIntoADryReachIsHeldThere() {
        TestRiver river = new TestRiver();
        river.reach("gully", 0, 2, 500, 0, 0).reach("river", 1, 2, 3000, 5, 0).reach("below", 2, 3, 2000, 0, 0);
        river.cohesive("silt", 0, 0.1, 100, 1);
        river.site("gully", 3e-7, 1).site("river", 1e-7, 1);
        SteadyResult result = river.run();
        Balance balance = result.solution(Bound.LAID_DOWN, 0).releasedBalance(0);
        assertThat(balance.sum(Process.HELD_DRY)).isEqualTo(3e-7);
        assertThat(balance.sum(Process.EXPORTED) / 1e-7).isCloseTo(1, within(SAME));
        assertThat(result.isWet(0, river.index("gully"))).isFalse();
        assertThat(result.isBelowSite(river.index("gully"))).isTrue();
    }

    @Test
    void anAbstractionTakesItsShareOfTheLoad() {
        TestRiver river = TestRiver.chain(2, 3000, 8);
        river.cohesive("silt", 0, 0.1, 100, 1).site("r0", 4e-7, 1);
        river.content = 1e-7;
        river.sediment = 0.05;
        river.filtered = 1e-9;
        river.abstraction.put("r1", 2.0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(1, 0) / 3e-7).isCloseTo(1, within(SAME));
        assertThat(solution.releasedBalance(0).sum(Process.ABSTRACTED) / 1e-7).isCloseTo(1, within(SAME));
        // taking water changes no concentration
        assertThat(solution.whole(1, Place.END, 0, true) / solution.whole(0, Place.END, 0, true))
                .isCloseTo(1, within(SAME));
    }

    @Test
    void anAbstractionOfMoreThanThereIsTakesAll() {
        for (double lateral : new double[] {0, 1}) {
            TestRiver river = TestRiver.chain(2, 3000, 8);
            river.along.set(1, lateral);
            river.cohesive("silt", 0, 0.1, 100, 1).site("r0", 4e-7, 1);
            river.filtered = 1e-9;
            river.abstraction.put("r1", 9.0);
            TransportInput input = river.input();
            StateSolution solution = SteadyRun.run(input).solution(Bound.LAID_DOWN, 0);
            assertThat(input.hydraulics().water(0).emptied()).containsExactly(1);
            assertThat(solution.balance(0).sum(Process.ABSTRACTED) / (4e-7 + 8e-9))
                    .isCloseTo(1, within(SAME));
            assertThat(solution.balance(0).sum(Process.HELD_DRY)).isZero();
            assertThat(solution.loadOut(1, 0)).isZero();
        }
    }

    private static TestRiver flood(boolean flood) {
        TestRiver river = TestRiver.chain(1, 3000, 6);
        river.flood = List.of(flood);
        river.setDown = 1000;
        // P = w/(0.41 u*) = 0.05/(0.41 x 0.0071) is above 2.5: all bed load, w/H = 0.06/s
        river.particles("sand", 0.05, false, 1, 0, OptionalDouble.empty(), 1);
        return river.site("r0", 1e-7, 0);
    }

    @Test
    void aFloodSetsSandDownWithAnEFoldOfOneKilometer() {
        StateSolution inFlood = flood(true).run().solution(Bound.LAID_DOWN, 0);
        assertThat(inFlood.loadOut(0, 0) / (1e-7 * StrictMath.exp(-3))).isCloseTo(1, within(SAME));
        StateSolution otherwise = flood(false).run().solution(Bound.LAID_DOWN, 0);
        assertThat(otherwise.settlingRate(0, 1)).isCloseTo(0.05 / 0.8, within(SAME));
    }

    @Test
    void aFloodTakesTheStatedShareOfSuspendedLoadOverbank() {
        for (boolean flood : new boolean[] {true, false}) {
            TestRiver river = TestRiver.chain(2, 4000, 6);
            river.flood = List.of(flood);
            river.overbank = 5e-5;
            river.sediment = 0.1;
            river.cohesive("silt", 0, 0.1, 100, 1).site("r0", 1e-7, 0.5);
            StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
            double sorbed = 100 * 0.1 / (1 + 100 * 0.1);
            double km = flood ? 5e-5 * 8000 : 0;
            assertThat(solution.loadOut(1, 1, 0) / (5e-8 * StrictMath.exp(-km))).isCloseTo(1, within(SAME));
            assertThat(solution.loadOut(1, 0, 0) / (5e-8 * StrictMath.exp(-km * sorbed)))
                    .isCloseTo(1, within(SAME));
            double left = solution.loadOut(1, 0);
            assertThat(solution.balance(0).sum(Process.OVERBANK)).isCloseTo(1e-7 - left, within(1e-7 * SAME));
        }
    }

    @Test
    void theDispersionNumberIsOfFormsThatCountWhateverOtherSitesRelease() {
        TestRiver river = new TestRiver();
        river.reach("brook", 0, 2, 2000, 1, 0).reach("river", 1, 2, 2000, 50, 0).reach("below", 2, 3, 100, 0, 0);
        for (int k = 1; k < 3; k++) {
            river.velocity.set(k, 1.0);
            river.depth.set(k, 2.0);
        }
        river.cohesive("none", 0, 0.1, 0, 0);
        river.cohesive("tailings", 3e-4, 0.5, 40, 1);
        river.grainRelease = 1e-6;
        // a hundred-and-fiftieth of all that is released, but all there is in the brook
        river.site("brook", 1e-8, OptionalDouble.empty(), 0, 0, false);
        river.site(new TestRiver.Site("large", "river", 1.5e-6, OptionalDouble.of(0), List.of(1.0, 0.0), 0, 0, false));
        double k = 3e-4 * 0.9 / 0.8 + 1e-6;
        double width = 1 / (0.4 * 0.8);
        double friction = StrictMath.sqrt(0.05 / 998.2);
        // k D/U^2, D = 0.011 U^2 B^2/(H u*), Fischer (1975); density rounded: 1e-4
        double number = k * 0.011 * width * width / (0.8 * friction);
        double large = 1e-6 * 0.011 * 25.5 * 25.5 / (2 * friction);
        assertThat(number).isGreaterThan(large);
        SteadyResult result = river.run();
        assertThat(result.dispersionNumber(0) / number).isCloseTo(1, within(1e-4));
    }

    @Test
    void changeOnHalvingSeesAReachWhoseSiteIsSmallAmongAll() {
        TestRiver river = tailings(0.4);
        river.reach("other", 8, 9, 1000, 5, 0);
        river.site("other", 1e-4, 1);
        TransportInput input = river.input();
        assertThat(SteadyRun.changeOnHalving(input, SteadyRun.run(input)).loads())
                .isBetween(0.01, 0.5);
    }
}
