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
    private static final double AXIS = 30;
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

    /** Most sites that have a part of their own. */
    public static final int MOST = Theme.layers() - 1;

    private ShareBarsChart() {}

    /** Draws into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(ShareBars bars, Path file) {
        ChartPage.write(file, text -> draw(bars, text));
    }

    private static void draw(ShareBars bars, PageText text) {
        double top = ChartPage.heading(bars.title(), bars.subtitle(), text) + GAP;
        double bottom = ChartPage.foot(bars.caution(), bars.imprint(), text) - GAP;
        double left = Theme.MARGIN + LABELS;
        double right = Theme.WIDTH - Theme.MARGIN - LIST - 2 * GAP;
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
        double titles = bars.groups().size() * (PageText.lineHeight(Theme.bold(GROUP)) + 2);
        double row = Math.min(LARGEST_BAR, (area.getHeight() - titles) / count);
        double y = area.getMinY();
        for (ShareBars.Group group : bars.groups()) {
            y = text.drawLines(List.of(group.title()), Theme.bold(GROUP), Theme.TEXT, Theme.MARGIN, y) + 2;
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
        Font font = Theme.regular(text.fit(bar.label(), false, TEXT, SMALL - 2, width));
        Font heavy = Theme.bold(text.fit(bar.amount(), true, TEXT, SMALL - 2, width));
        double height = PageText.lineHeight(font) + PageText.lineHeight(heavy);
        double x = Theme.MARGIN;
        if (height <= box.getHeight() / (1 - SPACE)) {
            double y = box.getCenterY() - height / 2;
            y = text.drawLines(List.of(bar.label()), font, Theme.TEXT, x, y);
            text.drawLines(List.of(bar.amount()), heavy, Theme.TEXT, x, y);
        } else {
            String both = bar.label() + ": " + bar.amount();
            Font one = Theme.regular(text.fit(both, false, TEXT, SMALL - 2, width));
            text.drawLines(List.of(both), one, Theme.TEXT, x, box.getCenterY() - PageText.lineHeight(one) / 2);
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
        g.setColor(Theme.TEXT);
        g.setStroke(Theme.HAIR);
        g.draw(box);
    }

    private static Color color(ShareBars.Source source, int k) {
        return switch (source.kind()) {
            case SITE -> Theme.layer(k);
            case OTHER_SITES -> Theme.REST;
            case BACKGROUND -> Theme.PAPER;
        };
    }

    private static void fill(ShareBars.Source source, int k, Rectangle2D part, Graphics2D g) {
        g.setColor(color(source, k));
        g.fill(part);
        if (source.kind() == Kind.BACKGROUND) {
            Shape clip = g.getClip();
            g.clip(part);
            g.setColor(Theme.MARK);
            g.setStroke(Theme.THIN);
            for (double x = part.getMinX() - part.getHeight(); x < part.getMaxX(); x += HATCH) {
                g.draw(new Line2D.Double(x, part.getMaxY(), x + part.getHeight(), part.getMinY()));
            }
            g.setClip(clip);
        }
        g.setColor(Theme.PAPER);
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
        Font font = Theme.bold(TEXT);
        String brief = source.kind() == Kind.BACKGROUND ? "background" : letter;
        for (String words : List.of(
                (letter + " " + source.name() + " " + percent).strip(),
                (brief + " " + percent).strip(),
                (letter + " " + percent).strip(),
                letter)) {
            double width = text.width(words, font);
            if (!words.isEmpty()
                    && width + INSET <= part.getWidth()
                    && PageText.lineHeight(font) <= part.getHeight() + 2) {
                double x = part.getCenterX() - width / 2;
                double baseline = part.getCenterY() + MIDDLE;
                if (source.kind() == Kind.BACKGROUND) {
                    text.drawOver(words, font, x, baseline, false);
                } else {
                    text.draw(words, font, Theme.letters(color(source, k)), x, baseline);
                }
                return;
            }
        }
    }

    private static void axis(Rectangle2D area, double y, PageText text) {
        Graphics2D g = text.graphics();
        Font font = Theme.regular(SMALL);
        for (int t = 0; t <= TICKS; t++) {
            double x = area.getMinX() + area.getWidth() * t / TICKS;
            g.setColor(Theme.TEXT);
            g.setStroke(Theme.THIN);
            g.draw(new Line2D.Double(x, y, x, y + INSET));
            String words = String.valueOf(Math.round(PERCENT * t / TICKS));
            double before = text.width(words, font) / 2;
            text.drawLines(List.of(words), font, Theme.TEXT, x - before, y + INSET);
        }
        g.setColor(Theme.TEXT);
        g.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
        String title = "share of the value [%]";
        double x = area.getCenterX() - text.width(title, font) / 2;
        text.drawLines(List.of(title), font, Theme.TEXT, x, y + INSET + PageText.lineHeight(font));
    }

    /** Names of the sources below one another, drawn or only measured; the bottom edge. */
    private static double list(ShareBars bars, double x, double top, double size, boolean drawn, PageText text) {
        Font heavy = Theme.bold(size);
        Font light = Theme.regular(size);
        double width = Theme.WIDTH - Theme.MARGIN - x;
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
        return drawn ? text.drawLines(lines, font, Theme.TEXT, x, top) : top + lines.size() * PageText.lineHeight(font);
    }

    private static void swatch(ShareBars.Source source, int k, Rectangle2D box, PageText text) {
        fill(source, k, box, text.graphics());
        text.graphics().setColor(Theme.TEXT);
        text.graphics().setStroke(Theme.HAIR);
        text.graphics().draw(box);
        Font heavy = Theme.bold(TEXT);
        String letter = letter(source, k);
        double x = box.getCenterX() - text.width(letter, heavy) / 2;
        text.draw(letter, heavy, Theme.letters(color(source, k)), x, box.getCenterY() + MIDDLE);
    }
}
