// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.silverwake.model.fish.FishEstimate.Basis;
import org.silverwake.model.input.Settings;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.validation.Reference;
import org.silverwake.model.water.ReachTable;

/** The chain from water to fish, and measured fish in its place, by hand. */
class FishRunTest {
    private static final double ROUNDING_PERCENT = 1e-10;
    private static final double NANOGRAM_PER_LITER = 1e-9;
    private static final double MILLIGRAM_PER_KILOGRAM = 1e-6;

    /** A chain of reaches far longer than fish swim. */
    private static FishRiver chain(List<Double> low, List<Double> high) {
        int n = low.size();
        RiverNetwork network = RiverNetwork.of(
                IntStream.range(0, n).mapToObj(k -> "r" + k).toList(),
                IntStream.range(0, n).toArray(),
                IntStream.range(1, n + 1).toArray());
        double[] lengths = new double[n];
        java.util.Arrays.fill(lengths, 100_000);
        ReachTable table =
                new ReachTable(network, lengths, IntStream.range(0, n).toArray(), Map.of());
        MethylWater water = new MethylWater(
                low.stream().map(c -> c * NANOGRAM_PER_LITER).toList(),
                high.stream().map(c -> c * NANOGRAM_PER_LITER).toList(),
                low.stream().map(c -> 0.0).toList());
        return new FishRiver(table, java.util.Collections.nCopies(n, 1.0), java.util.Set.of(), Optional.of(water));
    }

    private static FishRun run(FishRiver river, MeasuredFish... measured) {
        return new FishRun(river, Settings.of(Map.of()), List.of(measured));
    }

    private static FishContent content(FishRun run, int reach, TrophicLevel level) {
        return run.find(reach, level).orElseThrow().content();
    }

    private static void assertContent(FishContent found, double low, double middle, double high) {
        assertThat(found.low() / MILLIGRAM_PER_KILOGRAM).isCloseTo(low, withinPercentage(ROUNDING_PERCENT));
        assertThat(found.middle() / MILLIGRAM_PER_KILOGRAM).isCloseTo(middle, withinPercentage(ROUNDING_PERCENT));
        assertThat(found.high() / MILLIGRAM_PER_KILOGRAM).isCloseTo(high, withinPercentage(ROUNDING_PERCENT));
    }

    /**
     * 0.3 mg/kg over 2.7e6 and 6.8e5 L/kg is 0.11 and 0.44 ng/L of dissolved methylmercury: printed to two digits in the
     * project's list of checks, B26, with factors from memory.
     */
    @Test
    @Reference(key = "epa2001mehg", locator = "draft national bioaccumulation factors, from memory")
    void backwardsFromTheCriterion() {
        FishRun four = run(chain(List.of(0.11), List.of(0.11)));
        assertThat(content(four, 0, TrophicLevel.FOUR).middle() / MILLIGRAM_PER_KILOGRAM)
                .isCloseTo(0.3, within(0.3 * 0.005 / 0.11));
        FishRun three = run(chain(List.of(0.44), List.of(0.44)));
        assertThat(content(three, 0, TrophicLevel.THREE).middle() / MILLIGRAM_PER_KILOGRAM)
                .isCloseTo(0.3, within(0.3 * 0.005 / 0.44));
    }

    /** 0.1 to 0.4 ng/L: low 0.1 x 2.7/5, high 0.4 x 2.7 x 5, and between them sqrt(0.1 x 0.4) x 2.7 mg/kg. */
    @Test
    void neverOneNumber() {
        FishRun run = run(chain(List.of(0.1), List.of(0.4)));
        assertContent(content(run, 0, TrophicLevel.FOUR), 0.054, 0.54, 5.4);
        assertThat(run.find(0, TrophicLevel.FOUR).orElseThrow().basis()).isEqualTo(Basis.MODELLED);
    }

    /** Twice the methylmercury, twice the fish. */
    @Test
    void linear() {
        FishContent once = content(run(chain(List.of(0.1), List.of(0.4))), 0, TrophicLevel.THREE);
        FishContent twice = content(run(chain(List.of(0.2), List.of(0.8))), 0, TrophicLevel.THREE);
        assertThat(twice.low()).isCloseTo(2 * once.low(), withinPercentage(ROUNDING_PERCENT));
        assertThat(twice.high()).isCloseTo(2 * once.high(), withinPercentage(ROUNDING_PERCENT));
    }

    /** A low bound of nothing leaves a middle that is something. */
    @Test
    void nothingInTheLowBound() {
        assertContent(content(run(chain(List.of(0.0), List.of(0.4))), 0, TrophicLevel.FOUR), 0, 0.54, 5.4);
    }

    /**
     * Two fish of 0.2 and 0.8 mg/kg, their mean 0.4 and the range 0.2 to 0.8 about it; the chain says 0.27 there. Below, the
     * low bound falls to a tenth, the high one to a half, and their geometric mean to sqrt(1/20).
     */
    @Test
    void measuredFishTakeTheChainsPlaceFromThereDown() {
        FishRun run = run(
                chain(List.of(0.1, 0.1, 0.01), List.of(0.1, 0.1, 0.05)),
                new MeasuredFish(1, TrophicLevel.FOUR, 0.2e-6),
                new MeasuredFish(1, TrophicLevel.FOUR, 0.8e-6));
        assertContent(content(run, 0, TrophicLevel.FOUR), 0.054, 0.27, 1.35);
        assertContent(content(run, 1, TrophicLevel.FOUR), 0.2, 0.4, 0.8);
        assertContent(content(run, 2, TrophicLevel.FOUR), 0.02, 0.4 * StrictMath.sqrt(0.05), 0.4);
        assertThat(run.find(1, TrophicLevel.FOUR).orElseThrow().basis()).isEqualTo(Basis.MEASURED);
        assertThat(run.find(2, TrophicLevel.FOUR).orElseThrow().basis()).isEqualTo(Basis.RATIO);
        assertThat(run.find(1, TrophicLevel.FOUR).orElseThrow().measured()).isEqualTo(2);
        assertThat(run.aboveEstimate()).isEmpty();
    }

    /** A single fish of 0.4 mg/kg stands for 0.2 to 0.8; of the other level, the ratio of the factors and 2 x 2. */
    @Test
    void oneFishIsNoPoint() {
        FishRun run = run(chain(List.of(0.1), List.of(0.1)), new MeasuredFish(0, TrophicLevel.FOUR, 0.4e-6));
        assertContent(content(run, 0, TrophicLevel.FOUR), 0.2, 0.4, 0.8);
        double ratio = 6.8e5 / 2.7e6;
        assertContent(content(run, 0, TrophicLevel.THREE), 0.1 * ratio, 0.4 * ratio, 1.6 * ratio);
        assertThat(run.find(0, TrophicLevel.THREE).orElseThrow().basis()).isEqualTo(Basis.RATIO);
    }

    /** The next measured fish end what those above say. */
    @Test
    void untilTheNextMeasured() {
        FishRun run = run(
                chain(List.of(0.1, 0.1, 0.1), List.of(0.1, 0.1, 0.1)),
                new MeasuredFish(0, TrophicLevel.FOUR, 4e-6),
                new MeasuredFish(1, TrophicLevel.FOUR, 1e-6));
        assertContent(content(run, 1, TrophicLevel.FOUR), 0.5, 1, 2);
        assertContent(content(run, 2, TrophicLevel.FOUR), 0.5, 1, 2);
        assertThat(run.find(2, TrophicLevel.FOUR).orElseThrow().station()).contains(1);
        // the chain's high estimate is 1.35 mg/kg
        assertThat(run.aboveEstimate()).containsExactly(0);
    }

    /** Without methylmercury in the water there is what was measured, and nothing else. */
    @Test
    void withoutMethylmercury() {
        FishRiver river = chain(List.of(0.1, 0.1), List.of(0.1, 0.1));
        FishRun run = run(
                new FishRiver(river.reaches(), river.discharge(), river.dams(), Optional.empty()),
                new MeasuredFish(0, TrophicLevel.FOUR, 0.4e-6));
        assertThat(run.isModelled()).isFalse();
        assertContent(content(run, 0, TrophicLevel.FOUR), 0.2, 0.4, 0.8);
        assertThat(run.find(0, TrophicLevel.FOUR).orElseThrow().background()).isEmpty();
        assertThat(run.find(1, TrophicLevel.FOUR)).isEmpty();
    }
}
