// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

/**
 * A settling velocity that was measured.
 *
 * @param measured settling velocity [m/s], at least 0
 */
public record MeasuredSettling(double measured) implements SettlingLaw {
    @Override
    public double velocity(double diameter, double density, double waterDensity, double kinematicViscosity) {
        return measured;
    }
}
