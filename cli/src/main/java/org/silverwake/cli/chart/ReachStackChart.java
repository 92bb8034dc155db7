// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYAreaRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.silverwake.cli.text.Numbers;

/** Draws amounts that add up along a river, 8 by 5 inches, one panel below the other, and beside them what the layers are. */
public final class ReachStackChart {
    private static final double GUTTER = 132;
    private static final double AXIS_HEIGHT = 34;
    private static final double AXIS_WIDTH = 60;
    private static final double PANEL_TITLE = 10.5;
    private static final double NAME = 10;
    private static final double SWATCH = 11;
    private static final double GAP = 5;
    private static final double ROW = 12;
    private static final int MOST_ROWS = 4;
    /** Room for a panel's title above what is drawn [-]. */
    private static final double HEADROOM = 1.3;

    private static final int TICKS = 3;

    /** By color number: lightness alternates, so that neighbors differ in grey too. */
    private static final List<Color> COLORS = List.of(
            new Color(0xB8B8B8),
            new Color(0x5A2A0C),
            new Color(0xE0A060),
            new Color(0x3D3D3D),
            new Color(0xA9C3E6),
            new Color(0x2B4C8C),
            new Color(0xD1497A));

    private final Font regular;
    private final Font bold;

    /** With letters that have every sign the texts need. */
    public ReachStackChart(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * Draws into a PNG file.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(ReachStack stack, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> draw(stack, text));
    }

    private void draw(ReachStack stack, PageText text) {
        Profile frame = stack.frame();
        double top = ChartPage.heading(
                frame.title(), frame.quantity() + ", " + frame.unit() + " \u2013 " + frame.subtitle(), text);
        double right = ChartPage.WIDTH - ChartPage.MARGIN - GUTTER;
        List<Optional<MarkLabels.Placed>> names = ProfileChart.placeNames(
                frame,
                text,
                ChartPage.MARGIN + AXIS_WIDTH,
                right,
                new MarkLabels(ChartPage.MARGIN, right, GAP, MOST_ROWS));
        int rows = names.stream()
                .flatMap(Optional::stream)
                .mapToInt(p -> p.row() + 1)
                .max()
                .orElse(0);
        double first = top + rows * ROW + ProfileMarks.SYMBOL - ProfilePlot.TOP_ROOM + 2;
        double bottom = below(frame, names, text);
        int n = stack.panels().size();
        double height = (bottom - first - AXIS_HEIGHT - GAP * (n - 1)) / n;
        for (int p = 0; p < n; p++) {
            boolean last = p == n - 1;
            double y = first + p * (height + GAP);
            Rectangle2D box = new Rectangle2D.Double(
                    ChartPage.MARGIN,
                    y,
                    right + ProfilePlot.RIGHT_ROOM - ChartPage.MARGIN,
                    height + (last ? AXIS_HEIGHT : GAP));
            Rectangle2D area = panel(stack, p, last, box, text);
            ProfileMarks marks = new ProfileMarks(frame, Decades.of(frame), area, text);
            marks.gaps();
            if (p == 0) {
                marks.marks(names, ROW);
            } else {
                marks.lines();
            }
            marks.gapNames();
            panelTitle(stack.panels().get(p).title(), area, text);
        }
        names(stack, right + 2 * GAP, top + GAP, text);
    }

    /** Legend of the marks and foot; the legend's top edge. */
    private static double below(Profile frame, List<Optional<MarkLabels.Placed>> names, PageText text) {
        long omitted = names.stream().filter(Optional::isEmpty).count();
        String more = omitted > 0 ? " \u00B7 " + omitted + " names left out for want of room" : "";
        double foot = ChartPage.foot(frame.caution(), frame.imprint() + more, text);
        double width = ChartPage.WIDTH - 2 * ChartPage.MARGIN;
        ProfileLegend legend = ProfileLegend.ofMarks(frame, text);
        double top = foot - legend.height(width) - GAP;
        legend.draw(ChartPage.MARGIN, top, width);
        return top;
    }

    /** Within the panel at its upper right. */
    private static void panelTitle(String title, Rectangle2D area, PageText text) {
        Font font = text.bold(PANEL_TITLE);
        double x = area.getMaxX() - text.width(title, font) - GAP;
        text.drawOver(title, font, x, area.getMinY() + PANEL_TITLE + 2, 0);
    }

    private Rectangle2D panel(ReachStack stack, int p, boolean last, Rectangle2D box, PageText text) {
        XYPlot plot = new XYPlot();
        ValueAxis distance = ProfilePlot.distanceAxis(stack.frame(), regular);
        if (!last) {
            distance.setLabel(null);
            distance.setTickLabelsVisible(false);
        }
        plot.setDomainAxis(distance);
        plot.setRangeAxis(axis(stack));
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        for (List<ReachStack.Point> stretch : stack.panels().get(p).stretches()) {
            layers(plot, stack, stretch);
        }
        return ProfilePlot.draw(plot, AXIS_WIDTH, last ? AXIS_HEIGHT : GAP, regular, text.graphics(), box);
    }

    private NumberAxis axis(ReachStack stack) {
        double most = Math.max(stack.most() * HEADROOM, Double.MIN_NORMAL);
        NumberAxis axis = new NumberAxis("[" + stack.frame().unit() + "]");
        axis.setRange(0, most);
        axis.setTickUnit(new NumberTickUnit(step(most / TICKS)));
        axis.setNumberFormatOverride(ProfilePlot.plain());
        ProfilePlot.style(axis, regular);
        return axis;
    }

    /** The largest of 1, 2 and 5 times a power of ten that is not above. */
    private static double step(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        return most >= 5 * power ? 5 * power : most >= 2 * power ? 2 * power : power;
    }

    /** The highest sum lies at the back. */
    private static void layers(XYPlot plot, ReachStack stack, List<ReachStack.Point> stretch) {
        for (int k = stack.layers().size() - 1; k >= 0; k--) {
            XYSeries series = new XYSeries(k, false, true);
            for (ReachStack.Point point : stretch) {
                double sum = 0;
                for (int under = 0; under <= k; under++) {
                    sum += point.amounts().get(under);
                }
                series.add(point.kilometers(), sum);
            }
            XYAreaRenderer area = new XYAreaRenderer(XYAreaRenderer.AREA);
            area.setSeriesPaint(0, COLORS.get(stack.layers().get(k).color()));
            int next = plot.getDatasetCount();
            plot.setDataset(next, new XYSeriesCollection(series));
            plot.setRenderer(next, area);
        }
    }

    /** Names of the layers from the top down, with what is left of each at the end of the path. */
    private static void names(ReachStack stack, double x, double top, PageText text) {
        Graphics2D g = text.graphics();
        Font font = text.regular(NAME);
        Font heavy = text.bold(NAME);
        String where = "At the end [" + stack.frame().unit() + "]"
                + (stack.panels().size() > 1 ? ", upper | lower chart:" : ":");
        double y = text.drawLines(text.wrap(where, heavy, GUTTER - 2 * GAP), heavy, Ink.TEXT, x, top) + GAP;
        for (int k = stack.layers().size() - 1; k >= 0; k--) {
            int layer = k;
            String amounts = stack.panels().stream()
                    .map(panel -> Numbers.shown(panel.last(layer), 2))
                    .collect(Collectors.joining(" | "));
            g.setColor(COLORS.get(stack.layers().get(k).color()));
            g.fill(new Rectangle2D.Double(x, y + 2, SWATCH - 2, SWATCH - 2));
            String name = stack.layers().get(k).name();
            y = text.drawLines(text.wrap(name, font, GUTTER - 2 * GAP - SWATCH - 2), font, Ink.TEXT, x + SWATCH + 2, y);
            y = text.drawLines(List.of(amounts), font, Ink.TEXT, x + SWATCH + 2, y) + GAP / 2;
        }
    }
}
