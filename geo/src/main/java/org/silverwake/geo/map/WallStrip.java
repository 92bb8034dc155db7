// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A profile in a strip: the band between low and high estimate on a scale of powers of ten, the value compared with, places below. */
final class WallStrip {
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final Color BAND = Color.decode("#c9a9b8");
    private static final double HEADING = 11;
    private static final double LETTERS = 8.5;
    private static final double NAMES = 9.5;
    private static final double BELOW = 15;
    /** Least values that are told apart, as a share of the largest [-]. Chosen: five powers of ten. */
    private static final double SMALLEST = 1e-5;

    private final WallSheet.Strip strip;
    private final double low;
    private final double high;
    private final double from;
    private final double to;

    WallStrip(WallSheet.Strip strip) {
        this.strip = strip;
        List<WallSheet.Strip.At> all =
                strip.stretches().stream().flatMap(List::stream).toList();
        double largest = Math.max(
                strip.guide(),
                all.stream().mapToDouble(WallSheet.Strip.At::high).max().orElse(1));
        double least = all.stream()
                .mapToDouble(WallSheet.Strip.At::low)
                .filter(v -> v > 0)
                .min()
                .orElse(largest / 10);
        double lowest = strip.guide() > 0 ? Math.min(least, strip.guide()) : least;
        low = Math.floor(Math.log10(Math.max(lowest, SMALLEST * largest)));
        high = Math.max(low + 1, Math.ceil(Math.log10(largest)));
        from = all.stream().mapToDouble(WallSheet.Strip.At::kilometers).min().orElse(0);
        to = Math.max(
                from + 1e-3,
                all.stream().mapToDouble(WallSheet.Strip.At::kilometers).max().orElse(1));
    }

    void paint(Graphics2D g, Rectangle2D room) {
        g.setColor(INK);
        Font bold = Prose.fitting(strip.heading(), Fonts.bold(HEADING), room.getWidth());
        Prose.draw(g, strip.heading(), bold, room.getX(), room.getY(), 2 * room.getWidth());
        double top = room.getY() + 1.4 * HEADING;
        Rectangle2D plot = new Rectangle2D.Double(room.getX(), top, room.getWidth(), room.getMaxY() - BELOW - top);
        for (List<WallSheet.Strip.At> stretch : strip.stretches()) {
            band(g, plot, stretch);
        }
        guide(g, plot);
        g.setColor(INK);
        g.setStroke(new BasicStroke(0.8f));
        g.draw(plot);
        places(g, plot);
    }

    private double x(Rectangle2D plot, double kilometers) {
        return plot.getX() + (kilometers - from) / (to - from) * plot.getWidth();
    }

    private double y(Rectangle2D plot, double value) {
        double log = Math.max(low, Math.min(high, Math.log10(Math.max(value, Double.MIN_NORMAL))));
        return plot.getMaxY() - (log - low) / (high - low) * plot.getHeight();
    }

    private void band(Graphics2D g, Rectangle2D plot, List<WallSheet.Strip.At> stretch) {
        if (stretch.isEmpty()) {
            return;
        }
        Path2D area = new Path2D.Double();
        Path2D edge = new Path2D.Double();
        for (int k = 0; k < stretch.size(); k++) {
            double x = x(plot, stretch.get(k).kilometers());
            double y = y(plot, stretch.get(k).high());
            if (k == 0) {
                area.moveTo(x, y);
                edge.moveTo(x, y);
            } else {
                area.lineTo(x, y);
                edge.lineTo(x, y);
            }
        }
        for (int k = stretch.size() - 1; k >= 0; k--) {
            area.lineTo(
                    x(plot, stretch.get(k).kilometers()), y(plot, stretch.get(k).low()));
        }
        area.closePath();
        g.setColor(BAND);
        g.fill(area);
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.4f));
        g.draw(edge);
    }

    private void guide(Graphics2D g, Rectangle2D plot) {
        if (!(strip.guide() > 0)) {
            return;
        }
        double y = y(plot, strip.guide());
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {6, 3}, 0));
        g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
        Font font = Fonts.bold(LETTERS);
        double width = Prose.width(strip.guideWords(), font);
        double text = y - 1.5 * LETTERS > plot.getY() ? y - 1.4 * LETTERS : y + 2;
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(plot.getMaxX() - width - 8, text, width + 6, 1.25 * LETTERS));
        g.setColor(INK);
        Prose.draw(g, strip.guideWords(), font, plot.getMaxX() - width - 5, text, 2 * width);
    }

    /** Names that find room, from the left; each under its tick. */
    private void places(Graphics2D g, Rectangle2D plot) {
        Font font = Fonts.regular(NAMES);
        double free = plot.getX();
        double end = plot.getMaxX() - Prose.width(strip.axis(), Fonts.regular(LETTERS)) - 6;
        g.setStroke(new BasicStroke(1));
        for (WallSheet.Strip.Place place : strip.places()) {
            double x = x(plot, place.kilometers());
            double width = Prose.width(place.name(), font);
            double left = Math.max(plot.getX(), x - width / 2);
            if (x < plot.getX() || x > plot.getMaxX()) {
                continue;
            }
            g.draw(new Line2D.Double(x, plot.getMaxY(), x, plot.getMaxY() + 3));
            if (left >= free && left + width < end) {
                Prose.draw(g, place.name(), font, left, plot.getMaxY() + 2, 2 * width);
                free = left + width + 5;
            }
        }
        Prose.draw(g, strip.axis(), Fonts.regular(LETTERS), end + 6, plot.getMaxY() + 3, plot.getWidth());
    }
}
