// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * Benefits against a budget, in panels above one another.
 *
 * @param title what, in a few words
 * @param subtitle what is counted
 * @param unit unit of the budget, as "USD a year"
 * @param budgets rising, at least two
 * @param panels from top to bottom, at least one
 * @param caution what a reader must know before using the chart
 * @param imprint date and maker
 */
public record BudgetCurve(
        String title,
        String subtitle,
        String unit,
        List<Double> budgets,
        List<Panel> panels,
        String caution,
        String imprint) {
    /** Copies the lists. */
    public BudgetCurve {
        budgets = List.copyOf(budgets);
        panels = List.copyOf(panels);
    }

    /** One benefit: its name with its unit, and its value for each budget, at least 0. */
    public record Panel(String quantity, List<Double> values) {
        /** Copies the list. */
        public Panel {
            values = List.copyOf(values);
        }
    }
}
