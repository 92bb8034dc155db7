// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.geom.Rectangle2D;

/**
 * Where the parts of a wall sheet stand on a page of A4 [points]; larger paper is the same page enlarged. No two parts overlap.
 *
 * @param head title and subtitle
 * @param figure maps or bars
 * @param scale scale bar and north arrow; of height 0 where there are no maps
 * @param strip profile; of height 0 where there is none
 * @param legend answers in large words
 * @param people what to do, whom to ask
 * @param sources what was compared with, small
 * @param cautions below all, above the foot
 * @param foot maker and last day of use
 */
record WallLayout(
        Rectangle2D head,
        Rectangle2D figure,
        Rectangle2D scale,
        Rectangle2D strip,
        Rectangle2D legend,
        Rectangle2D people,
        Rectangle2D sources,
        Rectangle2D cautions,
        Rectangle2D foot) {
    static final double MARGIN = 16;
    private static final double GAP = 8;
    private static final double FOOT = 15;
    private static final double SCALE = 34;
    private static final double STRIP = 92;
    /** Width of the legend of a sheet that lies, and height of the part below the maps of one that stands [-]. */
    private static final double LEGEND = 0.325;

    private static final double BELOW = 0.4;

    /** How high parts are whose words decide it [points]. */
    record Heights(double bands, double head, double cautions, double people, double sources) {}

    /** Lays a page out. */
    static WallLayout of(double width, double height, Heights heights, boolean hasMaps, boolean hasStrip) {
        double left = MARGIN;
        double wide = width - 2 * MARGIN;
        boolean lies = width > height;
        double column = column(width, height);
        double right = width - MARGIN - column;
        Rectangle2D head = box(left, heights.bands() + MARGIN / 2, wide, heights.head());
        Rectangle2D foot = box(left, height - MARGIN - FOOT, wide, FOOT);
        double low = Math.max(heights.cautions(), lies ? heights.people() : 0);
        double to = foot.getY() - GAP - low;
        Rectangle2D cautions = box(left, to, cautions(width, height), low);
        double from = head.getMaxY() + GAP;
        double end = to - GAP;
        double scale = hasMaps ? SCALE : 0;
        double strip = hasStrip ? STRIP : 0;
        double middle = lies ? end : from + (end - from) * (1 - BELOW);
        double mapWide = lies ? wide - column - 2 * GAP : wide;
        double mapEnd = middle - scale - strip;
        double below = lies ? from : middle + GAP;
        double sources = end - heights.sources();
        return new WallLayout(
                head,
                box(left, from, mapWide, mapEnd - from),
                box(left, mapEnd, mapWide, scale),
                box(left, middle - strip, mapWide, strip),
                box(lies ? right : left, below, column, (lies ? sources - GAP : end) - below),
                lies ? box(right, to, column, low) : box(right, below, column, sources - GAP - below),
                box(right, sources, column, heights.sources()),
                cautions,
                foot);
    }

    /** Width of the columns of words beside or below the maps [points]. */
    static double column(double width, double height) {
        double wide = width - 2 * MARGIN;
        return width > height ? LEGEND * wide : (wide - 2 * GAP) / 2;
    }

    /** Width of the cautions, which on a page that lies leave room for what to do [points]. */
    static double cautions(double width, double height) {
        double wide = width - 2 * MARGIN;
        return width > height ? wide - column(width, height) - 2 * GAP : wide;
    }

    private static Rectangle2D box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, Math.max(0, height));
    }
}
