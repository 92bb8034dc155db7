// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.model.numerics.EditDistance;

/** The known word nearest to one that is not known, by the number of letters changed (Levenshtein 1966). */
final class Nearest {
    private Nearest() {}

    static Optional<String> word(String given, List<String> known) {
        String best = null;
        int least = Math.max(2, given.length() / 2) + 1;
        for (String word : known) {
            int changes = EditDistance.between(given.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (changes < least) {
                least = changes;
                best = word;
            }
        }
        return Optional.ofNullable(best);
    }
}
