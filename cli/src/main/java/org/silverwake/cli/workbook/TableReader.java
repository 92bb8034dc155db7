// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.Problems;
import org.silverwake.cli.scenario.Table;
import org.silverwake.cli.scenario.TablePlaces;
import org.silverwake.model.quantity.DecimalMark;

/** Reads a sheet of rows as a table: release_#2 becomes release_wet, units go into the cells they belong to. */
final class TableReader {
    private final SheetLayout layout;
    private final SheetRows rows;
    private final Map<String, List<String>> names;
    private final Problems problems;

    /**
     * Of a sheet.
     *
     * @param names of the flow states and classes, under the words that stand for them in the plan
     */
    TableReader(SheetLayout layout, Map<String, List<String>> names, Problems problems) {
        this.layout = layout;
        this.names = names;
        this.problems = problems;
        this.rows = new SheetRows(layout, problems);
    }

    /** The table; empty where no row is filled in. */
    Optional<Table> read() {
        Map<String, Integer> columns = new LinkedHashMap<>();
        List<Integer> filled = rows.filled();
        Map<Integer, Map<String, String>> texts = new LinkedHashMap<>();
        filled.forEach(row -> texts.put(row, new LinkedHashMap<>()));
        for (String name : layout.columns().keySet()) {
            if (!isUnit(name)) {
                Field field = field(name);
                real(name, field, filled).ifPresent(real -> {
                    columns.put(real, layout.column(name));
                    filled.forEach(row -> put(texts.get(row), real, row, name, field));
                });
            }
        }
        List<Table.Line> lines = new ArrayList<>();
        texts.forEach((row, cells) -> lines.add(new Table.Line(row + 1L, cells)));
        Set<String> known = new LinkedHashSet<>(columns.keySet());
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Table(new Places(layout, columns), known, lines, DecimalMark.POINT));
    }

    private void put(Map<String, String> cells, String real, int row, String name, Field field) {
        String text = rows.value(row, name, field.key());
        if (!text.isEmpty()) {
            cells.put(real, text);
        }
    }

    private boolean isUnit(String name) {
        return name.endsWith(Field.UNIT)
                && layout.columns().keySet().stream()
                        .anyMatch(n -> SheetColumn.unitOf(n).equals(name));
    }

    private Field field(String name) {
        String numbered = name.replaceFirst("_#\\d+$", "");
        return layout.plan().fields().stream()
                .filter(f -> f.name().equals(name)
                        || WorkbookPlan.isRepeated(f.name())
                                && name.contains("_" + Marks.NUMBER)
                                && f.name()
                                        .substring(0, f.name().lastIndexOf('_'))
                                        .equals(numbered))
                .findFirst()
                .orElseGet(() -> new Field(name, Key.word(name, Key.Kind.TEXT, "", "")));
    }

    /** Column name as a file would have it; empty for a state or class that is not there. */
    private Optional<String> real(String name, Field field, List<Integer> filled) {
        Optional<String> word = WorkbookPlan.repeated(field.name());
        if (word.isEmpty() || !name.matches(".*_#\\d{1,4}")) {
            return Optional.of(name);
        }
        int number = Integer.parseInt(name.substring(name.indexOf(Marks.NUMBER) + 1));
        List<String> known = names.getOrDefault(word.get(), List.of());
        if (number <= known.size()) {
            return Optional.of(name.replaceFirst("#\\d+$", "") + Table.columnName(known.get(number - 1)));
        }
        for (int row : filled) {
            if (!rows.isBlank(row, name)) {
                problems.addAlone(
                        layout.place(row, layout.column(name)),
                        "is for " + (word.get().equals("STATE") ? "flow state " : "particle class ") + number
                                + ", but there are " + known.size()
                                + "; clear the cell, or add the missing one on its sheet");
            }
        }
        return Optional.empty();
    }

    /** Messages name the cell and the column. */
    private record Places(SheetLayout layout, Map<String, Integer> columns) implements TablePlaces {
        @Override
        public String row(long line) {
            return layout.place((int) line - 1, 0);
        }

        @Override
        public String cell(long line, String column) {
            return layout.place((int) line - 1, at(column)) + " " + column;
        }

        @Override
        public String heading(String column) {
            return layout.place(layout.first() - 2, at(column)) + " " + column;
        }

        /** The column, or the first of "release, tailings, effluent" that is there. */
        private int at(String column) {
            for (String each : column.split(", ")) {
                if (columns.containsKey(each)) {
                    return columns.get(each);
                }
            }
            return 0;
        }
    }
}
