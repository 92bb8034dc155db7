// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.crs.Ground;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/** A layer drawn by hand in meters east and north of 20 W, 30 S. */
public final class Sketch {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double LON = -20;
    private static final double LAT = -30;
    private final List<LayerFeature> features = new ArrayList<>();
    private final Set<String> columns = new LinkedHashSet<>();

    /** A place in degrees. */
    public static Coordinate at(double east, double north) {
        return new Coordinate(
                LON + east / Ground.metersPerDegreeEast(LAT), LAT + north / Ground.metersPerDegreeNorth(LAT));
    }

    /** A line by eastings and northings in turn [m]. */
    public Sketch line(String id, double... meters) {
        return shape(id, string(meters), Map.of());
    }

    /** A line with one attribute more for each pair of name and value. */
    public Sketch line(String id, Map<String, Object> attributes, double... meters) {
        return shape(id, string(meters), attributes);
    }

    /** A feature of several lines. */
    public Sketch parts(String id, double[]... lines) {
        LineString[] strings = new LineString[lines.length];
        for (int k = 0; k < lines.length; k++) {
            strings[k] = string(lines[k]);
        }
        return shape(id, FACTORY.createMultiLineString(strings), Map.of());
    }

    /** Any shape, null included. */
    public Sketch shape(String id, Geometry shape, Map<String, Object> attributes) {
        columns.addAll(attributes.keySet());
        features.add(new LayerFeature(id, new LinkedHashMap<>(attributes), shape));
        return this;
    }

    static LineString string(double... meters) {
        Coordinate[] points = new Coordinate[meters.length / 2];
        for (int k = 0; k < points.length; k++) {
            points[k] = at(meters[2 * k], meters[2 * k + 1]);
        }
        return FACTORY.createLineString(points);
    }

    /** The layer. */
    public VectorLayer layer() {
        return new VectorLayer(
                Path.of("sketch.gpkg"), "sketch", LayerCrs.wgs84(), List.copyOf(columns), features, List.of());
    }

    /** The layer with every line turned round. */
    VectorLayer turned() {
        VectorLayer layer = layer();
        List<LayerFeature> turned = layer.features().stream()
                .map(f -> new LayerFeature(f.id(), f.attributes(), f.geometry().reverse()))
                .toList();
        return new VectorLayer(layer.file(), layer.name(), layer.crs(), layer.columns(), turned, layer.warnings());
    }
}
