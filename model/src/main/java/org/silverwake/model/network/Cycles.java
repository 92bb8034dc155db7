// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Knots of reaches that run in circles: strongly connected sets of reaches (Tarjan 1972, with an explicit stack so that
 * long rivers do not overflow the call stack).
 */
public final class Cycles {
    private Cycles() {}

    /**
     * Input indices of the reaches of each knot, each list ascending, lists by their first reach.
     *
     * @param from node at the upstream end of each reach
     * @param to node at the downstream end of each reach
     * @param nodes number of nodes [-], above every node number
     */
    public static List<List<Integer>> find(int[] from, int[] to, int nodes) {
        List<List<Integer>> out = new ArrayList<>();
        for (int k = 0; k < nodes; k++) {
            out.add(new ArrayList<>());
        }
        for (int i = 0; i < from.length; i++) {
            out.get(from[i]).add(i);
        }
        int[] component = components(out, to, nodes);
        List<List<Integer>> members = new ArrayList<>();
        for (int k = 0; k < nodes; k++) {
            members.add(null);
        }
        for (int i = 0; i < from.length; i++) {
            if (component[from[i]] == component[to[i]]) {
                int c = component[from[i]];
                if (members.get(c) == null) {
                    members.set(c, new ArrayList<>());
                }
                members.get(c).add(i);
            }
        }
        List<List<Integer>> knots = new ArrayList<>();
        for (List<Integer> member : members) {
            if (member != null) {
                knots.add(List.copyOf(member));
            }
        }
        knots.sort(Comparator.comparing(list -> list.get(0)));
        return knots;
    }

    private static int[] components(List<List<Integer>> out, int[] to, int nodes) {
        int[] index = new int[nodes];
        int[] low = new int[nodes];
        int[] component = new int[nodes];
        int[] next = new int[nodes];
        Arrays.fill(index, -1);
        Arrays.fill(component, -1);
        ArrayDeque<Integer> path = new ArrayDeque<>();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        int counter = 0;
        int components = 0;
        for (int start = 0; start < nodes; start++) {
            if (index[start] >= 0) {
                continue;
            }
            path.push(start);
            while (!path.isEmpty()) {
                int node = path.peek();
                if (index[node] < 0) {
                    index[node] = counter;
                    low[node] = counter;
                    counter++;
                    open.push(node);
                }
                if (next[node] < out.get(node).size()) {
                    int below = to[out.get(node).get(next[node]++)];
                    if (index[below] < 0) {
                        path.push(below);
                    } else if (component[below] < 0) {
                        low[node] = Math.min(low[node], index[below]);
                    }
                    continue;
                }
                path.pop();
                if (!path.isEmpty()) {
                    low[path.peek()] = Math.min(low[path.peek()], low[node]);
                }
                if (low[node] == index[node]) {
                    int member;
                    do {
                        member = open.pop();
                        component[member] = components;
                    } while (member != node);
                    components++;
                }
            }
        }
        return component;
    }
}
