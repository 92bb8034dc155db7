// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.scenario.ScenarioInput.Solids;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;
import org.silverwake.model.input.Settings;

/** Particle classes. */
final class SolidsSection {
    private SolidsSection() {}

    static Solids read(ScenarioValue section, Settings settings) {
        List<SolidsClass> classes = new ArrayList<>();
        if (section.names().isEmpty()) {
            section.problemUnlessScalar("holds no particle class; give at least one, with its diameter");
            return new Solids(classes);
        }
        boolean alone = section.names().size() == 1;
        for (String name : section.names()) {
            ScenarioValue value = section.at(name);
            if (classes.stream().anyMatch(c -> Table.columnName(c.name()).equals(Table.columnName(name)))) {
                value.problem("reads like another class in column names; give names that differ in letters");
            }
            classes.add(solidsClass(name, value, settings, alone));
        }
        checkSum(section, "background-share", classes, SolidsClass::backgroundShare);
        checkSum(section, "tailings-share", classes, SolidsClass::tailingsShare);
        return new Solids(classes);
    }

    private static SolidsClass solidsClass(String name, ScenarioValue value, Settings settings, boolean alone) {
        double diameter = value.at("diameter").requireQuantity();
        OptionalDouble velocity = value.at("settling-velocity").quantity();
        String law = value.at("law").choice().orElse(velocity.isPresent() ? "measured" : "ferguson-church");
        boolean measured = law.equals("measured");
        if (measured != value.at("settling-velocity").isPresent()) {
            value.at("law")
                    .problem(
                            measured
                                    ? "measured needs settling-velocity; give it in mm/s"
                                    : law + " stands beside a measured settling-velocity; keep one of them");
        }
        return new SolidsClass(
                name,
                diameter,
                value.at("density").quantity().orElse(settings.value("solids.density")),
                law,
                velocity,
                value.at("cohesive").flag(diameter < settings.value("solids.cohesive-below")),
                value.at("tau-cd").quantity().orElse(settings.value("solids.tau-cd")),
                value.at("log10-kd").quantity().orElse(settings.value("mercury.log10-kd")),
                value.at("methyl-log10-kd").quantity().orElse(settings.value("mercury.methyl-log10-kd")),
                value.at("retention-length").quantity(),
                share(value.at("background-share"), alone),
                share(value.at("tailings-share"), alone));
    }

    private static double share(ScenarioValue value, boolean alone) {
        return alone && !value.isPresent() ? 1 : value.requireQuantity();
    }

    private static void checkSum(
            ScenarioValue section, String key, List<SolidsClass> classes, ToDoubleFunction<SolidsClass> share) {
        double sum = classes.stream().mapToDouble(share).sum();
        if (Math.abs(sum - 1) > StatesSection.SHARE_TOLERANCE) {
            section.problem(key + " sums to " + Key.show(sum) + "; give shares that sum to 1");
        }
    }
}
