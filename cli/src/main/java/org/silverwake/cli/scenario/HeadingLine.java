// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where the headings of a list stand, and what parts its columns.
 *
 * @param text of the list from its headings on
 * @param separator of its columns
 */
record HeadingLine(String text, char separator) {
    private static final List<String> SEPARATORS = List.of(";", "\t", ",");
    private static final int FARTHEST = 20;
    private static final int FEWEST = 2;

    /** The first line of two words or more whose columns the next line has too. */
    static Optional<HeadingLine> find(String text) {
        String[] lines = text.split("\\R", FARTHEST + 2);
        int from = 0;
        for (int i = 0; i + 1 < Math.min(lines.length, FARTHEST); i++) {
            for (String separator : SEPARATORS) {
                int columns = fields(lines[i], separator).length;
                if (words(lines[i], separator) >= FEWEST && fields(lines[i + 1], separator).length == columns) {
                    return Optional.of(new HeadingLine(text.substring(from), separator.charAt(0)));
                }
            }
            from = text.indexOf(lines[i + 1], from + lines[i].length());
        }
        return Optional.empty();
    }

    private static long words(String line, String separator) {
        return Arrays.stream(fields(line, separator))
                .filter(field -> field.matches(".*\\p{L}.*"))
                .count();
    }

    /** Separators in quotes do not count; the quotes of a heading line hold no line break. */
    private static String[] fields(String line, String separator) {
        return line.split(separator + "(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
    }
}
