// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.NumberText;
import org.silverwake.geo.layer.VectorLayer;

/** Reads the mapped columns of a layer into SI numbers; all problems are reported together. */
final class AttributeReader {
    /** What one feature gives. */
    record Values(Optional<String> name, Map<String, Double> numbers, Map<String, String> texts) {}

    private static final int SHOWN = 10;

    private final VectorLayer layer;
    private final List<String> problems = new ArrayList<>();

    private AttributeReader(VectorLayer layer) {
        this.layer = layer;
    }

    static List<Values> read(VectorLayer layer, AssemblyOptions options) {
        AttributeReader reader = new AttributeReader(layer);
        options.nameColumn().ifPresent(column -> reader.requireColumn("rivers.name", column));
        options.columns().forEach(c -> reader.requireColumn("rivers.columns." + c.key(), c.column()));
        reader.throwProblems();
        List<Values> values = new ArrayList<>();
        for (LayerFeature feature : layer.features()) {
            values.add(reader.values(feature, options));
        }
        reader.throwProblems();
        return values;
    }

    private void requireColumn(String key, String column) {
        if (!layer.columns().contains(column)) {
            String nearest = Nearest.word(column, layer.columns())
                    .map(name -> "; did you mean " + name + "?")
                    .orElse("");
            problems.add(where() + ": " + key + " names column " + column
                    + ", which the layer does not have; its columns are " + DefectLog.names(layer.columns()) + nearest);
        }
    }

    private String where() {
        return name(layer);
    }

    /** Name of a layer's file for messages. */
    static String name(VectorLayer layer) {
        return layer.label();
    }

    private Values values(LayerFeature feature, AssemblyOptions options) {
        Map<String, Double> numbers = new HashMap<>();
        Map<String, String> texts = new HashMap<>();
        for (AssemblyOptions.ColumnMapping column : options.columns()) {
            Object value = feature.attributes().get(column.column());
            if (value == null || NumberText.isMissing(value, column.missing())) {
                continue;
            }
            if (column.isText()) {
                texts.put(column.key(), value.toString().trim());
            } else {
                number(feature, column, value).ifPresent(v -> numbers.put(column.key(), v * column.toSi()));
            }
        }
        Optional<String> name = options.nameColumn()
                .map(column -> feature.attributes().get(column))
                .map(value -> value.toString().trim())
                .filter(text -> !text.isEmpty());
        return new Values(name, numbers, texts);
    }

    private OptionalDouble number(LayerFeature feature, AssemblyOptions.ColumnMapping column, Object value) {
        OptionalDouble number = NumberText.parse(value.toString().trim());
        String found = where() + ": feature " + feature.id() + ", column " + column.column() + " (" + column.key()
                + "): \"" + value + "\"";
        if (number.isEmpty()) {
            problems.add(found + " is not a number; write it as 1234.5, or list it under missing");
            return number;
        }
        if (Double.isNaN(number.getAsDouble()) || Double.isInfinite(number.getAsDouble())) {
            return OptionalDouble.empty();
        }
        if (number.getAsDouble() < 0 && !column.key().startsWith("elevation")) {
            problems.add(found + " is negative; give 0 or more, or list it under missing");
        }
        return number;
    }

    private void throwProblems() {
        if (problems.isEmpty()) {
            return;
        }
        List<String> lines = new ArrayList<>(problems.subList(0, Math.min(SHOWN, problems.size())));
        if (problems.size() > SHOWN) {
            lines.add("and " + (problems.size() - SHOWN) + " more like these");
        }
        throw new GeoDataException(String.join("\n", lines));
    }
}
