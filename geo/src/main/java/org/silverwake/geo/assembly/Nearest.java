// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The known word nearest to one that is not known, by the number of letters changed (Levenshtein 1966). */
final class Nearest {
    private Nearest() {}

    static Optional<String> word(String given, List<String> known) {
        String best = null;
        int least = Math.max(2, given.length() / 2) + 1;
        for (String word : known) {
            int changes = changes(given.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (changes < least) {
                least = changes;
                best = word;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int changes(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(above, row[j - 1]) + 1);
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
