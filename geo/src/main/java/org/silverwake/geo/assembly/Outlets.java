// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.Ground;

/**
 * Named outlets and what they decide: water in a line without which the network would fall apart runs to the side where
 * a named outlet is, when there is one on one side only. Lines of a loop are not decided. (Bridges of a graph: Tarjan
 * 1974.)
 */
final class Outlets {
    private static final double FARTHEST = 1000;

    private final Net net;
    private final Set<Integer> nodes = new LinkedHashSet<>();
    private final int[] decided;

    private Outlets(Net net) {
        this.net = net;
        this.decided = new int[net.size()];
    }

    static Outlets of(Net net, List<AssemblyOptions.Outlet> named) {
        Outlets outlets = new Outlets(net);
        List<String> problems = new ArrayList<>();
        for (AssemblyOptions.Outlet outlet : named) {
            if (outlet.featureId().isPresent()) {
                outlets.feature(outlet.featureId().get(), problems);
            } else {
                outlets.point(outlet, problems);
            }
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        outlets.decide();
        return outlets;
    }

    private void feature(String id, List<String> problems) {
        Line last = null;
        List<Integer> free = new ArrayList<>();
        for (Line line : net.lines()) {
            if (line.featureId.equals(id)) {
                last = line;
                for (int node : new int[] {line.startNode, line.endNode}) {
                    if (net.degree(node) == 1) {
                        free.add(node);
                    }
                }
            }
        }
        if (last == null) {
            List<String> ids = net.lines().stream().map(line -> line.featureId).toList();
            problems.add("rivers.outlets: no line has the id " + id
                    + Nearest.word(id, ids)
                            .map(word -> "; did you mean " + word + "?")
                            .orElse(""));
            return;
        }
        nodes.add(free.size() == 1 ? free.get(0) : last.endNode);
    }

    private void point(AssemblyOptions.Outlet outlet, List<String> problems) {
        Coordinate at = new Coordinate(
                outlet.longitude().getAsDouble(), outlet.latitude().getAsDouble());
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < net.nodeCount(); k++) {
            double distance = net.degree(k) == 1 ? Ground.distance(at, net.node(k)) : Double.POSITIVE_INFINITY;
            if (distance < least) {
                least = distance;
                best = k;
            }
        }
        if (least > FARTHEST) {
            problems.add("rivers.outlets: " + outlet + " lies " + DefectLog.meters(least)
                    + " from the nearest free line end; at most " + DefectLog.meters(FARTHEST)
                    + " is allowed; correct it (longitude first), or give a feature id");
            return;
        }
        nodes.add(best);
    }

    boolean isOutlet(int node) {
        return nodes.contains(node);
    }

    boolean isEmpty() {
        return nodes.isEmpty();
    }

    /** +1 where a line runs as drawn, -1 where against, 0 where outlets cannot tell. */
    int direction(int line) {
        return decided[line];
    }

    private void decide() {
        int[] number = new int[net.nodeCount()];
        Arrays.fill(number, -1);
        for (int root : nodes) {
            if (number[root] < 0) {
                visit(root, number);
            }
        }
    }

    private void visit(int root, int[] number) {
        int n = net.nodeCount();
        int[] low = new int[n];
        int[] outlets = new int[n];
        int[] next = new int[n];
        int[] via = new int[n];
        Arrays.fill(via, -1);
        ArrayDeque<Integer> path = new ArrayDeque<>(List.of(root));
        int counter = 0;
        number[root] = counter;
        low[root] = counter++;
        outlets[root] = 1;
        while (!path.isEmpty()) {
            int node = path.peek();
            if (next[node] < net.degree(node)) {
                int i = net.at(node).get(next[node]++);
                int other = net.line(i).other(node);
                if (i == via[node]) {
                    continue;
                }
                if (number[other] >= 0) {
                    low[node] = Math.min(low[node], number[other]);
                    continue;
                }
                number[other] = counter;
                low[other] = counter++;
                outlets[other] = isOutlet(other) ? 1 : 0;
                via[other] = i;
                path.push(other);
                continue;
            }
            path.pop();
            if (!path.isEmpty()) {
                int above = path.peek();
                low[above] = Math.min(low[above], low[node]);
                outlets[above] += outlets[node];
                if (low[node] > number[above] && outlets[node] == 0) {
                    decided[via[node]] = net.line(via[node]).startNode == node ? 1 : -1;
                }
            }
        }
    }
}
