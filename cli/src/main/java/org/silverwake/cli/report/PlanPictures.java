// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import org.silverwake.cli.chart.BudgetChart;
import org.silverwake.cli.chart.BudgetCurve;
import org.silverwake.cli.run.Planned;
import org.silverwake.model.planning.CostPoint;

/** What each budget buys, as a picture. */
public final class PlanPictures {
    private PlanPictures() {}

    /** Draws it. */
    public static void draw(Planned planned, MapFiles files) {
        var project = planned.outcome().scenario().project();
        String money = planned.outcome().scenario().fieldNotes().currency();
        List<CostPoint> kilograms = planned.curve().mostKilograms();
        List<CostPoint> limits = planned.curve().mostLimits();
        BudgetCurve curve = new BudgetCurve(
                "What each budget buys, " + project.title(),
                "practices beside those in force; costs less what they give back, by middle costs",
                money + " a year",
                kilograms.stream().map(CostPoint::budget).toList(),
                List.of(
                        new BudgetCurve.Panel(
                                "mercury kept out of the river, at most [kg a year]",
                                kilograms.stream().map(CostPoint::kilograms).toList()),
                        new BudgetCurve.Panel(
                                "values met at places, at most [number of "
                                        + planned.held().size() + "]",
                                limits.stream().map(p -> (double) p.limitsMet()).toList())),
                "A screening from a model, not a finding of safety. Costs are the scenario's.",
                project.preparedBy() + ", " + project.date());
        files.each("budgets", file -> BudgetChart.write(curve, file));
    }
}
