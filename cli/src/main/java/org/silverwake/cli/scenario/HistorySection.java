// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Change;
import org.silverwake.cli.scenario.ScenarioInput.HistoryPlan;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.quantity.Dimension;

/** What the river goes through over the years: past and coming releases, by date. */
final class HistorySection {
    private static final String CHANGE = "history.changes.*.";

    private HistorySection() {}

    static void keys(List<Key> keys) {
        keys.add(Key.quantity("history.start", Dimension.DIMENSIONLESS, "-", 1500, 2500, "required", "first year"));
        keys.add(Key.quantity("history.years", Dimension.DIMENSIONLESS, "-", 1, 1000, "required", "number of years"));
        keys.add(Key.word(
                "history.order",
                Kind.TEXT,
                "as they are listed",
                "list of flow states in the order in which they follow one another in a year; one may come again"));
        keys.add(Key.word(
                "history.together",
                Kind.FLAG,
                "false",
                "true to take all flow states together in every step, in place of one after another"));
        keys.add(
                Key.quantity(
                        "history.bed-content",
                        Dimension.MASS_CONTENT,
                        "mg/kg",
                        0,
                        1e5,
                        "the background alone",
                        "mercury content of the bed in the first year, all exchangeable; a column of the river layer goes first"));
        keys.add(Key.quantity(
                CHANGE + "year", Dimension.DIMENSIONLESS, "-", 1500, 3500, "required", "from this year on"));
        keys.add(Key.quantity(
                CHANGE + "factor",
                Dimension.DIMENSIONLESS,
                "-",
                0,
                1000,
                "required",
                "sites release so many times what the scenario says; 0: nothing"));
        keys.add(Key.word(CHANGE + "sites", Kind.TEXT, "all", "list of sites or groups for which the change holds"));
    }

    /** Whether anything is said of it; an empty sheet of changes says nothing. */
    static boolean isGiven(ScenarioValue section) {
        return section.names().stream()
                .anyMatch(name ->
                        !name.equals("changes") || !section.at(name).names().isEmpty());
    }

    static Optional<HistoryPlan> read(ScenarioValue section, StateNames states, List<Site> sites) {
        if (!isGiven(section)) {
            return Optional.empty();
        }
        OptionalInt start = year(section.at("start"));
        int years = year(section.at("years")).orElse(1);
        List<Integer> order = order(section.at("order"), states.names());
        boolean together = section.at("together").flag(false);
        return Optional.of(new HistoryPlan(
                start.orElse(0),
                years,
                together ? List.of() : order,
                section.at("bed-content").quantity(),
                changes(section, start, years, sites)));
    }

    private static List<Integer> order(ScenarioValue list, List<String> states) {
        List<Integer> order = new ArrayList<>();
        for (ScenarioValue item : list.items()) {
            item.text().ifPresent(name -> {
                int state = states.indexOf(name);
                if (state < 0) {
                    item.problem("\"" + name + "\" is no flow state; " + Nearest.hint(name, states));
                } else {
                    order.add(state);
                }
            });
        }
        for (int s = 0; s < states.size(); s++) {
            if (!list.isPresent()) {
                order.add(s);
            } else if (!order.contains(s)) {
                list.problem("leaves out " + states.get(s) + "; name every flow state at least once");
            }
        }
        return order;
    }

    private static List<Change> changes(ScenarioValue section, OptionalInt begins, int years, List<Site> sites) {
        int start = begins.orElse(0);
        List<Change> changes = new ArrayList<>();
        ScenarioValue list = section.at("changes");
        Set<String> known = new TreeSet<>();
        sites.forEach(site -> {
            known.add(site.name());
            known.add(site.group());
        });
        for (String name : list.names()) {
            ScenarioValue value = list.at(name);
            OptionalInt year = year(value.at("year"));
            if (begins.isPresent()
                    && year.isPresent()
                    && (year.getAsInt() < start || year.getAsInt() >= start + years)) {
                value.at("year")
                        .problem(year.getAsInt() + " lies outside the history, " + start + " to " + (start + years - 1)
                                + "; give a year of it");
            }
            List<String> which = new ArrayList<>();
            for (ScenarioValue item : value.at("sites").items()) {
                item.text().ifPresent(site -> {
                    which.add(site);
                    if (!known.contains(site)) {
                        item.problem(site + " is neither a site nor a group of sites; see the table of sites");
                    }
                });
            }
            changes.add(new Change(name, year.orElse(start), value.at("factor").requireQuantity(), which));
        }
        changes.sort(Comparator.comparingInt(Change::year));
        return changes;
    }

    private static OptionalInt year(ScenarioValue value) {
        double number = value.requireQuantity();
        if (Double.isNaN(number)) {
            return OptionalInt.empty();
        }
        if (number != Math.rint(number)) {
            value.problem(Key.show(number) + " is not a whole number; give a year such as 2026");
            return OptionalInt.empty();
        }
        return OptionalInt.of((int) number);
    }
}
