// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.BitSet;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

/**
 * The river lines in a raster: which cells they cross, and which reach lies nearest to a cell. A line is straight between
 * its vertices in the raster's plane. Cells crossed are found by walking from side to side (Amanatides and Woo 1987, A fast
 * voxel traversal algorithm, Eurographics).
 */
final class BurnedRivers {
    /** No reach. */
    static final int NONE = -1;

    private static final int INT_BITS = 32;
    /** Rounding of places from one coordinate system to another [cells]. */
    private static final double ABREAST = 1e-5;

    private final int columns;
    private final int rows;
    private final int[] firstVertex;
    private final double[] x;
    private final double[] y;
    private final BitSet headwater = new BitSet();
    private final BitSet last = new BitSet();
    private final BitSet beyond = new BitSet();
    private long[] crossings = new long[1024];
    private int count;

    private BurnedRivers(RiverMap map, ElevationModel model) {
        columns = model.columns();
        rows = model.rows();
        firstVertex = new int[map.reachCount() + 1];
        for (int r = 0; r < map.reachCount(); r++) {
            firstVertex[r + 1] = firstVertex[r] + map.reach(r).line().getNumPoints();
        }
        x = new double[firstVertex[map.reachCount()]];
        y = new double[x.length];
        ends(map);
        for (int r = 0; r < map.reachCount(); r++) {
            LineString line = map.reach(r).line();
            for (int k = 0; k < line.getNumPoints(); k++) {
                Point2D at = model.toCell(line.getCoordinateN(k).x, line.getCoordinateN(k).y);
                x[firstVertex[r] + k] = at.getX();
                y[firstVertex[r] + k] = at.getY();
                if (!isInside(at.getX(), at.getY())) {
                    beyond.set(r);
                }
            }
        }
    }

    /** The reaches of a map in a model's raster. */
    static BurnedRivers of(RiverMap map, ElevationModel model) {
        BurnedRivers rivers = new BurnedRivers(map, model);
        for (int r = 0; r < map.reachCount(); r++) {
            for (int k = rivers.firstVertex[r]; k + 1 < rivers.firstVertex[r + 1]; k++) {
                rivers.walk(k);
            }
        }
        Arrays.sort(rivers.crossings, 0, rivers.count);
        return rivers;
    }

    private void ends(RiverMap map) {
        BitSet entered = new BitSet();
        BitSet left = new BitSet();
        for (RiverMap.Reach reach : map.reaches()) {
            entered.set(reach.toNode());
            left.set(reach.fromNode());
        }
        for (int r = 0; r < map.reachCount(); r++) {
            headwater.set(r, !entered.get(map.reach(r).fromNode()));
            last.set(r, !left.get(map.reach(r).toNode()));
        }
    }

    private boolean isInside(double column, double row) {
        return column >= -0.5 && column < columns - 0.5 && row >= -0.5 && row < rows - 0.5;
    }

    /** Walks along a segment through the cells of the raster, all of them that it crosses. */
    private void walk(int segment) {
        double dx = x[segment + 1] - x[segment];
        double dy = y[segment + 1] - y[segment];
        // what of it lies in the raster, as fractions from its start
        double from = Math.max(0, Math.max(entry(x[segment], dx, columns), entry(y[segment], dy, rows)));
        double to = Math.min(1, Math.min(exit(x[segment], dx, columns), exit(y[segment], dy, rows)));
        if (!(from <= to)) {
            return;
        }
        int column = clamp(x[segment] + from * dx, columns);
        int row = clamp(y[segment] + from * dy, rows);
        int lastColumn = clamp(x[segment] + to * dx, columns);
        int lastRow = clamp(y[segment] + to * dy, rows);
        double corner = ABREAST / Math.hypot(dx, dy);
        add(column, row, segment);
        while (column != lastColumn || row != lastRow) {
            double nextX = column == lastColumn ? Double.POSITIVE_INFINITY : sideAt(x[segment], dx, column);
            double nextY = row == lastRow ? Double.POSITIVE_INFINITY : sideAt(y[segment], dy, row);
            // through a corner it goes slantwise
            if (nextX <= nextY + corner) {
                column += dx > 0 ? 1 : -1;
            }
            if (nextY <= nextX + corner) {
                row += dy > 0 ? 1 : -1;
            }
            add(column, row, segment);
        }
    }

    /** Fraction of a segment at which it leaves a column, or a row, toward the next one. */
    private static double sideAt(double start, double step, int cell) {
        return (cell + (step > 0 ? 0.5 : -0.5) - start) / step;
    }

    private static double entry(double start, double step, int count) {
        double low = -0.5 - start;
        double high = count - 0.5 - start;
        if (step == 0) {
            return low <= 0 && high > 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return Math.min(low / step, high / step);
    }

    private static double exit(double start, double step, int count) {
        return step == 0 ? Double.POSITIVE_INFINITY : Math.max((-0.5 - start) / step, (count - 0.5 - start) / step);
    }

    private static int clamp(double at, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(at + 0.5)));
    }

    private void add(int column, int row, int segment) {
        if (count == crossings.length) {
            crossings = Arrays.copyOf(crossings, count + count / 2);
        }
        crossings[count++] = (long) (row * columns + column) << INT_BITS | segment;
    }

    /** Number of crossings of a cell by a segment; they are in order of cells. */
    int crossings() {
        return count;
    }

    /** The cell of a crossing. */
    int cell(int crossing) {
        return (int) (crossings[crossing] >>> INT_BITS);
    }

    /** The reach of a crossing. */
    int reach(int crossing) {
        int at = Arrays.binarySearch(firstVertex, (int) crossings[crossing]);
        int reach = at >= 0 ? at : -at - 2;
        // a reach without vertices does not occur, so that equal starts do not either
        return reach;
    }

    /** Whether some of a reach lies outside of the raster. */
    boolean isBeyond(int reach) {
        return beyond.get(reach);
    }

    /** Looks for the reach nearest to a cell's center; one for each thread. */
    final class Search {
        private double square;
        private int reach;
        private double fraction;
        private int segment;

        /** Forgets what was found. */
        void clear() {
            square = Double.POSITIVE_INFINITY;
            reach = NONE;
        }

        /**
         * Looks at all segments that cross a river cell. Of equally near ones, at a node, the reach that begins there comes
         * before those that end there.
         *
         * @param cell the river cell
         * @param column column of the cell from whose center distances count
         * @param row its row
         * @param aspect length of a step along a column over that along a row [-]
         */
        void look(int cell, int column, int row, double aspect) {
            int k = Arrays.binarySearch(crossings, 0, count, (long) cell << INT_BITS);
            for (k = k < 0 ? -k - 1 : k; k < count && cell(k) == cell; k++) {
                int s = (int) crossings[k];
                double ax = x[s] - column;
                double ay = (y[s] - row) * aspect;
                double bx = x[s + 1] - column;
                double by = (y[s + 1] - row) * aspect;
                double beyond = along(ax, ay, bx - ax, by - ay);
                double t = Math.max(0, Math.min(1, beyond));
                double px = t == 1 ? bx : ax + t * (bx - ax);
                double py = t == 1 ? by : ay + t * (by - ay);
                consider(k, beyond, px * px + py * py);
            }
        }

        /** Where along a stretch, 0 to 1 and beyond, the origin lies abreast; exactly 0 and 1 at its ends. */
        private static double along(double ax, double ay, double dx, double dy) {
            double length = dx * dx + dy * dy;
            double t = length == 0 ? 0 : -(ax * dx + ay * dy) / length;
            return Math.abs(t - Math.rint(t)) * Math.sqrt(length) < ABREAST ? Math.rint(t) : t;
        }

        private void consider(int crossing, double t, double found) {
            int candidate = reach(crossing);
            if (found < square || found == square && isBefore(candidate, (int) crossings[crossing], t)) {
                square = found;
                reach = candidate;
                segment = (int) crossings[crossing];
                fraction = t;
            }
        }

        private boolean isBefore(int candidate, int s, double t) {
            boolean starts = t <= 0 && s == firstVertex[candidate];
            boolean started = fraction <= 0 && segment == firstVertex[reach];
            return starts == started ? candidate < reach : starts;
        }

        /** The reach found, or {@link #NONE}. */
        int found() {
            return reach;
        }

        /** Whether the cell lies beyond the beginning of the reach found, into which no other flows. */
        boolean isHead() {
            return fraction < 0 && segment == firstVertex[reach] && headwater.get(reach);
        }

        /** Whether the cell lies beyond an end of the network: before a river begins, or past where it flows out. */
        boolean isPastEnd() {
            boolean past = fraction > 1 && segment + 2 == firstVertex[reach + 1] && last.get(reach);
            return past || isHead();
        }

        /** The cell of the end that the cell lies past. */
        int endCell() {
            int vertex = fraction > 1 ? segment + 1 : segment;
            return clamp(y[vertex], rows) * columns + clamp(x[vertex], columns);
        }
    }
}
