// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.silverwake.model.input.Settings;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.transport.YearBand;
import org.silverwake.model.water.ReachTable;

/**
 * Fish through four years, by hand. Water in ng/L of methylmercury: 0.1 to 0.4, then 0.2 to 0.4, then 0.02 to 0.1, then
 * nothing at all. The factor of trophic level 4 is 2.7e6 L/kg with a factor of 5 either way, both from memory.
 */
class FishYearsTest {
    private static final double ROUNDING_PERCENT = 1e-10;
    private static final double NANOGRAM_PER_LITER = 1e-9;
    private static final double MILLIGRAM_PER_KILOGRAM = 1e-6;
    private static final double[][] WATER = {{0.1, 0.4}, {0.2, 0.4}, {0.02, 0.1}, {0, 0}};
    private static final int PRESENT = 1;

    private static final double LENGTH = 100_000;

    private static ReachTable reaches(double... lengths) {
        int n = lengths.length;
        RiverNetwork network = RiverNetwork.of(
                IntStream.range(0, n).mapToObj(k -> "r" + k).toList(),
                IntStream.range(0, n).toArray(),
                IntStream.range(1, n + 1).toArray());
        return new ReachTable(network, lengths, IntStream.range(0, n).toArray(), Map.of());
    }

    private static FishRun fish(ReachTable reaches, double low, double high, MeasuredFish... measured) {
        int n = reaches.size();
        MethylWater water = new MethylWater(
                Collections.nCopies(n, low * NANOGRAM_PER_LITER),
                Collections.nCopies(n, high * NANOGRAM_PER_LITER),
                Collections.nCopies(n, 0.0));
        FishRiver river = new FishRiver(reaches, Collections.nCopies(n, 1.0), Set.of(), Optional.of(water));
        return new FishRun(river, Settings.of(Map.of()), List.of(measured));
    }

    private static YearBand water() {
        YearBand band = new YearBand(WATER.length, 1);
        for (int year = 0; year < WATER.length; year++) {
            band.put(year, 0, WATER[year][0] * NANOGRAM_PER_LITER, WATER[year][1] * NANOGRAM_PER_LITER);
        }
        return band;
    }

    private static void assertContent(FishYears years, int year, double low, double middle, double high) {
        FishContent found = years.find(year, 0, TrophicLevel.FOUR).orElseThrow();
        assertThat(found.low() / MILLIGRAM_PER_KILOGRAM).isCloseTo(low, withinPercentage(ROUNDING_PERCENT));
        assertThat(found.middle() / MILLIGRAM_PER_KILOGRAM).isCloseTo(middle, withinPercentage(ROUNDING_PERCENT));
        assertThat(found.high() / MILLIGRAM_PER_KILOGRAM).isCloseTo(high, withinPercentage(ROUNDING_PERCENT));
    }

    /** 0.1 x 2.7/5 = 0.054, sqrt(0.1 x 0.4) x 2.7 = 0.54, 0.4 x 2.7 x 5 = 5.4 mg/kg; in year 2 by 0.02 and 0.1 ng/L. */
    @Test
    void byTheChain() {
        FishYears years = FishYears.of(fish(reaches(LENGTH), 0.2, 0.4), water(), PRESENT);
        assertContent(years, 0, 0.054, 0.54, 5.4);
        assertContent(years, 2, 0.0108, StrictMath.sqrt(0.002) * 2.7, 1.35);
        assertContent(years, 3, 0, 0, 0);
        assertThat(years.contents(TrophicLevel.FOUR).high(0, 0))
                .isEqualTo(years.find(0, 0, TrophicLevel.FOUR).orElseThrow().high());
    }

    /**
     * A fish of 0.4 mg/kg stands for 0.2 to 0.8 in the year of the work, 1. In year 2 the low water is a tenth of that year's,
     * the high a quarter, the middle the geometric mean; in year 0 a half and the same, so that the ranges widen.
     */
    @Test
    void measuredFishFollowTheWater() {
        FishRun fish = fish(reaches(LENGTH), 0.2, 0.4, new MeasuredFish(0, TrophicLevel.FOUR, 0.4e-6));
        FishYears years = FishYears.of(fish, water(), PRESENT);
        assertContent(years, PRESENT, 0.2, 0.4, 0.8);
        assertContent(years, 2, 0.02, 0.4 * StrictMath.sqrt(0.1 * 0.25), 0.2);
        assertContent(years, 0, 0.1, 0.4 * StrictMath.sqrt(0.5), 0.8);
        assertContent(years, 3, 0, 0, 0);
    }

    /** Where the model has no methylmercury in the year of the work, fish measured then tell nothing of other years. */
    @Test
    void nothingToCarryThemBy() {
        FishRun fish = fish(reaches(LENGTH), 0, 0, new MeasuredFish(0, TrophicLevel.FOUR, 0.4e-6));
        FishYears years = FishYears.of(fish, water(), 3);
        assertThat(years.find(0, 0, TrophicLevel.FOUR)).isEmpty();
        assertThat(years.contents(TrophicLevel.FOUR).high(0, 0)).isZero();
    }

    /** Two reaches of 2 km, of 0.1 and 0.3 ng/L: both within the range of 10 km, so fish of either hold the mean's 0.2. */
    @Test
    void overTheirRange() {
        YearBand water = new YearBand(1, 2);
        water.put(0, 0, 0.1 * NANOGRAM_PER_LITER, 0.1 * NANOGRAM_PER_LITER);
        water.put(0, 1, 0.3 * NANOGRAM_PER_LITER, 0.3 * NANOGRAM_PER_LITER);
        FishYears years = FishYears.of(fish(reaches(2000, 2000), 1, 1), water, 0);
        assertContent(years, 0, 0.2 * 2.7 / 5, 0.2 * 2.7, 0.2 * 2.7 * 5);
    }

    /** A work dated before the first year or after the last takes the nearest. */
    @Test
    void aWorkOutsideTheYears() {
        FishRun fish = fish(reaches(LENGTH), 0.2, 0.4, new MeasuredFish(0, TrophicLevel.FOUR, 0.4e-6));
        assertContent(FishYears.of(fish, water(), -7), 0, 0.2, 0.4, 0.8);
    }
}
