// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.Set;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.ProtectionOption;
import org.dhatim.fastexcel.SheetProtectionOption;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Worksheet;

/** How the workbook looks: one place for colors, sizes and what is locked. */
final class Look {
    /** Opens the locked headings for those who want to change them; told on the first sheet, no secret. */
    static final String PASSWORD = "silverwake";

    private static final String INK = "1F2933";
    private static final String FAINT = "66717D";
    /** Tab of the first sheet. */
    static final String GUIDE = "3B5B7A";

    private static final String HEADING = "D9E2EC";
    private static final String HEADING_NEEDED = "A9BFD6";
    private static final String HEADING_SELDOM = "F1F4F7";
    private static final String INPUT = "FFF8E1";
    private static final String INPUT_NEEDED = "FFE59A";
    private static final String LINE = "C3CAD3";
    private static final int TITLE_SIZE = 15;
    private static final int SMALL = 8;

    private Look() {}

    static void title(StyleSetter style) {
        style.bold().fontSize(TITLE_SIZE).fontColor(INK).set();
    }

    static void mark(StyleSetter style) {
        style.fontSize(SMALL).fontColor(LINE).set();
    }

    static void text(StyleSetter style) {
        style.wrapText(true).verticalAlignment("top").fontColor(INK).set();
    }

    static void name(StyleSetter style) {
        style.fontSize(SMALL).fontColor(FAINT).verticalAlignment("center").set();
    }

    static void heading(StyleSetter style) {
        box(style.bold().fontColor(INK).fillColor(HEADING).wrapText(true).verticalAlignment("center"));
    }

    /** Heading of a column that must be filled in. */
    static void neededHeading(StyleSetter style) {
        box(style.bold().fontColor(INK).fillColor(HEADING_NEEDED).wrapText(true).verticalAlignment("center"));
    }

    /** Heading of a column that few people fill in. */
    static void seldomHeading(StyleSetter style) {
        box(style.fontColor(INK).fillColor(HEADING_SELDOM).wrapText(true).verticalAlignment("center"));
    }

    /** Color of a sheet's tab, by how much it is needed. */
    static String tab(String need) {
        return switch (need) {
            case "needed" -> "E0A100";
            case "usual" -> "FFE59A";
            default -> LINE;
        };
    }

    static void group(StyleSetter style) {
        style.bold().fontColor(INK).fillColor("EEF2F6").set();
    }

    /** The example row, in a number format or "" for text as written. */
    static void example(StyleSetter style, String format) {
        StyleSetter cell =
                format.isEmpty() ? style : style.format(format); // set once: twice, borders spread to other cells
        box(cell.italic().fontColor(FAINT).fillColor(HEADING_SELDOM).wrapText(false));
    }

    /** A cell that may or must be filled in, in a number format or "" for text as written. */
    static void input(StyleSetter style, String format, boolean isRequired) {
        StyleSetter cell = style.fillColor(isRequired ? INPUT_NEEDED : INPUT).verticalAlignment("center");
        StyleSetter open = cell.protectionOption(ProtectionOption.LOCKED, false);
        box(format.isEmpty() ? open : open.format(format));
    }

    /** A cell that may be changed but does not ask for it. */
    static void open(StyleSetter style) {
        style.fontColor(FAINT)
                .italic()
                .protectionOption(ProtectionOption.LOCKED, false)
                .set();
    }

    private static void box(StyleSetter style) {
        style.borderStyle(BorderStyle.THIN).borderColor(LINE).set();
    }

    /** Locks what is not for input; rows may still be put in and sorted, columns made wider. */
    static void lock(Worksheet sheet) {
        sheet.protect(
                PASSWORD,
                Set.of(
                        SheetProtectionOption.SHEET,
                        SheetProtectionOption.INSERT_COLUMNS,
                        SheetProtectionOption.DELETE_COLUMNS,
                        SheetProtectionOption.INSERT_HYPERLINKS,
                        SheetProtectionOption.PIVOT_TABLES));
    }
}
