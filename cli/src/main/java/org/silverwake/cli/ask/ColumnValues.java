// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/**
 * A look at the values of one column.
 *
 * @param filled features that have a value
 * @param texts different values as text, in file order
 * @param numbers values that are numbers, codes for missing left out
 * @param missing negative numbers such as -9999 beside others that are not negative
 * @param isNumeric whether every value is a number
 */
record ColumnValues(int filled, Set<String> texts, List<Double> numbers, List<String> missing, boolean isNumeric) {
    private static final double CODE = -900;
    private static final int EXAMPLES = 3;

    static ColumnValues of(VectorLayer layer, String column) {
        Set<String> texts = new LinkedHashSet<>();
        List<Double> all = new ArrayList<>();
        int filled = 0;
        boolean numeric = true;
        for (LayerFeature feature : layer.features()) {
            Object value = feature.attributes().get(column);
            if (value == null || value.toString().isBlank()) {
                continue;
            }
            filled++;
            texts.add(value.toString().strip());
            if (value instanceof Number number) {
                all.add(number.doubleValue());
            } else {
                numeric = false;
            }
        }
        List<Double> numbers = new ArrayList<>();
        Set<Double> codes = new TreeSet<>();
        boolean others = all.stream().anyMatch(v -> v >= 0);
        for (double value : all) {
            if (value <= CODE && others && value == Math.rint(value)) {
                codes.add(value);
            } else {
                numbers.add(value);
            }
        }
        List<String> missing =
                codes.stream().map(code -> String.valueOf(code.longValue())).toList();
        return new ColumnValues(filled, texts, numbers, missing, numeric && filled > 0);
    }

    boolean allDiffer(int features) {
        return filled == features && texts.size() == features;
    }

    double low() {
        return numbers.stream().mapToDouble(v -> v).min().orElse(Double.NaN);
    }

    double high() {
        return numbers.stream().mapToDouble(v -> v).max().orElse(Double.NaN);
    }

    /** "80 values, all different: L001, L002 ..." or "3.2 to 2497". */
    String words(int features) {
        String codes = missing.isEmpty() ? "" : "; " + String.join(", ", missing) + " means missing";
        String gaps = filled < features ? "; blank in " + (features - filled) + " of " + features : "";
        if (isNumeric && !allDiffer(features)) {
            return Numbers.shown(low(), 4) + " to " + Numbers.shown(high(), 4) + codes + gaps;
        }
        String examples = String.join(", ", texts.stream().limit(EXAMPLES).toList());
        if (texts.size() == 1) {
            return "always " + examples + gaps;
        }
        String count = allDiffer(features) ? "all different" : texts.size() + " different values";
        return count + ": " + examples + (texts.size() > EXAMPLES ? " ..." : "") + gaps;
    }
}
