// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.silverwake.model.network.RiverNetwork;

/**
 * Discharge from gauges. The increment between a gauge and the gauges next above is shared over the local areas between
 * them in proportion to area, so that every gauge is met and increments add up. A negative one is a losing stretch, listed:
 * the loss is taken from the reaches that carry the gauged water, and branches that join there take the specific discharge of
 * the gauge below. Below the lowest gauge the specific discharge of the nearest gauge upstream holds, on branches that join
 * there that of the reach they join, and in parts of the network without a gauge the area-weighted mean of all.
 */
public final class Gauging {
    private static final int ROUNDS = 200;
    private static final int SETTLED = 5;
    private static final double CLOSE = 1e-13;
    private static final int BRACKETING = 20;
    private static final double ROOT = 1e-16;

    /**
     * A gauge at the head of a reach.
     *
     * @param name its name
     * @param reach the reach that begins at it
     * @param discharge discharge [m3/s], at least 0
     */
    public record Gauge(String name, int reach, double discharge) {}

    private final RiverNetwork network;
    private final DrainageArea areas;
    private final Splits splits;
    private final List<Gauge> gauges;
    private final GaugeZones zones;
    private final double[] ofGauge;
    private final double[] elsewhere;
    private final double[] rate;
    private final double[] put;
    private final boolean[] losing;
    private final List<String> notes = new ArrayList<>();

    private Gauging(ReachTable reaches, DrainageArea areas, Splits splits, List<Gauge> gauges) {
        this.network = reaches.network();
        this.areas = areas;
        this.splits = splits;
        this.gauges = new ArrayList<>(gauges);
        this.gauges.sort((a, b) -> Integer.compare(a.reach(), b.reach()));
        this.zones = new GaugeZones(network, splits, this.gauges);
        this.ofGauge = new double[gauges.size()];
        this.rate = new double[gauges.size()];
        this.put = new double[gauges.size()];
        this.losing = new boolean[gauges.size()];
        this.elsewhere = elsewhere(reaches);
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
        return new Gauging(reaches, areas, splits, gauges).solve();
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

    /** Specific discharge by reach where no gauge is downstream [m/s]; fills that of the gauges. */
    private double[] elsewhere(ReachTable reaches) {
        double[] outside = new double[reaches.size()];
        double[] local = new double[reaches.size()];
        for (int r = 0; r < local.length; r++) {
            outside[r] = areas.outside(r);
            local[r] = areas.local(r);
        }
        double sumQ = 0;
        double sumA = 0;
        for (int g = 0; g < ofGauge.length; g++) {
            double area =
                    dischargeAt(network, splits, outside, local, gauges.get(g).reach());
            ofGauge[g] = area > 0 ? gauges.get(g).discharge() / area : Double.NaN;
            sumQ += area > 0 ? gauges.get(g).discharge() : 0;
            sumA += area;
        }
        double[] nearest = zones.nearest(reaches, ofGauge);
        int without = 0;
        for (int r = 0; r < nearest.length; r++) {
            if (Double.isNaN(nearest[r])) {
                without += zones.zone(r) == GaugeZones.NONE ? 1 : 0;
                nearest[r] = sumA > 0 ? sumQ / sumA : 0;
            }
        }
        if (without > 0) {
            notes.add(without
                    + " reaches lie in parts without a gauge; they take "
                    + (sumA > 0
                            ? "the mean specific discharge of all gauges"
                            : "none, for no area drains to any gauge"));
        }
        return nearest;
    }

    private WaterSupply solve() {
        double[] head = new double[network.size()];
        double[] along = new double[network.size()];
        double largest = gauges.stream().mapToDouble(Gauge::discharge).max().orElse(0);
        double off = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS && off > CLOSE * largest; round++) {
            off = 0;
            for (int g = 0; g < rate.length; g++) {
                off = Math.max(off, Math.abs(meet(g, head, along)));
            }
            if ((off <= CLOSE * largest || round >= SETTLED) && markLosing()) {
                off = Double.POSITIVE_INFINITY;
            }
        }
        for (int g = 0; g < rate.length; g++) {
            note(g, dischargeAt(network, splits, head, along, gauges.get(g).reach()), CLOSE * largest);
        }
        return new WaterSupply(head, along, notes);
    }

    /** One step towards a gauge's discharge; what it was off before [m3/s]. Exact at once on trees, upstream gauges first. */
    private double meet(int g, double[] head, double[] along) {
        fill(head, along);
        double off = gauges.get(g).discharge()
                - dischargeAt(network, splits, head, along, gauges.get(g).reach());
        double[] unitHead = new double[head.length];
        double[] unitAlong = new double[head.length];
        for (int r = 0; r < head.length; r++) {
            unitHead[r] = zones.zoneOfHead(r) == g && !losing[g] ? areas.outside(r) : 0;
            unitAlong[r] = zones.zone(r) == g && takesRate(r, g) ? areas.local(r) : 0;
        }
        double slope =
                dischargeAt(network, splits, unitHead, unitAlong, gauges.get(g).reach());
        if (slope > 0) {
            step(g, off / slope, head, along);
        } else {
            put[g] = Math.max(0, put[g] + off);
        }
        fill(head, along);
        return off;
    }

    /** One step by the slope; where reaches of a losing stretch run dry on the way, the root itself. */
    private void step(int g, double change, double[] head, double[] along) {
        double before = rate[g];
        double linear = before + change;
        double close = CLOSE * gauges.get(g).discharge();
        if (Math.abs(off(g, linear, head, along)) <= close || !losing[g]) {
            rate[g] = linear;
            return;
        }
        double low = Math.min(before, linear);
        double high = Math.max(before, linear);
        double width = Math.max(high - low, Math.abs(low));
        for (int k = 0; k < BRACKETING && off(g, low, head, along) < 0; k++) {
            low -= width * (1 << k);
        }
        for (int k = 0; k < BRACKETING && off(g, high, head, along) > 0; k++) {
            high += width * (1 << k);
        }
        boolean bracketed = off(g, low, head, along) >= 0 && off(g, high, head, along) <= 0;
        rate[g] = bracketed
                ? new BrentSolver(ROOT, ROOT * width, close).solve(ROUNDS, r -> off(g, r, head, along), low, high)
                : linear;
    }

    /** What a gauge's discharge is above what the reach carries at a rate [m3/s]. */
    private double off(int g, double specific, double[] head, double[] along) {
        rate[g] = specific;
        fill(head, along);
        return gauges.get(g).discharge()
                - dischargeAt(network, splits, head, along, gauges.get(g).reach());
    }

    private boolean takesRate(int reach, int g) {
        return !losing[g] || zones.isGauged(reach);
    }

    private boolean markLosing() {
        boolean changed = false;
        for (int g = 0; g < rate.length; g++) {
            if (rate[g] < 0 && !losing[g]) {
                losing[g] = true;
                changed = true;
            }
        }
        return changed;
    }

    private void fill(double[] head, double[] along) {
        for (int r = 0; r < head.length; r++) {
            int above = zones.zoneOfHead(r);
            head[r] = Math.max(0, specific(r, above, false) * areas.outside(r));
            along[r] = specific(r, zones.zone(r), zones.isGauged(r)) * areas.local(r);
        }
        for (int g = 0; g < put.length; g++) {
            head[gauges.get(g).reach()] += put[g];
        }
    }

    private double specific(int reach, int g, boolean carries) {
        if (g == GaugeZones.NONE) {
            return elsewhere[reach];
        }
        if (losing[g] && !carries) {
            return Double.isNaN(ofGauge[g]) ? 0 : ofGauge[g];
        }
        return rate[g];
    }

    private void note(int g, double met, double close) {
        Gauge gauge = gauges.get(g);
        if (losing[g] && rate[g] < 0) {
            notes.add("gauge " + gauge.name()
                    + ": carries less than flows in from the gauges above: a losing stretch; mercury stays");
        }
        if (put[g] > 0) {
            notes.add("gauge " + gauge.name() + ": no land lies between it and the gauges above; " + put[g]
                    + " m3/s are put in at the gauge");
        }
        if (Math.abs(met - gauge.discharge()) > close) {
            notes.add("gauge " + gauge.name() + ": " + gauge.discharge() + " m3/s cannot be met, the reach carries "
                    + met + " m3/s; check the gauge, the split of the arms above it, or leave it out");
        }
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
