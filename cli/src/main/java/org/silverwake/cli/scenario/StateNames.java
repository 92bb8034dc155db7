// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;

/**
 * The flow states, for everything that is given per state.
 *
 * @param names in order
 * @param shares of the year [-]
 */
record StateNames(List<String> names, List<Double> shares) {
    static StateNames of(List<FlowState> states) {
        return new StateNames(
                states.stream().map(FlowState::name).toList(),
                states.stream().map(FlowState::share).toList());
    }

    int size() {
        return names.size();
    }

    /** "release_dry", "release_wet" ... in order. */
    List<String> columns(String stem) {
        return names.stream().map(name -> stem + "_" + Table.columnName(name)).toList();
    }

    /** One value for each state. */
    <T> List<T> each(Function<String, T> of) {
        return names.stream().map(of).toList();
    }

    /** The same value in every state. */
    List<Double> same(double value) {
        List<Double> list = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            list.add(value);
        }
        return List.copyOf(list);
    }

    /** A map from state to quantity: required for every state, unknown states noted. */
    List<Double> quantities(ScenarioValue map) {
        checkNames(map);
        if (!map.isMap()) {
            map.problemUnlessScalar("gives no value per flow state; give a map of " + String.join(", ", names));
            return List.of();
        }
        return each(name -> map.at(name).requireQuantity());
    }

    /** Notes keys that are no flow state. */
    void checkNames(ScenarioValue map) {
        for (String name : map.names()) {
            if (!names.contains(name)) {
                map.at(name).problem("is not a flow state; " + Nearest.hint(name, names));
            }
        }
    }
}
