// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;

/** A page with a heading, room for a map on the left and a panel on the right [points]. */
final class Page {
    private static final double MARGIN = 18;
    private static final double BAND = 27;
    private static final double PANEL = 262;
    private static final double LEFT_RIM = 14;
    private static final double BOTTOM_RIM = 42;
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final Color BAND_COLOR = new Color(0x2b, 0x0a, 0x2f);

    private final Paper paper;
    private final BufferedImage image;
    private final Graphics2D g;
    private double top = MARGIN;

    Page(Paper paper) {
        this.paper = paper;
        image = new BufferedImage(paper.columns(), paper.rows(), BufferedImage.TYPE_INT_RGB);
        g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.scale(paper.pixelsPerPoint(), paper.pixelsPerPoint());
    }

    Graphics2D graphics() {
        return g;
    }

    /** Draws band, title and subtitle; what comes later stands below them. */
    void heading(String title, String subtitle, Optional<String> band) {
        if (band.isPresent()) {
            g.setColor(BAND_COLOR);
            g.fill(new Rectangle2D.Double(0, 0, Paper.WIDTH, BAND));
            g.setColor(Color.WHITE);
            var font = Prose.fitting(band.get(), Fonts.bold(17), Paper.WIDTH - 2 * MARGIN);
            g.setFont(font);
            g.drawString(band.get(), (float) ((Paper.WIDTH - Prose.width(band.get(), font)) / 2), 19.5f);
            top = BAND + 6;
        }
        g.setColor(INK);
        double width = Paper.WIDTH - 2 * MARGIN;
        top += Prose.draw(g, title, Prose.fitting(title, Fonts.bold(25), width), MARGIN, top - 4, width) - 3;
        top += Prose.draw(g, subtitle, Prose.fitting(subtitle, Fonts.regular(16), width), MARGIN, top, width) + 4;
    }

    Rectangle2D mapView() {
        double left = MARGIN + LEFT_RIM;
        double right = Paper.WIDTH - MARGIN - PANEL - 14;
        return new Rectangle2D.Double(left, top, right - left, Paper.HEIGHT - MARGIN - BOTTOM_RIM - top);
    }

    /** What a low map leaves free below its scale bar; height 0 or less where there is nothing. */
    Rectangle2D below(Rectangle2D map) {
        double from = map.getMaxY() + BOTTOM_RIM;
        return new Rectangle2D.Double(MARGIN, from, map.getMaxX() - MARGIN, Math.max(0, Paper.HEIGHT - MARGIN - from));
    }

    Rectangle2D panel() {
        return new Rectangle2D.Double(Paper.WIDTH - MARGIN - PANEL, top, PANEL, Paper.HEIGHT - MARGIN - top);
    }

    void write(Path file) {
        g.dispose();
        PngFile.write(file, image, Paper.DOTS_PER_INCH);
    }
}
