// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

/**
 * What a cell holds.
 *
 * @param kind what it is
 * @param text without blanks at its ends; a number with a point, a date as YYYY-MM-DD; "" where the cell is blank
 */
record BookCell(Kind kind, String text) {
    /** What a cell may be. */
    enum Kind {
        TEXT,
        NUMBER,
        DATE,
        TRUE_FALSE,
        /** An error of the spreadsheet program, such as #REF!. */
        ERROR,
        /** A formula that was never computed. */
        NO_RESULT
    }

    /** Nothing. */
    static final BookCell BLANK = new BookCell(Kind.TEXT, "");

    boolean isBlank() {
        return text.isEmpty() && kind != Kind.NO_RESULT;
    }
}
