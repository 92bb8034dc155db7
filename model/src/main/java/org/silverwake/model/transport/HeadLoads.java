// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.RoutedWater;

/** Loads at the ends of reaches, and what they make at the head of the next: mixed, split, less what is abstracted. */
final class HeadLoads {
    private final RiverNetwork network;
    private final RoutedWater water;
    private final int width;
    private final double[] end;

    HeadLoads(RiverNetwork network, RoutedWater water, int width) {
        this.network = network;
        this.water = water;
        this.width = width;
        this.end = new double[network.size() * width];
    }

    /** Fills {@code into} with what arrives at a reach's head, releases included, before any abstraction. */
    void arriving(int reach, double[] releases, double[] into) {
        System.arraycopy(releases, reach * width, into, 0, width);
        int node = network.fromNode(reach);
        double share = water.splits().share(reach);
        for (int k = 0; k < network.inCount(node); k++) {
            int up = network.in(node, k) * width;
            for (int i = 0; i < width; i++) {
                into[i] += share * end[up + i];
            }
        }
    }

    /** Keeps the loads at a reach's end. */
    void leave(int reach, double[] loads, int offset) {
        System.arraycopy(loads, offset, end, reach * width, width);
    }

    /** Keeps nothing: the reach is dry. */
    void leaveNothing(int reach) {
        java.util.Arrays.fill(end, reach * width, (reach + 1) * width, 0);
    }

    double end(int reach, int i) {
        return end[reach * width + i];
    }
}
