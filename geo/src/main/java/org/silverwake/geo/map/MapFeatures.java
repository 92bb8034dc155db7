// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.feature.simple.SimpleFeatureType;
import org.geotools.api.feature.type.AttributeDescriptor;
import org.geotools.api.feature.type.AttributeType;
import org.geotools.api.feature.type.GeometryDescriptor;
import org.geotools.api.feature.type.GeometryType;
import org.geotools.feature.NameImpl;
import org.geotools.feature.simple.SimpleFeatureImpl;
import org.geotools.feature.type.FeatureTypeFactoryImpl;
import org.geotools.filter.FilterFactoryImpl;
import org.geotools.filter.identity.FeatureIdImpl;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

/** What is on a map, as features that styles can be walked over. */
final class MapFeatures {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final double RIVER_NAME_PRIORITY = 100;
    private static final double AREA_PRIORITY = 50;

    /** Samples of one place stand on one another, stem on bottle; of very many the last lie on each other. */
    private static final double SAMPLE_STEP = 1.5;

    private static final int MOST_BELOW = 2;

    private MapFeatures() {}

    /** Reaches with class (index), hatched, near_bank, background (0 or 1). */
    static List<SimpleFeature> reaches(RiverMap map, List<ReachMark> marks) {
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

    /** Reaches with the columns that a user's style may ask for. */
    static List<SimpleFeature> reaches(RiverMap map, OwnLook look) {
        Builder features = Builder.ofColumns(LineString.class, look.columns());
        for (int r = 0; r < map.reachCount(); r++) {
            Map<String, Object> values = new HashMap<>();
            for (int k = 0; k < look.columns().size(); k++) {
                values.put(look.columns().get(k), look.rows().get(r).get(k));
            }
            features.add(map.reach(r).line(), values);
        }
        return features.all();
    }

    /** Surfaces of waters with the class of their reach (index). */
    static List<SimpleFeature> waters(List<WaterShape> waters, List<ReachMark> marks) {
        Builder features = new Builder(Geometry.class, Map.of("class", Integer.class));
        for (WaterShape water : waters) {
            features.add(water.shape(), Map.of("class", marks.get(water.reach()).lineClass()));
        }
        return features.all();
    }

    /** Areas of groups of sites with their names. */
    static List<SimpleFeature> areas(List<WallSheet.NamedArea> areas) {
        Builder features = new Builder(Geometry.class, Map.of("label", String.class, "priority", Double.class));
        for (WallSheet.NamedArea area : areas) {
            features.add(area.area().shape(), Map.of("label", area.name(), "priority", AREA_PRIORITY));
        }
        return features.all();
    }

    static List<SimpleFeature> flow(RiverMap map) {
        Builder features = new Builder(LineString.class, Map.of());
        RiverLines.stems(map).forEach(line -> features.add(line, Map.of()));
        return features.all();
    }

    static List<SimpleFeature> riverNames(RiverMap map) {
        Builder features = new Builder(LineString.class, Map.of("label", String.class, "priority", Double.class));
        RiverLines.byName(map)
                .forEach((name, line) -> features.add(
                        line, Map.of("label", name, "priority", RIVER_NAME_PRIORITY - line.getLength() / 360)));
        return features.all();
    }

    /** Points with kind, label, color, and up: how far above its place a sample stands, in its own sizes. */
    static List<SimpleFeature> points(List<MapPoint> points) {
        Builder features = new Builder(
                org.locationtech.jts.geom.Point.class,
                Map.of(
                        "kind", String.class,
                        "label", String.class,
                        "color", String.class,
                        "up", Double.class,
                        "priority", Double.class));
        Map<Coordinate, Integer> samples = new HashMap<>();
        for (MapPoint point : points) {
            Coordinate at = new Coordinate(point.longitude(), point.latitude());
            int below = point.kind().isSample() ? samples.merge(at, 1, Integer::sum) - 1 : 0;
            features.add(
                    point(point.longitude(), point.latitude()),
                    Map.of(
                            "kind", point.kind().name(),
                            "label", point.label(),
                            "color", point.color(),
                            "up", 1 + SAMPLE_STEP * Math.min(below, MOST_BELOW),
                            "priority", (double) point.kind().ordinal()));
        }
        return features.all();
    }

    static Geometry point(double longitude, double latitude) {
        return SHAPES.createPoint(new Coordinate(longitude, latitude));
    }

    /**
     * Gathers features of one type. The type is made by its factory directly and has no coordinate system: the library's
     * builder searches plug-ins first, which takes longer than drawing the map.
     */
    static final class Builder {
        private static final FeatureTypeFactoryImpl TYPES = new FeatureTypeFactoryImpl(null, new FilterFactoryImpl());

        private final SimpleFeatureType type;
        private final List<SimpleFeature> features = new ArrayList<>();

        Builder(Class<? extends Geometry> shape, Map<String, Class<?>> columns) {
            GeometryType geometry =
                    TYPES.createGeometryType(new NameImpl("geom"), shape, null, false, false, List.of(), null, null);
            GeometryDescriptor place =
                    TYPES.createGeometryDescriptor(geometry, new NameImpl("geom"), 0, 1, false, null);
            List<AttributeDescriptor> all = new ArrayList<>(List.of(place));
            columns.forEach((name, kind) -> {
                NameImpl key = new NameImpl(name);
                AttributeType column = TYPES.createAttributeType(key, kind, false, false, List.of(), null, null);
                all.add(TYPES.createAttributeDescriptor(column, key, 0, 1, true, null));
            });
            type = TYPES.createSimpleFeatureType(new NameImpl("map"), all, place, false, List.of(), null, null);
        }

        /** With columns of any values, such as a user's style may ask for. */
        static Builder ofColumns(Class<? extends Geometry> shape, List<String> columns) {
            Map<String, Class<?>> kinds = new LinkedHashMap<>();
            columns.forEach(column -> kinds.put(column, Object.class));
            return new Builder(shape, kinds);
        }

        void add(Geometry geometry, Map<String, Object> values) {
            Object[] row = new Object[type.getAttributeCount()];
            row[0] = geometry;
            values.forEach((name, value) -> row[type.indexOf(name)] = value);
            features.add(new SimpleFeatureImpl(row, type, new FeatureIdImpl("f" + features.size()), false));
        }

        List<SimpleFeature> all() {
            return features;
        }
    }
}
