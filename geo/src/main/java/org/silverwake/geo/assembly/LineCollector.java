// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/** Takes the usable lines out of a layer; what is left out is listed. */
final class LineCollector {
    private static final Coordinate NOWHERE = new Coordinate(Double.NaN, Double.NaN);

    private final DefectLog log;
    private final List<Line> lines = new ArrayList<>();
    private final Map<Integer, List<Line>> seen = new HashMap<>();

    private LineCollector(DefectLog log) {
        this.log = log;
    }

    static List<Line> collect(VectorLayer layer, DefectLog log) {
        LineCollector collector = new LineCollector(log);
        Map<String, Integer> uses = new LinkedHashMap<>();
        for (int f = 0; f < layer.features().size(); f++) {
            LayerFeature feature = layer.features().get(f);
            uses.merge(feature.id(), 1, Integer::sum);
            collector.feature(f, feature);
        }
        collector.duplicateIds(uses);
        return collector.lines;
    }

    private void feature(int index, LayerFeature feature) {
        Geometry shape = feature.geometry();
        if (shape == null || shape.isEmpty()) {
            log.repaired(
                    Defect.Kind.NULL_SHAPE,
                    NOWHERE,
                    List.of(feature.id()),
                    "feature " + feature.id() + " has attributes but no shape",
                    "left out");
            return;
        }
        int part = 0;
        for (Geometry piece : flatten(shape)) {
            if (piece instanceof LineString line) {
                line(index, part, feature.id(), line);
            } else {
                log.repaired(
                        Defect.Kind.NOT_A_LINE,
                        piece.isEmpty() ? NOWHERE : piece.getCoordinate(),
                        List.of(feature.id()),
                        "feature " + feature.id() + " is a " + piece.getGeometryType() + ", not a line",
                        "left out");
            }
            part++;
        }
    }

    private static List<Geometry> flatten(Geometry shape) {
        if (!(shape instanceof GeometryCollection)) {
            return List.of(shape);
        }
        List<Geometry> flat = new ArrayList<>();
        for (int k = 0; k < shape.getNumGeometries(); k++) {
            flat.addAll(flatten(shape.getGeometryN(k)));
        }
        return flat;
    }

    private void line(int feature, int part, String id, LineString shape) {
        Coordinate[] drawn = shape.getCoordinates();
        Coordinate[] points = withoutRepeats(drawn);
        if (points.length < 2) {
            boolean few = drawn.length <= 2;
            log.repaired(
                    few ? Defect.Kind.ONE_POINT_LINE : Defect.Kind.ZERO_LENGTH,
                    points.length == 0 ? NOWHERE : points[0],
                    List.of(id),
                    "feature " + id + " is a line without length: "
                            + (few ? "one point only" : drawn.length + " points at one place"),
                    "left out");
            return;
        }
        if (points.length < drawn.length) {
            log.repaired(
                    Defect.Kind.REPEATED_POINT,
                    points[0],
                    List.of(id),
                    "feature " + id + " has " + (drawn.length - points.length) + " points given twice in a row",
                    "one of each kept");
        }
        Line line = new Line(feature, part, id, points, 0);
        Line twin = twin(line);
        if (twin == null) {
            lines.add(line);
            return;
        }
        List<String> ids = List.of(twin.featureId, id);
        String text = "feature " + id + " lies point for point on feature " + twin.featureId + ", "
                + DefectLog.meters(line.length());
        List<Coordinate> at = new ArrayList<>(List.of(line.middle()));
        at.addAll(List.of(line.points));
        if (log.refused(Defect.Kind.DUPLICATE_LINE, at, ids, text)) {
            lines.add(line);
        } else {
            log.repaired(Defect.Kind.DUPLICATE_LINE, line.middle(), ids, text, "the second, " + id + ", left out");
        }
    }

    private Line twin(Line line) {
        int key = Arrays.hashCode(line.points) + Arrays.hashCode(reversed(line.points));
        List<Line> candidates = seen.computeIfAbsent(key, k -> new ArrayList<>());
        for (Line other : candidates) {
            if (Arrays.equals(other.points, line.points) || Arrays.equals(other.points, reversed(line.points))) {
                return other;
            }
        }
        candidates.add(line);
        return null;
    }

    private void duplicateIds(Map<String, Integer> uses) {
        uses.forEach((id, count) -> {
            if (count > 1) {
                Coordinate at = lines.stream()
                        .filter(line -> line.featureId.equals(id))
                        .map(Line::middle)
                        .findFirst()
                        .orElse(NOWHERE);
                log.open(
                        Defect.Kind.DUPLICATE_ID,
                        at,
                        List.of(id),
                        "id " + id + " is used by " + count + " features",
                        "give each feature an id of its own, or choose another id column; reaches were numbered " + id
                                + ".1, " + id + ".2 ...");
            }
        });
    }

    static Coordinate[] reversed(Coordinate[] points) {
        Coordinate[] turned = new Coordinate[points.length];
        for (int i = 0; i < points.length; i++) {
            turned[i] = points[points.length - 1 - i];
        }
        return turned;
    }

    private static Coordinate[] withoutRepeats(Coordinate[] points) {
        List<Coordinate> kept = new ArrayList<>(points.length);
        for (Coordinate point : points) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals2D(point)) {
                kept.add(new Coordinate(point.x, point.y));
            }
        }
        return kept.toArray(new Coordinate[0]);
    }
}
