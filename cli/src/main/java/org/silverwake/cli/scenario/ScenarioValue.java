// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.LocalUnits;

/**
 * A value of the scenario that knows its path, where it stands and its {@link Key}. Methods note a problem instead of
 * throwing and then give an empty value; a reader that goes on with placeholders is stopped at the end.
 */
final class ScenarioValue {
    private final String path;
    private final String pattern;
    private final String place;
    private final Optional<ScenarioNode> node;
    private final LocalUnits units;
    private final Problems problems;

    private ScenarioValue(
            String path,
            String pattern,
            String place,
            Optional<ScenarioNode> node,
            LocalUnits units,
            Problems problems) {
        this.path = path;
        this.pattern = pattern;
        this.place = place;
        this.node = node;
        this.units = units;
        this.problems = problems;
    }

    /** The whole scenario, at a place such as "scenario.yaml:1". */
    static ScenarioValue root(String place, ScenarioNode node, Problems problems) {
        return new ScenarioValue("", "", place, Optional.of(node), LocalUnits.none(), problems);
    }

    /** The same value, in which these local units may stand. */
    ScenarioValue withUnits(LocalUnits local) {
        return new ScenarioValue(path, pattern, place, node, local, problems);
    }

    /** Local units that may stand in it. */
    LocalUnits units() {
        return units;
    }

    /** "scenario.yaml:41 flow-states.dry.temperature"; where the key is absent, the place of the map it should be in. */
    String where() {
        return (place + " " + path).strip();
    }

    /** "scenario.yaml:41", without the path. */
    String place() {
        return place;
    }

    boolean isPresent() {
        return node.isPresent() && !node.get().isBlank();
    }

    boolean isScalar() {
        return node.orElse(null) instanceof ScenarioNode.Single;
    }

    boolean isMap() {
        return node.orElse(null) instanceof ScenarioNode.Branch;
    }

    /** Notes a problem with this value. */
    void problem(String text) {
        problems.add(where(), text);
    }

    /** Notes a problem, unless this is a single value, of which {@link #checkKeys} has told already. */
    void problemUnlessScalar(String text) {
        if (!isScalar()) {
            problem(text);
        }
    }

    void warn(String text) {
        problems.warn(where(), text);
    }

    /** The value under a key of the table; absent if it is not there. */
    ScenarioValue at(String key) {
        String known = KeyTable.children(pattern).contains(key) ? key : "*";
        ScenarioNode.Entry entry = entries().get(key);
        return entry == null
                ? child(key, known, place, Optional.empty())
                : child(key, known, entry.where(), Optional.of(entry.value()));
    }

    /** The value at a dotted path below this one. */
    ScenarioValue atPath(String dotted) {
        ScenarioValue value = this;
        for (String key : dotted.split("\\.")) {
            value = value.isPresent() && !value.isMap()
                    ? value.child(key, key, place, Optional.empty())
                    : value.at(key);
        }
        return value;
    }

    /** Notes every key below this one that is unknown or written twice. */
    void checkKeys() {
        if (node.orElse(null) instanceof ScenarioNode.Items) {
            items().forEach(ScenarioValue::checkKeys);
        }
        if (!(node.orElse(null) instanceof ScenarioNode.Branch branch)) {
            checkIsMapWhereDue();
            return;
        }
        Set<String> known = KeyTable.children(pattern);
        Set<String> seen = new HashSet<>();
        for (ScenarioNode.Entry entry : branch.entries()) {
            if (entry.value() instanceof ScenarioNode.Blank) {
                continue;
            }
            String key = entry.key();
            ScenarioValue value = child(key, key, entry.where(), Optional.of(entry.value()));
            if (!seen.add(key)) {
                value.problem(
                        known(key).contains("value")
                                ? "is written twice; keep one, and beside numbers by state or kind give " + value.path
                                        + ".value"
                                : "is written twice; keep one");
            } else if (!known.contains(key) && !known.contains("*")) {
                value.problem("is not a key; " + Nearest.hint(key, known));
            } else {
                at(key).checkKeys();
            }
        }
    }

    /** Names that may stand below a key of this map. */
    private Set<String> known(String key) {
        return KeyTable.children(pattern.isEmpty() ? key : pattern + "." + key);
    }

    private void checkIsMapWhereDue() {
        Set<String> children = KeyTable.children(pattern);
        boolean item = pattern.endsWith(".*") && KeyTable.isKey(pattern.substring(0, pattern.length() - 2));
        if (isScalar() && !children.isEmpty() && !KeyTable.isKey(pattern) && !item) {
            problem("is no map; give a map of " + String.join(", ", shownChildren()));
        }
    }

    /** Keys of this map, in order of the file; empty where this is no map. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        entries().forEach((name, entry) -> {
            if (!entry.value().isBlank()) {
                names.add(name);
            }
        });
        return names;
    }

    /** Items of a list; a single value counts as a list of one. */
    List<ScenarioValue> items() {
        List<ScenarioValue> items = new ArrayList<>();
        if (node.orElse(null) instanceof ScenarioNode.Items list) {
            for (ScenarioNode.Item item : list.items()) {
                items.add(child("[" + (items.size() + 1) + "]", "*", item.where(), Optional.of(item.value())));
            }
        } else if (isPresent()) {
            items.add(this);
        }
        return items;
    }

    /** Text of a scalar that is not blank. */
    Optional<String> text() {
        if (!isPresent()) {
            return Optional.empty();
        }
        if (!(node.get() instanceof ScenarioNode.Single single)) {
            problem("found a " + (isMap() ? "map" : "list") + "; give a single value");
            return Optional.empty();
        }
        String text = single.text().strip();
        if (text.isEmpty()) {
            problem("has no value; " + expected());
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** Text that must be there; a placeholder with a noted problem otherwise. */
    String requireText() {
        if (!isPresent()) {
            missing();
        }
        return text().orElse("");
    }

    /** Texts of a list of scalars. */
    List<String> texts() {
        List<String> texts = new ArrayList<>();
        for (ScenarioValue item : items()) {
            item.text().ifPresent(texts::add);
        }
        return texts;
    }

    /** The single values below this one as a row of a table, by column name. */
    TableRow row(List<String> columns) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String column : columns) {
            at(column.replace('_', '-')).text().ifPresent(text -> cells.put(column, text));
        }
        TablePlaces places = TablePlaces.of(
                this::where, column -> at(column.replace('_', '-')).where());
        return new TableRow(places, new Table.Line(1, cells), DecimalMark.POINT, units, problems);
    }

    /** Quantity in SI. */
    OptionalDouble quantity() {
        Optional<String> text = text();
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(key().read(text.get(), DecimalMark.POINT, units));
        } catch (IllegalArgumentException e) {
            problem(e.getMessage());
            return OptionalDouble.empty();
        }
    }

    /** Quantity in SI that must be there; NaN with a noted problem otherwise. */
    double requireQuantity() {
        if (!isPresent()) {
            missing();
        }
        return quantity().orElse(Double.NaN);
    }

    /** A word of the key's choices. */
    Optional<String> choice() {
        return choiceOf(pattern);
    }

    /** A word of the choices of some key, for items of a list. */
    Optional<String> choiceOf(String listPattern) {
        Optional<String> text = text();
        List<String> choices = KeyTable.require(listPattern).choices();
        if (text.isPresent() && !choices.contains(text.get())) {
            problem("\"" + text.get() + "\" is not known; give " + String.join(" or ", choices));
            return Optional.empty();
        }
        return text;
    }

    /** true or false. */
    boolean flag(boolean fallback) {
        Optional<String> text = text();
        if (text.isPresent() && !text.get().equals("true") && !text.get().equals("false")) {
            problem("\"" + text.get() + "\" is not known; give true or false");
        }
        return text.map("true"::equals).orElse(fallback);
    }

    /** Notes that a required key is not there. */
    void missing() {
        problem("is missing; " + expected());
    }

    private Set<String> shownChildren() {
        Set<String> children = KeyTable.children(pattern);
        return children.contains("*") ? Set.of("names and values") : children;
    }

    private String expected() {
        if (!KeyTable.isKey(pattern)) {
            return "give a map of " + String.join(", ", shownChildren());
        }
        Key key = key();
        return switch (key.kind()) {
            case QUANTITY -> "give " + key.range();
            case CHOICE -> "give " + String.join(" or ", key.choices());
            default -> "give it (" + key.meaning() + ")";
        };
    }

    private Key key() {
        return KeyTable.require(pattern);
    }

    private ScenarioValue child(String key, String known, String at, Optional<ScenarioNode> value) {
        String below = key.startsWith("[") || path.isEmpty() ? path + key : path + "." + key;
        return new ScenarioValue(below, pattern.isEmpty() ? known : pattern + "." + known, at, value, units, problems);
    }

    private Map<String, ScenarioNode.Entry> entries() {
        Map<String, ScenarioNode.Entry> map = new LinkedHashMap<>();
        if (node.orElse(null) instanceof ScenarioNode.Branch branch) {
            branch.entries()
                    .forEach(entry ->
                            map.merge(entry.key(), entry, (a, b) -> a.value().isBlank() ? b : a));
        }
        return map;
    }
}
