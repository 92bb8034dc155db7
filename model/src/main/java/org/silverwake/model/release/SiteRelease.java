// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What one site releases. All lists are by flow state.
 *
 * @param name its name
 * @param reach reach at whose head it enters
 * @param mercury mercury [kg/s], at least 0
 * @param exchangeableShare share of its divalent part that is exchangeable [-], the rest grain-bound; empty where not known
 * @param classShares how grain-bound mercury and tailings solids divide over particle classes [-], summing to 1
 * @param solids dry tailings solids [kg/s], at least 0
 * @param water water it adds [m3/s], at least 0
 * @param atBank whether the outfall is at the bank
 * @param furtherShares shares of its mercury in further forms by their names [-], together at most 1; the rest is exchangeable
 *     and grain-bound
 * @param moreExtremes where the exchangeable share is not known, further extremes beside all of the rest exchangeable and all
 *     of it grain-bound: each the shares of its mercury in further forms by their names [-], in the same order for all sites
 */
public record SiteRelease(
        String name,
        int reach,
        List<Double> mercury,
        OptionalDouble exchangeableShare,
        List<Double> classShares,
        List<Double> solids,
        List<Double> water,
        boolean atBank,
        Map<String, Double> furtherShares,
        List<Map<String, Double>> moreExtremes) {
    private static final int GRAIN_BOUND = 1;
    private static final int STANDARD = 2;

    /** Copies the lists, and sorts the shares by name. */
    public SiteRelease {
        mercury = List.copyOf(mercury);
        classShares = List.copyOf(classShares);
        solids = List.copyOf(solids);
        water = List.copyOf(water);
        furtherShares = sorted(furtherShares);
        moreExtremes = moreExtremes.stream().map(SiteRelease::sorted).toList();
    }

    private static Map<String, Double> sorted(Map<String, Double> shares) {
        return Collections.unmodifiableMap(new TreeMap<>(shares));
    }

    /** Number of extremes [-]: 1 where the split is known. */
    public int extremes() {
        return exchangeableShare.isPresent() ? 1 : STANDARD + moreExtremes.size();
    }

    /** Shares of its mercury in further forms in a variant [-]; as stated where it has no such extreme. */
    public Map<String, Double> further(int variant) {
        return variant < STANDARD || variant >= extremes() ? furtherShares : moreExtremes.get(variant - STANDARD);
    }

    /** Share of its mercury that is exchangeable or grain-bound in a variant [-], at least 0. */
    public double divalent(int variant) {
        double further = 0;
        for (double share : further(variant).values()) {
            further += share;
        }
        return Math.max(0, 1 - further);
    }

    /**
     * Exchangeable share of its divalent mercury in a variant [-]: as stated, else none in variant 1 and all in the others, in
     * which a site that cannot be all of another form stays exchangeable.
     */
    public double exchangeable(int variant) {
        return exchangeableShare.orElse(variant == GRAIN_BOUND ? 0 : 1);
    }

    /**
     * The same site when it releases so many times the mercury and the solids; its water stays.
     *
     * @param factor [-], at least 0
     */
    public SiteRelease times(double factor) {
        return with(times(mercury, factor), times(solids, factor), water);
    }

    /** The same site when its mercury is left out; its solids and water stay. */
    public SiteRelease withoutMercury() {
        return withMercury(times(mercury, 0));
    }

    /** The same site when it releases other mercury, by flow state [kg/s]; its solids and water stay. */
    public SiteRelease withMercury(List<Double> other) {
        return with(other, solids, water);
    }

    /** The same mercury at the place of another release, with that one's name, solids and water. */
    public SiteRelease withCarriersOf(SiteRelease other) {
        return new SiteRelease(
                other.name,
                other.reach,
                mercury,
                exchangeableShare,
                classShares,
                other.solids,
                other.water,
                other.atBank,
                furtherShares,
                moreExtremes);
    }

    /** The same site closed: neither mercury nor solids nor water. Its place stays, and so do the extremes of its split. */
    public SiteRelease closed() {
        return with(times(mercury, 0), times(solids, 0), times(water, 0));
    }

    private SiteRelease with(List<Double> ofMercury, List<Double> ofSolids, List<Double> ofWater) {
        return new SiteRelease(
                name,
                reach,
                ofMercury,
                exchangeableShare,
                classShares,
                ofSolids,
                ofWater,
                atBank,
                furtherShares,
                moreExtremes);
    }

    private static List<Double> times(List<Double> values, double factor) {
        return values.stream().map(value -> value * factor).toList();
    }
}
