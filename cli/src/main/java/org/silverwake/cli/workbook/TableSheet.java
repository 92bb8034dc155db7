// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Worksheet;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.workbook.SheetPlan.Kind;

/** Writes a sheet that is a table: headings, an example that is not read, and rows to be filled in. */
final class TableSheet {
    /** Rows that are drawn as input; below them one may go on. */
    private static final int ROWS = 30;

    private static final double MARK_WIDTH = 19;
    private static final double UNIT_WIDTH = 12;
    private static final double NUMBER_WIDTH = 15;
    private static final double TEXT_WIDTH = 20;
    private static final double NOTE_WIDTH = 36;
    /** Widths of columns that fit on a page and stay readable [digits]. */
    private static final double PAGE_WIDTH = 190;

    private static final double MEANING_WIDTH = 60;
    private static final int MOST_ABOUT_COLUMNS = 8;

    private final SheetPlan plan;
    private final Worksheet sheet;
    private final WorkbookWords words;
    private final CellWriter cells;
    private final List<SheetColumn> columns;

    TableSheet(SheetPlan plan, Worksheet sheet, WorkbookWords words, int states, int classes) {
        this.plan = plan;
        this.sheet = sheet;
        this.words = words;
        this.cells = new CellWriter(sheet);
        List<SheetColumn> all = new ArrayList<>();
        if (plan.kind() == Kind.NAMED) {
            all.add(new SheetColumn("name", new Field("name", nameKey()), false, 0));
        }
        all.addAll(SheetColumn.of(plan, states, classes));
        this.columns = List.copyOf(all);
    }

    private Key nameKey() {
        return Key.word("name", Key.Kind.TEXT, "required", words.text("comment.name"));
    }

    /** Writes it with rows of texts by the names of their columns, without units of their own. */
    void write(List<Map<String, String>> rows) {
        SheetFrame frame = new SheetFrame(sheet, words);
        frame.write(plan.id(), Math.min(MOST_ABOUT_COLUMNS, columns.size()));
        sheet.width(0, MARK_WIDTH);
        int first = SheetFrame.FIRST + 1;
        int drawn = Math.max(ROWS, rows.size() + ROWS / 2);
        for (int i = 0; i < columns.size(); i++) {
            SheetColumn column = columns.get(i);
            frame.column(i + 1, column.name(), heading(column));
            headingLook(i + 1, column);
            stateHeading(i + 1, column);
            sheet.comment(SheetFrame.HEADINGS, i + 1, comment(column));
            sheet.width(i + 1, width(column));
            unlock(i + 1);
            cells.input(first, first + drawn, i + 1, column.field(), column.isUnit());
        }
        for (int row = SheetFrame.FIRST; row <= first + drawn; row++) {
            Look.open(sheet.style(row, 0)); // the mark of an example, or of a row that is not to be read
        }
        if (plan.kind() == Kind.RIVER_COLUMNS) {
            riverMeanings(rows);
        }
        example();
        for (int r = 0; r < rows.size(); r++) {
            row(first + r, rows.get(r));
        }
        double wide = columns.stream().mapToDouble(TableSheet::width).sum();
        if (wide > PAGE_WIDTH) { // rather several pages side by side than letters that nobody can read
            sheet.fitToWidth((short) Math.ceil(wide / PAGE_WIDTH));
            sheet.repeatCols(0, 1);
        }
        sheet.freezePane(2, SheetFrame.FIRST);
        Look.lock(sheet);
    }

    private void headingLook(int at, SheetColumn column) {
        if (column.field().isRequired()) {
            Look.neededHeading(sheet.style(SheetFrame.HEADINGS, at));
        } else if (WorkbookPlan.isSeldom(column.field().name())) {
            Look.seldomHeading(sheet.style(SheetFrame.HEADINGS, at));
        }
    }

    /** Beside each thing that a river layer may hold, what it is; not read. */
    private void riverMeanings(List<Map<String, String>> rows) {
        int at = columns.size() + 1;
        new SheetFrame(sheet, words).column(at, "meaning", words.text("heading.meaning"));
        sheet.width(at, MEANING_WIDTH);
        for (int r = 0; r < rows.size(); r++) {
            String name = rows.get(r).get("name");
            sheet.value(SheetFrame.FIRST + 1 + r, at, words.text("river." + name));
            Look.text(sheet.style(SheetFrame.FIRST + 1 + r, at));
        }
    }

    private void unlock(int column) {
        sheet.style(column)
                .protectionOption(org.dhatim.fastexcel.ProtectionOption.LOCKED, false)
                .set();
    }

    private void example() {
        Map<String, String> example = new LinkedHashMap<>();
        for (SheetColumn column : columns) {
            words.find("example." + plan.id() + "." + column.name())
                    .ifPresent(text -> example.put(column.name(), text));
        }
        if (example.isEmpty()) {
            return;
        }
        row(SheetFrame.FIRST, example);
        sheet.value(SheetFrame.FIRST, 0, words.text("marker.example"));
        for (int i = 0; i <= columns.size(); i++) {
            boolean date = i > 0 && columns.get(i - 1).field().key().kind() == Key.Kind.DATE;
            Look.example(sheet.style(SheetFrame.FIRST, i), date ? CellWriter.DATE : "");
        }
    }

    private void row(int row, Map<String, String> texts) {
        for (int i = 0; i < columns.size(); i++) {
            SheetColumn column = columns.get(i);
            String text = texts.getOrDefault(column.name(), "");
            if (!text.isEmpty() && !column.isUnit()) {
                int unit = 1 + indexOf(SheetColumn.unitOf(column.name()));
                cells.value(row, i + 1, unit, column.field(), text);
            }
        }
    }

    private int indexOf(String name) {
        return columns.stream().map(SheetColumn::name).toList().indexOf(name);
    }

    private String heading(SheetColumn column) {
        if (column.isUnit()) {
            return words.text("heading.unit");
        }
        String stem = column.name().replaceFirst("_#\\d+$", "");
        return words.column(plan.id(), stem) + (column.field().isRequired() ? " *" : "");
    }

    /** The heading of a column for a state or class follows the name that stands on the other sheet. */
    private void stateHeading(int at, SheetColumn column) {
        if (column.number() == 0) {
            return;
        }
        String sheetOf =
                WorkbookPlan.repeated(column.field().name()).orElseThrow().equals("STATE")
                        ? WorkbookPlan.STATES
                        : WorkbookPlan.CLASSES;
        String cell = "'" + words.text("sheet." + sheetOf) + "'!$B$" + (SheetFrame.FIRST + 1 + column.number());
        String start = heading(column) + ": ";
        String other = words.text("heading." + sheetOf) + " " + column.number();
        sheet.formula( // the library writes it as it is: no & or < in it
                SheetFrame.HEADINGS,
                at,
                "CONCATENATE(\"" + start + "\",IF(" + cell + "=\"\",\"" + other + "\"," + cell + "))");
    }

    private String comment(SheetColumn column) {
        Key key = column.field().key();
        if (column.isUnit()) {
            return words.text("comment.unit") + "\n" + String.join(", ", CellWriter.units(key));
        }
        String meaning = words.meaning(plan.id() + "." + column.field().name(), key.meaning());
        return switch (key.kind()) {
            case QUANTITY -> meaning + "\n" + words.range(key);
            case CHOICE -> meaning + "\n" + String.join(", ", key.choices());
            default -> meaning;
        };
    }

    private static double width(SheetColumn column) {
        if (column.isUnit()) {
            return UNIT_WIDTH;
        }
        boolean wide = column.name().startsWith("note");
        return wide ? NOTE_WIDTH : column.field().isNumber() ? NUMBER_WIDTH : TEXT_WIDTH;
    }
}
