// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.LocalUnits;

/** Single answers, held to what the scenario takes in their place, so that nothing is taken now that is refused later. */
public final class AnswerText {
    /** About a centimeter [degrees]. */
    private static final int DECIMALS = 7;

    private AnswerText() {}

    /**
     * The text, where it is a quantity that the key takes.
     *
     * @param path of the key, such as "flow-states.*.temperature"
     * @throws IllegalArgumentException in words for the user
     */
    public static String quantity(String path, String text) {
        return quantity(KeyTable.require(path), text);
    }

    /**
     * The text, where it is a quantity that the table's column takes.
     *
     * @throws IllegalArgumentException in words for the user
     */
    public static String cell(String table, String column, String text) {
        List<Key> keys = PlaceTables.keys().get(table);
        return quantity(
                keys.stream()
                        .filter(key -> key.path().equals(column))
                        .findFirst()
                        .orElseThrow(),
                text);
    }

    private static String quantity(Key key, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("give " + key.range());
        }
        key.read(text, DecimalMark.POINT, LocalUnits.none());
        return text.strip();
    }

    /**
     * A longitude or latitude as people write it, in decimal degrees.
     *
     * @throws IllegalArgumentException in words for the user
     */
    public static String degrees(String text, boolean longitude) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("give " + (longitude ? "-180 to 180 deg" : "-90 to 90 deg"));
        }
        return BigDecimal.valueOf(DegreeText.read(text, longitude, DecimalMark.POINT))
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * The text, where it can be the name of a flow state.
     *
     * @throws IllegalArgumentException in words for the user
     */
    public static String stateName(String text) {
        StatesSection.nameProblem(text).ifPresent(problem -> {
            throw new IllegalArgumentException("\"" + text + "\" " + problem);
        });
        return text;
    }
}
