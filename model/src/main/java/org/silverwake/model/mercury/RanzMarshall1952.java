// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

/**
 * Dissolving of a liquid droplet of fixed diameter: Sh = 2 + 0.6 Re^(1/2) Sc^(1/3), Ranz &amp; Marshall (1952) (from memory), in
 * water far from saturation: a first-order rate k = 6 k_m C_sat/(rho_Hg d).
 */
public final class RanzMarshall1952 {
    private static final double STILL = 2;
    private static final double MOVING = 0.6;
    private static final double SURFACE_PER_VOLUME = 6;

    private RanzMarshall1952() {}

    /**
     * Velocity of mass transfer from the droplet k_m [m/s].
     *
     * @param diameter d [m], above 0
     * @param fall its velocity through the water [m/s], at least 0
     * @param kinematicViscosity of the water [m2/s]
     * @param diffusivity of dissolved Hg(0) [m2/s]
     */
    public static double massTransfer(double diameter, double fall, double kinematicViscosity, double diffusivity) {
        double reynolds = fall * diameter / kinematicViscosity;
        double schmidt = kinematicViscosity / diffusivity;
        double sherwood = STILL + MOVING * StrictMath.sqrt(reynolds) * StrictMath.cbrt(schmidt);
        return sherwood * diffusivity / diameter;
    }

    /**
     * Rate at which a droplet dissolves [1/s].
     *
     * @param massTransfer k_m [m/s]
     * @param diameter d [m], above 0
     * @param solubility C_sat [kg/m3]
     * @param passivation share of the clean surface's rate that is left [-], 0.01 to 1 (common practice, no source)
     */
    public static double rate(double massTransfer, double diameter, double solubility, double passivation) {
        return passivation * SURFACE_PER_VOLUME * massTransfer * solubility / (ElementalMercury.DENSITY * diameter);
    }
}
