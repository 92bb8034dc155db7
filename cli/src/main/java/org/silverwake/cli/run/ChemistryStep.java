// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.DropletClass;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;
import org.silverwake.model.input.Settings;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;

/**
 * Further forms of mercury as a scenario has them: how each moves, what turns into what, and what of a site's mercury they
 * are.
 */
final class ChemistryStep {
    private static final double LITERS_PER_CUBIC_METER = 1e3;

    private final ScenarioInput scenario;
    private final Settings settings;
    private final Set<FurtherForm> carried;

    ChemistryStep(ScenarioInput scenario) {
        this.scenario = scenario;
        this.settings = scenario.settings();
        this.carried = scenario.mercury().forms();
    }

    Chemistry chemistry() {
        if (carried.isEmpty()) {
            return Chemistry.none();
        }
        return new Chemistry(
                forms(),
                reactions(),
                scenario.states().stream()
                        .map(ScenarioInput.FlowState::temperature)
                        .toList(),
                varying("mercury.light-attenuation"),
                varying("mercury.air-film-velocity"),
                varying("mercury.evasion-velocity"),
                settings.value("mercury.droplet-passivation"));
    }

    private ByStateAndKind varying(String path) {
        return varying(scenario, path);
    }

    /** A setting by flow state and kind of reach; NaN where it has no value, which the reader lets pass where none is needed. */
    static ByStateAndKind varying(ScenarioInput scenario, String path) {
        Settings settings = scenario.settings();
        return ByStateAndKind.of(scenario.states().size(), (state, kind) -> {
            String name = scenario.states().get(state).name();
            return settings.has(path, name, kind.word()) ? settings.value(path, name, kind.word()) : Double.NaN;
        });
    }

    private List<Form> forms() {
        List<Form> forms = new ArrayList<>();
        List<Double> unbound = Collections.nCopies(scenario.states().size(), 0.0);
        if (carried.contains(FurtherForm.ELEMENTAL)) {
            forms.add(new Form(
                    Form.ELEMENTAL,
                    true,
                    new Partitioned(everywhere(settings.value("mercury.elemental-kd")), unbound),
                    true));
        }
        if (carried.contains(FurtherForm.METHYL)) {
            forms.add(new Form(
                    Form.METHYL,
                    true,
                    new Partitioned(
                            classes(SolidsClass::methylLog10Kd),
                            MercuryStep.doc(scenario, "mercury.methyl-doc-log10-k")),
                    false));
        }
        if (carried.contains(FurtherForm.COMPLEX)) {
            forms.add(new Form(
                    Form.COMPLEX,
                    false,
                    new Partitioned(everywhere(settings.value("mercury.complex-kd")), unbound),
                    false));
        }
        if (carried.contains(FurtherForm.DROPLETS)) {
            for (DropletClass each : scenario.mercury().droplets()) {
                forms.add(new Form(name(each), false, Droplets.of(each.diameter()), false));
            }
        }
        return forms;
    }

    /** A coefficient [m3/kg] on every class as log10 L/kg. */
    private List<Double> everywhere(double kd) {
        return classes(each -> StrictMath.log10(kd * LITERS_PER_CUBIC_METER));
    }

    private List<Double> classes(ToDoubleFunction<SolidsClass> log10Kd) {
        return scenario.solids().classes().stream().map(log10Kd::applyAsDouble).toList();
    }

    /** Light drives reduction, oxidation and demethylation in water; the others go on in the dark. */
    private List<Reaction> reactions() {
        List<Reaction> reactions = new ArrayList<>();
        String divalent = StateLayout.EXCHANGEABLE;
        if (carried.contains(FurtherForm.ELEMENTAL)) {
            reactions.add(reaction("reduction", divalent, Form.ELEMENTAL, true, Part.FILTERED));
            reactions.add(reaction("oxidation", Form.ELEMENTAL, divalent, true, Part.TOTAL));
        }
        if (carried.contains(FurtherForm.METHYL)) {
            reactions.add(reaction("methylation", divalent, Form.METHYL, false, Part.TOTAL));
            reactions.add(reaction("demethylation", Form.METHYL, divalent, true, Part.FILTERED));
        }
        if (carried.contains(FurtherForm.COMPLEX)) {
            reactions.add(reaction("complex-breakdown", Form.COMPLEX, divalent, false, Part.TOTAL));
        }
        return reactions;
    }

    private Reaction reaction(String name, String from, String to, boolean light, Part actsOn) {
        FirstOrder law = new FirstOrder(
                varying("mercury." + name + "-rate"), settings.value("mercury." + name + "-theta"), light);
        return new Reaction(from, to, law, actsOn);
    }

    private static String name(DropletClass droplets) {
        return "droplets " + droplets.name();
    }

    /** Shares of a site's mercury in further forms, as it states them. */
    Map<String, Double> shares(Site site) {
        Map<String, Double> shares = new TreeMap<>();
        site.furtherShares().forEach((form, share) -> put(shares, form, share));
        return shares;
    }

    /** Whether what is in no further form is known to be exchangeable or not, or nothing is left to know. */
    boolean isSplitKnown(Site site) {
        return site.exchangeableShare().isPresent() || rest(site) <= 0;
    }

    /**
     * Extremes of a site's unknown split beside all exchangeable and all grain-bound, in the same order for all sites: a form
     * that only others may release leaves its mercury as it is, exchangeable.
     */
    List<Map<String, Double>> moreExtremes(Site site) {
        List<Map<String, Double>> extremes = new ArrayList<>();
        for (FurtherForm form : List.of(FurtherForm.COMPLEX, FurtherForm.DROPLETS)) {
            if (!isSplitKnown(site) && scenario.sites().stream().anyMatch(other -> mayBeAll(other, form))) {
                Map<String, Double> shares = shares(site);
                put(shares, form, mayBeAll(site, form) ? rest(site) : 0);
                extremes.add(shares);
            }
        }
        return extremes;
    }

    /** Whether all of a site's mercury whose form is not known may be of a form. */
    private boolean mayBeAll(Site site, FurtherForm form) {
        return !isSplitKnown(site)
                && carried.contains(form)
                && !site.furtherShares().containsKey(form)
                && (form != FurtherForm.COMPLEX || site.path() == ReleasePath.LEACH_TANK);
    }

    private static double rest(Site site) {
        return 1 - site.furtherShares().values().stream().mapToDouble(s -> s).sum();
    }

    private void put(Map<String, Double> shares, FurtherForm form, double share) {
        if (share <= 0) {
            return;
        }
        switch (form) {
            case ELEMENTAL -> shares.put(Form.ELEMENTAL, share);
            case METHYL -> shares.put(Form.METHYL, share);
            case COMPLEX -> shares.put(Form.COMPLEX, share);
            case DROPLETS ->
                scenario.mercury().droplets().forEach(each -> shares.put(name(each), share * each.share()));
        }
    }
}
