// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.silverwake.model.transport.YearBand;

/**
 * Fish year by year. By the chain they hold what the water of that year says; where fish were measured, what they held in the
 * year of the work, times how the water of that year stands to the water then, low by the estimate that asks for least and
 * high by the one that asks for most. Fish are taken to follow the water of the year: old fish keep mercury of years before,
 * so recovery of large fish lags some years behind.
 */
public final class FishYears {
    private final FishRun fish;
    private final YearBand water;
    private final int present;
    private final Map<TrophicLevel, YearBand> bands = new EnumMap<>(TrophicLevel.class);

    private FishYears(FishRun fish, YearBand water, int present) {
        this.fish = fish;
        this.water = water;
        this.present = present;
        for (TrophicLevel level : TrophicLevel.values()) {
            bands.put(level, band(level));
        }
    }

    /**
     * Fish of years.
     *
     * @param fish fish of the steady run
     * @param methyl mean of each year of methylmercury in filtered water [kg/m3]
     * @param present year, counted from 0, in which measured fish hold what was measured; of years before or after all, the
     *     nearest is taken
     */
    public static FishYears of(FishRun fish, YearBand methyl, int present) {
        YearBand water = new YearBand(methyl.years(), fish.reachCount());
        for (int r = 0; r < fish.reachCount(); r++) {
            Map<Integer, Double> lengths = new TreeMap<>(fish.range().lengths(r));
            double whole =
                    lengths.values().stream().mapToDouble(Double::doubleValue).sum();
            for (int year = 0; year < methyl.years() && whole > 0; year++) {
                double low = 0;
                double high = 0;
                for (Map.Entry<Integer, Double> part : lengths.entrySet()) {
                    low += part.getValue() * methyl.low(year, part.getKey());
                    high += part.getValue() * methyl.high(year, part.getKey());
                }
                water.put(year, r, low / whole, high / whole);
            }
        }
        return new FishYears(fish, water, Math.max(0, Math.min(present, methyl.years() - 1)));
    }

    /**
     * Fish of a level in a reach in a year, counted from 0; empty where nothing tells of them, or where measured fish cannot
     * be carried through the years since the model has no methylmercury there in the year of the work.
     */
    public Optional<FishContent> find(int year, int reach, TrophicLevel level) {
        Optional<FishEstimate> now = fish.find(reach, level);
        if (now.isEmpty() || !fish.isModelled()) {
            return Optional.empty();
        }
        double low = water.low(year, reach);
        double high = water.high(year, reach);
        if (now.get().basis() == FishEstimate.Basis.MODELLED) {
            return Optional.of(fish.chain(low, high, level));
        }
        List<Double> ratios = new ArrayList<>();
        addRatio(ratios, low, water.low(present, reach));
        addRatio(ratios, high, water.high(present, reach));
        if (ratios.isEmpty()) {
            return Optional.empty();
        }
        double middle = FishContent.middle(low, high)
                / FishContent.middle(water.low(present, reach), water.high(present, reach));
        ratios.add(middle);
        FishContent content = now.get().content();
        return Optional.of(new FishContent(
                content.low() * ratios.stream().mapToDouble(r -> r).min().getAsDouble(),
                content.middle() * middle,
                content.high() * ratios.stream().mapToDouble(r -> r).max().getAsDouble()));
    }

    private static void addRatio(List<Double> ratios, double then, double now) {
        if (now > 0) {
            ratios.add(then / now);
        }
    }

    /** Lowest and highest content of a level in every reach and year [kg/kg wet]; 0 where {@link #find} is empty. */
    public YearBand contents(TrophicLevel level) {
        return bands.get(level);
    }

    private YearBand band(TrophicLevel level) {
        YearBand band = new YearBand(water.years(), fish.reachCount());
        for (int r = 0; r < fish.reachCount(); r++) {
            for (int year = 0; year < water.years(); year++) {
                int at = year;
                int reach = r;
                find(year, r, level).ifPresent(content -> band.put(at, reach, content.low(), content.high()));
            }
        }
        return band;
    }
}
