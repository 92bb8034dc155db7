// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/** The two bounds of model.md 5.2: laid down, and carried through with a stated net sedimentation. */
class BoundsTest {
    /** ROUNDING. */
    private static final double SAME = 1e-12;

    private static final double DAY = 86400;
    private static final double HATCHED = 3;

    /** The classes of model.md section 11: 5, 20, 100 um; ball-mill tailings 30/40/30 %. */
    private static TestRiver longRiver(double exchangeable) {
        TestRiver river = new TestRiver();
        for (int k = 0; k < 100; k++) {
            river.reach("r" + k, k, k + 1, 2000, k == 0 ? 3 : 0, 0.1);
            river.velocity.set(k, 0.15);
            river.depth.set(k, 1.5);
        }
        // a lowland river at low water: implied n 0.04, sand bed, skin shear 0.05 Pa
        river.slope = OptionalDouble.of(2e-5);
        river.medianDiameter = 2e-4;
        // 0.1 mm/yr for good, at a dry bulk density of 1,060 kg/m3
        river.netSedimentation = 1e-4 * 1060 / TestRiver.SECONDS_PER_YEAR;
        river.sediment = 0.1;
        river.cut = true;
        double[] micrometers = {5, 20, 100};
        double[] background = {0.5, 0.4, 0.1};
        for (int j = 0; j < 3; j++) {
            river.classes.add(new ParticleClass(
                    micrometers[j] + " um",
                    micrometers[j] * 1e-6,
                    2650,
                    FergusonChurch2004.naturalGrains(),
                    j < 2,
                    0.1,
                    j == 0 ? 5.3 : j == 1 ? 4.7 : 4.0,
                    OptionalDouble.empty(),
                    background[j]));
        }
        // 10 kg/yr in 20 t/d of ore
        double mercury = 10 / TestRiver.SECONDS_PER_YEAR;
        return river.site(new TestRiver.Site(
                "mill",
                "r0",
                mercury,
                OptionalDouble.of(exchangeable),
                List.of(0.3, 0.4, 0.3),
                20e3 / DAY,
                0.001,
                false));
    }

    @Test
    void washLoadIsTracedOverHundredSixtyKilometersInOneBoundAndGoneInTheOther() {
        // mercury from amalgamation has been traced 160 km downstream (reference/asgm.md); one bound alone would deny
        // it
        for (double exchangeable : new double[] {0, 1}) {
            SteadyResult result = longRiver(exchangeable).run();
            StateSolution through = result.solution(Bound.CARRIED_THROUGH, 0);
            StateSolution laid = result.solution(Bound.LAID_DOWN, 0);
            int at160 = 79;
            int form = exchangeable == 1 ? 0 : result.input().layout().grainBound(0);
            assertThat(through.loadOut(at160, form, 0) / through.loadIn(0, form, 0))
                    .isGreaterThan(0.5);
            double released = laid.releasedBalance(0).sum(Process.RELEASED);
            assertThat(laid.loadOut(at160, 0) / released).isLessThan(0.05);
            assertThat(result.high(0, at160, Fraction.WHOLE) / result.low(0, at160, Fraction.WHOLE))
                    .isGreaterThan(HATCHED);
        }
    }

    private static TestRiver netRiver(double net) {
        TestRiver river = TestRiver.chain(4, 5000, 6);
        river.sediment = 0.06;
        river.netSedimentation = net;
        river.cohesive("silt", 8e-5, 0.25, 120, 0.7);
        river.cohesive("tailings", 3e-4, 0.25, 40, 0.3);
        return river.site("r0", 2e-7, OptionalDouble.of(0.5), 0.4, 0, false);
    }

    @Test
    void betaIsStatedNetSedimentationOverGrossDeposition() {
        TestRiver river = netRiver(3e-6);
        TransportInput input = river.input();
        Cells cells = Cells.uncut(input.hydraulics().reaches());
        StateHydraulics water = StateHydraulics.of(input.hydraulics(), cells, 0);
        SolidsState solids = SolidsState.sweep(input, cells, water, Bound.CARRIED_THROUGH);
        CellRates rates = CellRates.of(input, cells, water, solids);
        double load = 0.4;
        for (int c = 0; c < cells.count(); c++) {
            double flux = 0;
            for (int j = 0; j < 2; j++) {
                flux += solids.rate(c, j) * water.depth(c) * solids.solids(c, j);
            }
            double beta = solids.beta(c);
            assertThat(beta).isBetween(0.01, 0.99);
            assertThat(beta * flux / 3e-6).isCloseTo(1, within(SAME));
            // the mean tailings are those of a load that decays at the scaled rate
            double x = beta * solids.rate(c, 1) * water.travelTime(c);
            assertThat(solids.tailings(c, 1) * water.mean(c))
                    .isCloseTo(load * (1 - StrictMath.exp(-x)) / x, within(SAME * load));
            load *= StrictMath.exp(-x);
            for (int form = 0; form < 3; form++) {
                assertThat(rates.settled(c, form))
                        .isCloseTo(beta * rates.gross(c, form), within(SAME * rates.gross(c, form)));
            }
        }
    }

    @Test
    void betaIsFoundWhereTailingsAreAllThereIsToLayDown() {
        // without background solids gross deposition runs out as beta grows; close to all of it is asked for
        TestRiver river = TestRiver.chain(1, 40000, 6);
        river.cohesive("tailings", 3e-4, 0.25, 40, 1);
        river.site("r0", 2e-7, OptionalDouble.of(0.5), 0.4, 0, false);
        TransportInput probe = river.input();
        Cells cells = Cells.uncut(probe.hydraulics().reaches());
        StateHydraulics water = StateHydraulics.of(probe.hydraulics(), cells, 0);
        double area = water.width(0) * cells.length(0);
        for (double part : new double[] {0.2, 0.9, 0.99, 0.9998}) {
            river.netSedimentation = part * 0.4 / area;
            TransportInput input = river.input();
            SolidsState solids = SolidsState.sweep(input, cells, water, Bound.CARRIED_THROUGH);
            // net deposition over the reach is S x area: load lost = 1 - e^-x
            double x = -StrictMath.log1p(-part);
            double full = solids.rate(0, 0) * water.travelTime(0);
            assertThat(solids.beta(0)).isCloseTo(Math.min(1, x / full), within(1e-11));
        }
    }

    @Test
    void aHugeNetSedimentationIsLaidDown() {
        SteadyResult result = netRiver(1).run();
        for (int r = 0; r < 4; r++) {
            for (int form = 0; form < 3; form++) {
                double laid = result.solution(Bound.LAID_DOWN, 0).loadOut(r, form, 0);
                assertThat(result.solution(Bound.CARRIED_THROUGH, 0).loadOut(r, form, 0))
                        .isCloseTo(laid, within(SAME * laid));
            }
            assertThat(result.bed(Bound.CARRIED_THROUGH, 0, r))
                    .isCloseTo(result.bed(Bound.LAID_DOWN, 0, r), withinPercentage(1e-9));
        }
    }

    @Test
    void withoutNetSedimentationNothingIsTaken() {
        SteadyResult result = netRiver(0).run();
        StateSolution through = result.solution(Bound.CARRIED_THROUGH, 0);
        assertThat(through.loadOut(3, 0) / 2e-7).isCloseTo(1, within(SAME));
        assertThat(through.balance(0).sum(Process.SETTLED)).isZero();
        assertThat(result.solution(Bound.LAID_DOWN, 0).loadOut(3, 0)).isLessThan(0.5 * 2e-7);
    }

    @Test
    void aMeasuredRetentionLengthHoldsInBothBounds() {
        TestRiver river = TestRiver.chain(2, 9000, 6);
        river.sediment = 0.06;
        river.particles("measured", 1e-4, true, 0.25, 120, OptionalDouble.of(15e3), 1);
        river.site("r0", 2e-7, 0.5);
        SteadyResult result = river.run();
        double sorbed = 120 * 0.06 / (1 + 120 * 0.06);
        for (Bound bound : Bound.both()) {
            StateSolution solution = result.solution(bound, 0);
            assertThat(solution.loadOut(1, 1, 0) / (1e-7 * StrictMath.exp(-18.0 / 15)))
                    .isCloseTo(1, within(SAME));
            assertThat(solution.loadOut(1, 0, 0) / (1e-7 * StrictMath.exp(-18.0 / 15 * sorbed)))
                    .isCloseTo(1, within(SAME));
        }
    }

    @Test
    void anUnknownSplitIsRunAtBothEndsAndLowAndHighSpanThem() {
        TestRiver river = netRiver(0);
        river.sites.clear();
        river.site("r0", 2e-7, OptionalDouble.empty(), 0.4, 0, false);
        SteadyResult result = river.run();
        assertThat(result.variants()).isEqualTo(2);
        StateSolution laid = result.solution(Bound.LAID_DOWN, 0);
        assertThat(laid.loadIn(0, 0, 0)).isEqualTo(2e-7);
        assertThat(laid.loadIn(0, 0, 1)).isZero();
        assertThat(laid.loadIn(0, 2, 1)).isEqualTo(2e-7);
        for (int r = 0; r < 4; r++) {
            double low = Double.POSITIVE_INFINITY;
            double high = 0;
            for (Bound bound : Bound.both()) {
                for (int v = 0; v < 2; v++) {
                    double value = result.largest(bound, v, 0, r, Fraction.WHOLE);
                    low = Math.min(low, value);
                    high = Math.max(high, value);
                }
            }
            assertThat(result.low(0, r, Fraction.WHOLE)).isEqualTo(low);
            assertThat(r == 0 || low < 0.9 * high).isTrue();
            assertThat(result.high(0, r, Fraction.WHOLE)).isEqualTo(high);
        }
        // grain-bound mercury is held by a filter
        assertThat(result.low(0, 0, Fraction.FILTERED)).isZero();
    }
}
