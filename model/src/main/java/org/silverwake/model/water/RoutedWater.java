// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;

/**
 * Discharge at the head and end of every reach in one flow state, and the water's own balance. Site water joins at heads;
 * a declared abstraction takes water at a head, after it. Immutable.
 */
public final class RoutedWater {
    private final double[] head;
    private final double[] end;
    private final double[] siteWater;
    private final double[] abstracted;
    private final WaterSupply supply;
    private final Splits splits;
    private final List<Integer> corrected;
    private final List<Integer> emptied;
    private final double entered;
    private final double left;

    private RoutedWater(
            RiverNetwork network, Splits splits, WaterSupply supply, double[] siteWater, double[] abstraction) {
        int n = network.size();
        this.supply = supply;
        this.splits = splits;
        this.siteWater = siteWater.clone();
        this.abstracted = new double[n];
        this.head = new double[n];
        this.end = new double[n];
        List<Integer> lower = new ArrayList<>();
        List<Integer> taken = new ArrayList<>();
        double in = 0;
        double out = 0;
        for (int r = 0; r < n; r++) {
            int node = network.fromNode(r);
            double mixed = supply.head(r) + siteWater[r];
            in += mixed;
            for (int k = 0; k < network.inCount(node); k++) {
                mixed += splits.share(r) * end[network.in(node, k)];
            }
            abstracted[r] = Math.min(abstraction[r], mixed);
            if (abstraction[r] > 0 && abstraction[r] >= mixed) {
                taken.add(r);
            }
            head[r] = mixed - abstracted[r];
            double change = Math.max(supply.along(r), -head[r]);
            if (supply.along(r) < 0) {
                lower.add(r);
            }
            end[r] = head[r] + change;
            in += Math.max(change, 0);
            out += abstracted[r] + Math.max(-change, 0);
            if (network.isOutlet(r)) {
                out += end[r];
            }
        }
        this.corrected = List.copyOf(lower);
        this.emptied = List.copyOf(taken);
        this.entered = in;
        this.left = out;
    }

    /**
     * Routes water down the network.
     *
     * @param siteWater water of sites at each reach's head [m3/s], at least 0
     * @param abstraction declared abstraction at each reach's head [m3/s], at least 0
     */
    public static RoutedWater route(
            RiverNetwork network, Splits splits, WaterSupply supply, double[] siteWater, double[] abstraction) {
        return new RoutedWater(network, splits, supply, siteWater, abstraction);
    }

    /** Discharge at the head of a reach, mixed, after site water and abstraction [m3/s]. */
    public double head(int reach) {
        return head[reach];
    }

    /** Discharge at the end of a reach [m3/s]. */
    public double end(int reach) {
        return end[reach];
    }

    /** Mean discharge of a reach [m3/s]. */
    public double mean(int reach) {
        return 0.5 * (head[reach] + end[reach]);
    }

    /** Whether a reach carries water at all. */
    public boolean isWet(int reach) {
        return head[reach] + end[reach] > 0;
    }

    /** Water that abstractions at the head of a reach take, as far as there is any [m3/s]. */
    public double abstracted(int reach) {
        return abstracted[reach];
    }

    /** Share of the load arriving at its head that an abstraction takes [-], 0 to 1. */
    public double abstractedShare(int reach) {
        double before = head[reach] + abstracted[reach];
        return before > 0 ? abstracted[reach] / before : 0;
    }

    /** Water that sites add at a reach's head [m3/s]. */
    public double siteWater(int reach) {
        return siteWater[reach];
    }

    /** What the land brings. */
    public WaterSupply supply() {
        return supply;
    }

    /** Shares at bifurcations. */
    public Splits splits() {
        return splits;
    }

    /** Reaches that lose water by correction. */
    public List<Integer> corrected() {
        return corrected;
    }

    /** Reaches whose abstraction takes all there is. */
    public List<Integer> emptied() {
        return emptied;
    }

    /** All water that entered [m3/s]. */
    public double entered() {
        return entered;
    }

    /** All water that left: outlets, abstractions, corrections [m3/s]. */
    public double left() {
        return left;
    }
}
