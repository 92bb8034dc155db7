// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.Rating;
import org.silverwake.model.input.Settings;

/** Flow states. */
final class StatesSection {
    /** Shares of anything sum to 1 within this. */
    static final double SHARE_TOLERANCE = 1e-6;

    /** Words that have a meaning of their own beside a state's name, in keys or column names. */
    private static final Set<String> TAKEN = Set.of("unit", "column", "missing");

    /** Solubility of Hg(0), about 60 ug/L [kg/m3]: more than that dissolved asks for a second look at the unit. */
    static final double SOLUBILITY = 60e-6;

    private static final double ONE_GRAM_PER_LITER = 1;

    private StatesSection() {}

    static List<FlowState> read(ScenarioValue section, Settings settings) {
        List<FlowState> states = new ArrayList<>();
        Set<String> columns = new HashSet<>();
        if (section.names().isEmpty()) {
            section.problemUnlessScalar("holds no flow state; give at least one, with share-of-year 1");
            return states;
        }
        for (String name : section.names()) {
            ScenarioValue state = section.at(name);
            String column = Table.columnName(name);
            nameProblem(name).ifPresent(state::problem);
            if (!columns.add(column)) {
                state.problem("reads like another flow state in column names; give names that differ in letters");
            }
            states.add(state(name, state, settings));
        }
        warnOfOverlap(section, states);
        double sum = states.stream().mapToDouble(FlowState::share).sum();
        if (Math.abs(sum - 1) > SHARE_TOLERANCE) {
            section.problem("share-of-year sums to " + Key.show(sum) + "; give shares that sum to 1");
        }
        return states;
    }

    /** What is wrong with the name of a flow state, if anything. */
    static Optional<String> nameProblem(String name) {
        boolean fits = name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} _-]*") && !TAKEN.contains(Table.columnName(name));
        return fits
                ? Optional.empty()
                : Optional.of(
                        "cannot be the name of a flow state; give letters, digits, blanks, - or _, and not one of "
                                + TAKEN.stream().sorted().toList());
    }

    private static FlowState state(String name, ScenarioValue state, Settings settings) {
        OptionalDouble sediment = state.at("suspended-sediment").quantity();
        Optional<Rating> rating = rating(state);
        if (state.at("suspended-sediment").isPresent() == state.at("rating").isPresent()) {
            state.problem("needs suspended-sediment, or rating with a and b; give one of the two");
        }
        if (sediment.orElse(0) > ONE_GRAM_PER_LITER && settings.value("mercury.kd-slope") == 0) {
            state.at("suspended-sediment")
                    .warn("is above 1 g/L while mercury.kd-slope is 0; log10 Kd usually falls with suspended sediment");
        }
        ScenarioValue lateral = state.at("lateral-filtered-mercury");
        double filtered = lateral.requireQuantity();
        if (filtered > SOLUBILITY) {
            lateral.warn("is above 60 ug/L, the solubility of Hg(0); check the unit");
        }
        return new FlowState(
                name,
                state.at("share-of-year").requireQuantity(),
                state.at("temperature").requireQuantity(),
                sediment,
                rating,
                filtered,
                state.at("dissolved-organic-carbon").quantity(),
                state.at("flood").flag(false),
                months(state.at("months")));
    }

    private static void warnOfOverlap(ScenarioValue section, List<FlowState> states) {
        for (int i = 0; i < states.size(); i++) {
            for (FlowState before : states.subList(0, i)) {
                List<Integer> both = states.get(i).months().stream()
                        .filter(before.months()::contains)
                        .toList();
                if (!both.isEmpty()) {
                    section.at(states.get(i).name())
                            .at("months")
                            .warn("holds " + both + ", which are months of " + before.name()
                                    + " too; a sample of these months belongs to both states");
                }
            }
        }
    }

    private static List<Integer> months(ScenarioValue value) {
        List<Integer> months = new ArrayList<>();
        for (String text : value.texts()) {
            if (text.matches("0?[1-9]|1[0-2]")) {
                months.add(Integer.parseInt(text));
            } else {
                value.problem("\"" + text + "\" is no month; give a list of numbers from 1 to 12");
            }
        }
        return months;
    }

    private static Optional<Rating> rating(ScenarioValue state) {
        ScenarioValue rating = state.at("rating");
        if (!rating.isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                new Rating(rating.at("a").requireQuantity(), rating.at("b").requireQuantity()));
    }
}
