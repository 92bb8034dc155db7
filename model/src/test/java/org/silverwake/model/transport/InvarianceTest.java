// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.water.Cells;

/** What must hold whatever the numbers are (model.md section 7), and how results approach those of ever finer cells. */
class InvarianceTest {
    /** ROUNDING. */
    private static final double SAME = 1e-12;
    /** DISCRETIZATION: the observed order over four halvings. */
    private static final double ORDER = 0.1;

    private static TestRiver river(long seed) {
        TestRiver river = ConservationTest.random(seed, true);
        river.cohesive("fine", 2e-5, 0.1, 200, 1);
        river.cohesive("tailings", 3e-4, 0.07, 40, 0);
        river.grainRelease = 1e-6;
        return river;
    }

    private static void add(TestRiver river, double factor) {
        river.site("r2", factor * 3e-7, OptionalDouble.of(0.4), 0.05, 0.01, true);
        river.site("r9", factor * 5e-8, OptionalDouble.empty(), 0.01, 0, false);
    }

    @Test
    void twiceTheReleaseIsTwiceTheResult() {
        for (long seed = 0; seed < 5; seed++) {
            TestRiver one = river(seed);
            add(one, 1);
            TestRiver two = river(seed);
            add(two, 2);
            SteadyResult a = one.run();
            SteadyResult b = two.run();
            for (Bound bound : Bound.both()) {
                for (int v = 0; v < 2; v++) {
                    for (int r = 0; r < one.ids.size(); r++) {
                        for (Fraction fraction : Fraction.values()) {
                            double twice = 2 * a.largest(bound, v, 0, r, fraction);
                            assertThat(b.largest(bound, v, 0, r, fraction)).isCloseTo(twice, within(SAME * twice));
                        }
                        double bed = 2 * a.bed(bound, v, r);
                        assertThat(b.bed(bound, v, r)).isCloseTo(bed, within(SAME * bed));
                    }
                }
            }
        }
    }

    @Test
    void nothingIsNegativeOverTenOrdersOfMagnitude() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            TestRiver river = ConservationTest.random(seed, true);
            for (int k = 0; k < river.ids.size(); k++) {
                river.velocity.set(k, StrictMath.pow(10, -2 + 2.5 * random.nextDouble()));
                river.depth.set(k, StrictMath.pow(10, -2 + 3 * random.nextDouble()));
                river.head.set(k, river.head.get(k) * StrictMath.pow(10, 3 * random.nextDouble()));
            }
            river.sediment = StrictMath.pow(10, -6 + 6 * random.nextDouble());
            river.cohesive("a", spread(random, -9), 0.1, spread(random, -6), 0.5);
            river.particles("b", spread(random, -9), false, 1, spread(random, -6), OptionalDouble.empty(), 0.5);
            river.cohesive("c", spread(random, -9), 0.06, spread(random, -6), 0);
            river.grainRelease = spread(random, -14);
            river.netSedimentation = spread(random, -12);
            river.content = 1e-7;
            river.cut = seed % 2 == 0;
            river.site("r1", spread(random, -14), OptionalDouble.empty(), 0.1 * random.nextDouble(), 1e-3, true);
            SteadyResult result = river.run();
            double released =
                    result.solution(Bound.LAID_DOWN, 0).releasedBalance(0).sum(Process.RELEASED);
            for (Bound bound : Bound.both()) {
                StateSolution solution = result.solution(bound, 0);
                for (int v = 0; v < 2; v++) {
                    for (int r = 0; r < river.ids.size(); r++) {
                        for (int form = 0; form < 4; form++) {
                            assertThat(solution.loadOut(r, form, v)).isBetween(0.0, released * (1 + SAME));
                        }
                        assertThat(result.bed(bound, v, r)).isGreaterThanOrEqualTo(0);
                        assertThat(result.largest(bound, v, 0, r, Fraction.FILTERED))
                                .isBetween(0.0, result.largest(bound, v, 0, r, Fraction.WHOLE) * (1 + SAME));
                    }
                }
            }
        }
    }

    private static double spread(Random random, int lowest) {
        return StrictMath.pow(10, lowest + 10 * random.nextDouble());
    }

    @Test
    void theOrderInWhichReachesAreGivenChangesNothing() {
        TestRiver river = river(11);
        add(river, 1);
        river.split.put("r3", 0.3);
        TestRiver other = river(11);
        other.split.put("r3", 0.3);
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < river.ids.size(); k++) {
            order.add(k);
        }
        Collections.shuffle(order, new Random(5));
        shuffle(other, order);
        add(other, 1);
        SteadyResult a = river.run();
        SteadyResult b = other.run();
        for (String id : river.ids) {
            int r = river.index(id);
            int q = other.index(id);
            for (Bound bound : Bound.both()) {
                double value = a.largest(bound, 1, 0, r, Fraction.WHOLE);
                assertThat(b.largest(bound, 1, 0, q, Fraction.WHOLE)).isCloseTo(value, within(SAME * value));
                double bed = a.bed(bound, 1, r);
                assertThat(b.bed(bound, 1, q)).isCloseTo(bed, within(SAME * bed));
            }
        }
    }

    private static void shuffle(TestRiver river, List<Integer> order) {
        reorder(river.ids, order);
        reorder(river.from, order);
        reorder(river.to, order);
        reorder(river.length, order);
        reorder(river.head, order);
        reorder(river.along, order);
        reorder(river.velocity, order);
        reorder(river.depth, order);
    }

    private static <T> void reorder(List<T> list, List<Integer> order) {
        List<T> copy = List.copyOf(list);
        for (int k = 0; k < copy.size(); k++) {
            list.set(k, copy.get(order.get(k)));
        }
    }

    private static TestRiver pieces(int pieces, double tailings, double lateral) {
        TestRiver river = new TestRiver();
        for (int k = 0; k < pieces; k++) {
            river.reach("r" + k, k, k + 1, 6000.0 / pieces, k == 0 ? 3 : 0, lateral / pieces);
        }
        river.sediment = 0.05;
        river.cohesive("fine", 2e-5, 0.1, 150, 1);
        river.cohesive("tailings", 2.5e-4, 0.5, 40, 0);
        river.grainRelease = 1e-6;
        river.site("r0", 3e-7, OptionalDouble.of(0.5), tailings, 0, false);
        return river;
    }

    private static double outOf(TestRiver river, Bound bound) {
        int last = river.index("r" + (river.ids.size() - 1));
        return river.run().solution(bound, 0).loadOut(last, 0);
    }

    @Test
    void splittingAReachChangesNothingWithoutTailingsAndLateralInflow() {
        for (Bound bound : Bound.both()) {
            double whole = outOf(pieces(1, 0, 0), bound);
            for (int n : new int[] {2, 3, 7}) {
                assertThat(outOf(pieces(n, 0, 0), bound)).isCloseTo(whole, within(SAME * whole));
            }
        }
    }

    @Test
    void finerCellsConvergeAtOrderTwoWithTailingsAndLateralInflow() {
        for (double lateral : new double[] {0, 2}) {
            TestRiver river = pieces(1, 0.6, lateral);
            TransportInput input = river.input();
            Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(8);
            double[] out = new double[7];
            for (int k = 0; k < out.length; k++) {
                out[k] = SteadyRun.solve(input, cells)
                        .solution(Bound.LAID_DOWN, 0)
                        .loadOut(0, 0);
                cells = cells.finer(2);
            }
            for (int k = 0; k + 2 < out.length; k++) {
                double order = StrictMath.log((out[k + 1] - out[k]) / (out[k + 2] - out[k + 1])) / StrictMath.log(2);
                assertThat(order).as("order %s, lateral %s", order, lateral).isCloseTo(2, within(ORDER));
            }
        }
    }

    @Test
    void cuttingMakesASixKilometerReachWithTailingsAccurate() {
        TestRiver river = pieces(1, 0.6, 0.2);
        double uncut = outOf(river, Bound.LAID_DOWN);
        river.cut = true;
        TransportInput input = river.input();
        SteadyResult result = SteadyRun.run(input);
        double cut = result.solution(Bound.LAID_DOWN, 0).loadOut(0, 0);
        double exact = SteadyRun.solve(
                        input, Cells.uncut(input.hydraulics().reaches()).finer(2048))
                .solution(Bound.LAID_DOWN, 0)
                .loadOut(0, 0);
        double halving = SteadyRun.changeOnHalving(input, result).loads();
        // uncut -8.9 %, cut in 43 cells -0.009 %, change on halving 0.007 %
        assertThat(Math.abs(uncut / exact - 1)).isGreaterThan(0.05);
        assertThat(Math.abs(cut / exact - 1)).isLessThan(2e-4);
        assertThat(halving).isBetween(1e-6, 2e-4);
    }

    @Test
    void concentrationIsLoadOverDischargeAtEveryPlace() {
        TestRiver river = pieces(3, 0.1, 1);
        SteadyResult result = river.run();
        StateSolution solution = result.solution(Bound.CARRIED_THROUGH, 0);
        int r = river.index("r1");
        double flow = 3 + 2.0 / 3;
        assertThat(solution.whole(r, Place.END, 0, true))
                .isCloseTo(solution.loadOut(r, 0) / flow, within(SAME * solution.loadOut(r, 0)));
    }
}
