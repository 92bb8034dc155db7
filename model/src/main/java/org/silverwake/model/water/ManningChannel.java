// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Normal depth in a rectangular or trapezoidal section by Manning's equation, U = R^(2/3) S^(1/2)/n. Bottom width is an
 * attribute or that of the hydraulic geometry at the reference discharge.
 */
public final class ManningChannel implements ChannelShape {
    private static final double TWO_THIRDS = 2.0 / 3.0;
    private static final double THREE_FIFTHS = 0.6;
    private static final double DEPTH_ACCURACY = 1e-13;
    private static final int EVALUATIONS = 500;

    private final Column slope;
    private final Column roughness;
    private final Column width;
    private final HydraulicGeometry geometry;
    private final double sideSlope;

    /**
     * A Manning channel.
     *
     * @param slope energy slope of every reach [-], above 0
     * @param roughness Manning n of every reach [s/m^(1/3)]
     * @param width bottom width where known [m]
     * @param geometry gives the bottom width elsewhere
     * @param sideSlope horizontal per vertical [-], 0 for a rectangle
     */
    public ManningChannel(Column slope, Column roughness, Column width, HydraulicGeometry geometry, double sideSlope) {
        this.slope = slope;
        this.roughness = roughness;
        this.width = width;
        this.geometry = geometry;
        this.sideSlope = sideSlope;
    }

    @Override
    public Section section(int reach, int state, double discharge, double reference) {
        double bottom = width.has(reach) ? width.at(reach) : geometry.width(reference, reference);
        return normal(discharge, bottom, sideSlope, roughness.at(reach), slope.at(reach));
    }

    /**
     * Normal flow.
     *
     * @param discharge [m3/s], above 0
     * @param bottom bottom width [m], above 0
     * @param side horizontal per vertical [-], at least 0
     * @param n Manning n [s/m^(1/3)], above 0
     * @param slope energy slope [-], above 0
     */
    public static Section normal(double discharge, double bottom, double side, double n, double slope) {
        double conveyance = discharge * n / StrictMath.sqrt(slope);
        double wide = StrictMath.pow(conveyance / bottom, THREE_FIFTHS);
        double high = 1;
        while (conveyance(high * wide, bottom, side) < conveyance) {
            high *= 2;
        }
        double depth = wide
                * new BrentSolver(DEPTH_ACCURACY, DEPTH_ACCURACY)
                        .solve(EVALUATIONS, h -> conveyance(h * wide, bottom, side) / conveyance - 1, 0, high);
        double area = depth * (bottom + side * depth);
        double top = bottom + 2 * side * depth;
        return new Section(top, area / top, discharge / area, area / perimeter(depth, bottom, side), true);
    }

    private static double conveyance(double depth, double bottom, double side) {
        double area = depth * (bottom + side * depth);
        return area == 0 ? 0 : area * StrictMath.pow(area / perimeter(depth, bottom, side), TWO_THIRDS);
    }

    private static double perimeter(double depth, double bottom, double side) {
        return bottom + 2 * depth * StrictMath.sqrt(1 + side * side);
    }
}
