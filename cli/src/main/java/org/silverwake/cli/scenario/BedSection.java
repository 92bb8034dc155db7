// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Bed;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.Settings;

/** The bed that all flow states share; it is modelled where the scenario has anything to say of it. */
final class BedSection {
    private BedSection() {}

    static void keys(List<Key> keys) {
        keys.add(Key.word(
                "bed.modelled",
                Kind.FLAG,
                "true where there is another key of bed or history",
                "whether the bed is modelled; otherwise the two bounds stand for it"));
        keys.add(Key.choice(
                "bed.given",
                List.of("burial", "erosion"),
                "burial",
                "which of the two is given; the other follows, since the bed's solids close over the year"));
    }

    static Optional<Bed> read(ScenarioValue root, Mercury mercury, List<SolidsClass> classes, Settings settings) {
        ScenarioValue section = root.at("bed");
        boolean modelled =
                section.at("modelled").flag(section.isPresent() || HistorySection.isGiven(root.at("history")));
        boolean erosion = section.at("given").choice().orElse("burial").equals("erosion");
        if (!modelled) {
            if (HistorySection.isGiven(root.at("history"))) {
                section.at("modelled").problem("false does not go with a history, which needs the bed; leave one out");
            }
            return Optional.empty();
        }
        if (mercury.basis() == Mercury.Basis.FREE && !settings.isGiven("bed.dissolved-organic-carbon")) {
            section.at("dissolved-organic-carbon")
                    .problem("is missing; a bed needs it where mercury.basis is free; give it in mg/L");
        }
        for (String path : List.of("burial", "methyl-ceiling")) {
            ScenarioValue byState = section.at(path).at(Setting.BY_STATE);
            if (byState.isPresent()) {
                byState.problem("the one bed lies under all flow states; give a single value or by-kind");
            }
        }
        if (erosion && section.at("burial").isPresent()) {
            section.at("burial").problem("follows from erosion where bed.given is erosion; leave one of the two out");
        }
        for (SolidsClass each : classes) {
            if (each.cohesive() && each.criticalShearDeposition() > settings.value("bed.tau-ce")) {
                section.at("tau-ce")
                        .problem(Key.show(settings.value("bed.tau-ce")) + " Pa is below tau-cd of class " + each.name()
                                + ", " + Key.show(each.criticalShearDeposition())
                                + " Pa; what deposits would erode at once; give tau-ce of at least tau-cd");
            }
        }
        return Optional.of(new Bed(erosion));
    }
}
