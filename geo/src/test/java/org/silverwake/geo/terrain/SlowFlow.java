// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * What each cell drains to, the slow and plain way: pits are filled by going over all cells until nothing changes; a cell
 * that was not filled falls to its lowest neighbor; a filled one goes where the one cell goes that its pit spills over.
 * Lines are in columns and rows; heights differ all, cells are squares.
 */
final class SlowFlow {
    static final int EDGE = -1;
    static final int OUTSIDE = -2;

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double RIVER = -1e9;

    private final int columns;
    private final int rows;
    private final double[] heights;
    private final LineString[] lines;
    private final boolean[] river;
    private final boolean[] outside;
    private final double[] filled;

    SlowFlow(int columns, int rows, double[] heights, LineString[] lines) {
        this.columns = columns;
        this.rows = rows;
        this.heights = heights;
        this.lines = lines;
        this.river = new boolean[heights.length];
        this.outside = new boolean[heights.length];
        this.filled = new double[heights.length];
        for (int cell = 0; cell < heights.length; cell++) {
            for (LineString line : lines) {
                river[cell] |= crosses(line, cell);
            }
        }
        findOutside();
        fill();
    }

    private boolean crosses(LineString line, int cell) {
        double x = cell % columns;
        double y = cell / columns;
        return FACTORY.toGeometry(new Envelope(x - 0.5, x + 0.5, y - 0.5, y + 0.5))
                .intersects(line);
    }

    private int[] around(int cell) {
        int[] cells = new int[9];
        int n = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int x = cell % columns + dx;
                int y = cell / columns + dy;
                if (x >= 0 && y >= 0 && x < columns && y < rows && (dx != 0 || dy != 0)) {
                    cells[n++] = y * columns + x;
                }
            }
        }
        return Arrays.copyOf(cells, n);
    }

    private boolean isBorder(int cell) {
        return around(cell).length < 8;
    }

    private void findOutside() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int cell = 0; cell < heights.length; cell++) {
                boolean reached = isBorder(cell);
                for (int other : around(cell)) {
                    reached |= outside[other];
                }
                if (reached && Double.isNaN(heights[cell]) && !outside[cell]) {
                    outside[cell] = true;
                    changed = true;
                }
            }
        }
    }

    private boolean isRim(int cell) {
        boolean rim = isBorder(cell);
        for (int other : around(cell)) {
            rim |= outside[other] && !river[other];
        }
        return rim;
    }

    private void fill() {
        Arrays.fill(filled, Double.POSITIVE_INFINITY);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int cell = 0; cell < heights.length; cell++) {
                double own = Double.isNaN(heights[cell]) ? RIVER + 1 : heights[cell];
                double level = isRim(cell) ? own : Double.POSITIVE_INFINITY;
                for (int other : around(cell)) {
                    level = Math.min(level, Math.max(own, filled[other]));
                }
                level = river[cell] ? RIVER : outside[cell] ? Double.POSITIVE_INFINITY : level;
                if (level < filled[cell]) {
                    filled[cell] = level;
                    changed = true;
                }
            }
        }
    }

    /** Line, {@link #EDGE} or {@link #OUTSIDE} for each cell. */
    int[] labels() {
        int[] labels = new int[heights.length];
        for (int cell = 0; cell < labels.length; cell++) {
            labels[cell] = label(cell);
        }
        return labels;
    }

    private int label(int start) {
        int cell = start;
        if (outside[cell]) {
            return river[cell] ? OUTSIDE : OUTSIDE;
        }
        if (river[cell]) {
            return nearest(cell, cell);
        }
        while (true) {
            cell = spill(cell);
            int beside = -1;
            int lowest = -1;
            double steepest = 0;
            for (int other : around(cell)) {
                if (river[other]) {
                    beside = other;
                } else if (!outside[other]) {
                    double slope = (filled[cell] - filled[other])
                            / Math.hypot(other % columns - cell % columns, other / columns - cell / columns);
                    if (slope > steepest) {
                        steepest = slope;
                        lowest = other;
                    }
                }
            }
            boolean other = lowest >= 0 || isRim(cell);
            if (beside >= 0 && !(other && isPastEnd(cell))) {
                return nearest(cell, -1);
            }
            if (lowest < 0) {
                return EDGE;
            }
            cell = lowest;
        }
    }

    /** The cell of the same pit whose own height is the level, the cell itself where it was not filled. */
    private int spill(int start) {
        boolean[] seen = new boolean[heights.length];
        Deque<Integer> next = new ArrayDeque<>();
        next.add(start);
        seen[start] = true;
        while (!next.isEmpty()) {
            int cell = next.remove();
            if (heights[cell] == filled[cell] || besideRiver(cell) && Double.isNaN(heights[cell])) {
                return cell;
            }
            for (int other : around(cell)) {
                if (!seen[other] && filled[other] == filled[start]) {
                    seen[other] = true;
                    next.add(other);
                }
            }
        }
        throw new IllegalStateException("a pit without a way out");
    }

    private boolean besideRiver(int cell) {
        for (int other : around(cell)) {
            if (river[other]) {
                return true;
            }
        }
        return false;
    }

    /** Nearest line of those in the river cells around, or in one cell; of equally near ones the one that begins there. */
    private int nearest(int cell, int in) {
        Coordinate center = new Coordinate(cell % columns, (double) (cell / columns));
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < lines.length; k++) {
            double distance = distance(center, lines[k], cell, in);
            boolean begins = best >= 0
                    && Math.abs(distance - least) < 1e-9
                    && distance == center.distance(lines[k].getCoordinateN(0));
            if (distance < least - 1e-9 || begins) {
                best = k;
                least = distance;
            }
        }
        return best;
    }

    private double distance(Coordinate center, LineString line, int cell, int in) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k + 1 < line.getNumPoints(); k++) {
            Coordinate a = line.getCoordinateN(k);
            Coordinate b = line.getCoordinateN(k + 1);
            LineString segment = FACTORY.createLineString(new Coordinate[] {a, b});
            boolean counts = false;
            for (int other : in >= 0 ? new int[] {in} : around(cell)) {
                counts |= river[other] && crosses(segment, other);
            }
            if (counts) {
                least = Math.min(least, Distance.pointToSegment(center, a, b));
            }
        }
        return least;
    }

    /** Whether the nearest line ends, or begins, before coming abreast of the cell, which lies lower than its cell there. */
    private boolean isPastEnd(int cell) {
        Coordinate center = new Coordinate(cell % columns, (double) (cell / columns));
        LineString line = lines[nearest(cell, -1)];
        int last = line.getNumPoints() - 1;
        boolean before = isBeyond(center, line.getCoordinateN(1), line.getCoordinateN(0)) && !isJoined(line, true);
        boolean after =
                isBeyond(center, line.getCoordinateN(last - 1), line.getCoordinateN(last)) && !isJoined(line, false);
        double distance = distance(center, line, cell, -1);
        Coordinate end = before && center.distance(line.getCoordinateN(0)) <= distance + 1e-9
                ? line.getCoordinateN(0)
                : after && center.distance(line.getCoordinateN(last)) <= distance + 1e-9
                        ? line.getCoordinateN(last)
                        : null;
        if (end == null) {
            return false;
        }
        int at = (int) Math.floor(end.y + 0.5) * columns + (int) Math.floor(end.x + 0.5);
        return heights[cell] < heights[at];
    }

    private static boolean isBeyond(Coordinate p, Coordinate from, Coordinate to) {
        return (p.x - to.x) * (to.x - from.x) + (p.y - to.y) * (to.y - from.y) > 1e-9;
    }

    private boolean isJoined(LineString line, boolean start) {
        Coordinate node = start ? line.getCoordinateN(0) : line.getCoordinateN(line.getNumPoints() - 1);
        for (LineString other : lines) {
            Coordinate end = start ? other.getCoordinateN(other.getNumPoints() - 1) : other.getCoordinateN(0);
            if (end.equals2D(node)) {
                return true;
            }
        }
        return false;
    }
}
