// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Fish;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.model.fish.TrophicLevel;

/** Fish; they are assessed where methylmercury is carried or the scenario has anything to say of them. */
final class FishSection {
    static final String SPECIES = "fish.species";
    static final String DAMS = "fish.dams";

    private FishSection() {}

    static void keys(List<Key> keys) {
        keys.add(Key.word(
                DAMS,
                Kind.TEXT,
                "none known",
                "list of feature ids at whose lower end a dam stands, which fish do not pass"));
        keys.add(
                Key.choice(
                        SPECIES + ".*",
                        List.of("3", "4"),
                        "3, which gives the higher answer",
                        "trophic level of a species in samples of fish, by its name there: 3 eats plants and small animals, 4 eats fish"));
    }

    static Optional<Fish> read(ScenarioValue section, Mercury mercury) {
        Map<String, TrophicLevel> levels = new TreeMap<>();
        ScenarioValue species = section.at("species");
        if (species.isPresent() && species.names().isEmpty()) {
            species.problemUnlessScalar("holds no species; give each its trophic level, or leave it out");
        }
        for (String name : species.names()) {
            species.at(name)
                    .choice()
                    .ifPresent(word -> levels.put(
                            name.toLowerCase(Locale.ROOT).strip(),
                            word.equals("4") ? TrophicLevel.FOUR : TrophicLevel.THREE));
        }
        boolean carried = mercury.forms().contains(FurtherForm.METHYL);
        return section.isPresent() || carried
                ? Optional.of(new Fish(levels, section.at("dams").texts(), carried))
                : Optional.empty();
    }
}
