// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

/** Erosion of a cohesive bed, E = M max(0, tau'/tau_ce - 1). Partheniades (1965). */
public final class Partheniades1965 {
    private Partheniades1965() {}

    /**
     * Solids eroded [kg/m2/s], as far as the bed holds them.
     *
     * @param rate M [kg/m2/s], at least 0
     * @param skinShear tau' [Pa], at least 0
     * @param criticalShear tau_ce [Pa], above 0
     */
    public static double erosion(double rate, double skinShear, double criticalShear) {
        return rate * Math.max(0, skinShear / criticalShear - 1);
    }
}
