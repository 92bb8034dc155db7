// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/** Values that change in proportion to shares: the model at fixed solids and water. Immutable. */
public final class LinearResponse implements Evaluator {
    private final double[] none;
    private final double[][] slopes;

    private LinearResponse(double[] none, double[][] slopes) {
        this.none = none;
        this.slopes = slopes;
    }

    /**
     * Response of which values with no option are known.
     *
     * @param none value at each limit with no option adopted [any]
     * @param slopes by limit, then by option: change when adopted in full [any], negative where it helps
     * @throws IllegalArgumentException if the numbers of limits differ or a number is not finite
     */
    public static LinearResponse of(double[] none, double[][] slopes) {
        return around(new double[slopes.length == 0 ? 0 : slopes[0].length], none, slopes);
    }

    /**
     * Response that goes through the values of a run.
     *
     * @param shares share of each option in the run [-]
     * @param values value at each limit in the run [any]
     * @param slopes by limit, then by option: change when adopted in full [any]
     * @throws IllegalArgumentException if counts differ or a number is not finite
     */
    public static LinearResponse around(double[] shares, double[] values, double[][] slopes) {
        if (values.length != slopes.length) {
            throw new IllegalArgumentException(values.length + " values, slopes at " + slopes.length + " limits");
        }
        double[] none = values.clone();
        double[][] own = new double[slopes.length][];
        for (int j = 0; j < own.length; j++) {
            own[j] = slopes[j].clone();
            if (own[j].length != shares.length) {
                throw new IllegalArgumentException(shares.length + " shares, " + own[j].length + " slopes");
            }
            for (int i = 0; i < shares.length; i++) {
                none[j] -= own[j][i] * shares[i];
            }
            if (!Double.isFinite(none[j])) {
                throw new IllegalArgumentException("A value or slope at limit " + j + " is not a number");
            }
        }
        return new LinearResponse(none, own);
    }

    /** {@inheritDoc} */
    @Override
    public double[] values(double[] shares) {
        double[] values = none.clone();
        for (int j = 0; j < values.length; j++) {
            for (int i = 0; i < shares.length; i++) {
                values[j] += slopes[j][i] * shares[i];
            }
        }
        return values;
    }

    /** {@inheritDoc} */
    @Override
    public double[][] slopes(double[] shares) {
        double[][] copy = new double[slopes.length][];
        for (int j = 0; j < copy.length; j++) {
            copy[j] = slopes[j].clone();
        }
        return copy;
    }

    double none(int limit) {
        return none[limit];
    }

    double slope(int limit, int option) {
        return slopes[limit][option];
    }
}
