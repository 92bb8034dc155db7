// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Runs of lines that follow one another with nothing else joining, from one junction, end or clash to the next. */
final class Chains {
    /** Lines in flow order; {@code from} and {@code to} are the nodes at its ends. */
    record Chain(int from, int to, List<Integer> lines) {}

    private final Net net;
    private final boolean[] flipped;
    private final IntPredicate keep;

    private Chains(Net net, boolean[] flipped, IntPredicate keep) {
        this.net = net;
        this.flipped = flipped;
        this.keep = keep;
    }

    /** Chains under the given directions; nodes that {@code keep} names are never passed through. */
    static List<Chain> of(Net net, boolean[] flipped, IntPredicate keep) {
        return new Chains(net, flipped, keep).all();
    }

    private List<Chain> all() {
        boolean[] done = new boolean[net.size()];
        List<Chain> chains = new ArrayList<>();
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < net.size(); i++) {
                if (!done[i] && (pass == 1 || !isThrough(from(i)))) {
                    chains.add(follow(i, done));
                }
            }
        }
        return chains;
    }

    private Chain follow(int first, boolean[] done) {
        List<Integer> lines = new ArrayList<>();
        int line = first;
        while (true) {
            done[line] = true;
            lines.add(line);
            int node = to(line);
            if (!isThrough(node)) {
                break;
            }
            int next = net.at(node).get(0) == line
                    ? net.at(node).get(1)
                    : net.at(node).get(0);
            if (done[next]) {
                break;
            }
            line = next;
        }
        return new Chain(from(first), to(line), lines);
    }

    private boolean isThrough(int node) {
        if (net.degree(node) != 2 || keep.test(node)) {
            return false;
        }
        int one = net.at(node).get(0);
        int two = net.at(node).get(1);
        return to(one) == node && from(two) == node || to(two) == node && from(one) == node;
    }

    private int from(int i) {
        return flipped[i] ? net.line(i).endNode : net.line(i).startNode;
    }

    private int to(int i) {
        return flipped[i] ? net.line(i).startNode : net.line(i).endNode;
    }
}
