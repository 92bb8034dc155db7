// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.model.numerics.EditDistance;

/** Lists and nearest spellings for messages. */
final class Words {
    private Words() {}

    /** "a, b or c". */
    static String list(List<String> words) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    /** The known word nearest to one that is not known, where it is near enough to be meant. */
    static Optional<String> nearest(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        return known.stream()
                .min(Comparator.comparingInt((String k) -> EditDistance.between(wanted, k.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(k ->
                        EditDistance.between(wanted, k.toLowerCase(Locale.ROOT)) <= Math.max(2, wanted.length() / 3));
    }

    /** " (did you mean x?)", or nothing. */
    static String meant(String word, Collection<String> known) {
        return nearest(word, known).map(k -> " (did you mean " + k + "?)").orElse("");
    }
}
