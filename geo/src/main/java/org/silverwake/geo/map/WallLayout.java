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
 * @param strip profile; of height 0 where there is none or no room for it
 * @param legend answers in large words
 * @param key marks on the river, symbols, notes
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
        Rectangle2D key,
        Rectangle2D people,
        Rectangle2D sources,
        Rectangle2D cautions,
        Rectangle2D foot) {
    static final double MARGIN = 16;
    private static final double GAP = 8;
    private static final double FOOT = 15;
    private static final double SCALE = 28;
    static final double STRIP = 86;
    /** Width of the legend of a sheet that lies, as a share of the page [-]. */
    private static final double LEGEND = 0.325;
    /** Least height of the maps of a sheet with a profile, as a share of their width; where it is less, the profile is left out, then words shrink. Chosen. */
    private static final double LOWEST = 0.42;
    /** Least room for the words below low maps, as a share of what they take at their full size. Chosen. */
    private static final double LEAST_WORDS = 0.7;

    /** Least room for the key of a sheet that lies, as a share of what it takes at its full size; then the legend shrinks. Chosen. */
    private static final double LEAST_KEY = 0.5;

    /** The same where a profile is drawn. Chosen. */
    private static final double WITH_STRIP = 0.8;

    private static final double STEP = 0.05;

    /** How high parts are whose words decide it, at their full size [points]. */
    record Heights(
            double bands,
            double head,
            double legend,
            double key,
            double people,
            double sources,
            double cautions,
            double strip) {
        /** With less room for the words below the maps of a sheet that stands. */
        Heights ofWords(double share) {
            return new Heights(bands, head, share * legend, share * key, share * people, sources, cautions, strip);
        }

        Heights withoutStrip() {
            return new Heights(bands, head, legend, key, people, sources, cautions, 0);
        }
    }

    /** Lays a page out: where maps would be low, with somewhat smaller words below them if it stands, else without the profile. */
    static WallLayout of(double width, double height, Heights heights, boolean hasMaps) {
        if (heights.strip > 0) {
            WallLayout layout = smaller(width, height, heights, hasMaps, WITH_STRIP);
            if (!isLow(layout)) {
                return layout;
            }
        }
        return smaller(width, height, heights.withoutStrip(), hasMaps, LEAST_WORDS);
    }

    private static WallLayout smaller(double width, double height, Heights heights, boolean hasMaps, double least) {
        WallLayout layout = at(width, height, heights, hasMaps);
        for (double share = 1 - STEP; width < height && isLow(layout) && share >= least; share -= STEP) {
            layout = at(width, height, heights.ofWords(share), hasMaps);
        }
        return layout;
    }

    private static WallLayout at(double width, double height, Heights heights, boolean hasMaps) {
        return width > height ? lying(width, height, heights, hasMaps) : standing(width, height, heights, hasMaps);
    }

    private static boolean isLow(WallLayout layout) {
        return layout.figure.getHeight() < LOWEST * layout.figure.getWidth();
    }

    /** Legend in a column on the right, what to do below the maps, sources and cautions over the whole width. */
    private static WallLayout lying(double width, double height, Heights heights, boolean hasMaps) {
        double wide = width - 2 * MARGIN;
        double column = column(width, height);
        double right = width - MARGIN - column;
        double mapWide = wide - column - 2 * GAP;
        Rectangle2D head = box(MARGIN, heights.bands + MARGIN / 2, wide, heights.head);
        Rectangle2D foot = box(MARGIN, height - MARGIN - FOOT, wide, FOOT);
        double cautions = foot.getY() - GAP - heights.cautions;
        double sources = cautions - heights.sources - (heights.sources > 0 ? GAP / 2 : 0);
        double from = head.getMaxY() + GAP;
        double end = sources - GAP / 2;
        double people = end - heights.people;
        double scale = hasMaps ? SCALE : 0;
        double middle = people - (heights.people > 0 ? GAP / 2 : 0);
        double mapEnd = middle - scale - heights.strip;
        double room = end - from - GAP / 2;
        double legend = Math.min(heights.legend, room - LEAST_KEY * heights.key);
        double key = from + legend + GAP / 2;
        return new WallLayout(
                head,
                box(MARGIN, from, mapWide, mapEnd - from),
                box(MARGIN, mapEnd, mapWide, scale),
                box(MARGIN, middle - heights.strip, mapWide, heights.strip),
                box(right, from, column, legend),
                box(right, key, column, end - key),
                box(MARGIN, people, mapWide, heights.people),
                box(MARGIN, sources, wide, heights.sources),
                box(MARGIN, cautions, wide, heights.cautions),
                foot);
    }

    /** All words below the maps: the legend on the left, symbols and what to do on the right, sources and cautions over the whole width. */
    private static WallLayout standing(double width, double height, Heights heights, boolean hasMaps) {
        double wide = width - 2 * MARGIN;
        double column = column(width, height);
        double right = width - MARGIN - column;
        Rectangle2D head = box(MARGIN, heights.bands + MARGIN / 2, wide, heights.head);
        Rectangle2D foot = box(MARGIN, height - MARGIN - FOOT, wide, FOOT);
        double cautions = foot.getY() - GAP - heights.cautions;
        double sources = cautions - heights.sources - (heights.sources > 0 ? GAP / 2 : 0);
        double end = sources - GAP / 2;
        double legend = end - Math.max(heights.legend, heights.key + GAP + heights.people);
        double people = end - heights.people;
        double from = head.getMaxY() + GAP;
        double scale = hasMaps ? SCALE : 0;
        double middle = legend - GAP / 2;
        double mapEnd = middle - scale - heights.strip;
        return new WallLayout(
                head,
                box(MARGIN, from, wide, mapEnd - from),
                box(MARGIN, mapEnd, wide, scale),
                box(MARGIN, middle - heights.strip, wide, heights.strip),
                box(MARGIN, legend, column, end - legend),
                box(right, legend, column, people - GAP - legend),
                box(right, people, column, heights.people),
                box(MARGIN, sources, wide, heights.sources),
                box(MARGIN, cautions, wide, heights.cautions),
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
