// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;

/** The content of one shape record: points, lines and polygons, with heights (Z) and measures (M). */
final class ShapeRecord {
    /** Measures below this mean no value (ESRI 1998, p. 2). */
    private static final double NO_DATA = -1e38;

    private static final int BOX = 36;
    private static final int POINT_BYTES = 16;
    private static final int POINT = 1;
    private static final int LINE = 3;
    private static final int POLYGON = 5;
    private static final int MULTI_POINT = 8;
    private static final int MULTI_PATCH = 31;

    private final GeometryFactory factory = new GeometryFactory();
    private final ByteBuffer bytes;
    private final int kind;
    private final boolean hasZ;
    private final boolean mayHaveM;

    ShapeRecord(ByteBuffer bytes) {
        this.bytes = bytes;
        int type = bytes.getInt(0);
        kind = type == MULTI_PATCH ? MULTI_PATCH : type % 10;
        hasZ = type > 10 && type < 20;
        mayHaveM = type > 10 && type < 30;
    }

    /** The shape; null for a null shape. */
    Geometry geometry() {
        return switch (kind) {
            case 0 -> null;
            case POINT -> point();
            case MULTI_POINT -> multiPoint();
            case LINE -> lines();
            case POLYGON -> polygons();
            default -> throw new IllegalArgumentException("shape type " + bytes.getInt(0) + " is not read");
        };
    }

    private Geometry point() {
        int dimension = hasZ ? 3 : 2;
        PackedCoordinateSequence.Double at = new PackedCoordinateSequence.Double(1, dimension, 0);
        at.setOrdinate(0, 0, bytes.getDouble(4));
        at.setOrdinate(0, 1, bytes.getDouble(12));
        if (hasZ) {
            at.setOrdinate(0, 2, bytes.getDouble(20));
        }
        return factory.createPoint(at);
    }

    private Geometry multiPoint() {
        int count = bytes.getInt(BOX);
        CoordinateSequence all = points(BOX + 4, count, 0, count, 0);
        Point[] points = new Point[count];
        for (int i = 0; i < count; i++) {
            points[i] = factory.createPoint(all.getCoordinateCopy(i));
        }
        return factory.createMultiPoint(points);
    }

    private Geometry lines() {
        List<CoordinateSequence> parts = parts(2);
        LineString[] lines = parts.stream().map(factory::createLineString).toArray(LineString[]::new);
        return lines.length == 1 ? lines[0] : factory.createMultiLineString(lines);
    }

    /** Rings drawn clockwise are outer ones (ESRI 1998, p. 8); a hole belongs to the first ring around it. */
    private Geometry polygons() {
        List<LinearRing> shells = new ArrayList<>();
        List<LinearRing> holes = new ArrayList<>();
        for (CoordinateSequence part : parts(4)) {
            LinearRing ring = factory.createLinearRing(part);
            (Orientation.isCCW(part) ? holes : shells).add(ring);
        }
        if (shells.isEmpty()) {
            shells.addAll(holes);
            holes.clear();
        }
        List<Polygon> polygons = new ArrayList<>();
        for (LinearRing shell : shells) {
            Polygon outline = factory.createPolygon(shell);
            List<LinearRing> inside = holes.stream()
                    .filter(hole ->
                            outline.getEnvelopeInternal().contains(hole.getEnvelopeInternal()) && outline.covers(hole))
                    .toList();
            holes.removeAll(inside);
            polygons.add(factory.createPolygon(shell, inside.toArray(LinearRing[]::new)));
        }
        holes.forEach(hole -> polygons.add(factory.createPolygon(hole)));
        return polygons.size() == 1 ? polygons.get(0) : factory.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private List<CoordinateSequence> parts(int minimum) {
        int partCount = bytes.getInt(BOX);
        int count = bytes.getInt(BOX + 4);
        int firstPart = BOX + 8;
        int firstPoint = firstPart + 4 * partCount;
        if (partCount < 0 || count < 0 || firstPoint + (long) POINT_BYTES * count > bytes.limit()) {
            throw new IllegalArgumentException(partCount + " parts with " + count + " points do not fit in it");
        }
        List<CoordinateSequence> parts = new ArrayList<>();
        for (int i = 0; i < partCount; i++) {
            int from = bytes.getInt(firstPart + 4 * i);
            int to = i + 1 < partCount ? bytes.getInt(firstPart + 4 * (i + 1)) : count;
            if (from < 0 || to > count || from > to) {
                throw new IllegalArgumentException("part " + (i + 1) + " has points " + from + " to " + to);
            }
            if (to > from) {
                parts.add(points(firstPoint, count, from, to, minimum));
            }
        }
        return parts;
    }

    /** Points from..to of the record's; the last is repeated where there are fewer than a geometry needs. */
    private CoordinateSequence points(int first, int count, int from, int to, int minimum) {
        int zFirst = first + POINT_BYTES * count + POINT_BYTES;
        int mFirst = hasZ ? zFirst + 8 * count + POINT_BYTES : zFirst;
        boolean hasM = mayHaveM && mFirst + 8L * count <= bytes.limit();
        int dimension = 2 + (hasZ ? 1 : 0) + (hasM ? 1 : 0);
        int size = Math.max(to - from, minimum);
        PackedCoordinateSequence.Double points = new PackedCoordinateSequence.Double(size, dimension, hasM ? 1 : 0);
        for (int i = 0; i < size; i++) {
            int at = Math.min(from + i, to - 1);
            points.setOrdinate(i, 0, bytes.getDouble(first + POINT_BYTES * at));
            points.setOrdinate(i, 1, bytes.getDouble(first + POINT_BYTES * at + 8));
            if (hasZ) {
                points.setOrdinate(i, 2, bytes.getDouble(zFirst + 8 * at));
            }
            if (hasM) {
                double m = bytes.getDouble(mFirst + 8 * at);
                points.setOrdinate(i, dimension - 1, m < NO_DATA ? Double.NaN : m);
            }
        }
        return points;
    }
}
