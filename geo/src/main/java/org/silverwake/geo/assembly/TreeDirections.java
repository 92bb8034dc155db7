// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The directions of chains that cost least, where it costs to run a chain against the evidence, to have a node that
 * water only enters or only leaves though several chains meet there, and to have one outlet more. Exact on trees, by
 * dynamic programming from the leaves; a chain that closes a loop takes its own cheaper direction first.
 */
final class TreeDirections {
    private static final int NONE = 0;
    private static final int IN = 1;
    private static final int OUT = 2;

    private final List<Chains.Chain> chains;
    private final double[] forward;
    private final double[] backward;
    private final IntPredicate named;
    private final double dead;
    private final double outlet;
    private final List<List<Integer>> at = new ArrayList<>();
    private final boolean[] turned;
    private final int[] fixedIn;
    private final int[] fixedOut;
    private final int[] parent;
    private final double[][] best;
    private final List<Integer> order = new ArrayList<>();

    private TreeDirections(
            List<Chains.Chain> chains,
            int nodes,
            double[] forward,
            double[] backward,
            IntPredicate named,
            Costs costs) {
        this.chains = chains;
        this.forward = forward;
        this.backward = backward;
        this.named = named;
        this.dead = costs.deadNode;
        this.outlet = costs.outlet;
        this.turned = new boolean[chains.size()];
        this.fixedIn = new int[nodes];
        this.fixedOut = new int[nodes];
        this.parent = new int[nodes];
        this.best = new double[3][nodes];
        for (int k = 0; k < nodes; k++) {
            at.add(new ArrayList<>());
        }
        for (int c = 0; c < chains.size(); c++) {
            at.get(chains.get(c).from()).add(c);
            at.get(chains.get(c).to()).add(c);
        }
    }

    /** What a node costs where chains only end or only begin, and what an outlet costs. */
    record Costs(double deadNode, double outlet) {}

    /** Whether each chain is turned round; {@code forward} and {@code backward} are the costs of either direction. */
    static boolean[] find(
            List<Chains.Chain> chains,
            int nodes,
            double[] forward,
            double[] backward,
            IntPredicate named,
            Costs costs) {
        TreeDirections directions = new TreeDirections(chains, nodes, forward, backward, named, costs);
        directions.spanAndFix();
        directions.fromLeaves();
        directions.fromRoots();
        return directions.turned;
    }

    private void spanAndFix() {
        boolean[] inTree = new boolean[chains.size()];
        Arrays.fill(parent, -2);
        for (int root = 0; root < at.size(); root++) {
            if (parent[root] != -2 || at.get(root).isEmpty()) {
                continue;
            }
            parent[root] = -1;
            int open = order.size();
            order.add(root);
            while (open < order.size()) {
                int node = order.get(open++);
                for (int c : at.get(node)) {
                    int other = other(c, node);
                    if (parent[other] == -2) {
                        parent[other] = c;
                        inTree[c] = true;
                        order.add(other);
                    }
                }
            }
        }
        for (int c = 0; c < chains.size(); c++) {
            if (!inTree[c]) {
                turned[c] = backward[c] < forward[c];
                fixedOut[turned[c] ? chains.get(c).to() : chains.get(c).from()]++;
                fixedIn[turned[c] ? chains.get(c).from() : chains.get(c).to()]++;
            }
        }
    }

    private int other(int c, int node) {
        Chains.Chain chain = chains.get(c);
        return chain.from() == node ? chain.to() : chain.from();
    }

    private List<Integer> children(int node) {
        List<Integer> children = new ArrayList<>();
        for (int c : at.get(node)) {
            int other = other(c, node);
            if (c != parent[node] && parent[other] == c) {
                children.add(c);
            }
        }
        return children;
    }

    private void fromLeaves() {
        for (int k = order.size() - 1; k >= 0; k--) {
            int node = order.get(k);
            for (int state : new int[] {NONE, IN, OUT}) {
                best[state][node] = solve(node, state, null);
            }
        }
    }

    private void fromRoots() {
        int[] state = new int[at.size()];
        for (int node : order) {
            List<Integer> children = children(node);
            boolean[] in = new boolean[children.size()];
            solve(node, state[node], in);
            for (int j = 0; j < in.length; j++) {
                int c = children.get(j);
                int child = other(c, node);
                turned[c] = in[j] != (chains.get(c).to() == node);
                state[child] = in[j] ? OUT : IN;
            }
        }
    }

    /** Least cost below a node whose parent chain brings water in, takes it out, or is none; fills the choice. */
    private double solve(int node, int parentState, boolean[] choice) {
        List<Integer> children = children(node);
        int n = children.size();
        double[] in = new double[n];
        double[] out = new double[n];
        for (int j = 0; j < n; j++) {
            int c = children.get(j);
            int child = other(c, node);
            boolean endsHere = chains.get(c).to() == node;
            in[j] = (endsHere ? forward[c] : backward[c]) + best[OUT][child];
            out[j] = (endsHere ? backward[c] : forward[c]) + best[IN][child];
        }
        boolean hasIn = parentState == IN || fixedIn[node] > 0;
        boolean hasOut = parentState == OUT || fixedOut[node] > 0;
        boolean[] mixed = new boolean[n];
        double costMixed = mixed(in, out, hasIn, hasOut, mixed);
        double costIn = hasOut ? Double.POSITIVE_INFINITY : sum(in) + endCost(node, true);
        double costOut = hasIn ? Double.POSITIVE_INFINITY : sum(out) + endCost(node, false);
        double least = Math.min(costMixed, Math.min(costIn, costOut));
        if (choice != null) {
            for (int j = 0; j < n; j++) {
                choice[j] = least == costMixed ? mixed[j] : least == costIn;
            }
        }
        return least;
    }

    private double endCost(int node, boolean onlyIn) {
        if (onlyIn && named.test(node)) {
            return 0;
        }
        if (at.get(node).size() > 1) {
            return dead;
        }
        return onlyIn ? outlet : 0;
    }

    private static double mixed(double[] in, double[] out, boolean hasIn, boolean hasOut, boolean[] choice) {
        double cost = 0;
        int ins = 0;
        int toOut = -1;
        int toIn = -1;
        for (int j = 0; j < in.length; j++) {
            choice[j] = in[j] <= out[j];
            cost += Math.min(in[j], out[j]);
            ins += choice[j] ? 1 : 0;
            if (choice[j] && (toOut < 0 || out[j] - in[j] < out[toOut] - in[toOut])) {
                toOut = j;
            }
            if (!choice[j] && (toIn < 0 || in[j] - out[j] < in[toIn] - out[toIn])) {
                toIn = j;
            }
        }
        int outs = in.length - ins;
        if (!hasIn && ins == 0) {
            if (toIn < 0 || !hasOut && outs < 2) {
                return Double.POSITIVE_INFINITY;
            }
            choice[toIn] = true;
            return cost + in[toIn] - out[toIn];
        }
        if (!hasOut && outs == 0) {
            if (toOut < 0 || !hasIn && ins < 2) {
                return Double.POSITIVE_INFINITY;
            }
            choice[toOut] = false;
            return cost + out[toOut] - in[toOut];
        }
        return cost;
    }

    private static double sum(double[] costs) {
        return Arrays.stream(costs).sum();
    }
}
