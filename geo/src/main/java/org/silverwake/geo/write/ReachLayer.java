// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A layer of results on reaches, without geometry: that comes from the river map.
 *
 * @param name name of its table, made as a {@link Column} name
 * @param title what a GIS shows as its name
 * @param columns its attributes
 * @param reaches indices of reaches in the river map, one per row
 * @param rows values, one list per reach, one value per column; null where missing
 * @param styles ways to draw it, the default first; may be empty
 */
public record ReachLayer(
        String name,
        String title,
        List<Column> columns,
        List<Integer> reaches,
        List<List<Object>> rows,
        List<ReachStyle> styles) {
    /** Copies the lists; as many rows as reaches, and a column for each style. */
    public ReachLayer {
        columns = List.copyOf(columns);
        reaches = List.copyOf(reaches);
        styles = List.copyOf(styles);
        for (ReachStyle style : styles) {
            if (columns.stream().noneMatch(column -> column.name().equals(style.column()))) {
                throw new IllegalArgumentException("layer " + name + ": style " + style.name() + " asks for "
                        + style.column() + ", which is no column");
            }
        }
        List<List<Object>> copies = new ArrayList<>();
        rows.forEach(row -> copies.add(Collections.unmodifiableList(new ArrayList<>(row))));
        rows = Collections.unmodifiableList(copies);
        if (rows.size() != reaches.size()) {
            throw new IllegalArgumentException(
                    "layer " + name + ": " + rows.size() + " rows for " + reaches.size() + " reaches; give one each");
        }
    }
}
