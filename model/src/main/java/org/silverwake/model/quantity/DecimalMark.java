// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import java.util.regex.Pattern;

/**
 * How decimals are written. Numbers never carry thousands separators; text that could be read in two ways is refused with
 * both readings, never guessed.
 */
public enum DecimalMark {
    /** 1234.5 */
    POINT,
    /** 1234,5 as in spreadsheets saved with semicolons. */
    COMMA;

    private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern POINT_GROUPS = Pattern.compile("[+-]?[1-9]\\d{0,2}(\\.\\d{3})+");
    private static final Pattern COMMA_GROUPS = Pattern.compile("[+-]?[1-9]\\d{0,2}(,\\d{3})+");

    /**
     * The number in the text [-].
     *
     * @throws IllegalArgumentException if it is no finite number, or could be read in two ways
     */
    public double parse(String text) {
        String number = text.strip().replace('\u2212', '-');
        if (number.indexOf('.') >= 0 && number.indexOf(',') >= 0) {
            throw new IllegalArgumentException(bothMarks(number));
        }
        String plain = this == POINT ? plainOfPoint(number) : plainOfComma(number);
        if (!PLAIN.matcher(plain).matches()) {
            throw new IllegalArgumentException("\"" + text + "\" is not a number; give one such as " + example());
        }
        double value = Double.parseDouble(plain);
        if (Double.isInfinite(value)) {
            throw new IllegalArgumentException("\"" + text + "\" is too large to be a number here");
        }
        return value;
    }

    /** Whether the text is a number whose points can only be decimal points, such as 45.5 or 0.125. */
    public static boolean showsPoint(String number) {
        return number.indexOf('.') >= 0
                && PLAIN.matcher(number).matches()
                && !POINT_GROUPS.matcher(number).matches();
    }

    /** Whether the text is a number with a decimal comma. */
    public static boolean showsComma(String number) {
        return number.indexOf(',') >= 0
                && number.indexOf('.') < 0
                && PLAIN.matcher(number.replace(',', '.')).matches();
    }

    private static String plainOfPoint(String number) {
        if (number.indexOf(',') < 0) {
            return number;
        }
        if (COMMA_GROUPS.matcher(number).matches()) {
            throw new IllegalArgumentException("\"" + number + "\" could be " + number.replace(",", "") + " or "
                    + number.replace(',', '.') + "; give decimals with a point and no thousands separators");
        }
        throw new IllegalArgumentException(
                "\"" + number + "\" has a decimal comma; give decimals with a point, " + number.replace(',', '.'));
    }

    private static String plainOfComma(String number) {
        if (POINT_GROUPS.matcher(number).matches()) {
            throw new IllegalArgumentException("\"" + number + "\" could be " + number.replace(".", "") + " or "
                    + number.replace('.', ',') + "; give decimals with a comma and no thousands separators");
        }
        return number.replace(',', '.');
    }

    private static String bothMarks(String number) {
        boolean commaLast = number.lastIndexOf(',') > number.lastIndexOf('.');
        char thousands = commaLast ? '.' : ',';
        String one = number.replace(String.valueOf(thousands), "").replace(',', '.');
        String other = number.replace(commaLast ? "," : ".", "").replace(',', '.');
        return "\"" + number + "\" could be " + one + " or " + other + "; give it without thousands separators";
    }

    private String example() {
        return this == POINT ? "1234.5" : "1234,5";
    }
}
