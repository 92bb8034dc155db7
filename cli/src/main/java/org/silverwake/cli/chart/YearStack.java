// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * Amounts that add up, against calendar years.
 *
 * @param title what, in a few words
 * @param subtitle what was supposed
 * @param firstYear calendar year of the first value
 * @param quantity what is drawn, without its unit
 * @param unit of all amounts
 * @param layers from the bottom up
 * @param caution what a reader must know before using the chart
 * @param imprint date and maker
 */
public record YearStack(
        String title,
        String subtitle,
        int firstYear,
        String quantity,
        String unit,
        List<Layer> layers,
        String caution,
        String imprint) {
    /** Copies the list. */
    public YearStack {
        layers = List.copyOf(layers);
    }

    /** A name and an amount for each year, at least 0 [the chart's unit]. */
    public record Layer(String name, List<Double> amounts) {
        /** Copies the list. */
        public Layer {
            amounts = List.copyOf(amounts);
        }
    }
}
