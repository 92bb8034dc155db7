// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * How far one value swings with each thing that is not known, the others at their middle.
 *
 * @param title what is shown
 * @param subtitle of which value
 * @param quantity what is drawn, without its unit
 * @param unit of all values
 * @param middle the value with everything at its middle, above 0
 * @param bars the widest first, at least one
 * @param guidelines values to compare with
 * @param caution what stands on every picture
 * @param imprint who drew it and when, and what is not drawn
 */
public record Tornado(
        String title,
        String subtitle,
        String quantity,
        String unit,
        double middle,
        List<Bar> bars,
        List<Profile.GuidelineValue> guidelines,
        String caution,
        String imprint) {
    /** More bars than this cannot be read. */
    public static final int MOST = 8;

    /** Copies and checks. */
    public Tornado {
        bars = List.copyOf(bars);
        guidelines = List.copyOf(guidelines);
        if (bars.isEmpty() || bars.size() > MOST) {
            throw new IllegalArgumentException(bars.size() + " bars on one chart; give 1 to " + MOST);
        }
    }

    /**
     * One thing not known.
     *
     * @param name its name
     * @param range from what to what, in words, as "4.1 to 9.8 kg a year"
     * @param low the value at its low end, above 0
     * @param high the value at its high end, at least {@code low}
     */
    public record Bar(String name, String range, double low, double high) {}
}
