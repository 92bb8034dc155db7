// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/**
 * Width and depth by power laws of discharge: downstream exponents at the reference discharge, at-a-station exponents from
 * there to each state. Leopold &amp; Maddock (1953). Velocity follows, so width x depth x velocity = discharge.
 *
 * @param widthCoefficient width at 1 m3/s, downstream [m]
 * @param widthExponent downstream b [-]
 * @param depthCoefficient depth at 1 m3/s, downstream [m]
 * @param depthExponent downstream f [-]
 * @param stationWidthExponent at-a-station b [-]
 * @param stationDepthExponent at-a-station f [-]
 */
public record HydraulicGeometry(
        double widthCoefficient,
        double widthExponent,
        double depthCoefficient,
        double depthExponent,
        double stationWidthExponent,
        double stationDepthExponent)
        implements ChannelShape {

    /** Width at a discharge and reference discharge [m3/s]: [m]. */
    public double width(double discharge, double reference) {
        return widthCoefficient * power(reference, widthExponent) * power(discharge / reference, stationWidthExponent);
    }

    @Override
    public Section section(int reach, int state, double discharge, double reference) {
        double width = width(discharge, reference);
        double depth =
                depthCoefficient * power(reference, depthExponent) * power(discharge / reference, stationDepthExponent);
        return new Section(width, depth, discharge / (width * depth), depth, false);
    }

    private static double power(double base, double exponent) {
        return StrictMath.exp(exponent * StrictMath.log(base));
    }
}
