// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

/**
 * A sheet of paper.
 *
 * @param width its horizontal edge [points of 1/72 inch], positive
 * @param height its upright edge [points], positive
 */
public record Paper(double width, double height) {
    /** ISO 216 A4, landscape: 297 x 210 mm. */
    public static final Paper A4 = ofMillimeters(297, 210);
    /** ISO 216 A3, landscape: 420 x 297 mm. */
    public static final Paper A3 = ofMillimeters(420, 297);
    /** ISO 216 A1, landscape: 841 x 594 mm. */
    public static final Paper A1 = ofMillimeters(841, 594);

    /** What pictures are drawn at for print [dots per inch]. */
    public static final int DOTS_PER_INCH = 300;

    private static final double MILLIMETERS_PER_INCH = 25.4;
    private static final double POINTS_PER_INCH = 72;

    /** Checks that both edges are there. */
    public Paper {
        if (!(width > 0 && height > 0)) {
            throw new IllegalArgumentException(
                    "paper of " + width + " x " + height + " points is not allowed; give two positive lengths");
        }
    }

    /** A sheet by its edges [mm]. */
    public static Paper ofMillimeters(double width, double height) {
        return new Paper(
                width / MILLIMETERS_PER_INCH * POINTS_PER_INCH, height / MILLIMETERS_PER_INCH * POINTS_PER_INCH);
    }

    /** The same sheet with its short edge below. */
    public Paper portrait() {
        return width <= height ? this : new Paper(height, width);
    }

    /** The same sheet with its long edge below. */
    public Paper landscape() {
        return width >= height ? this : new Paper(height, width);
    }

    /** Whether the upright edge is the longer one. */
    public boolean isPortrait() {
        return height > width;
    }
}
