// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/** One value of every reach year by year, lowest and highest over the variants of an unknown split. */
public final class YearBand {
    private final int reaches;
    private final double[] low;
    private final double[] high;

    /** A band of zeros. */
    public YearBand(int years, int reaches) {
        this.reaches = reaches;
        this.low = new double[years * reaches];
        this.high = new double[years * reaches];
    }

    /** Number of years [-]. */
    public int years() {
        return low.length / Math.max(1, reaches);
    }

    /**
     * Sets a reach's values in a year.
     *
     * @param least lowest [kg/m3 or kg/kg], at least 0
     * @param most highest [same], at least {@code least}
     */
    public void put(int year, int reach, double least, double most) {
        low[year * reaches + reach] = least;
        high[year * reaches + reach] = most;
    }

    /** Sets a reach's value from those of all variants, index variant and reach. */
    void put(int year, int reach, double[][] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double[] variant : values) {
            least = Math.min(least, variant[reach]);
            most = Math.max(most, variant[reach]);
        }
        put(year, reach, least, most);
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
