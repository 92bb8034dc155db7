// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.silverwake.cli.laboratory.Category;
import org.silverwake.cli.laboratory.LabRow;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.cli.laboratory.RowCells;
import org.silverwake.cli.laboratory.RowReader;
import org.silverwake.cli.laboratory.Vocabulary;
import org.silverwake.cli.scenario.ScenarioInput.Position;

/**
 * Tables of laboratories. A file that cannot be read, a column that is named and not there, or a word that means nothing
 * stops the run, as everywhere: the scenario is wrong. A row that is not understood does not: the officer cannot mend what a
 * laboratory sent, and the other rows stand. It is listed as refused, with its reason, and counted in a warning.
 */
final class SamplesSection {
    private final ScenarioValue section;
    private final Sources sources;
    private final StateNames states;
    private final Problems problems;
    private final Map<String, Position> stations = new HashMap<>();
    private final List<Sample> samples = new ArrayList<>();
    private final Map<List<Object>, String> seen = new HashMap<>();
    private final List<String> notes = new ArrayList<>();

    SamplesSection(ScenarioValue section, Sources sources, StateNames states, Problems problems) {
        this.section = section;
        this.sources = sources;
        this.states = states;
        this.problems = problems;
    }

    /**
     * Reads all tables.
     *
     * @param places positions by name of place, gauge or site, which a row's station may name
     */
    List<Sample> read(Map<String, Position> places) {
        places.forEach((name, position) -> stations.put(Table.columnName(name), position));
        sources.table("stations", section.at("stations")).ifPresent(this::stations);
        group(section);
        ScenarioValue more = section.at("more");
        if (more.isPresent() && !more.isMap()) {
            more.problemUnlessScalar("is a list; give a map of names, each with its file");
        }
        more.names().forEach(name -> group(more.at(name)));
        if (section.isPresent()
                && !section.at("file").isPresent()
                && more.names().isEmpty()
                && sources.written("samples").isEmpty()) {
            section.problemUnlessScalar("names no table; give samples.file, or leave samples out");
        }
        warn();
        return List.copyOf(samples);
    }

    private void stations(Table table) {
        List<String> known = new ArrayList<>(SampleColumns.LOCATION);
        known.addAll(List.of("name", "note"));
        Table checked = table.checkColumns(new java.util.LinkedHashSet<>(known), List.of("name"), problems);
        java.util.Set<String> names = new java.util.HashSet<>();
        for (TableRow row : checked.read(problems)) {
            stations.put(Table.columnName(row.requireName(names)), row.position());
        }
    }

    /** Files that share columns and words. */
    private void group(ScenarioValue group) {
        Map<String, List<String>> columns = new LinkedHashMap<>();
        for (String name : group.at("columns").names()) {
            columns.put(
                    known(group.at("columns").at(name), name),
                    group.at("columns").at(name).texts());
        }
        Map<String, String> fixed = new LinkedHashMap<>();
        for (String name : group.at("fixed").names()) {
            group.at("fixed")
                    .at(name)
                    .text()
                    .ifPresent(t -> fixed.put(known(group.at("fixed").at(name), name), t));
        }
        Vocabulary words = words(group.at("words"));
        fixed.forEach((column, text) -> checkFixed(group.at("fixed"), column, text, words));
        if (group != section && !group.at("file").isPresent()) {
            group.problemUnlessScalar("names no table; give file");
        }
        if (group == section) {
            sources.written("samples").ifPresent(table -> table(table, columns, fixed, words));
        }
        for (ScenarioValue file : group.at("file").items()) {
            sources.file("samples", file).ifPresent(table -> table(table, columns, fixed, words));
        }
    }

    private String known(ScenarioValue value, String name) {
        String column = Table.columnName(name);
        if (!SampleColumns.known().contains(column)) {
            value.problem("is not a column of samples; " + Nearest.hint(column, SampleColumns.known()));
        }
        return column;
    }

    /** A word that means nothing would refuse every row: that is a mistake of the scenario. */
    private static void checkFixed(ScenarioValue fixed, String column, String text, Vocabulary words) {
        Stream.of(Category.values())
                .filter(c -> c != Category.QUALIFIER && c.column().equals(column))
                .filter(c -> !words.isKnown(c, text))
                .forEach(c -> fixed.at(column)
                        .problem("\"" + text + "\" is not known; give one of " + String.join(", ", words.meanings(c))
                                + ", or say under words what it means"));
    }

    private Vocabulary words(ScenarioValue map) {
        Vocabulary words = Vocabulary.of(states.names());
        for (String word : map.names()) {
            Optional<String> meanings = map.at(word).text();
            try {
                meanings.ifPresent(m -> words.add(word, m));
            } catch (IllegalArgumentException e) {
                map.at(word).problem(e.getMessage());
            }
        }
        return words;
    }

    private void table(Table table, Map<String, List<String>> wanted, Map<String, String> fixed, Vocabulary words) {
        SampleColumns columns = SampleColumns.of(table, wanted, fixed, problems);
        if (!columns.has("value")) {
            problems.add(
                    table.places().heading("value"),
                    "no column holds the results; say under samples.columns.value which one does");
            return;
        }
        for (Table.Line line : table.rows()) {
            RowCells cells = columns.cells(line, table);
            samples.add(sample(table, line, cells, words));
        }
    }

    private Sample sample(Table table, Table.Line line, RowCells cells, Vocabulary words) {
        String where = table.places().row(line.line());
        LabRow row = RowReader.read(cells, words);
        Problems own = new Problems();
        Optional<Position> position = position(table, line, cells, row, own);
        String unplaced = "";
        notes.addAll(own.warnings());
        try {
            own.requireNone();
            if (position.isEmpty()) {
                unplaced = row.station().isEmpty()
                        ? "has no position: give coordinates, or the name of a place in the column station"
                        : "has no position, and no place, gauge, site or station is named \"" + row.station() + "\"";
            }
        } catch (ScenarioException e) {
            position = Optional.empty();
            unplaced = String.join("; ", e.problems()).replace(where + " ", "");
        }
        Sample sample = new Sample(where, row, position, unplaced, cells.first("river"));
        return twin(sample)
                .map(other -> new Sample(
                        where,
                        row.without(Standing.LEFT_OUT, "the same in everything but its code as " + other),
                        sample.position(),
                        sample.unplaced(),
                        sample.river()))
                .orElse(sample);
    }

    private Optional<Position> position(Table table, Table.Line line, RowCells cells, LabRow row, Problems own) {
        Map<String, String> location = new HashMap<>();
        for (String column : SampleColumns.LOCATION) {
            cells.first(column).ifPresent(text -> location.put(column, text));
        }
        if (location.isEmpty()) {
            return Optional.ofNullable(stations.get(Table.columnName(row.station())));
        }
        Table.Line placed = new Table.Line(line.line(), location);
        return Optional.of(new TableRow(table.places(), placed, table.mark(), table.units(), own).position());
    }

    /** An understood row before this one that says the same of the same place and day. */
    private Optional<String> twin(Sample sample) {
        LabRow row = sample.row();
        boolean placed = sample.position().isPresent() || !row.station().isEmpty();
        if (row.finding().isEmpty() || row.date().isEmpty() || !placed) {
            return Optional.empty();
        }
        List<Object> key = List.of(
                row.station(),
                sample.position(),
                row.date(),
                row.time(),
                row.state(),
                row.finding().get(),
                row.fish(),
                row.written());
        return Optional.ofNullable(seen.putIfAbsent(key, sample.where()));
    }

    private void warnOf(List<Sample> some, String text) {
        if (!some.isEmpty()) {
            int more = some.size() - 1;
            problems.warn(
                    some.get(0).where(), text + (more > 0 ? " (and so in " + more + " more rows of samples)" : ""));
        }
    }

    private void warn() {
        if (!notes.isEmpty()) {
            String first = notes.get(0);
            int text = first.indexOf(": ");
            int more = notes.size() - 1;
            problems.warn(
                    first.substring(0, text),
                    first.substring(text + 2) + (more > 0 ? " (and so in " + more + " more rows of samples)" : ""));
        }
        warnOf(
                samples.stream()
                        .filter(s -> s.row().said().stream().anyMatch(t -> t.startsWith(LabRow.ABOVE_SOLUBILITY)))
                        .toList(),
                LabRow.ABOVE_SOLUBILITY + "; right beside a leach tank, where cyanide holds mercury in solution, that"
                        + " may be; else check the unit");
        long refused = samples.stream()
                .filter(s -> s.row().standing() == Standing.REFUSED)
                .count();
        if (refused > 0) {
            problems.warn(
                    "samples",
                    refused + " of " + samples.size()
                            + " rows are refused, each with its reason in samples.csv; the others are used");
        }
    }
}
