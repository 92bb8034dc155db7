// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * A line such as "drainage area = AREA_SQKM km2" or "river name = none": what a column is to be taken for.
 *
 * @param what one of those that were offered
 * @param column one that is there; empty where none is meant
 * @param unit of its values, where one was typed
 */
record ColumnChange(String what, Optional<String> column, Optional<String> unit) {
    private static final String NONE = "none";

    /**
     * Reads a line; large and small letters, quotes, and blanks for underscores make no difference.
     *
     * @param offered what a column may be
     * @param columns that are there
     * @throws IllegalArgumentException in words for the user
     */
    static ColumnChange parse(String line, Collection<String> offered, Collection<String> columns) {
        String[] sides = line.split("[=:]", 2);
        Optional<String> what = offered.stream()
                .filter(each -> plain(each).equals(plain(sides[0])))
                .findFirst();
        if (sides.length < 2 || what.isEmpty()) {
            throw new IllegalArgumentException(
                    "give one of " + String.join(", ", offered) + ", then =, then a column and its unit, or none");
        }
        String answer = sides[1].replaceAll("[\"']", "").strip();
        if (answer.equalsIgnoreCase(NONE)) {
            return new ColumnChange(what.get(), Optional.empty(), Optional.empty());
        }
        String column = columns.stream()
                .filter(each -> begins(answer, each))
                .max(Comparator.comparingInt(String::length))
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no column \"" + answer + "\"; columns are " + String.join(", ", columns)));
        String unit =
                answer.substring(column.length()).replaceAll("[()\\[\\],]", "").strip();
        return new ColumnChange(what.get(), Optional.of(column), unit.isEmpty() ? Optional.empty() : Optional.of(unit));
    }

    private static boolean begins(String answer, String column) {
        return answer.length() >= column.length()
                && plain(answer.substring(0, column.length())).equals(plain(column))
                && (answer.length() == column.length() || " ,([".indexOf(answer.charAt(column.length())) >= 0);
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "_");
    }
}
