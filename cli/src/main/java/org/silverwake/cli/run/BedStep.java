// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.input.Settings;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.BedInput;
import org.silverwake.model.transport.BedInput.BedReaction;
import org.silverwake.model.transport.BedInput.Given;
import org.silverwake.model.transport.BedInput.Sorption;
import org.silverwake.model.transport.BedInput.Turnover;
import org.silverwake.model.transport.TransportInput;

/** The bed as a scenario has it, for the forms that are carried. */
final class BedStep {
    private static final double CUBIC_METERS_PER_LITER = 1e-3;

    private final ScenarioInput scenario;
    private final Settings settings;
    private final StateLayout layout;
    private final TransportInput water;

    private BedStep(ScenarioInput scenario, TransportInput water) {
        this.scenario = scenario;
        this.settings = scenario.settings();
        this.layout = water.layout();
        this.water = water;
    }

    static BedInput input(ScenarioInput scenario, ScenarioInput.Bed bed, TransportInput water) {
        return new BedStep(scenario, water).input(bed);
    }

    private BedInput input(ScenarioInput.Bed bed) {
        return new BedInput(
                settings.value("bed.active-layer"),
                settings.value("solids.bed-porosity"),
                settings.value("solids.density"),
                new Turnover(
                        bed.erosionGiven() ? Given.EROSION : Given.BURIAL,
                        varying("bed.burial"),
                        settings.value("bed.erosion-rate"),
                        settings.value("bed.tau-ce")),
                varying("bed.pore-exchange"),
                sorption(),
                reactions(),
                varying("bed.methyl-ceiling"),
                scenario.states().stream()
                        .map(ScenarioInput.FlowState::temperature)
                        .toList(),
                settings.value("bed.horizon"));
    }

    private ByStateAndKind varying(String path) {
        return ChemistryStep.varying(scenario, path);
    }

    private Map<String, Sorption> sorption() {
        Map<String, Sorption> sorption = new HashMap<>();
        sorption.put(StateLayout.EXCHANGEABLE, new Sorption(power("bed.log10-kd"), docBinding("mercury.doc-log10-k")));
        if (has(Form.METHYL)) {
            sorption.put(
                    Form.METHYL, new Sorption(power("bed.methyl-log10-kd"), docBinding("mercury.methyl-doc-log10-k")));
        }
        if (has(Form.ELEMENTAL)) {
            sorption.put(Form.ELEMENTAL, new Sorption(settings.value("mercury.elemental-kd"), 0));
        }
        if (has(Form.COMPLEX)) {
            sorption.put(Form.COMPLEX, new Sorption(settings.value("mercury.complex-kd"), 0));
        }
        return sorption;
    }

    private double power(String log10) {
        return StrictMath.pow(10, settings.value(log10)) * CUBIC_METERS_PER_LITER;
    }

    private double docBinding(String log10) {
        boolean free = scenario.mercury().basis() == ScenarioInput.Mercury.Basis.FREE;
        return free ? power(log10) * settings.value("bed.dissolved-organic-carbon") : 0;
    }

    private List<BedReaction> reactions() {
        List<BedReaction> reactions = new ArrayList<>();
        String divalent = StateLayout.EXCHANGEABLE;
        if (has(Form.METHYL)) {
            reactions.add(new BedReaction(divalent, Form.METHYL, law("bed.methylation")));
            reactions.add(new BedReaction(Form.METHYL, divalent, law("bed.demethylation")));
        }
        if (has(Form.COMPLEX)) {
            reactions.add(new BedReaction(Form.COMPLEX, divalent, law("mercury.complex-breakdown")));
        }
        for (int j = 0; j < layout.classCount(); j++) {
            reactions.add(
                    new BedReaction(layout.name(layout.grainBound(j)), divalent, steady("mercury.grain-release-rate")));
        }
        for (Form form : water.chemistry().forms()) {
            if (form.carriage() instanceof Form.Droplets) {
                reactions.add(new BedReaction(form.name(), Form.ELEMENTAL, steady("bed.droplet-dissolution-rate")));
            }
        }
        return reactions;
    }

    private FirstOrder law(String stem) {
        return new FirstOrder(varying(stem + "-rate"), settings.value(stem + "-theta"), false);
    }

    private FirstOrder steady(String path) {
        return new FirstOrder(ByStateAndKind.same(settings.value(path)), 1, false);
    }

    private boolean has(String form) {
        return layout.find(form).isPresent();
    }
}
