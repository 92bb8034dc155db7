// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * Draws lines with round joins into a {@link LineMask}, row by row of pixels: straight stretches as rectangles, wedges where they turn, discs at round
 * ends. A pixel is covered as much as by a straight edge at the same distance from its middle. Lengths are pixels, y down.
 */
final class LineRows {
    /** Java2D draws no thinner [pixels]. */
    private static final double THINNEST = 0.5;
    /** From an edge to where pixels are covered wholly, or not at all [pixels]. */
    private static final double SOFT = 0.5;
    /** Spans of a row so close are one [pixels]. */
    private static final double TOUCH = 0.05;
    /** How far wide stretches reach over one another [pixels]. */
    private static final double LAP = 0.25;
    /** What is shorter is left by the cutting of dashes and leads anywhere [pixels]. */
    private static final double SHORTEST = 1e-3;
    /** Wedges that are nowhere wider are not seen [pixels]. */
    private static final double NARROW = 0.1;
    /** Angle of a circle taken as straight: of a circle of 10 pixels, 0.15 pixels are cut off [rad]. */
    private static final double STEP = 0.35;

    private static final int OPAQUE = 255;

    /** Where one shape begins and ends in each row, wholly covered within the inner ends. */
    private static final class Spans {
        private final double[] west;
        private final double[] east;
        private final double[] innerWest;
        private final double[] innerEast;

        Spans(int rows) {
            west = new double[rows];
            east = new double[rows];
            innerWest = new double[rows];
            innerEast = new double[rows];
            for (int r = 0; r < rows; r++) {
                clear(r);
            }
        }

        void include(Spans other, int row) {
            if (other.west[row] < west[row]) {
                west[row] = other.west[row];
            }
            if (other.east[row] > east[row]) {
                east[row] = other.east[row];
            }
            if (other.innerWest[row] < innerWest[row]) {
                innerWest[row] = other.innerWest[row];
            }
            if (other.innerEast[row] > innerEast[row]) {
                innerEast[row] = other.innerEast[row];
            }
        }

        void clear(int row) {
            west[row] = Double.POSITIVE_INFINITY;
            east[row] = Double.NEGATIVE_INFINITY;
            innerWest[row] = Double.POSITIVE_INFINITY;
            innerEast[row] = Double.NEGATIVE_INFINITY;
        }
    }

    private final LineMask mask;
    private final int top;
    private final int rows;
    /** The shape at hand, and what of the shapes before it is still growing. */
    private final Spans shape;

    private final Spans grown;
    private double half;
    private int first;
    private int last;
    private int firstGrown;
    private int lastGrown;

    LineRows(LineMask mask) {
        this.mask = mask;
        top = mask.top();
        rows = mask.bottom() - top;
        shape = new Spans(rows);
        grown = new Spans(rows);
    }

    /** Whether a stroke can be drawn so: joins are round, ends round or cut off, nothing shines through. */
    static boolean takes(BasicStroke stroke, Color color) {
        return stroke.getLineJoin() == BasicStroke.JOIN_ROUND
                && stroke.getEndCap() != BasicStroke.CAP_SQUARE
                && color.getAlpha() == OPAQUE;
    }

    /** Draws a line of the page, each point of which is so many pixels, and whose corner lies at a pixel. */
    void add(PageLine line, BasicStroke stroke, double scale, double left, double upper) {
        double[] xs = new double[line.size()];
        double[] ys = new double[line.size()];
        for (int k = 0; k < xs.length; k++) {
            xs[k] = left + scale * line.x(k);
            ys[k] = upper + scale * line.y(k) - top;
        }
        half = Math.max(THINNEST, stroke.getLineWidth() * scale) / 2;
        boolean round = stroke.getEndCap() == BasicStroke.CAP_ROUND;
        if (stroke.getDashArray() == null) {
            piece(xs, ys, xs.length, round);
        } else {
            new Dashes(stroke.getDashArray(), stroke.getDashPhase(), scale)
                    .cut(xs, ys, (x, y, n) -> piece(x, y, n, round));
        }
    }

    private void piece(double[] xs, double[] ys, int n, boolean round) {
        firstGrown = rows;
        lastGrown = -1;
        double beforeX = 0;
        double beforeY = 0;
        double behind = 0;
        double ahead = length(xs, ys, n);
        if (round) {
            disc(xs[0], ys[0]);
        }
        for (int k = 1; k < n; k++) {
            double dx = xs[k] - xs[k - 1];
            double dy = ys[k] - ys[k - 1];
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length > SHORTEST) {
                double ux = dx / length;
                double uy = dy / length;
                ahead -= length;
                if (isNear(ys[k - 1], ys[k])) {
                    wedge(xs[k - 1], ys[k - 1], beforeX, beforeY, ux, uy);
                    stretch(xs[k - 1], ys[k - 1], ux, uy, length, SOFT + behind, SOFT + Math.max(0, ahead));
                }
                behind += length;
                beforeX = ux;
                beforeY = uy;
            }
        }
        if (round) {
            disc(xs[n - 1], ys[n - 1]);
        }
        for (int r = firstGrown; r <= lastGrown; r++) {
            flush(r);
        }
    }

    private static double length(double[] xs, double[] ys, int n) {
        double length = 0;
        for (int k = 1; k < n; k++) {
            length += Math.sqrt((xs[k] - xs[k - 1]) * (xs[k] - xs[k - 1]) + (ys[k] - ys[k - 1]) * (ys[k] - ys[k - 1]));
        }
        return length;
    }

    private boolean isNear(double y, double otherY) {
        return Math.max(y, otherY) + half + 1 >= 0 && Math.min(y, otherY) - half - 1 <= rows;
    }

    /** A rectangle from a point on. It has a bit more at its ends, which the next shape covers, but no more than the line has there. */
    private void stretch(double x, double y, double ux, double uy, double length, double mostBefore, double mostAfter) {
        double more = 2 * SOFT + (half > 1 ? LAP : 0);
        double before = Math.min(more, mostBefore);
        double after = Math.min(more, mostAfter);
        double reach = half + SOFT;
        double high = Math.min(y - uy * before, y + uy * (length + after)) - Math.abs(ux) * reach;
        double low = Math.max(y - uy * before, y + uy * (length + after)) + Math.abs(ux) * reach;
        begin(high, low);
        rectangle(x, y, ux, uy, -before, length + after, reach, shape.west, shape.east);
        double from = 1 - before;
        double to = length - 1 + after;
        if (half > SOFT && from < to) {
            rectangle(x, y, ux, uy, from, to, half - SOFT, shape.innerWest, shape.innerEast);
        }
        for (int r = first; r <= last; r++) {
            if (!grow(r)) {
                for (int c = firstColumn(r); c <= lastColumn(r); c++) {
                    double px = c + 0.5 - x;
                    double py = r + 0.5 - y;
                    double along = px * ux + py * uy;
                    double ends = Math.min(
                            Math.min(1, length - 1 + before + after), Math.min(along + before, length + after - along));
                    double across = Math.min(Math.min(1, 2 * half), half + SOFT - Math.abs(py * ux - px * uy));
                    cover(r, c, ends * across);
                }
            }
        }
    }

    /** Against the clock from its lower left corner, as seen along it. */
    private void rectangle(
            double x,
            double y,
            double ux,
            double uy,
            double from,
            double to,
            double reach,
            double[] west,
            double[] east) {
        double ax = x + ux * from - uy * reach;
        double ay = y + uy * from + ux * reach;
        double bx = x + ux * to - uy * reach;
        double by = y + uy * to + ux * reach;
        double dx = 2 * uy * reach;
        double dy = -2 * ux * reach;
        edge(ax, ay, bx, by, east, west);
        edge(bx, by, bx + dx, by + dy, east, west);
        edge(bx + dx, by + dy, ax + dx, ay + dy, east, west);
        edge(ax + dx, ay + dy, ax, ay, east, west);
    }

    /** The outer side of a turn from one direction to another. */
    private void wedge(double x, double y, double fromX, double fromY, double toX, double toY) {
        double turn = Math.atan2(fromX * toY - fromY * toX, fromX * toX + fromY * toY);
        if (Math.abs(turn) * half < NARROW) {
            return;
        }
        double side = turn > 0 ? -1 : 1;
        begin(y - half - SOFT, y + half + SOFT);
        sector(x, y, -fromY * side, fromX * side, turn, half + SOFT, shape.west, shape.east);
        if (half > SOFT) {
            sector(x, y, -fromY * side, fromX * side, turn, half - SOFT, shape.innerWest, shape.innerEast);
        }
        growRound(x, y);
    }

    private void sector(
            double x, double y, double nx, double ny, double turn, double radius, double[] west, double[] east) {
        double[] up = turn > 0 ? west : east;
        double[] down = turn > 0 ? east : west;
        int steps = (int) Math.ceil(Math.abs(turn) / STEP);
        double cos = Math.cos(turn / steps);
        double sin = Math.sin(turn / steps);
        double px = radius * nx;
        double py = radius * ny;
        edge(x, y, x + px, y + py, up, down);
        for (int k = 0; k < steps; k++) {
            double qx = cos * px - sin * py;
            double qy = sin * px + cos * py;
            edge(x + px, y + py, x + qx, y + qy, up, down);
            px = qx;
            py = qy;
        }
        edge(x + px, y + py, x, y, up, down);
    }

    private void disc(double x, double y) {
        double outer = half + SOFT;
        double inner = half - SOFT;
        begin(y - outer, y + outer);
        for (int r = first; r <= last; r++) {
            double off = r + 0.5 - y;
            double reach = Math.sqrt(Math.max(0, outer * outer - off * off));
            shape.west[r] = x - reach;
            shape.east[r] = x + reach;
            if (Math.abs(off) < inner) {
                double within = Math.sqrt(inner * inner - off * off);
                shape.innerWest[r] = x - within;
                shape.innerEast[r] = x + within;
            }
        }
        growRound(x, y);
    }

    private void growRound(double x, double y) {
        for (int r = first; r <= last; r++) {
            if (!grow(r)) {
                for (int c = firstColumn(r); c <= lastColumn(r); c++) {
                    double px = c + 0.5 - x;
                    double py = r + 0.5 - y;
                    cover(r, c, half + SOFT - Math.sqrt(px * px + py * py));
                }
            }
        }
    }

    private void cover(int row, int column, double share) {
        if (share > 0) {
            mask.pixel(row + top, column, Math.min(2 * half, share));
        }
    }

    private int firstColumn(int row) {
        return (int) Math.max(mask.left(), Math.floor(shape.west[row]));
    }

    private int lastColumn(int row) {
        return (int) Math.min(mask.right() - 1, Math.floor(shape.east[row]));
    }

    private void begin(double high, double low) {
        first = (int) Math.max(0, Math.ceil(high - 0.5));
        last = (int) Math.min(rows - 1, Math.floor(low - 0.5));
        for (int r = first; r <= last; r++) {
            shape.clear(r);
        }
    }

    /** An edge of a convex shape, all of whose edges that run up lie on one side of it, and all that run down on the other. */
    private void edge(double x, double y, double toX, double toY, double[] up, double[] down) {
        double high = Math.min(y, toY);
        int from = (int) Math.max(first, Math.ceil(high - 0.5));
        int to = (int) Math.min(last, Math.ceil(Math.max(y, toY) - 0.5) - 1);
        if (from <= to) {
            double[] side = y < toY ? down : up;
            double slope = (toX - x) / (toY - y);
            double at = x + (from + 0.5 - y) * slope;
            for (int r = from; r <= to; r++) {
                side[r] = at;
                at += slope;
            }
        }
    }

    /** Joins a row of the shape at hand to what it touches; whether it covers anything wholly there, or nothing at all. */
    private boolean grow(int r) {
        if (shape.innerWest[r] >= shape.innerEast[r]) {
            return shape.west[r] >= shape.east[r];
        }
        firstGrown = Math.min(firstGrown, r);
        lastGrown = Math.max(lastGrown, r);
        if (shape.innerWest[r] > grown.innerEast[r] + TOUCH || shape.innerEast[r] < grown.innerWest[r] - TOUCH) {
            flush(r);
        }
        grown.include(shape, r);
        return true;
    }

    private void flush(int r) {
        if (grown.innerWest[r] < grown.innerEast[r]) {
            mask.span(r + top, grown.west[r], grown.innerWest[r], grown.innerEast[r], grown.east[r]);
            grown.clear(r);
        }
    }
}
