// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.cli.scenario.AnswerText;
import org.silverwake.cli.scenario.Table;
import org.silverwake.geo.place.Locator;
import org.silverwake.geo.place.PointRequest;
import org.silverwake.model.table.CsvTable;

/** Question 5: how much water flows. */
final class WaterQuestions {
    /** Natural channels; shear on the bed is found with it where there is no slope. */
    private static final String ROUGHNESS = "0.035";

    /** Farther from every river than a place may lie, unless the workbook says otherwise [m]. */
    private static final double FAR = 500;

    private final Dialog dialog;
    private final Answers answers;
    private final Locator rivers;

    /** With the rivers on which a gauge must lie. */
    WaterQuestions(Dialog dialog, Answers answers, Locator rivers) {
        this.dialog = dialog;
        this.answers = answers;
        this.rivers = rivers;
    }

    /** Asks how discharge is known. */
    void water(List<String> states, Map<String, Guess> columns) {
        dialog.say("5. How much water flows?");
        boolean areas = columns.containsKey("drainage-area") || columns.containsKey("local-area");
        String way = way(areas, Optional.ofNullable(columns.get("discharge")));
        switch (way) {
            case "gauge" -> gauge(states);
            case "yield" -> yields(states);
            default -> answers.put("discharge.method", "attribute");
        }
        if (!areas && !way.equals("column")) {
            dialog.note("The river file has no drainage areas: water is shared by length of river, which gives small"
                    + " headwaters too little. Elevation data can do better (rivers.elevation in the workbook).");
        }
        answers.put("channel.method", "hydraulic-geometry");
        answers.put("channel.manning-n", ROUGHNESS);
        answers.proposed("roughness of the channels: Manning n " + ROUGHNESS + " (common practice, no source)");
        classes();
    }

    private String way(boolean areas, Optional<Guess> discharge) {
        List<String> ways = new ArrayList<>(List.of("gauge"));
        String words = "gauge: discharge measured at one place";
        if (areas) {
            ways.add("yield");
            words += "; yield: liters per second from each km2";
        }
        if (discharge.isPresent()) {
            ways.add("column");
            words += "; column: " + discharge.get().column() + " of the river file, the same in every state";
        }
        dialog.note(words);
        String proposal = discharge.isPresent() ? "column" : "gauge";
        return dialog.askUntil(String.join(" or ", ways), proposal, answer -> {
            String word = answer.toLowerCase(Locale.ROOT);
            if (word.equals("yield") && !areas) {
                throw new IllegalArgumentException("yield needs the drainage areas, which the river file does not have;"
                        + " give " + String.join(" or ", ways));
            }
            if (!ways.contains(word)) {
                throw new IllegalArgumentException("give " + String.join(" or ", ways));
            }
            return word;
        });
    }

    private void gauge(List<String> states) {
        answers.put("discharge.method", "gauges");
        Map<String, String> row = new LinkedHashMap<>();
        row.put("name", dialog.askUntil("name of the gauge", "", WaterQuestions::word));
        position(row);
        for (String state : states) {
            String column = "discharge_" + Table.columnName(state);
            row.put(
                    column,
                    dialog.askUntil(
                            "discharge there, " + state + " (such as 12 m3/s)",
                            "",
                            t -> AnswerText.cell("gauges", "discharge", t)));
        }
        answers.row("gauges", row);
    }

    /** Asks again where the position lies far from every river, unless it is to be kept. */
    private void position(Map<String, String> row) {
        while (true) {
            String longitude = dialog.askUntil(
                    "its longitude in degrees (west is negative)", "", t -> AnswerText.degrees(t, true));
            String latitude = dialog.askUntil(
                    "its latitude in degrees (south is negative)", "", t -> AnswerText.degrees(t, false));
            row.put("longitude", longitude);
            row.put("latitude", latitude);
            String refusal = refusal(longitude, latitude);
            if (refusal.isEmpty()) {
                return;
            }
            dialog.note("the gauge " + refusal);
            String next = dialog.askUntil("give it again, or keep it", "again", answer -> {
                if (!List.of("again", "keep").contains(answer.toLowerCase(Locale.ROOT))) {
                    throw new IllegalArgumentException("give again or keep");
                }
                return answer.toLowerCase(Locale.ROOT);
            });
            if (next.equals("keep")) {
                return;
            }
        }
    }

    private String refusal(String longitude, String latitude) {
        return rivers.locate(new PointRequest(
                        "gauge",
                        "",
                        "",
                        Double.parseDouble(longitude),
                        Double.parseDouble(latitude),
                        false,
                        FAR,
                        Optional.empty()))
                .refusal();
    }

    private void yields(List<String> states) {
        answers.put("discharge.method", "specific-discharge");
        for (String state : states) {
            answers.put(
                    "discharge.specific-discharge." + state,
                    dialog.askUntil(
                            "from each km2, " + state + " (such as 8 L/s/km2)",
                            "",
                            t -> AnswerText.quantity("discharge.specific-discharge.*", t)));
        }
    }

    private static String word(String answer) {
        if (answer.isEmpty()) {
            throw new IllegalArgumentException("give a name");
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
