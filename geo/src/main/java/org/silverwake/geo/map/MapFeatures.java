// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.Map;
import org.geotools.api.feature.simple.SimpleFeatureType;
import org.geotools.data.collection.ListFeatureCollection;
import org.geotools.data.simple.SimpleFeatureCollection;
import org.geotools.feature.simple.SimpleFeatureBuilder;
import org.geotools.feature.simple.SimpleFeatureTypeBuilder;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

/** What is on a map, as features that styles can be walked over. */
final class MapFeatures {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double RIVER_NAME_PRIORITY = 100;

    private MapFeatures() {}

    /** Reaches with class (index), hatched, near_bank, background (0 or 1). */
    static SimpleFeatureCollection reaches(RiverMap map, List<ReachMark> marks) {
        Builder features = new Builder(
                LineString.class,
                Map.of(
                        "class", Integer.class,
                        "hatched", Integer.class,
                        "near_bank", Integer.class,
                        "background", Integer.class));
        for (int r = 0; r < marks.size(); r++) {
            ReachMark mark = marks.get(r);
            features.add(
                    map.reach(r).line(),
                    Map.of(
                            "class", mark.lineClass(),
                            "hatched", mark.hatched() ? 1 : 0,
                            "near_bank", mark.nearBank() ? 1 : 0,
                            "background", mark.aboveFromBackground() ? 1 : 0));
        }
        return features.all();
    }

    static SimpleFeatureCollection flow(RiverMap map) {
        Builder features = new Builder(LineString.class, Map.of());
        RiverLines.betweenJunctions(map).forEach(line -> features.add(line, Map.of()));
        return features.all();
    }

    static SimpleFeatureCollection riverNames(RiverMap map) {
        Builder features = new Builder(LineString.class, Map.of("label", String.class, "priority", Double.class));
        RiverLines.byName(map)
                .forEach((name, line) -> features.add(
                        line, Map.of("label", name, "priority", RIVER_NAME_PRIORITY - line.getLength() / 360)));
        return features.all();
    }

    static SimpleFeatureCollection points(List<MapPoint> points) {
        Builder features = new Builder(
                org.locationtech.jts.geom.Point.class,
                Map.of("kind", String.class, "label", String.class, "priority", Double.class));
        for (MapPoint point : points) {
            features.add(
                    point(point.longitude(), point.latitude()),
                    Map.of(
                            "kind", point.kind().name(),
                            "label", point.label(),
                            "priority", (double) point.kind().ordinal()));
        }
        return features.all();
    }

    static Geometry point(double longitude, double latitude) {
        return SHAPES.createPoint(new Coordinate(longitude, latitude));
    }

    /** Gathers features of one type; without a coordinate system, since looking one up costs time and none is needed. */
    static final class Builder {
        private final SimpleFeatureBuilder builder;
        private final ListFeatureCollection features;

        Builder(Class<? extends Geometry> shape, Map<String, Class<?>> columns) {
            SimpleFeatureTypeBuilder types = new SimpleFeatureTypeBuilder();
            types.setName("map");
            types.add("geom", shape);
            columns.forEach(types::add);
            SimpleFeatureType type = types.buildFeatureType();
            builder = new SimpleFeatureBuilder(type);
            features = new ListFeatureCollection(type);
        }

        void add(Geometry geometry, Map<String, Object> values) {
            builder.set("geom", geometry);
            values.forEach(builder::set);
            features.add(builder.buildFeature("f" + features.size()));
        }

        SimpleFeatureCollection all() {
            return features;
        }
    }
}
