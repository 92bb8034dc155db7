// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.Range;
import org.dhatim.fastexcel.Worksheet;
import org.silverwake.cli.scenario.Key;
import org.silverwake.model.quantity.Unit;

/** Writes values into cells as people would type them: number and unit apart, dates as dates, true and false as such. */
final class CellWriter {
    private static final Pattern QUANTITY =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)", Pattern.DOTALL);
    static final String DATE = "yyyy-mm-dd";

    /** Longest list that a drop-down may hold in itself. */
    private static final int LONGEST_LIST = 250;

    private final Worksheet sheet;

    CellWriter(Worksheet sheet) {
        this.sheet = sheet;
    }

    /** Number and unit of a quantity; the text and nothing where it is none. */
    static String[] apart(String text) {
        Matcher quantity = QUANTITY.matcher(text.strip());
        return quantity.matches()
                ? new String[] {quantity.group(1), quantity.group(2)}
                : new String[] {text.strip(), ""};
    }

    /** The value of a field and, in the column {@code unitColumn}, its unit where it has one. */
    void value(int row, int column, int unitColumn, Field field, String text) {
        String[] apart = apart(text);
        if (field.hasUnit()) {
            number(row, column, apart[0]);
            text(row, unitColumn, apart[1]);
        } else if (field.isNumber() && apart[1].isEmpty()) {
            number(row, column, apart[0]);
        } else {
            word(row, column, field.key().kind(), text);
        }
    }

    /** A number, or the text where it is none. */
    private void number(int row, int column, String text) {
        if (QUANTITY.matcher(text).matches()) {
            sheet.value(row, column, Double.parseDouble(text));
        } else {
            text(row, column, text);
        }
    }

    private void text(int row, int column, String text) {
        if (!text.isEmpty()) {
            sheet.value(row, column, text);
        }
    }

    private void word(int row, int column, Key.Kind kind, String text) {
        if (kind == Key.Kind.FLAG && text.matches("true|false")) {
            sheet.value(row, column, Boolean.valueOf(text));
        } else if (kind == Key.Kind.DATE) {
            date(row, column, text);
        } else {
            text(row, column, text);
        }
    }

    private void date(int row, int column, String text) {
        try {
            sheet.value(row, column, LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            text(row, column, text);
        }
    }

    /** Makes cells of one column ready for input. */
    void input(int top, int bottom, int column, Field field, boolean isUnit) {
        for (int row = top; row <= bottom; row++) {
            Look.input(sheet.style(row, column), field.key().kind() == Key.Kind.DATE ? DATE : "", field.isRequired());
        }
        List<String> choices = isUnit ? units(field.key()) : choices(field.key());
        if (!choices.isEmpty() && String.join(",", choices).length() <= LONGEST_LIST) {
            Range range = sheet.range(top, column, bottom, column);
            range.validateWithListByFormula("\"" + String.join(",", choices) + "\"")
                    .allowBlank(true)
                    .errorStyle(DataValidationErrorStyle.INFORMATION)
                    .errorTitle("Silverwake")
                    .error(String.join(", ", choices));
        }
    }

    /** Accepted units, the usual one first. */
    static List<String> units(Key key) {
        List<String> units = new ArrayList<>(List.of(key.unit()));
        for (Unit unit : key.dimension().units()) {
            if (!units.contains(unit.name())) {
                units.add(unit.name());
            }
        }
        return units;
    }

    private static List<String> choices(Key key) {
        return key.kind() == Key.Kind.FLAG ? List.of("true", "false") : key.choices();
    }
}
