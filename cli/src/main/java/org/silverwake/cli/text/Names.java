// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.text;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/** Names and words: several in a sentence, and as they are compared. */
public final class Names {
    private Names() {}

    /**
     * "a, b and 3 more".
     *
     * @param most how many are named
     */
    public static String first(List<String> names, int most) {
        int more = names.size() - most;
        return String.join(", ", names.subList(0, Math.min(most, names.size())))
                + (more > 0 ? " and " + more + " more" : "");
    }

    /** Lower case, without accents. */
    public static String fold(String text) {
        return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "");
    }
}
