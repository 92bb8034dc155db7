// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.release.NotesException;

/** The section that the report page writes when what was tried is saved. */
final class TrialSection {
    static final String NAME = "tried";
    private static final String PRACTICES = "practices";
    private static final String SITES = "sites";
    private static final String CLOSED = "closed";

    private TrialSection() {}

    static void keys(List<Key> keys) {
        keys.add(
                share(
                        PRACTICES,
                        "share of the sheds that take up a practice of the table, besides those in force, as in its first year"));
        keys.add(
                share(
                        SITES,
                        "a site or group releases so many times its mercury; tailings and water stay as they are, in all years alike"));
        keys.add(Key.word(
                NAME + "." + CLOSED,
                Kind.TEXT,
                "none",
                "list of sites or groups that release neither mercury nor tailings nor water, nor cyanide"));
    }

    private static Key share(String what, String meaning) {
        return Key.quantity(NAME + "." + what + ".*", Dimension.DIMENSIONLESS, "-", 0, 1, "none", meaning);
    }

    /**
     * Reads it; names are checked.
     *
     * @param plan with what is in force at present
     * @param mercury section that lists the forms that are carried
     */
    static Trial read(ScenarioValue section, FieldNotesPlan plan, ScenarioValue mercury) {
        if (!section.isPresent()) {
            return Trial.NONE;
        }
        Set<String> whom = new LinkedHashSet<>();
        plan.sites().forEach(site -> whom.addAll(List.of(site.name(), site.group())));
        List<String> names = plan.practices().stream()
                .map(offered -> offered.practice().name())
                .toList();
        List<String> closed = new ArrayList<>();
        for (ScenarioValue item : section.at(CLOSED).items()) {
            item.text()
                    .filter(name -> isKnown(item, name, whom, "a site or a group"))
                    .ifPresent(closed::add);
        }
        Trial trial = new Trial(
                shares(section.at(PRACTICES), names, "a practice of the table"),
                shares(section.at(SITES), whom, "a site or a group"),
                closed,
                bleeds(plan, mercury));
        if (!trial.isEmpty()) {
            section.warn("a trial, not the present: " + String.join("; ", trial.words()));
        }
        return trial;
    }

    /** Whether droplets are carried at present, so that old drums can go on losing them. */
    private static boolean bleeds(FieldNotesPlan plan, ScenarioValue mercury) {
        try {
            return FormsSection.carried(mercury, NotedSites.expand(plan, NotedSites.inForce(plan), plan.year()))
                    .contains(FurtherForm.DROPLETS);
        } catch (NotesException e) {
            return false; // what is the matter with the notes is told where they are read
        }
    }

    private static Map<String, Double> shares(ScenarioValue section, Collection<String> known, String what) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (String name : section.names()) {
            ScenarioValue value = section.at(name);
            OptionalDouble share = value.quantity();
            if (share.isPresent() && isKnown(value, name, known, what)) {
                shares.put(name, share.getAsDouble());
            }
        }
        return shares;
    }

    private static boolean isKnown(ScenarioValue value, String name, Collection<String> known, String what) {
        if (!known.contains(name)) {
            value.problem("\"" + name + "\" is not " + what + "; " + Nearest.hint(name, known));
        }
        return known.contains(name);
    }
}
