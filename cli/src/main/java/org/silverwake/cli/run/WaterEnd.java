// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/**
 * A node of the network where water ends.
 *
 * @param reaches reaches that end there, at least one
 * @param low released mercury that leaves there, lowest over bounds and variants [kg/yr]
 * @param high the same, highest [kg/yr]
 */
record WaterEnd(int node, List<Integer> reaches, double low, double high) {
    /** Copies the list. */
    WaterEnd {
        reaches = List.copyOf(reaches);
    }

    /** Every end of a network. */
    static List<WaterEnd> of(RiverNetwork network, SteadyResult result) {
        List<WaterEnd> ends = new ArrayList<>();
        for (int node = 0; node < network.nodeCount(); node++) {
            int at = node;
            if (network.outCount(node) == 0 && network.inCount(node) > 0) {
                ends.add(of(
                        network,
                        result,
                        node,
                        IntStream.range(0, network.inCount(node))
                                .map(k -> network.in(at, k))
                                .boxed()
                                .toList()));
            }
        }
        return ends;
    }

    private static WaterEnd of(RiverNetwork network, SteadyResult result, int node, List<Integer> reaches) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : result.bounds()) {
            for (int v = 0; v < result.variants(); v++) {
                double year = 0;
                for (int s = 0; s < result.input().stateCount(); s++) {
                    for (int r : reaches) {
                        year += result.input().hydraulics().share(s)
                                * result.solution(bound, s).loadOut(r, v)
                                * Quantity.SECONDS_PER_YEAR;
                    }
                }
                low = Math.min(low, year);
                high = Math.max(high, year);
            }
        }
        return new WaterEnd(node, reaches, low, high);
    }

    /** Names of the sites above it. */
    List<String> sites(RiverNetwork network, SteadyResult result) {
        BitSet own = new BitSet();
        reaches.forEach(own::set);
        BitSet above = network.above(own);
        return result.input().sites().stream()
                .filter(site -> above.get(site.reach()))
                .map(SiteRelease::name)
                .toList();
    }

    double longitude(Basin basin) {
        RiverMap.Reach reach = basin.reach(reaches.get(0));
        return reach.longitude(reach.pointCount() - 1);
    }

    double latitude(Basin basin) {
        RiverMap.Reach reach = basin.reach(reaches.get(0));
        return reach.latitude(reach.pointCount() - 1);
    }

    /** Ids of the user's features that end there. */
    List<String> features(Basin basin) {
        return reaches.stream()
                .map(r -> basin.reach(r).part().featureId())
                .distinct()
                .sorted()
                .toList();
    }

    /** "the end of L018 (-19.8, -30.1)". */
    String place(Basin basin) {
        return "the end of " + String.join(" and ", features(basin)) + " (" + Numbers.degrees(longitude(basin)) + ", "
                + Numbers.degrees(latitude(basin)) + ")";
    }

    /** "2.1 to 2.4 kg/yr". */
    String load() {
        String from = Numbers.shown(low, 3);
        String to = Numbers.shown(high, 3);
        return (from.equals(to) ? from : from + " to " + to) + " kg/yr";
    }
}
