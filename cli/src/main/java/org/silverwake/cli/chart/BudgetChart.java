// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws what each budget buys, 8 by 5 inches: a stair in each panel, since practices are taken or left. */
public final class BudgetChart {
    private static final double AXIS_WIDTH = 52;
    private static final double AXIS_HEIGHT = 34;
    private static final double BARE_HEIGHT = 8;
    private static final double PANEL_TITLE = 11;
    private static final double HEADROOM = 1.08;

    private final Font regular;
    private final Font bold;

    /** With letters that have every sign the texts need. */
    public BudgetChart(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * Draws it into a PNG file.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(BudgetCurve curve, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> draw(curve, text));
    }

    private void draw(BudgetCurve curve, PageText text) {
        double top = ChartPage.heading(curve.title(), curve.subtitle(), text);
        double bottom = ChartPage.foot(curve.caution(), curve.imprint(), text) - BARE_HEIGHT;
        int n = curve.panels().size();
        double each = (bottom - top - AXIS_HEIGHT) / n;
        for (int i = 0; i < n; i++) {
            BudgetCurve.Panel panel = curve.panels().get(i);
            double head = text.drawLines(
                    List.of(panel.quantity()), text.bold(PANEL_TITLE), Ink.TEXT, ChartPage.MARGIN, top + i * each);
            boolean last = i == n - 1;
            double height = top + (i + 1) * each + (last ? AXIS_HEIGHT : 0) - head;
            Rectangle2D box =
                    new Rectangle2D.Double(ChartPage.MARGIN, head - 2, ChartPage.WIDTH - 2 * ChartPage.MARGIN, height);
            ProfilePlot.draw(
                    plot(curve, panel, last),
                    AXIS_WIDTH,
                    last ? AXIS_HEIGHT : BARE_HEIGHT,
                    regular,
                    text.graphics(),
                    box);
        }
    }

    private XYPlot plot(BudgetCurve curve, BudgetCurve.Panel panel, boolean last) {
        XYSeries series = new XYSeries(panel.quantity(), false, true);
        for (int k = 0; k < panel.values().size(); k++) {
            series.add(curve.budgets().get(k), panel.values().get(k));
        }
        double first = curve.budgets().get(0);
        double end = curve.budgets().get(curve.budgets().size() - 1);
        NumberAxis domain = new NumberAxis(
                last ? "budget [" + curve.unit() + "]" + (first < 0 ? "; below 0: more is given back" : "") : null);
        domain.setRange(first, Math.max(end, first + 1));
        domain.setNumberFormatOverride(ProfilePlot.plain());
        domain.setTickLabelsVisible(last);
        ProfilePlot.style(domain, regular);
        NumberAxis range = new NumberAxis(null);
        double most = panel.values().stream().mapToDouble(v -> v).max().orElse(0);
        range.setRange(0, Math.max(most, Double.MIN_NORMAL) * HEADROOM);
        range.setNumberFormatOverride(ProfilePlot.plain());
        if (panel.values().stream().allMatch(v -> v == Math.rint(v))) {
            range.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        }
        ProfilePlot.style(range, regular);
        XYStepRenderer stairs = new XYStepRenderer();
        stairs.setSeriesPaint(0, Ink.WITH_BED);
        stairs.setSeriesStroke(0, Ink.BED);
        XYPlot plot = new XYPlot(new XYSeriesCollection(series), domain, range, stairs);
        plot.setDomainGridlinePaint(Ink.GRID);
        return plot;
    }
}
