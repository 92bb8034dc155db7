// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.Ground;

/**
 * Size of a raster's cells on the WGS 84 ellipsoid, whatever the raster's coordinate system. The area is that of the
 * parallelogram which a cell's sides span, by the radii of curvature at its center; taken on a lattice of 33 x 33 cells and linear between them.
 * Distances between neighbors are those in the middle of each row: they only choose among slopes. Immutable.
 */
final class CellGround {
    private static final int LATTICE = 32;
    /** Half of the step over which a side is measured [cells]; short of the cell's edge, which may lie beyond a pole. */
    private static final double STEP = 0.25;

    private final int columns;
    private final int rows;
    private final double[] area = new double[(LATTICE + 1) * (LATTICE + 1)];
    private final double[] east;
    private final double[] south;

    private CellGround(ElevationModel model) {
        columns = model.columns();
        rows = model.rows();
        east = new double[rows];
        south = new double[rows];
        for (int i = 0; i <= LATTICE; i++) {
            for (int k = 0; k <= LATTICE; k++) {
                double[] sides = sides(model, place(k, columns), place(i, rows));
                area[i * (LATTICE + 1) + k] = Math.abs(sides[0] * sides[3] - sides[1] * sides[2]);
            }
        }
        for (int row = 0; row < rows; row++) {
            double[] sides = sides(model, (columns - 1) / 2.0, row);
            east[row] = Math.hypot(sides[0], sides[1]);
            south[row] = Math.hypot(sides[2], sides[3]);
        }
    }

    static CellGround of(ElevationModel model) {
        return new CellGround(model);
    }

    private static double place(int lattice, int count) {
        return (double) lattice / LATTICE * (count - 1);
    }

    /** Meters east and north of the step to the next column, then of that to the next row. */
    static double[] sides(ElevationModel model, double column, double row) {
        double[] along = side(model, column - STEP, row, column + STEP, row);
        double[] down = side(model, column, row - STEP, column, row + STEP);
        return new double[] {along[0], along[1], down[0], down[1]};
    }

    private static double[] side(ElevationModel model, double column1, double row1, double column2, double row2) {
        double[] a = model.toLonLat(column1, row1);
        double[] b = model.toLonLat(column2, row2);
        double latitude = (a[1] + b[1]) / 2;
        return new double[] {
            Geodesy.wrap(b[0] - a[0]) * Ground.metersPerDegreeEast(latitude) / (2 * STEP),
            (b[1] - a[1]) * Ground.metersPerDegreeNorth(latitude) / (2 * STEP)
        };
    }

    /** Area of a cell on the ground [m2]. */
    double area(int column, int row) {
        double x = columns == 1 ? 0 : (double) column / (columns - 1) * LATTICE;
        double y = rows == 1 ? 0 : (double) row / (rows - 1) * LATTICE;
        int left = Math.min((int) x, LATTICE - 1);
        int top = Math.min((int) y, LATTICE - 1);
        int at = top * (LATTICE + 1) + left;
        double upper = area[at] + (x - left) * (area[at + 1] - area[at]);
        int below = at + LATTICE + 1;
        double lower = area[below] + (x - left) * (area[below + 1] - area[below]);
        return upper + (y - top) * (lower - upper);
    }

    /** From a cell of a row to the next column [m]. */
    double east(int row) {
        return east[row];
    }

    /** From a cell of a row to the next row [m]. */
    double south(int row) {
        return south[row];
    }
}
