// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.silverwake.cli.scenario.TableList;

/** Writes a workbook to be filled in, with what is known already in its cells. */
public final class WorkbookWriter {
    /** Columns for flow states and classes that there are room for, if no more are given. */
    private static final int FEWEST_STATES = 3;

    private static final double GUIDE_WIDTH = 104;
    private static final double NUMBER_WIDTH = 12;
    private static final double SIDE_MARGIN = 0.4;

    private final WorkbookWords words;
    private final WorkbookContents contents;
    private final Set<String> left;

    private WorkbookWriter(WorkbookContents contents, WorkbookWords words) {
        this.words = words;
        this.contents = contents;
        this.left = Rows.all(contents);
    }

    /**
     * Writes a workbook; a file that is there already is left alone.
     *
     * @param file the workbook, scenario.xlsx
     * @param contents what is known
     * @param language of its words, such as "en"
     * @throws IOException if it cannot be written, or is there already
     * @throws IllegalArgumentException if there are no words in the language, or the contents hold a key or a column that
     *     has no place in the workbook
     */
    public static void write(Path file, WorkbookContents contents, String language) throws IOException {
        new WorkbookWriter(contents, WorkbookWords.of(language)).write(file);
    }

    private void write(Path file) throws IOException {
        Path draft = Files.createTempFile("silverwake", ".xlsx");
        try {
            draft(draft);
            try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW)) {
                CommentBoxes.fit(draft, out);
            }
        } finally {
            Files.delete(draft);
        }
    }

    private void draft(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook book = new Workbook(out, "Silverwake", null)) {
            List<SheetPlan> plans = WorkbookPlan.sheets();
            guide(sheet(book, Marks.GUIDE), plans);
            Rows rows = new Rows(contents, left);
            int states = Math.max(FEWEST_STATES, rows.namesFor(TableList.STATE).size());
            int classes = Math.max(FEWEST_STATES, rows.namesFor(TableList.CLASS).size());
            for (SheetPlan plan : plans) {
                Worksheet sheet = sheet(book, plan.id());
                sheet.setTabColor(Look.tab(WorkbookPlan.need(plan.id())));
                sheet.repeatRows(SheetFrame.HEADINGS);
                if (plan.isOfKeys()) {
                    new KeySheet(sheet, words).write(plan, contents, left);
                } else {
                    new TableSheet(plan, sheet, words, states, classes).write(rows.of(plan));
                }
            }
        }
        if (!left.isEmpty()) {
            throw new IllegalArgumentException("the workbook has no place for " + String.join(", ", left));
        }
    }

    private Worksheet sheet(Workbook book, String id) {
        Worksheet sheet = book.newWorksheet(words.find("sheet." + id).orElse(id));
        sheet.pageOrientation("landscape");
        sheet.setFitToPage(true);
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
        sheet.leftMargin((float) SIDE_MARGIN);
        sheet.rightMargin((float) SIDE_MARGIN);
        sheet.paperSize(PaperSize.A4_PAPER);
        sheet.footer("&A", Position.LEFT);
        sheet.footer("&P / &N", Position.RIGHT);
        return sheet;
    }

    /** The first sheet: what to fill in, in which order, and the cautions. */
    private void guide(Worksheet sheet, List<SheetPlan> plans) {
        sheet.value(0, 0, Marks.SHEET + Marks.GUIDE);
        Look.mark(sheet.style(0, 0));
        sheet.value(0, 1, words.text("sheet.title"));
        Look.title(sheet.style(0, 1));
        sheet.width(0, NUMBER_WIDTH);
        sheet.width(1, GUIDE_WIDTH);
        int row = 1;
        row = paragraphs(sheet, row, "guide.steps", words.list("guide.step"));
        row = paragraphs(sheet, row, "guide.cautions", words.list("guide.caution"));
        row = paragraphs(sheet, row, "guide.cells", words.list("guide.cell"));
        List<String> sheets = plans.stream()
                .map(p -> words.text("sheet." + p.id()) + " (" + words.text("need." + WorkbookPlan.need(p.id())) + "): "
                        + words.text("about." + p.id()))
                .toList();
        paragraphs(sheet, row, "guide.sheets", sheets);
        sheet.setTabColor(Look.GUIDE);
        sheet.hideGridLines();
        Look.lock(sheet);
    }

    private int paragraphs(Worksheet sheet, int from, String heading, List<String> texts) {
        int row = from + 1;
        sheet.value(row, 1, words.text(heading));
        Look.group(sheet.style(row, 1));
        for (String text : texts) {
            row++;
            sheet.value(row, 1, text);
            Look.text(sheet.style(row, 1));
            sheet.rowHeight(row, SheetFrame.height(text, GUIDE_WIDTH));
        }
        return row + 1;
    }
}
