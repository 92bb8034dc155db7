// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.AbstractedMercury;
import org.silverwake.model.transport.AbstractedMercury.Range;
import org.silverwake.model.transport.PloughLayer;

/** Declared abstractions: mercury that goes with the water, and what irrigation adds to the plough layer. */
final class Abstractions {
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double LITERS = 1000;
    private static final double HECTARE = 1e4;
    private static final String YEAR = "whole year";

    private final Outcome outcome;

    private Abstractions(Outcome outcome) {
        this.outcome = outcome;
    }

    /** Writes a row per abstraction and flow state, then one for the whole year. */
    static void write(Outcome outcome, Path file) {
        List<String> header = List.of(
                "abstraction",
                "use",
                "longitude [deg]",
                "latitude [deg]",
                "distance to river [m]",
                "feature",
                "chainage [m]",
                "reach",
                "flow state",
                "share of the year [-]",
                "water asked [L/s]",
                "water taken [L/s]",
                "mercury taken, low [kg/yr]",
                "mercury taken, high [kg/yr]",
                "area [ha]",
                "plough depth [m]",
                "soil density [kg/m3]",
                "added to the plough layer, low [mg/kg/yr]",
                "added to the plough layer, high [mg/kg/yr]");
        Abstractions abstractions = new Abstractions(outcome);
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int i = 0; i < outcome.scenario().abstractions().size(); i++) {
                abstractions.rows(csv, i);
            }
        }
    }

    /** A line for each abstraction, for the printed summary. */
    static List<String> lines(Outcome outcome) {
        Abstractions abstractions = new Abstractions(outcome);
        List<String> lines = new ArrayList<>();
        boolean soil = false;
        for (int i = 0; i < outcome.scenario().abstractions().size(); i++) {
            lines.add(abstractions.line(i));
            soil |= outcome.scenario().abstractions().get(i).field().isPresent();
        }
        if (soil) {
            lines.add(
                    "what is added to the soil is not compared with a soil value: how much it holds already, and how much"
                            + " leaves it again, is not known here");
        }
        return lines;
    }

    private String line(int i) {
        ScenarioInput.Abstraction abstraction =
                outcome.scenario().abstractions().get(i);
        Range year = mercury(i).overYear();
        String use = abstraction.use().isBlank() ? "" : " (" + abstraction.use() + ")";
        String taken = abstraction.name() + use + ": "
                + span(year.low() * Quantity.SECONDS_PER_YEAR, year.high() * Quantity.SECONDS_PER_YEAR)
                + " kg/yr of mercury "
                + (abstraction.field().isPresent() ? "to the fields" : "with its water");
        return abstraction
                .field()
                .map(field -> {
                    PloughLayer layer = layer(field);
                    return taken + ", "
                            + span(
                                    layer.added(year.low()) * Quantity.SECONDS_PER_YEAR * MILLIGRAMS_PER_KILOGRAM,
                                    layer.added(year.high()) * Quantity.SECONDS_PER_YEAR * MILLIGRAMS_PER_KILOGRAM)
                            + " mg/kg/yr added to the plough layer of " + Numbers.shown(field.area() / HECTARE, 4)
                            + " ha (" + Numbers.shown(field.ploughDepth(), 3) + " m deep, "
                            + Numbers.shown(field.soilDensity(), 4) + " kg/m3)";
                })
                .orElse(taken);
    }

    private static String span(double low, double high) {
        String from = Numbers.shown(low, 3);
        String to = Numbers.shown(high, 3);
        return from.equals(to) ? from : from + " to " + to;
    }

    private static PloughLayer layer(ScenarioInput.Field field) {
        return new PloughLayer(field.area(), field.ploughDepth(), field.soilDensity());
    }

    private int reach(int i) {
        return outcome.basin().takenAt(outcome.basin().points("abstraction").get(i));
    }

    /** Several at one point share what is taken there as they ask for it. */
    private AbstractedMercury mercury(int i) {
        List<Double> parts = new ArrayList<>();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            double all = 0;
            for (int k = 0; k < outcome.scenario().abstractions().size(); k++) {
                all += reach(k) == reach(i) ? asked(k, s) : 0;
            }
            parts.add(all > 0 ? asked(i, s) / all : 0);
        }
        return AbstractedMercury.of(outcome.result(), reach(i), parts);
    }

    private double asked(int i, int state) {
        return outcome.scenario().abstractions().get(i).discharge().get(state);
    }

    private void rows(CsvTableWriter csv, int i) {
        AbstractedMercury mercury = mercury(i);
        double asked = 0;
        double taken = 0;
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            double share = outcome.scenario().states().get(s).share();
            asked += share * asked(i, s);
            taken += share * mercury.water(s);
            String state = outcome.scenario().states().get(s).name();
            row(csv, i, state, share, asked(i, s), mercury.water(s), mercury.inState(s));
        }
        row(csv, i, YEAR, 1, asked, taken, mercury.overYear());
    }

    private void row(CsvTableWriter csv, int i, String state, double share, double asked, double taken, Range mercury) {
        ScenarioInput.Abstraction abstraction =
                outcome.scenario().abstractions().get(i);
        PlacedPoint at = outcome.basin().points("abstraction").get(i);
        csv.text(abstraction.name())
                .text(abstraction.use())
                .degrees(at.longitude())
                .degrees(at.latitude())
                .number(at.distanceMeters())
                .text(at.featureId())
                .number(at.chainageMeters())
                .text(outcome.basin().reach(reach(i)).id())
                .text(state)
                .number(share)
                .number(asked * LITERS)
                .number(taken * LITERS)
                .number(mercury.low() * Quantity.SECONDS_PER_YEAR)
                .number(mercury.high() * Quantity.SECONDS_PER_YEAR);
        Optional<ScenarioInput.Field> field = abstraction.field();
        csv.number(field.map(f -> f.area() / HECTARE).orElse(Double.NaN))
                .number(field.map(ScenarioInput.Field::ploughDepth).orElse(Double.NaN))
                .number(field.map(ScenarioInput.Field::soilDensity).orElse(Double.NaN))
                .number(added(field, state, mercury.low()))
                .number(added(field, state, mercury.high()))
                .end();
    }

    /** Told for the year alone: a state's rate does not last a year. */
    private static double added(Optional<ScenarioInput.Field> field, String state, double load) {
        return state.equals(YEAR)
                ? field.map(f -> layer(f).added(load) * Quantity.SECONDS_PER_YEAR * MILLIGRAMS_PER_KILOGRAM)
                        .orElse(Double.NaN)
                : Double.NaN;
    }
}
