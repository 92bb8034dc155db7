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
 * @param cautions over the whole width
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
        double top = heights.bands() + MARGIN / 2;
        Rectangle2D head = box(left, top, wide, heights.head());
        Rectangle2D foot = box(left, height - MARGIN - FOOT, wide, FOOT);
        Rectangle2D cautions = box(left, foot.getY() - GAP - heights.cautions(), wide, heights.cautions());
        double from = head.getMaxY() + GAP;
        double to = cautions.getY() - GAP;
        double scale = hasMaps ? SCALE : 0;
        double strip = hasStrip ? STRIP : 0;
        boolean lies = width > height;
        double column = lies ? LEGEND * wide : (wide - 2 * GAP) / 2;
        double middle = lies ? to : from + (to - from) * (1 - BELOW);
        double mapWide = lies ? wide - column - 2 * GAP : wide;
        double mapEnd = middle - scale - strip - (hasStrip ? GAP : 0);
        Rectangle2D figure = box(left, from, mapWide, mapEnd - from);
        Rectangle2D bar = box(left, mapEnd, mapWide, scale);
        Rectangle2D profile = box(left, middle - strip, mapWide, strip);
        double right = width - MARGIN - column;
        if (lies) {
            double sources = to - heights.sources();
            double people = sources - heights.people() - (heights.people() > 0 ? GAP : 0);
            return new WallLayout(
                    head,
                    figure,
                    bar,
                    profile,
                    box(right, from, column, people - GAP - from),
                    box(right, people, column, heights.people()),
                    box(right, sources, column, heights.sources()),
                    cautions,
                    foot);
        }
        double below = middle + GAP;
        return new WallLayout(
                head,
                figure,
                bar,
                profile,
                box(left, below, column, to - below),
                box(right, below, column, heights.people()),
                box(right, to - heights.sources(), column, heights.sources()),
                cautions,
                foot);
    }

    /** Width of the columns of words beside or below the maps [points]. */
    static double column(double width, double height) {
        double wide = width - 2 * MARGIN;
        return width > height ? LEGEND * wide : (wide - 2 * GAP) / 2;
    }

    private static Rectangle2D box(double x, double y, double width, double height) {
        return new Rectangle2D.Double(x, y, width, Math.max(0, height));
    }
}
