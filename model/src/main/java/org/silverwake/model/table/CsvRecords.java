// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.table;

import java.util.ArrayList;
import java.util.List;

/** Splits comma-separated text into records, character by character. */
final class CsvRecords {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String name;
    private final String text;
    private final List<Fields> records = new ArrayList<>();
    private List<String> values = new ArrayList<>();
    private final StringBuilder field = new StringBuilder();
    private int line = 1;
    private int start = 1;

    private CsvRecords(String name, String text) {
        this.name = name;
        this.text = text;
    }

    /** Values of one record and the line it begins on, from 1. */
    record Fields(int line, List<String> values) {}

    static List<Fields> split(String name, String text) {
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        CsvRecords reader = new CsvRecords(name, marked ? text.substring(1) : text);
        reader.run();
        return reader.records;
    }

    private void run() {
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == '"' && field.toString().isBlank()) {
                field.setLength(0);
                i = quoted(i + 1);
                continue;
            }
            if (c == ',') {
                endField();
            } else if (c == '\n') {
                endRecord();
            } else {
                field.append(c);
            }
            i++;
        }
        endRecord();
    }

    /** Reads a quoted value that begins at {@code from}; the place after its closing quote. */
    private int quoted(int from) {
        int opened = line;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                field.append(c);
                i++;
            } else if (c == '"') {
                return afterQuote(i + 1);
            } else {
                line += c == '\n' ? 1 : 0;
                field.append(c);
            }
        }
        throw new TableException(List.of(name + ":" + opened + " a quote is opened and never closed; close it"));
    }

    private int afterQuote(int at) {
        int i = at;
        while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\r')) {
            i++;
        }
        if (i < text.length() && text.charAt(i) != ',' && text.charAt(i) != '\n') {
            throw new TableException(List.of(name + ":" + line + " has text after a closing quote; double the quotes"
                    + " inside a quoted value"));
        }
        return i;
    }

    private void endField() {
        values.add(field.toString().strip());
        field.setLength(0);
    }

    private void endRecord() {
        endField();
        boolean blank = values.size() == 1 && values.get(0).isEmpty();
        if (!blank) {
            records.add(new Fields(start, List.copyOf(values)));
        }
        values = new ArrayList<>();
        line++;
        start = line;
    }
}
