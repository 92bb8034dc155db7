// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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
                .min(Comparator.comparingInt((String k) -> distance(wanted, k.toLowerCase(Locale.ROOT)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(k -> distance(wanted, k.toLowerCase(Locale.ROOT)) <= Math.max(2, wanted.length() / 3));
    }

    /** " (did you mean x?)", or nothing. */
    static String meant(String word, Collection<String> known) {
        return nearest(word, known).map(k -> " (did you mean " + k + "?)").orElse("");
    }

    /** Insertions, deletions and changes that turn a into b (Levenshtein). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
