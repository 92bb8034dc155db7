// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.model.input.Settings;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.transport.SteadyResult;

/**
 * Mercury in fish. By the chain: a bioaccumulation factor times methylmercury in filtered water, over the year and the fish's
 * range; low is the low water at the low factor, high the high water at the high factor, and the middle between them. Where
 * fish were measured, these take its place (ratio method): there they are the content, and from there down until the next
 * measured the content follows the water, low by the bound that falls most on the way and high by the one that falls least.
 * Where two measured rivers meet, the one with more water goes on.
 */
public final class FishRun {
    private final FishRiver river;
    private final Settings settings;
    private final FishRange range;
    private final Optional<MethylWater> water;
    private final Map<Integer, FishStation> stations = new TreeMap<>();
    private final int[] stationOf;

    FishRun(FishRiver river, Settings settings, List<MeasuredFish> measured) {
        this.river = river;
        this.settings = settings;
        this.range =
                new FishRange(river.reaches(), settings.value("fish.range"), river::hasWater, river.dams()::contains);
        this.water = river.methyl().map(methyl -> methyl.over(range));
        for (MeasuredFish fish : measured) {
            stations.computeIfAbsent(fish.reach(), r -> new FishStation(r, settings.value("fish.measured-factor")))
                    .add(fish);
        }
        this.stationOf = stationOf();
    }

    /**
     * Computes fish of every reach.
     *
     * @param dams nodes at which a dam stands
     * @param isMethylCarried whether the run carries methylmercury; without it there are only fish that were measured
     * @param measured fish that were measured
     */
    public static FishRun of(
            SteadyResult result,
            Settings settings,
            Set<Integer> dams,
            boolean isMethylCarried,
            List<MeasuredFish> measured) {
        return new FishRun(FishRiver.of(result, dams, isMethylCarried), settings, measured);
    }

    /** How far fish swim. */
    public FishRange range() {
        return range;
    }

    /** Whether dissolved methylmercury is carried, so that fish are estimated where none were measured. */
    public boolean isModelled() {
        return water.isPresent();
    }

    /** Number of fish that were measured [-]. */
    public int measured() {
        int count = 0;
        for (FishStation station : stations.values()) {
            count += station.count(TrophicLevel.THREE) + station.count(TrophicLevel.FOUR);
        }
        return count;
    }

    /** Whether fish measured in a reach can be carried down by the water's methylmercury, of which the model has some there. */
    public boolean isCarriedDown(int reach) {
        return modelled(reach, TrophicLevel.THREE).map(FishContent::middle).orElse(0.0) > 0;
    }

    /** Measured reaches whose fish hold more than the high estimate of the chain there. */
    public List<Integer> aboveEstimate() {
        List<Integer> above = new ArrayList<>();
        for (FishStation station : stations.values()) {
            boolean more = false;
            for (TrophicLevel level : TrophicLevel.values()) {
                double high =
                        modelled(station.reach(), level).map(FishContent::high).orElse(Double.NaN);
                more |= station.count(level) > 0
                        && station.content(level, toOther(level)).middle() > high;
            }
            if (more) {
                above.add(station.reach());
            }
        }
        return above;
    }

    /** The measured reach that tells of each reach, itself included; -1 for none. */
    private int[] stationOf() {
        RiverNetwork network = river.reaches().network();
        int[] found = new int[network.size()];
        Arrays.fill(found, -1);
        for (int r = 0; r < found.length; r++) {
            if (stations.containsKey(r)) {
                found[r] = r;
                continue;
            }
            double most = -1;
            for (int k = 0; k < network.inCount(network.fromNode(r)); k++) {
                int up = network.in(network.fromNode(r), k);
                if (found[up] >= 0 && river.discharge().get(up) > most) {
                    most = river.discharge().get(up);
                    found[r] = found[up];
                }
            }
        }
        return found;
    }

    /** Fish of a level in a reach; empty where it has no water, or nothing tells of them. */
    public Optional<FishEstimate> find(int reach, TrophicLevel level) {
        int at = stationOf[reach];
        FishStation station = stations.get(at);
        if (at == reach) {
            return Optional.of(estimate(reach, level, station.content(level, toOther(level)), basis(reach, level), at));
        }
        if (water.isEmpty() || water.get().isDry(reach)) {
            return Optional.empty();
        }
        return Optional.of(
                at >= 0 && isCarriedDown(at)
                        ? estimate(reach, level, carried(reach, level, station), basis(reach, level), at)
                        : estimate(
                                reach, level, modelled(reach, level).orElseThrow(), FishEstimate.Basis.MODELLED, -1));
    }

    /** Of a reach of which measured fish tell. */
    private FishEstimate.Basis basis(int reach, TrophicLevel level) {
        int at = stationOf[reach];
        boolean near = at == reach || range.lengths(reach).containsKey(at);
        return near && stations.get(at).count(level) > 0 ? FishEstimate.Basis.MEASURED : FishEstimate.Basis.RATIO;
    }

    private FishEstimate estimate(
            int reach, TrophicLevel level, FishContent content, FishEstimate.Basis basis, int station) {
        FishStation here = stations.get(reach);
        Optional<FishContent> chain = modelled(reach, level);
        return new FishEstimate(
                content,
                basis,
                station < 0 ? Optional.empty() : Optional.of(station),
                here == null ? 0 : here.count(level),
                chain.map(model -> background(reach, level, content, model)));
    }

    /** Background at the middle factor, scaled as measured fish scale the middle. */
    private double background(int reach, TrophicLevel level, FishContent content, FishContent chain) {
        double scale = chain.middle() > 0 ? content.middle() / chain.middle() : 1;
        return level.factor(settings) * water.orElseThrow().background().get(reach) * scale;
    }

    /** By the chain alone; empty where there is no water or no methylmercury is carried. */
    private Optional<FishContent> modelled(int reach, TrophicLevel level) {
        if (water.isEmpty() || water.get().isDry(reach)) {
            return Optional.empty();
        }
        return Optional.of(
                chain(water.get().low().get(reach), water.get().high().get(reach), level));
    }

    /**
     * By the chain, from methylmercury in filtered water over a fish's range.
     *
     * @param low low estimate [kg/m3], at least 0
     * @param high high estimate [kg/m3]; taken as {@code low} where it is below
     */
    FishContent chain(double low, double high, TrophicLevel level) {
        double factor = level.factor(settings);
        double spread = settings.value("fish.baf-factor");
        double most = Math.max(low, high);
        return new FishContent(low * factor / spread, FishContent.middle(low, most) * factor, most * factor * spread);
    }

    /**
     * What the chain makes of methylmercury in filtered water over a fish's range: content over concentration [m3/kg].
     *
     * @param low of the low estimate of water, for that of fish [m3/kg]
     * @param high of the high estimates [m3/kg]
     * @param background of background, at the middle factor [m3/kg]
     */
    public record Factors(double low, double high, double background) {}

    /** The chain's factors for a level. */
    public Factors factors(TrophicLevel level) {
        double factor = level.factor(settings);
        double spread = settings.value("fish.baf-factor");
        return new Factors(factor / spread, factor * spread, factor);
    }

    /** Number of reaches [-]. */
    int reachCount() {
        return river.reaches().size();
    }

    /** Measured content carried down to a reach by the water's own ratios. */
    private FishContent carried(int reach, TrophicLevel level, FishStation station) {
        FishContent there = station.content(level, toOther(level));
        MethylWater methyl = water.orElseThrow();
        List<Double> ratios = new ArrayList<>();
        for (List<Double> bound : List.of(methyl.low(), methyl.high())) {
            if (bound.get(station.reach()) > 0) {
                ratios.add(bound.get(reach) / bound.get(station.reach()));
            }
        }
        double middle = modelled(reach, level).orElseThrow().middle()
                / modelled(station.reach(), level).orElseThrow().middle();
        double least =
                Math.min(middle, ratios.stream().mapToDouble(r -> r).min().orElse(middle));
        double most = Math.max(middle, ratios.stream().mapToDouble(r -> r).max().orElse(middle));
        return new FishContent(there.low() * least, there.middle() * middle, there.high() * most);
    }

    private double toOther(TrophicLevel level) {
        TrophicLevel other = level == TrophicLevel.THREE ? TrophicLevel.FOUR : TrophicLevel.THREE;
        return level.factor(settings) / other.factor(settings);
    }
}
