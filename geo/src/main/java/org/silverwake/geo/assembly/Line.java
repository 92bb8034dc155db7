// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.crs.Ground;

/**
 * A line, or a piece of one, in drawn order, between two nodes. {@code from} and {@code to} are measured along the part as
 * drawn, geodesic [m].
 */
final class Line {
    final int feature;
    final int part;
    final String featureId;
    final Coordinate[] points;
    final double from;
    final double to;
    int startNode = -1;
    int endNode = -1;

    Line(int feature, int part, String featureId, Coordinate[] points, double from) {
        this(feature, part, featureId, points, from, from + length(points));
    }

    Line(int feature, int part, String featureId, Coordinate[] points, double from, double to) {
        this.feature = feature;
        this.part = part;
        this.featureId = featureId;
        this.points = points;
        this.from = from;
        this.to = to;
    }

    Coordinate start() {
        return points[0];
    }

    Coordinate end() {
        return points[points.length - 1];
    }

    Coordinate middle() {
        return points[points.length / 2];
    }

    double length() {
        return to - from;
    }

    boolean isClosed() {
        return startNode == endNode;
    }

    int other(int node) {
        return node == startNode ? endNode : startNode;
    }

    static double length(Coordinate[] points) {
        double sum = 0;
        for (int i = 1; i < points.length; i++) {
            sum += Ground.distance(points[i - 1], points[i]);
        }
        return sum;
    }
}
