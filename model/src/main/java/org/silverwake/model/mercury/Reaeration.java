// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

/**
 * Exchange of oxygen with the air by the flow of a river, from which that of Hg(0) is scaled: formulas of the rate k2 [1/d]
 * at 20 degC in velocity [m/s] and depth [m], with theta 1.025. Coefficients and ranges in metric units as Chin (2006)
 * reprints them.
 */
public enum Reaeration {
    /** O'Connor &amp; Dobbins (1958): deeper, slower water. */
    OCONNOR_DOBBINS(3.93, 0.5, 1.5, new Range(0.3, 9), new Range(0.15, 0.5)),
    /** Churchill, Elmore &amp; Buckingham (1962): faster water. */
    CHURCHILL(5.23, 1, 1.67, new Range(0.6, 3), new Range(0.55, 1.5)),
    /** Owens, Edwards &amp; Gibbs (1964): shallow water. */
    OWENS(5.32, 0.67, 1.85, new Range(0.1, 3), new Range(0.03, 1.5));

    /** Growth per degree [-]. */
    public static final double THETA = 1.025;

    private static final double DAY = 86400;
    private static final double SHALLOW = 0.61;
    private static final double COVAR_FACTOR = 3.45;
    private static final double COVAR_EXPONENT = 2.5;

    private final double factor;
    private final double velocityExponent;
    private final double depthExponent;
    private final Range depths;
    private final Range velocities;

    Reaeration(double factor, double velocityExponent, double depthExponent, Range depths, Range velocities) {
        this.factor = factor;
        this.velocityExponent = velocityExponent;
        this.depthExponent = depthExponent;
        this.depths = depths;
        this.velocities = velocities;
    }

    private record Range(double from, double to) {
        boolean holds(double value) {
            return value >= from && value <= to;
        }
    }

    /**
     * The formula for a velocity and depth, after Covar (1976) (from memory): Owens below 0.61 m, O'Connor-Dobbins where the
     * depth is above 3.45 U^2.5, else Churchill.
     *
     * @param velocity [m/s]
     * @param depth [m]
     */
    public static Reaeration at(double velocity, double depth) {
        if (depth < SHALLOW) {
            return OWENS;
        }
        return depth > COVAR_FACTOR * StrictMath.pow(velocity, COVAR_EXPONENT) ? OCONNOR_DOBBINS : CHURCHILL;
    }

    /** Whether a depth [m] lies within those the formula was made from. */
    public boolean isWithin(double depth) {
        return depths.holds(depth);
    }

    /** Whether a velocity [m/s] lies within those the formula was made from; outside it is used as it is. */
    public boolean isWithinVelocities(double velocity) {
        return velocities.holds(velocity);
    }

    /**
     * Rate k2 at 20 degC [1/d], as the formula gives it.
     *
     * @param velocity [m/s], at least 0
     * @param depth [m], above 0
     */
    public double perDay(double velocity, double depth) {
        return factor * StrictMath.pow(velocity, velocityExponent) * StrictMath.pow(depth, -depthExponent);
    }

    /**
     * Velocity of transfer through the water's film for oxygen [m/s]: k2 times depth, the depth held within the formula's range.
     *
     * @param velocity [m/s], at least 0
     * @param depth [m], above 0
     * @param celsius temperature [degC]
     */
    public double filmVelocity(double velocity, double depth, double celsius) {
        double held = Math.min(Math.max(depth, depths.from()), depths.to());
        return perDay(velocity, held) / DAY * held * FirstOrder.growth(THETA, celsius);
    }
}
