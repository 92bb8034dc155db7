// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Set;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.silverwake.cli.workbook.BookCell.Kind;

/**
 * Turns what a file holds of a cell into text: numbers as the shortest text of the same double, dates from their count of
 * days.
 *
 * @param isFrom1904 whether days are counted from 1904-01-01, as in workbooks begun on old Macintosh computers
 */
record CellTexts(boolean isFrom1904) {
    private static final double SECONDS_PER_DAY = 86_400;

    /** Formats that are dates without saying so in a text (ECMA-376, part 1, 18.8.30). */
    private static final Set<Integer> DATE_FORMATS =
            Set.of(14, 15, 16, 17, 22, 27, 28, 29, 30, 31, 34, 35, 36, 50, 51, 52);

    private static final int LARGEST_PLAIN_EXPONENT = 15;
    private static final double LAST_DAY = 2_958_466;

    BookCell of(Cell cell) {
        String raw = cell.getRawValue();
        if (cell.getType() == CellType.EMPTY || cell.getType() != CellType.FORMULA && raw == null) {
            return BookCell.BLANK;
        }
        if (raw == null) {
            return new BookCell(Kind.NO_RESULT, "");
        }
        Object value = cell.getValue();
        if (cell.getType() == CellType.ERROR || isError(raw) && !(value instanceof Number)) {
            return new BookCell(Kind.ERROR, raw.strip());
        }
        if (value instanceof Boolean truth) {
            return new BookCell(Kind.TRUE_FALSE, truth.toString());
        }
        if (value instanceof BigDecimal) {
            double number = Double.parseDouble(raw.strip());
            return isDate(cell) ? new BookCell(Kind.DATE, date(number)) : new BookCell(Kind.NUMBER, number(number));
        }
        return new BookCell(Kind.TEXT, plain(value == null ? raw : value.toString()));
    }

    private static boolean isError(String raw) {
        return raw.strip().matches("#(REF!|N/A|VALUE!|DIV/0!|NAME\\?|NUM!|NULL!|SPILL!|CALC!|GETTING_DATA)");
    }

    /** Without blanks of any kind at the ends, and with plain ones inside. */
    static String plain(String text) {
        return text.replaceAll("[\\u200b\\ufeff]", "")
                .replaceAll("[\\u00a0\\u2007\\u202f]", " ")
                .strip();
    }

    /** Shortest text of a double, without an exponent where that stays readable. */
    static String number(double number) {
        BigDecimal shortest = new BigDecimal(Double.toString(number)).stripTrailingZeros();
        int exponent = shortest.precision() - shortest.scale() - 1;
        return shortest.signum() == 0
                ? "0"
                : Math.abs(exponent) <= LARGEST_PLAIN_EXPONENT ? shortest.toPlainString() : shortest.toString();
    }

    private static boolean isDate(Cell cell) {
        Integer id = cell.getDataFormatId();
        if (id != null && DATE_FORMATS.contains(id)) {
            return true;
        }
        String format = cell.getDataFormatString();
        if (format == null || format.equalsIgnoreCase("general")) {
            return false;
        }
        String bare = format.replaceAll("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.", "");
        return bare.matches("(?i).*[yd].*");
    }

    /** Whether a bare number may be a count of days. */
    static boolean mayBeDay(double number) {
        return number >= 1 && number < LAST_DAY && number == Math.rint(number);
    }

    /** YYYY-MM-DD, with the time where there is one. The year 1900 is taken for a leap year before March, as programs do. */
    String date(double days) {
        LocalDate first = isFrom1904
                ? LocalDate.of(1904, 1, 1)
                : days < 60 ? LocalDate.of(1899, 12, 31) : LocalDate.of(1899, 12, 30);
        long whole = (long) Math.floor(days);
        long seconds = Math.round((days - whole) * SECONDS_PER_DAY);
        LocalDateTime time = first.plusDays(whole).atStartOfDay().plusSeconds(seconds);
        return time.toLocalTime().equals(LocalTime.MIDNIGHT)
                ? time.toLocalDate().toString()
                : time.toString();
    }
}
