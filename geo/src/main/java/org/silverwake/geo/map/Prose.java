// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** Text in lines of a given width. */
final class Prose {
    private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);
    private static final double LEADING = 1.22;

    private Prose() {}

    static double width(String text, Font font) {
        return font.getStringBounds(text, PAPER).getWidth();
    }

    /** The text broken into lines; a word longer than the width stands alone. */
    static List<String> wrap(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > width) {
                lines.add(line.toString());
                line = new StringBuilder(word);
            } else {
                line = new StringBuilder(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** Draws wrapped text from its top left corner and gives the height used [points]. */
    static double draw(Graphics2D g, String text, Font font, double x, double y, double width) {
        double step = LEADING * font.getSize2D();
        double top = y;
        g.setFont(font);
        for (String line : wrap(text, font, width)) {
            g.drawString(line, (float) x, (float) (top + 0.95 * font.getSize2D()));
            top += step;
        }
        return top - y;
    }

    /** Height that wrapped text needs [points]. */
    static double height(String text, Font font, double width) {
        return LEADING * font.getSize2D() * wrap(text, font, width).size();
    }

    /** The largest size of a font, from its own downwards, at which a text is no wider [points]. */
    static Font fitting(String text, Font font, double width) {
        double wide = width(text, font);
        return wide <= width ? font : font.deriveFont((float) (font.getSize2D() * width / wide));
    }
}
