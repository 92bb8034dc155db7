// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

/**
 * Content of fish, from low to high; never one number.
 *
 * @param low low estimate [kg/kg wet], at least 0
 * @param middle between them, by ratio [kg/kg wet]
 * @param high high estimate [kg/kg wet], at least {@code low}
 */
public record FishContent(double low, double middle, double high) {
    /** Refuses what is negative, not finite or the wrong way round. */
    public FishContent {
        if (!(low >= 0 && middle >= low && high >= middle && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("contents of fish " + low + ", " + middle + ", " + high
                    + " must be finite, not negative, low to high");
        }
    }

    /**
     * Middle of a range that spans orders of magnitude: the geometric mean, and where the low end is 0, which has none, half
     * of the high one.
     *
     * @param low low end [any], at least 0
     * @param high high end [same], at least {@code low}
     * @return the middle [same]
     */
    static double middle(double low, double high) {
        double middle = low > 0 ? StrictMath.sqrt(low) * StrictMath.sqrt(high) : high / 2;
        return Math.min(high, Math.max(low, middle));
    }
}
