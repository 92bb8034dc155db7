// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Names of columns in messages to the user. */
final class Columns {
    private static final int LISTED = 30;

    private Columns() {}

    /** The end of a message about a column that is not there: the nearest name, and all names. */
    static String hint(String wanted, List<String> columns) {
        if (columns.isEmpty()) {
            return "; the layer has no columns";
        }
        String near = nearest(wanted, columns)
                .map(name -> "; nearest is \"" + name + "\"")
                .orElse("");
        String more = columns.size() > LISTED ? ", ... (" + columns.size() + " in all)" : "";
        return near + "; the columns are " + String.join(", ", columns.subList(0, Math.min(LISTED, columns.size())))
                + more;
    }

    /** The column that takes the fewest changes of letters, if those are fewer than half of them. */
    static Optional<String> nearest(String wanted, List<String> columns) {
        String best = null;
        int fewest = Math.max(wanted.length() / 2, 1) + 1;
        for (String column : columns) {
            int changes = changes(wanted.toLowerCase(Locale.ROOT), column.toLowerCase(Locale.ROOT));
            if (changes < fewest) {
                fewest = changes;
                best = column;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int changes(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[b.length()];
    }
}
