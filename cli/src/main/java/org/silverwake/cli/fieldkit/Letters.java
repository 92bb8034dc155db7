// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** DejaVu Sans, embedded with the letters that are used, so that names print the same everywhere. */
final class Letters {
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
    private static final String MISSING = "\u25a1"; // white square
    private static final String CUT = "\u2026"; // ellipsis
    private static final double PER_SIZE = 1000;

    private final PDFont regular;
    private final PDFont bold;

    Letters(PDDocument document) {
        this.regular = load(document, "DejaVuSans.ttf");
        this.bold = load(document, "DejaVuSans-Bold.ttf");
    }

    private static PDFont load(PDDocument document, String name) {
        try (InputStream in = Letters.class.getResourceAsStream(FOLDER + name)) {
            return PDType0Font.load(document, in, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    PDFont font(boolean isBold) {
        return isBold ? bold : regular;
    }

    /** The text with a blank for each control character, and a square for each letter that the font lacks. */
    String drawable(String text) {
        StringBuilder drawable = new StringBuilder();
        text.codePoints().forEach(point -> {
            String letter = Character.isISOControl(point) ? " " : Character.toString(point);
            drawable.append(has(letter) ? letter : MISSING);
        });
        return drawable.toString();
    }

    private boolean has(String letter) {
        try {
            return regular.encode(letter).length > 0 && bold.encode(letter).length > 0;
        } catch (IllegalArgumentException e) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Width [points] of a text in letters of a size [points]. */
    double width(String text, boolean isBold, double size) {
        try {
            return font(isBold).getStringWidth(drawable(text)) * size / PER_SIZE;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text, cut where it is wider than a width [points]. */
    String cut(String text, boolean isBold, double size, double width) {
        if (width(text, isBold, size) <= width + 1e-6) {
            return text;
        }
        String cut = text;
        while (!cut.isEmpty() && width(cut.strip() + CUT, isBold, size) > width) {
            cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
        }
        return cut.strip() + CUT;
    }
}
