// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.awt.geom.Point2D;
import java.util.Arrays;

/**
 * How bright slopes lie in slanting light: the cosine of the angle between the light and the normal of the ground, 0 in full shade, of a
 * surface that scatters evenly. Gradients from the eight neighbors by the weights 1, 2, 1 (Horn B.K.P. 1981, Hill shading and the reflectance map,
 * Proceedings of the IEEE 69(1), 14-47), in meters of the ground whatever the raster's coordinate system; light from the northwest,
 * 45 degrees high, as in that paper. A neighbor without height counts as high as the middle. Of large rasters blocks of cells are taken together. Immutable.
 */
public final class HillShade {
    /** Direction the light comes from, clockwise from north [degrees]. */
    public static final double AZIMUTH = 315;
    /** Height of the light above the horizon [degrees]. */
    public static final double ALTITUDE = 45;

    /** Horn's weights of the eight neighbors add up to this over a step of one cell [-]. */
    private static final double WEIGHTS = 8;
    /** Ground sides of cells are measured on a lattice of so many steps and taken as linear between them [-]. */
    private static final int LATTICE = 32;
    /** Share of the ground that is flatter than the slope which the exaggeration goes by [-]; chosen. */
    private static final double STEEP = 0.9;
    /** Slope that this share shall have as drawn [-], chosen: some 20 degrees, where light and shade can be told apart. */
    private static final double DRAWN_SLOPE = 0.35;
    /** Exaggerations that there are [-]; beyond 20 times errors of heights would be drawn as hills. Chosen. */
    private static final double[] EXAGGERATIONS = {1, 1.5, 2, 3, 5, 7, 10, 15, 20};

    private static final double HALF = 0.5;

    private final HeightGrid grid;
    private final double exaggeration;
    private final float[] shades;

    private HillShade(HeightGrid grid, double exaggeration) {
        this.grid = grid;
        float[] east = new float[grid.columns() * grid.rows()];
        float[] north = new float[east.length];
        gradients(grid, east, north);
        this.exaggeration = Double.isNaN(exaggeration) ? fitting(east, north) : exaggeration;
        shades = new float[east.length];
        for (int k = 0; k < shades.length; k++) {
            shades[k] = (float) shade(east[k] * this.exaggeration, north[k] * this.exaggeration);
        }
    }

    /**
     * Of a box of the raster, heights exaggerated so that slopes show also where the land is flat.
     *
     * @param west WGS 84 [degrees]; may lie beyond -180
     * @param south WGS 84 [degrees]
     * @param east WGS 84 [degrees], above west; may lie beyond 180
     * @param north WGS 84 [degrees], above south
     * @param most numbers along the longer side [-], above 0; cells are taken together until they are no more
     */
    public static HillShade of(ElevationModel model, double west, double south, double east, double north, int most) {
        return new HillShade(HeightGrid.of(model, west, south, east, north, most), Double.NaN);
    }

    /** The same with heights multiplied by a number [-], above 0. */
    HillShade exaggerated(double factor) {
        return new HillShade(grid, factor);
    }

    /**
     * Of a slope.
     *
     * @param east rise to the east [-]
     * @param north rise to the north [-]
     * @return 0 to 1 [-]; NaN where a rise is
     */
    static double shade(double east, double north) {
        double azimuth = Math.toRadians(AZIMUTH);
        double altitude = Math.toRadians(ALTITUDE);
        double toLight = -east * Math.sin(azimuth) * Math.cos(altitude)
                - north * Math.cos(azimuth) * Math.cos(altitude)
                + Math.sin(altitude);
        return Math.max(0, toLight / Math.sqrt(1 + east * east + north * north));
    }

    private static void gradients(HeightGrid grid, float[] east, float[] north) {
        int columns = grid.columns();
        double[][] steps = new double[LATTICE + 1][];
        for (int row = 0; row < grid.rows(); row++) {
            for (int k = 0; k <= LATTICE; k++) {
                steps[k] = grid.steps((double) k / LATTICE * (columns - 1), row);
            }
            for (int column = 0; column < columns; column++) {
                double place = columns == 1 ? 0 : (double) column / (columns - 1) * LATTICE;
                int k = Math.min(LATTICE - 1, (int) place);
                gradient(grid, column, row, between(steps[k], steps[k + 1], place - k), east, north);
            }
        }
    }

    private static double[] between(double[] a, double[] b, double share) {
        double[] c = new double[a.length];
        for (int k = 0; k < c.length; k++) {
            c[k] = a[k] + share * (b[k] - a[k]);
        }
        return c;
    }

    /** Rise per column and per row, then solved for rise per meter east and north. */
    private static void gradient(HeightGrid grid, int column, int row, double[] steps, float[] east, float[] north) {
        double alongColumns = 0;
        double alongRows = 0;
        for (int d = -1; d <= 1; d++) {
            int weight = 2 - Math.abs(d);
            alongColumns += weight * (height(grid, column, row, 1, d) - height(grid, column, row, -1, d));
            alongRows += weight * (height(grid, column, row, d, 1) - height(grid, column, row, d, -1));
        }
        alongColumns /= WEIGHTS;
        alongRows /= WEIGHTS;
        double area = steps[0] * steps[3] - steps[1] * steps[2];
        int at = row * grid.columns() + column;
        east[at] = (float) ((alongColumns * steps[3] - alongRows * steps[1]) / area);
        north[at] = (float) ((alongRows * steps[0] - alongColumns * steps[2]) / area);
    }

    private static double height(HeightGrid grid, int column, int row, int right, int down) {
        int x = column + right;
        int y = row + down;
        float middle = grid.height(column, row);
        if (x < 0 || y < 0 || x >= grid.columns() || y >= grid.rows()) {
            return middle;
        }
        float height = grid.height(x, y);
        return Float.isNaN(height) ? middle : height;
    }

    /** The exaggeration that brings the steeper slopes of the window nearest to what can be seen. */
    private static double fitting(float[] east, float[] north) {
        float[] slopes = new float[east.length];
        int count = 0;
        for (int k = 0; k < east.length; k++) {
            float slope = (float) Math.hypot(east[k], north[k]);
            if (slope > 0) {
                slopes[count++] = slope;
            }
        }
        if (count == 0) {
            return 1;
        }
        Arrays.sort(slopes, 0, count);
        double wanted = DRAWN_SLOPE / slopes[(int) (STEEP * (count - 1))];
        double best = EXAGGERATIONS[0];
        for (double step : EXAGGERATIONS) {
            best = Math.abs(Math.log(step / wanted)) < Math.abs(Math.log(best / wanted)) ? step : best;
        }
        return best;
    }

    /** What heights were multiplied by [-], 1 to 20. */
    public double exaggeration() {
        return exaggeration;
    }

    /** Whether there is no height in the box. */
    public boolean isEmpty() {
        for (float shade : shades) {
            if (!Float.isNaN(shade)) {
                return false;
            }
        }
        return true;
    }

    /** Column and row of a place, WGS 84, longitude first [degrees]; NaN where the raster's coordinate system does not reach. */
    public Point2D toGrid(double longitude, double latitude) {
        return grid.toGrid(longitude, latitude);
    }

    /**
     * Shade between the four nearest numbers, those without height left out.
     *
     * @param column of {@link #toGrid}
     * @param row of {@link #toGrid}
     * @return 0 to 1 [-]; NaN outside, and where those with height weigh less than half
     */
    public float at(double column, double row) {
        int left = (int) Math.floor(column);
        int top = (int) Math.floor(row);
        double right = column - left;
        double down = row - top;
        double sum = 0;
        double weights = 0;
        for (int k = 0; k < 4; k++) {
            float shade = single(left + k % 2, top + k / 2);
            double weight = (k % 2 == 0 ? 1 - right : right) * (k / 2 == 0 ? 1 - down : down);
            if (!Float.isNaN(shade)) {
                sum += weight * shade;
                weights += weight;
            }
        }
        return weights < HALF ? Float.NaN : (float) (sum / weights);
    }

    private float single(int column, int row) {
        boolean inside = column >= 0 && row >= 0 && column < grid.columns() && row < grid.rows();
        return inside ? shades[row * grid.columns() + column] : Float.NaN;
    }
}
