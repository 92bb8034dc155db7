// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value with its dimension, held in SI. Text enters here and nowhere else, so no unit factor is written twice.
 *
 * @param si value [SI; degrees for angles], finite
 * @param dimension what it measures
 */
public record Quantity(double si, Dimension dimension) {
    /** A year of 365.25 d [s]. */
    public static final double SECONDS_PER_YEAR = 365.25 * 86400;

    private static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("([+\u2212-]?[\\d.,]+(?:[eE][+\u2212-]?\\d+)?)\\s*(.*)");

    /** Checks that the value is finite. */
    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be finite");
        }
    }

    /** Reads text such as "120 ng/L", decimals with a point. */
    public static Quantity parse(String text, Dimension dimension) {
        return parse(text, dimension, DecimalMark.POINT);
    }

    /**
     * Reads text such as "120 ng/L". A bare number is accepted only where {@link Dimension#isBare()}.
     *
     * @throws IllegalArgumentException in words for the user: the number or the unit is missing or wrong, and what is accepted
     */
    public static Quantity parse(String text, Dimension dimension, DecimalMark mark) {
        return parse(text, dimension, mark, LocalUnits.none());
    }

    /**
     * Reads text such as "120 ng/L" or, with local units, "3 sacks/d".
     *
     * @throws IllegalArgumentException as above
     */
    public static Quantity parse(String text, Dimension dimension, DecimalMark mark, LocalUnits local) {
        Matcher matcher = NUMBER_THEN_UNIT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not " + article(dimension) + "; give a number"
                    + (dimension.isBare() ? "" : " and one of " + dimension.accepted()));
        }
        String spelling = matcher.group(2);
        if (spelling.matches("\\d.*") && !spelling.startsWith("1/")) {
            throw new IllegalArgumentException("\"" + text + "\" has blanks inside the number; give it without them");
        }
        double number = mark.parse(matcher.group(1));
        if (spelling.isEmpty() && !dimension.isBare()) {
            throw new IllegalArgumentException(
                    text.strip() + " has no unit; give " + article(dimension) + " in one of " + dimension.accepted());
        }
        Unit unit = spelling.isEmpty() ? dimension.units().get(0) : local.require(spelling, dimension);
        return new Quantity(unit.si(number), dimension);
    }

    /** What stands after the number, "" where nothing does or where there is no number. */
    static String unitOf(String text) {
        Matcher matcher = NUMBER_THEN_UNIT.matcher(text.strip());
        return matcher.matches() ? matcher.group(2).strip() : "";
    }

    /**
     * The number in a unit [that unit].
     *
     * @return the number [the unit asked for]
     * @throws IllegalArgumentException if the dimension does not accept the unit
     */
    public double in(String unit) {
        return dimension.requireUnit(unit).number(si);
    }

    /** "a length", "an area". */
    private static String article(Dimension dimension) {
        String label = dimension.label();
        return ("aeio".indexOf(label.charAt(0)) >= 0 ? "an " : "a ") + label;
    }
}
