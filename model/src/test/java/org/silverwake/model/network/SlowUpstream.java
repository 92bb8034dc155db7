// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.Set;

/** A plain search upstream: the readable twin of everything that walks a network fast. */
public final class SlowUpstream {
    private SlowUpstream() {}

    /** Every reach from which a reach can be reached, itself included. */
    public static Set<Integer> of(RiverNetwork network, int reach) {
        Set<Integer> found = new HashSet<>(Set.of(reach));
        ArrayDeque<Integer> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            int node = network.fromNode(open.remove());
            for (int k = 0; k < network.inCount(node); k++) {
                if (found.add(network.in(node, k))) {
                    open.add(network.in(node, k));
                }
            }
        }
        return found;
    }
}
