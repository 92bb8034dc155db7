// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.plot.XYPlot;

/**
 * Draws a reach profile, 8 by 5 inches: both bounds as a band on a decade axis, guideline values named at the right, sites,
 * tributaries and places named above, gaps where there is no value. Letters are large enough for the back of a hall.
 */
public final class ProfileChart {
    private static final double GUTTER = 122;
    private static final double AXIS_TITLE_ROOM = 24;
    private static final double LEGEND_HEIGHT = 30;
    private static final double FOOT_HEIGHT = 27;
    private static final double AXIS_HEIGHT = 34;
    private static final int MOST_ROWS = 6;
    private static final double ROW = 12;
    private static final double NAME_GAP = 3;
    private static final String SEPARATOR = " \u00B7 ";
    private final Font regular;
    private final Font bold;

    /** With letters that have every sign the texts need. */
    public ProfileChart(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * Draws a profile into a PNG file, 2400 by 1500 pixels at 300 dots per inch.
     *
     * @return how many names found no room above the chart
     * @throws IOException if the file cannot be written
     */
    public int write(Profile profile, Path file) throws IOException {
        int[] omitted = new int[1];
        ChartPage.write(file, regular, bold, text -> omitted[0] = draw(profile, text));
        return omitted[0];
    }

    /**
     * Draws a profile onto a page of 576 by 360 points.
     *
     * @return how many names found no room above the chart
     */
    public int draw(Profile profile, Graphics2D g) {
        ChartPage.smooth(g);
        return draw(profile, new PageText(g, regular, bold));
    }

    /**
     * Draws the same profile of several scenarios into a PNG file, a line for each.
     *
     * @throws IOException if the file cannot be written
     */
    public void write(ScenarioProfile profile, Path file) throws IOException {
        ChartPage.write(file, regular, bold, text -> {
            Decades decades = profile.decades();
            draw(
                    profile.frame(),
                    decades,
                    ProfilePlot.of(profile, decades, regular),
                    ProfileLegend.of(profile, text),
                    text);
        });
    }

    private int draw(Profile profile, PageText text) {
        Decades decades = Decades.of(profile);
        return draw(
                profile, decades, ProfilePlot.of(profile, decades, regular), new ProfileLegend(profile, text), text);
    }

    private int draw(Profile profile, Decades decades, XYPlot lines, ProfileLegend legend, PageText text) {
        double axisWidth = AXIS_TITLE_ROOM + widestTick(decades, text);
        double headEnd = ChartPage.heading(
                profile.title(), profile.quantity() + ", " + profile.unit() + " \u2013 " + profile.subtitle(), text);
        double right =
                ChartPage.WIDTH - ChartPage.MARGIN - (profile.guidelines().isEmpty() ? 0 : GUTTER);
        List<Optional<MarkLabels.Placed>> names = placeNames(
                profile,
                text,
                ChartPage.MARGIN + axisWidth,
                right,
                new MarkLabels(ChartPage.MARGIN, ChartPage.WIDTH - ChartPage.MARGIN, NAME_GAP, MOST_ROWS));
        int rows = names.stream()
                .flatMap(Optional::stream)
                .mapToInt(p -> p.row() + 1)
                .max()
                .orElse(0);
        double top = headEnd + rows * ROW + ProfileMarks.SYMBOL + 2 - ProfilePlot.TOP_ROOM;
        double legendHeight = Math.max(LEGEND_HEIGHT, legend.height(ChartPage.WIDTH - 2 * ChartPage.MARGIN) + 4);
        double bottom = ChartPage.HEIGHT - ChartPage.MARGIN - FOOT_HEIGHT - legendHeight;
        Rectangle2D area = ProfilePlot.draw(
                lines,
                axisWidth,
                AXIS_HEIGHT,
                regular,
                text.graphics(),
                new Rectangle2D.Double(
                        ChartPage.MARGIN, top, right + ProfilePlot.RIGHT_ROOM - ChartPage.MARGIN, bottom - top));
        ProfileMarks marks = new ProfileMarks(profile, decades, area, text);
        marks.gaps();
        marks.guidelines(GUTTER, bottom);
        marks.marks(names, ROW);
        marks.gapNames();
        int unnamed = new ProfileSamples(profile, decades, area, text).draw();
        legend.draw(ChartPage.MARGIN, bottom + 2, ChartPage.WIDTH - 2 * ChartPage.MARGIN);
        int omitted = (int) names.stream().filter(Optional::isEmpty).count() + unnamed;
        foot(profile, decades, omitted, text);
        return omitted;
    }

    private static double widestTick(Decades decades, PageText text) {
        Font font = text.regular(ProfilePlot.TICK_LABEL);
        return Math.max(
                text.width(ProfilePlot.plain().format(decades.from()), font),
                text.width(ProfilePlot.plain().format(decades.to()), font));
    }

    static List<Optional<MarkLabels.Placed>> placeNames(
            Profile profile, PageText text, double left, double right, MarkLabels room) {
        Font font = text.regular(ProfileMarks.NAME_SIZE);
        List<MarkLabels.Wanted> wanted = profile.marks().stream()
                .map(m -> new MarkLabels.Wanted(
                        left + (right - left) * m.kilometers() / profile.length(), text.width(m.name(), font), rank(m)))
                .toList();
        return room.place(wanted);
    }

    private static int rank(Profile.Mark mark) {
        return switch (mark.kind()) {
            case SITE -> 0;
            case PLACE -> 1;
            case TRIBUTARY -> 2;
        };
    }

    private static void foot(Profile profile, Decades decades, int omitted, PageText text) {
        StringBuilder imprint = new StringBuilder(profile.imprint());
        if (!decades.holdsAll(profile)) {
            imprint.append(SEPARATOR + "values below " + ProfilePlot.plain().format(decades.from()) + " "
                    + profile.unit() + " are drawn on the lower edge");
        }
        if (omitted > 0) {
            imprint.append(SEPARATOR + omitted + " names left out for want of room");
        }
        ChartPage.foot(profile.caution(), imprint.toString(), text);
    }
}
