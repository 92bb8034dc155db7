// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Collects what is wrong and what deserves a warning while a scenario is read; nothing is thrown before the end. */
public final class Problems {
    private static final Pattern LINE = Pattern.compile("([^:]*)(?::(\\d{1,9})\\b.*)?.*", Pattern.DOTALL);
    private static final Pattern CELL = Pattern.compile("([^:]*)!([A-Z]{1,3}\\d{1,9})\\b.*", Pattern.DOTALL);

    private final List<Problem> problems = new ArrayList<>();
    private final List<String> order = new ArrayList<>();
    private final Set<String> spoiled = new HashSet<>();
    private final List<String> warnings = new ArrayList<>();

    /** Tells in which order problems are given, by the file or sheet they are in; others come behind. */
    public void inOrderOf(List<String> files) {
        order.addAll(files);
    }

    /** Notes a problem at a place such as "scenario.yaml:41 release" or "Sites!F12 release". */
    public void add(String where, String text) {
        if (!spoiled.contains(cell(where))) {
            problems.add(Problem.at(where, where + ": " + text));
        }
    }

    /** Notes a problem with a cell that cannot be read at all; what else would be said of that cell is left out. */
    public void addAlone(String cell, String text) {
        add(cell, text);
        silence(cell);
    }

    /** Leaves out what would be said of a cell, since the cause has been told elsewhere. */
    public void silence(String cell) {
        spoiled.add(cell(cell));
    }

    /** Notes what deserves a second look but stops nothing. */
    public void warn(String where, String text) {
        warnings.add(where + ": " + text);
    }

    boolean isNone() {
        return problems.isEmpty();
    }

    List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** Throws everything collected, if anything, by file and line, or sheet and row. */
    void requireNone() {
        if (!problems.isEmpty()) {
            List<String> sources = Stream.concat(
                            order.stream(), problems.stream().map(Problem::source))
                    .distinct()
                    .toList();
            throw new ScenarioException(problems.stream()
                    .sorted(Comparator.<Problem>comparingInt(p -> sources.indexOf(p.source()))
                            .thenComparingInt(Problem::line))
                    .map(Problem::text)
                    .distinct()
                    .toList());
        }
    }

    /** "Sites!F12" of "Sites!F12 release"; the whole where it names no cell. */
    private static String cell(String where) {
        Matcher cell = CELL.matcher(where);
        return cell.matches() ? cell.group(1) + "!" + cell.group(2) : where;
    }

    /** A problem with the file or sheet it is in, and its line there (0 where it has none). */
    private record Problem(String source, int line, String text) {
        static Problem at(String where, String text) {
            Matcher cell = CELL.matcher(where);
            Matcher place = cell.matches() ? cell : LINE.matcher(where);
            boolean found = place.matches() && place.group(2) != null;
            String line = found ? place.group(2).replaceAll("[A-Z]", "") : "0";
            return new Problem(place.matches() ? place.group(1) : where, Integer.parseInt(line), text);
        }
    }
}
