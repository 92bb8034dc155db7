// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.model.quantity.DecimalMark;

/**
 * A result cell taken apart.
 *
 * @param claims what it says besides the number, as words of the column qualifier
 * @param number the number, in the cell's unit or the row's
 * @param unit the unit that stands in the cell
 */
record ResultCell(List<String> claims, OptionalDouble number, Optional<String> unit) {
    private static final Pattern SIGN = Pattern.compile("^(<=|>=|<|>|\u2264|\u2265|&lt;|&gt;)\\s*");
    private static final Pattern LIMIT_WORD = Pattern.compile(
            "(?i)(LOD|LOQ|LD|LQ|DL|RL|MDL|MRL|PQL|LLD|limit|detection limit|reporting limit|quantification limit)");
    private static final Pattern NUMBER = Pattern.compile("^(" + LabNumber.PATTERN + ")\\s*(.*)$");
    private static final Pattern WORD_THEN_NUMBER =
            Pattern.compile("^(\\p{L}[\\p{L}. ]*?)\\s*[(]?\\s*<?\\s*(" + LabNumber.PATTERN + "[^)]*)[)]?$");

    static final String BELOW = "below";
    static final String ABOVE = "above";

    /**
     * Takes a cell apart.
     *
     * @throws IllegalArgumentException in words for the user
     */
    static ResultCell of(String text, DecimalMark mark, Vocabulary words) {
        List<String> claims = new ArrayList<>();
        String rest = text.strip();
        Matcher sign = SIGN.matcher(rest);
        if (sign.find()) {
            claims.add(sign.group(1).matches("<.*|\u2264|&lt;") ? BELOW : ABOVE);
            rest = rest.substring(sign.end()).strip();
            if (rest.isEmpty() || LIMIT_WORD.matcher(rest).matches()) {
                return new ResultCell(claims, OptionalDouble.empty(), Optional.empty());
            }
        }
        Optional<String> word = claim(rest, words);
        if (word.isPresent()) {
            claims.add(word.get());
            return new ResultCell(claims, OptionalDouble.empty(), Optional.empty());
        }
        Matcher wordFirst = WORD_THEN_NUMBER.matcher(rest);
        if (wordFirst.matches() && claim(wordFirst.group(1), words).isPresent()) {
            claims.add(claim(wordFirst.group(1), words).get());
            rest = wordFirst.group(2).strip();
        }
        return number(text, rest, claims, mark, words);
    }

    private static ResultCell number(
            String text, String rest, List<String> claims, DecimalMark mark, Vocabulary words) {
        Matcher number = NUMBER.matcher(rest);
        if (!number.matches()) {
            throw new IllegalArgumentException(
                    "value \"" + text + "\" is not understood; give a number, <number, or a word"
                            + " such as ND, with the limit in its own column");
        }
        double value;
        try {
            value = LabNumber.parse(number.group(1), mark);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("value " + e.getMessage(), e);
        }
        String after = number.group(2).strip();
        if (after.matches("[-\u2013\u00b1+].*")) {
            throw new IllegalArgumentException("value \"" + text + "\" holds two numbers; give one");
        }
        Optional<String> flag = after.isEmpty() ? Optional.empty() : claim(after, words);
        flag.ifPresent(claims::add);
        Optional<String> unit = after.isEmpty() || flag.isPresent() ? Optional.empty() : Optional.of(after);
        return new ResultCell(claims, OptionalDouble.of(value), unit);
    }

    private static Optional<String> claim(String text, Vocabulary words) {
        return words.find(Category.QUALIFIER, text)
                .flatMap(list -> list.stream()
                        .filter(m -> m.category() == Category.QUALIFIER)
                        .findFirst())
                .map(Meaning::value);
    }
}
