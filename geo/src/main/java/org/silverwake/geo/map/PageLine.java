// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.geom.Path2D;
import org.locationtech.jts.geom.LineString;

/** A line on the page, thinned to what can be seen [points]. Immutable. */
final class PageLine {
    private static final double FINEST = 0.15;

    private final double[] xs;
    private final double[] ys;
    private final double[] chainage;

    private PageLine(double[] xs, double[] ys) {
        this.xs = xs;
        this.ys = ys;
        chainage = new double[xs.length];
        for (int k = 1; k < xs.length; k++) {
            chainage[k] = chainage[k - 1] + Math.hypot(xs[k] - xs[k - 1], ys[k] - ys[k - 1]);
        }
    }

    static PageLine of(LineString line) {
        int n = line.getNumPoints();
        double[] xs = new double[n];
        double[] ys = new double[n];
        int kept = 0;
        for (int k = 0; k < n; k++) {
            double x = line.getCoordinateSequence().getX(k);
            double y = line.getCoordinateSequence().getY(k);
            boolean far = kept == 0 || Math.hypot(x - xs[kept - 1], y - ys[kept - 1]) >= FINEST;
            if (!far && k == n - 1 && kept > 1) {
                kept--;
            }
            if (far || k == n - 1) {
                xs[kept] = x;
                ys[kept] = y;
                kept++;
            }
        }
        return new PageLine(java.util.Arrays.copyOf(xs, kept), java.util.Arrays.copyOf(ys, kept));
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

    double[] xs() {
        return xs.clone();
    }

    double[] ys() {
        return ys.clone();
    }

    double length() {
        return chainage[chainage.length - 1];
    }

    Path2D path() {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, xs.length + 1);
        path.moveTo(xs[0], ys[0]);
        for (int k = 1; k < xs.length; k++) {
            path.lineTo(xs[k], ys[k]);
        }
        return path;
    }

    /** x, y and direction [rad] at a chainage. The direction is taken over a stretch, so that small bends do not turn it. */
    double[] at(double where, double stretch) {
        double[] from = at(Math.max(0, where - stretch / 2));
        double[] to = at(Math.min(length(), where + stretch / 2));
        double[] middle = at(where);
        return new double[] {middle[0], middle[1], Math.atan2(to[1] - from[1], to[0] - from[0])};
    }

    private double[] at(double where) {
        int found = java.util.Arrays.binarySearch(chainage, where);
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
        return new PageLine(java.util.Arrays.copyOf(x, kept), java.util.Arrays.copyOf(y, kept));
    }
}
