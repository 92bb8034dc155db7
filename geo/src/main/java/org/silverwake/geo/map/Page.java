// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** A page with a heading, room for a map on the left and a panel on the right [points]. */
final class Page {
    private static final double WIDTH = Paper.A4.width();
    private static final double HEIGHT = Paper.A4.height();
    private static final double MARGIN = 18;
    private static final double BAND = 27;
    private static final double PANEL = 262;
    private static final double LEFT_RIM = 14;
    private static final double BOTTOM_RIM = 42;
    private static final Color INK = Color.decode(MapStyles.INK);
    static final Color BAND_COLOR = new Color(0x2b, 0x0a, 0x2f);

    private final Graphics2D g;
    private double top = MARGIN;

    /**
     * Lays a page out on the paper that g draws on. Everything is as on A4, enlarged for a larger sheet.
     *
     * @throws IllegalArgumentException if the paper stands upright: the panel finds no room beside a map there
     */
    Page(Graphics2D g, Paper paper) {
        if (paper.isPortrait()) {
            throw new IllegalArgumentException("a map with its panel needs paper that lies; give it in landscape");
        }
        this.g = g;
        g.scale(paper.width() / WIDTH, paper.width() / WIDTH);
    }

    /** Draws band, title and subtitle; what comes later stands below them. */
    void heading(String title, String subtitle, Optional<String> band) {
        if (band.isPresent()) {
            g.setColor(BAND_COLOR);
            g.fill(new Rectangle2D.Double(0, 0, WIDTH, BAND));
            g.setColor(Color.WHITE);
            var font = Prose.fitting(band.get(), Fonts.bold(17), WIDTH - 2 * MARGIN);
            g.setFont(font);
            g.drawString(band.get(), (float) ((WIDTH - Prose.width(band.get(), font)) / 2), 19.5f);
            top = BAND + 6;
        }
        g.setColor(INK);
        double width = WIDTH - 2 * MARGIN;
        top += Prose.draw(g, title, Prose.fitting(title, Fonts.bold(25), width), MARGIN, top - 4, width) - 3;
        top += Prose.draw(g, subtitle, Prose.fitting(subtitle, Fonts.regular(16), width), MARGIN, top, width) + 4;
    }

    Rectangle2D mapView() {
        double left = MARGIN + LEFT_RIM;
        double right = WIDTH - MARGIN - PANEL - 14;
        return new Rectangle2D.Double(left, top, right - left, HEIGHT - MARGIN - BOTTOM_RIM - top);
    }

    /** What a low map leaves free below its scale bar; height 0 or less where there is nothing. */
    Rectangle2D below(Rectangle2D map) {
        double from = map.getMaxY() + BOTTOM_RIM;
        return new Rectangle2D.Double(MARGIN, from, map.getMaxX() - MARGIN, Math.max(0, HEIGHT - MARGIN - from));
    }

    Rectangle2D panel() {
        return new Rectangle2D.Double(WIDTH - MARGIN - PANEL, top, PANEL, HEIGHT - MARGIN - top);
    }
}
