// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Least cost under rows {@code a x ≤ b}, some unknowns yes-or-no. Rows are kept as given, scaled so that the tolerance
 * {@link Limit#TOLERANCE} is relative to the scale that came with them.
 */
final class LinearProgram {
    private final double[] cost;
    private final double[] upper;
    private final boolean[] binary;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Double> bounds = new ArrayList<>();

    /** Unknowns from 0 to 1, the first {@code binaries} of them yes-or-no. */
    LinearProgram(int unknowns, int binaries) {
        cost = new double[unknowns];
        upper = new double[unknowns];
        binary = new boolean[unknowns];
        Arrays.fill(upper, 1);
        Arrays.fill(binary, 0, binaries, true);
    }

    int unknowns() {
        return cost.length;
    }

    int rows() {
        return rows.size();
    }

    boolean isBinary(int unknown) {
        return binary[unknown];
    }

    double upper(int unknown) {
        return upper[unknown];
    }

    double cost(int unknown) {
        return cost[unknown];
    }

    double coefficient(int row, int unknown) {
        return rows.get(row)[unknown];
    }

    double bound(int row) {
        return bounds.get(row);
    }

    void setCost(int unknown, double value) {
        cost[unknown] = value;
    }

    void setUpper(int unknown, double value) {
        upper[unknown] = value;
    }

    void setBinary(int unknown) {
        binary[unknown] = true;
    }

    /** Adds {@code a x ≤ bound}, both divided by {@code scale}; coefficients past the end of the row are 0. */
    void addRow(double[] a, double bound, double scale) {
        double[] row = new double[cost.length];
        for (int i = 0; i < a.length; i++) {
            row[i] = a[i] / scale;
        }
        rows.add(row);
        bounds.add(bound / scale);
    }

    double costOf(double[] x) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += cost[i] * x[i];
        }
        return sum;
    }

    /** Whether every row holds but for rounding, in plain arithmetic. */
    boolean isMetBy(double[] x) {
        for (int j = 0; j < rows.size(); j++) {
            double sum = 0;
            double[] row = rows.get(j);
            for (int i = 0; i < x.length; i++) {
                sum += row[i] * x[i];
            }
            if (!(sum <= bounds.get(j) + Limit.TOLERANCE)) {
                return false;
            }
        }
        return true;
    }
}
