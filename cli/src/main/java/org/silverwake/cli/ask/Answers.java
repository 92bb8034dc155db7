// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is known so far: keys of the scenario with their text, and rows of its tables. */
final class Answers {
    private final Map<String, String> keys = new LinkedHashMap<>();
    private final Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
    private final List<String> proposed = new ArrayList<>();

    /** A key and its value, with its unit. */
    void put(String key, String text) {
        keys.put(key, text);
    }

    /** A row of a table. */
    void row(String table, Map<String, String> cells) {
        tables.computeIfAbsent(table, t -> new ArrayList<>()).add(Map.copyOf(cells));
    }

    /** Says that something was proposed by the program and not known to the user. */
    void proposed(String what) {
        proposed.add(what);
    }

    Map<String, String> keys() {
        return Collections.unmodifiableMap(keys);
    }

    Map<String, List<Map<String, String>>> tables() {
        return Collections.unmodifiableMap(tables);
    }

    List<String> proposals() {
        return List.copyOf(proposed);
    }
}
