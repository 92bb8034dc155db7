// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import org.silverwake.model.network.RiverNetwork;

/**
 * Energy slope of each reach, from an attribute where there is one, else from heights at the reach ends: heights are made
 * non-increasing downstream after pits are removed, and slopes are floored.
 */
public final class Slopes {
    private final Column slope;
    private final int floored;

    private Slopes(Column slope, int floored) {
        this.slope = slope;
        this.floored = floored;
    }

    /**
     * Slopes.
     *
     * @param attribute slope attribute [-] where given
     * @param upper height at each reach's head [m] where known
     * @param lower height at each reach's end [m] where known
     * @param floor smallest slope [-], above 0
     */
    public static Slopes of(ReachTable reaches, Column attribute, Column upper, Column lower, double floor) {
        RiverNetwork network = reaches.network();
        double[] height = nodeHeights(network, upper, lower);
        Column slope = new Column(reaches.size());
        int floored = 0;
        for (int r = 0; r < reaches.size(); r++) {
            double value;
            if (attribute.has(r)) {
                value = attribute.at(r);
            } else if (upper.has(r) && lower.has(r)) {
                value = (height[network.fromNode(r)] - height[network.toNode(r)]) / reaches.length(r);
            } else {
                continue;
            }
            floored += value < floor ? 1 : 0;
            slope.put(r, Math.max(value, floor));
        }
        return new Slopes(slope, floored);
    }

    /**
     * Node heights with pits removed: a node is no lower than the lowest height it must still fall to is high, the mean of
     * the fill from below (running maximum upstream) and the carve from above (running minimum downstream), so that
     * neither noise upward nor noise downward wins. Both are non-increasing downstream, hence their mean is.
     */
    private static double[] nodeHeights(RiverNetwork network, Column upper, Column lower) {
        int nodes = network.nodeCount();
        double[] carved = new double[nodes];
        double[] filled = new double[nodes];
        double[] raw = new double[nodes];
        boolean[] known = new boolean[nodes];
        for (int r = 0; r < network.size(); r++) {
            if (upper.has(r)) {
                raw[network.fromNode(r)] = upper.at(r);
                known[network.fromNode(r)] = true;
            }
            if (lower.has(r)) {
                raw[network.toNode(r)] = lower.at(r);
                known[network.toNode(r)] = true;
            }
        }
        for (int k = 0; k < nodes; k++) {
            carved[k] = known[k] ? raw[k] : Double.POSITIVE_INFINITY;
            filled[k] = known[k] ? raw[k] : Double.NEGATIVE_INFINITY;
        }
        for (int r = 0; r < network.size(); r++) {
            carved[network.toNode(r)] = Math.min(carved[network.toNode(r)], carved[network.fromNode(r)]);
        }
        for (int r = network.size() - 1; r >= 0; r--) {
            filled[network.fromNode(r)] = Math.max(filled[network.fromNode(r)], filled[network.toNode(r)]);
        }
        double[] height = new double[nodes];
        for (int k = 0; k < nodes; k++) {
            height[k] = 0.5 * (carved[k] + filled[k]);
        }
        return height;
    }

    /** Slopes [-], where known. */
    public Column slope() {
        return slope;
    }

    /** How many were below the floor [-]. */
    public int floored() {
        return floored;
    }
}
