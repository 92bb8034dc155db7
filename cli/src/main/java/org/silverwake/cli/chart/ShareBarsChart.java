// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.chart.ShareBars.Kind;

/**
 * Draws shares as bars of 100 %, 8 by 5 inches. Every part carries its source's letter where there is room, so that the
 * picture can be read in grey; background is hatched.
 */
public final class ShareBarsChart {
    private static final double LIST = 196;
    private static final double LABELS = 86;
    private static final double GAP = 6;
    private static final double AXIS = 24;
    private static final double LARGEST_BAR = 30;
    private static final double SPACE = 0.28;
    private static final double GROUP = 10.5;
    private static final double TEXT = 9;
    private static final double SMALL = 8;
    private static final double SMALLEST = 5.5;
    private static final double STEP = 0.25;
    /** From the middle of letters down to their baseline, for text of the usual size. */
    private static final double MIDDLE = TEXT * 0.36;

    private static final double SWATCH = 13;
    private static final double INSET = 3;
    private static final double HATCH = 4;
    private static final int TICKS = 4;
    private static final double PERCENT = 100;
    private static final double DARK = 140;

    /** Lightness alternates, so that neighbors differ in grey too. */
    private static final List<Color> COLORS = List.of(
            new Color(0x5A2A0C),
            new Color(0xE0A060),
            new Color(0x2B4C8C),
            new Color(0xA9C3E6),
            new Color(0x8A2A55),
            new Color(0xF0D78C));

    /** Most sites that have a part of their own. */
    public static final int MOST = COLORS.size();

    private static final Color OTHER = new Color(0xC8C8C8);

    private final Font regular;
    private final Font bold;

    /** With letters that have every sign the texts need. */
    public ShareBarsChart(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * Draws into a PNG file.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(ShareBars bars, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> draw(bars, text));
    }

    private static void draw(ShareBars bars, PageText text) {
        double top = ChartPage.heading(bars.title(), bars.subtitle(), text) + GAP;
        double bottom = ChartPage.foot(bars.caution(), bars.imprint(), text) - GAP;
        double left = ChartPage.MARGIN + LABELS;
        double right = ChartPage.WIDTH - ChartPage.MARGIN - LIST - 2 * GAP;
        Rectangle2D area = new Rectangle2D.Double(left, top, right - left, bottom - AXIS - top);
        double end = bars(bars, area, text);
        axis(area, end, text);
        double x = right + 2 * GAP;
        double size = TEXT;
        while (size > SMALLEST && list(bars, x, top, size, false, text) > bottom) {
            size -= STEP;
        }
        list(bars, x, top, size, true, text);
    }

    /** All bars; the bottom edge of the last. */
    private static double bars(ShareBars bars, Rectangle2D area, PageText text) {
        int count = bars.groups().stream().mapToInt(g -> g.bars().size()).sum();
        double titles = bars.groups().size() * (PageText.lineHeight(text.bold(GROUP)) + 2);
        double row = Math.min(LARGEST_BAR, (area.getHeight() - titles) / count);
        double y = area.getMinY();
        for (ShareBars.Group group : bars.groups()) {
            y = text.drawLines(List.of(group.title()), text.bold(GROUP), Ink.TEXT, ChartPage.MARGIN, y) + 2;
            for (ShareBars.Bar bar : group.bars()) {
                Rectangle2D box = new Rectangle2D.Double(area.getMinX(), y, area.getWidth(), row * (1 - SPACE));
                label(bar, box, text);
                bar(bars, bar, box, text);
                y += row;
            }
        }
        return y;
    }

    private static void label(ShareBars.Bar bar, Rectangle2D box, PageText text) {
        double width = LABELS - GAP;
        Font font = text.regular(text.fit(bar.label(), false, TEXT, SMALL - 2, width));
        Font heavy = text.bold(text.fit(bar.amount(), true, TEXT, SMALL - 2, width));
        double height = PageText.lineHeight(font) + PageText.lineHeight(heavy);
        double x = ChartPage.MARGIN;
        if (height <= box.getHeight() / (1 - SPACE)) {
            double y = box.getCenterY() - height / 2;
            y = text.drawLines(List.of(bar.label()), font, Ink.TEXT, x, y);
            text.drawLines(List.of(bar.amount()), heavy, Ink.TEXT, x, y);
        } else {
            String both = bar.label() + ": " + bar.amount();
            Font one = text.regular(text.fit(both, false, TEXT, SMALL - 2, width));
            text.drawLines(List.of(both), one, Ink.TEXT, x, box.getCenterY() - PageText.lineHeight(one) / 2);
        }
    }

    private static void bar(ShareBars bars, ShareBars.Bar bar, Rectangle2D box, PageText text) {
        double x = box.getMinX();
        for (int k = 0; k < bars.sources().size(); k++) {
            double width = bar.shares().get(k) * box.getWidth();
            Rectangle2D part = new Rectangle2D.Double(x, box.getMinY(), width, box.getHeight());
            fill(bars.sources().get(k), k, part, text.graphics());
            words(bars.sources().get(k), k, bar.shares().get(k), part, text);
            x += width;
        }
        Graphics2D g = text.graphics();
        g.setColor(Ink.TEXT);
        g.setStroke(Ink.HAIR);
        g.draw(box);
    }

    private static Color color(ShareBars.Source source, int k) {
        return switch (source.kind()) {
            case SITE -> COLORS.get(k % COLORS.size());
            case OTHER_SITES -> OTHER;
            case BACKGROUND -> Color.WHITE;
        };
    }

    private static void fill(ShareBars.Source source, int k, Rectangle2D part, Graphics2D g) {
        g.setColor(color(source, k));
        g.fill(part);
        if (source.kind() == Kind.BACKGROUND) {
            Shape clip = g.getClip();
            g.clip(part);
            g.setColor(Ink.MARK);
            g.setStroke(Ink.THIN);
            for (double x = part.getMinX() - part.getHeight(); x < part.getMaxX(); x += HATCH) {
                g.draw(new Line2D.Double(x, part.getMaxY(), x + part.getHeight(), part.getMinY()));
            }
            g.setClip(clip);
        }
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        if (part.getWidth() > 2) {
            g.draw(new Line2D.Double(part.getMaxX(), part.getMinY(), part.getMaxX(), part.getMaxY()));
        }
    }

    /** Letter of a source: A, B and so on for sites; none for the rest. */
    private static String letter(ShareBars.Source source, int k) {
        return source.kind() == Kind.SITE ? String.valueOf((char) ('A' + k)) : "";
    }

    /** The longest of name and share, letter and share, letter that fits the part. */
    private static void words(ShareBars.Source source, int k, double share, Rectangle2D part, PageText text) {
        String percent = Math.round(PERCENT * share) + " %";
        String letter = letter(source, k);
        Font font = text.bold(TEXT);
        for (String words : List.of(
                (letter + " " + source.name() + " " + percent).strip(), (letter + " " + percent).strip(), letter)) {
            double width = text.width(words, font);
            if (!words.isEmpty()
                    && width + INSET <= part.getWidth()
                    && PageText.lineHeight(font) <= part.getHeight() + 2) {
                double x = part.getCenterX() - width / 2;
                double baseline = part.getCenterY() + MIDDLE;
                if (source.kind() == Kind.BACKGROUND) {
                    text.drawOver(words, font, x, baseline, 0);
                } else {
                    text.draw(words, font, ink(color(source, k)), x, baseline);
                }
                return;
            }
        }
    }

    /** White on dark, black on light. */
    private static Color ink(Color fill) {
        double lightness = 0.299 * fill.getRed() + 0.587 * fill.getGreen() + 0.114 * fill.getBlue();
        return lightness < DARK ? Color.WHITE : Ink.TEXT;
    }

    private static void axis(Rectangle2D area, double y, PageText text) {
        Graphics2D g = text.graphics();
        Font font = text.regular(SMALL);
        for (int t = 0; t <= TICKS; t++) {
            double x = area.getMinX() + area.getWidth() * t / TICKS;
            g.setColor(Ink.TEXT);
            g.setStroke(Ink.THIN);
            g.draw(new Line2D.Double(x, y, x, y + INSET));
            String words = Math.round(PERCENT * t / TICKS) + (t == TICKS ? " %" : "");
            double before = t == TICKS ? text.width(words, font) - GAP : text.width(words, font) / 2;
            text.drawLines(List.of(words), font, Ink.TEXT, x - before, y + INSET);
        }
        g.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
    }

    /** Names of the sources below one another, drawn or only measured; the bottom edge. */
    private static double list(ShareBars bars, double x, double top, double size, boolean drawn, PageText text) {
        Font heavy = text.bold(size);
        Font light = text.regular(size);
        double width = ChartPage.WIDTH - ChartPage.MARGIN - x;
        double room = width - SWATCH - INSET - 1;
        double y = lines(bars.listHead(), light, x, top, width, drawn, text) + GAP;
        for (int k = 0; k < bars.sources().size(); k++) {
            ShareBars.Source source = bars.sources().get(k);
            if (drawn) {
                swatch(source, k, new Rectangle2D.Double(x, y, SWATCH, SWATCH), text);
            }
            double at = x + SWATCH + INSET + 1;
            double next = lines(source.name(), heavy, at, y, room, drawn, text);
            next = lines(source.line(), light, at, next, room, drawn, text);
            y = Math.max(next, y + SWATCH) + 2;
        }
        return y;
    }

    private static double lines(
            String words, Font font, double x, double top, double width, boolean drawn, PageText text) {
        if (words.isEmpty()) {
            return top;
        }
        List<String> lines = text.wrap(words, font, width);
        return drawn ? text.drawLines(lines, font, Ink.TEXT, x, top) : top + lines.size() * PageText.lineHeight(font);
    }

    private static void swatch(ShareBars.Source source, int k, Rectangle2D box, PageText text) {
        fill(source, k, box, text.graphics());
        text.graphics().setColor(Ink.TEXT);
        text.graphics().setStroke(Ink.HAIR);
        text.graphics().draw(box);
        Font heavy = text.bold(TEXT);
        String letter = letter(source, k);
        double x = box.getCenterX() - text.width(letter, heavy) / 2;
        text.draw(letter, heavy, ink(color(source, k)), x, box.getCenterY() + MIDDLE);
    }
}
