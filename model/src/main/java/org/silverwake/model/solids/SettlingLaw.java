// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

/** A settling velocity in still water. */
public interface SettlingLaw {
    /**
     * Settling velocity.
     *
     * @param diameter sieve diameter [m], above 0, at most 0.01
     * @param density grain density [kg/m3], above the water's
     * @param waterDensity [kg/m3]
     * @param kinematicViscosity of water [m2/s]
     * @return settling velocity [m/s], positive downward
     * @throws IllegalArgumentException if the law does not hold there
     */
    double velocity(double diameter, double density, double waterDensity, double kinematicViscosity);
}
