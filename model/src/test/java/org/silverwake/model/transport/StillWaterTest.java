// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult.Fraction;

/** Still water in a river, against hand calculations of one mixed tank: steady, Q c_in = Q c + k V c. */
class StillWaterTest {
    /** ROUNDING: some tens of operations. */
    private static final double EXACT = 1e-12;

    /** So that nothing settles in rivers: they are run through in less than 1e-11 s. */
    private static final double IN_NO_TIME = 1e15;

    private static final double AREA = 2e6;
    private static final double DEPTH = 5;
    private static final double FLOW = 4;
    private static final double SETTLING = 1e-6;

    /** r0, then r1 to r3 in a lake, then r4; all mercury is bound to one class that has no critical shear to speak of. */
    private static TestRiver lake() {
        TestRiver river = TestRiver.chain(5, 2000, FLOW)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .lake("Round Lake", AREA, DEPTH, "r1", "r2", "r3")
                .site("r0", 3e-6, 0);
        river.velocity.replaceAll(u -> IN_NO_TIME);
        return river;
    }

    private static double passed(double flow) {
        return 1 / (1 + SETTLING / DEPTH * AREA * DEPTH / flow);
    }

    @Test
    void severalReachesAreOneTank() {
        SteadyResult result = lake().run();
        StateSolution laidDown = result.solution(Bound.LAID_DOWN, 0);
        assertThat(laidDown.loadOut(4, 0) / 3e-6).isCloseTo(passed(FLOW), within(EXACT));
        assertThat(laidDown.loadOut(2, 0) / 3e-6).isCloseTo(1, within(EXACT));
        assertThat(result.worstClosure()).isLessThan(SteadyRun.CLOSURE);
        // carried through: nothing is said to stay
        assertThat(result.solution(Bound.CARRIED_THROUGH, 0).loadOut(4, 0) / 3e-6)
                .isCloseTo(1, within(EXACT));
    }

    @Test
    void itsWaterIsTheSameInAllItsReaches() {
        StateSolution solution = lake().run().solution(Bound.LAID_DOWN, 0);
        double mixed = 3e-6 * passed(FLOW) / FLOW;
        for (int r = 1; r <= 3; r++) {
            for (Place place : Place.values()) {
                assertThat(solution.whole(r, place, 0, true) / mixed).isCloseTo(1, within(EXACT));
            }
        }
        assertThat(solution.whole(0, Place.END, 0, true) / (3e-6 / FLOW)).isCloseTo(1, within(EXACT));
    }

    @Test
    void aTributaryMixesWhereverItEnters() {
        // the same lake with a second stream into its lower end, laden: the tank takes both
        TestRiver river = lake().reach("side", 20, 3, 1000, 2, 0).site("side", 5e-6, 0);
        river.velocity.replaceAll(u -> IN_NO_TIME);
        SteadyResult result = river.run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        double out = 8e-6 * passed(FLOW + 2);
        assertThat(solution.loadOut(river.index("r4"), 0) / out).isCloseTo(1, within(EXACT));
        // and its upper reach, above the confluence, holds the same water
        for (String id : List.of("r1", "r2", "r3")) {
            assertThat(result.largest(Bound.LAID_DOWN, 0, 0, river.index(id), Fraction.WHOLE) / (out / (FLOW + 2)))
                    .as(id)
                    .isCloseTo(1, within(EXACT));
        }
    }

    @Test
    void aReachAboveTheMouthOfALadenStreamIsBelowASite() {
        TestRiver river = TestRiver.chain(4, 2000, FLOW)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .lake("Round Lake", AREA, DEPTH, "r1", "r2")
                .reach("side", 20, 2, 1000, 2, 0)
                .site("side", 5e-6, 0);
        SteadyResult result = river.run();
        assertThat(result.isBelowSite(river.index("r0"))).isFalse();
        assertThat(result.isBelowSite(river.index("r1"))).isTrue();
    }

    @Test
    void waterThatJoinsAlongItIsInItsDischarge() {
        // 1 m3/s of clean water along each of two reaches: T = V over what flows out
        TestRiver river = TestRiver.chain(2, 3000, FLOW)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .lake("Round Lake", AREA, DEPTH, "r0", "r1")
                .site("r0", 3e-6, 0);
        river.along.replaceAll(a -> 1.0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(1, 0) / (3e-6 * passed(FLOW + 2))).isCloseTo(1, within(EXACT));
    }

    @Test
    void twoWaysOutShareTheVolumeByTheirWater() {
        // the lake splits at its end: a third of the water to one arm, the rest to the other, equally long in it
        TestRiver river = TestRiver.chain(2, 2000, FLOW)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .reach("a", 2, 3, 500, 0, 0)
                .reach("b", 2, 4, 500, 0, 0)
                .reach("below a", 3, 5, 500, 0, 0)
                .reach("below b", 4, 6, 500, 0, 0)
                .lake("Round Lake", AREA, DEPTH, "r1", "a", "b")
                .site("r0", 3e-6, 0);
        river.split.put("a", 1.0);
        river.split.put("b", 2.0);
        river.velocity.replaceAll(u -> IN_NO_TIME);
        SteadyResult result = river.run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(river.index("below a"), 0) / (1e-6 * passed(FLOW)))
                .isCloseTo(1, within(EXACT));
        assertThat(solution.loadOut(river.index("below b"), 0) / (2e-6 * passed(FLOW)))
                .isCloseTo(1, within(EXACT));
        assertThat(result.worstClosure()).isLessThan(SteadyRun.CLOSURE);
    }

    @Test
    void cuttingLeavesItWhole() {
        TestRiver river = lake();
        river.cut = true;
        river.site("r1", 1e-6, OptionalDouble.of(0), 2, 0, false);
        TransportInput input = river.input();
        SteadyResult result = SteadyRun.run(input);
        for (int r = 1; r <= 3; r++) {
            assertThat(result.cells().start(r + 1) - result.cells().start(r)).isEqualTo(1);
        }
        assertThat(SteadyRun.changeOnHalving(input, result).loads()).isLessThan(0.01);
    }

    @Test
    void theRiversOwnSolidsAreNotHeldUpInIt() {
        // 0.1 kg/m3 come in; what still water holds is 1/(1 + k T) of them; a river holds them all
        TestRiver river = lake();
        river.sediment = 0.1;
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.sediment(0)).isCloseTo(0.1, within(EXACT));
        assertThat(solution.sediment(1)).isCloseTo(0.1 * passed(FLOW), within(EXACT));
        assertThat(solution.sediment(3)).isCloseTo(0.1 * passed(FLOW), within(EXACT));
        assertThat(solution.sediment(4)).isCloseTo(0.1, within(EXACT));
    }

    @Test
    void statedNetSedimentationHoldsInIt() {
        // S = 1e-8 kg/m2/s of solids; without tailings beta w m = S with m = m_in/(1 + beta k T), so beta k T/(1 + beta
        // k T) = S A/(Q m_in)
        TestRiver river = lake();
        river.sediment = 0.1;
        river.netSedimentation = 1e-8;
        StateSolution solution = river.run().solution(Bound.CARRIED_THROUGH, 0);
        double share = 1e-8 * AREA / (FLOW * 0.1);
        assertThat(solution.sediment(3)).isCloseTo(0.1 * (1 - share), within(EXACT));
        assertThat(solution.loadOut(4, 0) / 3e-6).isCloseTo(1 - share, within(1e-9));
    }

    @Test
    void retentionLengthsOfRiversSayNothingOfIt() {
        TestRiver river = TestRiver.chain(3, 2000, FLOW)
                .particles("silt", SETTLING, true, 1e9, 0, OptionalDouble.of(50_000), 1)
                .lake("Round Lake", AREA, DEPTH, "r1")
                .site("r1", 3e-6, 0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(1, 0) / (3e-6 * passed(FLOW))).isCloseTo(1, within(EXACT));
        assertThat(solution.loadOut(2, 0) / solution.loadOut(1, 0))
                .isCloseTo(StrictMath.exp(-2000.0 / 50_000), within(EXACT));
    }

    @Test
    void nearTheBankEndsAtIt() {
        TestRiver river = TestRiver.chain(3, 200, FLOW)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .site("r0", 3e-6, OptionalDouble.of(0), 0, 0, true)
                .site("r1", 3e-6, OptionalDouble.of(0), 0, 0, true);
        river.velocity.replaceAll(u -> 0.05);
        assertThat(river.run().solution(Bound.LAID_DOWN, 0).isNearBank(2)).isTrue();
        river.lake("Round Lake", AREA, DEPTH, "r1");
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.isNearBank(0)).isTrue();
        assertThat(solution.isNearBank(1)).isFalse();
        assertThat(solution.isNearBank(2)).isFalse();
    }

    @Test
    void dispersionIsNotAskedOfIt() {
        // kD/U^2 would be enormous at the crawl of a lake
        assertThat(lake().run().dispersionNumber(0)).isLessThan(1e-6);
    }

    @Test
    void allTermsAreRatesTimesWhatTheTankHolds() {
        SteadyResult result = lake().run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        int silt = result.input().layout().grainBound(0);
        assertThat(solution.perturbedBalance(0, 3, silt, 1 + 1e-6).closure()).isGreaterThan(1e-8);
        assertThat(solution.releasedBalance(0).sum(Process.SETTLED) / (3e-6 * (1 - passed(FLOW))))
                .isCloseTo(1, within(EXACT));
    }

    @Test
    void aDryLakeHoldsWhatEntersIt() {
        TestRiver river = TestRiver.chain(3, 2000, 0)
                .cohesive("silt", SETTLING, 1e9, 0, 1)
                .lake("Round Lake", AREA, DEPTH, "r0", "r1")
                .site("r0", 3e-6, 0);
        SteadyResult result = river.run();
        assertThat(result.solution(Bound.LAID_DOWN, 0).balance(0).sum(Process.HELD_DRY))
                .isCloseTo(3e-6, within(1e-18));
    }

    /**
     * Chapra (1997), Surface water-quality modeling, example 3.1 (from memory): a lake of 50,000 m3, mean depth 2 m, inflow
     * and outflow 7500 m3/d, 25 degC; 50 kg/d from a factory, 0.6 g/m2/d from the air, 10 mg/L in the inflow; loss 0.25 /d at 20 degC,
     * theta 1.05. In print: loading 140,000 g/d, steady concentration 5.97 mg/L.
     */
    @Test
    void chapra1997Example31() {
        double day = 86400;
        TestRiver river = TestRiver.chain(1, 300, 7500 / day)
                .cohesive("silt", 0, 1e9, 0, 1)
                .lake("lake", 25_000, 2, "r0")
                .site("r0", 140 / day, 0);
        river.celsius = 25;
        river.chemistry = new Chemistry(
                List.of(new Form(Form.COMPLEX, false, new Partitioned(List.of(-300.0), List.of(0.0)), false)),
                List.of(new Reaction(
                        Form.COMPLEX,
                        StateLayout.EXCHANGEABLE,
                        new FirstOrder(ByStateAndKind.same(0.25 / day), 1.05, false),
                        Reaction.Part.TOTAL)),
                List.of(25.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1e-2),
                ByStateAndKind.same(Double.NaN),
                1);
        river.furtherShares.put("site 1", Map.of(Form.COMPLEX, 1.0));
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        int complex = river.input().layout().place(Form.COMPLEX);
        double milligramsPerLiter = solution.form(0, Place.END, complex, 0) * 1000;
        // PRINTED: three digits
        assertThat(milligramsPerLiter).isCloseTo(5.97, within(0.005));
    }
}
