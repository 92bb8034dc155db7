// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.awt.geom.Point2D;

/**
 * A window of a raster of heights, each of its numbers the mean of a square block of cells, so that it stays small however large the
 * raster is. Columns and rows count from the window's upper left block; whole numbers are middles of blocks. Immutable.
 */
final class HeightGrid {
    /** Points along each side of a box that are looked up to find the window [-]. */
    private static final int LOOKED_UP = 16;
    /** Kept around the window, for gradients at its rim [cells]. */
    private static final int RIM = 2;

    private final ElevationModel model;
    private final int left;
    private final int top;
    private final int block;
    private final int columns;
    private final int rows;
    private final float[] heights;

    private HeightGrid(ElevationModel model, int left, int top, int right, int bottom, int most) {
        this.model = model;
        this.left = left;
        this.top = top;
        int longer = Math.max(right - left, bottom - top);
        block = Math.max(1, (longer + most - 1) / most);
        columns = Math.max(0, right - left) / block;
        rows = Math.max(0, bottom - top) / block;
        heights = new float[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                heights[row * columns + column] = mean(left + column * block, top + row * block);
            }
        }
    }

    /**
     * The window that covers a box, as far as the raster does.
     *
     * @param west WGS 84 [degrees]; may lie beyond -180
     * @param east WGS 84 [degrees], above west; may lie beyond 180
     * @param most how many blocks along its longer side [-], above 0
     */
    static HeightGrid of(ElevationModel model, double west, double south, double east, double north, int most) {
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= LOOKED_UP; i++) {
            for (int k = 0; k <= LOOKED_UP; k++) {
                double latitude = south + (north - south) * i / LOOKED_UP;
                Point2D cell = model.toCell(west + (east - west) * k / LOOKED_UP, latitude);
                if (!Double.isNaN(cell.getX()) && !Double.isNaN(cell.getY())) {
                    minX = Math.min(minX, cell.getX());
                    maxX = Math.max(maxX, cell.getX());
                    minY = Math.min(minY, cell.getY());
                    maxY = Math.max(maxY, cell.getY());
                }
            }
        }
        int left = within(Math.floor(minX) - RIM, model.columns());
        int right = within(Math.ceil(maxX) + 1 + RIM, model.columns());
        int top = within(Math.floor(minY) - RIM, model.rows());
        int bottom = within(Math.ceil(maxY) + 1 + RIM, model.rows());
        return new HeightGrid(model, left, top, right, bottom, most);
    }

    private static int within(double cell, int count) {
        return (int) Math.max(0, Math.min(count, cell));
    }

    /** The mean of a block [m]; NaN where less than half of it is known. */
    private float mean(int column, int row) {
        double sum = 0;
        int known = 0;
        for (int y = row; y < row + block; y++) {
            for (int x = column; x < column + block; x++) {
                double height = model.height(y * model.columns() + x);
                if (!Double.isNaN(height)) {
                    sum += height;
                    known++;
                }
            }
        }
        return 2 * known < block * block ? Float.NaN : (float) (sum / known);
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    /** Height [m], NaN where there is none. */
    float height(int column, int row) {
        return heights[row * columns + column];
    }

    /** Where a place [degrees] lies: column and row, NaN where the raster's coordinate system does not reach. */
    Point2D toGrid(double longitude, double latitude) {
        Point2D cell = model.toCell(longitude, latitude);
        double middle = (block - 1) / 2.0;
        return new Point2D.Double((cell.getX() - left - middle) / block, (cell.getY() - top - middle) / block);
    }

    /** Meters east and north of the step to the next column, then of that to the next row. */
    double[] steps(double column, double row) {
        double middle = (block - 1) / 2.0;
        double[] steps = CellGround.sides(model, left + column * block + middle, top + row * block + middle);
        for (int k = 0; k < steps.length; k++) {
            steps[k] *= block;
        }
        return steps;
    }
}
