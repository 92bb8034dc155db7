// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.ScenarioException;

/**
 * What was dropped on the launcher, and where its results go: into {@code result} and {@code result-check} of the scenario's own
 * folder, from where nothing is ever read; beside another workbook, with its name before. Where the folder cannot be written,
 * into {@code Silverwake/<folder>} of the user's home.
 *
 * @param scenario folder or file, as the commands take it
 * @param result where the run's results go
 * @param check where the check's results go
 */
record DropTarget(Path scenario, Path result, Path check) {
    private static final List<String> SCENARIOS = List.of("scenario.xlsx", "scenario.yaml");
    private static final Set<String> SCENARIO_ENDINGS = Set.of("xlsx", "yaml", "yml");
    private static final Set<String> LAYERS =
            Set.of("shp", "dbf", "shx", "prj", "cpg", "gpkg", "geojson", "json", "fgb", "tif", "tiff", "csv", "kml");
    private static final Set<String> OTHER_WORKBOOKS = Set.of("xls", "xlsm", "xlsb", "ods");
    private static final String DROP = "drop the folder that holds " + String.join(" or ", SCENARIOS);

    /**
     * Of the things dropped at once.
     *
     * @param dropped paths; at least one
     * @param home the user's home
     * @throws ScenarioException with one line on what to drop instead
     */
    static DropTarget of(List<Path> dropped, Path home) {
        if (dropped.size() > 1) {
            throw refusal(dropped.get(0).getFileName() + " and " + (dropped.size() - 1)
                    + " more were dropped together; drop one folder, or one workbook, at a time");
        }
        Path given = dropped.get(0).toAbsolutePath().normalize();
        if (!Files.exists(given)) {
            throw refusal(given + ": there is no such file or folder; " + DROP);
        }
        boolean folder = Files.isDirectory(given);
        Path place = folder ? given : given.getParent();
        Optional<String> wrong = folder ? wrongFolder(given) : wrongFile(given);
        wrong.ifPresent(why -> {
            throw refusal(given + ": " + why);
        });
        String name = String.valueOf(given.getFileName());
        String before = folder || SCENARIOS.contains(name) ? "" : name.substring(0, name.lastIndexOf('.')) + "-";
        Path into = Files.isWritable(place)
                ? place
                : home.resolve("Silverwake").resolve(String.valueOf(place.getFileName()));
        return new DropTarget(given, into.resolve(before + "result"), into.resolve(before + "result-check"));
    }

    private static ScenarioException refusal(String line) {
        return new ScenarioException(List.of(line));
    }

    private static Optional<String> wrongFolder(Path folder) {
        if (SCENARIOS.stream().anyMatch(name -> Files.isRegularFile(folder.resolve(name)))) {
            return Optional.empty();
        }
        if (Files.isRegularFile(folder.resolve("run.json"))) {
            return Optional.of("is the result of a run; " + DROP + ", often the one above");
        }
        List<String> names = names(folder);
        Optional<String> deeper = names.stream()
                .filter(name -> SCENARIOS.stream()
                        .anyMatch(s -> Files.isRegularFile(folder.resolve(name).resolve(s))))
                .findFirst();
        if (deeper.isPresent()) {
            return Optional.of("holds no scenario itself; drop the folder " + deeper.get() + " inside it");
        }
        Optional<String> workbook = names.stream()
                .filter(name -> SCENARIO_ENDINGS.contains(ending(name)) && !isLock(name))
                .findFirst();
        return Optional.of(workbook.map(name -> "there is no " + String.join(" or ", SCENARIOS)
                        + " in it; drop the file " + name + " itself, if that is the scenario")
                .orElse("there is no " + String.join(" or ", SCENARIOS) + " in it; " + DROP));
    }

    private static Optional<String> wrongFile(Path file) {
        String name = String.valueOf(file.getFileName());
        String ending = ending(name);
        if (isLock(name)) {
            return Optional.of(
                    "is what a spreadsheet program leaves while a workbook is open; drop the workbook itself");
        }
        if (SCENARIO_ENDINGS.contains(ending)) {
            return Optional.empty();
        }
        if (LAYERS.contains(ending)) {
            return Optional.of("is a layer or a table alone, without the rest of a scenario; " + DROP);
        }
        if (OTHER_WORKBOOKS.contains(ending)) {
            return Optional.of("is a workbook of another kind; save it as .xlsx and drop that");
        }
        if (ending.equals("zip")) {
            return Optional.of("is packed; unpack it first, then " + DROP);
        }
        return Optional.of("is no scenario; " + DROP + ", or a workbook (.xlsx) alone");
    }

    private static boolean isLock(String name) {
        return name.startsWith("~$") || name.startsWith(".~lock.");
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static List<String> names(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(f -> String.valueOf(f.getFileName())).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
