// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.scenario.ScenarioNode;

/**
 * Lists within a named row, such as the ranges of a class of reaches: each row holds one item, and further rows of the same
 * name hold further ones.
 */
final class NestedItems {
    private static final String EACH = ".*.";

    private final TreeBuilder owner;
    private final Map<String, List<ScenarioNode.Item>> lists = new LinkedHashMap<>();

    NestedItems(TreeBuilder owner) {
        this.owner = owner;
    }

    static boolean isNested(Field field) {
        return field.name().contains(EACH);
    }

    /** Takes the items of a row. */
    void add(List<Field> fields, SheetRows rows, int row) {
        Map<String, TreeBuilder> items = new LinkedHashMap<>();
        Map<String, String> places = new LinkedHashMap<>();
        for (Field field : fields) {
            if (isNested(field) && !rows.isBlank(row, field.name())) {
                String list = field.name().substring(0, field.name().indexOf(EACH));
                String place = rows.place(row, field.name());
                places.putIfAbsent(list, place);
                items.computeIfAbsent(list, l -> new TreeBuilder())
                        .put(
                                field.name().substring(list.length() + EACH.length()),
                                place,
                                new ScenarioNode.Single(rows.value(row, field.name(), field.key())));
            }
        }
        items.forEach((list, item) -> lists.computeIfAbsent(list, l -> new ArrayList<>())
                .add(new ScenarioNode.Item(places.get(list), item.build())));
    }

    /** Puts the lists where they belong, once all rows are read. */
    void close() {
        lists.forEach((list, items) -> owner.put(list, items.get(0).where(), new ScenarioNode.Items(items)));
    }
}
