// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;

/** Axes, grid and frame of every chart, in {@link Theme}'s look, and how a plot is put on the page with fixed room around it. */
final class Axes {
    /** Room for the halves of tick labels that stand beyond the ends of the axes [points]. */
    static final double TOP_ROOM = 8;

    static final double RIGHT_ROOM = 12;
    /** Room below a plot for ticks and title [points]. */
    static final double BELOW = 32;
    /** The same without labels. */
    static final double BARE = 6;

    private static final double TITLE_LINES = 2;
    private static final double TICK_ROOM = 9;
    private static final double ROUNDING = 1e-9;
    private static final int MOST_TICKS = 6;
    private static final double SMALLEST_TITLE = 7.5;

    private Axes() {}

    /** From zero or so to an end, with at most six numbers; whole ones alone where asked. */
    static NumberAxis linear(String title, double from, double to, int ticks, boolean whole) {
        NumberAxis axis = new NumberAxis(title);
        axis.setAutoRangeIncludesZero(false);
        axis.setRange(from, to);
        double step = step((to - from) / (ticks + 1));
        axis.setTickUnit(new NumberTickUnit(whole ? Math.max(1, step) : step, plain(), 1));
        return styled(axis);
    }

    static NumberAxis linear(String title, double from, double to) {
        return linear(title, from, to, MOST_TICKS - 1, false);
    }

    /** The smallest of 1, 2 and 5 times a power of ten that is not below. */
    static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5}) {
            if (times * power >= least * (1 - ROUNDING)) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** Calendar years. */
    static NumberAxis years(int first, int count) {
        double last = Math.max(first + count - 1, first + 1);
        NumberAxis axis = linear("year", first, last, MOST_TICKS, true);
        axis.setTickUnit(
                new NumberTickUnit(Math.max(1, step((last - first) / (MOST_TICKS + 2))), new DecimalFormat("0"), 1));
        return axis;
    }

    /** Decades, as many numbers as can be read. */
    static ValueAxis log(Decades decades) {
        LogAxis axis = new LogAxis(null);
        axis.setBase(10);
        // a hair wider, since the last decade's tick is dropped where its logarithm is rounded up
        axis.setRange(decades.from() * (1 - ROUNDING), decades.to() * (1 + ROUNDING));
        axis.setTickUnit(new NumberTickUnit(decades.labelStep(), plain(), 1));
        axis.setNumberFormatOverride(plain());
        return styled(axis);
    }

    private static <T extends ValueAxis> T styled(T axis) {
        axis.setLabelFont(Theme.regular(Theme.AXIS_TITLE));
        axis.setTickLabelFont(Theme.regular(Theme.TICK));
        axis.setLabelPaint(Theme.TEXT);
        axis.setTickLabelPaint(Theme.TEXT);
        axis.setAxisLineVisible(false);
        axis.setMinorTickMarksVisible(false);
        axis.setTickMarkPaint(Theme.FAINT_TEXT);
        return axis;
    }

    /** Numbers as people write them. */
    static NumberFormat plain() {
        return new DecimalFormat("#,##0.########", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
    }

    /** A plot with a quiet grid. */
    static XYPlot plot(ValueAxis domain, ValueAxis range) {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(domain);
        plot.setRangeAxis(range);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setBackgroundPaint(Theme.PAPER);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Theme.GRID);
        plot.setRangeGridlineStroke(Theme.THIN);
        plot.setRangeMinorGridlinesVisible(false);
        plot.setOutlinePaint(Theme.FAINT_TEXT);
        plot.setOutlineStroke(Theme.THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(TOP_ROOM, 0, 0, RIGHT_ROOM));
        return plot;
    }

    /** Lines of one look for a number of series. */
    static XYLineAndShapeRenderer lines(int series, Color color, Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int s = 0; s < series; s++) {
            renderer.setSeriesPaint(s, color);
            renderer.setSeriesStroke(s, stroke);
        }
        return renderer;
    }

    /** Room that a plot needs at its left for a title of two lines and these numbers [points]. */
    static double leftRoom(PageText text, double... numbers) {
        Font font = Theme.regular(Theme.TICK);
        double widest = 0;
        for (double number : numbers) {
            widest = Math.max(widest, text.width(plain().format(number), font));
        }
        return TITLE_LINES * PageText.lineHeight(Theme.regular(Theme.AXIS_TITLE)) + TICK_ROOM + widest;
    }

    /** Draws a plot into a box so that what is drawn around it knows where it lies; the area between the axes. */
    static Rectangle2D draw(XYPlot plot, double left, double below, Graphics2D g, Rectangle2D box) {
        AxisSpace space = new AxisSpace();
        space.setLeft(left);
        space.setBottom(below);
        plot.setFixedRangeAxisSpace(space);
        plot.setFixedDomainAxisSpace(space);
        JFreeChart chart = new JFreeChart(null, Theme.regular(Theme.NAME), plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, box, info);
        return info.getPlotInfo().getDataArea();
    }

    /** The title of an upright axis, read from below, in at most two lines from a left edge, beside the plot's middle. */
    static void uprightTitle(String title, double left, Rectangle2D area, double room, PageText text) {
        double size = Theme.AXIS_TITLE;
        List<String> lines = text.wrap(title, Theme.regular(size), room);
        while (size > SMALLEST_TITLE
                && (lines.size() > TITLE_LINES || text.widest(lines, Theme.regular(size)) > room)) {
            size -= 0.5;
            lines = text.wrap(title, Theme.regular(size), room);
        }
        Font font = Theme.regular(size);
        double x = left + size;
        for (String line : lines) {
            text.upright(line, font, x, area.getCenterY() + text.width(line, font) / 2);
            x += PageText.lineHeight(font);
        }
    }
}
