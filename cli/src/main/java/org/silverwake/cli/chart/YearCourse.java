// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * Values against calendar years, in panels above one another that share the axis of years.
 *
 * @param title what and where, in a few words
 * @param subtitle what was supposed
 * @param firstYear calendar year of the first value
 * @param panels from top to bottom, at least one
 * @param caution what a reader must know before using the chart
 * @param imprint date and maker
 */
public record YearCourse(
        String title, String subtitle, int firstYear, List<Panel> panels, String caution, String imprint) {
    /** Copies the list. */
    public YearCourse {
        panels = List.copyOf(panels);
    }

    /**
     * One quantity.
     *
     * @param quantity what is drawn, without its unit
     * @param unit of all values
     * @param low lowest of each year, at least 0
     * @param high highest of each year, at least {@code low}
     * @param guidelines values to compare with
     */
    public record Panel(
            String quantity,
            String unit,
            List<Double> low,
            List<Double> high,
            List<Profile.GuidelineValue> guidelines) {
        /** Copies the lists. */
        public Panel {
            low = List.copyOf(low);
            high = List.copyOf(high);
            guidelines = List.copyOf(guidelines);
        }
    }
}
