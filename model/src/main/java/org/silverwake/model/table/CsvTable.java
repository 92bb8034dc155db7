// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of text with a header row, as comma-separated values (RFC 4180: quotes, doubled quotes, line breaks inside
 * quotes; LF or CRLF; a byte order mark and blank lines are passed over). Immutable.
 */
public final class CsvTable {
    private static final String NOT_UTF8 = "\uFFFD";

    private final String name;
    private final List<String> columns;
    private final List<Row> rows;

    private CsvTable(String name, List<String> columns, List<Row> rows) {
        this.name = name;
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param where table and line, as "guidelines.csv:12", for messages
     * @param values text by column, blanks at both ends cut off, "" where empty
     */
    public record Row(String where, Map<String, String> values) {
        /** Keeps an unmodifiable copy in column order. */
        public Row {
            values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }

        /**
         * Text in a column, "" where empty.
         *
         * @throws IllegalArgumentException if the table has no such column
         */
        public String value(String column) {
            String value = values.get(column);
            if (value == null) {
                throw new IllegalArgumentException(where + ": no column " + column);
            }
            return value;
        }
    }

    /**
     * A table beside a class in its jar.
     *
     * @param owner class in whose package the table lies
     * @param file file name
     * @throws IllegalArgumentException if there is no such file
     * @throws TableException if it is not a proper table
     */
    public static CsvTable ofResource(Class<?> owner, String file) {
        try (InputStream in = owner.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalArgumentException("no table " + file + " beside " + owner.getName());
            }
            return parse(file, new String(in.readAllBytes(), "UTF-8"));
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /**
     * A table from its text.
     *
     * @param name name for messages, usually the file's
     * @param text the whole table
     * @throws TableException with every problem: no header, a column named twice or not at all, rows of another length,
     *     a quote left open, text that was not UTF-8
     */
    public static CsvTable parse(String name, String text) {
        if (text.contains(NOT_UTF8)) {
            throw new TableException(List.of(
                    name + ":" + lineOf(text, text.indexOf(NOT_UTF8)) + " is not UTF-8 text; save the table as UTF-8"));
        }
        List<CsvRecords.Fields> records = CsvRecords.split(name, text);
        if (records.isEmpty()) {
            throw new TableException(List.of(name + ": empty; the first line must name the columns"));
        }
        List<String> columns = records.get(0).values();
        List<String> problems = new ArrayList<>(headerProblems(name, columns));
        List<Row> rows = new ArrayList<>();
        for (CsvRecords.Fields fields : records.subList(1, records.size())) {
            String where = name + ":" + fields.line();
            if (fields.values().size() != columns.size()) {
                problems.add(where + " has " + fields.values().size() + " values; the header names " + columns.size()
                        + " columns; put text with commas in quotes");
            } else {
                rows.add(new Row(where, byColumn(columns, fields.values())));
            }
        }
        if (!problems.isEmpty()) {
            throw new TableException(problems);
        }
        return new CsvTable(name, columns, rows);
    }

    /** Name for messages. */
    public String name() {
        return name;
    }

    /** Column names, in order. */
    public List<String> columns() {
        return columns;
    }

    /** Rows, in order, without the header. */
    public List<Row> rows() {
        return rows;
    }

    private static List<String> headerProblems(String name, List<String> columns) {
        List<String> problems = new ArrayList<>();
        HashSet<String> seen = new HashSet<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isEmpty()) {
                problems.add(name + ":1 column " + (i + 1) + " has no name; name it or leave it out");
            } else if (!seen.add(columns.get(i))) {
                problems.add(name + ":1 column " + columns.get(i) + " stands twice; keep one");
            }
        }
        return problems;
    }

    private static Map<String, String> byColumn(List<String> columns, List<String> values) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            map.put(columns.get(i), values.get(i));
        }
        return map;
    }

    private static int lineOf(String text, int at) {
        return 1 + (int) text.chars().limit(at).filter(c -> c == '\n').count();
    }
}
