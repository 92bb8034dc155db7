// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * Values at one place, each a bar of 100 %, divided among what brings them.
 *
 * @param title what is shown
 * @param subtitle which values these are
 * @param sources what brings them, in the order of the bars' parts
 * @param listHead what the lines below the names of sources say
 * @param groups bars by what is measured
 * @param caution what stands on every picture
 * @param imprint who drew it and when
 */
public record ShareBars(
        String title,
        String subtitle,
        List<Source> sources,
        String listHead,
        List<Group> groups,
        String caution,
        String imprint) {
    /** Copies the lists. */
    public ShareBars {
        sources = List.copyOf(sources);
        groups = List.copyOf(groups);
    }

    /** What a source is. */
    public enum Kind {
        /** One site. */
        SITE,
        /** Sites with small shares together. */
        OTHER_SITES,
        /** What is there without any site. */
        BACKGROUND
    }

    /**
     * One source.
     *
     * @param name its name
     * @param kind what it is
     * @param line what is said below its name; may be empty
     */
    public record Source(String name, Kind kind, String line) {}

    /**
     * Bars of one measure.
     *
     * @param title what is measured
     * @param bars from the top down
     */
    public record Group(String title, List<Bar> bars) {
        /** Copies the list. */
        public Group {
            bars = List.copyOf(bars);
        }
    }

    /**
     * One bar.
     *
     * @param label of the bar, at its left
     * @param amount its value in words, below that
     * @param shares of the sources, in their order, together 1
     */
    public record Bar(String label, String amount, List<Double> shares) {
        /** Copies the list. */
        public Bar {
            shares = List.copyOf(shares);
        }
    }
}
