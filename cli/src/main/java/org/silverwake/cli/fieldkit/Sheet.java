// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** One A4 page, drawn upon in mm from its upper left corner; sizes of letters in points. */
final class Sheet implements AutoCloseable {
    /** Width of the page [mm]. */
    static final double WIDTH = 210;
    /** Height of the page [mm]. */
    static final double HEIGHT = 297;

    private static final double POINTS = 72 / 25.4;
    private static final float THIN = 0.5f;
    private static final float GREY = 0.55f;
    private static final double LEADING = 1.3;

    private final PDPageContentStream content;
    private final Letters letters;

    Sheet(PdfBook book) {
        PDPage page = new PDPage(PDRectangle.A4);
        this.letters = book.letters();
        this.content = book.page(page);
        write(() -> content.setLineWidth(THIN));
    }

    /** What PDFBox may throw, in one place. */
    private interface Drawing {
        void run() throws IOException;
    }

    private static void write(Drawing drawing) {
        try {
            drawing.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Height of a line of letters of a size [mm]. */
    static double lineHeight(double size) {
        return size * LEADING / POINTS;
    }

    /** Writes a line; y is its baseline. */
    void text(double x, double y, double size, boolean bold, String text) {
        write(() -> {
            content.beginText();
            content.setFont(letters.font(bold), (float) size);
            content.newLineAtOffset((float) (x * POINTS), (float) ((HEIGHT - y) * POINTS));
            content.showText(letters.drawable(text));
            content.endText();
        });
    }

    /** Writes a line that fits a width: smaller letters first, then cut. */
    void fitted(double x, double y, double width, double size, double smallest, boolean bold, String text) {
        double needed = letters.width(text, bold, size) / POINTS;
        double fitting = needed <= width ? size : Math.max(smallest, size * width / needed);
        text(x, y, fitting, bold, letters.cut(text, bold, fitting, width * POINTS));
    }

    /** Writes a line that ends at x, cut where it is wider than a width. */
    void right(double x, double y, double width, double size, String text) {
        String cut = letters.cut(text, false, size, width * POINTS);
        text(x - letters.width(cut, false, size) / POINTS, y, size, false, cut);
    }

    /** Writes words over several lines; the baseline of the next line. */
    double wrapped(double x, double y, double width, double size, boolean bold, String text) {
        double next = y;
        for (String line : lines(text, bold, size, width)) {
            text(x, next, size, bold, line);
            next += lineHeight(size);
        }
        return next;
    }

    /** The lines that a text takes in a width [mm]. */
    List<String> lines(String text, boolean bold, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && letters.width(longer, bold, size) > width * POINTS) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(letters.cut(line, bold, size, width * POINTS));
        return lines;
    }

    /** A label and a rule to write on, from x to the end [mm]. */
    void blank(double x, double y, double end, double size, String label) {
        text(x, y, size, false, label);
        double from = x + letters.width(label, false, size) / POINTS + 1.5;
        line(from, y + 0.8, end, y + 0.8);
    }

    /** An empty box to be crossed, and what it means; where the next may begin. */
    double box(double x, double y, double size, String label) {
        double side = size * 0.95 / POINTS;
        frame(x, y - side * 0.85, side, side);
        text(x + side + 1.2, y, size, false, label);
        return x + side + 1.2 + letters.width(label, false, size) / POINTS + 4;
    }

    void line(double x1, double y1, double x2, double y2) {
        write(() -> {
            content.moveTo((float) (x1 * POINTS), (float) ((HEIGHT - y1) * POINTS));
            content.lineTo((float) (x2 * POINTS), (float) ((HEIGHT - y2) * POINTS));
            content.stroke();
        });
    }

    /** A frame; y is its upper edge. */
    void frame(double x, double y, double width, double height) {
        write(() -> {
            content.addRect(
                    (float) (x * POINTS), (float) ((HEIGHT - y - height) * POINTS), (float) (width * POINTS), (float)
                            (height * POINTS));
            content.stroke();
        });
    }

    /** A grey dashed frame, to cut along. */
    void cutFrame(double x, double y, double width, double height) {
        write(() -> {
            content.saveGraphicsState();
            content.setStrokingColor(GREY);
            content.setLineDashPattern(new float[] {1, 2}, 0);
        });
        frame(x, y, width, height);
        write(content::restoreGraphicsState);
    }

    @Override
    public void close() {
        write(content::close);
    }
}
