// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.water.WaterBodies;

/** Mass on random trees and braids (model.md sections 3 and 7): nothing is lost that no process takes. */
class ConservationTest {
    /** ROUNDING: model.md section 3. */
    private static final double CONSERVED = 1e-12;
    /** ROUNDING: a few thousand additions. */
    private static final double CLOSED = 1e-12;

    private static final int SEEDS = 25;
    private static final int NODES = 40;

    /** Node k has one or two reaches to later nodes; about a third of the nodes are heads. */
    static TestRiver random(long seed, boolean braided) {
        return random(seed, braided, NODES);
    }

    /** The same with this many nodes beside the outlet. */
    static TestRiver random(long seed, boolean braided, int nodes) {
        Random random = new Random(seed);
        TestRiver river = new TestRiver();
        boolean[] fed = new boolean[nodes + 1];
        int count = 0;
        for (int k = 0; k < nodes; k++) {
            int arms = braided && random.nextInt(3) == 0 ? 2 : 1;
            for (int a = 0; a < arms; a++) {
                int below = k + 1 + random.nextInt(Math.min(4, nodes - k));
                double meters = 200 + 4000 * random.nextDouble();
                double start = fed[k] ? 0 : 0.5 + random.nextDouble();
                river.reach("r" + count, k, below, meters, start, 0.3 * random.nextDouble());
                river.velocity.set(count, 0.1 + random.nextDouble());
                river.depth.set(count, 0.2 + random.nextDouble());
                fed[below] = true;
                count++;
            }
        }
        river.sediment = 0.08;
        return river;
    }

    private static void sites(TestRiver river, long seed) {
        Random random = new Random(~seed);
        for (int k = 0; k < 6; k++) {
            String reach = river.ids.get(random.nextInt(river.ids.size()));
            OptionalDouble split = k % 2 == 0 ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble());
            river.site(reach, 1e-6 * random.nextDouble(), split, 0.05 * random.nextDouble(), 0.01, k % 3 == 0);
        }
    }

    private static TestRiver lossless(long seed, boolean braided) {
        TestRiver river = random(seed, braided);
        river.cohesive("fine", 0, 0.1, 200, 1);
        river.cohesive("tailings", 0, 0.1, 40, 0);
        river.grainRelease = 2e-6;
        river.content = 1e-7;
        river.filtered = 2e-9;
        sites(river, seed);
        return river;
    }

    @Test
    void whatIsReleasedLeavesAtTheOutletsWhereNothingTakesIt() {
        for (long seed = 0; seed < SEEDS; seed++) {
            for (boolean braided : new boolean[] {false, true}) {
                SteadyResult result = lossless(seed, braided).run();
                for (Bound bound : Bound.both()) {
                    for (int v = 0; v < result.variants(); v++) {
                        Balance balance = result.solution(bound, 0).releasedBalance(v);
                        double released = balance.sum(Process.RELEASED);
                        assertThat(released).isPositive();
                        assertThat(balance.sum(Process.EXPORTED) / released).isCloseTo(1, within(CONSERVED));
                    }
                }
            }
        }
    }

    @Test
    void waterCorrectionsTakeNoMercury() {
        int corrected = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            TestRiver river = lossless(seed, true);
            Random random = new Random(seed + 1000);
            for (int k = 0; k < river.ids.size(); k++) {
                if (random.nextInt(3) == 0) {
                    river.along.set(k, -2 * random.nextDouble());
                }
            }
            TransportInput input = river.input();
            corrected += input.hydraulics().water(0).corrected().size();
            StateSolution solution = SteadyRun.run(input).solution(Bound.LAID_DOWN, 0);
            Balance released = solution.releasedBalance(0);
            double kept = released.sum(Process.EXPORTED) + released.sum(Process.HELD_DRY);
            assertThat(kept / released.sum(Process.RELEASED)).isCloseTo(1, within(CONSERVED));
            Balance all = solution.balance(0);
            double left = all.sum(Process.EXPORTED) + all.sum(Process.HELD_DRY);
            assertThat(left / (all.sum(Process.RELEASED) + all.sum(Process.BACKGROUND)))
                    .isCloseTo(1, within(CONSERVED));
        }
        assertThat(corrected).isGreaterThan(SEEDS);
    }

    @Test
    void aReachThatLosesAllItsWaterPassesItsMercuryToTheWaterBelow() {
        TestRiver river = TestRiver.chain(2, 1000, 2);
        river.along.set(0, -5.0);
        river.along.set(1, 3.0);
        river.cohesive("fine", 0, 0.1, 200, 1).site("r0", 4e-7, 1);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(0, 0) / 4e-7).isCloseTo(1, within(CONSERVED));
        assertThat(solution.whole(1, Place.END, 0, true) / (4e-7 / 3)).isCloseTo(1, within(CONSERVED));
        assertThat(solution.hasWater(0, Place.END)).isFalse();
        assertThat(solution.hasWater(1, Place.HEAD)).isFalse();
    }

    private static TestRiver losing(long seed) {
        TestRiver river = random(seed, true);
        river.cohesive("fine", 2e-5, 0.1, 200, 0.8);
        river.particles("sand", 5e-3, false, 1, 5, OptionalDouble.empty(), 0.2);
        river.cohesive("tailings", 3e-4, 0.07, 40, 0);
        river.grainRelease = 2e-6;
        river.content = 1e-7;
        river.filtered = 2e-9;
        river.flood = List.of(true);
        river.overbank = 2e-5;
        river.netSedimentation = 1e-7;
        river.cut = true;
        river.abstraction.put("r7", 0.2);
        river.abstraction.put("r20", 0.3);
        sites(river, seed);
        return river;
    }

    @Test
    void budgetsCloseWhateverTakesMercury() {
        for (long seed = 0; seed < SEEDS; seed++) {
            SteadyResult result = losing(seed).run();
            assertThat(result.worstClosure()).isLessThan(CLOSED);
            for (Bound bound : Bound.both()) {
                Balance balance = result.solution(bound, 0).releasedBalance(0);
                for (Balance.Row row : balance.rows()) {
                    assertThat(row.rate()).isGreaterThanOrEqualTo(0);
                }
                assertThat(balance.closure()).isLessThan(CLOSED);
                assertThat(balance.sum(Process.SETTLED)).isPositive();
                assertThat(balance.sum(Process.OVERBANK)).isPositive();
            }
        }
    }

    @Test
    void closureIsNotFoundByDifference() {
        SteadyResult result = losing(3).run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        double released = solution.releasedBalance(0).sum(Process.RELEASED);
        int noticed = 0;
        for (int cell = 0; cell < result.cells().count(); cell++) {
            if (solution.mercuryDeposition(cell, 0) > 0.02 * released) {
                double largest = 0;
                for (int form = 0; form < result.input().layout().count(); form++) {
                    largest = Math.max(
                            largest,
                            solution.perturbedBalance(0, cell, form, 1 + 1e-6).closure());
                }
                assertThat(largest).isGreaterThan(SteadyRun.CLOSURE);
                noticed++;
            }
        }
        assertThat(noticed).isPositive();
    }

    @Test
    void aLargeBackgroundDoesNotHideThatReleasesDoNotClose() {
        TestRiver river = TestRiver.chain(1, 2000, 500);
        river.sediment = 1;
        river.content = 1e-6;
        river.cohesive("fine", 1e-4, 0.1, 200, 1).site("r0", 1e-9, 1);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        assertThat(solution.balance(0).sum(Process.BACKGROUND)).isGreaterThan(1e5 * 1e-9);
        // off by 1e-6 it shows on its own; summed with 5e5 times as much background it would not
        assertThat(solution.perturbedBalance(0, 0, 0, 1 + 1e-6).closure()).isGreaterThan(SteadyRun.CLOSURE);
        assertThat(solution.worstClosure(0)).isLessThan(CLOSED);
    }

    /** A quarter of the reaches, with all between them, are one still water. */
    static boolean withLake(TestRiver river, long seed) {
        Random random = new Random(seed * 31 + 7);
        RiverNetwork network = river.input().hydraulics().reaches().network();
        List<Integer> own = new ArrayList<>();
        int first = random.nextInt(network.size());
        for (int r = first; r < Math.min(network.size(), first + network.size() / 4); r++) {
            own.add(r);
        }
        own.addAll(WaterBodies.between(network, own));
        river.lake(
                "lake",
                1e6 + 5e7 * random.nextDouble(),
                1 + 10 * random.nextDouble(),
                own.stream().map(network::id).toArray(String[]::new));
        return !own.isEmpty();
    }

    @Test
    void closesWithStillWaterAnywhere() {
        for (long seed = 0; seed < SEEDS; seed++) {
            for (boolean cut : new boolean[] {false, true}) {
                TestRiver river = random(seed, true);
                river.cohesive("fine", 2e-5, 0.1, 200, 0.7);
                river.cohesive("tailings", 3e-4, 0.1, 40, 0.3);
                river.content = 1e-7;
                river.filtered = 2e-9;
                river.netSedimentation = 1e-7;
                river.flood = List.of(true);
                river.overbank = 1e-5;
                river.grainRelease = 2e-6;
                river.cut = cut;
                sites(river, seed);
                assertThat(withLake(river, seed)).isTrue();
                TransportInput input = river.input().over(new TestBed().input(1));
                SteadyResult result = SteadyRun.run(input);
                assertThat(result.worstClosure()).as("seed %d", seed).isLessThan(CLOSED);
                for (Bound bound : Bound.values()) {
                    for (int r = 0; r < input.hydraulics().reaches().size(); r++) {
                        for (int v = 0; v < result.variants(); v++) {
                            assertThat(result.solution(bound, 0).loadOut(r, v)).isNotNegative();
                        }
                    }
                }
            }
        }
    }

    @Test
    void losslessStillWaterLetsAllPass() {
        for (long seed = 0; seed < SEEDS; seed++) {
            TestRiver river = lossless(seed, true);
            withLake(river, seed);
            SteadyResult result = river.run();
            for (int v = 0; v < result.variants(); v++) {
                Balance balance = result.solution(Bound.LAID_DOWN, 0).releasedBalance(v);
                assertThat(balance.sum(Process.EXPORTED) / balance.sum(Process.RELEASED))
                        .isCloseTo(1, within(CONSERVED));
            }
        }
    }
}
