// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.KeyTable;
import org.silverwake.cli.scenario.Table;

/** Turns contents into the rows of a table sheet; what was used is crossed off, so that nothing is lost unsaid. */
final class Rows {
    private static final Set<String> OF_A_COLUMN = Set.of("column", "unit", "missing");

    private final WorkbookContents contents;
    private final Set<String> left;

    /**
     * Of some contents.
     *
     * @param left keys and tables that were not used yet; what is used is taken out
     */
    Rows(WorkbookContents contents, Set<String> left) {
        this.contents = contents;
        this.left = left;
    }

    /** All that may be left. */
    static Set<String> all(WorkbookContents contents) {
        Set<String> left = new TreeSet<>(contents.keys());
        left.addAll(contents.tables());
        return left;
    }

    /** Texts by column name, row by row. */
    List<Map<String, String>> of(SheetPlan plan) {
        left.remove(plan.id());
        return switch (plan.kind()) {
            case NAMED -> named(plan);
            case RIVER_COLUMNS -> riverColumns();
            case ROWS -> table(plan);
            default -> contents.rows(plan.id());
        };
    }

    private List<Map<String, String>> named(SheetPlan plan) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (String name : contents.names(plan.id())) {
            Map<String, String> row = new LinkedHashMap<>(Map.of("name", name));
            for (Field field : plan.fields()) {
                take(field.key().path().replace("*", name), field.name(), row);
            }
            rows.add(row);
        }
        return rows;
    }

    /** One row for each that may be mapped, whether it is or not; several where each flow state has its own. */
    private List<Map<String, String>> riverColumns() {
        List<Map<String, String>> rows = new ArrayList<>();
        for (String name : KeyTable.riverColumns().keySet()) {
            String start = WorkbookPlan.RIVER_COLUMNS + "." + name;
            List<String> below = contents.names(start);
            boolean byState = below.stream().anyMatch(b -> !OF_A_COLUMN.contains(b));
            for (String state : byState ? below : List.of("")) {
                Map<String, String> row = new LinkedHashMap<>(Map.of("name", name, "state", state));
                for (String each : OF_A_COLUMN) {
                    take(start + (state.isEmpty() ? "" : "." + state) + "." + each, each, row);
                }
                rows.add(row);
            }
        }
        return rows;
    }

    private void take(String key, String column, Map<String, String> row) {
        contents.text(key).ifPresent(text -> {
            row.put(column, text);
            left.remove(key);
        });
    }

    /** Columns by their place in the sheet: release_dry becomes release_#1; a unit column goes into the cells. */
    private List<Map<String, String>> table(SheetPlan plan) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Map<String, String> given : contents.rows(plan.id())) {
            Map<String, String> row = new LinkedHashMap<>();
            given.forEach((column, text) -> put(plan, column, text, given, row));
            rows.add(row);
        }
        return rows;
    }

    private void put(SheetPlan plan, String column, String text, Map<String, String> given, Map<String, String> row) {
        for (Field field : plan.fields()) {
            String word = WorkbookPlan.repeated(field.name()).orElse("");
            List<String> names = word.isEmpty() ? List.of("") : namesFor(word);
            for (int i = 0; i < names.size(); i++) {
                String stem = word.isEmpty() ? field.name() : field.name().replace("_" + word, "");
                String here = word.isEmpty() ? field.name() : stem + "_" + Table.columnName(names.get(i));
                if (here.equals(column)) {
                    String unit = CellWriter.apart(text)[1].isEmpty() && field.hasUnit()
                            ? " " + given.getOrDefault(stem + Field.UNIT, "")
                            : "";
                    String name = word.isEmpty() ? column : stem + "_" + Marks.NUMBER + (i + 1);
                    row.put(name, (text + unit).strip());
                    return;
                }
                if ((stem + Field.UNIT).equals(column) && field.hasUnit()) {
                    return;
                }
            }
        }
        throw new IllegalArgumentException(
                "the sheet " + plan.id().toLowerCase(Locale.ROOT) + " has no column " + column);
    }

    /** Names of flow states or classes, in order. */
    List<String> namesFor(String word) {
        return contents.names(word.equals("STATE") ? WorkbookPlan.STATES : WorkbookPlan.CLASSES);
    }
}
