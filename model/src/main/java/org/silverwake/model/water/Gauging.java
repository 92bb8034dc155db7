// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;

/**
 * Discharge from gauges. The increment between a gauge and the gauges next above is shared over the local areas between
 * them in proportion to area, so that every gauge is met and increments add up; a negative one is a losing stretch, listed.
 * Below the lowest gauge the specific discharge of the nearest gauge upstream holds, on branches that join there that of
 * the reach they join, and in parts of the network without a gauge the area-weighted mean of all.
 */
public final class Gauging {
    /**
     * A gauge at the head of a reach.
     *
     * @param name its name
     * @param reach the reach that begins at it
     * @param discharge discharge [m3/s], at least 0
     */
    public record Gauge(String name, int reach, double discharge) {}

    private final ReachTable reaches;
    private final RiverNetwork network;
    private final DrainageArea areas;
    private final Splits splits;
    private final int[] zone;
    private final double[] specific;
    private final List<String> notes = new ArrayList<>();

    private Gauging(ReachTable reaches, DrainageArea areas, Splits splits) {
        this.reaches = reaches;
        this.network = reaches.network();
        this.areas = areas;
        this.splits = splits;
        this.zone = new int[reaches.size()];
        this.specific = new double[reaches.size()];
    }

    /**
     * Water supply that meets every gauge.
     *
     * @throws IllegalArgumentException if there is no gauge, or two stand at one place
     */
    public static WaterSupply supply(ReachTable reaches, DrainageArea areas, Splits splits, List<Gauge> gauges) {
        if (gauges.isEmpty()) {
            throw new IllegalArgumentException("no gauge");
        }
        return new Gauging(reaches, areas, splits).solve(gauges);
    }

    /**
     * One gauge and an exponent: Q = q0 sum a_i A_mid,i^(n-1), A_mid the area at a reach's lower end less half its own.
     *
     * @param exponent n [-], above 0
     */
    public static WaterSupply withExponent(
            ReachTable reaches, DrainageArea areas, Splits splits, Gauge gauge, double exponent) {
        int n = reaches.size();
        double[] head = new double[n];
        double[] along = new double[n];
        for (int r = 0; r < n; r++) {
            double middle = areas.total(r) - 0.5 * areas.local(r);
            double factor = middle > 0 ? StrictMath.pow(middle, exponent - 1) : 0;
            along[r] = areas.local(r) * factor;
            head[r] = areas.outside(r) > 0 ? StrictMath.pow(areas.outside(r), exponent) : 0;
        }
        RiverNetwork network = reaches.network();
        double unit = dischargeAt(network, splits, head, along, gauge.reach());
        if (!(unit > 0)) {
            throw new IllegalArgumentException("gauge " + gauge.name() + ": no area drains to it");
        }
        double scale = gauge.discharge() / unit;
        for (int r = 0; r < n; r++) {
            head[r] *= scale;
            along[r] *= scale;
        }
        return new WaterSupply(head, along, List.of());
    }

    private WaterSupply solve(List<Gauge> gauges) {
        List<Gauge> ordered = new ArrayList<>(gauges);
        ordered.sort((a, b) -> Integer.compare(a.reach(), b.reach()));
        assignZones(ordered);
        int n = reaches.size();
        double[] head = new double[n];
        double[] along = new double[n];
        for (int g = 0; g < ordered.size(); g++) {
            meet(ordered.get(g), g, head, along);
        }
        spreadBeyondGauges(ordered, head, along);
        return new WaterSupply(head, along, notes);
    }

    /** Zone of each reach: the gauge its main arm reaches first, -1 below all gauges. */
    private void assignZones(List<Gauge> ordered) {
        int[] gaugeAt = new int[reaches.size()];
        Arrays.fill(gaugeAt, -1);
        for (int g = 0; g < ordered.size(); g++) {
            int reach = ordered.get(g).reach();
            if (gaugeAt[reach] >= 0) {
                throw new IllegalArgumentException(
                        "gauges " + ordered.get(gaugeAt[reach]).name() + " and "
                                + ordered.get(g).name() + " stand at one place");
            }
            gaugeAt[reach] = g;
        }
        for (int r = reaches.size() - 1; r >= 0; r--) {
            int main = mainArm(r);
            zone[r] = main < 0 ? -1 : gaugeAt[main] >= 0 ? gaugeAt[main] : zone[main];
        }
    }

    private int mainArm(int reach) {
        int node = network.toNode(reach);
        int best = -1;
        for (int k = 0; k < network.outCount(node); k++) {
            int arm = network.out(node, k);
            if (best < 0 || splits.share(arm) > splits.share(best)) {
                best = arm;
            }
        }
        return best;
    }

    private void meet(Gauge gauge, int g, double[] head, double[] along) {
        double base = dischargeAt(network, splits, head, along, gauge.reach());
        double[] unitHead = new double[head.length];
        double[] unitAlong = new double[head.length];
        for (int r = 0; r < head.length; r++) {
            if (zone[r] == g) {
                unitHead[r] = areas.outside(r);
                unitAlong[r] = areas.local(r);
            }
        }
        double slope = dischargeAt(network, splits, unitHead, unitAlong, gauge.reach());
        double increment = gauge.discharge() - base;
        if (!(slope > 0)) {
            notes.add("gauge " + gauge.name() + ": no land lies between it and the gauges above; " + increment
                    + " m3/s are put in at the gauge");
            head[gauge.reach()] += Math.max(increment, 0);
            return;
        }
        double q = increment / slope;
        if (q < 0) {
            notes.add("gauge " + gauge.name() + ": carries " + -increment
                    + " m3/s less than flows in from the gauges above: a losing stretch; mercury stays");
        }
        for (int r = 0; r < head.length; r++) {
            if (zone[r] == g) {
                head[r] = Math.max(0, q * unitHead[r]);
                along[r] = q * unitAlong[r];
            }
        }
    }

    private void spreadBeyondGauges(List<Gauge> ordered, double[] head, double[] along) {
        boolean[] known = new boolean[head.length];
        double sumQ = 0;
        double sumA = 0;
        for (Gauge gauge : ordered) {
            double area = areaAtHead(gauge.reach());
            specific[gauge.reach()] = area > 0 ? gauge.discharge() / area : 0;
            known[gauge.reach()] = area > 0;
            sumQ += gauge.discharge();
            sumA += area;
        }
        for (int r = 0; r < head.length; r++) {
            for (int k = 0; k < network.inCount(network.fromNode(r)) && !known[r]; k++) {
                int up = network.in(network.fromNode(r), k);
                known[r] = known[up];
                specific[r] = specific[up];
            }
        }
        for (int r = head.length - 1; r >= 0; r--) {
            int main = mainArm(r);
            if (!known[r] && main >= 0 && known[main]) {
                known[r] = true;
                specific[r] = specific[main];
            }
        }
        int without = 0;
        for (int r = 0; r < head.length; r++) {
            if (zone[r] < 0) {
                without += known[r] ? 0 : 1;
                double q = known[r] ? specific[r] : sumQ / sumA;
                head[r] += q * areas.outside(r);
                along[r] = q * areas.local(r);
            }
        }
        if (without > 0) {
            notes.add(without
                    + " reaches lie in parts without a gauge; they take the mean specific discharge of all gauges");
        }
    }

    private double areaAtHead(int reach) {
        return areas.total(reach) - areas.local(reach) - areas.outside(reach);
    }

    private static double dischargeAt(RiverNetwork network, Splits splits, double[] head, double[] along, int reach) {
        double[] end = new double[head.length];
        for (int r = 0; r < head.length; r++) {
            double in = head[r];
            int node = network.fromNode(r);
            for (int k = 0; k < network.inCount(node); k++) {
                in += splits.share(r) * end[network.in(node, k)];
            }
            if (r == reach) {
                return in;
            }
            end[r] = Math.max(0, in + along[r]);
        }
        throw new IllegalArgumentException("no reach " + reach);
    }
}
