// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

import org.silverwake.model.water.WaterProperties;

/**
 * Settling velocity of a grain of any size. Ferguson &amp; Church (2004), eq. 4: w = R g d^2/(C1 nu + sqrt(0.75 C2 R g d^3)).
 * C1 18 and C2 1.0 for natural grains by sieve diameter, 18 and 0.4 for smooth spheres, 20 and 1.1 by nominal diameter.
 *
 * @param c1 laminar coefficient [-]
 * @param c2 turbulent drag coefficient [-]
 */
public record FergusonChurch2004(double c1, double c2) implements SettlingLaw {
    private static final double THREE_QUARTERS = 0.75;
    private static final double LAMINAR = 18;
    private static final double SMOOTH_DRAG = 0.4;

    /** For natural grains by sieve diameter. */
    public static FergusonChurch2004 naturalGrains() {
        return new FergusonChurch2004(LAMINAR, 1);
    }

    /** For smooth spheres. */
    public static FergusonChurch2004 smoothSpheres() {
        return new FergusonChurch2004(LAMINAR, SMOOTH_DRAG);
    }

    @Override
    public double velocity(double diameter, double density, double waterDensity, double kinematicViscosity) {
        double submerged = density / waterDensity - 1;
        double weight = submerged * WaterProperties.GRAVITY;
        return weight
                * diameter
                * diameter
                / (c1 * kinematicViscosity
                        + StrictMath.sqrt(THREE_QUARTERS * c2 * weight * diameter * diameter * diameter));
    }
}
