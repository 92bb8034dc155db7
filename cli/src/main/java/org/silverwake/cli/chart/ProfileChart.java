// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.plot.XYPlot;

/**
 * Draws a reach profile, 8 by 5 inches: both bounds as a band on a decade axis, lines and guideline values named at the right, sites,
 * places and as many tributaries as find room named above, gaps where there is no value. Letters are large enough for the back of a
 * hall.
 */
public final class ProfileChart {
    private static final int MOST_ROWS = 6;
    private static final double GAP = 4;
    private static final double INNER = Theme.WIDTH - 2 * Theme.MARGIN;
    private static final double RIGHT = Theme.WIDTH - Theme.MARGIN - Theme.GUTTER;
    private static final String SEPARATOR = " \u00B7 ";

    private ProfileChart() {}

    /**
     * Draws a profile into a file: PNG, SVG or PDF, as its name ends.
     *
     * @return how many names of sites, places and samples found no room
     */
    public static int write(Profile profile, Path file) {
        int[] omitted = new int[1];
        ChartPage.write(file, text -> {
            Decades decades = Decades.of(profile);
            omitted[0] = draw(profile, decades, ProfilePlot.of(profile, decades), lines(profile), text);
        });
        return omitted[0];
    }

    /** Draws the same profile of several scenarios, a line for each. */
    public static void write(ScenarioProfile profile, Path file) {
        ChartPage.write(file, text -> {
            Decades decades = profile.decades();
            List<Line> lines = new ArrayList<>();
            for (int k = 0; k < profile.courses().size(); k++) {
                ScenarioProfile.Course course = profile.courses().get(k);
                last(course.stretches(), Profile.Point::high, course.name(), Theme.scenario(k), Theme.scenarioLine(k))
                        .ifPresent(lines::add);
            }
            draw(profile.frame(), decades, ProfilePlot.of(profile, decades), lines, text);
        });
    }

    /** A line of the plot: its name, how it is drawn, and where it ends. */
    private record Line(double end, String name, String more, Color color, Stroke stroke) {
        Line saying(String words) {
            return new Line(end, name, words, color, stroke);
        }
    }

    private static Optional<Line> last(
            List<Profile.Stretch> stretches,
            ToDoubleFunction<Profile.Point> value,
            String name,
            Color color,
            Stroke stroke) {
        return stretches.stream()
                .flatMap(s -> s.points().stream())
                .reduce((before, after) -> after)
                .map(end -> new Line(value.applyAsDouble(end), name, "", color, stroke));
    }

    private static List<Line> lines(Profile profile) {
        List<Line> lines = new ArrayList<>();
        boolean bounds = profile.ofBounds();
        last(
                        profile.stretches(),
                        Profile.Point::high,
                        bounds ? "carried through" : "high estimate",
                        Theme.HIGH,
                        Theme.THICK)
                .map(line -> bounds ? line.saying("the bed keeps little or nothing") : line)
                .ifPresent(lines::add);
        last(profile.stretches(), Profile.Point::low, bounds ? "laid down" : "low estimate", Theme.LOW, Theme.MEDIUM)
                .map(line -> bounds ? line.saying("what settles stays") : line)
                .ifPresent(lines::add);
        if (profile.hasBed()) {
            last(
                            profile.stretches(),
                            p -> p.withBed().map(Profile.Range::high).orElse(p.high()),
                            "with the bed",
                            Theme.WITH_BED,
                            Theme.BED)
                    .map(line -> line.saying("it takes in and gives back"))
                    .ifPresent(lines::add);
        }
        last(profile.stretches(), Profile.Point::background, "background", Theme.BACKGROUND, Theme.DOTS)
                .ifPresent(lines::add);
        return lines;
    }

    private static int draw(Profile profile, Decades decades, XYPlot plot, List<Line> lines, PageText text) {
        double headEnd = ChartPage.heading(profile.title(), profile.quantity() + " \u2013 " + profile.subtitle(), text);
        double axisWidth = Axes.leftRoom(text, decades.from(), decades.to());
        MarkNames names = MarkNames.of(profile, text, Theme.MARGIN + axisWidth, MOST_ROWS);
        double top = headEnd + names.height() - Axes.TOP_ROOM;
        ProfileLegend legend = new ProfileLegend(profile, text);
        double footTop = foot(profile, decades, names.omitted(), text);
        double bottom = footTop - legend.height(INNER) - GAP;
        legend.draw(Theme.MARGIN, bottom, INNER);
        Rectangle2D box =
                new Rectangle2D.Double(Theme.MARGIN, top, RIGHT + Axes.RIGHT_ROOM - Theme.MARGIN, bottom - top);
        Rectangle2D area = Axes.draw(plot, axisWidth, Axes.BELOW, text.graphics(), box);
        Axes.uprightTitle(
                profile.quantity() + " [" + profile.unit() + "]",
                Theme.MARGIN,
                area,
                area.getHeight() + Axes.BELOW,
                text);
        ProfileMarks marks = new ProfileMarks(profile, decades, area, text);
        EndLabels ends = new EndLabels(text, area.getMaxX(), Theme.GUTTER);
        marks.gaps();
        marks.guidelines(ends);
        marks.marks(names.placed(), MarkNames.ROW);
        marks.gapNames();
        int unnamed = new ProfileSamples(profile, decades, area, text).draw();
        for (Line line : lines) {
            ends.line(decades.y(line.end(), area), line.name(), line.more(), line.color(), line.stroke());
        }
        ends.draw(headEnd + GAP, bottom - GAP);
        return names.omitted() + unnamed;
    }

    private static double foot(Profile profile, Decades decades, int omitted, PageText text) {
        StringBuilder imprint = new StringBuilder(profile.imprint());
        if (!decades.holdsAll(profile)) {
            imprint.append(SEPARATOR + "values below " + Axes.plain().format(decades.from()) + " " + profile.unit()
                    + " are drawn on the lower edge");
        }
        if (omitted > 0) {
            imprint.append(SEPARATOR + omitted + (omitted == 1 ? " name" : " names") + " left out for want of room");
        }
        return ChartPage.foot(profile.caution(), imprint.toString(), text);
    }
}
