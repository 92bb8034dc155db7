// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where things stand in a sheet that was found.
 *
 * @param plan what the sheet asks for
 * @param sheet the sheet
 * @param columns column by its fixed name
 * @param first first row below the headings
 */
record SheetLayout(SheetPlan plan, BookSheet sheet, Map<String, Integer> columns, int first) {
    /** Id of the sheet, if it is one of ours. */
    static Optional<String> idOf(BookSheet sheet) {
        String text = sheet.cell(0, 0).text();
        return text.startsWith(Marks.SHEET) ? Optional.of(text.substring(Marks.SHEET.length())) : Optional.empty();
    }

    /** The layout; empty where the row of fixed names is gone. */
    static Optional<SheetLayout> of(SheetPlan plan, BookSheet sheet) {
        for (Integer row : sheet.rows().keySet()) {
            if (sheet.cell(row, 0).text().equals(Marks.COLUMNS)) {
                Map<String, Integer> columns = new LinkedHashMap<>();
                sheet.rows().get(row).entrySet().stream()
                        .filter(e -> e.getKey() > 0)
                        .sorted(Map.Entry.comparingByKey())
                        .forEach(e -> columns.putIfAbsent(e.getValue().text(), e.getKey()));
                return Optional.of(new SheetLayout(plan, sheet, columns, row + 2));
            }
        }
        return Optional.empty();
    }

    /** Headings without a fixed name above them that have something in their rows, by column. */
    Map<Integer, String> unnamed() {
        Map<Integer, String> found = new TreeMap<>();
        sheet.rows().getOrDefault(first - 1, Map.of()).forEach((column, heading) -> {
            boolean named = column == 0 || !sheet.cell(first - 2, column).isBlank();
            boolean holds = sheet.rows().tailMap(first).values().stream().anyMatch(row -> row.containsKey(column));
            if (!named && holds) {
                found.put(column, heading.text());
            }
        });
        return found;
    }

    /** A column by its fixed name; -1 where the sheet does not have it. */
    int column(String name) {
        return columns.getOrDefault(name, -1);
    }

    /** The column where the unit of a column stands; -1 where there is none. */
    int unitColumn(String name) {
        return plan.isOfKeys() ? column(Marks.UNIT) : column(SheetColumn.unitOf(name));
    }

    String place(int row, int column) {
        return sheet.place(row, Math.max(0, column));
    }
}
