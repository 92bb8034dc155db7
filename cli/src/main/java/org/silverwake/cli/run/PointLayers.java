// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.scenario.Table;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.PointFeatures;
import org.silverwake.model.quantity.DecimalMark;

/** Tables of sites, places, gauges or abstractions that are kept as a layer; a row is named by its place in the file. */
public final class PointLayers {
    /** Numbers that programs give their rows; nothing the user has to say. */
    private static final Set<String> ROW_NUMBERS = Set.of("fid", "id", "ogc_fid", "objectid");

    private static final String LONGITUDE = "longitude";
    private static final String LATITUDE = "latitude";
    private static final Set<String> POSITION =
            Set.of(LONGITUDE, LATITUDE, "x", "y", "easting", "northing", "zone", "hemisphere", "datum");

    private PointLayers() {}

    /**
     * The layer as a table; the shape, not a column, says where each row lies.
     *
     * @throws IllegalArgumentException with a line for the user, if the layer cannot be read
     */
    public static Table table(Path file) {
        PointFeatures layer;
        try {
            layer = PointFeatures.read(file);
        } catch (GeoDataException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        Set<String> columns = new LinkedHashSet<>();
        layer.columns().stream()
                .map(Table::columnName)
                .filter(PointLayers::isKept)
                .forEach(columns::add);
        columns.add(LONGITUDE);
        columns.add(LATITUDE);
        List<Table.Line> lines = new ArrayList<>();
        for (PointFeatures.Row row : layer.rows()) {
            Map<String, String> cells = new LinkedHashMap<>();
            row.attributes().forEach((name, value) -> {
                if (isKept(Table.columnName(name)) && !value.isBlank()) {
                    cells.put(Table.columnName(name), value.strip());
                }
            });
            cells.put(LONGITUDE, String.valueOf(row.longitude()));
            cells.put(LATITUDE, String.valueOf(row.latitude()));
            lines.add(new Table.Line(lines.size() + 1L, cells));
        }
        return new Table(String.valueOf(file.getFileName()), columns, lines, DecimalMark.POINT);
    }

    private static boolean isKept(String column) {
        return !ROW_NUMBERS.contains(column) && !POSITION.contains(column);
    }
}
