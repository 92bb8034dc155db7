// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.geotools.api.style.Symbolizer;
import org.geotools.api.style.TextSymbolizer;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;

/** Draws the map that is shown in the village hall: reaches in classes of the ratio to a guideline, and all that must be said with it. */
public final class ConcentrationMap {
    private static final double LARGEST_IN_LEGEND = 16;
    private static final double PADDING = 34;
    /** Length of all lines together up to which lines have their full width [points]. */
    private static final double ROOMY = 6000;

    private static final double THINNEST = 0.45;
    /** Room below a low map from which on the cautions stand there [points]. */
    private static final double LEAST_BELOW = 90;

    private static final double LEAST_ARROW_GAP = 30;
    private static final double MOST_ARROW_GAP = 90;
    private static final double SMALL = 10.5;
    private static final double LARGE = 13;

    private ConcentrationMap() {}

    /**
     * Draws a map as PNG (at 300 dots per inch), SVG or PDF, as the file's ending says. Names of points that find no room are left out
     * and counted on the map; names of rivers are left out without a word.
     *
     * @param map the network the sheet's reaches are of
     * @param sheet what to show and say
     * @param file to write, replaced if there
     * @return how many names of points were left out
     * @throws IllegalArgumentException if the sheet is not of this network
     */
    public static int draw(RiverMap map, MapSheet sheet, Path file) {
        return draw(map, sheet, Optional.empty(), file);
    }

    /** The same, with reaches as a user's own style shows them, if there is one; the legend tells its rules by their titles. */
    public static int draw(RiverMap map, MapSheet sheet, Optional<OwnLook> own, Path file) {
        if (sheet.reaches().size() != map.reachCount()) {
            throw new IllegalArgumentException(
                    "the sheet has " + sheet.reaches().size() + " reaches, the network " + map.reachCount()
                            + "; give one mark per reach");
        }
        int[] dropped = {0};
        Picture.write(file, sheet.basis().paper(), g -> dropped[0] = paint(g, map, sheet, own));
        return dropped[0];
    }

    static int paint(Graphics2D g, RiverMap map, MapSheet sheet, Optional<OwnLook> own) {
        Page page = page(g, sheet);
        MapFrame frame = frame(page, map, sheet);
        int dropped = Part.count(g, "map", () -> paintMap(g, frame, map, sheet, own));
        new Surround(g, frame).paint(sheet.basis().words(), sheet.basis().ground());
        Rectangle2D below = page.below(frame.view());
        boolean cautionsBelow = below.getHeight() >= LEAST_BELOW;
        if (cautionsBelow) {
            Part.draw(g, "cautions", () -> Panel.draw(g, below, panel -> cautions(panel, sheet, LARGE)));
        }
        Part.draw(
                g,
                "legend",
                () -> Panel.draw(g, page.panel(), panel -> fill(panel, sheet, own, frame, !cautionsBelow, dropped)));
        return dropped;
    }

    /** The page with its heading. */
    static Page page(Graphics2D g, MapSheet sheet) {
        Page page = new Page(g, sheet.basis().paper());
        Optional<String> band = sheet.basis().notForPosting()
                ? Optional.of(sheet.basis().words().notForPosting())
                : Optional.empty();
        Part.draw(g, "heading", () -> page.heading(sheet.basis().title(), sheet.subtitle(), band));
        return page;
    }

    /** Where on a page with its heading the map stands. */
    static MapFrame frame(Page page, RiverMap map, MapSheet sheet) {
        List<Coordinate> places = places(map, sheet.basis().points());
        sheet.basis()
                .waters()
                .forEach(water -> places.addAll(Arrays.asList(water.shape().getCoordinates())));
        return MapFrame.fitted(places, page.mapView(), PADDING);
    }

    static List<Coordinate> places(RiverMap map, List<MapPoint> points) {
        List<Coordinate> places = new ArrayList<>();
        map.reaches().forEach(reach -> places.addAll(Arrays.asList(reach.line().getCoordinates())));
        points.forEach(point -> places.add(new Coordinate(point.longitude(), point.latitude())));
        return places;
    }

    /** Thinner lines where there are many. */
    static double widthFactor(RiverMap map, MapFrame frame) {
        double meters =
                map.reaches().stream().mapToDouble(RiverMap.Reach::lengthMeters).sum();
        return Math.max(THINNEST, Math.min(1, Math.sqrt(ROOMY / (meters * frame.pointsPerMeter()))));
    }

    /** Between arrows of flow [points]: closer together where there is little river, so that some 20 are drawn. */
    static double arrowGap(RiverMap map, MapFrame frame) {
        double meters =
                map.reaches().stream().mapToDouble(RiverMap.Reach::lengthMeters).sum();
        return Math.max(LEAST_ARROW_GAP, Math.min(MOST_ARROW_GAP, meters * frame.pointsPerMeter() / 20));
    }

    static int paintMap(Graphics2D g, MapFrame frame, RiverMap map, MapSheet sheet, Optional<OwnLook> own) {
        Shape old = g.getClip();
        g.clip(frame.view());
        MapPainter painter = new MapPainter(g, frame);
        BackdropPainter backdrop = new BackdropPainter(frame, sheet.basis().ground());
        backdrop.paint(g);
        painter.paint(MapFeatures.waters(sheet.basis().waters(), sheet.reaches()), MapStyles.waters(sheet.classes()));
        if (own.isPresent()) {
            painter.paint(MapFeatures.reaches(map, own.get()), own.get().style().style());
        } else {
            double factor = widthFactor(map, frame);
            var reaches = MapFeatures.reaches(map, sheet.reaches());
            if (sheet.basis().ground().isDrawn()) {
                painter.paint(reaches, MapStyles.casings(sheet.classes(), factor));
            }
            Part.draw(g, "reach", () -> painter.paint(reaches, MapStyles.reaches(sheet.classes(), factor)));
            painter.paint(reaches, MapStyles.marks(factor));
        }
        painter.paint(MapFeatures.flow(map), MapStyles.flow(arrowGap(map, frame)));
        painter.paint(MapFeatures.points(sheet.basis().points()), MapStyles.points());
        painter.paint(MapFeatures.riverNames(map), MapStyles.riverNames());
        new BackdropNames(frame, sheet.basis()).add(painter.labels());
        int dropped = painter.paintLabels();
        g.setClip(old);
        return dropped;
    }

    private static void fill(
            Panel panel, MapSheet sheet, Optional<OwnLook> own, MapFrame frame, boolean withCautions, int dropped) {
        MapWords words = sheet.basis().words();
        if (own.isPresent()) {
            rules(panel, own.get());
        } else {
            panel.heading(sheet.legendTitle());
            for (LineClass look : sheet.classes()) {
                panel.line(MapStyles.reach(look, 1), look.legend(), 12.5);
            }
            marks(panel, sheet);
        }
        flow(panel, sheet);
        panel.gap(3);
        points(panel, sheet);
        new BackdropPainter(frame, sheet.basis().ground())
                .legend(panel, sheet.basis().words().ground());
        summary(panel, sheet.summary());
        panel.rule();
        if (!sheet.guidelines().isEmpty()) {
            panel.strong(words.comparedWith(), 12.5);
        }
        for (GuidelineLine line : sheet.guidelines()) {
            panel.strong(line.name() + ": " + line.value(), 11);
            panel.paragraph(line.source() + (line.checkedInPrint() ? "" : " \u2013 " + words.notCheckedInPrint()), 9.5);
        }
        panel.paragraph(sheet.factorLine(), 10.5);
        panel.gap(3);
        if (withCautions) {
            cautions(panel, sheet, SMALL);
        }
        panel.paragraph(
                words.madeBy() + " " + sheet.basis().maker() + ", "
                        + sheet.basis().date(),
                10.5);
        if (dropped > 0) {
            panel.paragraph(words.namesLeftOut() + " " + dropped, 9);
        }
    }

    private static void rules(Panel panel, OwnLook own) {
        panel.strong(own.note(), 10.5);
        own.style()
                .titled()
                .forEach(rule -> panel.line(
                        rule.symbolizers().stream()
                                .filter(symbolizer -> !(symbolizer instanceof TextSymbolizer))
                                .toList(),
                        rule.getDescription().getTitle().toString(),
                        12.5));
    }

    private static void summary(Panel panel, MapSheet.Summary summary) {
        if (!summary.lines().isEmpty()) {
            panel.rule();
            panel.strong(summary.title(), 11.5);
            summary.lines().forEach(line -> panel.paragraph(line, 11));
        }
    }

    private static void cautions(Panel panel, MapSheet sheet, double size) {
        if (!sheet.basis().cautions().isEmpty()) {
            panel.box(sheet.basis().words().cautions(), sheet.basis().cautions(), size);
        }
    }

    private static void marks(Panel panel, MapSheet sheet) {
        MapWords words = sheet.basis().words();
        LineClass sample = sheet.classes().get(Math.min(sheet.classes().size() - 1, 3));
        if (any(sheet, ReachMark::hatched)) {
            panel.line(with(sample, MapStyles.hatching(1)), words.hatched(), 10.5);
        }
        if (any(sheet, ReachMark::nearBank)) {
            panel.line(with(sample, MapStyles.nearBank(1)), words.nearBank(), 10.5);
        }
        if (any(sheet, ReachMark::aboveFromBackground)) {
            panel.line(with(sample, MapStyles.background()), words.aboveFromBackground(), 10.5);
        }
    }

    private static void flow(Panel panel, MapSheet sheet) {
        MapWords words = sheet.basis().words();
        panel.line(
                List.of(Symbols.line(MapStyles.WATER_INK, 1.6, List.of(), "butt"), MapStyles.arrowOfLegend()),
                words.flow(),
                10.5);
        if (!sheet.basis().waters().isEmpty()) {
            LineClass sample = sheet.classes().get(Math.min(sheet.classes().size() - 1, 3));
            panel.area(List.of(MapStyles.water(sample)), words.water(), 10.5);
        }
    }

    private static boolean any(MapSheet sheet, Predicate<ReachMark> claim) {
        return sheet.reaches().stream().anyMatch(claim);
    }

    private static List<Symbolizer> with(LineClass sample, Symbolizer mark) {
        List<Symbolizer> both = new ArrayList<>(MapStyles.reach(sample, 1));
        both.add(mark);
        return both;
    }

    private static void points(Panel panel, MapSheet sheet) {
        List<Symbolizer> symbols = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            if (!kind.isSample() && sheet.basis().points().stream().anyMatch(point -> point.kind() == kind)) {
                symbols.add(Symbols.point(MapStyles.mark(kind), Math.min(MapStyles.size(kind), LARGEST_IN_LEGEND)));
                texts.add(sheet.basis().words().kinds().get(kind));
            }
        }
        panel.points(symbols, texts, 11);
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            sheet.basis().points().stream()
                    .filter(point -> point.kind() == kind && kind.isSample())
                    .findFirst()
                    .ifPresent(point -> panel.point(
                            List.of(Symbols.raised(
                                    point.color().isEmpty() ? MapStyles.mark(kind) : MapStyles.sample(point.color()),
                                    MapStyles.size(kind),
                                    MapStyles.size(kind) / 4)),
                            sheet.basis().words().kinds().get(kind),
                            10.5));
        }
    }
}
