// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.silverwake.cli.text.Numbers;

/** Amounts that add up, as layers on one another, and their names beside the layers' ends. */
final class StackPlot {
    /** Below this share of all an amount is told as less than that [-]. */
    private static final double NOTHING = 0.001;

    private static final int DIGITS = 2;

    private final List<Layer> layers;
    private final String unit;

    /** Of layers from the bottom up. */
    StackPlot(List<Layer> layers, String unit) {
        this.layers = List.copyOf(layers);
        this.unit = unit;
    }

    /** A layer's name and color. */
    record Layer(String name, Color color) {}

    /** Amounts of the layers at one place of the axis. */
    record Column(double x, List<Double> amounts) {
        double sum() {
            return amounts.stream().mapToDouble(a -> a).sum();
        }
    }

    /** Adds a piece without a gap; the highest sum lies at the back. */
    void add(XYPlot plot, List<Column> piece) {
        for (int k = layers.size() - 1; k >= 0; k--) {
            XYSeries series = new XYSeries(k, false, true);
            for (Column column : piece) {
                series.add(column.x(), upTo(column, k));
            }
            XYAreaRenderer area = new XYAreaRenderer(XYAreaRenderer.AREA);
            area.setSeriesPaint(0, layers.get(k).color());
            int next = plot.getDatasetCount();
            plot.setDataset(next, new XYSeriesCollection(series));
            plot.setRenderer(next, area);
        }
    }

    private static double upTo(Column column, int k) {
        double sum = 0;
        for (int under = 0; under <= k; under++) {
            sum += column.amounts().get(under);
        }
        return sum;
    }

    /** Names of the layers with what each is at the last column, between top and bottom of the page. */
    void names(Column last, double most, Rectangle2D area, double top, double bottom, PageText text) {
        EndLabels names = new EndLabels(text, area.getMaxX(), Theme.WIDTH - Theme.MARGIN - area.getMaxX());
        for (int k = layers.size() - 1; k >= 0; k--) {
            double amount = last.amounts().get(k);
            double middle = upTo(last, k) - amount / 2;
            String words = last.sum() > 0 && amount < NOTHING * last.sum()
                    ? "less than 0.1 %"
                    : Numbers.shown(amount, DIGITS) + " " + unit;
            // a thousandth of a point apart from the next, so that layers without height keep their order
            double y = area.getMaxY() - middle / most * area.getHeight() - k * NOTHING;
            names.fill(y, layers.get(k).name(), words, layers.get(k).color());
        }
        names.draw(top, bottom);
    }
}
