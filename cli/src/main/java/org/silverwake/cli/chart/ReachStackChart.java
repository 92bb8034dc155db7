// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;

/** Draws amounts that add up along a river, 8 by 5 inches, one panel below the other, each layer named at its end. */
public final class ReachStackChart {
    private static final double GAP = 5;
    private static final int MOST_ROWS = 5;
    /** Room for a panel's title above what is drawn [-]. */
    private static final double HEADROOM = 1.3;

    private static final int TICKS = 6;
    private static final double RIGHT = Theme.WIDTH - Theme.MARGIN - Theme.GUTTER;
    private static final double INNER = Theme.WIDTH - 2 * Theme.MARGIN;

    /** By color number: lightness alternates, so that neighbors differ in grey too. */
    private static final List<Color> COLORS = List.of(
            new Color(0xB8B8B8),
            new Color(0x5A2A0C),
            new Color(0xE0A060),
            new Color(0x3D3D3D),
            new Color(0xA9C3E6),
            new Color(0x2B4C8C),
            new Color(0xD1497A));

    private ReachStackChart() {}

    /** Draws into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(ReachStack stack, Path file) {
        ChartPage.write(file, text -> draw(stack, text));
    }

    private static void draw(ReachStack stack, PageText text) {
        Profile frame = stack.frame();
        double top = ChartPage.heading(frame.title(), frame.quantity() + " \u2013 " + frame.subtitle(), text);
        double most = Math.max(stack.most() * HEADROOM, Double.MIN_NORMAL);
        double left = Axes.leftRoom(text, most >= TICKS ? Math.rint(most) : Axes.step(most / TICKS));
        MarkNames names = MarkNames.of(frame, text, Theme.MARGIN + left, MOST_ROWS);
        double first = top + names.height() - Axes.TOP_ROOM;
        double bottom = below(frame, names.omitted(), text);
        int n = stack.panels().size();
        double height = (bottom - first - Axes.BELOW - GAP * (n - 1)) / n;
        for (int p = 0; p < n; p++) {
            boolean last = p == n - 1;
            double y = first + p * (height + GAP);
            double under = last ? Axes.BELOW : GAP;
            Rectangle2D box =
                    new Rectangle2D.Double(Theme.MARGIN, y, RIGHT + Axes.RIGHT_ROOM - Theme.MARGIN, height + under);
            Rectangle2D area = panel(stack, p, left, under, box, text);
            ProfileMarks marks = new ProfileMarks(frame, Decades.of(frame), area, text);
            marks.gaps();
            if (p == 0) {
                marks.marks(names.placed(), MarkNames.ROW);
            } else {
                marks.lines();
            }
            marks.gapNames();
            panelTitle(stack.panels().get(p).title(), area, text);
            Axes.uprightTitle("passing [" + frame.unit() + "]", Theme.MARGIN, area, area.getHeight(), text);
        }
    }

    /** What the marks are, and the foot; the upper edge of the first. */
    private static double below(Profile frame, int omitted, PageText text) {
        String more = omitted > 0
                ? " \u00B7 " + omitted + (omitted == 1 ? " name" : " names") + " left out for want of room"
                : "";
        double foot = ChartPage.foot(frame.caution(), frame.imprint() + more, text);
        ProfileLegend legend = new ProfileLegend(frame, text);
        double top = foot - legend.height(INNER) - GAP;
        legend.draw(Theme.MARGIN, top, INNER);
        return top;
    }

    /** Within the panel at its upper right. */
    private static void panelTitle(String title, Rectangle2D area, PageText text) {
        Font font = Theme.bold(Theme.NAME);
        double x = area.getMaxX() - text.width(title, font) - GAP;
        text.drawOver(title, font, x, area.getMinY() + Theme.NAME + 2, false);
    }

    private static Rectangle2D panel(
            ReachStack stack, int p, double left, double below, Rectangle2D box, PageText text) {
        ValueAxis distance = ProfilePlot.distanceAxis(stack.frame());
        if (below <= GAP) {
            distance.setLabel(null);
            distance.setTickLabelsVisible(false);
        }
        double most = Math.max(stack.most() * HEADROOM, Double.MIN_NORMAL);
        XYPlot plot = Axes.plot(
                distance, Axes.linear(null, 0, most, TICKS / stack.panels().size(), false));
        StackPlot layers = new StackPlot(
                stack.layers().stream()
                        .map(l -> new StackPlot.Layer(l.name(), COLORS.get(l.color())))
                        .toList(),
                stack.frame().unit());
        List<List<ReachStack.Point>> stretches = stack.panels().get(p).stretches();
        for (List<ReachStack.Point> stretch : stretches) {
            layers.add(plot, columns(stretch));
        }
        Rectangle2D area = Axes.draw(plot, left, below, text.graphics(), box);
        if (!stretches.isEmpty()) {
            List<StackPlot.Column> last = columns(stretches.get(stretches.size() - 1));
            layers.names(last.get(last.size() - 1), most, area, area.getMinY(), area.getMaxY() + below, text);
        }
        return area;
    }

    private static List<StackPlot.Column> columns(List<ReachStack.Point> stretch) {
        return stretch.stream()
                .map(point -> new StackPlot.Column(point.kilometers(), point.amounts()))
                .toList();
    }
}
