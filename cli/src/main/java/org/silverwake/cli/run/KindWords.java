// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.silverwake.geo.layer.NumberText;
import org.silverwake.model.water.ReachKind;

/** Kinds of reach in the layer's own words, numbers among them; counts words that mean nothing. */
final class KindWords {
    private final Map<String, ReachKind> given;
    private final Map<String, Integer> unknown = new TreeMap<>();

    KindWords(Map<String, ReachKind> given) {
        this.given = given;
    }

    /** The kind that a word means; channel where it means none, or is blank. */
    ReachKind kind(String written) {
        if (written.isBlank()) {
            return ReachKind.CHANNEL;
        }
        Optional<ReachKind> kind = given.entrySet().stream()
                .filter(entry -> isSame(entry.getKey(), written.strip()))
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> ReachKind.find(written));
        if (kind.isEmpty()) {
            unknown.merge(written.strip(), 1, Integer::sum);
        }
        return kind.orElse(ReachKind.CHANNEL);
    }

    private static boolean isSame(String word, String written) {
        OptionalDouble number = NumberText.parse(word);
        OptionalDouble other = NumberText.parse(written);
        return word.strip().equalsIgnoreCase(written)
                || number.isPresent()
                        && other.isPresent()
                        && Double.compare(number.getAsDouble(), other.getAsDouble()) == 0;
    }

    /** Words that mean nothing, and how often they came. */
    Map<String, Integer> unknown() {
        return unknown;
    }
}
