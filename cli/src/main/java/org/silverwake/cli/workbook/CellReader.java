// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.Problems;
import org.silverwake.cli.workbook.BookCell.Kind;
import org.silverwake.model.quantity.DecimalMark;

/** Reads cells of one sheet as the texts that scenario.yaml would hold: number and unit together, dates as YYYY-MM-DD. */
final class CellReader {
    private static final Pattern NUMBER =
            Pattern.compile("([+\u2212-]?[\\d.,]+(?:[eE][+\u2212-]?\\d+)?)(\\s*[^\\d\\s].*)?");
    private static final String UNREADABLE = "?";

    private final BookSheet sheet;
    private final Problems problems;
    private final DecimalMark mark;

    /**
     * Of a sheet.
     *
     * @param numbers columns that hold numbers, which tell how decimals are written where numbers stand as text
     */
    CellReader(BookSheet sheet, List<Integer> numbers, Problems problems) {
        this.sheet = sheet;
        this.problems = problems;
        this.mark = mark(sheet, numbers);
    }

    /** A decimal comma where a number that stands as text can be read in no other way. */
    private static DecimalMark mark(BookSheet sheet, List<Integer> numbers) {
        boolean comma = sheet.rows().values().stream()
                .flatMap(row -> numbers.stream().map(column -> row.getOrDefault(column, BookCell.BLANK)))
                .filter(cell -> cell.kind() == Kind.TEXT)
                .map(cell -> NUMBER.matcher(cell.text()))
                .anyMatch(m -> m.matches() && isCertain(m.group(1)));
        return comma ? DecimalMark.COMMA : DecimalMark.POINT;
    }

    /** A decimal comma that cannot separate thousands. */
    private static boolean isCertain(String number) {
        return DecimalMark.showsComma(number) && DecimalMark.showsPoint(number.replace(',', '.'));
    }

    String place(int row, int column) {
        return sheet.place(row, column);
    }

    /** Whether a cell holds nothing. */
    boolean isBlank(int row, int column) {
        return column < 0 || sheet.cell(row, column).isBlank();
    }

    /** The text of a word, a name, a unit. */
    String word(int row, int column) {
        if (column < 0) {
            return "";
        }
        BookCell cell = sheet.cell(row, column);
        if (cell.kind() == Kind.ERROR) {
            return spoil(row, column, "holds the error " + cell.text() + "; mend the formula, or type the value");
        }
        if (cell.kind() == Kind.NO_RESULT) {
            return spoil(
                    row,
                    column,
                    "holds a formula without its result; open the workbook in the spreadsheet program and save it there,"
                            + " or type the value");
        }
        return cell.text();
    }

    /** The value of a field with the unit from the cell {@code unitColumn} (-1 where there is none); "" where it is blank. */
    String value(int row, int column, int unitColumn, Key key) {
        String text = word(row, column);
        if (text.isEmpty() || text.equals(UNREADABLE)) {
            return text;
        }
        return switch (key.kind()) {
            case QUANTITY -> quantity(row, column, unitColumn, text);
            case DATE -> date(row, column, text);
            case FLAG -> flag(text.toLowerCase(Locale.ROOT));
            default -> text;
        };
    }

    /** Yes and no, as people write them, for true and false. */
    private static String flag(String word) {
        return switch (word) {
            case "yes", "s\u00ed", "si", "sim", "oui", "verdadero" -> "true";
            case "no", "n\u00e3o", "nao", "non", "falso" -> "false";
            default -> word;
        };
    }

    private String quantity(int row, int column, int unitColumn, String text) {
        BookCell.Kind kind = sheet.cell(row, column).kind();
        if (kind == Kind.DATE) {
            return spoil(
                    row,
                    column,
                    "holds the date " + text
                            + ", into which spreadsheet programs turn numbers such as 1.5; set the cell's"
                            + " format to number and type it again");
        }
        String unit = word(row, unitColumn);
        if (unit.equals(UNREADABLE)) {
            problems.silence(place(row, column));
            return UNREADABLE;
        }
        Matcher matcher = NUMBER.matcher(text);
        if (kind != Kind.TEXT || !matcher.matches()) {
            return unit.isEmpty() || unit.equals("-") ? text : text + " " + unit;
        }
        String own = matcher.group(2) == null ? "" : matcher.group(2).strip();
        if (!own.isEmpty() && !unit.isEmpty() && !own.equals(unit)) {
            return spoil(
                    row, column, "\"" + text + "\" holds a unit, and " + unit + " stands beside it; keep one of them");
        }
        String number = point(row, column, matcher.group(1));
        return own.isEmpty() ? withUnit(number, unit) : withUnit(number, own);
    }

    private static String withUnit(String number, String unit) {
        return unit.isEmpty() || unit.equals("-") ? number : number + " " + unit;
    }

    /** A number that stands as text, with a point. */
    private String point(int row, int column, String number) {
        if (mark == DecimalMark.POINT) {
            return number;
        }
        try {
            mark.parse(number);
            return number.replace(',', '.');
        } catch (IllegalArgumentException e) {
            return spoil(row, column, e.getMessage());
        }
    }

    private String date(int row, int column, String text) {
        if (sheet.cell(row, column).kind() != Kind.NUMBER) {
            return text;
        }
        double days = Double.parseDouble(text);
        return CellTexts.mayBeDay(days) ? new CellTexts(false).date(days) : text;
    }

    /** Notes a problem that says all there is to say of a cell. */
    private String spoil(int row, int column, String text) {
        problems.addAlone(place(row, column), text);
        return UNREADABLE;
    }
}
