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
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Abstraction;
import org.silverwake.cli.scenario.ScenarioInput.Field;
import org.silverwake.cli.scenario.ScenarioInput.Gauge;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.text.Names;
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
    private static final Key PEOPLE = Key.quantity(
            "people", Dimension.DIMENSIONLESS, "-", 0, 1e8, "", "people who depend on it; not known if blank");
    private static final Key AREA =
            Key.quantity("area", Dimension.AREA, "ha", 1e-3, 1e7, "", "irrigation: land watered");
    /** Common practice, no source. */
    private static final double PLOUGH_DEPTH = 0.2;

    private static final Key DEPTH = Key.quantity(
            "plough_depth",
            Dimension.LENGTH,
            "m",
            0.01,
            2,
            "",
            "irrigation: depth that is ploughed; 0.2 m if blank (common practice, no source)");
    /** Common practice, no source. */
    private static final double SOIL_DENSITY = 1300;

    private static final Key SOIL = Key.quantity(
            "soil_density",
            Dimension.DENSITY,
            "kg/m3",
            200,
            2500,
            "",
            "irrigation: bulk density of the dry soil; 1300 kg/m3 if blank (common practice, no source)");
    private static final Key NOTE = Key.word("note", Kind.TEXT, "", "free");
    private static final List<String> FIELD =
            List.of("area", "area_unit", "plough_depth", "plough_depth_unit", "soil_density", "soil_density_unit");
    private static final String IRRIGATION = "irrigation";
    private static final int NAMED = 5;
    private static final String THOUSANDS = "\\d{1,3}[.,]\\d{3}";

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
                    Key.word(
                            "people_source",
                            Kind.TEXT,
                            "",
                            "where the number comes from: a census and its year, a head count, an estimate and whose"),
                    NOTE),
            "gauges",
            List.of(Key.word("name", Kind.TEXT, "", "required, each once"), DISCHARGE, NOTE),
            "abstractions",
            List.of(
                    Key.word("name", Kind.TEXT, "", "required, each once"),
                    DISCHARGE,
                    Key.word("use", Kind.TEXT, "", "what the water is taken for, such as irrigation"),
                    AREA,
                    DEPTH,
                    SOIL,
                    NOTE))));

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
        Set<String> own = new LinkedHashSet<>(List.of("name", "use", "people", "people_source", "note"));
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
                    row.text("people_source").orElse(""),
                    row.position(),
                    row.text("note").orElse("")));
        }
        warnOfSources(table.places().heading("people_source"), places);
        return places;
    }

    private void warnOfSources(String where, List<Place> places) {
        List<String> unsourced = places.stream()
                .filter(p -> p.people().orElse(0) > 0 && p.peopleSource().isBlank())
                .map(Place::name)
                .toList();
        if (!unsourced.isEmpty()) {
            problems.warn(
                    where,
                    "is blank for " + Names.first(unsourced, NAMED)
                            + "; say where each number of people comes from (a census and its year, a head count, an"
                            + " estimate and whose)");
        }
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
        List<String> more = new ArrayList<>(FIELD);
        more.add("use");
        Table checked = checkDischargeTable(table, more);
        List<Abstraction> abstractions = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : checked.read(problems)) {
            abstractions.add(new Abstraction(
                    row.where(),
                    row.requireName(seen),
                    row.position(),
                    discharge(row),
                    row.text("use").orElse(""),
                    field(row)));
        }
        return abstractions;
    }

    private static Optional<Field> field(TableRow row) {
        boolean waters = row.text("use").orElse("").toLowerCase(Locale.ROOT).contains(IRRIGATION);
        for (String column : FIELD) {
            if (!waters && row.has(column) && !column.endsWith("_unit")) {
                row.problem(
                        column, "is given, but the use is not irrigation; leave it blank or give irrigation as use");
            }
        }
        OptionalDouble area = row.quantity("area", AREA, "area_unit");
        OptionalDouble depth = row.quantity("plough_depth", DEPTH, "plough_depth_unit");
        OptionalDouble soil = row.quantity("soil_density", SOIL, "soil_density_unit");
        if (waters && area.isEmpty() && !row.has("area")) {
            row.warn(
                    "area",
                    "is blank, so mercury added to the soil is not told, only mercury that goes to the fields; give the"
                            + " area watered, such as 40 ha");
        }
        return area.isPresent()
                ? Optional.of(new Field(area.getAsDouble(), depth.orElse(PLOUGH_DEPTH), soil.orElse(SOIL_DENSITY)))
                : Optional.empty();
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

    /** A count has no decimals, so a mark with three digits behind it is a thousands separator, or is it: both are told. */
    private static OptionalInt people(TableRow row) {
        String written = row.text("people").orElse("");
        if (written.matches(THOUSANDS)) {
            row.problem(
                    "people",
                    "\"" + written + "\" could be " + written.replaceAll("[.,]", "") + " or "
                            + written.replaceFirst("[.,].*", "") + "; give the count without a separator");
            return OptionalInt.empty();
        }
        OptionalDouble people = row.number("people", PEOPLE);
        if (people.isPresent() && people.getAsDouble() != Math.rint(people.getAsDouble())) {
            row.problem("people", people.getAsDouble() + " is not a whole number; give a count");
        }
        return people.isPresent() ? OptionalInt.of((int) people.getAsDouble()) : OptionalInt.empty();
    }
}
