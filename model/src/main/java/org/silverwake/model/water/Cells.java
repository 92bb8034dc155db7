// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Cells: the numerical pieces of reaches, the same for all flow states, in downstream order (cells of a reach follow one
 * another). Immutable once built.
 */
public final class Cells {
    private final int[] start;
    private final int[] reach;
    private final double[] from;
    private final double[] to;

    private Cells(int[] start, int[] reach, double[] from, double[] to) {
        this.start = start;
        this.reach = reach;
        this.from = from;
        this.to = to;
    }

    /** One cell per reach. */
    public static Cells uncut(ReachTable reaches) {
        Builder builder = new Builder(reaches.size());
        for (int r = 0; r < reaches.size(); r++) {
            builder.reach();
            builder.cell(0, reaches.length(r));
        }
        return builder.build();
    }

    /** Every cell cut in {@code pieces} equal ones, at least 1. */
    public Cells finer(int pieces) {
        return finer(pieces, r -> false);
    }

    /** Every cell cut in {@code pieces} equal ones, at least 1, but those of reaches that stay whole. */
    public Cells finer(int pieces, IntPredicate staysWhole) {
        Builder builder = new Builder(start.length - 1);
        for (int r = 0; r < start.length - 1; r++) {
            builder.reach();
            for (int c = start[r]; c < start[r + 1]; c++) {
                int parts = staysWhole.test(r) ? 1 : pieces;
                for (int k = 0; k < parts; k++) {
                    double a = from[c] + (to[c] - from[c]) * k / parts;
                    double b = k + 1 == parts ? to[c] : from[c] + (to[c] - from[c]) * (k + 1) / parts;
                    builder.cell(a, b);
                }
            }
        }
        return builder.build();
    }

    /** Number of cells [-]. */
    public int count() {
        return reach.length;
    }

    /** First cell of a reach; of the number of reaches: the number of cells. */
    public int start(int r) {
        return start[r];
    }

    /** Reach of a cell. */
    public int reach(int cell) {
        return reach[cell];
    }

    /** Chainage of a cell's head in its reach [m]. */
    public double from(int cell) {
        return from[cell];
    }

    /** Chainage of a cell's end in its reach [m]. */
    public double to(int cell) {
        return to[cell];
    }

    /** Length of a cell [m]. */
    public double length(int cell) {
        return to[cell] - from[cell];
    }

    /** Builds cells reach by reach, in downstream order. */
    public static final class Builder {
        private final int[] start;
        private int[] reach = new int[16];
        private double[] from = new double[16];
        private double[] to = new double[16];
        private int reaches;
        private int count;

        /** A builder for a number of reaches [-]. */
        public Builder(int reachCount) {
            this.start = new int[reachCount + 1];
        }

        /** Goes on to the next reach. */
        public void reach() {
            start[reaches++] = count;
            start[reaches] = count;
        }

        /** Adds a cell to the present reach, between two chainages [m]. */
        public void cell(double head, double end) {
            if (count == reach.length) {
                reach = Arrays.copyOf(reach, 2 * count);
                from = Arrays.copyOf(from, 2 * count);
                to = Arrays.copyOf(to, 2 * count);
            }
            reach[count] = reaches - 1;
            from[count] = head;
            to[count] = end;
            count++;
            start[reaches] = count;
        }

        /** The cells. */
        public Cells build() {
            return new Cells(
                    start.clone(), Arrays.copyOf(reach, count), Arrays.copyOf(from, count), Arrays.copyOf(to, count));
        }
    }
}
