// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.List;

/**
 * A sheet of the workbook.
 *
 * @param id fixed name, by which the sheet is recognized; of a table its name, of keys in rows their common start
 * @param kind how it is laid out
 * @param fields what it asks for: one row each, or one column each
 */
record SheetPlan(String id, Kind kind, List<Field> fields) {
    /** How a sheet is laid out. */
    enum Kind {
        /** A row for each key. */
        KEYS,
        /** Rows in which any key may be written out. */
        MORE,
        /** A row for each named thing, such as a flow state; a column for each of its keys. */
        NAMED,
        /** A row for each item of a list, such as an outlet; a column for each of its keys. */
        ITEMS,
        /** A row for each mapped column of the river layer. */
        RIVER_COLUMNS,
        /** A table of its own, as a CSV file would hold it. */
        ROWS
    }

    /** Copies the fields. */
    SheetPlan {
        fields = List.copyOf(fields);
    }

    /** Whether a key stands in column A of every row. */
    boolean isOfKeys() {
        return kind == Kind.KEYS || kind == Kind.MORE;
    }
}
