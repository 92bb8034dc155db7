// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.model.numerics.EditDistance;

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
            int changes = EditDistance.between(wanted.toLowerCase(Locale.ROOT), column.toLowerCase(Locale.ROOT));
            if (changes < fewest) {
                fewest = changes;
                best = column;
            }
        }
        return Optional.ofNullable(best);
    }
}
