// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates: ISO 8601 alone. Anything else is asked for, with its readings where it is numbers. */
final class LabDate {
    private static final Pattern ISO = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:[T ]\\d{2}:\\d{2}(?::\\d{2}.*)?)?Z?");
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[/. -](\\d{1,2})[/. -](\\d{4})");
    private static final String ASK = "; give dates as YYYY-MM-DD";

    private LabDate() {}

    /**
     * The date.
     *
     * @throws IllegalArgumentException in words for the user
     */
    static LocalDate parse(String text) {
        Matcher iso = ISO.matcher(text.strip());
        if (iso.matches()) {
            try {
                return LocalDate.parse(iso.group(1));
            } catch (DateTimeException e) {
                throw new IllegalArgumentException("date " + text + " is not a day of any year" + ASK, e);
            }
        }
        Matcher numbers = NUMBERS.matcher(text.strip());
        if (numbers.matches()) {
            throw new IllegalArgumentException("date " + text + readings(numbers) + ASK);
        }
        if (text.strip().matches("\\d{5}([.,]\\d+)?")) {
            throw new IllegalArgumentException("date " + text + " looks like a spreadsheet's count of days" + ASK);
        }
        throw new IllegalArgumentException(
                "date \"" + text + "\" is not read: it is not written with numbers as in 2021-04-03" + ASK);
    }

    private static String readings(Matcher m) {
        String dayFirst = day(m.group(3), m.group(2), m.group(1));
        String monthFirst = day(m.group(3), m.group(1), m.group(2));
        if (dayFirst.isEmpty() && monthFirst.isEmpty()) {
            return " is not a day of any year";
        }
        if (dayFirst.isEmpty() || monthFirst.isEmpty() || dayFirst.equals(monthFirst)) {
            return " is not read, though it can only be " + (dayFirst.isEmpty() ? monthFirst : dayFirst);
        }
        return " could be " + dayFirst + " or " + monthFirst;
    }

    private static String day(String year, String month, String day) {
        try {
            return LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day))
                    .toString();
        } catch (DateTimeException e) {
            return "";
        }
    }
}
