// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.AnswerText;
import org.silverwake.cli.text.Names;
import org.silverwake.model.table.CsvTable;

/** Question 4: the states of the river, and what their water holds without the sites. */
final class StateQuestions {
    private static final String STATE = "flow-states.*.";
    private static final List<String> KEYS = List.of("temperature", "suspended-sediment", "lateral-filtered-mercury");

    private final Dialog dialog;
    private final Answers answers;
    private final List<CsvTable.Row> usual =
            CsvTable.ofResource(StateQuestions.class, "flow-states.csv").rows();

    StateQuestions(Dialog dialog, Answers answers) {
        this.dialog = dialog;
        this.answers = answers;
    }

    /** Asks for the states and their water; their names. */
    List<String> ask() {
        dialog.say("4. Which states of the river count, and for how much of the year?");
        dialog.note("Shares of the year that sum to 1, or months that sum to 12.");
        List<String> proposals = new ArrayList<>();
        usual.forEach(row -> proposals.add(row.value("state") + " " + row.value("share")));
        List<StateShares.Share> states = dialog.askUntil("states", String.join(", ", proposals), StateShares::parse);
        dialog.note(
                "Water temperature, suspended sediment of the river itself, mercury (filtered) of clean side streams:");
        states.forEach(this::water);
        return states.stream().map(StateShares.Share::state).toList();
    }

    private void water(StateShares.Share state) {
        CsvTable.Row row = like(state.state());
        String values = String.join(", ", KEYS.stream().map(row::value).toList());
        List<String> given = dialog.askUntil(state.state(), values, StateQuestions::three);
        String key = "flow-states." + state.state() + ".";
        answers.put(key + "share-of-year", state.text());
        for (int i = 0; i < KEYS.size(); i++) {
            answers.put(key + KEYS.get(i), given.get(i));
        }
        if (row.value("flood").equals("true")) {
            answers.put(key + "flood", "true");
        }
        if (String.join(", ", given).equals(values)) {
            answers.proposed("water of the " + state.state() + " state: " + values + " (" + row.value("source") + ")");
        }
    }

    /** What is usual in a state of such a name; that of the first where no word of the name says more. */
    private CsvTable.Row like(String state) {
        return usual.stream()
                .filter(row ->
                        Names.fold(state).matches(".*\\b(" + row.value("words").replace(' ', '|') + ").*"))
                .findFirst()
                .orElse(usual.get(0));
    }

    private static List<String> three(String answer) {
        String[] parts = answer.split(answer.contains(";") ? ";" : ",");
        if (parts.length != KEYS.size()) {
            throw new IllegalArgumentException(
                    "give three values with commas between them, such as 24 degC, 20 mg/L, 0.5"
                            + " ng/L (decimals with a point)");
        }
        List<String> values = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            values.add(AnswerText.quantity(STATE + KEYS.get(i), parts[i]));
        }
        return values;
    }
}
