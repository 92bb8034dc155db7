// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Names above a plot of what lies along a river. Sites and places come first; tributaries, which are many, are named as far as rows
 * that are there anyway have room.
 *
 * @param placed a place for each mark, or none
 * @param omitted how many sites and places found no room
 */
record MarkNames(List<Optional<MarkLabels.Placed>> placed, int omitted) {
    static final double ROW = 12;

    private static final double GAP = 3;
    private static final int FEWEST_ROWS = 2;

    /** Names of a profile's marks above a plot that begins at a left edge. */
    static MarkNames of(Profile profile, PageText text, double left, int mostRows) {
        double right = Theme.WIDTH - Theme.MARGIN - Theme.GUTTER;
        List<MarkLabels.Wanted> all = new ArrayList<>();
        List<MarkLabels.Wanted> first = new ArrayList<>();
        for (Profile.Mark mark : profile.marks()) {
            double x = left + (right - left) * mark.kilometers() / profile.length();
            double width = text.width(mark.name(), ProfileMarks.font(mark.kind()));
            MarkLabels.Wanted wanted =
                    new MarkLabels.Wanted(x, width, mark.kind().ordinal());
            all.add(wanted);
            if (mark.kind() != Profile.Mark.Kind.TRIBUTARY) {
                first.add(wanted);
            }
        }
        int rows = Math.max(FEWEST_ROWS, rows(labels(right, mostRows).place(first)));
        List<Optional<MarkLabels.Placed>> placed = labels(right, rows).place(all);
        int omitted = 0;
        for (int k = 0; k < placed.size(); k++) {
            boolean river = profile.marks().get(k).kind() == Profile.Mark.Kind.TRIBUTARY;
            omitted += placed.get(k).isEmpty() && !river ? 1 : 0;
        }
        return new MarkNames(placed, omitted);
    }

    private static MarkLabels labels(double right, int rows) {
        return new MarkLabels(Theme.MARGIN, right, GAP, rows);
    }

    private static int rows(List<Optional<MarkLabels.Placed>> placed) {
        return placed.stream()
                .flatMap(Optional::stream)
                .mapToInt(p -> p.row() + 1)
                .max()
                .orElse(0);
    }

    /** Room that names and symbols need above the plot [points]. */
    double height() {
        return rows(placed) * ROW + ProfileMarks.SYMBOL + 4;
    }
}
