// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * Stretches of line within an area, sorted into square cells once all are known. How much line a cell holds is known beforehand; only where the edge
 * of a box runs through a cell, its stretches are looked at one by one. What lies outside the area counts nowhere.
 */
final class Stretches {
    /** Some four to the height of a name [page units]; chosen by trial. */
    private static final double CELL = 3;

    private static final int ENDS = 4;

    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private double[] ends = new double[ENDS * 1024];
    private int[] times = new int[1024];
    private int count;
    private int[] first = {};
    private int[] members = {};
    private double[] lengths = {};
    private final Span span = new Span();

    Stretches(Box area) {
        left = area.x() - area.halfWidth();
        top = area.y() - area.halfHeight();
        columns = Math.max(1, (int) Math.ceil(2 * area.halfWidth() / CELL));
        rows = Math.max(1, (int) Math.ceil(2 * area.halfHeight() / CELL));
    }

    /** A stretch that counts so many times. */
    void add(double fromX, double fromY, double toX, double toY, int often) {
        if (times.length == count) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
            times = Arrays.copyOf(times, 2 * count);
        }
        ends[ENDS * count] = fromX;
        ends[ENDS * count + 1] = fromY;
        ends[ENDS * count + 2] = toX;
        ends[ENDS * count + 3] = toY;
        times[count++] = often;
        first = new int[0];
    }

    /** Length of all stretches inside a box that lies in the area [page units]; may stop adding where it reaches {@code enough}. */
    double lengthInside(Box box, double enough) {
        if (first.length == 0) {
            sort();
        }
        double reach = box.halfSpan(Math.PI / 2);
        int south = row(box.y() + reach);
        double cos = Math.cos(box.angle());
        double sin = Math.sin(box.angle());
        double sum = 0;
        BoxRow inBox = new BoxRow(box);
        for (int r = row(box.y() - reach); r <= south && sum < enough; r++) {
            inBox.enter(top + r * CELL, CELL);
            int east = inBox.west() > inBox.east() ? -1 : column(inBox.east());
            for (int c = column(inBox.west()); c <= east && sum < enough; c++) {
                int cell = r * columns + c;
                double x = left + c * CELL;
                if (inBox.holds(x, x + CELL)) {
                    sum += lengths[cell];
                } else {
                    for (int m = first[cell]; m < first[cell + 1]; m++) {
                        sum += lengthInside(members[m], cell, box, cos, sin);
                    }
                }
            }
        }
        return sum;
    }

    private double lengthInside(int k, int cell, Box box, double cos, double sin) {
        double x = ends[ENDS * k] - box.x();
        double y = ends[ENDS * k + 1] - box.y();
        double dx = ends[ENDS * k + 2] - ends[ENDS * k];
        double dy = ends[ENDS * k + 3] - ends[ENDS * k + 1];
        span.whole();
        cut(k, cell);
        span.cut(x * cos + y * sin, dx * cos + dy * sin, -box.halfWidth(), box.halfWidth());
        span.cut(y * cos - x * sin, dy * cos - dx * sin, -box.halfHeight(), box.halfHeight());
        return span.share() * times[k] * Math.sqrt(dx * dx + dy * dy);
    }

    /** Keeps what of a stretch lies in one of its cells. One that runs along a side of cells lies in the one it was sorted into. */
    private void cut(int k, int cell) {
        double dx = ends[ENDS * k + 2] - ends[ENDS * k];
        double dy = ends[ENDS * k + 3] - ends[ENDS * k + 1];
        double west = left + cell % columns * CELL;
        double north = top + cell / columns * CELL;
        if (dx != 0) {
            span.cut(ends[ENDS * k], dx, west, west + CELL);
        }
        if (dy != 0) {
            span.cut(ends[ENDS * k + 1], dy, north, north + CELL);
        }
    }

    /** Counts, then fills: the members of cell k are those from first[k] to first[k + 1]. */
    private void sort() {
        int[] from = new int[rows * columns + 1];
        double[] sums = new double[rows * columns];
        for (int k = 0; k < count; k++) {
            int stretch = k;
            double length =
                    times[k] * Math.hypot(ends[ENDS * k + 2] - ends[ENDS * k], ends[ENDS * k + 3] - ends[ENDS * k + 1]);
            visit(k, cell -> {
                from[cell + 1]++;
                span.whole();
                cut(stretch, cell);
                sums[cell] += length * span.share();
            });
        }
        for (int cell = 0; cell < rows * columns; cell++) {
            from[cell + 1] += from[cell];
        }
        members = new int[from[rows * columns]];
        int[] next = from.clone();
        for (int k = 0; k < count; k++) {
            int stretch = k;
            visit(k, cell -> members[next[cell]++] = stretch);
        }
        first = from;
        lengths = sums;
    }

    /** Row by row, the cells that a stretch runs through within the area. */
    private void visit(int k, IntConsumer cells) {
        double x = ends[ENDS * k];
        double y = ends[ENDS * k + 1];
        double dx = ends[ENDS * k + 2] - x;
        double dy = ends[ENDS * k + 3] - y;
        int south = row(Math.max(y, y + dy));
        for (int r = row(Math.min(y, y + dy)); r <= south; r++) {
            double from = x;
            double to = x + dx;
            if (dy != 0 && Math.abs(dx) > CELL) {
                span.whole();
                span.cut(y, dy, top + r * CELL, top + (r + 1) * CELL);
                if (span.isEmpty()) {
                    continue;
                }
                from = x + span.from() * dx;
                to = x + span.to() * dx;
            }
            int east = column(Math.max(from, to));
            for (int c = column(Math.min(from, to)); c <= east; c++) {
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
