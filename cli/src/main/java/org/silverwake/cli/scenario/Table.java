// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.LocalUnits;

/**
 * Rows of text under named columns, from whatever file they came. Column names are lower case, blanks and hyphens
 * written as underscores.
 *
 * @param places how messages name a place in it
 * @param columns in order
 * @param rows in order, blank ones left out
 * @param mark how numbers are written
 * @param units local units that may stand in it
 */
public record Table(TablePlaces places, Set<String> columns, List<Line> rows, DecimalMark mark, LocalUnits units) {
    /**
     * One row.
     *
     * @param line in the file or sheet, 1 is the first
     * @param cells by column, only those that are not blank
     */
    public record Line(long line, Map<String, String> cells) {
        /** Copies the cells. */
        public Line {
            cells = Map.copyOf(cells);
        }
    }

    /** Copies columns and rows. */
    public Table {
        columns = new LinkedHashSet<>(columns);
        rows = List.copyOf(rows);
    }

    /** A table of a file, whose messages name the file and the line. */
    public Table(String file, Set<String> columns, List<Line> rows, DecimalMark mark) {
        this(TablePlaces.lines(file), columns, rows, mark);
    }

    /** A table without local units. */
    public Table(TablePlaces places, Set<String> columns, List<Line> rows, DecimalMark mark) {
        this(places, columns, rows, mark, LocalUnits.none());
    }

    /** The same table, in which these local units may stand. */
    Table withUnits(LocalUnits local) {
        return new Table(places, columns, rows, mark, local);
    }

    /** A heading or the name of a flow state or class as it stands in column names. */
    public static String columnName(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
    }

    /** Notes columns that are not known, and required ones that are not there; without these, no row is read. */
    Table checkColumns(Set<String> known, List<String> required, Problems problems) {
        for (String column : columns) {
            if (!known.contains(column) && !column.startsWith("note")) {
                problems.add(places.heading(column), "is not a column here; " + Nearest.hint(column, known));
            }
        }
        for (String column : required) {
            if (!columns.contains(column)) {
                problems.add(places.heading(column), "this column is missing; add it");
            }
        }
        return columns.containsAll(required) ? this : new Table(places, columns, List.of(), mark, units);
    }

    /** The rows, each ready to be read. */
    List<TableRow> read(Problems problems) {
        List<TableRow> list = new ArrayList<>();
        for (Line line : rows) {
            list.add(new TableRow(places, line, mark, units, problems));
        }
        return list;
    }
}
