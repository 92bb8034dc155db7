// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.PriorityQueue;

/**
 * A directed acyclic network of reaches. Reaches have dense indices 0..n-1 in downstream order (upstream first), so that
 * a downstream sweep is a plain loop; {@link #inputIndex} leads back to the order they were given in. A node is where
 * reaches meet. Where a node has several outgoing reaches it is a bifurcation. Immutable; O(n log n) to build.
 */
public final class RiverNetwork {
    private final String[] ids;
    private final int[] input;
    private final int[] order;
    private final int[] from;
    private final int[] to;
    private final int nodeCount;
    private final int[] inStart;
    private final int[] in;
    private final int[] outStart;
    private final int[] out;

    private RiverNetwork(String[] ids, int[] input, int[] from, int[] to, int nodeCount) {
        this.ids = ids;
        this.input = input;
        this.from = from;
        this.to = to;
        this.nodeCount = nodeCount;
        this.order = new int[input.length];
        for (int r = 0; r < input.length; r++) {
            order[input[r]] = r;
        }
        this.inStart = starts(to, nodeCount);
        this.in = fill(to, inStart);
        this.outStart = starts(from, nodeCount);
        this.out = fill(from, outStart);
    }

    /**
     * A network from from-to pairs.
     *
     * @param ids one name per reach, all different
     * @param fromNode node at the upstream end of each reach, numbered from 0
     * @param toNode node at the downstream end of each reach
     * @throws CycleException if reaches run in a circle
     * @throws IllegalArgumentException if the lengths differ, an id is used twice or a node number is negative
     */
    public static RiverNetwork of(List<String> ids, int[] fromNode, int[] toNode) {
        int n = ids.size();
        if (fromNode.length != n || toNode.length != n) {
            throw new IllegalArgumentException("ids, fromNode and toNode must have the same length");
        }
        if (new java.util.HashSet<>(ids).size() != n) {
            throw new IllegalArgumentException("a reach id is used twice");
        }
        int nodes = 0;
        for (int i = 0; i < n; i++) {
            if (fromNode[i] < 0 || toNode[i] < 0) {
                throw new IllegalArgumentException("node numbers run from 0");
            }
            nodes = Math.max(nodes, Math.max(fromNode[i], toNode[i]) + 1);
        }
        int[] sorted = sort(ids, fromNode, toNode, nodes);
        String[] sortedIds = new String[n];
        int[] from = new int[n];
        int[] to = new int[n];
        for (int r = 0; r < n; r++) {
            sortedIds[r] = ids.get(sorted[r]);
            from[r] = fromNode[sorted[r]];
            to[r] = toNode[sorted[r]];
        }
        return new RiverNetwork(sortedIds, sorted, from, to, nodes);
    }

    private static int[] sort(List<String> ids, int[] from, int[] to, int nodes) {
        int n = from.length;
        int[] waiting = new int[nodes];
        int[] outStart = starts(from, nodes);
        int[] out = fill(from, outStart);
        for (int i = 0; i < n; i++) {
            waiting[to[i]]++;
        }
        PriorityQueue<Integer> ready = new PriorityQueue<>();
        for (int i = 0; i < n; i++) {
            if (waiting[from[i]] == 0) {
                ready.add(i);
            }
        }
        int[] sorted = new int[n];
        int count = 0;
        while (!ready.isEmpty()) {
            int i = ready.remove();
            sorted[count++] = i;
            int node = to[i];
            if (--waiting[node] == 0) {
                for (int k = outStart[node]; k < outStart[node + 1]; k++) {
                    ready.add(out[k]);
                }
            }
        }
        if (count < n) {
            List<List<Integer>> cycles = Cycles.find(from, to, nodes);
            StringBuilder text = new StringBuilder("reaches run in a circle:");
            for (List<Integer> cycle : cycles) {
                text.append(' ');
                List<String> names = new ArrayList<>();
                for (int i : cycle) {
                    names.add(ids.get(i));
                }
                text.append(names);
            }
            throw new CycleException(text.toString(), cycles);
        }
        return sorted;
    }

    private static int[] starts(int[] node, int nodes) {
        int[] start = new int[nodes + 1];
        for (int k : node) {
            start[k + 1]++;
        }
        for (int k = 0; k < nodes; k++) {
            start[k + 1] += start[k];
        }
        return start;
    }

    private static int[] fill(int[] node, int[] start) {
        int[] at = Arrays.copyOf(start, start.length);
        int[] list = new int[node.length];
        for (int i = 0; i < node.length; i++) {
            list[at[node[i]]++] = i;
        }
        return list;
    }

    /** Number of reaches. */
    public int size() {
        return ids.length;
    }

    /** Number of nodes. */
    public int nodeCount() {
        return nodeCount;
    }

    /** Name of a reach. */
    public String id(int reach) {
        return ids[reach];
    }

    /** Place of a reach in the lists the network was built from. */
    public int inputIndex(int reach) {
        return input[reach];
    }

    /** Reach at a place of the lists the network was built from. */
    public int reachOfInput(int inputIndex) {
        return order[inputIndex];
    }

    /** Node at the upstream end of a reach. */
    public int fromNode(int reach) {
        return from[reach];
    }

    /** Node at the downstream end of a reach. */
    public int toNode(int reach) {
        return to[reach];
    }

    /** Number of reaches that end at a node. */
    public int inCount(int node) {
        return inStart[node + 1] - inStart[node];
    }

    /** The k-th reach that ends at a node, k from 0. */
    public int in(int node, int k) {
        return in[inStart[node] + k];
    }

    /** Number of reaches that begin at a node. */
    public int outCount(int node) {
        return outStart[node + 1] - outStart[node];
    }

    /** The k-th reach that begins at a node, k from 0. */
    public int out(int node, int k) {
        return out[outStart[node] + k];
    }

    /** Whether nothing flows into a reach from upstream. */
    public boolean isHeadwater(int reach) {
        return inCount(from[reach]) == 0;
    }

    /** Whether a reach ends the network. */
    public boolean isOutlet(int reach) {
        return outCount(to[reach]) == 0;
    }

    /** Whether several reaches begin at a node that water flows through. */
    public boolean isBifurcation(int node) {
        return outCount(node) > 1 && inCount(node) > 0;
    }

    /** These reaches and all that water from them runs to; indices rise downstream. */
    public BitSet below(BitSet reaches) {
        BitSet below = (BitSet) reaches.clone();
        for (int r = 0; r < ids.length; r++) {
            for (int k = 0; k < inCount(from[r]) && !below.get(r); k++) {
                below.set(r, below.get(in(from[r], k)));
            }
        }
        return below;
    }

    /** These reaches and all whose water runs to them. */
    public BitSet above(BitSet reaches) {
        BitSet above = (BitSet) reaches.clone();
        for (int r = ids.length - 1; r >= 0; r--) {
            for (int k = 0; k < outCount(to[r]) && !above.get(r); k++) {
                above.set(r, above.get(out(to[r], k)));
            }
        }
        return above;
    }

    /** Component of each reach, numbered from 0 by first reach in downstream order. A copy. */
    public int[] components() {
        int[] root = new int[nodeCount];
        for (int k = 0; k < nodeCount; k++) {
            root[k] = k;
        }
        for (int r = 0; r < ids.length; r++) {
            root[find(root, from[r])] = find(root, to[r]);
        }
        int[] number = new int[nodeCount];
        Arrays.fill(number, -1);
        int[] component = new int[ids.length];
        int next = 0;
        for (int r = 0; r < ids.length; r++) {
            int top = find(root, from[r]);
            if (number[top] < 0) {
                number[top] = next++;
            }
            component[r] = number[top];
        }
        return component;
    }

    /** Number of independent loops: reaches - nodes that carry reaches + components. */
    public int loopCount() {
        int used = 0;
        for (int k = 0; k < nodeCount; k++) {
            if (inCount(k) + outCount(k) > 0) {
                used++;
            }
        }
        int components = 0;
        for (int c : components()) {
            components = Math.max(components, c + 1);
        }
        return ids.length - used + components;
    }

    private static int find(int[] root, int node) {
        int k = node;
        while (root[k] != k) {
            root[k] = root[root[k]];
            k = root[k];
        }
        return k;
    }
}
