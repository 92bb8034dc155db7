// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
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
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The plot area of a profile: axes, band, lines. Titles, names and legend are drawn around it by {@link ProfileChart}. */
final class ProfilePlot {
    /** Room for the halves of tick labels that stand beyond the ends of the axes [points]. */
    static final double TOP_ROOM = 8;

    static final double RIGHT_ROOM = 12;

    private static final double AXIS_LABEL = 12;
    static final double TICK_LABEL = 11;
    private static final double ROUNDING = 1e-9;
    private static final int MINOR_TICKS = 9;

    private ProfilePlot() {}

    /** Axes, band and lines of a profile. */
    static XYPlot of(Profile profile, Decades decades, Font regular) {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(distanceAxis(profile, regular));
        plot.setRangeAxis(valueAxis(profile, decades, regular));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setDataset(0, band(profile, decades));
        plot.setRenderer(0, bandRenderer(profile));
        add(plot, lines(profile, decades, Profile.Point::high), renderer(profile, Ink.HIGH, Ink.THICK));
        add(plot, lines(profile, decades, Profile.Point::low), renderer(profile, Ink.LOW, Ink.MEDIUM));
        add(plot, lines(profile, decades, Profile.Point::background), renderer(profile, Ink.BACKGROUND, Ink.DOTS));
        if (profile.hasBed()) {
            for (ToDoubleFunction<Profile.Range> end :
                    List.<ToDoubleFunction<Profile.Range>>of(Profile.Range::low, Profile.Range::high)) {
                add(
                        plot,
                        lines(
                                profile,
                                decades,
                                p -> p.withBed().map(end::applyAsDouble).orElse(p.high())),
                        renderer(profile, Ink.WITH_BED, Ink.BED));
            }
        }
        return plot;
    }

    /** Axes of a profile and a line for each scenario, the first on top. */
    static XYPlot of(ScenarioProfile profile, Decades decades, Font regular) {
        XYPlot plot = new XYPlot();
        plot.setDomainAxis(distanceAxis(profile.frame(), regular));
        plot.setRangeAxis(valueAxis(profile.frame(), decades, regular));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.REVERSE);
        for (int k = 0; k < profile.courses().size(); k++) {
            List<Profile.Stretch> stretches = profile.courses().get(k).stretches();
            plot.setDataset(k, lines(stretches, decades, Profile.Point::high));
            plot.setRenderer(k, renderer(stretches.size(), Ink.scenario(k), Ink.scenarioLine(k)));
        }
        return plot;
    }

    /**
     * Draws a plot into a box, with fixed room for its axes [points], so that what is drawn around it knows where it lies; the
     * area between the axes.
     */
    static Rectangle2D draw(
            XYPlot plot, double axisWidth, double axisHeight, Font regular, Graphics2D g, Rectangle2D box) {
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Ink.GRID);
        plot.setRangeGridlineStroke(Ink.THIN);
        plot.setRangeMinorGridlinesVisible(true);
        plot.setRangeMinorGridlinePaint(Ink.FINE_GRID);
        plot.setRangeMinorGridlineStroke(Ink.HAIR);
        plot.setOutlinePaint(Ink.FAINT_TEXT);
        plot.setOutlineStroke(Ink.THIN);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(TOP_ROOM, 0, 0, RIGHT_ROOM));
        AxisSpace space = new AxisSpace();
        space.setLeft(axisWidth);
        space.setBottom(axisHeight);
        plot.setFixedRangeAxisSpace(space);
        plot.setFixedDomainAxisSpace(space);
        JFreeChart chart = new JFreeChart(null, regular, plot, false);
        chart.setBackgroundPaint(null);
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, box, info);
        return info.getPlotInfo().getDataArea();
    }

    private static void add(XYPlot plot, XYSeriesCollection lines, XYLineAndShapeRenderer renderer) {
        int next = plot.getDatasetCount();
        plot.setDataset(next, lines);
        plot.setRenderer(next, renderer);
    }

    static ValueAxis distanceAxis(Profile profile, Font regular) {
        NumberAxis axis = new NumberAxis("distance downstream from " + profile.start() + " [km]");
        axis.setRange(0, Math.max(profile.length(), Double.MIN_NORMAL));
        axis.setNumberFormatOverride(plain());
        style(axis, regular);
        return axis;
    }

    private static ValueAxis valueAxis(Profile profile, Decades decades, Font regular) {
        LogAxis axis = new LogAxis("[" + profile.unit() + "]");
        axis.setBase(10);
        // a hair wider, since the last decade's tick is dropped where its logarithm is rounded up
        axis.setRange(decades.from() * (1 - ROUNDING), decades.to() * (1 + ROUNDING));
        axis.setTickUnit(new NumberTickUnit(1, plain(), MINOR_TICKS));
        axis.setNumberFormatOverride(plain());
        axis.setMinorTickMarksVisible(true);
        style(axis, regular);
        return axis;
    }

    static void style(ValueAxis axis, Font regular) {
        axis.setLabelFont(regular.deriveFont((float) AXIS_LABEL));
        axis.setTickLabelFont(regular.deriveFont((float) TICK_LABEL));
        axis.setLabelPaint(Ink.TEXT);
        axis.setTickLabelPaint(Ink.TEXT);
        axis.setAxisLineVisible(false);
        axis.setTickMarkPaint(Ink.FAINT_TEXT);
    }

    static NumberFormat plain() {
        return new DecimalFormat("#,##0.########", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
    }

    private static XYSeriesCollection lines(Profile profile, Decades decades, ToDoubleFunction<Profile.Point> of) {
        return lines(profile.stretches(), decades, of);
    }

    private static XYSeriesCollection lines(
            List<Profile.Stretch> stretches, Decades decades, ToDoubleFunction<Profile.Point> of) {
        XYSeriesCollection lines = new XYSeriesCollection();
        for (int s = 0; s < stretches.size(); s++) {
            XYSeries series = new XYSeries(s, false, true);
            for (Profile.Point point : stretches.get(s).points()) {
                series.add(point.kilometers(), decades.drawn(of.applyAsDouble(point)));
            }
            lines.addSeries(series);
        }
        return lines;
    }

    private static YIntervalSeriesCollection band(Profile profile, Decades decades) {
        YIntervalSeriesCollection band = new YIntervalSeriesCollection();
        for (int s = 0; s < profile.stretches().size(); s++) {
            YIntervalSeries series = new YIntervalSeries(s, false, true);
            for (Profile.Point point : profile.stretches().get(s).points()) {
                double low = decades.drawn(point.low());
                series.add(point.kilometers(), low, low, decades.drawn(point.high()));
            }
            band.addSeries(series);
        }
        return band;
    }

    private static XYLineAndShapeRenderer renderer(Profile profile, Color color, java.awt.Stroke stroke) {
        return renderer(profile.stretches().size(), color, stroke);
    }

    private static XYLineAndShapeRenderer renderer(int stretches, Color color, java.awt.Stroke stroke) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int s = 0; s < stretches; s++) {
            renderer.setSeriesPaint(s, color);
            renderer.setSeriesStroke(s, stroke);
        }
        return renderer;
    }

    private static DeviationRenderer bandRenderer(Profile profile) {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        for (int s = 0; s < profile.stretches().size(); s++) {
            renderer.setSeriesFillPaint(s, Ink.BAND);
            renderer.setSeriesPaint(s, Ink.BAND);
            renderer.setSeriesStroke(s, new BasicStroke(0.1f));
        }
        return renderer;
    }
}
