// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.model.quantity.DecimalMark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A value of the scenario file that knows its path, its line and its {@link Key}. Methods note a problem instead of
 * throwing and then give an empty value; a reader that goes on with placeholders is stopped at the end.
 */
final class YamlValue {
    private final String file;
    private final String path;
    private final String pattern;
    private final int line;
    private final Optional<Node> node;
    private final Problems problems;

    private YamlValue(String file, String path, String pattern, int line, Optional<Node> node, Problems problems) {
        this.file = file;
        this.path = path;
        this.pattern = pattern;
        this.line = line;
        this.node = node;
        this.problems = problems;
    }

    /** The whole file. */
    static YamlValue root(String file, Node node, Problems problems) {
        return new YamlValue(file, "", "", 1, Optional.of(node), problems);
    }

    /** "scenario.yaml:41 flow-states.dry.temperature"; where the key is absent, the line of the map it should be in. */
    String where() {
        return (file + ":" + line + " " + path).strip();
    }

    /** Name of the scenario file. */
    String file() {
        return file;
    }

    /** Its line, 1 is the first. */
    int line() {
        return line;
    }

    boolean isPresent() {
        return node.isPresent();
    }

    boolean isScalar() {
        return node.orElse(null) instanceof ScalarNode;
    }

    boolean isMap() {
        return node.orElse(null) instanceof MappingNode;
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
    YamlValue at(String key) {
        String known = KeyTable.children(pattern).contains(key) ? key : "*";
        NodeTuple entry = entries().get(key);
        return entry == null
                ? child(key, known, line, Optional.empty())
                : child(key, known, lineOf(entry.getKeyNode()), Optional.of(entry.getValueNode()));
    }

    /** The value at a dotted path below this one. */
    YamlValue atPath(String dotted) {
        YamlValue value = this;
        for (String key : dotted.split("\\.")) {
            value = value.isPresent() && !value.isMap() ? value.child(key, key, line, Optional.empty()) : value.at(key);
        }
        return value;
    }

    /** Notes every key below this one that is unknown or written twice. */
    void checkKeys() {
        if (node.orElse(null) instanceof SequenceNode) {
            items().forEach(YamlValue::checkKeys);
        }
        if (!(node.orElse(null) instanceof MappingNode mapping)) {
            checkIsMapWhereDue();
            return;
        }
        Set<String> known = KeyTable.children(pattern);
        Set<String> seen = new HashSet<>();
        for (NodeTuple tuple : mapping.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
            YamlValue value = child(key, key, lineOf(tuple.getKeyNode()), Optional.of(tuple.getValueNode()));
            if (!seen.add(key)) {
                value.problem("is written twice; keep one");
            } else if (!known.contains(key) && !known.contains("*")) {
                value.problem("is not a key; " + Nearest.hint(key, known));
            } else {
                at(key).checkKeys();
            }
        }
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
        return entries().keySet();
    }

    /** Items of a list; a single value counts as a list of one. */
    List<YamlValue> items() {
        List<YamlValue> items = new ArrayList<>();
        if (node.orElse(null) instanceof SequenceNode sequence) {
            for (Node item : sequence.getValue()) {
                items.add(child("[" + (items.size() + 1) + "]", "*", lineOf(item), Optional.of(item)));
            }
        } else if (isPresent()) {
            items.add(this);
        }
        return items;
    }

    /** Text of a scalar that is not blank. */
    Optional<String> text() {
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (!(node.get() instanceof ScalarNode scalar)) {
            problem("found a " + (isMap() ? "map" : "list") + "; give a single value");
            return Optional.empty();
        }
        String text = scalar.getValue().strip();
        if (text.isEmpty()) {
            problem("has no value; " + expected());
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** Text that must be there; a placeholder with a noted problem otherwise. */
    String requireText() {
        if (node.isEmpty()) {
            missing();
        }
        return text().orElse("");
    }

    /** Texts of a list of scalars. */
    List<String> texts() {
        List<String> texts = new ArrayList<>();
        for (YamlValue item : items()) {
            item.text().ifPresent(texts::add);
        }
        return texts;
    }

    /** Quantity in SI. */
    OptionalDouble quantity() {
        Optional<String> text = text();
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(key().read(text.get(), DecimalMark.POINT));
        } catch (IllegalArgumentException e) {
            problem(e.getMessage());
            return OptionalDouble.empty();
        }
    }

    /** Quantity in SI that must be there; NaN with a noted problem otherwise. */
    double requireQuantity() {
        if (node.isEmpty()) {
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

    private YamlValue child(String key, String known, int at, Optional<Node> value) {
        String below = key.startsWith("[") || path.isEmpty() ? path + key : path + "." + key;
        return new YamlValue(file, below, pattern.isEmpty() ? known : pattern + "." + known, at, value, problems);
    }

    private int lineOf(Node value) {
        return value.getStartMark().map(mark -> mark.getLine() + 1).orElse(line);
    }

    private Map<String, NodeTuple> entries() {
        Map<String, NodeTuple> map = new LinkedHashMap<>();
        if (node.orElse(null) instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key) {
                    map.putIfAbsent(key.getValue(), tuple);
                }
            }
        }
        return map;
    }
}
