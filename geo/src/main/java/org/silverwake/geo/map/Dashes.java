// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.Arrays;

/** Cuts lines into dashes. */
final class Dashes {
    /** Takes a dash: the first so many of some points, which it must not keep. */
    interface Taker {
        void take(double[] xs, double[] ys, int count);
    }

    private final float[] lengths;
    private final double scale;
    private int at;
    private double left;
    private double[] xs = new double[16];
    private double[] ys = new double[16];
    private int count;

    /**
     * Dashes as java.awt.BasicStroke has them.
     *
     * @param lengths of dashes and gaps in turn, not all 0
     * @param phase where in them a line begins
     * @param scale what one of their units is on the line
     */
    Dashes(float[] lengths, float phase, double scale) {
        this.lengths = lengths;
        this.scale = scale;
        left = lengths[0] * scale;
        for (double skip = phase * scale; skip >= left; ) {
            skip -= left;
            next();
            if (skip < left) {
                left -= skip;
                break;
            }
        }
    }

    private void next() {
        at++;
        left = lengths[at % lengths.length] * scale;
    }

    private boolean isDash() {
        return at % 2 == 0;
    }

    /** Hands out the dashes of a line, one after the other. */
    void cut(double[] lineX, double[] lineY, Taker taker) {
        begin(lineX[0], lineY[0]);
        for (int k = 1; k < lineX.length; k++) {
            double dx = lineX[k] - lineX[k - 1];
            double dy = lineY[k] - lineY[k - 1];
            double length = Math.sqrt(dx * dx + dy * dy);
            double done = 0;
            while (length - done > left) {
                done += left;
                double x = lineX[k - 1] + done / length * dx;
                double y = lineY[k - 1] + done / length * dy;
                end(x, y, taker);
                next();
                begin(x, y);
            }
            left -= length - done;
            if (k < lineX.length - 1) {
                point(lineX[k], lineY[k]);
            } else {
                end(lineX[k], lineY[k], taker);
            }
        }
    }

    private void begin(double x, double y) {
        count = 0;
        point(x, y);
    }

    private void end(double x, double y, Taker taker) {
        point(x, y);
        if (isDash()) {
            taker.take(xs, ys, count);
        }
    }

    private void point(double x, double y) {
        if (isDash()) {
            if (count == xs.length) {
                xs = Arrays.copyOf(xs, 2 * count);
                ys = Arrays.copyOf(ys, 2 * count);
            }
            xs[count] = x;
            ys[count++] = y;
        }
    }
}
