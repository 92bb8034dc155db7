// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Graphics2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Drawings as pages of one PDF (ISO 32000): lines as lines, texts as texts, with the letters used. No date and a fixed number. */
final class PdfFile {
    private static final long NUMBER = 1;

    private PdfFile() {}

    static void write(Path file, double width, double height, List<Consumer<Graphics2D>> painters) {
        WholeFile.write(file, out -> {
            try (PDDocument document = new PDDocument()) {
                document.setDocumentId(NUMBER);
                PdfBoxGraphics2DFontTextDrawer letters = letters(document);
                for (Consumer<Graphics2D> painter : painters) {
                    page(document, letters, new PDRectangle((float) width, (float) height), painter);
                }
                document.save(out);
            }
        });
    }

    private static PdfBoxGraphics2DFontTextDrawer letters(PDDocument document) throws IOException {
        PdfBoxGraphics2DFontTextDrawer letters = new PdfBoxGraphics2DFontTextDrawer();
        for (Fonts.Face face : Fonts.Face.values()) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.open()));
            document.registerTrueTypeFontForClosing(font);
            // else "fl" becomes one letter, which a search for "flow" does not find
            font.setEnableGsub(false);
            letters.registerFont(face.font().getFontName(), PDType0Font.load(document, font, true));
        }
        return letters;
    }

    private static void page(
            PDDocument document, PdfBoxGraphics2DFontTextDrawer letters, PDRectangle size, Consumer<Graphics2D> painter)
            throws IOException {
        PDPage page = new PDPage(size);
        document.addPage(page);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, size.getWidth(), size.getHeight());
        g.setFontTextDrawer(letters);
        painter.accept(g);
        g.dispose();
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }
}
