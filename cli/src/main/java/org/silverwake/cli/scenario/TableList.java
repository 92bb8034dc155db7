// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.scenario.Key.Kind;

/**
 * The tables of a scenario and their columns. A column's name may hold STATE or CLASS, which stand for the name of a flow
 * state or of a particle class.
 */
public final class TableList {
    /** Words that stand for names of the user's own in column names. */
    public static final String STATE = "STATE";

    /** As {@link #STATE}, for particle classes. */
    public static final String CLASS = "CLASS";

    private TableList() {}

    /** Columns by table, in the order in which they are given to be filled in. */
    public static Map<String, List<Key>> all() {
        Map<String, List<Key>> tables = new LinkedHashMap<>();
        tables.put("sites", columns(SitesTable.KEYS));
        List.of("places", "gauges", "abstractions")
                .forEach(name ->
                        tables.put(name, columns(withStates(PlaceTables.keys().get(name)))));
        tables.put(PracticesSection.NOTES, FieldNotesKeys.ALL);
        tables.put(PracticesSection.PRACTICES, PracticesSection.KEYS);
        tables.put(WaterBodiesSection.TABLE, WaterBodiesSection.KEYS);
        tables.put("samples", samples());
        return Collections.unmodifiableMap(tables);
    }

    /** Read by what laboratories write: numbers with their qualifier, units and words as they come. */
    private static List<Key> samples() {
        return SampleColumns.known().stream()
                .map(column -> Key.word(
                        column,
                        column.equals("date") ? Kind.DATE : Kind.TEXT,
                        column.equals("value") ? "required" : "",
                        "as the laboratory wrote it"))
                .toList();
    }

    /** A discharge may be given for each flow state too. */
    private static List<Key> withStates(List<Key> keys) {
        List<Key> all = new ArrayList<>(keys);
        if (keys.stream().anyMatch(k -> k.path().equals("discharge"))) {
            all.add(Key.word("discharge_" + STATE, Kind.TEXT, "", "as discharge, one for each flow state"));
        }
        return all;
    }

    /** One key for each column: positions put in, and "release_STATE, tailings_STATE" taken apart. */
    private static List<Key> columns(List<Key> listed) {
        List<Key> columns = new ArrayList<>();
        for (Key key : listed) {
            for (String name : key.path().split(", ")) {
                columns.add(new Key(
                        name,
                        key.kind(),
                        key.dimension(),
                        key.unit(),
                        key.low(),
                        key.high(),
                        key.choices(),
                        key.fallback(),
                        key.meaning()));
            }
        }
        columns.addAll(1, PositionCells.KEYS);
        for (int i = 0; i < columns.size(); i++) {
            columns.set(i, ofItsStem(columns.get(i), columns));
        }
        return List.copyOf(columns);
    }

    /** A column for each state measures what the column for all states does. */
    private static Key ofItsStem(Key key, List<Key> columns) {
        String stem = key.path().replace("_" + STATE, "");
        if (stem.equals(key.path()) || key.kind() == Kind.QUANTITY) {
            return key;
        }
        return columns.stream()
                .filter(k -> k.path().equals(stem))
                .findFirst()
                .map(k ->
                        Key.quantity(key.path(), k.dimension(), k.unit(), k.low(), k.high(), k.fallback(), k.meaning()))
                .orElse(key);
    }
}
