// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A sheet as it was found. Rows and columns count from 0.
 *
 * @param name as its tab says
 * @param isHidden whether it is out of sight
 * @param rows cells that are not blank, by row and column
 * @param hiddenRows rows that are out of sight
 * @param merged ranges that were merged into one cell
 */
record BookSheet(
        String name,
        boolean isHidden,
        SortedMap<Integer, Map<Integer, BookCell>> rows,
        Set<Integer> hiddenRows,
        List<CellRange> merged) {
    private static final int LETTERS = 26;

    /** Copies everything. */
    BookSheet {
        rows = Collections.unmodifiableSortedMap(new TreeMap<>(rows));
        hiddenRows = Set.copyOf(hiddenRows);
        merged = List.copyOf(merged);
    }

    BookCell cell(int row, int column) {
        return rows.getOrDefault(row, Map.of()).getOrDefault(column, BookCell.BLANK);
    }

    /** "Sites!F12". */
    String place(int row, int column) {
        return name + "!" + reference(row, column);
    }

    /** "F12" for row 11 and column 5. */
    static String reference(int row, int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest >= 0; rest = rest / LETTERS - 1) {
            letters.insert(0, (char) ('A' + rest % LETTERS));
        }
        return letters.toString() + (row + 1);
    }

    /** Cells from the first to the last, as "B12:B14". */
    record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {
        /** "B12:B14". */
        String text() {
            return reference(firstRow, firstColumn) + ":" + reference(lastRow, lastColumn);
        }

        /** Of a text such as "B12:B14"; the same cell twice where it names one. */
        static CellRange of(String text) {
            String[] ends = text.split(":");
            String last = ends[ends.length - 1];
            return new CellRange(row(ends[0]), column(ends[0]), row(last), column(last));
        }

        private static int row(String reference) {
            return Integer.parseInt(reference.replaceAll("\\D", "")) - 1;
        }

        private static int column(String reference) {
            int column = 0;
            for (char letter : reference.replaceAll("[^A-Z]", "").toCharArray()) {
                column = column * LETTERS + letter - 'A' + 1;
            }
            return column - 1;
        }
    }
}
