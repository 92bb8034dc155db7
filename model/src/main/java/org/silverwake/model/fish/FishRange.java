// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.ReachTable;

/**
 * How far the fish of a reach swim: all of the network within a length of way from the middle of the reach, up, down and into
 * tributaries, as far as there is water in some flow state, and to the dams.
 */
public final class FishRange {
    private final ReachTable reaches;
    private final double radius;
    private final IntPredicate passable;
    private final IntPredicate isDam;

    /** A range that no dam stops; its radius as below [m]. */
    public FishRange(ReachTable reaches, double radius, IntPredicate passable) {
        this(reaches, radius, passable, node -> false);
    }

    /**
     * A range.
     *
     * @param radius length of way either way [m], above 0
     * @param passable reaches that have water
     * @param isDam nodes at which a dam stands, which no fish passes, neither up nor down
     */
    public FishRange(ReachTable reaches, double radius, IntPredicate passable, IntPredicate isDam) {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("a fish's range of " + radius + " m is not allowed; give one above 0");
        }
        this.reaches = reaches;
        this.radius = radius;
        this.passable = passable;
        this.isDam = isDam;
    }

    /**
     * Length within the range by reach [m]; empty where the reach itself has no water.
     *
     * @return lengths [m], above 0, in order of reaches found
     */
    public Map<Integer, Double> lengths(int reach) {
        Map<Integer, Double> lengths = new HashMap<>();
        if (!passable.test(reach)) {
            return lengths;
        }
        RiverNetwork network = reaches.network();
        double half = reaches.length(reach) / 2;
        lengths.put(reach, 2 * Math.min(half, radius));
        Map<Integer, Double> nodes = new HashMap<>();
        PriorityQueue<Step> open = new PriorityQueue<>();
        open.add(new Step(half, network.fromNode(reach)));
        open.add(new Step(half, network.toNode(reach)));
        while (!open.isEmpty()) {
            Step step = open.remove();
            if (step.way() >= radius || isDam.test(step.node()) || nodes.putIfAbsent(step.node(), step.way()) != null) {
                continue;
            }
            for (int next : around(network, step.node())) {
                if (next != reach && passable.test(next)) {
                    double covered = lengths.getOrDefault(next, 0.0) + radius - step.way();
                    lengths.put(next, Math.min(reaches.length(next), covered));
                    int end = network.fromNode(next) == step.node() ? network.toNode(next) : network.fromNode(next);
                    open.add(new Step(step.way() + reaches.length(next), end));
                }
            }
        }
        return lengths;
    }

    private static List<Integer> around(RiverNetwork network, int node) {
        List<Integer> around = new ArrayList<>();
        for (int k = 0; k < network.inCount(node); k++) {
            around.add(network.in(node, k));
        }
        for (int k = 0; k < network.outCount(node); k++) {
            around.add(network.out(node, k));
        }
        return around;
    }

    private record Step(double way, int node) implements Comparable<Step> {
        @Override
        public int compareTo(Step other) {
            int byWay = Double.compare(way, other.way);
            return byWay != 0 ? byWay : Integer.compare(node, other.node);
        }
    }

    /** Means of a value over the range of each reach, weighted by length [the value's unit]; NaN where a reach has no water. */
    List<Double> means(List<Double> values) {
        List<Double> means = new ArrayList<>();
        for (int r = 0; r < values.size(); r++) {
            double sum = 0;
            double length = 0;
            for (Map.Entry<Integer, Double> part : new java.util.TreeMap<>(lengths(r)).entrySet()) {
                sum += part.getValue() * values.get(part.getKey());
                length += part.getValue();
            }
            means.add(length > 0 ? sum / length : Double.NaN);
        }
        return means;
    }
}
