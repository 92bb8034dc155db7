// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** A line on the page, thinned to what can be seen [points]. Immutable. */
final class PageLine {
    /** How far a thinned line may pass a point of the line as it was: a quarter of a pixel at 300 dots per inch on A3, where a point of the page is 5.9 pixels. */
    static final double FINEST = 0.04;
    /** Lines are thinned in pieces of so many points, for the time to grow no faster than the line. */
    private static final int PIECE = 64;

    private final double[] xs;
    private final double[] ys;
    /** Made when first asked for, always the same. */
    private double[] chainage;

    private PageLine(double[] xs, double[] ys) {
        this.xs = xs;
        this.ys = ys;
    }

    /** Of a line that is on the page already. */
    static PageLine of(LineString line) {
        int n = line.getNumPoints();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int k = 0; k < n; k++) {
            xs[k] = line.getCoordinateSequence().getX(k);
            ys[k] = line.getCoordinateSequence().getY(k);
        }
        return of(xs, ys);
    }

    /** Through points of the page, of which those are left out that the line without them passes within {@link #FINEST}; takes the arrays as its own. */
    static PageLine of(double[] xs, double[] ys) {
        boolean[] kept = new boolean[xs.length];
        kept[xs.length - 1] = true;
        for (int from = 0; from < xs.length - 1; from += PIECE) {
            kept[from] = true;
            thin(xs, ys, from, Math.min(xs.length - 1, from + PIECE), kept);
        }
        int n = 0;
        for (int k = 0; k < xs.length; k++) {
            if (kept[k]) {
                xs[n] = xs[k];
                ys[n++] = ys[k];
            }
        }
        return new PageLine(Arrays.copyOf(xs, n), Arrays.copyOf(ys, n));
    }

    /** Douglas D.H., Peucker T.K. 1973, Cartographica 10(2), 112-122, their method 2: the point farthest off stays, until none is too far off. */
    private static void thin(double[] xs, double[] ys, int first, int last, boolean[] kept) {
        int farthest = -1;
        double most = FINEST * FINEST;
        double dx = xs[last] - xs[first];
        double dy = ys[last] - ys[first];
        double square = dx * dx + dy * dy;
        for (int k = first + 1; k < last; k++) {
            double px = xs[k] - xs[first];
            double py = ys[k] - ys[first];
            double share = square > 0 ? Math.max(0, Math.min(1, (px * dx + py * dy) / square)) : 0;
            double offX = px - share * dx;
            double offY = py - share * dy;
            double off = offX * offX + offY * offY;
            if (off > most) {
                most = off;
                farthest = k;
            }
        }
        if (farthest >= 0) {
            kept[farthest] = true;
            thin(xs, ys, first, farthest, kept);
            thin(xs, ys, farthest, last, kept);
        }
    }

    int size() {
        return xs.length;
    }

    double x(int k) {
        return xs[k];
    }

    double y(int k) {
        return ys[k];
    }

    /** What it lies within. */
    Envelope box() {
        Envelope box = new Envelope();
        for (int k = 0; k < xs.length; k++) {
            box.expandToInclude(xs[k], ys[k]);
        }
        return box;
    }

    double[] xs() {
        return xs.clone();
    }

    double[] ys() {
        return ys.clone();
    }

    double length() {
        return chainage()[xs.length - 1];
    }

    private double[] chainage() {
        if (chainage == null) {
            double[] sums = new double[xs.length];
            for (int k = 1; k < xs.length; k++) {
                sums[k] = sums[k - 1] + Math.hypot(xs[k] - xs[k - 1], ys[k] - ys[k - 1]);
            }
            chainage = sums;
        }
        return chainage;
    }

    Path2D path() {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, xs.length + 1);
        path.moveTo(xs[0], ys[0]);
        for (int k = 1; k < xs.length; k++) {
            path.lineTo(xs[k], ys[k]);
        }
        return path;
    }

    /** Whether any of it lies in a part of the page. */
    boolean isSeen(Rectangle2D part) {
        Envelope box = box();
        Envelope room = PageBox.of(part);
        return room.covers(box) || room.intersects(box) && path().intersects(part);
    }

    /** x, y and direction [rad] at a chainage. The direction is taken over a stretch, so that small bends do not turn it. */
    double[] at(double where, double stretch) {
        double[] from = at(Math.max(0, where - stretch / 2));
        double[] to = at(Math.min(length(), where + stretch / 2));
        double[] middle = at(where);
        return new double[] {middle[0], middle[1], Math.atan2(to[1] - from[1], to[0] - from[0])};
    }

    private double[] at(double where) {
        double[] chainage = chainage();
        int found = Arrays.binarySearch(chainage, where);
        int k = Math.max(1, Math.min(xs.length - 1, found >= 0 ? found : -found - 1));
        double span = chainage[k] - chainage[k - 1];
        double share = span > 0 ? (where - chainage[k - 1]) / span : 0;
        return new double[] {xs[k - 1] + share * (xs[k] - xs[k - 1]), ys[k - 1] + share * (ys[k] - ys[k - 1])};
    }

    /** The same line shifted sideways [points], positive to the left as SE 1.1 has it; bends tighter than that are cut off. */
    PageLine shifted(double distance) {
        int n = Math.max(2, (int) Math.ceil(length() / 3));
        double[] x = new double[n];
        double[] y = new double[n];
        int kept = 0;
        for (int k = 0; k < n; k++) {
            double[] p = at(length() * k / (n - 1), 8);
            double left = p[0] + distance * Math.sin(p[2]);
            double top = p[1] - distance * Math.cos(p[2]);
            boolean forward =
                    kept == 0 || (left - x[kept - 1]) * Math.cos(p[2]) + (top - y[kept - 1]) * Math.sin(p[2]) > 0;
            if (forward) {
                x[kept] = left;
                y[kept] = top;
                kept++;
            }
        }
        return new PageLine(Arrays.copyOf(x, kept), Arrays.copyOf(y, kept));
    }
}
