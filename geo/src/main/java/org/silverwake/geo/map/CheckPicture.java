// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.Style;
import org.geotools.api.style.Symbolizer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.place.PlacedPoint;

/** Draws what was read, before anything is computed: the network with its direction, where each point came to lie, and what is amiss. */
public final class CheckPicture {
    private static final double PADDING = 30;
    private static final int MOST_LISTED = 24;
    private static final double SAMPLE = 90;
    private static final String DEFECT = "#a3154f";
    private static final String SNAP = "#bb3640";

    private CheckPicture() {}

    /**
     * Draws an A4 picture as PNG (at 300 dots per inch), SVG or PDF, as the file's ending says, under the band "not for posting" if a site is among the points.
     *
     * @param map the network, with its defects
     * @param points where points were placed; may be empty
     * @param title heading
     * @param words fixed words
     * @param file to write, replaced if there
     */
    public static void draw(RiverMap map, List<PlacedPoint> points, String title, MapWords words, Path file) {
        Picture.write(file, Paper.A4, g -> paint(g, map, points, title, words));
    }

    private static void paint(Graphics2D g, RiverMap map, List<PlacedPoint> points, String title, MapWords words) {
        Page page = new Page(g, Paper.A4);
        boolean showsSites = points.stream().anyMatch(CheckPicture::isSite);
        page.heading(title, subtitle(map, words), showsSites ? Optional.of(words.notForPosting()) : Optional.empty());
        List<Defect> shown = map.defects().stream().limit(MOST_LISTED).toList();
        MapFrame frame = MapFrame.fitted(places(map, points, shown), page.mapView(), PADDING);
        int dropped = paintMap(g, frame, map, points, shown);
        new Surround(g, frame).paint(words, Ground.bare());
        Panel.draw(g, page.panel(), panel -> fill(panel, map, points, words, dropped));
    }

    /** The same with English words. */
    public static void draw(RiverMap map, List<PlacedPoint> points, String title, Path file) {
        draw(map, points, title, MapWords.english(), file);
    }

    private static boolean isSite(PlacedPoint point) {
        return point.request().kind().equals("site");
    }

    private static String subtitle(RiverMap map, MapWords words) {
        return map.reachCount() + " " + words.reaches() + ", " + map.defects().size() + " "
                + words.defects().toLowerCase(java.util.Locale.ROOT);
    }

    private static List<Coordinate> places(RiverMap map, List<PlacedPoint> points, List<Defect> defects) {
        List<Coordinate> places = ConcentrationMap.places(map, List.of());
        points.forEach(point -> places.add(new Coordinate(point.longitude(), point.latitude())));
        defects.stream()
                .filter(CheckPicture::hasPlace)
                .forEach(defect -> places.add(new Coordinate(defect.longitude(), defect.latitude())));
        return places;
    }

    /** A null shape has no place; it is in the list alone. */
    private static boolean hasPlace(Defect defect) {
        return !Double.isNaN(defect.longitude());
    }

    private static int paintMap(
            Graphics2D g, MapFrame frame, RiverMap map, List<PlacedPoint> points, List<Defect> defects) {
        Shape old = g.getClip();
        g.clip(frame.view());
        MapPainter painter = new MapPainter(g, frame);
        double width = 2.2 * ConcentrationMap.widthFactor(map, frame);
        painter.paint(lines(map), Symbols.style(Symbols.pass(Symbols.rule(null, river(width)))));
        painter.paint(MapFeatures.flow(map), MapStyles.flow(ConcentrationMap.arrowGap(map, frame)));
        painter.paint(snaps(points), Symbols.style(Symbols.pass(Symbols.rule(null, snap()))));
        painter.paint(points(points), pointStyle());
        painter.paint(defects(defects), defectStyle());
        painter.paint(MapFeatures.riverNames(map), MapStyles.riverNames());
        int dropped = painter.paintLabels();
        g.setClip(old);
        return dropped;
    }

    private static LineSymbolizer river(double width) {
        return Symbols.line(MapStyles.WATER_INK, width, List.of(), "round");
    }

    private static LineSymbolizer snap() {
        return Symbols.line(SNAP, 1.6, List.of(4.0, 2.0), "butt");
    }

    private static Mark asGiven() {
        return Symbols.mark("circle", "#ffffff", SNAP, 1.8);
    }

    private static Mark onRiver() {
        return Symbols.mark("circle", SNAP, "#ffffff", 0.8);
    }

    private static Mark defect() {
        return Symbols.mark("circle", null, DEFECT, 2.2);
    }

    private static Style pointStyle() {
        return Symbols.style(
                Symbols.pass(Symbols.rule(
                        Symbols.equal("given", 1),
                        Symbols.point(asGiven(), 8),
                        Symbols.text(
                                "label",
                                new Symbols.Letters(11, "bold", "normal"),
                                MapStyles.INK,
                                Symbols.besidePoint()))),
                Symbols.pass(Symbols.rule(Symbols.equal("given", 0), Symbols.point(onRiver(), 6))));
    }

    private static Style defectStyle() {
        return Symbols.style(Symbols.pass(Symbols.rule(
                null,
                Symbols.point(defect(), 11),
                Symbols.text("label", new Symbols.Letters(12, "bold", "normal"), DEFECT, Symbols.besidePoint()))));
    }

    private static List<SimpleFeature> lines(RiverMap map) {
        MapFeatures.Builder features = new MapFeatures.Builder(LineString.class, Map.of());
        map.reaches().forEach(reach -> features.add(reach.line(), Map.of()));
        return features.all();
    }

    private static List<SimpleFeature> snaps(List<PlacedPoint> points) {
        MapFeatures.Builder features = new MapFeatures.Builder(LineString.class, Map.of());
        for (PlacedPoint point : points) {
            Coordinate[] ends = {
                new Coordinate(point.longitude(), point.latitude()),
                new Coordinate(point.snappedLongitude(), point.snappedLatitude())
            };
            features.add(new GeometryFactory().createLineString(ends), Map.of());
        }
        return features.all();
    }

    private static List<SimpleFeature> points(List<PlacedPoint> points) {
        MapFeatures.Builder features = new MapFeatures.Builder(
                org.locationtech.jts.geom.Point.class,
                Map.of("given", Integer.class, "label", String.class, "priority", Double.class));
        for (PlacedPoint point : points) {
            features.add(
                    MapFeatures.point(point.longitude(), point.latitude()),
                    Map.of("given", 1, "label", point.request().name(), "priority", isSite(point) ? 1.0 : 2.0));
            features.add(
                    MapFeatures.point(point.snappedLongitude(), point.snappedLatitude()),
                    Map.of("given", 0, "label", "", "priority", 1.0));
        }
        return features.all();
    }

    private static List<SimpleFeature> defects(List<Defect> defects) {
        MapFeatures.Builder features = new MapFeatures.Builder(
                org.locationtech.jts.geom.Point.class, Map.of("label", String.class, "priority", Double.class));
        for (int k = 0; k < defects.size(); k++) {
            if (hasPlace(defects.get(k))) {
                features.add(
                        MapFeatures.point(
                                defects.get(k).longitude(), defects.get(k).latitude()),
                        Map.of("label", String.valueOf(k + 1), "priority", 0.0));
            }
        }
        return features.all();
    }

    private static void fill(Panel panel, RiverMap map, List<PlacedPoint> points, MapWords words, int dropped) {
        panel.line(List.of(river(2.2), MapStyles.arrow(SAMPLE)), words.flow(), 11.5);
        if (!points.isEmpty()) {
            panel.point(List.<Symbolizer>of(Symbols.point(asGiven(), 8)), words.asGiven(), 11.5);
            panel.point(List.<Symbolizer>of(Symbols.point(onRiver(), 6)), words.onRiver(), 11.5);
        }
        if (dropped > 0) {
            panel.paragraph(words.namesLeftOut() + " " + dropped, 9.5);
        }
        panel.rule();
        panel.heading(words.defects());
        List<Defect> defects = map.defects();
        if (defects.isEmpty()) {
            panel.paragraph(words.noDefects(), 11.5);
        }
        Set<String> remedies = new HashSet<>();
        for (int k = 0; k < Math.min(defects.size(), MOST_LISTED); k++) {
            Defect defect = defects.get(k);
            panel.strong((k + 1) + ":  " + defect.text(), 10.5);
            if (remedies.add(defect.kind() + defect.remedy())) {
                panel.paragraph((defect.repaired() ? words.repaired() + " " : "") + defect.remedy(), 9.5);
            }
        }
        if (defects.size() > MOST_LISTED) {
            panel.paragraph((defects.size() - MOST_LISTED) + " " + words.moreInTable(), 10.5);
        }
    }
}
