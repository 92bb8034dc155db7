// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.silverwake.model.network.RandomNetworks.Draft;
import org.silverwake.model.network.RiverNetwork;

/** Reach tables for tests: small ones by hand, random ones. */
final class Rivers {
    private Rivers() {}

    /** Reaches "name from to", in downstream order, each 1000 m and a feature of its own. */
    static ReachTable of(Map<String, Column> columns, String... reaches) {
        List<String> ids = new ArrayList<>();
        int[] from = new int[reaches.length];
        int[] to = new int[reaches.length];
        int[] group = new int[reaches.length];
        double[] length = new double[reaches.length];
        for (int i = 0; i < reaches.length; i++) {
            String[] part = reaches[i].split(" ");
            ids.add(part[0]);
            from[i] = Integer.parseInt(part[1]);
            to[i] = Integer.parseInt(part[2]);
            group[i] = part.length > 3 ? Integer.parseInt(part[3]) : 100 + i;
            length[i] = part.length > 4 ? Double.parseDouble(part[4]) : 1000;
        }
        RiverNetwork network = RiverNetwork.of(ids, from, to);
        for (int r = 0; r < network.size(); r++) {
            if (network.inputIndex(r) != r) {
                throw new IllegalArgumentException("give reaches in downstream order");
            }
        }
        return new ReachTable(network, length, group, columns);
    }

    /** A random network with random lengths and these columns. */
    static ReachTable of(Draft draft, Map<String, Column> columns) {
        RiverNetwork network = draft.network();
        Random random = new Random(draft.seed() + 3);
        double[] length = new double[network.size()];
        int[] group = new int[network.size()];
        for (int r = 0; r < length.length; r++) {
            length[r] = 100 + 900 * random.nextDouble();
            group[r] = r;
        }
        return new ReachTable(network, length, group, columns);
    }

    /** Random own areas [m2], as local-area. */
    static Map<String, Column> localAreas(Draft draft) {
        Random random = new Random(draft.seed() + 5);
        Map<String, Column> columns = new HashMap<>();
        columns.put(
                "local-area",
                Column.of(random.doubles(draft.from().size(), 1e5, 1e7).toArray()));
        return columns;
    }

    /** Splits by random weights. */
    static Splits splits(RiverNetwork network, long seed) {
        double[] weight = new Random(seed).doubles(network.size(), 0.2, 1).toArray();
        return Splits.of(network, Optional.of(Column.of(weight)));
    }

    static Splits equalSplits(ReachTable reaches) {
        return Splits.of(reaches.network(), Optional.empty());
    }

    /** Routed without sites and abstractions. */
    static RoutedWater route(ReachTable reaches, Splits splits, WaterSupply supply) {
        double[] none = new double[reaches.size()];
        return RoutedWater.route(reaches.network(), splits, supply, none, none);
    }

    static double[] ends(RoutedWater water, int n) {
        double[] ends = new double[n];
        Arrays.setAll(ends, water::end);
        return ends;
    }
}
