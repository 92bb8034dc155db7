// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.Problems;

/** The rows of a sheet that were filled in, and what their cells say. */
final class SheetRows {
    private final SheetLayout layout;
    private final CellReader cells;
    private final Problems problems;

    SheetRows(SheetLayout layout, Problems problems) {
        this.layout = layout;
        this.problems = problems;
        List<Integer> numbers = new ArrayList<>();
        layout.columns().forEach((name, column) -> numbers.add(column));
        this.cells = new CellReader(layout.sheet(), numbers, problems);
    }

    /** Rows below the headings in which something stands, without those that are marked in column A. */
    List<Integer> filled() {
        List<Integer> rows = new ArrayList<>();
        for (int row : layout.sheet().rows().tailMap(layout.first()).keySet()) {
            boolean blank = layout.columns().values().stream().allMatch(column -> cells.isBlank(row, column));
            if (layout.plan().isOfKeys() || !blank && !isMarked(row)) {
                rows.add(row);
            }
        }
        rows.forEach(this::warnIfHidden);
        return rows;
    }

    /** A row with something in column A is not read; the example stands directly below the headings. */
    private boolean isMarked(int row) {
        BookCell mark = layout.sheet().cell(row, 0);
        if (mark.isBlank()) {
            return false;
        }
        if (row > layout.first()) {
            problems.warn(
                    layout.place(row, 0),
                    "this row is not read, since column A holds \"" + mark.text()
                            + "\"; clear that cell to have it read");
        } else if (!isExample(row)) {
            problems.warn(
                    layout.place(row, 0),
                    "the example row was changed, but is not read; clear column A of it to have it read");
        }
        return true;
    }

    /** Whether the row still begins with the example of some language. */
    private boolean isExample(int row) {
        String first = layout.columns().keySet().iterator().next();
        String found = layout.sheet().cell(row, layout.column(first)).text();
        String word = "example." + layout.plan().id() + "." + first;
        return WorkbookWords.languages().stream()
                .map(WorkbookWords::of)
                .anyMatch(words -> words.find(word).orElse("").equals(found));
    }

    private void warnIfHidden(int row) {
        if (layout.sheet().hiddenRows().contains(row)) {
            problems.warn(layout.place(row, 0), "is a hidden row; it was read");
        }
    }

    boolean isBlank(int row, String column) {
        return cells.isBlank(row, layout.column(column));
    }

    /** Where a column's cell of a row is. */
    String place(int row, String column) {
        return layout.place(row, layout.column(column));
    }

    String word(int row, String column) {
        return cells.word(row, layout.column(column));
    }

    /** The value with its unit, "" where it is blank. */
    String value(int row, String column, Key key) {
        return cells.value(row, layout.column(column), layout.unitColumn(column), key);
    }
}
