// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.Corrections.Action;
import org.silverwake.cli.scenario.Corrections.Row;
import org.silverwake.cli.scenario.ScenarioInput.Position;

/** The table of corrections that the check page writes. Whether a row still fits the river layer shows in the run. */
final class CorrectionsTable {
    private static final String FEATURE = "feature";
    private static final String DEFECT = "defect";
    private static final String NAME = "name";
    private static final String KIND = "kind";
    private static final Set<String> COLUMNS = new LinkedHashSet<>(List.of(
            "action", KIND, NAME, FEATURE, "longitude", "latitude", "was_longitude", "was_latitude", DEFECT, "note"));
    private static final List<String> ACTIONS =
            Arrays.stream(Action.values()).map(ScenarioWriter::word).toList();
    private static final List<String> KINDS = List.of("site", "place", "gauge", "abstraction", "sample");
    /** Defects whose repair can be undone. */
    private static final List<String> REFUSED =
            List.of("gap", "split-at-junction", "duplicate-line", "flipped-line", "layer-reversed");
    /** Those that can be accepted only: what was left out is nothing, or nothing was done. */
    private static final List<String> ACCEPTED_ALONE = List.of(
            "null-shape",
            "not-a-line",
            "one-point-line",
            "repeated-point",
            "zero-length",
            "duplicate-id",
            "crossing-without-node",
            "isolated-part",
            "loop",
            "cycle",
            "uphill-reach");

    private final Problems problems;
    private final Map<String, String> seen = new HashMap<>();

    CorrectionsTable(Problems problems) {
        this.problems = problems;
    }

    /** The file that the key names, else {@link Corrections#FILE} in the scenario's folder; none where neither is there. */
    static Corrections find(ScenarioValue key, Sources sources, Problems problems) {
        String role = "corrections";
        Optional<Table> table = key.isPresent() ? sources.table(role, key) : sources.beside(role, Corrections.FILE);
        String file = key.isPresent() ? key.text().orElse("") : Corrections.FILE;
        return table.map(found -> new Corrections(file, new CorrectionsTable(problems).read(found)))
                .orElse(Corrections.none());
    }

    /** Words for a kind of defect that may stand in the column defect. */
    static List<String> defects() {
        List<String> all = new ArrayList<>(REFUSED);
        all.addAll(ACCEPTED_ALONE);
        return all;
    }

    /** Notes moved points that the scenario does not have. */
    static void checkNames(ScenarioInput input, Problems problems) {
        Map<String, List<String>> names = Map.of(
                "site", input.sites().stream().map(ScenarioInput.Site::name).toList(),
                "place", input.places().stream().map(ScenarioInput.Place::name).toList(),
                "gauge", input.gauges().stream().map(ScenarioInput.Gauge::name).toList(),
                "abstraction",
                        input.abstractions().stream()
                                .map(ScenarioInput.Abstraction::name)
                                .toList(),
                "sample", input.samples().stream().map(Sample::name).toList());
        for (Row row : input.corrections().rows(Action.MOVE)) {
            List<String> known = names.getOrDefault(row.kind(), List.of());
            if (names.containsKey(row.kind()) && !row.name().isEmpty() && !known.contains(row.name())) {
                problems.add(
                        row.where() + " name",
                        "there is no " + row.kind() + " \"" + row.name() + "\"; "
                                + (known.isEmpty() ? "delete the row" : Nearest.hint(row.name(), known)));
            }
        }
    }

    private List<Row> read(Table table) {
        Table checked = table.checkColumns(COLUMNS, List.of("action"), problems);
        List<Row> rows = new ArrayList<>();
        for (TableRow row : checked.read(problems)) {
            String word = row.requireText("action", "one of " + String.join(", ", ACTIONS));
            if (ACTIONS.contains(word)) {
                Row read = row(row, Action.values()[ACTIONS.indexOf(word)]);
                once(row, read);
                rows.add(read);
            } else if (!word.isEmpty()) {
                row.problem("action", "\"" + word + "\" is not an action; " + Nearest.hint(word, ACTIONS));
            }
        }
        return rows;
    }

    private Row row(TableRow row, Action action) {
        Optional<Position> at = position(row, "longitude", "latitude");
        Optional<Position> was = position(row, "was_longitude", "was_latitude");
        switch (action) {
            case MOVE -> move(row, at);
            case TURN -> turn(row, at);
            case OUTLET -> {
                row.requireText(FEATURE, "the id of the feature that flows out");
                unused(row, "outlet", KIND, NAME, DEFECT, "was_longitude", "was_latitude");
            }
            case REFUSE, ACCEPT -> ruling(row, action);
        }
        boolean several = action == Action.REFUSE || action == Action.ACCEPT;
        List<String> features = row.text(FEATURE)
                .map(text -> several ? List.of(text.split("\\|")) : List.of(text))
                .orElse(List.of());
        return new Row(
                row.where(),
                action,
                row.text(KIND).orElse(""),
                row.text(NAME).orElse(""),
                features,
                at,
                was,
                row.text(DEFECT).orElse(""),
                row.text("note").orElse(""));
    }

    private void move(TableRow row, Optional<Position> at) {
        String kind = row.requireText(KIND, "one of " + String.join(", ", KINDS));
        if (!kind.isEmpty() && !KINDS.contains(kind)) {
            row.problem(KIND, "\"" + kind + "\" is not a kind of point; " + Nearest.hint(kind, KINDS));
        }
        row.requireText(NAME, "the point's name");
        requirePosition(row, at, "the new position");
        unused(row, "move", FEATURE, DEFECT);
    }

    private void turn(TableRow row, Optional<Position> at) {
        row.requireText(FEATURE, "the id of the feature that is turned");
        requirePosition(row, at, "the end where water enters");
        unused(row, "turn", KIND, NAME, DEFECT);
    }

    private void ruling(TableRow row, Action action) {
        String defect = row.requireText(DEFECT, "the kind of defect, such as gap");
        boolean refuse = action == Action.REFUSE;
        if (!defect.isEmpty() && !defects().contains(defect)) {
            row.problem(DEFECT, "\"" + defect + "\" cannot be ruled on here; " + Nearest.hint(defect, defects()));
        } else if (refuse && ACCEPTED_ALONE.contains(defect)) {
            row.problem(
                    DEFECT,
                    "\"" + defect + "\" cannot be refused, there is no repair to undo; " + "only "
                            + String.join(", ", REFUSED) + " can; correct it in the river layer");
        }
        if (!defect.equals("layer-reversed")) {
            row.requireText(FEATURE, "the ids of the defect's features, joined by |");
        }
        unused(row, refuse ? "refuse" : "accept", KIND, NAME, "was_longitude", "was_latitude");
    }

    private static void unused(TableRow row, String action, String... columns) {
        for (String column : columns) {
            if (row.has(column)) {
                row.problem(column, "is not used by " + action + "; leave it blank");
            }
        }
    }

    private static void requirePosition(TableRow row, Optional<Position> at, String what) {
        if (at.isEmpty()) {
            row.problem("longitude, latitude", "are blank; give " + what + " in degrees, longitude first");
        }
    }

    private static Optional<Position> position(TableRow row, String longitude, String latitude) {
        if (!row.has(longitude) && !row.has(latitude)) {
            return Optional.empty();
        }
        if (row.has(longitude) != row.has(latitude)) {
            row.problem(row.has(longitude) ? latitude : longitude, "is blank beside the other; give both or none");
        }
        OptionalDouble x = row.number(longitude, Key.longitude(longitude));
        OptionalDouble y = row.number(latitude, Key.latitude(latitude));
        return Optional.of(new Position(x.orElse(0), y.orElse(0), false));
    }

    /** One row for one thing. */
    private void once(TableRow row, Row read) {
        String thing = switch (read.action()) {
            case MOVE ->
                "the " + read.kind() + " " + read.name()
                        // bottles of one code may stand at several positions
                        + (read.kind().equals("sample")
                                ? read.was().map(Position::toString).orElse("")
                                : "");
            case TURN -> "the direction of " + read.features() + ends(read);
            case OUTLET -> "the outlet at " + read.features();
            case REFUSE, ACCEPT ->
                "the " + read.defect() + " of " + new TreeSet<>(read.features())
                        + read.at().map(Position::toString).orElse("");
        };
        String other = seen.putIfAbsent(thing, read.where());
        if (other != null) {
            row.problem("action", "corrects what " + other + " corrects; keep one of them");
        }
    }

    /** Both ends of a stretch, in either order; a turn of a whole line is known by the end it names. */
    private static String ends(Row read) {
        Set<String> ends = new TreeSet<>();
        read.at().ifPresent(at -> ends.add(at.toString()));
        read.was().ifPresent(was -> ends.add(was.toString()));
        return ends.toString();
    }
}
