// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.silverwake.cli.text.Numbers;

/** Draws what happens over the years, 8 by 5 inches: courses of values, and amounts that add up. */
public final class YearCharts {
    private static final double GUTTER = 122;
    private static final double AXIS_WIDTH = 64;
    private static final double AXIS_HEIGHT = 34;
    private static final double PANEL_TITLE = 11;
    private static final double AXIS_LABEL = 12;
    private static final double TICK = 11;
    private static final double NAME = 10.5;
    private static final double LEGEND = 9.5;
    private static final double SWATCH = 24;
    private static final double GAP = 6;
    private static final double ROUNDING = 1e-9;
    private static final int MINOR_TICKS = 9;

    /** Layers from the bottom up: lightness alternates, so that neighbors differ in grey too. */
    private static final List<Color> LAYERS = List.of(
            new Color(0x5A2A0C),
            new Color(0xE0A060),
            new Color(0x2B4C8C),
            new Color(0xA9C3E6),
            new Color(0x4D4D4D),
            new Color(0xC9B8D8),
            new Color(0x7A1049));

    private final Font regular;
    private final Font bold;

    /** With letters that have every sign the texts need. */
    public YearCharts(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * Draws courses into a PNG file.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(YearCourse course, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> draw(course, text));
    }

    /**
     * Draws a stack into a PNG file.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(YearStack stack, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> draw(stack, text));
    }

    private void draw(YearCourse course, PageText text) {
        double top = ChartPage.heading(course.title(), course.subtitle(), text);
        double bottom = ChartPage.foot(course.caution(), course.imprint(), text) - GAP - NAME;
        legend(bottom + NAME, text);
        int n = course.panels().size();
        double each = (bottom - top - AXIS_HEIGHT) / n;
        double right = ChartPage.WIDTH - ChartPage.MARGIN - GUTTER;
        for (int i = 0; i < n; i++) {
            YearCourse.Panel panel = course.panels().get(i);
            double y = top + i * each;
            Font heavy = text.bold(PANEL_TITLE);
            double head = text.drawLines(
                    List.of(panel.quantity() + " [" + panel.unit() + "]"), heavy, Ink.TEXT, ChartPage.MARGIN, y);
            boolean last = i == n - 1;
            double height = y + each + (last ? AXIS_HEIGHT : 0) - head;
            Rectangle2D box = new Rectangle2D.Double(
                    ChartPage.MARGIN, head - 2, right + ProfilePlot.RIGHT_ROOM - ChartPage.MARGIN, height);
            panel(course, panel, last, text, box);
        }
    }

    private static void legend(double y, PageText text) {
        Graphics2D g = text.graphics();
        Font font = text.regular(LEGEND);
        double x = ChartPage.MARGIN;
        g.setColor(Ink.HIGH);
        g.setStroke(Ink.THICK);
        g.draw(new Line2D.Double(x, y - LEGEND / 2, x + SWATCH, y - LEGEND / 2));
        String high = "high estimate";
        text.draw(high, font, Ink.TEXT, x + SWATCH + 4, y);
        x += SWATCH + text.width(high, font) + 2 * NAME;
        g.setColor(Ink.LOW);
        g.setStroke(Ink.MEDIUM);
        g.draw(new Line2D.Double(x, y - LEGEND / 2, x + SWATCH, y - LEGEND / 2));
        text.draw(
                "low estimate: the form of mercury, or what fish take up, is not known",
                font,
                Ink.TEXT,
                x + SWATCH + 4,
                y);
    }

    private void panel(YearCourse course, YearCourse.Panel panel, boolean last, PageText text, Rectangle2D box) {
        double[] named = panel.guidelines().stream()
                .mapToDouble(Profile.GuidelineValue::value)
                .toArray();
        Decades decades = Decades.of(
                Stream.concat(panel.low().stream(), panel.high().stream())
                        .mapToDouble(Double::doubleValue)
                        .toArray(),
                named);
        XYPlot plot = plot(course.firstYear(), panel.high().size(), last);
        plot.setRangeAxis(logAxis(decades));
        YIntervalSeries band = new YIntervalSeries("band", false, true);
        XYSeries low = new XYSeries("low", false, true);
        XYSeries high = new XYSeries("high", false, true);
        for (int year = 0; year < panel.high().size(); year++) {
            int at = course.firstYear() + year;
            double from = decades.drawn(panel.low().get(year));
            double to = decades.drawn(panel.high().get(year));
            band.add(at, from, from, to);
            low.add(at, from);
            high.add(at, to);
        }
        plot.setDataset(0, new XYSeriesCollection(low));
        plot.setRenderer(0, line(Ink.LOW, Ink.MEDIUM));
        plot.setDataset(1, new XYSeriesCollection(high));
        plot.setRenderer(1, line(Ink.HIGH, Ink.THICK));
        YIntervalSeriesCollection bands = new YIntervalSeriesCollection();
        bands.addSeries(band);
        plot.setDataset(2, bands);
        DeviationRenderer fill = new DeviationRenderer(true, false);
        fill.setAlpha(1);
        fill.setSeriesFillPaint(0, Ink.BAND);
        fill.setSeriesPaint(0, Ink.BAND);
        fill.setSeriesStroke(0, new BasicStroke(0.1f));
        plot.setRenderer(2, fill);
        Rectangle2D area = draw(plot, last, text.graphics(), box);
        guidelines(panel, decades, area, text);
    }

    private static void guidelines(YearCourse.Panel panel, Decades decades, Rectangle2D area, PageText text) {
        List<Double> heights = new ArrayList<>();
        Graphics2D g = text.graphics();
        for (Profile.GuidelineValue each : panel.guidelines()) {
            double share = Math.log10(each.value() / decades.from()) / Math.log10(decades.to() / decades.from());
            double y = area.getMaxY() - share * area.getHeight();
            heights.add(y);
            g.setColor(Ink.GUIDELINE);
            g.setStroke(Ink.GUIDE);
            g.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
        }
        if (!heights.isEmpty()) {
            new GuidelineLabels(text, area.getMaxX(), GUTTER)
                    .draw(panel.guidelines(), heights, area.getMinY() - GAP, area.getMaxY() + GAP);
        }
    }

    private void draw(YearStack stack, PageText text) {
        double top = ChartPage.heading(
                stack.title(), stack.quantity() + ", " + stack.unit() + " \u2013 " + stack.subtitle(), text);
        double bottom = ChartPage.foot(stack.caution(), stack.imprint(), text) - GAP;
        int years = stack.layers().get(0).amounts().size();
        XYPlot plot = plot(stack.firstYear(), years, true);
        NumberAxis axis = new NumberAxis("[" + stack.unit() + "]");
        axis.setNumberFormatOverride(ProfilePlot.plain());
        style(axis);
        plot.setRangeAxis(axis);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        int n = stack.layers().size();
        double[] sum = new double[years];
        double[] ends = new double[n];
        for (int k = 0; k < n; k++) {
            XYSeries series = new XYSeries(stack.layers().get(k).name(), false, false);
            for (int year = 0; year < years; year++) {
                sum[year] += stack.layers().get(k).amounts().get(year);
                series.add(stack.firstYear() + year, sum[year]);
            }
            ends[k] = sum[years - 1];
            XYAreaRenderer area = new XYAreaRenderer(XYAreaRenderer.AREA);
            area.setSeriesPaint(0, LAYERS.get(k % LAYERS.size()));
            plot.setDataset(n - 1 - k, new XYSeriesCollection(series)); // the highest sum lies at the back
            plot.setRenderer(n - 1 - k, area);
        }
        double most = DoubleStream.of(sum).max().orElse(0);
        axis.setRange(0, Math.max(most, Double.MIN_NORMAL) * (1 + ROUNDING));
        double right = ChartPage.WIDTH - ChartPage.MARGIN - GUTTER;
        Rectangle2D box = new Rectangle2D.Double(
                ChartPage.MARGIN, top, right + ProfilePlot.RIGHT_ROOM - ChartPage.MARGIN, bottom - top);
        Rectangle2D area = draw(plot, true, text.graphics(), box);
        names(stack, ends, axis.getUpperBound(), area, text);
    }

    /** Names of the layers at the right, each beside its own at the last year, with what it then holds. */
    private void names(YearStack stack, double[] ends, double most, Rectangle2D area, PageText text) {
        int n = ends.length;
        double line = PageText.lineHeight(text.regular(NAME));
        double[] wishes = new double[n];
        double[] heights = new double[n];
        List<List<String>> words = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int k = n - 1 - i; // from the top down
            double from = k > 0 ? ends[k - 1] : 0;
            wishes[i] = area.getMaxY() - (from + ends[k]) / 2 / most * area.getHeight();
            YearStack.Layer layer = stack.layers().get(k);
            String amount = Numbers.shown(layer.amounts().get(layer.amounts().size() - 1), 3) + " " + stack.unit();
            words.add(text.wrap(layer.name() + ": " + amount, text.regular(NAME), GUTTER - 2 * GAP - NAME));
            heights[i] = words.get(i).size() * line;
        }
        double[] tops = GuidelineLabels.spread(wishes, heights, 2, area.getMinY() - GAP, area.getMaxY() + AXIS_HEIGHT);
        double x = area.getMaxX() + GAP;
        Graphics2D g = text.graphics();
        for (int i = 0; i < n; i++) {
            int k = n - 1 - i;
            g.setColor(LAYERS.get(k % LAYERS.size()));
            g.fill(new Rectangle2D.Double(x, tops[i] + 2, NAME - 2, heights[i] - 2));
            text.drawLines(words.get(i), text.regular(NAME), Ink.TEXT, x + NAME + 2, tops[i]);
        }
    }

    private XYPlot plot(int firstYear, int years, boolean withYears) {
        NumberAxis axis = new NumberAxis(withYears ? "year" : null);
        axis.setRange(firstYear, Math.max(firstYear + years - 1, firstYear + 1));
        axis.setAutoRangeIncludesZero(false);
        axis.setNumberFormatOverride(new java.text.DecimalFormat("0"));
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        style(axis);
        axis.setTickLabelsVisible(withYears);
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(axis);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(Ink.GRID);
        plot.setDomainGridlineStroke(Ink.THIN);
        plot.setRangeGridlinePaint(Ink.GRID);
        plot.setRangeGridlineStroke(Ink.THIN);
        plot.setOutlinePaint(Ink.FAINT_TEXT);
        plot.setOutlineStroke(Ink.THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(ProfilePlot.TOP_ROOM, 0, 0, ProfilePlot.RIGHT_ROOM));
        return plot;
    }

    private Rectangle2D draw(XYPlot plot, boolean withYears, Graphics2D g, Rectangle2D box) {
        AxisSpace space = new AxisSpace();
        space.setLeft(AXIS_WIDTH);
        space.setBottom(withYears ? AXIS_HEIGHT : GAP);
        plot.setFixedRangeAxisSpace(space);
        plot.setFixedDomainAxisSpace(space);
        JFreeChart chart = new JFreeChart(null, regular, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, box, info);
        return info.getPlotInfo().getDataArea();
    }

    private ValueAxis logAxis(Decades decades) {
        LogAxis axis = new LogAxis(null);
        axis.setBase(10);
        axis.setRange(decades.from() * (1 - ROUNDING), decades.to() * (1 + ROUNDING));
        axis.setTickUnit(new NumberTickUnit(1, ProfilePlot.plain(), MINOR_TICKS));
        axis.setNumberFormatOverride(ProfilePlot.plain());
        style(axis);
        return axis;
    }

    private void style(ValueAxis axis) {
        axis.setLabelFont(regular.deriveFont((float) AXIS_LABEL));
        axis.setTickLabelFont(regular.deriveFont((float) TICK));
        axis.setLabelPaint(Ink.TEXT);
        axis.setTickLabelPaint(Ink.TEXT);
        axis.setAxisLineVisible(false);
        axis.setTickMarkPaint(Ink.FAINT_TEXT);
    }

    private static XYLineAndShapeRenderer line(Color color, java.awt.Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, color);
        renderer.setSeriesStroke(0, stroke);
        return renderer;
    }
}
