// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.table.CsvTable;

/** Questions 4 and 5: the states of the river, and its water. */
final class WaterQuestions {
    private static final double WHOLE = 1e-6;
    private static final double MONTHS = 12;

    /** Natural channels; shear on the bed is found with it where there is no slope. */
    private static final String ROUGHNESS = "0.035";

    private record State(String name, double share) {}

    private final Dialog dialog;
    private final Answers answers;
    private final List<CsvTable.Row> usual =
            CsvTable.ofResource(WaterQuestions.class, "flow-states.csv").rows();

    WaterQuestions(Dialog dialog, Answers answers) {
        this.dialog = dialog;
        this.answers = answers;
    }

    /** Asks for flow states and what their water holds without the sites; their names. */
    List<String> states() {
        dialog.say("4. Which states of the river count, and for how much of the year?");
        dialog.note("Shares of the year that sum to 1, or months that sum to 12.");
        List<String> proposals = new ArrayList<>();
        usual.forEach(row -> proposals.add(row.value("state") + " " + row.value("share")));
        String proposal = String.join(", ", proposals);
        List<State> states = dialog.askUntil("states", proposal, WaterQuestions::parse);
        dialog.note(
                "Water temperature, suspended sediment of the river itself, mercury (filtered) of clean side streams:");
        for (State state : states) {
            CsvTable.Row row = like(state.name());
            String values = row.value("temperature") + ", " + row.value("suspended-sediment") + ", "
                    + row.value("lateral-filtered-mercury");
            String given = dialog.askUntil(state.name(), values, this::three);
            String[] parts = given.split(",");
            String key = "flow-states." + state.name() + ".";
            answers.put(key + "share-of-year", plain(state.share()));
            answers.put(key + "temperature", parts[0].strip());
            answers.put(key + "suspended-sediment", parts[1].strip());
            answers.put(key + "lateral-filtered-mercury", parts[2].strip());
            if (row.value("flood").equals("true")) {
                answers.put(key + "flood", "true");
            }
            if (given.equals(values)) {
                answers.proposed(
                        "water of the " + state.name() + " state: " + values + " (" + row.value("source") + ")");
            }
        }
        return states.stream().map(State::name).toList();
    }

    private CsvTable.Row like(String state) {
        return usual.stream()
                .filter(row -> row.value("state").equals(state))
                .findFirst()
                .orElse(usual.get(0));
    }

    private String three(String answer) {
        String[] parts = answer.split(",");
        if (parts.length != 3) {
            throw new IllegalArgumentException(
                    "give three values with commas between them, such as 24 degC, 20 mg/L, 0.5"
                            + " ng/L (decimals with a point)");
        }
        Quantity.parse(parts[0], Dimension.TEMPERATURE);
        Quantity.parse(parts[1], Dimension.CONCENTRATION);
        Quantity.parse(parts[2], Dimension.CONCENTRATION);
        return answer;
    }

    private static List<State> parse(String answer) {
        List<State> states = new ArrayList<>();
        double sum = 0;
        for (String part : answer.split(",(?=\\s*\\p{L})|;")) {
            String text = part.strip().replaceAll("\\s*months?$", "");
            int at = text.lastIndexOf(' ');
            String number = at < 0 ? "" : text.substring(at + 1).replace(',', '.');
            if (!number.matches("\\d*\\.?\\d+|\\d+\\.?")) {
                throw new IllegalArgumentException("\"" + part.strip()
                        + "\" has no share of the year; give a name and a share, such as dry 0.6, wet 0.4");
            }
            double share = Double.parseDouble(number);
            states.add(new State(text.substring(0, at).strip().toLowerCase(Locale.ROOT), share));
            sum += share;
        }
        double whole = Math.abs(sum - MONTHS) < WHOLE ? MONTHS : 1;
        if (Math.abs(sum - whole) > WHOLE) {
            throw new IllegalArgumentException(
                    "they sum to " + plain(sum) + "; give shares that sum to 1, or months that sum to 12");
        }
        if (states.stream().map(State::name).distinct().count() < states.size()) {
            throw new IllegalArgumentException("a name is there twice; give each state its own");
        }
        List<State> shares = new ArrayList<>();
        double left = 1;
        for (int i = 0; i < states.size(); i++) {
            double share =
                    i == states.size() - 1 ? round(left) : round(states.get(i).share() / whole);
            left -= share;
            shares.add(new State(states.get(i).name(), share));
        }
        return shares;
    }

    private static double round(double share) {
        return Math.rint(share * 1e6) / 1e6;
    }

    private static String plain(double value) {
        return Numbers.shown(value, 7);
    }

    /** Asks how discharge is known. */
    void water(List<String> states, Map<String, Guess> columns) {
        dialog.say("5. How much water flows?");
        boolean attribute = columns.containsKey("discharge");
        dialog.note("gauge: discharge measured at one place; yield: liters per second from each km2"
                + (attribute
                        ? "; column: " + columns.get("discharge").column()
                                + " of the river file, the same in every state"
                        : ""));
        String way = dialog.askUntil(
                "gauge or yield" + (attribute ? " or column" : ""), attribute ? "column" : "gauge", answer -> {
                    String word = answer.toLowerCase(Locale.ROOT);
                    if (word.equals("gauge") || word.equals("yield") || attribute && word.equals("column")) {
                        return word;
                    }
                    throw new IllegalArgumentException("give one of these words");
                });
        switch (way) {
            case "gauge" -> gauge(states);
            case "yield" -> yields(states);
            default -> answers.put("discharge.method", "attribute");
        }
        if (!columns.containsKey("drainage-area") && !columns.containsKey("local-area") && !way.equals("column")) {
            dialog.note("The river file has no drainage areas: water is shared by length of river, which gives small"
                    + " headwaters too little. Elevation data can do better (rivers.elevation in the workbook).");
        }
        answers.put("channel.method", "hydraulic-geometry");
        answers.put("channel.manning-n", ROUGHNESS);
        answers.proposed("roughness of the channels: Manning n " + ROUGHNESS + " (common practice, no source)");
        classes();
    }

    private void gauge(List<String> states) {
        answers.put("discharge.method", "gauges");
        Map<String, String> row = new LinkedHashMap<>();
        row.put("name", dialog.askUntil("name of the gauge", "", WaterQuestions::word));
        row.put("longitude", dialog.askUntil("its longitude in degrees (west is negative)", "", t -> degrees(t, 180)));
        row.put("latitude", dialog.askUntil("its latitude in degrees (south is negative)", "", t -> degrees(t, 90)));
        for (String state : states) {
            String column = "discharge_" + state.replaceAll("[\\s-]+", "_");
            row.put(column, dialog.askUntil("discharge there, " + state + " (such as 12 m3/s)", "", t -> {
                Quantity.parse(t, Dimension.DISCHARGE);
                return t;
            }));
        }
        answers.row("gauges", row);
    }

    private void yields(List<String> states) {
        answers.put("discharge.method", "specific-discharge");
        for (String state : states) {
            answers.put(
                    "discharge.specific-discharge." + state,
                    dialog.askUntil("from each km2, " + state + " (such as 8 L/s/km2)", "", t -> {
                        Quantity.parse(t, Dimension.SPECIFIC_DISCHARGE);
                        return t;
                    }));
        }
    }

    private static String word(String answer) {
        if (answer.isEmpty()) {
            throw new IllegalArgumentException("give a name");
        }
        return answer;
    }

    private static String degrees(String answer, double limit) {
        double value =
                Quantity.parse(answer, Dimension.ANGLE, DecimalMark.POINT).si();
        if (Math.abs(value) > limit) {
            throw new IllegalArgumentException("give -" + (int) limit + " to " + (int) limit + " degrees");
        }
        return answer;
    }

    private void classes() {
        List<String> words = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.ofResource(WaterQuestions.class, "particle-classes.csv")
                .rows()) {
            String key = "solids.classes." + row.value("class") + ".";
            answers.put(key + "diameter", row.value("diameter"));
            answers.put(key + "background-share", row.value("background-share"));
            answers.put(key + "tailings-share", row.value("tailings-share"));
            words.add(row.value("class") + " " + row.value("diameter"));
        }
        answers.proposed("grain sizes of river solids and tailings: " + String.join(", ", words)
                + " (common practice, no source)");
    }
}
