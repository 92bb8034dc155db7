// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/** One value of every reach year by year, lowest and highest over the variants of an unknown split. */
public final class YearBand {
    private final int reaches;
    private final double[] low;
    private final double[] high;

    YearBand(int years, int reaches) {
        this.reaches = reaches;
        this.low = new double[years * reaches];
        this.high = new double[years * reaches];
    }

    /** Sets a reach's value from those of all variants, index variant and reach. */
    void put(int year, int reach, double[][] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double[] variant : values) {
            least = Math.min(least, variant[reach]);
            most = Math.max(most, variant[reach]);
        }
        low[year * reaches + reach] = least;
        high[year * reaches + reach] = most;
    }

    /** Lowest value in a year, counted from 0 [kg/m3 or kg/kg]. */
    public double low(int year, int reach) {
        return low[year * reaches + reach];
    }

    /** Highest value in a year, counted from 0 [kg/m3 or kg/kg]. */
    public double high(int year, int reach) {
        return high[year * reaches + reach];
    }
}
