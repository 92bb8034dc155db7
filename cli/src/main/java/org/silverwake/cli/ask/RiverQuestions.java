// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

/** Questions 1 to 3: the river file, its columns, where water leaves. */
final class RiverQuestions {
    private static final List<String> ENDINGS = List.of("gpkg", "shp", "geojson", "json", "fgb", "zip");
    private static final int MOST = 5;
    private static final double KILOMETER = 1000;
    private static final String NONE = "none";

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
        for (int tries = 0; ; tries++) {
            try {
                VectorLayer read = Layers.read(new LayerSource(file, layer, crs, Optional.empty(), Optional.empty()));
                answers.put("rivers.file", folder.relativize(file).toString().replace('\\', '/'));
                answers.put("rivers.layer", read.name());
                crs.ifPresent(code -> answers.put("rivers.crs", code));
                return read;
            } catch (GeoDataException e) {
                dialog.note(e.getMessage());
                boolean system = e.getMessage().contains("coordinate system") && crs.isEmpty();
                boolean several = e.getMessage().contains("layers") && layer.isEmpty();
                if (!system && !several || tries > 1) {
                    throw new IllegalArgumentException("give another file, or stop and mend this one", e);
                }
                if (system) {
                    crs = Optional.of(dialog.ask("coordinate system (such as EPSG:32720)", ""));
                } else {
                    layer = Optional.of(dialog.ask("name of the layer", ""));
                }
            }
        }
    }

    /** A path that exists, from the folder. */
    static Path path(Path folder, String answer) {
        String plain = answer.replaceAll("^[\"']|[\"']$", "");
        try {
            Path file = folder.resolve(plain).toAbsolutePath().normalize();
            if (!plain.isEmpty() && Files.isRegularFile(file)) {
                return file;
            }
            throw new IllegalArgumentException("there is no file " + (plain.isEmpty() ? "named yet" : plain)
                    + "; give its name as it stands in " + folder);
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

    /** Shows the guesses and takes changes; what was settled, by key. */
    Map<String, Guess> columns(VectorLayer layer, ColumnGuesser guesser) {
        dialog.say("2. Which column is what?");
        Map<String, Guess> settled = new LinkedHashMap<>();
        guesser.guesses().forEach(guess -> settled.put(guess.role().key(), guess));
        dialog.note("Columns: " + String.join(", ", layer.columns()) + ". From their names and values:");
        while (true) {
            show(layer, settled);
            List<Guess> unknown =
                    settled.values().stream().filter(Guess::needsUnit).toList();
            String hint = unknown.isEmpty()
                    ? "Enter if right, else a change such as \"drainage area = AREA_SQKM km2\" or \"river name = none\""
                    : "the unit of " + unknown.get(0).column() + " is not known; give \""
                            + unknown.get(0).role().shown() + " = "
                            + unknown.get(0).column() + " UNIT\"";
            String line = dialog.ask(hint, "");
            if (line.isEmpty() && unknown.isEmpty()) {
                settled.values().forEach(this::put);
                return settled;
            }
            if (!line.isEmpty()) {
                change(line, guesser, layer, settled);
            }
        }
    }

    private void show(VectorLayer layer, Map<String, Guess> settled) {
        if (settled.isEmpty()) {
            dialog.note("  nothing that I know");
        }
        for (Guess guess : settled.values()) {
            dialog.note(String.format(
                    Locale.ROOT,
                    "  %-16s = %s%s  (%s)",
                    guess.role().shown(),
                    guess.column(),
                    guess.unit().map(unit -> " " + unit).orElse(""),
                    guess.values().words(layer.features().size())));
        }
    }

    private void change(String line, ColumnGuesser guesser, VectorLayer layer, Map<String, Guess> settled) {
        String[] sides = line.split("=", 2);
        String wanted = sides[0].strip().toLowerCase(Locale.ROOT);
        Optional<ColumnRole> role = guesser.roles().stream()
                .filter(r -> r.shown().equals(wanted) || r.key().equals(wanted))
                .findFirst();
        if (sides.length < 2 || role.isEmpty()) {
            dialog.note("give one of "
                    + String.join(
                            ", ",
                            guesser.roles().stream().map(ColumnRole::shown).toList())
                    + ", then =, then a column and its unit, or none");
            return;
        }
        String answer = sides[1].strip();
        if (answer.equalsIgnoreCase(NONE)) {
            settled.remove(role.get().key());
            return;
        }
        Optional<String> column = layer.columns().stream()
                .filter(c -> answer.equals(c) || answer.startsWith(c + " "))
                .max((a, b) -> Integer.compare(a.length(), b.length()));
        if (column.isEmpty()) {
            dialog.note("there is no column \"" + answer + "\"; columns are " + String.join(", ", layer.columns()));
            return;
        }
        String unit = answer.substring(column.get().length()).strip();
        try {
            Optional<String> known = unit.isEmpty()
                    ? role.get().fit(column.get()).flatMap(ColumnRole.Fit::unit)
                    : Optional.of(role.get()
                            .dimension()
                            .orElseThrow(() -> new IllegalArgumentException("this needs no unit"))
                            .requireUnit(unit)
                            .name());
            settled.put(role.get().key(), new Guess(role.get(), column.get(), known, guesser.values(column.get())));
        } catch (IllegalArgumentException e) {
            dialog.note(e.getMessage());
        }
    }

    private void put(Guess guess) {
        String key = guess.role().key();
        if (key.equals("id") || key.equals("name")) {
            answers.put("rivers." + key, guess.column());
            return;
        }
        answers.put("rivers.columns." + key + ".column", guess.column());
        guess.unit().ifPresent(unit -> answers.put("rivers.columns." + key + ".unit", unit));
        if (!guess.values().missing().isEmpty()) {
            answers.put(
                    "rivers.columns." + key + ".missing",
                    String.join("; ", guess.values().missing()));
        }
    }

    /** Where water leaves; nothing is put down where the program shall find it. */
    void outlet(VectorLayer layer, Map<String, Guess> columns) {
        dialog.say("3. Where does the water leave your rivers?");
        AssemblyOptions options = options(columns);
        VectorLayer named =
                columns.containsKey("id") ? withIds(columns.get("id").column()) : layer;
        Optional<DrawnNetwork> network = DrawnNetwork.of(named, options);
        if (network.isEmpty()) {
            dialog.note("the layer needs mending first; check tells where");
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
        String prompt = "reach id or number, several with commas, or all";
        List<String> ids =
                dialog.askUntil(prompt, outlets.isEmpty() ? "all" : "1", answer -> chosen(answer, outlets, named));
        if (!ids.isEmpty()) {
            answers.put("rivers.outlets", String.join("; ", ids));
        }
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

    private static List<String> chosen(String answer, List<DrawnNetwork.Outlet> outlets, VectorLayer layer) {
        List<String> ids = new ArrayList<>();
        if (answer.equalsIgnoreCase("all")) {
            return ids;
        }
        for (String part : answer.split(",")) {
            String word = part.strip();
            boolean number = word.matches("\\d") && !word.equals("0") && Integer.parseInt(word) <= outlets.size();
            String id = number ? outlets.get(Integer.parseInt(word) - 1).feature() : word;
            if (layer.features().stream().noneMatch(f -> f.id().equals(id))) {
                throw new IllegalArgumentException(
                        "no reach has the id \"" + word + "\"; give one of the layer, or all");
            }
            ids.add(id);
        }
        return ids;
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
