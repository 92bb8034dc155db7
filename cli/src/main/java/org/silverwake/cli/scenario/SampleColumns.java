// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.laboratory.Headings;
import org.silverwake.cli.laboratory.RowCells;
import org.silverwake.cli.laboratory.RowReader;

/** Which of a laboratory's columns go into which of ours, for one table. */
final class SampleColumns {
    /** Columns that say where a sample was taken. */
    static final List<String> LOCATION = PositionCells.COLUMNS;

    private static final Set<String> BLANK = Set.of("na", "n/a", "#n/a", "-", "--", "\u2013", "null", "none");

    private final Map<String, List<String>> headings = new LinkedHashMap<>();
    private final Map<String, String> fixed;

    private SampleColumns(Map<String, String> fixed) {
        this.fixed = fixed;
    }

    /** What each of our columns holds, for the reference page; where a sample was taken stands there of all tables. */
    private static final Map<String, String> MEANINGS = meanings();

    static Map<String, String> described() {
        return MEANINGS;
    }

    private static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put("name", "the sample's code");
        meanings.put(
                "station",
                "where it was taken, in words; without coordinates, the name of a place, gauge, site or row of"
                        + " samples.stations");
        meanings.put("river", "name of the river it should lie on");
        meanings.put("date", "YYYY-MM-DD; any other way of writing it is refused");
        meanings.put("time", "free");
        meanings.put("state", "flow state; blank: by months of the flow states, else not known");
        meanings.put("medium", "of what, by the words below");
        meanings.put("substance", "what was measured, by the words below");
        meanings.put("fraction", "of water: whole or filtered, by the words below");
        meanings.put("basis", "of sediment and fish: dry or wet weight, here or in the unit");
        meanings.put(
                "value", "number, <number, >number, or a word such as ND; blank only where qualifier and limit say it");
        meanings.put("unit", "mass per volume of water or mass per mass, with dry or wet where it is said");
        meanings.put("qualifier", "<, >, or a flag, by the words below");
        meanings.put("limit", "the laboratory's limit");
        meanings.put("limit_unit", "its unit; without such a column, that of the value");
        meanings.put("type", "sample, or what is left out, by the words below");
        meanings.put("species", "of a fish, free");
        meanings.put("length", "of a fish, free");
        meanings.put("length_unit", "its unit, free");
        meanings.put("method", "free");
        meanings.put("note", "free");
        return java.util.Collections.unmodifiableMap(meanings);
    }

    /** All of our columns. */
    static Set<String> known() {
        Set<String> known = new LinkedHashSet<>(RowReader.columns());
        known.addAll(LOCATION);
        known.add("river");
        return known;
    }

    /**
     * Finds the columns of a table: those the scenario names, else our own names, else usual spellings.
     *
     * @param wanted the laboratory's headings by our column
     * @param fixed what holds where a cell is blank, by our column
     */
    static SampleColumns of(
            Table table, Map<String, List<String>> wanted, Map<String, String> fixed, Problems problems) {
        SampleColumns columns = new SampleColumns(fixed);
        Map<String, List<String>> usual = Headings.known();
        Set<String> taken = new LinkedHashSet<>();
        wanted.values().forEach(list -> list.forEach(h -> taken.add(Table.columnName(h))));
        for (String column : known()) {
            if (wanted.containsKey(column)) {
                columns.named(table, column, wanted.get(column), problems);
            } else if (table.columns().contains(column) && !taken.contains(column)) {
                columns.headings.put(column, List.of(column));
            } else {
                List<String> found = usual.getOrDefault(column, List.of()).stream()
                        .filter(h -> table.columns().contains(h) && !taken.contains(h))
                        .toList();
                if (found.size() > 1) {
                    problems.add(
                            table.places().heading(found.get(0)),
                            "and " + found.get(1) + " could both be the column " + column
                                    + "; say under samples.columns which it is");
                }
                if (!found.isEmpty()) {
                    columns.headings.put(column, List.of(found.get(0)));
                }
            }
        }
        return columns;
    }

    private void named(Table table, String column, List<String> wanted, Problems problems) {
        List<String> found = new ArrayList<>();
        for (String heading : wanted) {
            String name = Table.columnName(heading);
            if (table.columns().contains(name)) {
                found.add(name);
            } else {
                problems.add(
                        table.places().heading(name),
                        "this column is missing, which samples.columns." + column + " names; "
                                + Nearest.hint(name, table.columns()));
            }
        }
        headings.put(column, found);
    }

    /** Whether rows of the table can say something in one of our columns. */
    boolean has(String column) {
        return headings.containsKey(column) || fixed.containsKey(column);
    }

    /** Headings of the table that are not read. */
    List<String> unread(Table table) {
        Set<String> read = new LinkedHashSet<>();
        headings.values().forEach(read::addAll);
        return table.columns().stream().filter(c -> !read.contains(c)).toList();
    }

    /** A row of the table under our columns. */
    RowCells cells(Table.Line line, Table table) {
        Map<String, List<String>> cells = new LinkedHashMap<>();
        for (String column : known()) {
            List<String> list = new ArrayList<>();
            for (String heading : headings.getOrDefault(column, List.of())) {
                String cell = line.cells().getOrDefault(heading, "");
                if (!cell.isEmpty() && !BLANK.contains(cell.toLowerCase(java.util.Locale.ROOT))) {
                    list.add(cell);
                }
            }
            if (list.isEmpty() && fixed.containsKey(column)) {
                list.add(fixed.get(column));
            }
            if (!list.isEmpty()) {
                cells.put(column, list);
            }
        }
        Set<String> columns = new LinkedHashSet<>(headings.keySet());
        columns.addAll(fixed.keySet());
        return new RowCells(cells, columns, table.mark());
    }
}
