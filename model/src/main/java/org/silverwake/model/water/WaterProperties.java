// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/**
 * Fresh water at the pressure of the air. Density: Kell (1975) (coefficients from memory; they give the values of his table
 * to all digits printed). Viscosity: mu = 2.414e-5 x 10^(247.8/(T - 140)) Pa s (from memory), within 0.5 % of handbook
 * values from 10 to 35 degC and 2 % low near freezing.
 *
 * @param density [kg/m3]
 * @param kinematicViscosity [m2/s]
 */
public record WaterProperties(double density, double kinematicViscosity) {
    /** Standard gravity as the whole program uses it [m/s2]. */
    public static final double GRAVITY = 9.81;

    /** 0 degC [K]. */
    public static final double ZERO_CELSIUS = 273.15;

    private static final double[] KELL = {
        999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12
    };
    private static final double KELL_DENOMINATOR = 16.879850e-3;
    private static final double VISCOSITY_SCALE = 2.414e-5;
    private static final double VISCOSITY_EXPONENT = 247.8;
    private static final double VISCOSITY_OFFSET = 140;
    private static final double HIGHEST = 60;

    /**
     * Properties at a temperature.
     *
     * @param celsius temperature [degC], 0 to 60
     * @throws IllegalArgumentException if outside that range
     */
    public static WaterProperties at(double celsius) {
        if (!(celsius >= 0 && celsius <= HIGHEST)) {
            throw new IllegalArgumentException(
                    "water temperature " + celsius + " degC is not allowed; give 0 to 60 degC");
        }
        double polynomial = 0;
        for (int i = KELL.length - 1; i >= 0; i--) {
            polynomial = polynomial * celsius + KELL[i];
        }
        double density = polynomial / (1 + KELL_DENOMINATOR * celsius);
        double dynamic =
                VISCOSITY_SCALE * StrictMath.pow(10, VISCOSITY_EXPONENT / (celsius + ZERO_CELSIUS - VISCOSITY_OFFSET));
        return new WaterProperties(density, dynamic / density);
    }

    /** Dynamic viscosity [Pa s]. */
    public double dynamicViscosity() {
        return kinematicViscosity * density;
    }
}
