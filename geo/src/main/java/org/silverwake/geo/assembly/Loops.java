// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lists the independent loops of a net (lines - nodes + parts of them), each by the shortest way round in a breadth-first tree. */
final class Loops {
    private final Net net;
    private final int[] via;
    private final int[] depth;

    private Loops(Net net) {
        this.net = net;
        this.via = new int[net.nodeCount()];
        this.depth = new int[net.nodeCount()];
        Arrays.fill(depth, -1);
    }

    static void list(Net net, DefectLog log) {
        Loops loops = new Loops(net);
        boolean[] inTree = loops.span();
        for (int i = 0; i < net.size(); i++) {
            if (!inTree[i]) {
                List<Integer> round = loops.round(i);
                double length =
                        round.stream().mapToDouble(k -> net.line(k).length()).sum();
                List<String> ids = net.featureIds(round);
                log.open(
                        Defect.Kind.LOOP,
                        net.line(i).middle(),
                        ids,
                        "features " + DefectLog.names(ids) + " form a loop, " + DefectLog.meters(length) + " round",
                        "water is shared between its arms; check that it is a real braid");
            }
        }
    }

    private boolean[] span() {
        boolean[] inTree = new boolean[net.size()];
        ArrayDeque<Integer> open = new ArrayDeque<>();
        for (int root = 0; root < depth.length; root++) {
            if (depth[root] >= 0) {
                continue;
            }
            depth[root] = 0;
            via[root] = -1;
            open.add(root);
            while (!open.isEmpty()) {
                int node = open.remove();
                for (int i : net.at(node)) {
                    int other = net.line(i).other(node);
                    if (depth[other] < 0) {
                        depth[other] = depth[node] + 1;
                        via[other] = i;
                        inTree[i] = true;
                        open.add(other);
                    }
                }
            }
        }
        return inTree;
    }

    private List<Integer> round(int closing) {
        List<Integer> lines = new ArrayList<>(List.of(closing));
        int a = net.line(closing).startNode;
        int b = net.line(closing).endNode;
        while (a != b) {
            if (depth[a] < depth[b]) {
                int swap = a;
                a = b;
                b = swap;
            }
            lines.add(via[a]);
            a = net.line(via[a]).other(a);
        }
        return lines;
    }
}
