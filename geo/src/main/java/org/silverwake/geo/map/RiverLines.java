// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

/** Reaches joined into longer lines, for arrows and names. */
final class RiverLines {
    private RiverLines() {}

    /**
     * Lines in flow direction from headwaters on: at a confluence the river with the longest way behind it goes on, the others
     * end; at a bifurcation the reach listed first goes on. Each reach is in one line.
     */
    static List<LineString> stems(RiverMap map) {
        double[] behind = longestWay(map);
        int[] main = new int[map.nodeCount()];
        int[] out = new int[map.nodeCount()];
        Arrays.fill(main, -1);
        Arrays.fill(out, -1);
        for (int r = map.reachCount() - 1; r >= 0; r--) {
            int to = map.reach(r).toNode();
            main[to] = main[to] < 0 || behind[r] >= behind[main[to]] ? r : main[to];
            out[map.reach(r).fromNode()] = r;
        }
        int[] next = new int[map.reachCount()];
        for (int r = 0; r < next.length; r++) {
            int to = map.reach(r).toNode();
            next[r] = main[to] == r ? out[to] : -1;
        }
        return join(map, IntStream.range(0, next.length).toArray(), next);
    }

    /** Length of the longest way from a headwater to the end of each reach [m]; reaches in or below a circle count as their own length. */
    private static double[] longestWay(RiverMap map) {
        int[] waiting = new int[map.nodeCount()];
        List<List<Integer>> leaving = new ArrayList<>();
        waiting(map, waiting, leaving);
        double[] atNode = new double[map.nodeCount()];
        double[] atEnd = new double[map.reachCount()];
        Deque<Integer> ready = new ArrayDeque<>();
        for (int node = 0; node < waiting.length; node++) {
            if (waiting[node] == 0) {
                ready.add(node);
            }
        }
        for (int r = 0; r < atEnd.length; r++) {
            atEnd[r] = map.reach(r).lengthMeters();
        }
        while (!ready.isEmpty()) {
            int node = ready.remove();
            for (int r : leaving.get(node)) {
                int to = map.reach(r).toNode();
                atEnd[r] += atNode[node];
                atNode[to] = Math.max(atNode[to], atEnd[r]);
                if (--waiting[to] == 0) {
                    ready.add(to);
                }
            }
        }
        return atEnd;
    }

    private static void waiting(RiverMap map, int[] waiting, List<List<Integer>> leaving) {
        for (int node = 0; node < map.nodeCount(); node++) {
            leaving.add(new ArrayList<>());
        }
        for (int r = 0; r < map.reachCount(); r++) {
            waiting[map.reach(r).toNode()]++;
            leaving.get(map.reach(r).fromNode()).add(r);
        }
    }

    /** The longest line of each river that has a name, in order of first appearance. */
    static Map<String, LineString> byName(RiverMap map) {
        Map<String, List<Integer>> rivers = new LinkedHashMap<>();
        for (int r = 0; r < map.reachCount(); r++) {
            int index = r;
            map.reach(r)
                    .name()
                    .filter(name -> !name.isBlank())
                    .ifPresent(name -> rivers.computeIfAbsent(name, key -> new ArrayList<>())
                            .add(index));
        }
        Map<String, LineString> lines = new LinkedHashMap<>();
        int[] next = new int[map.reachCount()];
        rivers.forEach((name, reaches) -> lines.put(name, longest(map, reaches, next)));
        return lines;
    }

    private static LineString longest(RiverMap map, List<Integer> reaches, int[] next) {
        Map<Integer, Integer> begins = new LinkedHashMap<>();
        reaches.forEach(r -> begins.putIfAbsent(map.reach(r).fromNode(), r));
        Map<Integer, Integer> taken = new LinkedHashMap<>();
        for (int r : reaches) {
            Integer after = begins.get(map.reach(r).toNode());
            next[r] = after != null && after != r && taken.putIfAbsent(after, r) == null ? after : -1;
        }
        return join(map, reaches.stream().mapToInt(Integer::intValue).toArray(), next).stream()
                .max(Comparator.comparingDouble(LineString::getLength))
                .orElse(map.reach(reaches.get(0)).line());
    }

    /** Joins some reaches along next of each, which is one of them or -1 at the end of a line. Reaches in a closed circle are left out. */
    private static List<LineString> join(RiverMap map, int[] reaches, int[] next) {
        Set<Integer> followers = new HashSet<>();
        for (int r : reaches) {
            followers.add(next[r]);
        }
        List<LineString> lines = new ArrayList<>();
        for (int head : reaches) {
            if (!followers.contains(head)) {
                CoordinateList points = new CoordinateList();
                for (int r = head; r >= 0; r = next[r]) {
                    points.add(map.reach(r).line().getCoordinates(), false);
                }
                Coordinate[] all = points.toCoordinateArray();
                if (all.length > 1) {
                    lines.add(new GeometryFactory().createLineString(all));
                }
            }
        }
        return lines;
    }
}
