// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

/**
 * Strahler (1957) order. A bifurcation does not raise it: an order rises only where two streams of the same order and of
 * different origin meet, an origin being the headwater or confluence where the order was first reached.
 */
public final class StreamOrder {
    private StreamOrder() {}

    /** Order of each reach [-], at least 1. */
    public static int[] strahler(RiverNetwork network) {
        int[] order = new int[network.size()];
        int[] origin = new int[network.size()];
        for (int r = 0; r < order.length; r++) {
            int node = network.fromNode(r);
            int highest = 0;
            int first = -1;
            boolean several = false;
            for (int k = 0; k < network.inCount(node); k++) {
                int up = network.in(node, k);
                if (order[up] > highest) {
                    highest = order[up];
                    first = origin[up];
                    several = false;
                } else if (order[up] == highest && origin[up] != first) {
                    several = true;
                }
            }
            if (highest == 0) {
                order[r] = 1;
                origin[r] = r;
            } else if (several) {
                order[r] = highest + 1;
                origin[r] = network.size() + node;
            } else {
                order[r] = highest;
                origin[r] = first;
            }
        }
        return order;
    }
}
