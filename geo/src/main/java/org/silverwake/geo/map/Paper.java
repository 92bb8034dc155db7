// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

/** Size of a picture, landscape, 300 dots per inch (ISO 216: A4 297 x 210 mm, A3 420 x 297 mm). A3 is A4 enlarged. */
public enum Paper {
    A4(3508, 2480),
    A3(4961, 3508);

    static final int DOTS_PER_INCH = 300;
    /** Everything is laid out on this page [points], whatever the paper. */
    static final double WIDTH = 297 / 25.4 * 72;

    static final double HEIGHT = 210 / 25.4 * 72;

    private final int columns;
    private final int rows;

    Paper(int columns, int rows) {
        this.columns = columns;
        this.rows = rows;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return rows;
    }

    double pixelsPerPoint() {
        return columns / WIDTH;
    }
}
