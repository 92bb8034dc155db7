// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.Problems;
import org.silverwake.cli.scenario.ScenarioNode;

/** Reads sheets whose cells are values of keys: a row for each key, or a row for each flow state, outlet, column ... */
final class KeyRows {
    private final SheetLayout layout;
    private final SheetRows rows;
    private final TreeBuilder root;
    private final Problems problems;

    KeyRows(SheetLayout layout, TreeBuilder root, Problems problems) {
        this.layout = layout;
        this.root = root;
        this.problems = problems;
        this.rows = new SheetRows(layout, problems);
    }

    /** Puts everything into the tree; gives the names of named rows, in order. */
    List<String> read() {
        return switch (layout.plan().kind()) {
            case KEYS, MORE -> keys();
            case NAMED -> named();
            case ITEMS -> items();
            case RIVER_COLUMNS -> riverColumns();
            default -> throw new IllegalStateException(layout.plan().id() + " holds no keys");
        };
    }

    private List<String> keys() {
        for (int row : rows.filled()) {
            String name = layout.sheet().cell(row, 0).text();
            if (name.isEmpty()) {
                if (!rows.isBlank(row, Marks.VALUE)) {
                    problems.add(rows.place(row, Marks.VALUE), "holds a value, but column A of its row names no key");
                }
                continue;
            }
            Key key = WorkbookPlan.key(name).orElseGet(() -> Key.word(name, Key.Kind.TEXT, "", ""));
            String where = rows.place(row, Marks.VALUE);
            String text = rows.value(row, Marks.VALUE, key);
            if (text.isEmpty() && !rows.isBlank(row, Marks.UNIT)) {
                problems.add(where + " " + name, "is blank while a unit is given; give the value, or clear the unit");
            }
            root.put(name, where, node(key.path(), where, text));
        }
        return List.of();
    }

    private static ScenarioNode node(String pattern, String where, String text) {
        if (text.isEmpty()) {
            return new ScenarioNode.Blank();
        }
        if (!WorkbookPlan.isList(pattern)) {
            return new ScenarioNode.Single(text);
        }
        return new ScenarioNode.Items(Stream.of(text.split("[;|\\n]"))
                .map(String::strip)
                .filter(item -> !item.isEmpty())
                .map(item -> new ScenarioNode.Item(where, new ScenarioNode.Single(item)))
                .toList());
    }

    private List<String> named() {
        String id = layout.plan().id();
        TreeBuilder section = root.at(id, layout.place(0, 0));
        List<String> names = new ArrayList<>();
        Map<String, NestedItems> nested = new LinkedHashMap<>();
        for (int row : rows.filled()) {
            String name = rows.word(row, "name");
            String where = rows.place(row, "name");
            if (name.isEmpty()) {
                problems.add(where + " " + id, "the name is blank; give each row a name of its own");
                continue;
            }
            if (nested.containsKey(name) && holdsNestedAlone(row)) {
                nested.get(name).add(layout.plan().fields(), rows, row);
                continue;
            }
            names.add(name);
            TreeBuilder own = isPlain() ? section : section.begin(name, where);
            for (Field field : layout.plan().fields()) {
                if (!NestedItems.isNested(field)) {
                    put(row, field, name, own, section);
                }
            }
            nested.computeIfAbsent(name, n -> new NestedItems(own))
                    .add(layout.plan().fields(), rows, row);
        }
        nested.values().forEach(NestedItems::close);
        return Collections.unmodifiableList(names);
    }

    /** Whether a row is a name with one value, as of units, and no branch. */
    private boolean isPlain() {
        return layout.plan().fields().stream()
                .allMatch(f -> f.key().path().equals(layout.plan().id() + ".*"));
    }

    private boolean holdsNestedAlone(int row) {
        return layout.plan().fields().stream().allMatch(f -> NestedItems.isNested(f) || rows.isBlank(row, f.name()));
    }

    /** Into the row's own branch, beside it (units.sack), or into another part of the scenario (discharge per state). */
    private void put(int row, Field field, String name, TreeBuilder own, TreeBuilder section) {
        String id = layout.plan().id();
        String path = field.key().path();
        String where = rows.place(row, field.name());
        ScenarioNode node = leaf(row, field);
        if (path.startsWith(id + ".*.")) {
            own.put(field.name(), where, node);
        } else if (path.equals(id + ".*")) {
            section.leaf(name, where, node);
        } else {
            root.at(path.replace(".*", ""), layout.place(0, 0)).leaf(name, where, node);
        }
    }

    private ScenarioNode leaf(int row, Field field) {
        return node(field.key().path(), rows.place(row, field.name()), rows.value(row, field.name(), field.key()));
    }

    private List<String> items() {
        List<ScenarioNode.Item> items = new ArrayList<>();
        for (int row : rows.filled()) {
            TreeBuilder item = new TreeBuilder();
            for (Field field : layout.plan().fields()) {
                item.put(field.name(), rows.place(row, field.name()), leaf(row, field));
            }
            String first = layout.plan().fields().get(0).name();
            items.add(new ScenarioNode.Item(rows.place(row, first), item.build()));
        }
        if (!items.isEmpty()) {
            root.put(layout.plan().id(), layout.place(0, 0), new ScenarioNode.Items(items));
        }
        return List.of();
    }

    private List<String> riverColumns() {
        TreeBuilder section = root.at(layout.plan().id(), layout.place(0, 0));
        for (int row : rows.filled()) {
            if (Stream.of("column", "unit", "missing").allMatch(column -> rows.isBlank(row, column))) {
                continue;
            }
            String name = rows.word(row, "name");
            String state = rows.word(row, "state");
            String where = rows.place(row, "name");
            if (name.isEmpty()) {
                problems.add(where + " " + layout.plan().id(), "is blank; say what the column holds");
                continue;
            }
            TreeBuilder own = state.isEmpty()
                    ? section.begin(name, where)
                    : section.branch(name, where).begin(state, rows.place(row, "state"));
            for (Field field : layout.plan().fields()) {
                if (!List.of("name", "state").contains(field.name())) {
                    String key = WorkbookPlan.RIVER_COLUMNS + "." + field.name();
                    String place = rows.place(row, field.name());
                    own.leaf(field.name(), place, node(key, place, rows.value(row, field.name(), field.key())));
                }
            }
        }
        return List.of();
    }
}
