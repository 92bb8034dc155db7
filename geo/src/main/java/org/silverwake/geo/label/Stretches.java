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
    private int count;
    private int[] first = {};
    private double[] sorted = {};
    private double[] lengths = {};
    private final Span span = new Span();

    Stretches(Box area) {
        left = area.x() - area.halfWidth();
        top = area.y() - area.halfHeight();
        columns = Math.max(1, (int) Math.ceil(2 * area.halfWidth() / CELL));
        rows = Math.max(1, (int) Math.ceil(2 * area.halfHeight() / CELL));
    }

    void add(double fromX, double fromY, double toX, double toY) {
        if (ends.length == ENDS * count) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        ends[ENDS * count] = fromX;
        ends[ENDS * count + 1] = fromY;
        ends[ENDS * count + 2] = toX;
        ends[ENDS * count + 3] = toY;
        count++;
        first = new int[0];
    }

    /** Sorts what was added, if that is not done; from then on until more is added, any number of threads may ask. */
    void ready() {
        if (first.length == 0) {
            sort();
        }
    }

    /** Length of all stretches inside a box that lies in the area [page units]; may stop adding where it reaches {@code enough}. */
    double lengthInside(Box box, double enough) {
        ready();
        Span part = new Span();
        double sum = 0;
        BoxRow inBox = new BoxRow(box);
        double reach = box.halfSpan(Math.PI / 2);
        int north = row(box.y() - reach);
        int south = row(box.y() + reach);
        for (int r = north; r <= south; r++) {
            inBox.enter(top + r * CELL, CELL);
            for (int c = column(inBox.west()); c <= column(inBox.east()); c++) {
                sum += inBox.holds(left + c * CELL, left + (c + 1) * CELL) ? lengths[r * columns + c] : 0;
            }
        }
        for (int r = north; r <= south && sum < enough; r++) {
            inBox.enter(top + r * CELL, CELL);
            for (int c = column(inBox.west()); c <= column(inBox.east()); c++) {
                if (!inBox.holds(left + c * CELL, left + (c + 1) * CELL)) {
                    sum += lengthInside(box, r * columns + c, part);
                }
            }
        }
        return sum;
    }

    private double lengthInside(Box box, int cell, Span part) {
        double cos = Math.cos(box.angle());
        double sin = Math.sin(box.angle());
        double sum = 0;
        for (int m = first[cell]; m < first[cell + 1]; m++) {
            sum += lengthInside(m, cell, box, cos, sin, part);
        }
        return sum;
    }

    private double lengthInside(int m, int cell, Box box, double cos, double sin, Span part) {
        double x = sorted[ENDS * m] - box.x();
        double y = sorted[ENDS * m + 1] - box.y();
        double dx = sorted[ENDS * m + 2] - sorted[ENDS * m];
        double dy = sorted[ENDS * m + 3] - sorted[ENDS * m + 1];
        double u = x * cos + y * sin;
        double v = y * cos - x * sin;
        double du = dx * cos + dy * sin;
        double dv = dy * cos - dx * sin;
        double wide = box.halfWidth();
        double high = box.halfHeight();
        boolean beyond = Math.min(u, u + du) >= wide
                || Math.max(u, u + du) <= -wide
                || Math.min(v, v + dv) >= high
                || Math.max(v, v + dv) <= -high;
        if (beyond) {
            return 0;
        }
        part.whole();
        if (cell(sorted[ENDS * m], sorted[ENDS * m + 1]) != cell
                || cell(sorted[ENDS * m + 2], sorted[ENDS * m + 3]) != cell) {
            cut(sorted, m, cell, part);
        }
        if (Math.max(Math.abs(u), Math.abs(u + du)) > wide) {
            part.cut(u, du, -wide, wide);
        }
        if (Math.max(Math.abs(v), Math.abs(v + dv)) > high) {
            part.cut(v, dv, -high, high);
        }
        return part.share() * Math.sqrt(dx * dx + dy * dy);
    }

    /** Keeps what of a stretch lies in one of its cells. One that runs along a side of cells lies in the one it was sorted into. */
    private void cut(double[] from, int m, int cell, Span part) {
        double dx = from[ENDS * m + 2] - from[ENDS * m];
        double dy = from[ENDS * m + 3] - from[ENDS * m + 1];
        double west = left + cell % columns * CELL;
        double north = top + cell / columns * CELL;
        if (dx != 0) {
            part.cut(from[ENDS * m], dx, west, west + CELL);
        }
        if (dy != 0) {
            part.cut(from[ENDS * m + 1], dy, north, north + CELL);
        }
    }

    /** Counts, then fills: the members of cell k are those from first[k] to first[k + 1]. */
    private void sort() {
        int[] from = new int[rows * columns + 1];
        double[] sums = new double[rows * columns];
        for (int k = 0; k < count; k++) {
            double dx = ends[ENDS * k + 2] - ends[ENDS * k];
            double dy = ends[ENDS * k + 3] - ends[ENDS * k + 1];
            double length = Math.sqrt(dx * dx + dy * dy);
            int cell = first(k);
            if (cell == last(k) && cell >= 0) {
                from[cell + 1]++;
                sums[cell] += length;
            } else {
                int stretch = k;
                visit(k, each -> {
                    from[each + 1]++;
                    span.whole();
                    cut(ends, stretch, each, span);
                    sums[each] += length * span.share();
                });
            }
        }
        for (int cell = 0; cell < rows * columns; cell++) {
            from[cell + 1] += from[cell];
        }
        int[] members = new int[from[rows * columns]];
        int[] next = from.clone();
        for (int k = 0; k < count; k++) {
            int cell = first(k);
            if (cell == last(k) && cell >= 0) {
                members[next[cell]++] = k;
            } else {
                int stretch = k;
                visit(k, each -> members[next[each]++] = stretch);
            }
        }
        inOrder(members);
        first = from;
        lengths = sums;
    }

    /** Copies the members of cells side by side, where the processor reads them fastest. */
    private void inOrder(int[] members) {
        sorted = new double[ENDS * members.length];
        for (int m = 0; m < members.length; m++) {
            System.arraycopy(ends, ENDS * members[m], sorted, ENDS * m, ENDS);
        }
    }

    /** The cell that a stretch begins in; below 0 outside the area. */
    private int first(int k) {
        return cell(ends[ENDS * k], ends[ENDS * k + 1]);
    }

    private int last(int k) {
        return cell(ends[ENDS * k + 2], ends[ENDS * k + 3]);
    }

    private int cell(double x, double y) {
        double column = (x - left) / CELL;
        double row = (y - top) / CELL;
        boolean inside = column >= 0 && row >= 0 && column < columns && row < rows;
        return inside ? (int) row * columns + (int) column : -1;
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
