// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.crs.Ground;

/** Cuts reaches of a map into pieces. */
public final class ReachCutting {
    private final List<RiverMap.Reach> pieces = new ArrayList<>();
    private int nodes;

    private ReachCutting(int nodes) {
        this.nodes = nodes;
    }

    /**
     * A map with reaches cut. The pieces of a reach follow one another downstream, in the place of the reach; node
     * numbers are kept and new ones appended; ids are given anew by {@link ReachIds}.
     *
     * @param map the network
     * @param cuts for each reach, in order, chainages from its upstream end [m], ascending, each inside the reach
     */
    public static RiverMap cut(RiverMap map, List<List<Double>> cuts) {
        ReachCutting cutting = new ReachCutting(map.nodeCount());
        for (int i = 0; i < map.reachCount(); i++) {
            if (cuts.get(i).isEmpty()) {
                cutting.pieces.add(map.reach(i));
            } else {
                cutting.reach(map.reach(i), cuts.get(i));
            }
        }
        return named(cutting.pieces, cutting.nodes, map.defects());
    }

    private static RiverMap named(List<RiverMap.Reach> pieces, int nodes, List<Defect> defects) {
        List<String> ids = ReachIds.of(pieces.stream().map(RiverMap.Reach::part).toList());
        List<RiverMap.Reach> named = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            RiverMap.Reach r = pieces.get(i);
            named.add(new RiverMap.Reach(
                    ids.get(i),
                    r.part(),
                    r.fromNode(),
                    r.toNode(),
                    r.lengthMeters(),
                    r.line(),
                    r.name(),
                    r.numbers(),
                    r.texts()));
        }
        return new RiverMap(named, nodes, defects);
    }

    /** Length of each part of a feature that the map holds [m], by feature and part. */
    public static Map<List<Integer>, Double> partLengths(RiverMap map) {
        Map<List<Integer>, Double> lengths = new HashMap<>();
        for (RiverMap.Reach reach : map.reaches()) {
            lengths.merge(
                    List.of(reach.part().feature(), reach.part().part()),
                    reach.part().toMeters(),
                    Math::max);
        }
        return lengths;
    }

    private void reach(RiverMap.Reach reach, List<Double> cuts) {
        int node = reach.fromNode();
        double from = 0;
        for (double at : cuts) {
            piece(reach, from, at, node, nodes);
            node = nodes++;
            from = at;
        }
        piece(reach, from, reach.lengthMeters(), node, reach.toNode());
    }

    private void piece(RiverMap.Reach reach, double from, double to, int fromNode, int toNode) {
        double length = reach.lengthMeters();
        ReachPart part = reach.part();
        double scale = (part.toMeters() - part.fromMeters()) / length;
        double start = part.flipped() ? part.toMeters() - to * scale : part.fromMeters() + from * scale;
        double end = part.flipped() ? part.toMeters() - from * scale : part.fromMeters() + to * scale;
        LineString line = sub(reach.line(), from, to);
        pieces.add(new RiverMap.Reach(
                reach.id(),
                new ReachPart(part.featureId(), part.feature(), part.part(), start, end, part.flipped()),
                fromNode,
                toNode,
                Line.length(line.getCoordinates()),
                line,
                reach.name(),
                ReachNumbers.piece(reach.numbers(), from / length, to / length),
                reach.texts()));
    }

    private static LineString sub(LineString line, double from, double to) {
        Coordinate[] points = line.getCoordinates();
        List<Coordinate> kept = new ArrayList<>();
        double along = 0;
        for (int k = 0; k + 1 < points.length; k++) {
            double step = Ground.distance(points[k], points[k + 1]);
            if (along + step > from && along < to) {
                if (kept.isEmpty()) {
                    kept.add(Ground.between(points[k], points[k + 1], Math.max(0, (from - along) / step)));
                }
                boolean last = along + step >= to || k + 2 == points.length;
                kept.add(
                        last
                                ? Ground.between(points[k], points[k + 1], Math.min(1, (to - along) / step))
                                : points[k + 1]);
                if (last) {
                    break;
                }
            }
            along += step;
        }
        return line.getFactory().createLineString(kept.toArray(new Coordinate[0]));
    }
}
