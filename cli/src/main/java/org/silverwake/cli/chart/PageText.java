// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;

/** Draws text on a page measured in points; breaks lines between words. Measures the same whatever the file is. */
final class PageText {
    private static final double LEADING = 1.2;
    private static final float HALO = 3;
    private static final double QUARTER_TURN = Math.PI / 2;
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private final Graphics2D g;

    PageText(Graphics2D g) {
        this.g = g;
    }

    Graphics2D graphics() {
        return g;
    }

    double width(String words, Font font) {
        return font.getStringBounds(words, MEASURE).getWidth();
    }

    double widest(List<String> lines, Font font) {
        return lines.stream().mapToDouble(line -> width(line, font)).max().orElse(0);
    }

    static double lineHeight(Font font) {
        return font.getSize2D() * LEADING;
    }

    /** Text from its left end on a baseline. */
    void draw(String words, Font font, Color color, double x, double baseline) {
        if (!words.isEmpty()) {
            g.setColor(color);
            g.setFont(font);
            g.drawString(words, (float) x, (float) baseline);
        }
    }

    /** Text with a white rim, read from below where it is upright. */
    void drawOver(String words, Font font, double x, double baseline, boolean upright) {
        AffineTransform at = AffineTransform.getTranslateInstance(x, baseline);
        if (upright) {
            at.rotate(-QUARTER_TURN);
        }
        Shape outline = new TextLayout(words, font, MEASURE).getOutline(at);
        g.setColor(Theme.PAPER);
        g.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(outline);
        if (upright) {
            upright(words, font, x, baseline);
        } else {
            draw(words, font, Theme.TEXT, x, baseline);
        }
    }

    /** Text read from below, from its lower end on a baseline. */
    void upright(String words, Font font, double x, double y) {
        AffineTransform before = g.getTransform();
        g.rotate(-QUARTER_TURN, x, y);
        draw(words, font, Theme.TEXT, x, y);
        g.setTransform(before);
    }

    /** Lines below one another from a top edge; the bottom edge of the last. */
    double drawLines(List<String> lines, Font font, Color color, double x, double top) {
        double y = top;
        for (String line : lines) {
            draw(line, font, color, x, y + font.getSize2D());
            y += lineHeight(font);
        }
        return y;
    }

    /** Lines no wider than a width; a single long word stands by itself. */
    List<String> wrap(String words, Font font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, font) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** The largest size from {@code most} downward, in half points, at which words fit a width on one line. */
    double fit(String words, boolean heavy, double most, double least, double width) {
        double size = most;
        while (size > least && width(words, heavy ? Theme.bold(size) : Theme.regular(size)) > width) {
            size -= 0.5;
        }
        return size;
    }
}
