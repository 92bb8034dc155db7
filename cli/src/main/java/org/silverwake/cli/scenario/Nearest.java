// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Collection;
import java.util.Optional;
import org.silverwake.model.numerics.EditDistance;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /** "nearest known is x" if one is near, else the whole list; for the end of a message. */
    public static String hint(String word, Collection<String> known) {
        Optional<String> near = find(word, known);
        return near.map(n -> "the nearest known one is " + n)
                .orElseGet(() -> "known here: " + String.join(", ", known));
    }

    /** The known word that starts like this one or differs least, within half its letters. */
    public static Optional<String> find(String word, Collection<String> known) {
        String best = null;
        int least = Math.max(2, word.length() / 2) + 1;
        for (String candidate : known) {
            int distance = isPart(word, candidate) ? 0 : EditDistance.between(word, candidate);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** One begins with the other, or the known word ends in it after a hyphen; short ones begin too many words. */
    private static boolean isPart(String word, String known) {
        return word.length() > 1 && (known.startsWith(word) || known.endsWith("-" + word))
                || known.length() > 2 && word.startsWith(known);
    }
}
