// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;

/** What was written in a scenario, before anyone asks what it means: texts, maps and lists, whichever door they came by. */
public sealed interface ScenarioNode {
    /** Whether nothing is written here or below. */
    default boolean isBlank() {
        return this instanceof Blank
                || this instanceof Branch branch
                        && !branch.entries().isEmpty()
                        && branch.entries().stream()
                                .allMatch(entry -> entry.value().isBlank());
    }

    /** A single value; {@code text} is as written, perhaps blank. */
    record Single(String text) implements ScenarioNode {}

    /** Nothing, at a place where something may be written: the empty cell of a form. */
    record Blank() implements ScenarioNode {}

    /** Keys with their values in the order written; a key written twice is there twice. */
    record Branch(List<Entry> entries) implements ScenarioNode {
        /** Copies the entries. */
        public Branch {
            entries = List.copyOf(entries);
        }
    }

    /** Items in their order. */
    record Items(List<Item> items) implements ScenarioNode {
        /** Copies the items. */
        public Items {
            items = List.copyOf(items);
        }
    }

    /**
     * A key and its value.
     *
     * @param key one step of a path, without dots
     * @param where it stands, such as "scenario.yaml:41" or "Project!C7"
     * @param value under it
     */
    record Entry(String key, String where, ScenarioNode value) {}

    /**
     * An item of a list.
     *
     * @param where it stands
     * @param value the item
     */
    record Item(String where, ScenarioNode value) {}
}
