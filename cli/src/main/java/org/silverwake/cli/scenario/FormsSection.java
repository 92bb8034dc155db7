// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.DropletClass;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.scenario.ScenarioInput.Mercury.Basis;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.input.Settings;
import org.silverwake.model.water.ReachKind;

/** Which forms of mercury are carried, and the size classes of droplets. */
final class FormsSection {
    static final String FORMS = "mercury.forms";
    static final String DROPLETS = "mercury.droplets";

    /** Droplets broken up in grinding drums (common practice, no source; wide, to be asked for). */
    private static final List<DropletClass> USUAL = List.of(
            new DropletClass("3 um", 3e-6, 0.1),
            new DropletClass("20 um", 20e-6, 0.3),
            new DropletClass("100 um", 100e-6, 0.6));

    private FormsSection() {}

    /** Words for forms, as the scenario spells them. */
    static List<String> words() {
        return Arrays.stream(FurtherForm.values()).map(ScenarioWriter::word).toList();
    }

    /** Forms that the scenario lists. */
    private static Set<FurtherForm> listed(ScenarioValue section) {
        Set<FurtherForm> listed = EnumSet.noneOf(FurtherForm.class);
        for (ScenarioValue item : section.at("forms").items()) {
            item.choiceOf(FORMS).ifPresent(word -> listed.add(FurtherForm.values()[words().indexOf(word)]));
        }
        return listed;
    }

    /** Forms that these sites make the river carry, besides what the section lists. */
    static Set<FurtherForm> carried(ScenarioValue section, List<Site> sites) {
        return carried(listed(section), sites);
    }

    /** Those listed, those that some site releases, and what droplets dissolve into. */
    private static Set<FurtherForm> carried(Set<FurtherForm> listed, List<Site> sites) {
        Set<FurtherForm> carried = EnumSet.copyOf(listed);
        for (Site site : sites) {
            site.furtherShares().forEach((form, share) -> {
                if (share > 0) {
                    carried.add(form);
                }
            });
        }
        if (carried.contains(FurtherForm.DROPLETS)) {
            carried.add(FurtherForm.ELEMENTAL);
        }
        return carried;
    }

    /** All of the section, with what the carried forms need. */
    static Mercury read(ScenarioValue section, List<Site> sites, List<FlowState> states, Settings settings) {
        Basis basis = SettingsSection.basis(section, states);
        Set<FurtherForm> carried = carried(listed(section), sites);
        if (carried.contains(FurtherForm.ELEMENTAL)) {
            require(section, "oxidation-rate", FurtherForm.ELEMENTAL, states, settings);
        }
        if (carried.contains(FurtherForm.METHYL)) {
            require(section, "demethylation-rate", FurtherForm.METHYL, states, settings);
        }
        boolean binds = basis == Basis.FREE && carried.contains(FurtherForm.METHYL);
        if (binds && !settings.isGiven("mercury.methyl-doc-log10-k")) {
            section.at("methyl-doc-log10-k")
                    .problem("is missing; basis: free with methyl carried needs it, and there is no usual value");
        }
        return new Mercury(basis, carried, droplets(section.at("droplets")));
    }

    private static void require(
            ScenarioValue section, String key, FurtherForm form, List<FlowState> states, Settings settings) {
        String path = "mercury." + key;
        boolean complete = states.stream()
                .allMatch(state -> Arrays.stream(ReachKind.values())
                        .allMatch(kind -> settings.has(path, state.name(), kind.word())));
        ScenarioValue value = section.at(key);
        if (!complete && (!value.isPresent() || value.isMap())) {
            value.problem((value.isPresent() ? "has no value for every flow state" : "is missing") + "; "
                    + ScenarioWriter.word(form) + " is carried"
                    + " (listed in mercury.forms, released by a site, or what droplets dissolve into) and there is no usual"
                    + " value; give " + KeyTable.require(path).range());
        }
    }

    private static List<DropletClass> droplets(ScenarioValue section) {
        if (section.names().isEmpty()) {
            if (section.isPresent()) {
                section.problemUnlessScalar(
                        "holds no class; give at least one with diameter and share, or leave it out");
            }
            return USUAL;
        }
        List<DropletClass> droplets = new ArrayList<>();
        for (String name : section.names()) {
            ScenarioValue value = section.at(name);
            droplets.add(new DropletClass(
                    name,
                    value.at("diameter").requireQuantity(),
                    value.at("share").requireQuantity()));
        }
        double sum = droplets.stream().mapToDouble(DropletClass::share).sum();
        if (Math.abs(sum - 1) > StatesSection.SHARE_TOLERANCE) {
            section.problem("share sums to " + Key.show(sum) + "; give shares that sum to 1");
        }
        droplets.sort(Comparator.comparingDouble(DropletClass::diameter)); // whichever door they came by
        return droplets;
    }
}
