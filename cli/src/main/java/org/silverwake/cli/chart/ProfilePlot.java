// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Stroke;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** The plot area of a profile: axes, band, lines. Titles, names and legend are drawn around it by {@link ProfileChart}. */
final class ProfilePlot {
    private ProfilePlot() {}

    /** Axes, band and lines of a profile. */
    static XYPlot of(Profile profile, Decades decades) {
        XYPlot plot = Axes.plot(distanceAxis(profile), Axes.log(decades));
        plot.setDataset(0, band(profile, decades));
        plot.setRenderer(0, bandRenderer(profile));
        add(plot, lines(profile, decades, Profile.Point::high), renderer(profile, Theme.HIGH, Theme.THICK));
        add(plot, lines(profile, decades, Profile.Point::low), renderer(profile, Theme.LOW, Theme.MEDIUM));
        add(plot, lines(profile, decades, Profile.Point::background), renderer(profile, Theme.BACKGROUND, Theme.DOTS));
        if (profile.hasBed()) {
            for (ToDoubleFunction<Profile.Range> end :
                    List.<ToDoubleFunction<Profile.Range>>of(Profile.Range::low, Profile.Range::high)) {
                add(
                        plot,
                        lines(
                                profile,
                                decades,
                                p -> p.withBed().map(end::applyAsDouble).orElse(p.high())),
                        renderer(profile, Theme.WITH_BED, Theme.BED));
            }
        }
        return plot;
    }

    /** Axes of a profile and a line for each scenario, the first on top. */
    static XYPlot of(ScenarioProfile profile, Decades decades) {
        XYPlot plot = Axes.plot(distanceAxis(profile.frame()), Axes.log(decades));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.REVERSE);
        for (int k = 0; k < profile.courses().size(); k++) {
            List<Profile.Stretch> stretches = profile.courses().get(k).stretches();
            plot.setDataset(k, lines(stretches, decades, Profile.Point::high));
            plot.setRenderer(k, Axes.lines(stretches.size(), Theme.scenario(k), Theme.scenarioLine(k)));
        }
        return plot;
    }

    private static void add(XYPlot plot, XYSeriesCollection lines, XYLineAndShapeRenderer renderer) {
        int next = plot.getDatasetCount();
        plot.setDataset(next, lines);
        plot.setRenderer(next, renderer);
    }

    static ValueAxis distanceAxis(Profile profile) {
        return Axes.linear(
                "distance downstream from " + profile.start() + " [km]",
                0,
                Math.max(profile.length(), Double.MIN_NORMAL));
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

    private static XYLineAndShapeRenderer renderer(Profile profile, Color color, Stroke stroke) {
        return Axes.lines(profile.stretches().size(), color, stroke);
    }

    private static DeviationRenderer bandRenderer(Profile profile) {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setAlpha(1);
        for (int s = 0; s < profile.stretches().size(); s++) {
            renderer.setSeriesFillPaint(s, Theme.BAND);
            renderer.setSeriesPaint(s, Theme.BAND);
            renderer.setSeriesStroke(s, Theme.NONE);
        }
        return renderer;
    }
}
