// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.MCIndexNoder;
import org.locationtech.jts.noding.SegmentIntersector;
import org.locationtech.jts.noding.SegmentString;
import org.silverwake.geo.crs.Ground;

/** Lists lines that cross or touch away from a common node. Nothing is changed. */
final class Crossings implements SegmentIntersector {
    private static final double AT_NODE = 0.01;

    private final Net net;
    private final double tolerance;
    private final LineIntersector intersector = new RobustLineIntersector();
    private final Map<List<Integer>, List<Coordinate>> places = new LinkedHashMap<>();

    private Crossings(Net net, double tolerance) {
        this.net = net;
        this.tolerance = Math.max(AT_NODE, tolerance);
    }

    static void list(Net net, double tolerance, DefectLog log) {
        Crossings crossings = new Crossings(net, tolerance);
        List<SegmentString> strings = new ArrayList<>();
        for (int i = 0; i < net.size(); i++) {
            strings.add(new BasicSegmentString(net.line(i).points, i));
        }
        new MCIndexNoder(crossings).computeNodes(strings);
        crossings.places.forEach((pair, at) -> {
            List<String> ids = List.of(net.line(pair.get(0)).featureId, net.line(pair.get(1)).featureId);
            if (log.rulings().isRefused(at.get(0), ids)) {
                return;
            }
            log.open(
                    Defect.Kind.CROSSING_WITHOUT_NODE,
                    at.get(0),
                    ids,
                    "features " + ids.get(0) + " and " + ids.get(1) + " cross or touch without a junction"
                            + (at.size() > 1 ? ", at " + at.size() + " places" : ""),
                    "not joined, as over a bridge or aqueduct; if their waters meet, split both lines there");
        });
    }

    @Override
    public void processIntersections(SegmentString e0, int i0, SegmentString e1, int i1) {
        if (e0.getData().equals(e1.getData())) {
            return;
        }
        Coordinate a = e0.getCoordinate(i0);
        Coordinate b = e0.getCoordinate(i0 + 1);
        Coordinate c = e1.getCoordinate(i1);
        Coordinate d = e1.getCoordinate(i1 + 1);
        intersector.computeIntersection(a, b, c, d);
        int first = (Integer) e0.getData();
        int second = (Integer) e1.getData();
        for (int k = 0; k < intersector.getIntersectionNum(); k++) {
            Coordinate at = intersector.getIntersection(k).copy();
            if (!isAtCommonNode(first, second, at)) {
                add(List.of(Math.min(first, second), Math.max(first, second)), at);
            }
        }
    }

    private void add(List<Integer> pair, Coordinate at) {
        List<Coordinate> known = places.computeIfAbsent(pair, key -> new ArrayList<>());
        for (Coordinate other : known) {
            if (Ground.distance(other, at) < AT_NODE) {
                return;
            }
        }
        known.add(at);
    }

    private boolean isAtCommonNode(int first, int second, Coordinate at) {
        Line one = net.line(first);
        Line two = net.line(second);
        for (int node : new int[] {one.startNode, one.endNode}) {
            if ((two.startNode == node || two.endNode == node) && Ground.distance(net.node(node), at) <= tolerance) {
                return true;
            }
        }
        return false;
    }

    @Override
    public boolean isDone() {
        return false;
    }
}
