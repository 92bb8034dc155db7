// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;

/**
 * Which gauge each stretch of river answers to. The zone of a gauge is the land between it and the gauges next above: what
 * reaches that gauge first along the main arms, or along another arm where the main arm reaches none.
 */
final class GaugeZones {
    static final int NONE = -1;

    private final RiverNetwork network;
    private final Splits splits;
    private final int[] gaugeAt;
    private final int[] zone;
    private final BitSet gauged;

    GaugeZones(RiverNetwork network, Splits splits, List<Gauging.Gauge> gauges) {
        this.network = network;
        this.splits = splits;
        this.gaugeAt = new int[network.size()];
        this.zone = new int[network.size()];
        Arrays.fill(gaugeAt, NONE);
        for (int g = 0; g < gauges.size(); g++) {
            int reach = gauges.get(g).reach();
            if (gaugeAt[reach] != NONE) {
                throw new IllegalArgumentException(
                        "gauges " + gauges.get(gaugeAt[reach]).name() + " and "
                                + gauges.get(g).name() + " stand at one place; keep one");
            }
            gaugeAt[reach] = g;
        }
        for (int r = network.size() - 1; r >= 0; r--) {
            zone[r] = zoneBelow(r);
        }
        BitSet gauge = new BitSet();
        gauges.forEach(each -> gauge.set(each.reach()));
        this.gauged = network.below(gauge);
    }

    private int zoneBelow(int reach) {
        int node = network.toNode(reach);
        int best = NONE;
        double share = -1;
        for (int k = 0; k < network.outCount(node); k++) {
            int arm = network.out(node, k);
            if (zoneOfHead(arm) != NONE && splits.share(arm) > share) {
                best = zoneOfHead(arm);
                share = splits.share(arm);
            }
        }
        return best;
    }

    /** Gauge that water entering along a reach answers to. */
    int zone(int reach) {
        return zone[reach];
    }

    /** Gauge that water entering at a reach's head answers to. */
    int zoneOfHead(int reach) {
        return gaugeAt[reach] != NONE ? gaugeAt[reach] : zone[reach];
    }

    /** Whether water of a gauge flows in a reach. */
    boolean isGauged(int reach) {
        return gauged.get(reach);
    }

    /**
     * Specific discharge of the nearest gauge upstream; on branches without one that of the reach they join; NaN in parts of
     * the network without a gauge.
     *
     * @param ofGauge specific discharge at each gauge [m/s], NaN where no area drains to it
     */
    double[] nearest(ReachTable reaches, double[] ofGauge) {
        double[] specific = new double[gaugeAt.length];
        double[] distance = new double[gaugeAt.length];
        for (int r = 0; r < specific.length; r++) {
            specific[r] = Double.NaN;
            distance[r] = Double.POSITIVE_INFINITY;
            if (gaugeAt[r] != NONE && !Double.isNaN(ofGauge[gaugeAt[r]])) {
                specific[r] = ofGauge[gaugeAt[r]];
                distance[r] = 0;
            }
            for (int k = 0; k < network.inCount(network.fromNode(r)); k++) {
                int up = network.in(network.fromNode(r), k);
                if (distance[up] + reaches.length(up) < distance[r]) {
                    specific[r] = specific[up];
                    distance[r] = distance[up] + reaches.length(up);
                }
            }
        }
        for (int r = specific.length - 1; r >= 0; r--) {
            for (int k = 0; k < network.outCount(network.toNode(r)) && Double.isNaN(specific[r]); k++) {
                specific[r] = specific[network.out(network.toNode(r), k)];
            }
        }
        return specific;
    }
}
