// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.silverwake.geo.label.Box;

/** What an independent reader finds on a printed sheet: letters and where they stand, in points of an A4 page, y upwards. */
final class SheetReader {
    private static final double A4_LONG = 297 / 25.4 * 72;
    /** Capitals of DejaVu Sans are 0.729 em high. */
    private static final double CAPITAL = 0.729;

    /**
     * A letter.
     *
     * @param box a little smaller than it is [points]
     * @param size of its font [points]
     * @param text which text it is of, counted in the order drawn
     */
    record Letter(String letter, Box box, double size, int text) {}

    private final List<Letter> letters = new ArrayList<>();
    private final String text;
    private final TreeSet<String> fontsNotEmbedded = new TreeSet<>();
    private double pageWidth;
    private double pageHeight;

    SheetReader(Path pdf) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            var page = document.getPage(0);
            double scale =
                    Math.max(page.getMediaBox().getWidth(), page.getMediaBox().getHeight()) / A4_LONG;
            pageWidth = page.getMediaBox().getWidth() / scale;
            pageHeight = page.getMediaBox().getHeight() / scale;
            Stripper stripper = new Stripper(scale);
            text = stripper.getText(document);
            fonts(page.getResources());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fonts(PDResources resources) throws IOException {
        if (resources == null) {
            return;
        }
        for (COSName name : resources.getFontNames()) {
            PDFont font = resources.getFont(name);
            if (!font.isEmbedded()) {
                fontsNotEmbedded.add(font.getName());
            }
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject form) {
                fonts(form.getResources());
            }
        }
    }

    String text() {
        return text;
    }

    List<Letter> letters() {
        return letters;
    }

    TreeSet<String> fontsNotEmbedded() {
        return fontsNotEmbedded;
    }

    /** Letters of different texts that lie on one another, and letters beyond the page. */
    List<String> overlaps() {
        List<String> found = new ArrayList<>();
        Box page = Box.upright(0, 0, pageWidth, pageHeight);
        for (int i = 0; i < letters.size(); i++) {
            Letter a = letters.get(i);
            if (!a.box().isWithin(page)) {
                found.add(a.letter() + " beyond the page at " + a.box());
            }
            for (int j = i + 1; j < letters.size(); j++) {
                Letter b = letters.get(j);
                if (a.text() != b.text() && a.box().overlaps(b.box())) {
                    found.add(line(a.text()) + " / " + line(b.text()) + " at "
                            + Math.round(a.box().x()) + " " + Math.round(a.box().y()));
                }
            }
        }
        return found;
    }

    private String line(int text) {
        StringBuilder line = new StringBuilder();
        letters.stream().filter(l -> l.text() == text).forEach(l -> line.append(l.letter()));
        return line.toString();
    }

    /** Size of the letters of the first text that has these words [points on A4]; 0 where there is none. */
    double sizeOf(String words) {
        String wanted = words.replace(" ", "");
        int texts = letters.isEmpty() ? 0 : letters.get(letters.size() - 1).text();
        for (int k = 0; k <= texts; k++) {
            if (line(k).replace(" ", "").contains(wanted)) {
                int text = k;
                return letters.stream()
                        .filter(l -> l.text() == text)
                        .findFirst()
                        .orElseThrow()
                        .size();
            }
        }
        return 0;
    }

    /** Height of capitals on A1 [mm] of a size on A4 [points]. */
    static double onA1(double size) {
        return CAPITAL * size * 841 / 297 * 25.4 / 72;
    }

    /** Keeps letters as the page has them; a new text begins where letters do not follow on one another. */
    private final class Stripper extends PDFTextStripper {
        private final double scale;
        private TextPosition before;
        private int count;

        Stripper(double scale) throws IOException {
            this.scale = scale;
        }

        @Override
        protected void processTextPosition(TextPosition at) {
            super.processTextPosition(at);
            var m = at.getTextMatrix();
            double size = Math.hypot(m.getScaleX(), m.getShearY()) / scale;
            double angle = Math.atan2(m.getShearY(), m.getScaleX());
            double width = Math.max(at.getWidthDirAdj(), 0) / scale;
            double x = m.getTranslateX() / scale;
            double y = m.getTranslateY() / scale;
            if (before == null || !follows(at)) {
                count++;
            }
            before = at;
            if (at.getUnicode().isBlank()) {
                return;
            }
            double up = 0.36 * size;
            letters.add(new Letter(
                    at.getUnicode(),
                    new Box(
                            x + Math.cos(angle) * width / 2 - Math.sin(angle) * up,
                            y + Math.sin(angle) * width / 2 + Math.cos(angle) * up,
                            0.42 * width,
                            0.33 * size,
                            angle),
                    size,
                    count));
        }

        private boolean follows(TextPosition at) {
            var a = before.getTextMatrix();
            var b = at.getTextMatrix();
            double size = Math.hypot(a.getScaleX(), a.getShearY());
            double gap = Math.hypot(b.getTranslateX() - a.getTranslateX(), b.getTranslateY() - a.getTranslateY());
            double angle = Math.atan2(b.getTranslateY() - a.getTranslateY(), b.getTranslateX() - a.getTranslateX());
            double along = Math.atan2(a.getShearY(), a.getScaleX());
            return gap < 1.3 * size && Math.abs(Math.sin(angle - along)) < 0.05;
        }
    }
}
