// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Shares of sources at places: a bar for each place, its parts in greys and slants of their own, each named in the key beside them. */
final class WallBars {
    /** The looks of sources in turn: lightness changes by 20 L* or more from one to the next; slants part those that come again. */
    static final List<String> FILLS = List.of("#1d0824", "#8a4a78", "#dcb9cf", "#454f5c", "#98a4b3", "#e3e7ec");

    private static final Color INK = Color.decode(MapStyles.INK);
    private static final double KEY = 14;
    private static final double KEY_STEP = 1.5;
    private static final double SWATCH = 30;
    private static final double NAME = 15;
    private static final double AMOUNT = 10;
    private static final double LARGEST_BAR = 26;

    private final WallSheet.Bars bars;

    WallBars(WallSheet.Bars bars) {
        this.bars = bars;
    }

    void paint(Graphics2D g, Rectangle2D room) {
        double y = room.getY();
        double each = (room.getMaxY() - y) / Math.max(1, bars.rows().size());
        double bar = Math.min(LARGEST_BAR, 0.44 * each);
        double letters = Math.min(NAME, 0.4 * each);
        for (WallSheet.Bars.Row row : bars.rows()) {
            row(g, room, row, y, bar, letters);
            y += Math.min(each, LARGEST_BAR + 2.4 * NAME);
        }
    }

    /** The sources and their looks, so far below the upper end of a room. */
    void key(Graphics2D g, Rectangle2D room, double below) {
        double y = room.getY() + below;
        for (int k = 0; k < bars.sources().size(); k++) {
            String source = bars.sources().get(k);
            Font font = Prose.fitting(source, Fonts.regular(KEY), room.getWidth() - SWATCH);
            part(g, new Rectangle2D.Double(room.getX(), y + 2, SWATCH - 6, KEY), k);
            g.setColor(INK);
            Prose.draw(g, source, font, room.getX() + SWATCH, y + 0.5, 2 * room.getWidth());
            y += KEY_STEP * KEY;
        }
    }

    static double keyHeight(WallSheet.Bars bars) {
        return bars.sources().size() * KEY_STEP * KEY;
    }

    private void row(Graphics2D g, Rectangle2D room, WallSheet.Bars.Row row, double y, double bar, double letters) {
        g.setColor(INK);
        Font bold = Fonts.bold(letters);
        Prose.draw(g, row.place(), bold, room.getX(), y, room.getWidth());
        Font font = Fonts.regular(Math.min(AMOUNT, letters));
        double width = Prose.width(row.amount(), font);
        Prose.draw(g, row.amount(), font, room.getMaxX() - width, y + letters - font.getSize2D(), 2 * width);
        double x = room.getX();
        double top = y + 1.25 * letters;
        for (int k = 0; k < row.shares().size(); k++) {
            double wide = row.shares().get(k) * room.getWidth();
            Rectangle2D part = new Rectangle2D.Double(x, top, wide, bar);
            part(g, part, k);
            share(g, part, row.words().get(k), k);
            x += wide;
        }
    }

    private static void part(Graphics2D g, Rectangle2D part, int source) {
        if (part.getWidth() <= 0) {
            return;
        }
        g.setColor(Color.decode(FILLS.get(source % FILLS.size())));
        g.fill(part);
        g.setStroke(new BasicStroke(0.8f));
        if (source >= FILLS.size()) {
            g.setColor(Color.WHITE);
            for (double x = part.getX() + 4; x < part.getMaxX(); x += 6) {
                g.draw(new Line2D.Double(x, part.getY(), x, part.getMaxY()));
            }
        }
        g.setColor(INK);
        g.draw(part);
    }

    /** The share in words within its part, where it fits. */
    private static void share(Graphics2D g, Rectangle2D part, String words, int source) {
        Font font = Fonts.bold(0.55 * part.getHeight());
        double width = Prose.width(words, font);
        if (width + 4 > part.getWidth() || source >= FILLS.size()) {
            return;
        }
        Color fill = Color.decode(FILLS.get(source));
        g.setColor(Contrast.ratio(fill, Color.WHITE) >= Contrast.ratio(fill, INK) ? Color.WHITE : INK);
        Prose.draw(
                g, words, font, part.getCenterX() - width / 2, part.getCenterY() - 0.6 * font.getSize2D(), 2 * width);
    }
}
