// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** A page of 8 by 5 inches with heading and foot, as all charts have it. */
final class ChartPage {
    static final double WIDTH = 576;
    static final double HEIGHT = 360;
    static final double MARGIN = 12;

    private static final int DOTS_PER_INCH = 300;
    private static final double POINTS_PER_INCH = 72;
    private static final double TITLE = 18;
    private static final double SUBTITLE = 11.5;
    private static final double SUBTITLE_LEAST = 9.5;
    private static final double FOOT = 8;
    private static final double CAUTION = 8.5;

    private ChartPage() {}

    /** Draws a page into a PNG file, 2400 by 1500 pixels at 300 dots per inch. */
    static void write(Path file, Font regular, Font bold, Consumer<PageText> drawing) throws IOException {
        double scale = DOTS_PER_INCH / POINTS_PER_INCH;
        BufferedImage image = new BufferedImage(
                (int) Math.round(WIDTH * scale), (int) Math.round(HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        smooth(g);
        drawing.accept(new PageText(g, regular, bold));
        g.dispose();
        PngFile.write(image, DOTS_PER_INCH, file);
    }

    /** Sets a page to fine drawing. */
    static void smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Title and what is below it; the bottom edge. */
    static double heading(String title, String below, PageText text) {
        double width = WIDTH - 2 * MARGIN;
        double size = text.fit(title, true, TITLE, TITLE / 2, width);
        double y = text.drawLines(List.of(title), text.bold(size), Ink.TEXT, MARGIN, MARGIN - 3);
        Font font = text.regular(text.fit(below, false, SUBTITLE, SUBTITLE_LEAST, width));
        return text.drawLines(text.wrap(below, font, width), font, Ink.TEXT, MARGIN, y) + 2;
    }

    /** Caution and imprint at the bottom; their top edge. */
    static double foot(String caution, String imprint, PageText text) {
        double width = WIDTH - 2 * MARGIN;
        Font font = text.regular(FOOT);
        Font heavy = text.bold(CAUTION);
        List<String> lines = text.wrap(caution, heavy, width);
        double imprintTop = HEIGHT - MARGIN + 4 - PageText.lineHeight(font);
        double top = imprintTop - lines.size() * PageText.lineHeight(heavy);
        text.drawLines(lines, heavy, Ink.TEXT, MARGIN, top);
        Font small = text.regular(text.fit(imprint, false, FOOT, FOOT / 2, width));
        text.drawLines(List.of(imprint), small, Ink.FAINT_TEXT, MARGIN, imprintTop);
        return top;
    }
}
