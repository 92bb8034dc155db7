// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;

/**
 * Everything a map of the river says, in words ready to print.
 *
 * @param basis what all maps of the run have in common
 * @param subtitle flow state and medium
 * @param legendTitle what the classes are classes of, with its unit
 * @param classes how reaches may look, in the order of the legend
 * @param summary people, intakes and river by answer, a few short lines
 * @param reaches one per reach of the river map, by index
 * @param guidelines what was compared with
 * @param factorLine the stated factor, in a sentence
 */
public record MapSheet(
        MapBasis basis,
        String subtitle,
        String legendTitle,
        List<LineClass> classes,
        Summary summary,
        List<ReachMark> reaches,
        List<GuidelineLine> guidelines,
        String factorLine) {
    /** A heading and a few short lines; without lines, nothing is drawn. */
    public record Summary(String title, List<String> lines) {
        /** Copies the list. */
        public Summary {
            lines = List.copyOf(lines);
        }

        /** No summary. */
        public static Summary none() {
            return new Summary("", List.of());
        }
    }

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if a reach has a class that is not listed
     */
    public MapSheet {
        classes = List.copyOf(classes);
        reaches = List.copyOf(reaches);
        guidelines = List.copyOf(guidelines);
        for (ReachMark mark : reaches) {
            if (mark.lineClass() < 0 || mark.lineClass() >= classes.size()) {
                throw new IllegalArgumentException(
                        "class " + mark.lineClass() + " is not allowed; give 0 to " + (classes.size() - 1));
            }
        }
    }
}
