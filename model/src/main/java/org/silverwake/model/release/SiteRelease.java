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
        Map<String, Double> furtherShares) {
    /** Copies the lists, and sorts the shares by name. */
    public SiteRelease {
        mercury = List.copyOf(mercury);
        classShares = List.copyOf(classShares);
        solids = List.copyOf(solids);
        water = List.copyOf(water);
        furtherShares = Collections.unmodifiableMap(new TreeMap<>(furtherShares));
    }

    /** Share of its mercury that is exchangeable or grain-bound [-]. */
    public double divalent() {
        double further = 0;
        for (double share : furtherShares.values()) {
            further += share;
        }
        return 1 - further;
    }

    /** Exchangeable share in a variant [-]: as stated, else all in variant 0 and none in variant 1. */
    public double exchangeable(int variant) {
        return exchangeableShare.orElse(variant == 0 ? 1 : 0);
    }
}
