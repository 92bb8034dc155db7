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
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A profile in a strip: the band between low and high estimate on a scale of powers of ten, the value compared with, places below. */
final class WallStrip {
    private static final Color INK = Color.decode(MapStyles.INK);
    static final String BAND = "#c9a9b8";
    static final double GUIDE_WIDTH = 1.6;
    static final List<Double> GUIDE_DASH = List.of(6.0, 3.0);
    private static final double HEADING = 11;
    private static final double LETTERS = 8.5;
    private static final double NAMES = 9.5;
    private static final double LEVELS = 8;
    private static final double BELOW = 15;
    /** Least values that are told apart, as a share of the largest [-]. Chosen: five powers of ten. */
    private static final double SMALLEST = 1e-5;

    /** Least part of the height below the value compared with, so that its words find room [-]. */
    private static final double BELOW_GUIDE = 0.25;

    private final WallSheet.Strip strip;
    private final double low;
    private final double high;
    private final double from;
    private final double to;

    /** Of strips that are to be compared, on one scale of values. */
    static List<WallStrip> of(List<WallSheet.Strip> strips) {
        double largest = strips.stream()
                .flatMap(WallStrip::points)
                .mapToDouble(WallSheet.Strip.At::high)
                .max()
                .orElse(1);
        largest = Math.max(largest, strips.get(0).guide());
        double least = strips.stream()
                .flatMap(WallStrip::points)
                .mapToDouble(WallSheet.Strip.At::low)
                .filter(v -> v > 0)
                .min()
                .orElse(largest / 10);
        double guide = strips.get(0).guide();
        double lowest = guide > 0 ? Math.min(least, guide) : least;
        double low = Math.floor(Math.log10(Math.max(lowest, SMALLEST * largest)));
        double high = Math.max(low + 1, Math.ceil(Math.log10(largest)));
        if (guide > 0 && Math.log10(guide) - low < BELOW_GUIDE * (high - low)) {
            low--;
        }
        List<WallStrip> all = new ArrayList<>();
        for (WallSheet.Strip strip : strips) {
            all.add(new WallStrip(strip, low, high));
        }
        return all;
    }

    private WallStrip(WallSheet.Strip strip, double low, double high) {
        this.strip = strip;
        this.low = low;
        this.high = high;
        from = points(strip).mapToDouble(WallSheet.Strip.At::kilometers).min().orElse(0);
        to = Math.max(
                from + 1e-3,
                points(strip).mapToDouble(WallSheet.Strip.At::kilometers).max().orElse(1));
    }

    private static Stream<WallSheet.Strip.At> points(WallSheet.Strip strip) {
        return strip.stretches().stream().flatMap(List::stream);
    }

    void paint(Graphics2D g, Rectangle2D room) {
        g.setColor(INK);
        Font bold = Prose.fitting(strip.heading(), Fonts.bold(HEADING), room.getWidth());
        Prose.draw(g, strip.heading(), bold, room.getX(), room.getY(), 2 * room.getWidth());
        double top = room.getY() + 1.65 * HEADING;
        double left = strip.levels().stream()
                .filter(this::isWithin)
                .mapToDouble(level -> Prose.width(level.words(), Fonts.regular(LEVELS)) + 4)
                .max()
                .orElse(0);
        Rectangle2D plot =
                new Rectangle2D.Double(room.getX() + left, top, room.getWidth() - left, room.getMaxY() - BELOW - top);
        lines(g, plot);
        for (List<WallSheet.Strip.At> stretch : strip.stretches()) {
            band(g, plot, stretch);
        }
        guide(g, plot);
        levels(g, plot);
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
        g.setColor(Color.decode(BAND));
        g.fill(area);
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.4f));
        g.draw(edge);
    }

    private boolean isWithin(WallSheet.Strip.Level level) {
        double log = Math.log10(level.value());
        return log > low - 0.01 && log < high + 0.01;
    }

    private void lines(Graphics2D g, Rectangle2D plot) {
        g.setColor(WallMaps.PALE);
        g.setStroke(new BasicStroke(0.8f));
        strip.levels().stream().filter(this::isWithin).forEach(level -> {
            double y = y(plot, level.value());
            g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
        });
    }

    /** Words of the powers of ten left of their lines, as many as find room, from below. */
    private void levels(Graphics2D g, Rectangle2D plot) {
        Font font = Fonts.regular(LEVELS);
        double free = plot.getMaxY() + LEVELS;
        g.setColor(INK);
        for (WallSheet.Strip.Level level : strip.levels()) {
            double y = y(plot, level.value());
            if (isWithin(level) && y + 0.6 * LEVELS <= free) {
                double width = Prose.width(level.words(), font);
                Prose.draw(g, level.words(), font, plot.getX() - width - 3, y - 0.62 * LEVELS, 2 * width);
                free = y - 0.7 * LEVELS;
            }
        }
    }

    private void guide(Graphics2D g, Rectangle2D plot) {
        if (!(strip.guide() > 0)) {
            return;
        }
        double y = y(plot, strip.guide());
        g.setColor(INK);
        g.setStroke(new BasicStroke(
                (float) GUIDE_WIDTH,
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_ROUND,
                10,
                new float[] {GUIDE_DASH.get(0).floatValue(), GUIDE_DASH.get(1).floatValue()},
                0));
        g.draw(new Line2D.Double(plot.getX(), y, plot.getMaxX(), y));
        Font font = Fonts.bold(LETTERS);
        double width = Prose.width(strip.guideWords(), font);
        double text = y + 1.5 * LETTERS < plot.getMaxY() ? y + 1 : y - 1.4 * LETTERS;
        Prose.draw(g, strip.guideWords(), font, plot.getMaxX() - width - 5, text, 2 * width);
    }

    /** Names that find room, from the left; each below its tick. */
    private void places(Graphics2D g, Rectangle2D plot) {
        Font font = Fonts.regular(NAMES);
        double free = plot.getX();
        double end = plot.getMaxX() - Prose.width(strip.axis(), Fonts.regular(LETTERS)) - 6;
        g.setStroke(new BasicStroke(1));
        for (WallSheet.Strip.Place place : strip.places()) {
            double x = x(plot, place.kilometers());
            double width = Prose.width(place.name(), font);
            double left = Math.max(plot.getX(), Math.min(x - width / 2, end - width));
            if (x < plot.getX() || x > plot.getMaxX()) {
                continue;
            }
            g.draw(new Line2D.Double(x, plot.getMaxY(), x, plot.getMaxY() + 3));
            if (left >= free && left + width >= x) {
                Prose.draw(g, place.name(), font, left, plot.getMaxY() + 2, 2 * width);
                free = left + width + 5;
            }
        }
        Prose.draw(g, strip.axis(), Fonts.regular(LETTERS), end + 6, plot.getMaxY() + 3, plot.getWidth());
    }
}
