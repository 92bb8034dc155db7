// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.silverwake.geo.crs.Ground;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/**
 * Counts that describe how lines hang together, the drawn direction taken as flow.
 *
 * @param features features, null shapes included
 * @param nullShapes features without a shape
 * @param lines lines, each part of a multi-part feature for itself
 * @param lengthMeters their length, geodesic [m]
 * @param nodes places where lines end
 * @param headwaters nodes that no line flows to
 * @param outlets nodes that no line flows from
 * @param junctions nodes where three or more lines meet
 * @param confluences nodes that two or more lines flow to
 * @param bifurcations nodes that two or more lines flow from
 * @param components connected parts
 * @param largestComponents lines in each part, the largest ten, largest first
 * @param loops independent loops: lines - nodes + parts
 * @param closedLines lines that end where they begin
 * @param inOrBelowCircle nodes in a circle of lines or downstream of one
 */
public record Topology(
        int features,
        int nullShapes,
        int lines,
        double lengthMeters,
        int nodes,
        int headwaters,
        int outlets,
        int junctions,
        int confluences,
        int bifurcations,
        int components,
        List<Integer> largestComponents,
        int loops,
        int closedLines,
        int inOrBelowCircle) {
    private static final double SAME_PLACE = 1e-4;
    private static final int SHOWN = 10;

    /** Copies the list. */
    public Topology {
        largestComponents = List.copyOf(largestComponents);
    }

    /** A layer as it is drawn, before any repair; ends within 0.1 mm are the same node. */
    public static Topology of(VectorLayer layer) {
        List<Coordinate[]> lines = new ArrayList<>();
        int nulls = 0;
        for (LayerFeature feature : Antimeridian.joined(layer).features()) {
            Geometry shape = feature.geometry();
            if (shape == null || shape.isEmpty()) {
                nulls++;
                continue;
            }
            for (int k = 0; k < shape.getNumGeometries(); k++) {
                if (shape.getGeometryN(k) instanceof LineString line && !line.isEmpty()) {
                    lines.add(line.getCoordinates());
                }
            }
        }
        Map<Coordinate, Integer> index = new HashMap<>();
        List<Coordinate> places = new ArrayList<>();
        int[] from = new int[lines.size()];
        int[] to = new int[lines.size()];
        double length = 0;
        for (int i = 0; i < from.length; i++) {
            Coordinate[] points = lines.get(i);
            from[i] = place(index, places, points[0]);
            to[i] = place(index, places, points[points.length - 1]);
            length += Line.length(points);
        }
        int[] same = merged(places);
        for (int i = 0; i < from.length; i++) {
            from[i] = same[from[i]];
            to[i] = same[to[i]];
        }
        return count(layer.features().size(), nulls, length, from, to, places.size());
    }

    /** An assembled network. */
    public static Topology of(RiverMap map) {
        int n = map.reachCount();
        int[] from = new int[n];
        int[] to = new int[n];
        double length = 0;
        Set<Integer> features = new HashSet<>();
        for (int i = 0; i < n; i++) {
            from[i] = map.reach(i).fromNode();
            to[i] = map.reach(i).toNode();
            length += map.reach(i).lengthMeters();
            features.add(map.reach(i).part().feature());
        }
        return count(features.size(), 0, length, from, to, map.nodeCount());
    }

    private static int place(Map<Coordinate, Integer> index, List<Coordinate> places, Coordinate at) {
        Integer known = index.putIfAbsent(at, places.size());
        if (known == null) {
            places.add(at);
            return places.size() - 1;
        }
        return known;
    }

    private static int[] merged(List<Coordinate> places) {
        STRtree tree = new STRtree();
        int[] same = new int[places.size()];
        for (int k = 0; k < same.length; k++) {
            same[k] = k;
            tree.insert(new Envelope(places.get(k)), k);
        }
        for (int k = 0; k < same.length; k++) {
            for (Object item : tree.query(EndSnapper.around(places.get(k), SAME_PLACE))) {
                int other = (Integer) item;
                if (other < k && Ground.distance(places.get(k), places.get(other)) <= SAME_PLACE) {
                    same[root(same, k)] = root(same, other);
                }
            }
        }
        for (int k = 0; k < same.length; k++) {
            same[k] = root(same, k);
        }
        return same;
    }

    private static int root(int[] parent, int node) {
        int k = node;
        while (parent[k] != k) {
            parent[k] = parent[parent[k]];
            k = parent[k];
        }
        return k;
    }

    private static Topology count(int features, int nulls, double length, int[] from, int[] to, int places) {
        int[] in = new int[places];
        int[] out = new int[places];
        int[] part = new int[places];
        for (int k = 0; k < places; k++) {
            part[k] = k;
        }
        int closed = 0;
        for (int i = 0; i < from.length; i++) {
            out[from[i]]++;
            in[to[i]]++;
            closed += from[i] == to[i] ? 1 : 0;
            part[root(part, from[i])] = root(part, to[i]);
        }
        int nodes = 0;
        int[] kinds = new int[5];
        for (int k = 0; k < places; k++) {
            nodes += in[k] + out[k] > 0 ? 1 : 0;
            kinds[0] += in[k] == 0 && out[k] > 0 ? 1 : 0;
            kinds[1] += out[k] == 0 && in[k] > 0 ? 1 : 0;
            kinds[2] += in[k] + out[k] >= 3 ? 1 : 0;
            kinds[3] += in[k] >= 2 ? 1 : 0;
            kinds[4] += out[k] >= 2 ? 1 : 0;
        }
        Map<Integer, Integer> sizes = new HashMap<>();
        for (int node : from) {
            sizes.merge(root(part, node), 1, Integer::sum);
        }
        List<Integer> largest = sizes.values().stream()
                .sorted(Comparator.reverseOrder())
                .limit(SHOWN)
                .toList();
        int loops = from.length - nodes + sizes.size();
        int circling = inOrBelowCircle(from, to, in, nodes);
        return new Topology(
                features,
                nulls,
                from.length,
                length,
                nodes,
                kinds[0],
                kinds[1],
                kinds[2],
                kinds[3],
                kinds[4],
                sizes.size(),
                largest,
                loops,
                closed,
                circling);
    }

    /** Nodes left when headwaters are taken away again and again (Kahn 1962). */
    private static int inOrBelowCircle(int[] from, int[] to, int[] in, int nodes) {
        int[] waiting = Arrays.copyOf(in, in.length);
        List<List<Integer>> below = new ArrayList<>();
        boolean[] used = new boolean[in.length];
        for (int k = 0; k < in.length; k++) {
            below.add(new ArrayList<>());
        }
        for (int i = 0; i < from.length; i++) {
            below.get(from[i]).add(to[i]);
            used[from[i]] = true;
            used[to[i]] = true;
        }
        List<Integer> ready = new ArrayList<>();
        for (int k = 0; k < in.length; k++) {
            if (used[k] && in[k] == 0) {
                ready.add(k);
            }
        }
        for (int k = 0; k < ready.size(); k++) {
            for (int next : below.get(ready.get(k))) {
                if (--waiting[next] == 0) {
                    ready.add(next);
                }
            }
        }
        return nodes - ready.size();
    }
}
