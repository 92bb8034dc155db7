// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Draws what happens over the years, 8 by 5 inches: courses of values, and amounts that add up. */
public final class YearCharts {
    private static final double GAP = 5;
    private static final double HEADROOM = 1.04;
    /** Lines that end nearer to one another than this have one name [points]. */
    private static final double SAME = 3;

    private static final double RIGHT = Theme.WIDTH - Theme.MARGIN - Theme.GUTTER;
    private static final String NOTE = "Between low and high: the form of mercury, or what fish take up, is not known.";

    private YearCharts() {}

    /** Draws courses into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(YearCourse course, Path file) {
        ChartPage.write(file, text -> draw(course, text));
    }

    /** Draws a stack into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(YearStack stack, Path file) {
        ChartPage.write(file, text -> draw(stack, text));
    }

    private static void draw(YearCourse course, PageText text) {
        double top = ChartPage.heading(course.title(), course.subtitle(), text);
        double bottom = ChartPage.foot(course.caution(), course.imprint(), text) - GAP;
        bottom -= PageText.lineHeight(Theme.regular(Theme.KEY));
        text.drawLines(List.of(NOTE), Theme.regular(Theme.KEY), Theme.TEXT, Theme.MARGIN, bottom);
        int n = course.panels().size();
        double left = course.panels().stream()
                .map(YearCharts::decades)
                .mapToDouble(d -> Axes.leftRoom(text, d.from(), d.to()))
                .max()
                .orElseThrow();
        left -= 2 * PageText.lineHeight(Theme.regular(Theme.AXIS_TITLE)); // titles stand above the panels
        double each = (bottom - top - Axes.BELOW) / n;
        for (int i = 0; i < n; i++) {
            YearCourse.Panel panel = course.panels().get(i);
            double y = top + i * each;
            double head = text.drawLines(
                    List.of(panel.quantity() + " [" + panel.unit() + "]"),
                    Theme.bold(Theme.PANEL_TITLE),
                    Theme.TEXT,
                    Theme.MARGIN,
                    y);
            boolean last = i == n - 1;
            double below = last ? Axes.BELOW : Axes.BARE;
            double end = y + each + (last ? Axes.BELOW : 0);
            Rectangle2D box = new Rectangle2D.Double(
                    Theme.MARGIN, head + 1, RIGHT + Axes.RIGHT_ROOM - Theme.MARGIN, end - head - 3);
            panel(course.firstYear(), panel, left, below, box, text);
        }
    }

    private static Decades decades(YearCourse.Panel panel) {
        return Decades.of(
                Stream.concat(panel.low().stream(), panel.high().stream())
                        .mapToDouble(Double::doubleValue)
                        .toArray(),
                panel.guidelines().stream()
                        .mapToDouble(Profile.GuidelineValue::value)
                        .toArray());
    }

    private static void panel(
            int firstYear, YearCourse.Panel panel, double left, double below, Rectangle2D box, PageText text) {
        Decades decades = decades(panel);
        int years = panel.high().size();
        XYPlot plot = Axes.plot(years(firstYear, years, below > Axes.BARE), Axes.log(decades));
        plot.setDomainGridlinesVisible(true);
        plot.setDomainGridlinePaint(Theme.GRID);
        plot.setDomainGridlineStroke(Theme.THIN);
        YIntervalSeries band = new YIntervalSeries("band", false, true);
        XYSeries low = new XYSeries("low", false, true);
        XYSeries high = new XYSeries("high", false, true);
        for (int year = 0; year < years; year++) {
            int at = firstYear + year;
            double from = decades.drawn(panel.low().get(year));
            double to = decades.drawn(panel.high().get(year));
            band.add(at, from, from, to);
            low.add(at, from);
            high.add(at, to);
        }
        YIntervalSeriesCollection bands = new YIntervalSeriesCollection();
        bands.addSeries(band);
        plot.setDataset(0, bands);
        plot.setRenderer(0, fill());
        plot.setDataset(1, new XYSeriesCollection(high));
        plot.setRenderer(1, Axes.lines(1, Theme.HIGH, Theme.THICK));
        plot.setDataset(2, new XYSeriesCollection(low));
        plot.setRenderer(2, Axes.lines(1, Theme.LOW, Theme.MEDIUM));
        Rectangle2D area = Axes.draw(plot, left, below, text.graphics(), box);
        names(panel, decades, area, text);
    }

    private static NumberAxis years(int first, int count, boolean named) {
        NumberAxis axis = Axes.years(first, count);
        if (!named) {
            axis.setLabel(null);
            axis.setTickLabelsVisible(false);
        }
        return axis;
    }

    private static DeviationRenderer fill() {
        DeviationRenderer fill = new DeviationRenderer(true, false);
        fill.setAlpha(1);
        fill.setSeriesFillPaint(0, Theme.BAND);
        fill.setSeriesPaint(0, Theme.BAND);
        fill.setSeriesStroke(0, Theme.NONE);
        return fill;
    }

    private static void names(YearCourse.Panel panel, Decades decades, Rectangle2D area, PageText text) {
        EndLabels names = new EndLabels(text, area.getMaxX(), Theme.GUTTER);
        ProfileMarks.guidelines(panel.guidelines(), decades, area, text.graphics(), names);
        double low = decades.y(panel.low().get(panel.low().size() - 1), area);
        double high = decades.y(panel.high().get(panel.high().size() - 1), area);
        if (low - high < SAME) {
            names.line(high, "low and high", "", Theme.HIGH, Theme.THICK);
        } else {
            names.line(high, "high estimate", "", Theme.HIGH, Theme.THICK);
            names.line(low, "low estimate", "", Theme.LOW, Theme.MEDIUM);
        }
        names.draw(area.getMinY() - 3 * GAP, area.getMaxY() + GAP);
    }

    private static void draw(YearStack stack, PageText text) {
        double top = ChartPage.heading(stack.title(), stack.quantity() + " \u2013 " + stack.subtitle(), text);
        double bottom = ChartPage.foot(stack.caution(), stack.imprint(), text) - GAP;
        List<StackPlot.Layer> layers = new ArrayList<>();
        for (int k = 0; k < stack.layers().size(); k++) {
            layers.add(new StackPlot.Layer(stack.layers().get(k).name(), Theme.layer(k)));
        }
        int years = stack.layers().get(0).amounts().size();
        List<StackPlot.Column> columns = new ArrayList<>();
        for (int year = 0; year < years; year++) {
            int at = year;
            columns.add(new StackPlot.Column(
                    stack.firstYear() + year,
                    stack.layers().stream().map(l -> l.amounts().get(at)).toList()));
        }
        double most = HEADROOM
                * Math.max(
                        columns.stream()
                                .flatMapToDouble(c -> DoubleStream.of(c.sum()))
                                .max()
                                .orElse(0),
                        Double.MIN_NORMAL);
        XYPlot plot = Axes.plot(Axes.years(stack.firstYear(), years), Axes.linear(null, 0, most));
        StackPlot layered = new StackPlot(layers, stack.unit());
        layered.add(plot, columns);
        double left = Axes.leftRoom(text, Math.rint(most));
        Rectangle2D box =
                new Rectangle2D.Double(Theme.MARGIN, top, RIGHT + Axes.RIGHT_ROOM - Theme.MARGIN, bottom - top);
        Rectangle2D area = Axes.draw(plot, left, Axes.BELOW, text.graphics(), box);
        Axes.uprightTitle("mercury [" + stack.unit() + "]", Theme.MARGIN, area, area.getHeight(), text);
        layered.names(columns.get(years - 1), most, area, area.getMinY() - GAP, bottom, text);
    }
}
