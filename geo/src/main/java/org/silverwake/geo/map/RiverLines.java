// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

/** Reaches joined into longer lines, for arrows and names. */
final class RiverLines {
    private RiverLines() {}

    /** Lines from junction to junction, in flow direction: reaches cut only at points are joined. */
    static List<LineString> betweenJunctions(RiverMap map) {
        int[] in = new int[map.nodeCount()];
        int[] out = new int[map.nodeCount()];
        for (RiverMap.Reach reach : map.reaches()) {
            out[reach.fromNode()]++;
            in[reach.toNode()]++;
        }
        int[] begins = new int[map.nodeCount()];
        Arrays.fill(begins, -1);
        for (int r = 0; r < map.reachCount(); r++) {
            int node = map.reach(r).fromNode();
            begins[node] = in[node] == 1 && out[node] == 1 ? r : -1;
        }
        int[] next = new int[map.reachCount()];
        for (int r = 0; r < next.length; r++) {
            next[r] = begins[map.reach(r).toNode()];
        }
        return join(map, next);
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
        rivers.forEach((name, reaches) -> lines.put(name, longest(map, reaches)));
        return lines;
    }

    private static LineString longest(RiverMap map, List<Integer> reaches) {
        int[] next = new int[map.reachCount()];
        Arrays.fill(next, -2);
        Map<Integer, Integer> begins = new LinkedHashMap<>();
        reaches.forEach(r -> begins.putIfAbsent(map.reach(r).fromNode(), r));
        Map<Integer, Integer> taken = new LinkedHashMap<>();
        for (int r : reaches) {
            Integer after = begins.get(map.reach(r).toNode());
            next[r] = after != null && after != r && taken.putIfAbsent(after, r) == null ? after : -1;
        }
        return join(map, next).stream()
                .max(Comparator.comparingDouble(LineString::getLength))
                .orElse(map.reach(reaches.get(0)).line());
    }

    /** Joins along next; -1 ends a line, -2 leaves the reach out. Reaches in a closed circle are left out. */
    private static List<LineString> join(RiverMap map, int[] next) {
        boolean[] follows = new boolean[next.length];
        for (int after : next) {
            if (after >= 0) {
                follows[after] = true;
            }
        }
        List<LineString> lines = new ArrayList<>();
        for (int head = 0; head < next.length; head++) {
            if (next[head] != -2 && !follows[head]) {
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
