// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/** Dispersion along a river and mixing across it. */
public final class Mixing {
    /** Coefficient of the full-mixing length for an outfall at the bank [-]. Fischer et al. (1979). */
    public static final double BANK = 0.4;
    /** The same for an outfall in mid-channel [-]. */
    public static final double MID_CHANNEL = 0.1;

    private static final double FISCHER = 0.011;

    private Mixing() {}

    /**
     * Longitudinal dispersion coefficient, 0.011 U^2 B^2/(H u*). Fischer (1975); within a factor of 4 as a rule, and 10 to
     * 40 times too high in wide shallow rivers.
     *
     * @param velocity U [m/s]
     * @param width B [m]
     * @param depth H [m], above 0
     * @param shearVelocity u* [m/s], above 0
     * @return K_L [m2/s]
     */
    public static double longitudinal(double velocity, double width, double depth, double shearVelocity) {
        return FISCHER * velocity * velocity * width * width / (depth * shearVelocity);
    }

    /**
     * Length to full mixing across the channel, c U B^2/(e H u*). Fischer et al. (1979).
     *
     * @param outfall {@link #BANK} or {@link #MID_CHANNEL} [-]
     * @param velocity U [m/s]
     * @param width B [m]
     * @param depth H [m], above 0
     * @param shearVelocity u* [m/s], above 0
     * @param transverse e, 0.6 in natural channels [-], above 0
     * @return length [m]
     */
    public static double fullMixingLength(
            double outfall, double velocity, double width, double depth, double shearVelocity, double transverse) {
        return outfall * velocity * width * width / (transverse * depth * shearVelocity);
    }
}
