// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Ratios as a page of docs/validation prints them: one row of a table each, by its name. The page is what a test holds to. */
record PrintedBands(String page, List<String> lines) {
    /** PINNED: what this version finds; three decimals are printed. */
    private static final double PINNED = 0.005;

    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    static PrintedBands of(String page) {
        try {
            return new PrintedBands(
                    page, Files.readAllLines(Path.of("..", "docs", "validation", page), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Requires that the page prints these ratios in the row of that name. */
    void require(String name, Ratios found) {
        String start = "| " + name + " |";
        String row = String.format(
                Locale.ROOT,
                "%s %d | %.3f | %.3f to %.3f | %.3f |",
                start,
                found.count(),
                found.median(),
                found.tenth(),
                found.ninetieth(),
                found.logSpread());
        String printed = lines.stream()
                .filter(line -> line.startsWith(start))
                .findFirst()
                .orElse("");
        double[] numbers = NUMBER.matcher(printed.isEmpty() ? "" : printed.substring(start.length()))
                .results()
                .mapToDouble(match -> Double.parseDouble(match.group()))
                .toArray();
        assertThat(numbers).as(page + " prints other than " + row).hasSize(5);
        double[] expected = {found.count(), found.median(), found.tenth(), found.ninetieth(), found.logSpread()};
        for (int k = 0; k < expected.length; k++) {
            assertThat(numbers[k])
                    .as(page + " prints other than " + row)
                    .isCloseTo(expected[k], within(k == 0 ? 0 : PINNED));
        }
    }
}
