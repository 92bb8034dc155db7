// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Collects what is wrong and what deserves a warning while a scenario is read; nothing is thrown before the end. */
public final class Problems {
    private static final Pattern LINE = Pattern.compile("([^:]*)(?::(\\d{1,9})\\b.*)?.*", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("([^:]*)![A-Z]{1,3}(\\d{1,9})\\b.*", Pattern.DOTALL);

    private final List<Problem> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    /** Notes a problem at a place such as "scenario.yaml:41 release" or "Sites!F12 release". */
    public void add(String where, String text) {
        problems.add(Problem.at(where, where + ": " + text));
    }

    /** Notes what deserves a second look but stops nothing. */
    public void warn(String where, String text) {
        warnings.add(where + ": " + text);
    }

    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** Throws everything collected, if anything, by file and line, or sheet and row. */
    void requireNone() {
        if (!problems.isEmpty()) {
            List<String> sources =
                    problems.stream().map(Problem::source).distinct().toList();
            throw new ScenarioException(problems.stream()
                    .sorted(Comparator.<Problem>comparingInt(p -> sources.indexOf(p.source()))
                            .thenComparingInt(Problem::line))
                    .map(Problem::text)
                    .distinct()
                    .toList());
        }
    }

    /** A problem with the file or sheet it is in, and its line there (0 where it has none). */
    private record Problem(String source, int line, String text) {
        static Problem at(String where, String text) {
            Matcher cell = CELL.matcher(where);
            Matcher place = cell.matches() ? cell : LINE.matcher(where);
            boolean found = place.matches() && place.group(2) != null;
            return new Problem(
                    place.matches() ? place.group(1) : where, found ? Integer.parseInt(place.group(2)) : 0, text);
        }
    }
}
