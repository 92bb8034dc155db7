// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/**
 * The soil of a field down to where it is ploughed, which mixes what irrigation brings. Nothing is taken to leave it again
 * (by wind, water, harvest or as vapor), and what it holds already is not known here.
 *
 * @param area watered land [m2], above 0
 * @param depth ploughed depth [m], above 0
 * @param density bulk density of the dry soil [kg/m3], above 0
 */
public record PloughLayer(double area, double depth, double density) {
    /** Refuses a layer without soil. */
    public PloughLayer {
        if (!(area > 0 && depth > 0 && density > 0)) {
            throw new IllegalArgumentException("area, depth and density of a plough layer must be above 0");
        }
    }

    /** Its dry mass [kg]. */
    public double mass() {
        return area * depth * density;
    }

    /** What a load adds to its content [kg/kg/s]. The load is in [kg/s], at least 0. */
    public double added(double load) {
        return load / mass();
    }
}
