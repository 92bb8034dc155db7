// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.silverwake.geo.GeoDataException;

/** The members of one GeoJSON object, whose meaning depends on a type that may stand last. */
final class GeoJsonObject {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final String TYPES =
            "Point, LineString, Polygon, MultiPoint, MultiLineString, MultiPolygon, GeometryCollection";

    private final Builder members;

    private GeoJsonObject(Builder members) {
        this.members = members;
    }

    /** Collects members in the order in which they come. */
    static final class Builder {
        private final String where;
        private String type;
        private String id;
        private Map<String, Object> properties = Map.of();
        private Object coordinates;
        private GeoJsonObject geometry;
        private List<GeoJsonObject> geometries = List.of();
        private boolean collection;

        /** Of an object at this line and column. */
        Builder(String where) {
            this.where = where;
        }

        void type(String name) {
            type = name;
        }

        void id(String text) {
            id = text;
        }

        void properties(Map<String, Object> values) {
            properties = new LinkedHashMap<>(values);
        }

        void coordinates(Object nested) {
            coordinates = nested;
        }

        void geometry(GeoJsonObject object) {
            geometry = object;
        }

        void geometries(List<GeoJsonObject> objects) {
            geometries = List.copyOf(objects);
        }

        void collection() {
            collection = true;
        }

        GeoJsonObject build() {
            return new GeoJsonObject(this);
        }
    }

    Optional<String> type() {
        return Optional.ofNullable(members.type);
    }

    Optional<String> id() {
        return Optional.ofNullable(members.id);
    }

    /** Values by column, null where the file says so. */
    Map<String, Object> properties() {
        return members.properties;
    }

    boolean isCollection() {
        return members.collection;
    }

    /** The geometry of a feature, or of a geometry that stands for one; null for a null shape. */
    Geometry featureGeometry() {
        if (!"Feature".equals(members.type)) {
            return geometry();
        }
        return members.geometry == null ? null : members.geometry.geometry();
    }

    private Geometry geometry() {
        if (members.type == null) {
            throw new GeoDataException(members.where + ": the object has no \"type\"; a geometry is one of " + TYPES);
        }
        try {
            if (members.type.equals("GeometryCollection")) {
                return FACTORY.createGeometryCollection(
                        members.geometries.stream().map(GeoJsonObject::geometry).toArray(Geometry[]::new));
            }
            if (members.coordinates == null) {
                return null;
            }
            return geometry(members.coordinates);
        } catch (ClassCastException | IllegalArgumentException e) {
            String reason = e instanceof ClassCastException ? "its brackets are nested otherwise" : e.getMessage();
            throw new GeoDataException(
                    members.where + ": the coordinates are not those of a " + members.type + " (" + reason + ")", e);
        }
    }

    private Geometry geometry(Object c) {
        return switch (members.type) {
            case "Point" ->
                c instanceof List<?> empty && empty.isEmpty()
                        ? FACTORY.createPoint()
                        : FACTORY.createPoint(position(c));
            case "MultiPoint" -> FACTORY.createMultiPointFromCoords(positions(c));
            case "LineString" -> line(c);
            case "MultiLineString" ->
                FACTORY.createMultiLineString(
                        list(c).stream().map(GeoJsonObject::line).toArray(LineString[]::new));
            case "Polygon" -> polygon(c);
            case "MultiPolygon" ->
                FACTORY.createMultiPolygon(
                        list(c).stream().map(GeoJsonObject::polygon).toArray(Polygon[]::new));
            default ->
                throw new GeoDataException(
                        members.where + ": \"" + members.type + "\" is no type of geometry; allowed are " + TYPES);
        };
    }

    private static List<?> list(Object nested) {
        return (List<?>) nested;
    }

    private static Coordinate position(Object nested) {
        double[] p = (double[]) nested;
        return new Coordinate(p[0], p[1], p[2]);
    }

    private static Coordinate[] positions(Object nested) {
        return list(nested).stream().map(GeoJsonObject::position).toArray(Coordinate[]::new);
    }

    private static LineString line(Object nested) {
        Coordinate[] points = positions(nested);
        if (points.length == 1) {
            points = new Coordinate[] {points[0], points[0].copy()};
        }
        return FACTORY.createLineString(points);
    }

    private static Polygon polygon(Object nested) {
        List<LinearRing> rings = list(nested).stream()
                .map(ring -> FACTORY.createLinearRing(positions(ring)))
                .toList();
        if (rings.isEmpty()) {
            return FACTORY.createPolygon();
        }
        return FACTORY.createPolygon(
                rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
    }
}
