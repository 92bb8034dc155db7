// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.SourceFile;

/** Finds the files a scenario names, relative to its folder, and remembers them for the record of the run. */
final class Sources {
    private final Path folder;
    private final PointTable points;
    private final Problems problems;
    private final Map<String, Table> written;
    private final List<SourceFile> files = new ArrayList<>();

    Sources(Path folder, PointTable points, Map<String, Table> written, Problems problems) {
        this.folder = folder;
        this.points = points;
        this.written = Map.copyOf(written);
        this.problems = problems;
    }

    /** Remembers a file that was read otherwise. */
    void add(String role, Path name) {
        files.add(new SourceFile(role, name));
    }

    /** The file named by a value; empty where the key is absent, or with a noted problem where the file is. */
    Optional<Path> find(String role, ScenarioValue value) {
        Optional<String> name = value.text();
        if (name.isEmpty()) {
            return Optional.empty();
        }
        try {
            Path file = folder.resolve(name.get()).normalize();
            if (Files.isRegularFile(file)) {
                files.add(new SourceFile(role, Path.of(name.get())));
                return Optional.of(file);
            }
            value.problem("there is no file " + name.get() + "; give a path from the scenario's folder");
        } catch (InvalidPathException e) {
            value.problem("\"" + name.get() + "\" is not a path; give a path from the scenario's folder");
        }
        return Optional.empty();
    }

    /**
     * The table of a role: written in the scenario file itself, or named by a value. Empty where there is none, or with a
     * noted problem where it cannot be read or is there twice.
     */
    Optional<Table> table(String role, ScenarioValue value) {
        Optional<Table> own = written(role);
        if (own.isPresent() && value.isPresent()) {
            value.problem("stands beside the rows of sheet " + role + "; keep one of them");
            return Optional.empty();
        }
        return own.map(table -> table.withUnits(value.units())).or(() -> file(role, value));
    }

    /** The table that is written in the scenario file itself. */
    Optional<Table> written(String role) {
        return Optional.ofNullable(written.get(role));
    }

    /** The table named by a value; empty where the key is absent, or with a noted problem where it cannot be read. */
    Optional<Table> file(String role, ScenarioValue value) {
        Optional<Path> file = find(role, value);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        String name = file.get().getFileName().toString();
        if (name.endsWith(".csv") || name.endsWith(".txt")) {
            return CsvFile.read(file.get(), problems).map(table -> table.withUnits(value.units()));
        }
        try {
            return Optional.of(points.read(file.get()).withUnits(value.units()));
        } catch (IllegalArgumentException e) {
            e.getMessage().lines().forEach(value::problem);
            return Optional.empty();
        }
    }

    /** A CSV table that is read wherever it lies in the scenario's folder; empty where it does not. */
    Optional<Table> beside(String role, String name) {
        Path file = folder.resolve(name);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        files.add(new SourceFile(role, Path.of(name)));
        return CsvFile.read(file, problems);
    }

    /** The files found so far, with their role. */
    List<SourceFile> files() {
        return List.copyOf(files);
    }
}
