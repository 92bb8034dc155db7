// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/**
 * Bed shear stress and what of it acts on the grains.
 *
 * @param total bed shear stress tau [Pa], at least 0
 * @param skin skin shear tau' [Pa], at most total
 * @param impliedRoughness Manning n that slope, depth and velocity imply [s/m^(1/3)]; 0 where no slope is known
 */
public record Shear(double total, double skin, double impliedRoughness) {
    /** Range in which an implied Manning n is held for skin shear and beyond which it is listed [s/m^(1/3)]. */
    public static final double LOWEST_ROUGHNESS = 0.015;
    /** Upper end of that range [s/m^(1/3)]. */
    public static final double HIGHEST_ROUGHNESS = 0.2;

    private static final double STRICKLER = 21.1;
    private static final double ONE_SIXTH = 1.0 / 6.0;
    private static final double ONE_THIRD = 1.0 / 3.0;
    private static final double TWO_THIRDS = 2.0 / 3.0;
    private static final double SKIN_EXPONENT = 1.5;

    /** Manning n of the grains, d50^(1/6)/21.1 (Strickler 1923), d50 [m]: [s/m^(1/3)]; 1 mm gives 0.015. */
    public static double grainRoughness(double medianDiameter) {
        return StrictMath.pow(medianDiameter, ONE_SIXTH) / STRICKLER;
    }

    /**
     * Shear in a section: rho g R S where the section's own radius is known, else rho g n^2 U^2/R^(1/3) with a stated n,
     * else rho g H S. Skin shear tau' = tau min(1, n_g/n)^1.5 with n stated, else implied and held within 0.015 to 0.2.
     *
     * @param section the section
     * @param slope energy slope [-]; 0 where not known
     * @param statedRoughness Manning n [s/m^(1/3)]; 0 where not stated
     * @param density water density [kg/m3]
     * @param medianDiameter bed d50 [m], above 0
     * @throws IllegalArgumentException if neither slope nor roughness is known
     */
    public static Shear of(
            Section section, double slope, double statedRoughness, double density, double medianDiameter) {
        double weight = density * WaterProperties.GRAVITY;
        double u = section.velocity();
        double tau;
        if (section.radiusKnown() && slope > 0) {
            tau = weight * section.radius() * slope;
        } else if (statedRoughness > 0) {
            tau = weight * statedRoughness * statedRoughness * u * u / StrictMath.pow(section.radius(), ONE_THIRD);
        } else if (slope > 0) {
            tau = weight * section.depth() * slope;
        } else {
            throw new IllegalArgumentException("neither slope nor Manning n is known");
        }
        double implied = slope > 0 ? StrictMath.pow(section.depth(), TWO_THIRDS) * StrictMath.sqrt(slope) / u : 0;
        double n = statedRoughness > 0
                ? statedRoughness
                : Math.min(HIGHEST_ROUGHNESS, Math.max(LOWEST_ROUGHNESS, implied));
        double ratio = Math.min(1, grainRoughness(medianDiameter) / n);
        return new Shear(tau, tau * StrictMath.pow(ratio, SKIN_EXPONENT), implied);
    }

    /** Whether the implied Manning n is known and outside 0.015 to 0.2. */
    public boolean isRoughnessOdd() {
        return impliedRoughness > 0 && (impliedRoughness < LOWEST_ROUGHNESS || impliedRoughness > HIGHEST_ROUGHNESS);
    }

    /** Shear velocity sqrt(tau/rho) [m/s] for a water density [kg/m3]. */
    public double velocity(double density) {
        return StrictMath.sqrt(total / density);
    }
}
