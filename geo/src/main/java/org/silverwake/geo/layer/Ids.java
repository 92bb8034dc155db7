// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.List;
import java.util.Optional;
import org.silverwake.geo.GeoDataException;

/** Chooses the id of each feature: the user's column, else the file's own id, else its place from 1. */
final class Ids {
    private static final double EXACT_IN_DOUBLE = 1L << 53;

    private final Optional<String> column;
    private int missing;

    Ids(Optional<String> column, List<String> columns) {
        this.column = column;
        column.filter(name -> !columns.contains(name)).ifPresent(name -> {
            throw new GeoDataException("there is no id column \"" + name + "\"" + Columns.hint(name, columns));
        });
    }

    String of(RawLayer.Feature feature, int place) {
        if (column.isEmpty()) {
            return feature.fileId().orElse(String.valueOf(place));
        }
        String text = text(feature.attributes().get(column.get()));
        if (!text.isBlank()) {
            return text;
        }
        missing++;
        return "#" + place;
    }

    /** A line for the user where features lack an id. */
    Optional<String> warning() {
        return missing == 0
                ? Optional.empty()
                : Optional.of(missing + " features have no value in the id column \"" + column.orElse("")
                        + "\"; they are named by their place in the file, such as #1");
    }

    /** Values as text: whole numbers without decimals, texts as they are ("001" stays "001"). */
    static String text(Object value) {
        if (value instanceof Double d && d == Math.rint(d) && Math.abs(d) < EXACT_IN_DOUBLE) {
            return String.valueOf(d.longValue());
        }
        return value == null ? "" : String.valueOf(value);
    }
}
