// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.silverwake.geo.GeoDataException;

/**
 * A layer of places as plain rows: points as they are, several points (drums in a yard) as their mean, an area (a tailings
 * pond) as its centroid, or as a point inside where the centroid lies outside it.
 *
 * @param columns names of the attributes, in file order
 * @param rows in file order
 * @param warnings what the reader had to pass over, one line each
 */
public record PointFeatures(List<String> columns, List<Row> rows, List<String> warnings) {
    /**
     * One feature.
     *
     * @param longitude WGS 84 [degrees]
     * @param latitude WGS 84 [degrees]
     * @param attributes values as text by column, absent where null
     */
    public record Row(double longitude, double latitude, Map<String, String> attributes) {
        /** Copies the attributes. */
        public Row {
            attributes = Map.copyOf(attributes);
        }
    }

    /** Copies the lists. */
    public PointFeatures {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads a layer.
     *
     * @throws GeoDataException if it cannot be read, or with one line for each feature that is no place
     */
    public static PointFeatures read(Path file) {
        VectorLayer layer = Layers.read(
                new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        List<String> problems = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (LayerFeature feature : layer.features()) {
            Geometry shape = feature.geometry();
            if (shape == null || shape.isEmpty() || shape.getDimension() == 1) {
                boolean line = shape != null && shape.getDimension() == 1;
                problems.add(file.getFileName() + ": feature " + feature.id() + (line ? " is a line" : " has no shape")
                        + "; give a point, several points, or an area");
                continue;
            }
            Point place = place(shape);
            rows.add(new Row(place.getX(), place.getY(), texts(feature.attributes())));
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        return new PointFeatures(layer.columns(), rows, layer.warnings());
    }

    private static Point place(Geometry shape) {
        Point centroid = shape.getCentroid();
        return shape.getDimension() < 2 || shape.covers(centroid) ? centroid : shape.getInteriorPoint();
    }

    private static Map<String, String> texts(Map<String, Object> attributes) {
        Map<String, String> texts = new LinkedHashMap<>();
        attributes.forEach((column, value) -> {
            if (value != null) {
                boolean number = value instanceof Double d && Double.isFinite(d);
                texts.put(
                        column,
                        number
                                ? new BigDecimal(value.toString())
                                        .stripTrailingZeros()
                                        .toPlainString()
                                : value.toString());
            }
        });
        return texts;
    }
}
