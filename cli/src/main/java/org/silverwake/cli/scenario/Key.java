// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.silverwake.model.input.Setting;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.LocalUnits;
import org.silverwake.model.quantity.Quantity;

/**
 * One key of a scenario file, or one column of a table: what it takes and what it means. Low and high are in
 * {@code unit}, which is also the unit of messages.
 *
 * @param path dotted path; {@code *} stands for a name the user chooses, or for an item of a list
 * @param kind what is expected
 * @param dimension of a quantity
 * @param unit in which the range is told
 * @param low smallest accepted [unit]
 * @param high largest accepted [unit]
 * @param choices accepted words of a choice
 * @param fallback what holds where the key is absent, in words; "required" where it must be there
 * @param meaning in a few words
 */
public record Key(
        String path,
        Kind kind,
        Dimension dimension,
        String unit,
        double low,
        double high,
        List<String> choices,
        String fallback,
        String meaning) {
    /** What a key takes. */
    public enum Kind {
        QUANTITY,
        TEXT,
        FILE,
        DATE,
        FLAG,
        CHOICE,
        UNIT
    }

    /** Copies the choices. */
    public Key {
        choices = List.copyOf(choices);
    }

    private static final double SLACK = 1e-12;

    /** A key that takes a quantity. */
    public static Key quantity(
            String path, Dimension dimension, String unit, double low, double high, String fallback, String meaning) {
        return new Key(path, Kind.QUANTITY, dimension, unit, low, high, List.of(), fallback, meaning);
    }

    /** A key that takes text, a file, a date, true or false, or a unit. */
    public static Key word(String path, Kind kind, String fallback, String meaning) {
        return new Key(path, kind, Dimension.DIMENSIONLESS, "", 0, 0, List.of(), fallback, meaning);
    }

    /** A key that takes one of some words. */
    public static Key choice(String path, List<String> choices, String fallback, String meaning) {
        return new Key(path, Kind.CHOICE, Dimension.DIMENSIONLESS, "", 0, 0, choices, fallback, meaning);
    }

    /** The key of a setting, and those of its numbers by flow state and kind of reach, where it may have some. */
    static List<Key> of(Setting setting) {
        String must = setting.source().startsWith("must") ? "required where it acts" : "none";
        String fallback = setting.hasDefault() ? amount(setting.fallback(), setting.unit()) : must;
        List<String> below = setting.varies() ? List.of("", ".value", ".by-state.*", ".by-kind.*") : List.of("");
        return below.stream()
                .map(end -> quantity(
                        setting.path() + end,
                        setting.dimension(),
                        setting.unit(),
                        setting.low(),
                        setting.high(),
                        fallback,
                        setting.acts()))
                .toList();
    }

    /** The same key under another path. */
    Key at(String prefix) {
        return new Key(prefix + path, kind, dimension, unit, low, high, choices, fallback, meaning);
    }

    /**
     * The quantity in the text, in SI (temperatures in degC, angles in degrees).
     *
     * @throws IllegalArgumentException in words for the user, if it is not a quantity of this key or out of its range
     */
    double read(String text, DecimalMark mark, LocalUnits units) {
        Quantity quantity = Quantity.parse(text, dimension, mark, units);
        double shown = quantity.in(unit);
        double slack = SLACK * Math.abs(shown);
        if (!(shown >= low - slack && shown <= high + slack)) {
            throw new IllegalArgumentException(text.strip() + " is not allowed; give " + range() + logarithm(shown));
        }
        return dimension == Dimension.TEMPERATURE ? Math.rint(shown * 1e9) / 1e9 : quantity.si();
    }

    /** A hint where a value itself stands in the place of its logarithm. */
    private String logarithm(double shown) {
        double log = shown > 0 ? StrictMath.log10(shown) : Double.NaN;
        return unit.startsWith("log10") && log >= low && log <= high
                ? "; it looks like Kd itself, whose logarithm is " + show(log)
                : "";
    }

    /** "0.01 to 0.3", with the unit where there is one. */
    public String range() {
        return show(low) + " to " + amount(high, unit);
    }

    static String amount(double value, String unit) {
        return unit.equals("-") ? show(value) : show(value) + " " + unit;
    }

    /** A number as people write it, six digits at most. */
    static String show(double value) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
        double size = Math.abs(value);
        if (size >= 1e-3 && size < 1e7) {
            return rounded.toPlainString();
        }
        int exponent = rounded.precision() - rounded.scale() - 1;
        return rounded.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }

    /** A longitude in degrees. */
    static Key longitude(String path) {
        return quantity(path, Dimension.ANGLE, "deg", -180, 180, "none", "longitude in degrees, east positive");
    }

    /** A latitude in degrees. */
    static Key latitude(String path) {
        return quantity(path, Dimension.ANGLE, "deg", -90, 90, "none", "latitude in degrees, north positive");
    }
}
