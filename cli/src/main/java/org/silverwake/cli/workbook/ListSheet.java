// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.silverwake.cli.scenario.Table;
import org.silverwake.model.quantity.DecimalMark;

/** A list that someone keeps in a workbook of their own: the first sheet that has a line of headings, and rows below it. */
public final class ListSheet {
    private static final int FEWEST_HEADINGS = 2;

    private ListSheet() {}

    /**
     * The list's rows.
     *
     * @throws IllegalArgumentException in words for the user, if the file is no workbook or holds no list
     */
    public static Table read(Path file) {
        String label = String.valueOf(file.getFileName());
        try {
            for (BookSheet sheet : BookReader.read(file)) {
                for (Map.Entry<Integer, Map<Integer, BookCell>> row :
                        sheet.rows().entrySet()) {
                    long words = row.getValue().values().stream()
                            .filter(cell -> cell.kind() == BookCell.Kind.TEXT)
                            .count();
                    if (words >= FEWEST_HEADINGS) {
                        return below(label, sheet, row.getKey());
                    }
                }
            }
        } catch (BookException e) {
            throw new IllegalArgumentException(label + ": " + e.getMessage(), e);
        }
        throw new IllegalArgumentException(label + ": holds no list; give a sheet with a line of headings");
    }

    private static Table below(String label, BookSheet sheet, int headings) {
        Map<Integer, String> columns = new TreeMap<>();
        sheet.rows().get(headings).forEach((at, cell) -> columns.put(at, Table.columnName(cell.text())));
        List<Table.Line> lines = new ArrayList<>();
        sheet.rows().tailMap(headings + 1).forEach((at, cells) -> {
            Map<String, String> line = new LinkedHashMap<>();
            columns.forEach((column, name) -> {
                BookCell cell = cells.getOrDefault(column, BookCell.BLANK);
                if (cell.kind() == BookCell.Kind.ERROR || cell.kind() == BookCell.Kind.NO_RESULT) {
                    throw new IllegalArgumentException(label + ": " + sheet.place(at, column)
                            + " holds a formula without a result; open the workbook, let it compute, and save it");
                }
                if (!cell.isBlank()) {
                    line.putIfAbsent(name, cell.text());
                }
            });
            if (!line.isEmpty()) {
                lines.add(new Table.Line(at + 1L, line));
            }
        });
        return new Table(label, new java.util.LinkedHashSet<>(columns.values()), lines, DecimalMark.POINT);
    }
}
