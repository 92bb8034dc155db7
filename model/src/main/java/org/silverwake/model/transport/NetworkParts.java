// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Cells;

/**
 * The reaches of a network in parts of about as many cells each. Water runs from a part to later ones, never to an earlier one.
 * Small tributaries come first and what they run to last, so that many parts do not wait for each other. The parts follow from
 * network and cells alone, so that what is summed part by part is the same on every machine.
 */
final class NetworkParts {
    /** Cells of a part [-], chosen: few beside what handing a part on costs, more than the demo basin has in all. */
    private static final int CELLS = 512;

    /** Most parts [-], chosen: several for each processor of a large machine. */
    private static final int MOST = 64;

    private final List<int[]> reaches;
    private final List<int[]> feeding;
    private final List<int[]> fed;

    private NetworkParts(RiverNetwork network, List<int[]> reaches) {
        this.reaches = reaches;
        int[] partOf = new int[network.size()];
        for (int p = 0; p < reaches.size(); p++) {
            for (int r : reaches.get(p)) {
                partOf[r] = p;
            }
        }
        List<BitSet> above = sets(reaches.size());
        List<BitSet> below = sets(reaches.size());
        for (int r = 0; r < partOf.length; r++) {
            int node = network.fromNode(r);
            for (int k = 0; k < network.inCount(node); k++) {
                int up = partOf[network.in(node, k)];
                if (up != partOf[r]) {
                    above.get(partOf[r]).set(up);
                    below.get(up).set(partOf[r]);
                }
            }
        }
        this.feeding = above.stream().map(set -> set.stream().toArray()).toList();
        this.fed = below.stream().map(set -> set.stream().toArray()).toList();
    }

    private static List<BitSet> sets(int count) {
        List<BitSet> sets = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            sets.add(new BitSet());
        }
        return sets;
    }

    static NetworkParts of(RiverNetwork network, Cells cells) {
        int most = Math.min(MOST, Math.max(1, cells.count() / CELLS));
        int[] order = smallestFirst(network, cells);
        List<int[]> parts = new ArrayList<>();
        int from = 0;
        long done = 0;
        for (int i = 0; i < order.length; i++) {
            done += cells.start(order[i] + 1) - cells.start(order[i]);
            boolean full = done * most >= (parts.size() + 1L) * cells.count();
            if (full || i == order.length - 1) {
                int[] part = Arrays.copyOfRange(order, from, i + 1);
                // a network's own order is upstream first too, and goes through memory from one end to the other
                Arrays.sort(part);
                parts.add(part);
                from = i + 1;
            }
        }
        return new NetworkParts(network, parts);
    }

    /** All reaches, each after those that run to it: from the outlets up, smaller tributaries before larger ones. */
    private static int[] smallestFirst(RiverNetwork network, Cells cells) {
        double[] size = sizes(network, cells);
        List<List<Integer>> left = new ArrayList<>();
        int[] order = new int[network.size()];
        BitSet seen = new BitSet();
        Deque<Integer> path = new ArrayDeque<>();
        int count = 0;
        for (int r = 0; r < order.length; r++) {
            List<Integer> above = new ArrayList<>();
            for (int k = 0; k < network.inCount(network.fromNode(r)); k++) {
                above.add(network.in(network.fromNode(r), k));
            }
            above.sort(Comparator.comparingDouble((Integer up) -> -size[up]));
            left.add(above);
        }
        for (int outlet = 0; outlet < order.length; outlet++) {
            if (network.isOutlet(outlet)) {
                seen.set(outlet);
                path.push(outlet);
            }
            while (!path.isEmpty()) {
                List<Integer> above = left.get(path.peek());
                if (above.isEmpty()) {
                    order[count++] = path.pop();
                    continue;
                }
                int up = above.remove(above.size() - 1);
                if (!seen.get(up)) {
                    seen.set(up);
                    path.push(up);
                }
            }
        }
        return order;
    }

    /** Cells of a reach and of all above it, shared out where water parts [-]. */
    private static double[] sizes(RiverNetwork network, Cells cells) {
        double[] size = new double[network.size()];
        for (int r = 0; r < size.length; r++) {
            int node = network.fromNode(r);
            size[r] = cells.start(r + 1) - cells.start(r);
            for (int k = 0; k < network.inCount(node); k++) {
                size[r] += size[network.in(node, k)] / network.outCount(node);
            }
        }
        return size;
    }

    /** Number of parts [-]. */
    int count() {
        return reaches.size();
    }

    /** Reaches of a part, upstream first. */
    int[] reaches(int part) {
        return reaches.get(part);
    }

    /** Parts whose water runs straight to a part. */
    int[] feeding(int part) {
        return feeding.get(part);
    }

    /** Parts that a part's water runs straight to. */
    int[] fed(int part) {
        return fed.get(part);
    }
}
