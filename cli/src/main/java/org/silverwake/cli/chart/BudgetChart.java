// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws what each budget buys, 8 by 5 inches: a stair in each panel, since practices are taken or left. */
public final class BudgetChart {
    private static final double HEADROOM = 1.08;
    private static final int TICKS = 5;

    private BudgetChart() {}

    /** Draws it into a file: PNG, SVG or PDF, as its name ends. */
    public static void write(BudgetCurve curve, Path file) {
        ChartPage.write(file, text -> draw(curve, text));
    }

    private static void draw(BudgetCurve curve, PageText text) {
        double top = ChartPage.heading(curve.title(), curve.subtitle(), text) + Axes.BARE;
        double bottom = ChartPage.foot(curve.caution(), curve.imprint(), text) - Axes.BARE;
        int n = curve.panels().size();
        double each = (bottom - top - Axes.BELOW) / n;
        double widest = curve.panels().stream()
                .mapToDouble(panel -> Axes.leftRoom(text, Math.rint(most(panel))))
                .max()
                .orElseThrow();
        double left = widest - 2 * PageText.lineHeight(Theme.regular(Theme.AXIS_TITLE));
        for (int i = 0; i < n; i++) {
            BudgetCurve.Panel panel = curve.panels().get(i);
            double head = text.drawLines(
                    List.of(panel.quantity()), Theme.bold(Theme.PANEL_TITLE), Theme.TEXT, Theme.MARGIN, top + i * each);
            boolean last = i == n - 1;
            double height = top + (i + 1) * each + (last ? Axes.BELOW : 0) - head;
            Rectangle2D box = new Rectangle2D.Double(Theme.MARGIN, head - 2, Theme.WIDTH - 2 * Theme.MARGIN, height);
            Axes.draw(plot(curve, panel, last), left, last ? Axes.BELOW : Axes.BARE, text.graphics(), box);
        }
    }

    private static double most(BudgetCurve.Panel panel) {
        double most = panel.values().stream().mapToDouble(v -> v).max().orElse(0);
        return HEADROOM * (most > 0 ? most : 1);
    }

    private static XYPlot plot(BudgetCurve curve, BudgetCurve.Panel panel, boolean last) {
        XYSeries series = new XYSeries(panel.quantity(), false, true);
        for (int k = 0; k < panel.values().size(); k++) {
            series.add(curve.budgets().get(k), panel.values().get(k));
        }
        double first = curve.budgets().get(0);
        double end = curve.budgets().get(curve.budgets().size() - 1);
        NumberAxis domain = Axes.linear(
                last ? "budget [" + curve.unit() + "]" + (first < 0 ? "; below 0: more is given back" : "") : null,
                first,
                Math.max(end, first + 1));
        domain.setTickLabelsVisible(last);
        boolean whole = panel.values().stream().allMatch(v -> v == Math.rint(v));
        XYPlot plot = Axes.plot(domain, Axes.linear(null, 0, most(panel), TICKS, whole));
        XYStepRenderer stairs = new XYStepRenderer();
        stairs.setSeriesPaint(0, Theme.WITH_BED);
        stairs.setSeriesStroke(0, Theme.BED);
        plot.setDataset(new XYSeriesCollection(series));
        plot.setRenderer(stairs);
        return plot;
    }
}
