// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.Arrays;

/**
 * Stretches of line within an area, sorted into square cells once all are known, so that those near a box are found without
 * looking at the others. What lies outside the area is in the cells of its rim.
 */
final class Stretches {
    /** About as high as a name [page units]; chosen by trial. */
    private static final double CELL = 12;

    private static final int ENDS = 4;

    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private double[] ends = new double[ENDS * 1024];
    private int count;
    private int[] first;
    private int[] members;

    Stretches(Box area) {
        left = area.x() - area.halfWidth();
        top = area.y() - area.halfHeight();
        columns = Math.max(1, (int) Math.ceil(2 * area.halfWidth() / CELL));
        rows = Math.max(1, (int) Math.ceil(2 * area.halfHeight() / CELL));
    }

    void add(double fromX, double fromY, double toX, double toY) {
        if (ends.length < ENDS * (count + 1)) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        ends[ENDS * count] = fromX;
        ends[ENDS * count + 1] = fromY;
        ends[ENDS * count + 2] = toX;
        ends[ENDS * count + 3] = toY;
        count++;
        first = null;
    }

    /** Length of all stretches inside a box [page units]; may stop adding where it reaches {@code enough}. */
    double lengthInside(Box box, double enough) {
        if (first == null) {
            sort();
        }
        int west = column(box.x() - box.halfSpan(0));
        int east = column(box.x() + box.halfSpan(0));
        int north = row(box.y() - box.halfSpan(Math.PI / 2));
        int south = row(box.y() + box.halfSpan(Math.PI / 2));
        double sum = 0;
        for (int r = north; r <= south; r++) {
            for (int c = west; c <= east; c++) {
                int cell = r * columns + c;
                for (int m = first[cell]; m < first[cell + 1]; m++) {
                    int at = ENDS * members[m];
                    // a stretch in several cells counts in the first of them that is looked at
                    boolean here = c == Math.max(west, column(Math.min(ends[at], ends[at + 2])))
                            && r == Math.max(north, row(Math.min(ends[at + 1], ends[at + 3])));
                    if (here) {
                        sum += box.lengthInside(ends[at], ends[at + 1], ends[at + 2], ends[at + 3]);
                        if (sum >= enough) {
                            return sum;
                        }
                    }
                }
            }
        }
        return sum;
    }

    /** Counts, then fills: the members of cell k are those from first[k] to first[k + 1]. */
    private void sort() {
        first = new int[rows * columns + 1];
        for (int k = 0; k < count; k++) {
            visit(k, cell -> first[cell + 1]++);
        }
        for (int cell = 0; cell < rows * columns; cell++) {
            first[cell + 1] += first[cell];
        }
        members = new int[first[rows * columns]];
        int[] next = first.clone();
        for (int k = 0; k < count; k++) {
            int stretch = k;
            visit(k, cell -> members[next[cell]++] = stretch);
        }
    }

    private void visit(int k, java.util.function.IntConsumer cells) {
        int at = ENDS * k;
        int east = column(Math.max(ends[at], ends[at + 2]));
        int south = row(Math.max(ends[at + 1], ends[at + 3]));
        for (int r = row(Math.min(ends[at + 1], ends[at + 3])); r <= south; r++) {
            for (int c = column(Math.min(ends[at], ends[at + 2])); c <= east; c++) {
                cells.accept(r * columns + c);
            }
        }
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, (x - left) / CELL));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, (y - top) / CELL));
    }
}
