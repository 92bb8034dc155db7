// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.model.quantity.DecimalMark;

/**
 * Reads an easting or northing. Thousands separators, which numbers elsewhere never carry, are common in them and are read
 * wherever only one reading lies in the range.
 */
final class MeterText {
    private static final Pattern WRITTEN =
            Pattern.compile("([+-]?\\d[\\d.,' \u00a0\u2009\u202f]*?)\\s*((?i:km|m)?)\\s*[ENSW]?");
    private static final double METERS = 1000;

    private MeterText() {}

    /**
     * The number [m].
     *
     * @throws IllegalArgumentException in words for the user
     */
    static double read(String text, double low, double high, DecimalMark mark) {
        Matcher matcher = WRITTEN.matcher(text.strip().replace('\u2212', '-'));
        String range = Key.show(low) + " to " + Key.show(high) + " m";
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" is not a number of meters; give " + range);
        }
        String number = matcher.group(1).replaceAll("[' \u00a0\u2009\u202f]", "");
        double factor = matcher.group(2).equalsIgnoreCase("km") ? METERS : 1;
        char decimal = mark == DecimalMark.POINT ? '.' : ',';
        List<String> readings = new ArrayList<>();
        for (char c : List.of(decimal, decimal == '.' ? ',' : '.')) {
            String plain = plain(number, c);
            boolean inRange = !plain.isEmpty()
                    && Double.parseDouble(plain) * factor >= low
                    && Double.parseDouble(plain) * factor <= high;
            if (inRange && readings.stream().noneMatch(r -> Double.parseDouble(r) == Double.parseDouble(plain))) {
                readings.add(plain);
            }
        }
        if (readings.isEmpty()) {
            throw new IllegalArgumentException(text.strip() + " is not allowed; give " + range);
        }
        if (readings.size() > 1) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" could be " + String.join(" or ", readings)
                    + " m; give it without thousands separators");
        }
        return Double.parseDouble(readings.get(0)) * factor;
    }

    /** The number with a decimal point, if {@code decimal} is its decimal mark and the other one parts thousands. */
    private static String plain(String number, char decimal) {
        String other = decimal == '.' ? "," : "\\.";
        String grouped = "[+-]?\\d{1,3}(" + other + "\\d{3})+";
        String mark = decimal == '.' ? "\\." : ",";
        return number.matches("([+-]?\\d+|" + grouped + ")(" + mark + "\\d+)?")
                ? number.replaceAll(other, "").replace(',', '.')
                : "";
    }
}
