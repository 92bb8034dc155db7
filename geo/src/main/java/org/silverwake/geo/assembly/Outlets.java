// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.End;
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

    /**
     * Outlets of the scenario, and the user's own, which take their place in each connected part.
     *
     * @throws GeoDataException where a scenario's outlet does not exist
     */
    static Outlets of(Net net, List<AssemblyOptions.Outlet> named, List<End> chosen, DefectLog log) {
        Outlets outlets = new Outlets(net);
        List<String> problems = new ArrayList<>();
        Map<Integer, AssemblyOptions.Outlet> usual = new LinkedHashMap<>();
        for (AssemblyOptions.Outlet outlet : named) {
            int node = outlet.featureId().isPresent()
                    ? outlets.feature(outlet.featureId().get(), problems)
                    : outlets.point(outlet, problems);
            if (node >= 0) {
                usual.putIfAbsent(node, outlet);
            }
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        outlets.choose(usual, chosen, log);
        outlets.decide();
        return outlets;
    }

    private void choose(Map<Integer, AssemblyOptions.Outlet> usual, List<End> chosen, DefectLog log) {
        if (chosen.isEmpty()) {
            nodes.addAll(usual.keySet());
            return;
        }
        int[] component = net.components();
        Map<End, Integer> own = new LinkedHashMap<>();
        for (End end : chosen) {
            int node = end(end);
            if (node >= 0) {
                own.put(end, node);
            } else {
                String text = "feature " + end.featureId() + " no longer ends within " + DefectLog.meters(Forced.ON_IT)
                        + " of the position given";
                log.rulings().note(end.where(), Status.DOES_NOT_FIT, text);
            }
        }
        nodes.addAll(own.values());
        Set<Integer> kept = new LinkedHashSet<>();
        usual.forEach((node, outlet) -> {
            if (own.values().stream().noneMatch(k -> component[k] == component[node])) {
                kept.add(node);
            }
        });
        nodes.addAll(kept);
        own.forEach((end, node) -> {
            List<String> replaced = usual.entrySet().stream()
                    .filter(u -> component[u.getKey()] == component[node] && !nodes.contains(u.getKey()))
                    .map(u -> u.getValue().toString())
                    .toList();
            boolean needed = !replaced.isEmpty() || !usual.containsKey(node);
            String text = "water leaves at " + DefectLog.place(net.node(node));
            log.rulings()
                    .note(
                            end.where(),
                            needed ? Status.APPLIED : Status.NO_LONGER_NEEDED,
                            needed
                                    ? text + (replaced.isEmpty() ? "" : ", in place of " + DefectLog.names(replaced))
                                    : text + " by rivers.outlets anyway");
        });
    }

    /** The node where a feature that the user chose flows out; -1 where it no longer ends there. */
    private int end(End chosen) {
        if (chosen.at().isEmpty()) {
            return feature(chosen.featureId(), new ArrayList<>());
        }
        int best = -1;
        double least = Forced.ON_IT;
        for (Line line : net.lines()) {
            if (line.featureId.equals(chosen.featureId())) {
                for (int node : new int[] {line.startNode, line.endNode}) {
                    double distance = Rulings.distance(chosen.at().get(), net.node(node));
                    if (distance < least) {
                        least = distance;
                        best = node;
                    }
                }
            }
        }
        return best;
    }

    private int feature(String id, List<String> problems) {
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
            return -1;
        }
        return free.size() == 1 ? free.get(0) : last.endNode;
    }

    private int point(AssemblyOptions.Outlet outlet, List<String> problems) {
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
            return -1;
        }
        return best;
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
