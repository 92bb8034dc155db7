// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something told of one note.
 *
 * @param note which note, in a reader's words
 * @param number what it says [{@code unit}]; empty where it is missing
 * @param unit as people write it, "" where there is none
 * @param usual the usual range [{@code unit}], where there is one
 * @param source where the range comes from, "" where there is none
 * @param refused whether nothing can be made of it; else it is kept
 * @param words what is the matter
 */
public record NoteFinding(
        String note,
        OptionalDouble number,
        String unit,
        Optional<Spread> usual,
        String source,
        boolean refused,
        String words) {
    private static final int DIGITS = 4;

    /** One sentence: note, number and unit, what is the matter, usual range and its source. */
    public String text() {
        StringBuilder text = new StringBuilder(note);
        number.ifPresent(n -> text.append(" is ").append(show(n)).append(unitText()));
        text.append(number.isPresent() ? "; " : ": ").append(words);
        usual.ifPresent(u -> text.append("; usual ")
                .append(show(u.low()))
                .append(" to ")
                .append(show(u.high()))
                .append(unitText())
                .append(" (")
                .append(source)
                .append(")"));
        return text.toString();
    }

    private String unitText() {
        return unit.isEmpty() ? "" : " " + unit;
    }

    /** A number outside its usual range, which is kept. */
    static NoteFinding outside(String note, double number, String unit, Spread usual, String source) {
        return new NoteFinding(
                note,
                OptionalDouble.of(number),
                unit,
                Optional.of(usual),
                source,
                false,
                "outside the usual range, and kept");
    }

    static NoteFinding refused(String note, double number, String unit, String words) {
        return new NoteFinding(note, OptionalDouble.of(number), unit, Optional.empty(), "", true, words);
    }

    static NoteFinding missing(String note, String words) {
        return new NoteFinding(note, OptionalDouble.empty(), "", Optional.empty(), "", true, words);
    }

    /** Four significant digits, whole numbers in full, no exponent. */
    static String show(double number) {
        if (number == 0) {
            return "0";
        }
        int decimals = Math.max(0, DIGITS - 1 - (int) Math.floor(StrictMath.log10(Math.abs(number))));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", number);
        return decimals == 0 ? text : text.replaceAll("\\.?0+$", "");
    }
}
