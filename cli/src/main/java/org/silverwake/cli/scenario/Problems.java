// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong and what deserves a warning while a scenario is read; nothing is thrown before the end. */
final class Problems {
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    /** Notes a problem at a place such as "scenario.yaml:41 release". */
    void add(String where, String text) {
        problems.add(where + ": " + text);
    }

    void warn(String where, String text) {
        warnings.add(where + ": " + text);
    }

    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** Throws everything collected, if anything, by file and line. */
    void requireNone() {
        if (!problems.isEmpty()) {
            List<String> files =
                    problems.stream().map(Problems::file).distinct().toList();
            throw new ScenarioException(problems.stream()
                    .sorted(Comparator.<String>comparingInt(p -> files.indexOf(file(p)))
                            .thenComparingInt(Problems::line))
                    .distinct()
                    .toList());
        }
    }

    private static String file(String problem) {
        return problem.split(":")[0];
    }

    private static int line(String problem) {
        String rest = problem.substring(file(problem).length());
        return rest.matches(":\\d{1,9}\\b.*") ? Integer.parseInt(rest.replaceAll(":(\\d+).*", "$1")) : 0;
    }
}
