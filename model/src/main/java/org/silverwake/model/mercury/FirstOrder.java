// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import org.silverwake.model.water.ReachKind;

/**
 * A first-order reaction: its rate at 20 degC, how it grows with temperature, and whether light drives it.
 *
 * @param rate by flow state and kind of reach, at 20 degC and full light [1/s], at least 0
 * @param theta growth per degree [-], at least 1
 * @param needsLight whether it goes on only as deep as light reaches
 */
public record FirstOrder(ByStateAndKind rate, double theta, boolean needsLight) {
    private static final double REFERENCE = 20;

    /**
     * Rate [1/s] in a flow state and kind of reach.
     *
     * @param celsius temperature [degC]
     * @param light mean light over the depth by {@link #meanLight} [-], 0 to 1
     */
    public double at(int state, ReachKind kind, double celsius, double light) {
        return rate.at(state, kind) * growth(theta, celsius) * (needsLight ? light : 1);
    }

    /**
     * How much faster than at 20 degC a process goes [-]: theta^(T - 20).
     *
     * @param theta growth per degree [-]
     * @param celsius temperature [degC]
     */
    static double growth(double theta, double celsius) {
        return StrictMath.pow(theta, celsius - REFERENCE);
    }

    /**
     * Mean light over a depth as a share of that at the surface [-]: (1 - e^(-K H))/(K H) (Beer-Lambert).
     *
     * @param attenuation K [1/m], at least 0
     * @param depth H [m], above 0
     */
    public static double meanLight(double attenuation, double depth) {
        double optical = attenuation * depth;
        return optical == 0 ? 1 : -StrictMath.expm1(-optical) / optical;
    }
}
