// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioInput.Guidelines;
import org.silverwake.cli.scenario.ScenarioInput.Outputs;
import org.silverwake.cli.scenario.ScenarioInput.Profile;

/** What results are compared with and what is drawn. */
final class OutputsSection {
    private OutputsSection() {}

    static Guidelines guidelines(YamlValue section, Sources sources) {
        return new Guidelines(
                section.at("use").texts(),
                section.at("jurisdiction").text(),
                sources.find("guidelines", section.at("file")));
    }

    static Outputs outputs(YamlValue section) {
        List<Profile> profiles = new ArrayList<>();
        for (YamlValue item : section.at("profiles").items()) {
            profiles.add(new Profile(
                    item.at("name").requireText(),
                    item.at("from").requireText(),
                    item.at("to").text()));
        }
        return new Outputs(
                section.atPath("map.medium").text(),
                section.atPath("map.guideline").text(),
                profiles);
    }
}
