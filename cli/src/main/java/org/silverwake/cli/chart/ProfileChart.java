// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;

/**
 * Draws a reach profile, 8 by 5 inches: both bounds as a band on a decade axis, guideline values named at the right, sites,
 * tributaries and places named above, gaps where there is no value. Letters are large enough for the back of a hall.
 */
public final class ProfileChart {
    private static final double WIDTH = 576;
    private static final double HEIGHT = 360;
    private static final int DOTS_PER_INCH = 300;
    private static final double POINTS_PER_INCH = 72;

    private static final double MARGIN = 12;
    private static final double GUTTER = 122;
    private static final double AXIS_TITLE_ROOM = 24;
    private static final double LEGEND_HEIGHT = 30;
    private static final double FOOT_HEIGHT = 27;
    private static final double AXIS_HEIGHT = 34;
    private static final int MOST_ROWS = 6;
    private static final double ROW = 12;
    private static final double NAME_GAP = 3;
    private static final double TITLE = 18;
    private static final double SUBTITLE = 11.5;
    private static final double SUBTITLE_LEAST = 9.5;
    private static final double FOOT = 8;
    private static final String SEPARATOR = " \u00B7 ";
    private static final double CAUTION = 8.5;

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
        double scale = DOTS_PER_INCH / POINTS_PER_INCH;
        BufferedImage image = new BufferedImage(
                (int) Math.round(WIDTH * scale), (int) Math.round(HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(scale, scale);
        int omitted = draw(profile, g);
        g.dispose();
        PngFile.write(image, DOTS_PER_INCH, file);
        return omitted;
    }

    /**
     * Draws a profile onto a page of 576 by 360 points.
     *
     * @return how many names found no room above the chart
     */
    public int draw(Profile profile, Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        PageText text = new PageText(g, regular, bold);
        Decades decades = Decades.of(profile);
        double axisWidth = AXIS_TITLE_ROOM + widestTick(decades, text);
        double headEnd = heading(profile, text);
        double right = WIDTH - MARGIN - (profile.guidelines().isEmpty() ? 0 : GUTTER);
        List<Optional<MarkLabels.Placed>> names = placeNames(profile, text, MARGIN + axisWidth, right);
        int rows = names.stream()
                .flatMap(Optional::stream)
                .mapToInt(p -> p.row() + 1)
                .max()
                .orElse(0);
        double top = headEnd + rows * ROW + ProfileMarks.SYMBOL + 2 - ProfilePlot.TOP_ROOM;
        ProfileLegend legend = new ProfileLegend(profile, text);
        double legendHeight = Math.max(LEGEND_HEIGHT, legend.height(WIDTH - 2 * MARGIN) + 4);
        double bottom = HEIGHT - MARGIN - FOOT_HEIGHT - legendHeight;
        Rectangle2D area = plot(
                profile,
                decades,
                g,
                axisWidth,
                new Rectangle2D.Double(MARGIN, top, right + ProfilePlot.RIGHT_ROOM - MARGIN, bottom - top));
        ProfileMarks marks = new ProfileMarks(profile, decades, area, text);
        marks.gaps();
        marks.guidelines(GUTTER, bottom);
        marks.marks(names, ROW);
        marks.gapNames();
        int unnamed = new ProfileSamples(profile, decades, area, text).draw();
        legend.draw(MARGIN, bottom + 2, WIDTH - 2 * MARGIN);
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

    /** Draws axes, band and lines into a box; the area between the axes. */
    private Rectangle2D plot(Profile profile, Decades decades, Graphics2D g, double axisWidth, Rectangle2D box) {
        JFreeChart chart = ProfilePlot.of(profile, decades, regular, axisWidth, AXIS_HEIGHT);
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(g, box, info);
        return info.getPlotInfo().getDataArea();
    }

    private static double heading(Profile profile, PageText text) {
        double width = WIDTH - 2 * MARGIN;
        double size = text.fit(profile.title(), true, TITLE, TITLE / 2, width);
        double y = text.drawLines(List.of(profile.title()), text.bold(size), Ink.TEXT, MARGIN, MARGIN - 3);
        String below = profile.quantity() + ", " + profile.unit() + " \u2013 " + profile.subtitle();
        Font font = text.regular(text.fit(below, false, SUBTITLE, SUBTITLE_LEAST, width));
        return text.drawLines(text.wrap(below, font, width), font, Ink.TEXT, MARGIN, y) + 2;
    }

    private static List<Optional<MarkLabels.Placed>> placeNames(
            Profile profile, PageText text, double left, double right) {
        Font font = text.regular(ProfileMarks.NAME_SIZE);
        List<MarkLabels.Wanted> wanted = profile.marks().stream()
                .map(m -> new MarkLabels.Wanted(
                        left + (right - left) * m.kilometers() / profile.length(), text.width(m.name(), font), rank(m)))
                .toList();
        return new MarkLabels(MARGIN, WIDTH - MARGIN, NAME_GAP, MOST_ROWS).place(wanted);
    }

    private static int rank(Profile.Mark mark) {
        return switch (mark.kind()) {
            case SITE -> 0;
            case PLACE -> 1;
            case TRIBUTARY -> 2;
        };
    }

    private static void foot(Profile profile, Decades decades, int omitted, PageText text) {
        double width = WIDTH - 2 * MARGIN;
        Font font = text.regular(FOOT);
        Font heavy = text.bold(CAUTION);
        List<String> caution = text.wrap(profile.caution(), heavy, width);
        double imprintTop = HEIGHT - MARGIN + 4 - PageText.lineHeight(font);
        double top = imprintTop - caution.size() * PageText.lineHeight(heavy);
        text.drawLines(caution, heavy, Ink.TEXT, MARGIN, top);
        StringBuilder imprint = new StringBuilder(profile.imprint());
        if (!decades.holdsAll(profile)) {
            imprint.append(SEPARATOR + "values below " + ProfilePlot.plain().format(decades.from()) + " "
                    + profile.unit() + " are drawn on the lower edge");
        }
        if (omitted > 0) {
            imprint.append(SEPARATOR + omitted + " names left out for want of room");
        }
        String line = imprint.toString();
        Font small = text.regular(text.fit(line, false, FOOT, FOOT / 2, width));
        text.drawLines(List.of(line), small, Ink.FAINT_TEXT, MARGIN, imprintTop);
    }
}
