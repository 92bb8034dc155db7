// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Abstraction;
import org.silverwake.cli.scenario.ScenarioInput.Gauge;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.model.quantity.Dimension;

/** Tables of places, gauges and abstractions. */
final class PlaceTables {
    private static final Key DISCHARGE = Key.quantity(
            "discharge",
            Dimension.DISCHARGE,
            "m3/s",
            0,
            400_000,
            "",
            "discharge, or discharge_STATE for each flow state");
    private static final Key PEOPLE =
            Key.quantity("people", Dimension.DIMENSIONLESS, "-", 0, 1e8, "", "people who depend on it; 0 if blank");

    private static final List<String> USES = Arrays.stream(PlaceUse.values())
            .map(use -> use.name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .toList();

    /** The columns by table, for the reference page. */
    private static final Map<String, List<Key>> KEYS = Collections.unmodifiableMap(new TreeMap<>(Map.of(
            "places",
            List.of(
                    Key.word("name", Kind.TEXT, "", "required, each once"),
                    Key.choice("use", USES, "", "required: one or more, separated by ; or a vertical bar"),
                    PEOPLE,
                    Key.word("note", Kind.TEXT, "", "free")),
            "gauges",
            List.of(Key.word("name", Kind.TEXT, "", "required, each once"), DISCHARGE),
            "abstractions",
            List.of(
                    Key.word("name", Kind.TEXT, "", "required, each once"),
                    DISCHARGE,
                    Key.word("use", Kind.TEXT, "", "what the water is taken for")))));

    private final StateNames states;
    private final Problems problems;

    PlaceTables(StateNames states, Problems problems) {
        this.states = states;
        this.problems = problems;
    }

    /** Columns that each of these tables may have, by table. */
    static Map<String, List<Key>> keys() {
        return KEYS;
    }

    List<Place> places(Table table) {
        Set<String> own = new LinkedHashSet<>(List.of("name", "use", "people", "note"));
        own.addAll(PositionCells.COLUMNS);
        Table checked = table.checkColumns(own, List.of("name", "use"), problems);
        List<Place> places = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : checked.read(problems)) {
            places.add(new Place(
                    row.where(),
                    row.requireName(seen),
                    uses(row),
                    people(row),
                    row.position(),
                    row.text("note").orElse("")));
        }
        return places;
    }

    List<Gauge> gauges(Table table) {
        Table checked = checkDischargeTable(table, List.of());
        List<Gauge> gauges = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : checked.read(problems)) {
            gauges.add(new Gauge(row.where(), row.requireName(seen), row.position(), discharge(row)));
        }
        return gauges;
    }

    List<Abstraction> abstractions(Table table) {
        Table checked = checkDischargeTable(table, List.of("use"));
        List<Abstraction> abstractions = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : checked.read(problems)) {
            abstractions.add(new Abstraction(
                    row.where(),
                    row.requireName(seen),
                    row.position(),
                    discharge(row),
                    row.text("use").orElse("")));
        }
        return abstractions;
    }

    private Table checkDischargeTable(Table table, List<String> more) {
        Set<String> known = new LinkedHashSet<>(List.of("name", "note"));
        known.addAll(PositionCells.COLUMNS);
        known.addAll(List.of("discharge", "discharge_unit"));
        known.addAll(states.columns("discharge"));
        known.addAll(more);
        return table.checkColumns(known, List.of("name"), problems);
    }

    private List<Double> discharge(TableRow row) {
        return row.byState("discharge", DISCHARGE, states).orElseGet(() -> {
            row.problem(
                    "discharge",
                    "is blank; give discharge, or " + String.join(", ", states.columns("discharge"))
                            + ", with its unit");
            return List.of();
        });
    }

    private static List<PlaceUse> uses(TableRow row) {
        List<PlaceUse> uses = new ArrayList<>();
        String written = row.requireText("use", "one or more of " + String.join(", ", USES));
        for (String part : written.split("[;|]")) {
            String word = part.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
            if (USES.contains(word)) {
                uses.add(PlaceUse.values()[USES.indexOf(word)]);
            } else if (!word.isEmpty()) {
                row.problem("use", "\"" + word + "\" is not a use; " + Nearest.hint(word, USES));
            }
        }
        return uses;
    }

    private static int people(TableRow row) {
        OptionalDouble people = row.number("people", PEOPLE);
        if (people.isPresent() && people.getAsDouble() != Math.rint(people.getAsDouble())) {
            row.problem("people", people.getAsDouble() + " is not a whole number; give a count");
        }
        return (int) people.orElse(0);
    }
}
