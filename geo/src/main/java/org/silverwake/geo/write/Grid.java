// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

/**
 * A grid of numbers over longitude and latitude, WGS 84 degrees, square cells, rows from north to south. Immutable; copies
 * its values once, O(cells).
 */
public final class Grid {
    private final double west;
    private final double north;
    private final double cell;
    private final int columns;
    private final float[] values;

    /**
     * A grid.
     *
     * @param west longitude of the western edge of the first column [degrees]
     * @param north latitude of the northern edge of the first row [degrees]
     * @param cell side of a cell [degrees], > 0
     * @param columns cells in a row, >= 1
     * @param values row by row from the north, west to east; NaN where there is none
     * @throws IllegalArgumentException if the values do not fill whole rows or the cell is not positive
     */
    public Grid(double west, double north, double cell, int columns, float[] values) {
        if (columns < 1 || values.length == 0 || values.length % columns != 0 || !(cell > 0)) {
            throw new IllegalArgumentException("a grid of " + values.length + " values in rows of " + columns
                    + " with cells of " + cell + " degrees is not allowed; give whole rows and a positive cell");
        }
        this.west = west;
        this.north = north;
        this.cell = cell;
        this.columns = columns;
        this.values = values.clone();
    }

    double west() {
        return west;
    }

    double north() {
        return north;
    }

    double cell() {
        return cell;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return values.length / columns;
    }

    float value(int row, int column) {
        return values[row * columns + column];
    }
}
