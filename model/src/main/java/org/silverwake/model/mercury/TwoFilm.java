// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import static org.silverwake.model.water.WaterProperties.ZERO_CELSIUS;

import org.silverwake.model.water.WaterProperties;

/**
 * Evasion of dissolved Hg(0) through two films, of water and of air: 1/v = 1/k_l + 1/(k_g K_H) (Whitman 1923; Liss &amp; Slater
 * 1974, from memory). The water's film follows oxygen, k_l = k_l,O2 (D_Hg/D_O2)^(1/2). Nothing comes back from the air.
 */
public final class TwoFilm {
    private static final double OXYGEN_DIFFUSIVITY = 2.1e-9;
    private static final double OXYGEN_CELSIUS = 25;

    private TwoFilm() {}

    /**
     * Diffusivity of oxygen in fresh water [m2/s]: 2.1e-9 at 25 degC (from memory), with temperature as T/mu (Stokes-Einstein).
     *
     * @param celsius temperature [degC]
     */
    public static double oxygenDiffusivity(double celsius) {
        return OXYGEN_DIFFUSIVITY
                * ((celsius + ZERO_CELSIUS) / (OXYGEN_CELSIUS + ZERO_CELSIUS))
                * (WaterProperties.at(OXYGEN_CELSIUS).dynamicViscosity()
                        / WaterProperties.at(celsius).dynamicViscosity());
    }

    /**
     * Velocity v at which dissolved Hg(0) leaves [m/s]; over a depth H its rate is v/H.
     *
     * @param oxygenFilm k_l of oxygen [m/s], as {@link Reaeration#filmVelocity} gives it
     * @param airFilm k_g [m/s], above 0
     * @param celsius temperature [degC]
     */
    public static double velocity(double oxygenFilm, double airFilm, double celsius) {
        if (oxygenFilm == 0) {
            return 0;
        }
        double water = oxygenFilm * StrictMath.sqrt(ElementalMercury.diffusivity(celsius) / oxygenDiffusivity(celsius));
        return 1 / (1 / water + 1 / (airFilm * ElementalMercury.airOverWater(celsius)));
    }
}
