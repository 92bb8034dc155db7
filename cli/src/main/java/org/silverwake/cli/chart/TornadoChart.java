// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.silverwake.cli.text.Numbers;

/** Draws how far a value swings with each thing that is not known, 8 by 5 inches: the widest bar on top. */
public final class TornadoChart {
    private static final double NAMES = 132;
    /** Room at both sides of the scale for the words at the bars' ends. */
    private static final double WORDS = 64;

    private static final double GAP = 5;
    private static final double ROW = 12;
    private static final int MOST_ROWS = 4;
    private static final double LARGEST_BAR = 58;
    private static final double PART = 0.56;
    private static final int DIGITS = 3;
    private static final int TICKS = 5;
    /** From this ratio of the largest to the smallest on the scale is logarithmic (chosen). */
    private static final double WIDE = 20;

    private static final Color LOW = Theme.layer(3);
    private static final Color HIGH = Theme.layer(0);
    private static final Stroke MIDDLE = new BasicStroke(1.6f);
    /** White on both sides of a line, so that it shows on a dark bar. */
    private static final Stroke RIM = new BasicStroke(3.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    private final Tornado tornado;
    private final PageText text;
    private final Optional<Decades> decades;
    private final double most;
    private Rectangle2D area;

    private TornadoChart(Tornado tornado, PageText text) {
        this.tornado = tornado;
        this.text = text;
        double[] values = DoubleStream.concat(
                        DoubleStream.of(tornado.middle()),
                        tornado.bars().stream().flatMapToDouble(b -> DoubleStream.of(b.low(), b.high())))
                .toArray();
        double[] guidelines = tornado.guidelines().stream()
                .mapToDouble(Profile.GuidelineValue::value)
                .toArray();
        double[] all = DoubleStream.concat(DoubleStream.of(values), DoubleStream.of(guidelines))
                .toArray();
        most = DoubleStream.of(all).max().orElseThrow();
        double least = DoubleStream.of(all).min().orElseThrow();
        decades = most > WIDE * least ? Optional.of(Decades.of(values, guidelines)) : Optional.empty();
    }

    /** Draws into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(Tornado tornado, Path file) {
        ChartPage.write(file, text -> new TornadoChart(tornado, text).draw());
    }

    private void draw() {
        double top = ChartPage.heading(tornado.title(), tornado.subtitle(), text);
        double bottom = ChartPage.foot(tornado.caution(), tornado.imprint(), text) - GAP;
        double left = Theme.MARGIN + NAMES;
        area = new Rectangle2D.Double(left, top, Theme.WIDTH - Theme.MARGIN - left, bottom - Axes.BELOW - top);
        List<Optional<MarkLabels.Placed>> heads = new MarkLabels(
                        Theme.MARGIN, Theme.WIDTH - Theme.MARGIN, GAP, MOST_ROWS)
                .place(lines().stream()
                        .map(l -> new MarkLabels.Wanted(x(l.value()), text.width(l.words(), font(l)), l.rank()))
                        .toList());
        int rows = heads.stream()
                .flatMap(Optional::stream)
                .mapToInt(p -> p.row() + 1)
                .max()
                .orElse(0);
        double from = top + rows * ROW + GAP;
        double room = bottom - Axes.BELOW - from;
        double each = Math.min(LARGEST_BAR, room / tornado.bars().size());
        area = new Rectangle2D.Double(
                left, from, area.getWidth(), each * tornado.bars().size() + GAP);
        axis();
        for (int k = 0; k < tornado.bars().size(); k++) {
            bar(tornado.bars().get(k), from + GAP / 2 + k * each, each);
        }
        for (int k = heads.size() - 1; k >= 0; k--) { // the middle on top
            line(lines().get(k), heads.get(k));
        }
        for (int k = 0; k < tornado.bars().size(); k++) {
            words(tornado.bars().get(k), from + GAP / 2 + k * each + each / 2);
        }
    }

    /** A line through all bars. */
    private record Line(double value, String words, Color color, Stroke stroke, int rank) {}

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(tornado.middle(), "all at the middle: " + shown(tornado.middle()), Theme.TEXT, MIDDLE, 0));
        for (Profile.GuidelineValue guideline : tornado.guidelines()) {
            lines.add(new Line(
                    guideline.value(), guideline.name() + ": " + shown(guideline.value()), Theme.TEXT, Theme.GUIDE, 1));
        }
        return lines;
    }

    private static Font font(Line line) {
        return line.rank() == 0 ? Theme.bold(Theme.NAME) : Theme.regular(Theme.NAME);
    }

    private String shown(double value) {
        return Numbers.shown(value, DIGITS) + " " + tornado.unit();
    }

    private double x(double value) {
        double inner = area.getWidth() - 2 * WORDS;
        double part = decades.map(d -> Math.log10(d.drawn(value) / d.from()) / Math.log10(d.to() / d.from()))
                .orElse(value / most);
        return area.getMinX() + WORDS + part * inner;
    }

    private void axis() {
        Graphics2D g = text.graphics();
        Font font = Theme.regular(Theme.TICK);
        double y = area.getMaxY();
        for (double tick : ticks()) {
            double x = x(tick);
            g.setColor(Theme.GRID);
            g.setStroke(Theme.THIN);
            g.draw(new Line2D.Double(x, area.getMinY(), x, y));
            g.setColor(Theme.FAINT_TEXT);
            g.draw(new Line2D.Double(x, y, x, y + 3));
            String words = Axes.plain().format(tick);
            text.drawLines(List.of(words), font, Theme.TEXT, x - text.width(words, font) / 2, y + 3);
        }
        g.setColor(Theme.FAINT_TEXT);
        g.setStroke(Theme.THIN);
        g.draw(new Line2D.Double(x(ticks().get(0)), y, area.getMaxX() - WORDS, y));
        Font small = Theme.regular(Theme.AXIS_TITLE);
        String title = tornado.quantity() + " [" + tornado.unit() + "]";
        double x = area.getCenterX() - text.width(title, small) / 2;
        text.drawLines(List.of(title), small, Theme.TEXT, x, y + 4 + PageText.lineHeight(font));
    }

    private List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        if (decades.isPresent()) {
            Decades scale = decades.get();
            for (int k = scale.lowest(); k <= scale.highest(); k += scale.labelStep()) {
                ticks.add(Math.pow(10, k));
            }
        } else {
            double step = Axes.step(most / TICKS);
            for (int k = 0; k * step <= most; k++) {
                ticks.add(k * step);
            }
        }
        return ticks;
    }

    /** From low to the middle light, from the middle to high dark; its name and what is open about it at the left. */
    private void bar(Tornado.Bar bar, double top, double height) {
        Graphics2D g = text.graphics();
        double y = top + height * (1 - PART) / 2;
        double middle = Math.min(Math.max(tornado.middle(), bar.low()), bar.high());
        part(bar.low(), middle, y, height * PART, LOW);
        part(middle, bar.high(), y, height * PART, HIGH);
        g.setColor(Theme.TEXT);
        g.setStroke(Theme.HAIR);
        g.draw(new Rectangle2D.Double(x(bar.low()), y, x(bar.high()) - x(bar.low()), height * PART));
        double width = NAMES - GAP;
        Font heavy = Theme.bold(text.fit(bar.name(), true, Theme.NAME, Theme.NAME / 2, width));
        Font light = Theme.regular(text.fit(bar.range(), false, Theme.SMALL_NAME, Theme.SMALL_NAME / 2, width));
        double all = PageText.lineHeight(heavy) + PageText.lineHeight(light);
        double next = text.drawLines(List.of(bar.name()), heavy, Theme.TEXT, Theme.MARGIN, top + (height - all) / 2);
        text.drawLines(List.of(bar.range()), light, Theme.TEXT, Theme.MARGIN, next);
    }

    private void part(double from, double to, double y, double height, Color color) {
        text.graphics().setColor(color);
        text.graphics().fill(new Rectangle2D.Double(x(from), y, x(to) - x(from), height));
    }

    private void words(Tornado.Bar bar, double centerY) {
        double width = WORDS - 2 * GAP;
        double baseline = centerY + Theme.KEY * 0.36;
        String low = shown(bar.low());
        Font font = Theme.regular(text.fit(low, false, Theme.KEY, Theme.KEY / 2, width));
        text.drawOver(low, font, x(bar.low()) - GAP - text.width(low, font), baseline, false);
        String high = shown(bar.high());
        font = Theme.regular(text.fit(high, false, Theme.KEY, Theme.KEY / 2, width));
        text.drawOver(high, font, x(bar.high()) + GAP, baseline, false);
    }

    private void line(Line line, Optional<MarkLabels.Placed> head) {
        Graphics2D g = text.graphics();
        double x = x(line.value());
        Line2D through = new Line2D.Double(x, area.getMinY(), x, area.getMaxY());
        g.setColor(Theme.PAPER);
        g.setStroke(RIM);
        g.draw(through);
        g.setColor(line.color());
        g.setStroke(line.stroke());
        g.draw(through);
        if (head.isPresent()) {
            double baseline = area.getMinY() - GAP - head.get().row() * ROW;
            g.setStroke(Theme.HAIR);
            g.draw(new Line2D.Double(x, area.getMinY(), x, baseline - 3));
            text.draw(line.words(), font(line), Theme.TEXT, head.get().from(), baseline);
        }
    }
}
