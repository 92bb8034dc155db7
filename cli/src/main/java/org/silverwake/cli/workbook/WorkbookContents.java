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

/**
 * What a workbook is filled with: texts by key, as scenario.yaml would spell them ("rivers.file", "flow-states.dry.temperature"
 * with "21 degC"), and rows of tables by column ("sites" with name, longitude, release_dry ...). Lists are separated by
 * semicolons.
 */
public final class WorkbookContents {
    private final Map<String, String> texts;
    private final Map<String, List<Map<String, String>>> rows;

    private WorkbookContents(Builder builder) {
        this.texts = new LinkedHashMap<>(builder.texts);
        this.rows = new LinkedHashMap<>();
        builder.rows.forEach((table, list) -> rows.put(table, List.copyOf(list)));
    }

    /** Nothing: a workbook to be filled in. */
    public static WorkbookContents none() {
        return builder().build();
    }

    /** To be filled. */
    public static Builder builder() {
        return new Builder();
    }

    /** The text under a key. */
    Optional<String> text(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    Set<String> keys() {
        return Set.copyOf(texts.keySet());
    }

    /** Names that stand under a key, such as those of the flow states, in order. */
    List<String> names(String prefix) {
        Set<String> names = new LinkedHashSet<>();
        for (String key : texts.keySet()) {
            if (key.startsWith(prefix + ".")) {
                names.add(key.substring(prefix.length() + 1).split("\\.")[0]);
            }
        }
        return List.copyOf(names);
    }

    /** Rows of a table, or of a list of maps such as "rivers.outlets". */
    List<Map<String, String>> rows(String table) {
        return rows.getOrDefault(table, List.of());
    }

    Set<String> tables() {
        return Set.copyOf(rows.keySet());
    }

    /** Collects contents. */
    public static final class Builder {
        private final Map<String, String> texts = new LinkedHashMap<>();
        private final Map<String, List<Map<String, String>>> rows = new LinkedHashMap<>();

        private Builder() {}

        /**
         * A text under a key, in place of an earlier one.
         *
         * @param key dotted path with the names of states and classes in it
         * @param text as the scenario file spells it: number and unit, word, or items separated by semicolons
         */
        public Builder put(String key, String text) {
            texts.put(key, text);
            return this;
        }

        /**
         * A row of a table (sites, places, gauges ...) or of a list of maps (rivers.outlets, outputs.profiles).
         *
         * @param cells texts by column, those that are not blank
         */
        public Builder addRow(String table, Map<String, String> cells) {
            rows.computeIfAbsent(table, t -> new ArrayList<>()).add(Map.copyOf(cells));
            return this;
        }

        /** The contents so far. */
        public WorkbookContents build() {
            return new WorkbookContents(this);
        }
    }
}
