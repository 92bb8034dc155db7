// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import static org.silverwake.model.water.WaterProperties.ZERO_CELSIUS;

/** Dissolved and liquid Hg(0) in fresh water. */
public final class ElementalMercury {
    /** Density of the liquid at 25 degC [kg/m3] (from memory; 13,546 at 20 degC in print). */
    public static final double DENSITY = 13534;

    /** Solubility at 25 degC [kg/m3], 60 ug/L: IARC (1994). */
    public static final double SOLUBILITY = 6e-5;

    private static final double GAS_CONSTANT = 8.314462618;
    private static final double STANDARD = 298.15;
    private static final double HENRY_SOLUBILITY = 1.3e-3;
    private static final double HENRY_SLOPE = 2600;
    private static final double DIFFUSIVITY_FACTOR = 0.01768e-4;
    private static final double DIFFUSIVITY_ENERGY = 16.98e3;

    private ElementalMercury() {}

    /**
     * Concentration in air over that in water at equilibrium [-]. Sander (2023), compilation, after Andersson et al. (2008):
     * 1.3e-3 mol/m3/Pa at 298.15 K, d ln H/d(1/T) 2600 K.
     *
     * @param celsius temperature [degC]
     */
    public static double airOverWater(double celsius) {
        double kelvin = celsius + ZERO_CELSIUS;
        double solubility = HENRY_SOLUBILITY * StrictMath.exp(HENRY_SLOPE * (1 / kelvin - 1 / STANDARD));
        return 1 / (solubility * GAS_CONSTANT * kelvin);
    }

    /**
     * Diffusivity in fresh water [m2/s]: 0.01768 exp(-16.98 kJ/mol/(R T)) cm2/s, Kuss, Holzmann &amp; Ludwig (2009); the factor
     * is from memory.
     *
     * @param celsius temperature [degC]
     */
    public static double diffusivity(double celsius) {
        return DIFFUSIVITY_FACTOR * StrictMath.exp(-DIFFUSIVITY_ENERGY / (GAS_CONSTANT * (celsius + ZERO_CELSIUS)));
    }
}
