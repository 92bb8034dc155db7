// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers that layers keep as text. */
public final class NumberText {
    private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,(\\d{1,2}|\\d{4,})");
    private static final Pattern COMMA_ZERO = Pattern.compile("[+-]?0,\\d+");
    private static final Pattern DOTS_COMMA = Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+,\\d+");
    private static final Pattern COMMAS_DOT = Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+\\.\\d+");

    private NumberText() {}

    /** A number with a decimal point, or with a decimal comma where nothing else can be meant. */
    public static OptionalDouble parse(String text) {
        String plain = text;
        if (COMMA.matcher(text).matches() || COMMA_ZERO.matcher(text).matches()) {
            plain = text.replace(',', '.');
        } else if (DOTS_COMMA.matcher(text).matches()) {
            plain = text.replace(".", "").replace(',', '.');
        } else if (COMMAS_DOT.matcher(text).matches()) {
            plain = text.replace(",", "");
        }
        if (plain.isEmpty() || Character.isLetter(plain.charAt(plain.length() - 1)) && !plain.equals("NaN")) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(plain));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** Whether a value is blank or one of those that mean missing, as text or as the same number. */
    public static boolean isMissing(Object value, Iterable<String> missing) {
        String text = value.toString().trim();
        if (text.isEmpty()) {
            return true;
        }
        OptionalDouble number = parse(text);
        for (String word : missing) {
            if (word.trim().equals(text)) {
                return true;
            }
            OptionalDouble none = parse(word.trim());
            if (number.isPresent() && none.isPresent() && number.getAsDouble() == none.getAsDouble()) {
                return true;
            }
        }
        return false;
    }
}
