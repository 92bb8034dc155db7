// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

/** Questions 1 and 3: the river file, and where water leaves. */
final class RiverQuestions {
    private static final List<String> ENDINGS = List.of("gpkg", "shp", "geojson", "json", "fgb", "zip");
    private static final int MOST = 5;
    private static final double KILOMETER = 1000;

    private final Dialog dialog;
    private final Answers answers;
    private final Path folder;

    RiverQuestions(Dialog dialog, Answers answers, Path folder) {
        this.dialog = dialog;
        this.answers = answers;
        this.folder = folder;
    }

    /** Asks for the river file; the layer. */
    VectorLayer file() {
        dialog.say("1. Where is the file of the rivers?");
        List<Path> found = files(folder, ENDINGS);
        found.stream().limit(MOST).forEach(f -> dialog.note("here: " + folder.relativize(f)));
        String proposal = found.size() == 1 ? folder.relativize(found.get(0)).toString() : "";
        VectorLayer layer = dialog.askUntil("river file", proposal, this::read);
        dialog.note(layer.features().size() + " features in layer " + layer.name() + ", "
                + layer.crs().name());
        return layer;
    }

    private VectorLayer read(String answer) {
        Path file = path(folder, answer);
        Optional<String> layer = Optional.empty();
        Optional<String> crs = Optional.empty();
        while (true) {
            try {
                VectorLayer read = Layers.read(new LayerSource(file, layer, crs, Optional.empty(), Optional.empty()));
                if (Assembly.asDrawn(read, AssemblyOptions.drawn(DrawnNetwork.SNAP))
                        .isEmpty()) {
                    throw new IllegalArgumentException("layer " + read.name()
                            + " holds no lines; rivers are needed as lines, not as points or areas: give another file");
                }
                answers.put("rivers.file", fromFolder(folder, file));
                answers.put("rivers.layer", read.name());
                crs.ifPresent(code -> answers.put("rivers.crs", code));
                return read;
            } catch (GeoDataException e) {
                dialog.note(e.getMessage().replace(file.toString(), String.valueOf(file.getFileName())));
                if (e.getMessage().contains("several layers") || e.getMessage().contains("no layer")) {
                    layer = Optional.of(orAnotherFile("name of the layer"));
                } else if (crs.isPresent() || e.getMessage().contains("coordinate system")) {
                    crs = Optional.of(code(orAnotherFile("coordinate system (such as EPSG:32720)")));
                } else {
                    throw new IllegalArgumentException("give another file, or stop and mend this one", e);
                }
            }
        }
    }

    private String orAnotherFile(String prompt) {
        String answer = dialog.ask(prompt + ", or Enter for another file", "");
        if (answer.isEmpty()) {
            throw new IllegalArgumentException("give another file, or stop and mend this one");
        }
        return answer;
    }

    /** A bare number is a code of the usual list. */
    private static String code(String answer) {
        return answer.matches("\\d{4,6}") ? "EPSG:" + answer : answer;
    }

    /** As the scenario names a file: from its folder where that can be. */
    private static String fromFolder(Path folder, Path file) {
        boolean near = Objects.equals(file.getRoot(), folder.toAbsolutePath().getRoot());
        return (near ? folder.toAbsolutePath().relativize(file) : file)
                .toString()
                .replace('\\', '/');
    }

    /** A path that exists, from the folder. */
    static Path path(Path folder, String answer) {
        String plain = answer.replaceAll("^[\"']|[\"']$", "").strip();
        try {
            Path file = folder.resolve(plain).toAbsolutePath().normalize();
            if (!plain.isEmpty() && Files.isRegularFile(file)) {
                return file;
            }
            String found = plain.isEmpty()
                    ? "no file is named yet"
                    : Files.isDirectory(file) ? plain + " is a folder" : "there is no file " + plain;
            throw new IllegalArgumentException(
                    found + "; give a file's name as it stands in " + folder + ", or a whole path");
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("\"" + plain + "\" is no path; give the file's name", e);
        }
    }

    /** Files of a folder with one of these endings, by name. */
    static List<Path> files(Path folder, List<String> endings) {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(Files::isRegularFile)
                    .filter(f -> {
                        String name = f.getFileName().toString().toLowerCase(Locale.ROOT);
                        return endings.contains(name.substring(name.lastIndexOf('.') + 1));
                    })
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where water leaves; nothing is put down where the program shall find it. The lines, to place a gauge on. */
    RiverMap outlet(VectorLayer layer, Map<String, Guess> columns) {
        dialog.say("3. Where does the water leave your rivers?");
        AssemblyOptions options = options(columns);
        VectorLayer named =
                columns.containsKey("id") ? withIds(columns.get("id").column()) : layer;
        Optional<DrawnNetwork> network = Optional.empty();
        try {
            network = Optional.of(DrawnNetwork.require(named, options));
        } catch (GeoDataException e) {
            dialog.note("not known yet, for the layer needs mending first (check shows where):");
            dialog.note(e.getMessage());
        }
        List<DrawnNetwork.Outlet> outlets = network.map(DrawnNetwork::outlets).orElse(List.of());
        for (int k = 0; k < Math.min(MOST, outlets.size()); k++) {
            DrawnNetwork.Outlet outlet = outlets.get(k);
            dialog.note((k + 1) + ") reach " + outlet.feature()
                    + outlet.river().map(river -> ", " + river).orElse("") + ": "
                    + Numbers.shown(outlet.upstreamMeters() / KILOMETER, 3) + " km of river above it");
        }
        if (outlets.size() > MOST) {
            dialog.note("and " + (outlets.size() - MOST) + " smaller ones");
        }
        OutletAnswer answer = new OutletAnswer(named, outlets, network.map(n -> options));
        String proposal = outlets.isEmpty() ? "all" : outlets.get(0).feature();
        List<String> ids = dialog.askUntil("reach id or number, several with commas, or all", proposal, answer::read);
        if (!ids.isEmpty()) {
            answers.put("rivers.outlets", String.join("; ", ids));
        }
        return network.map(DrawnNetwork::map)
                .or(() -> Assembly.asDrawn(named, options))
                .orElseThrow();
    }

    private VectorLayer withIds(String column) {
        Path file = folder.resolve(answers.keys().get("rivers.file"));
        return Layers.read(new LayerSource(
                file,
                Optional.of(answers.keys().get("rivers.layer")),
                Optional.ofNullable(answers.keys().get("rivers.crs")),
                Optional.empty(),
                Optional.of(column)));
    }

    static AssemblyOptions options(Map<String, Guess> columns) {
        AssemblyOptions options = AssemblyOptions.drawn(DrawnNetwork.SNAP);
        if (columns.containsKey("name")) {
            options = options.withNameColumn(columns.get("name").column());
        }
        Guess area = columns.get("drainage-area");
        if (area == null) {
            return options;
        }
        return options.withColumns(new AssemblyOptions.ColumnMapping(
                        area.role().key(), area.column(), 1, area.values().missing()))
                .withOrientBy(AssemblyOptions.Criterion.DRAINAGE_AREA, AssemblyOptions.Criterion.DRAWN);
    }
}
