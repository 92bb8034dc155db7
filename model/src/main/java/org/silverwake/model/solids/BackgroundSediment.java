// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

/**
 * Suspended sediment that is there without the sites, a Q^b [kg/m3], Q in m3/s; constant where b is 0.
 *
 * @param a at 1 m3/s [kg/m3], at least 0
 * @param b exponent [-]
 */
public record BackgroundSediment(double a, double b) {
    /** At a discharge [m3/s], above 0: [kg/m3]. */
    public double at(double discharge) {
        return b == 0 ? a : a * StrictMath.pow(discharge, b);
    }
}
