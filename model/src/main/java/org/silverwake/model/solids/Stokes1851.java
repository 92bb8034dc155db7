// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

import org.silverwake.model.water.WaterProperties;

/** Settling velocity of a small sphere, R g d^2/(18 nu). Stokes (1851); refused above a grain Reynolds number w d/nu of 1. */
public record Stokes1851() implements SettlingLaw {
    private static final double STOKES = 18;

    @Override
    public double velocity(double diameter, double density, double waterDensity, double kinematicViscosity) {
        double submerged = density / waterDensity - 1;
        double velocity = submerged * WaterProperties.GRAVITY * diameter * diameter / (STOKES * kinematicViscosity);
        double reynolds = velocity * diameter / kinematicViscosity;
        if (reynolds > 1) {
            throw new IllegalArgumentException(
                    "grain Reynolds number " + reynolds + " is above 1: Stokes does not hold; use ferguson-church");
        }
        return velocity;
    }
}
