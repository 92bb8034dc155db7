// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.Position;

/**
 * What the user corrected on the check page: points moved, reaches turned, the outlet chosen, repairs refused.
 *
 * @param file the file as the scenario names it; empty where there is none
 * @param rows in the file's order
 */
public record Corrections(String file, List<Row> rows) {
    /** Name of the file that is read where the scenario's folder holds it. */
    public static final String FILE = "corrections.csv";

    /** Copies the rows. */
    public Corrections {
        rows = List.copyOf(rows);
    }

    /** None. */
    public static Corrections none() {
        return new Corrections("", List.of());
    }

    /** Rows of one action. */
    public List<Row> rows(Action action) {
        return rows.stream().filter(row -> row.action() == action).toList();
    }

    /** What a correction does. */
    public enum Action {
        MOVE,
        TURN,
        OUTLET,
        REFUSE,
        ACCEPT
    }

    /**
     * One correction. What an action does not use is empty.
     *
     * @param where file and line
     * @param action what it does
     * @param kind of the point moved: site, place, gauge, abstraction or sample
     * @param name of the point moved
     * @param features ids: of the feature, or of all those of the defect
     * @param at the new position, the stretch's upstream end, the outlet, or where the defect is; degrees
     * @param was the position before, or the stretch's downstream end; degrees
     * @param defect kind of defect, such as split-at-junction
     * @param note free
     */
    public record Row(
            String where,
            Action action,
            String kind,
            String name,
            List<String> features,
            Optional<Position> at,
            Optional<Position> was,
            String defect,
            String note) {
        /** Copies the list. */
        public Row {
            features = List.copyOf(features);
        }

        /** What is corrected, in a few words: "move site Upper Wharf", "refuse gap L004|L007". */
        public String words() {
            String what = switch (action) {
                case MOVE -> kind + " " + name;
                case TURN, OUTLET -> String.join("|", features);
                case REFUSE, ACCEPT -> defect + " " + String.join("|", features);
            };
            return (ScenarioWriter.word(action) + " " + what).strip();
        }
    }
}
