// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.model.quantity.DecimalMark;

/**
 * Cells of one row under our own column names; where several of the laboratory's columns go into one of ours, all of them.
 *
 * @param cells by column, none blank
 * @param columns columns that the table has, blank here or not
 * @param mark how the file writes decimals
 */
public record RowCells(Map<String, List<String>> cells, Set<String> columns, DecimalMark mark) {
    /** Copies the cells. */
    public RowCells {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        cells.forEach((column, list) -> copy.put(column, List.copyOf(list)));
        cells = java.util.Collections.unmodifiableMap(copy);
        columns = Set.copyOf(columns);
    }

    /** Whether the table has a column for it. */
    boolean hasColumn(String column) {
        return columns.contains(column);
    }

    /** All cells of a column. */
    List<String> all(String column) {
        return cells.getOrDefault(column, List.of());
    }

    /** The first cell of a column. */
    public Optional<String> first(String column) {
        return all(column).stream().findFirst();
    }

    /** The first cell of a column, or "". */
    String text(String column) {
        return first(column).orElse("");
    }

    /** All cells of a column in one text. */
    String joined(String column) {
        return String.join("; ", all(column));
    }
}
