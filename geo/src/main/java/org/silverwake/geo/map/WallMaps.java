// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;

/** The maps of a wall sheet, all in one scale: drawn as for a smaller page and enlarged, so that lines, symbols and names are seen from afar. */
final class WallMaps {
    private static final Color INK = Color.decode(MapStyles.INK);
    static final Color PALE = new Color(0xe6, 0xe6, 0xe6);
    private static final double PADDING = 32;
    private static final int SEEN_THROUGH = 200;
    private static final double GAP = 8;
    private static final double LOCATOR = 82;
    /** Lower maps, in heights of the small one, have no room for it [-]. */
    private static final double LEAST_ABOVE_LOCATOR = 2.5;

    /** A leader longer than this leads the eye astray [points]. Chosen. */
    private static final double FAR = 50;

    private static final double SMALL_PADDING = 12;
    private static final double CAPTION = 15;
    /** Shorter scale bars have no number at their half [points]. */
    private static final double LEAST_HALVED = 80;

    /** How much larger than on a map for the desk, the largest at which every name finds room [-]. Chosen. */
    private static final double[] ENLARGED = {1.6, 1.45, 1.3, 1.15, 1, 0.85, 0.7};

    private final RiverMap map;
    private final WallSheet sheet;
    private final List<Rectangle2D> views = new ArrayList<>();
    private final double captionHeight;

    WallMaps(RiverMap map, WallSheet sheet, Rectangle2D room) {
        this.map = map;
        this.sheet = sheet;
        boolean captions =
                sheet.figures().stream().anyMatch(figure -> !figure.caption().isEmpty());
        captionHeight = captions ? 1.3 * CAPTION : 0;
        arrange(room);
    }

    /** In as many columns as give the largest scale. */
    private void arrange(Rectangle2D room) {
        int count = sheet.figures().size();
        int best = 1;
        double largest = 0;
        for (int columns = 1; columns <= count; columns++) {
            double scale = new MapFrame(places(), cell(room, columns, 0), SMALL_PADDING).pointsPerMeter();
            if (scale > largest) {
                largest = scale;
                best = columns;
            }
        }
        for (int k = 0; k < count; k++) {
            views.add(cell(room, best, k));
        }
    }

    private Rectangle2D cell(Rectangle2D room, int columns, int k) {
        int rows = (sheet.figures().size() + columns - 1) / columns;
        double width = (room.getWidth() - (columns - 1) * GAP) / columns;
        double height = (room.getHeight() - (rows - 1) * GAP) / rows;
        double x = room.getX() + k % columns * (width + GAP);
        double y = room.getY() + k / columns * (height + GAP);
        return new Rectangle2D.Double(x, y + captionHeight, width, height - captionHeight);
    }

    private List<Coordinate> places() {
        List<Coordinate> places =
                ConcentrationMap.places(map, sheet.figures().get(0).points());
        sheet.ground()
                .waters()
                .forEach(water -> places.addAll(Arrays.asList(water.shape().getCoordinates())));
        for (WallSheet.NamedArea area : sheet.ground().areas()) {
            places.addAll(Arrays.asList(area.area().shape().getCoordinates()));
        }
        return places;
    }

    /** Draws all; how many names found no room. */
    int paint(Graphics2D g) {
        int dropped = 0;
        double enlarged = enlarged();
        for (int k = 0; k < views.size(); k++) {
            WallSheet.Figure figure = sheet.figures().get(k);
            Rectangle2D view = views.get(k);
            if (!figure.caption().isEmpty()) {
                g.setColor(INK);
                Font font = Prose.fitting(figure.caption(), Fonts.bold(CAPTION), view.getWidth());
                Part.draw(
                        g,
                        "caption",
                        () -> Prose.draw(
                                g,
                                figure.caption(),
                                font,
                                view.getX(),
                                view.getY() - captionHeight,
                                2 * view.getWidth()));
            }
            dropped += paint(g, figure, view, enlarged, false).dropped();
            g.setColor(INK);
            g.setStroke(new BasicStroke(1));
            Part.draw(g, "frame", () -> g.draw(view));
        }
        return dropped;
    }

    /**
     * The largest of the sizes at which no name is left out and none stands far from its place; else the largest at which none is left
     * out; else the smallest.
     */
    private double enlarged() {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        nowhere.setClip(0, 0, 1, 1);
        double whole = 0;
        for (double size : ENLARGED) {
            Names names = Names.NONE;
            for (int k = 0; k < views.size() && names.dropped() == 0; k++) {
                names = names.and(paint(nowhere, sheet.figures().get(k), views.get(k), size, true));
            }
            if (names.dropped() == 0 && names.farthest() <= FAR) {
                nowhere.dispose();
                return size;
            }
            whole = names.dropped() == 0 ? Math.max(whole, size) : whole;
        }
        nowhere.dispose();
        return whole > 0 ? whole : ENLARGED[ENLARGED.length - 1];
    }

    /** How many names were left out, and how far the farthest stands from its place [points]. */
    private record Names(int dropped, double farthest) {
        static final Names NONE = new Names(0, 0);

        Names and(Names other) {
            return new Names(dropped + other.dropped, Math.max(farthest, other.farthest));
        }
    }

    private double padding() {
        return views.size() > 1 ? SMALL_PADDING : PADDING;
    }

    MapFrame frame(int k, double enlarged) {
        Rectangle2D view = views.get(k);
        Rectangle2D small = new Rectangle2D.Double(
                view.getX() / enlarged,
                view.getY() / enlarged,
                view.getWidth() / enlarged,
                view.getHeight() / enlarged);
        return new MapFrame(places(), small, padding() / enlarged);
    }

    /** All, or no more than names have to do with. */
    private Names paint(
            Graphics2D whole, WallSheet.Figure figure, Rectangle2D view, double enlarged, boolean namesAlone) {
        Graphics2D g = (Graphics2D) whole.create();
        g.clip(view);
        g.scale(enlarged, enlarged);
        MapFrame frame = frame(views.indexOf(view), enlarged);
        double factor = ConcentrationMap.widthFactor(map, frame);
        MapPainter painter = new MapPainter(g, frame);
        List<LineClass> classes = sheet.legend().classes();
        var reaches = MapFeatures.reaches(map, figure.reaches());
        if (!namesAlone) {
            new BackdropPainter(frame, sheet.ground().under()).paint(g);
            mark(g, frame.view());
        }
        Part.draw(
                g, "area", () -> painter.paint(MapFeatures.areas(sheet.ground().areas()), MapStyles.areas()));
        if (!namesAlone) {
            painter.paint(MapFeatures.waters(sheet.ground().waters(), figure.reaches()), MapStyles.waters(classes));
        }
        if (!namesAlone && sheet.ground().under().isDrawn()) {
            painter.paint(reaches, MapStyles.casings(classes, factor));
        }
        Part.draw(g, "reach", () -> painter.paint(reaches, MapStyles.reaches(classes, factor)));
        if (!namesAlone) {
            painter.paint(reaches, MapStyles.marks(factor));
            painter.paint(MapFeatures.flow(map), MapStyles.flow(ConcentrationMap.arrowGap(map, frame)));
        }
        painter.paint(MapFeatures.points(figure.points()), MapStyles.points());
        painter.paint(MapFeatures.riverNames(map), MapStyles.riverNames());
        corner(frame, enlarged).ifPresent(room -> {
            painter.labels().keepClear(room.getCenterX(), room.getCenterY(), room.getWidth() + 4);
            if (!namesAlone) {
                Part.draw(g, "locator", () -> locator(g, room, enlarged));
            }
        });
        int dropped = painter.paintLabels();
        g.dispose();
        return new Names(dropped, enlarged * painter.labels().longestLeader());
    }

    /** In its own size, however much the map is enlarged. */
    private void locator(Graphics2D g, Rectangle2D room, double enlarged) {
        AffineTransform old = g.getTransform();
        g.scale(1 / enlarged, 1 / enlarged);
        Rectangle2D onPage = new Rectangle2D.Double(room.getX() * enlarged, room.getY() * enlarged, LOCATOR, LOCATOR);
        sheet.ground()
                .under()
                .locator()
                .draw(g, onPage, map, sheet.legend().marks().ground());
        g.setTransform(old);
    }

    /** The first corner of a single map that no river and no place lies in, for the small map of where the basin lies. */
    private Optional<Rectangle2D> corner(MapFrame frame, double enlarged) {
        Rectangle2D view = frame.view();
        double size = LOCATOR / enlarged;
        double gap = GAP / enlarged / 2;
        if (views.size() > 1 || view.getHeight() < LEAST_ABOVE_LOCATOR * size) {
            return Optional.empty();
        }
        List<Point2D> places =
                places().stream().map(at -> frame.toPage(at.x, at.y)).toList();
        for (double y : new double[] {view.getY() + gap, view.getMaxY() - size - gap}) {
            for (double x : new double[] {view.getX() + gap, view.getMaxX() - size - gap}) {
                Rectangle2D room = new Rectangle2D.Double(x, y, size, size);
                Rectangle2D wide = new Rectangle2D.Double(x - gap, y - gap, size + 2 * gap, size + 2 * gap);
                if (places.stream().noneMatch(wide::contains)) {
                    return Optional.of(room);
                }
            }
        }
        return Optional.empty();
    }

    /** What lies under the maps, for the legend. */
    BackdropPainter backdrop() {
        return new BackdropPainter(frame(0, 1), sheet.ground().under());
    }

    /** The word of a draft across the map, under all that is drawn on it; outlines, so that nobody takes it for a name. */
    private void mark(Graphics2D g, Rectangle2D view) {
        if (sheet.head().mark().isEmpty()) {
            return;
        }
        Font font = Prose.fitting(sheet.head().mark(), Fonts.bold(view.getHeight() / 2), 0.8 * view.getWidth());
        Shape outline = font.createGlyphVector(
                        g.getFontRenderContext(), sheet.head().mark())
                .getOutline();
        Rectangle2D bounds = outline.getBounds2D();
        AffineTransform to = AffineTransform.getTranslateInstance(view.getCenterX(), view.getCenterY());
        to.rotate(-Math.PI / 9);
        to.translate(-bounds.getCenterX(), -bounds.getCenterY());
        Shape clip = g.getClip();
        g.clip(view);
        g.setColor(new Color(PALE.getRed(), PALE.getGreen(), PALE.getBlue(), SEEN_THROUGH));
        g.fill(to.createTransformedShape(outline));
        g.setClip(clip);
    }

    /** Scale bar, in kilometers and in time where a speed is known, and north arrow, in a row below the maps. */
    void scale(Graphics2D g, Rectangle2D row) {
        MapFrame frame = new MapFrame(places(), views.get(0), padding());
        double meters = Surround.below(0.3 * views.get(0).getWidth() / frame.pointsPerMeter());
        Coordinate middle =
                frame.toGround(views.get(0).getCenterX(), views.get(0).getCenterY());
        var east = net.sf.geographiclib.Geodesic.WGS84.Direct(middle.y, middle.x, 90, meters);
        Point2D end = frame.toPage(east.lon2, middle.y);
        double length = end.getX() - views.get(0).getCenterX();
        double x = row.getX() + 44;
        double y = row.getY() + 16;
        Surround.northArrow(g, row.getX() + 9, row.getY() + 6, sheet.scale().north());
        bar(g, x, y, length);
        Font font = Fonts.bold(11);
        g.setFont(font);
        String full = sheet.scale().kilometers(meters, true);
        String half = sheet.scale().kilometers(meters / 2, false);
        String nought = sheet.scale().kilometers(0, false);
        g.drawString(nought, (float) (x - Prose.width(nought, font) / 2), (float) y - 4);
        if (length > LEAST_HALVED) {
            g.drawString(half, (float) (x + length / 2 - Prose.width(half, font) / 2), (float) y - 4);
        }
        String number = sheet.scale().kilometers(meters, false);
        double start = x + length - Prose.width(number, font) / 2;
        g.drawString(full, (float) start, (float) y - 4);
        double left = Math.max(x + length, start + Prose.width(full, font)) + 14;
        List<String> times = sheet.scale().times(meters);
        if (!times.isEmpty()) {
            Prose.draw(
                    g, String.join(" \u2013 ", times), Fonts.regular(11), left, row.getY() + 4, row.getMaxX() - left);
        }
    }

    private static void bar(Graphics2D g, double x, double y, double length) {
        g.setStroke(new BasicStroke(1));
        for (int k = 0; k < 4; k++) {
            Rectangle2D part = new Rectangle2D.Double(x + length * k / 4, y, length / 4, 6);
            g.setColor(k % 2 == 0 ? INK : Color.WHITE);
            g.fill(part);
            g.setColor(INK);
            g.draw(part);
        }
    }
}
