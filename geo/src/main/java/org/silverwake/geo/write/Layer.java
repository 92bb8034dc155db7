// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;

/**
 * One layer to write.
 *
 * @param name name of its table, made as a {@link Column} name
 * @param title what a GIS shows as its name; all different in one file
 * @param shape what all its features are
 * @param columns its attributes; "fid" and "geom" are taken
 * @param rows its features, numbered from 1 in this order
 * @param styles ways to draw it, the default first; may be empty
 */
public record Layer(
        String name, String title, Shape shape, List<Column> columns, List<Row> rows, List<LayerStyle> styles) {
    /** Kinds of geometry, named as a GeoPackage names them. */
    public enum Shape {
        LINESTRING,
        POINT
    }

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if a name is used twice or taken, or a row does not fit the columns or the shape
     */
    public Layer {
        Column.requireName(name);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        styles = List.copyOf(styles);
        if (styles.stream().map(LayerStyle::name).distinct().count() != styles.size()) {
            throw new IllegalArgumentException("layer " + name + ": a name of a style is used twice");
        }
        if (columns.stream()
                        .map(c -> c.name().toLowerCase(java.util.Locale.ROOT))
                        .distinct()
                        .count()
                != columns.size()) {
            throw new IllegalArgumentException("layer " + name + ": a column name is used twice");
        }
        for (Column column : columns) {
            if (column.name().equalsIgnoreCase("fid") || column.name().equalsIgnoreCase("geom")) {
                throw new IllegalArgumentException("layer " + name + ": the column names fid and geom are taken");
            }
        }
        for (int k = 0; k < rows.size(); k++) {
            check(name, shape, columns, rows.get(k), k + 1);
        }
    }

    private static void check(String name, Shape shape, List<Column> columns, Row row, int number) {
        String where = "layer " + name + ", row " + number + ": ";
        if (row.values().size() != columns.size()) {
            throw new IllegalArgumentException(
                    where + row.values().size() + " values for " + columns.size() + " columns; give one each");
        }
        for (int c = 0; c < columns.size(); c++) {
            try {
                columns.get(c).require(row.values().get(c));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(where + e.getMessage(), e);
            }
        }
        if (row.geometry() != null && !row.geometry().getGeometryType().equalsIgnoreCase(shape.name())) {
            throw new IllegalArgumentException(
                    where + row.geometry().getGeometryType() + " is not allowed; give a " + shape);
        }
    }
}
