// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import org.dhatim.fastexcel.Worksheet;

/** What every sheet of ours starts with: mark, title, what it is for, and room for the row of names and the headings. */
record SheetFrame(Worksheet sheet, WorkbookWords words) {
    static final int NAMES = 2;
    static final int HEADINGS = 3;
    static final int FIRST = 4;

    private static final int ABOUT = 1;
    private static final double ABOUT_HEIGHT = 48;
    private static final double LINE_HEIGHT = 15;

    /** Letters of running text in the width of one digit. */
    private static final double LETTERS_PER_DIGIT = 1.05;

    private static final double HEADING_HEIGHT = 44;

    /** Height of a row whose text runs over as many lines as it needs in a column's width [points]. */
    static double height(String text, double width) {
        return LINE_HEIGHT * Math.max(1, Math.ceil(text.length() / (width * LETTERS_PER_DIGIT)));
    }

    /** Writes it; the text runs over the first columns after A. */
    void write(String id, int columns) {
        sheet.value(0, 0, Marks.SHEET + id);
        Look.mark(sheet.style(0, 0));
        sheet.value(0, 1, words.text("sheet." + id));
        Look.title(sheet.style(0, 1));
        sheet.value(ABOUT, 1, words.find("about." + id).orElse(""));
        sheet.range(ABOUT, 1, ABOUT, columns).merge();
        Look.text(sheet.range(ABOUT, 1, ABOUT, columns).style());
        sheet.rowHeight(ABOUT, ABOUT_HEIGHT);
        sheet.rowHeight(HEADINGS, HEADING_HEIGHT);
        sheet.value(NAMES, 0, Marks.COLUMNS);
        Look.mark(sheet.style(NAMES, 0));
    }

    /** A column's fixed name and its heading in words. */
    void column(int column, String name, String heading) {
        sheet.value(NAMES, column, name);
        Look.name(sheet.style(NAMES, column));
        sheet.value(HEADINGS, column, heading);
        Look.heading(sheet.style(HEADINGS, column));
    }
}
