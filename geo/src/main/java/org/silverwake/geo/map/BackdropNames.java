// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.silverwake.geo.label.Box;
import org.silverwake.geo.label.Spot;
import org.silverwake.geo.label.Spots;

/**
 * Names of what lies under the rivers: after all names of the map itself, small, never over another, left out where there is no room. A name
 * that several shapes bear is written once, on the largest; a name that a place of the map bears already is not written.
 */
final class BackdropNames {
    private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);
    /** After the names of rivers. */
    private static final double PRIORITY = 1000;

    private static final double SIZE = 9;
    private static final double SYMBOL_RADIUS = 2.5;
    private static final double HALF_STROKE = 1;
    private static final double OFF_MIDDLE = 2;

    private final MapFrame frame;
    private final MapBasis basis;
    private final Geometry view;

    BackdropNames(MapFrame frame, MapBasis basis) {
        this.frame = frame;
        this.basis = basis;
        view = new GeometryFactory().toGeometry(PageBox.of(frame.view()));
    }

    void add(LabelInk ink) {
        Set<String> known = new HashSet<>();
        basis.points().forEach(point -> known.add(key(point.label())));
        List<BackdropLayer> layers = basis.ground().layers();
        for (int k = layers.size() - 1; k >= 0; k--) {
            BackdropLayer layer = layers.get(k);
            boolean settled = layer.look().kind() == BackdropLayer.Kind.SETTLEMENTS;
            double priority = PRIORITY + (settled ? 0 : layers.size() - k);
            named(layer).forEach((name, shapes) -> {
                if (!known.contains(key(name))) {
                    add(ink, layer, name, shapes, priority);
                }
            });
        }
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private Map<String, List<Geometry>> named(BackdropLayer layer) {
        Map<String, List<Geometry>> named = new LinkedHashMap<>();
        for (BackdropLayer.Item item : layer.items()) {
            if (!item.name().isEmpty()) {
                seen(frame.toPage(item.shape()))
                        .ifPresent(shape -> named.computeIfAbsent(item.name(), name -> new ArrayList<>())
                                .add(shape));
            }
        }
        return named;
    }

    /** The part of a shape within the view. */
    private Optional<Geometry> seen(Geometry page) {
        if (!page.getEnvelopeInternal().intersects(view.getEnvelopeInternal())) {
            return Optional.empty();
        }
        if (view.getEnvelopeInternal().contains(page.getEnvelopeInternal())) {
            return Optional.of(page);
        }
        Geometry seen = GeometryFixer.fix(page).intersection(view);
        return seen.isEmpty() ? Optional.empty() : Optional.of(seen);
    }

    private void add(LabelInk ink, BackdropLayer layer, String name, List<Geometry> shapes, double priority) {
        BackdropLook look = BackdropLook.of(layer.look());
        boolean upright = layer.look().kind() == BackdropLayer.Kind.SETTLEMENTS;
        Font font = upright ? Fonts.regular(SIZE) : Fonts.oblique(SIZE);
        Rectangle2D box = font.getStringBounds(name, PAPER);
        List<Spot> spots = spots(shapes, box.getWidth(), LabelInk.height(font, name));
        if (!spots.isEmpty()) {
            ink.addQuiet(name, font, look.ink(), priority, spots);
        }
    }

    private static List<Spot> spots(List<Geometry> shapes, double width, double height) {
        Geometry largest = shapes.get(0);
        for (Geometry shape : shapes) {
            largest = shape.getArea() > largest.getArea() ? shape : largest;
        }
        int dimension = shapes.stream().mapToInt(Geometry::getDimension).max().orElse(0);
        if (dimension == 1) {
            LineString line = longest(shapes);
            return line.getNumPoints() < 2
                    ? List.of()
                    : Spots.along(PageLine.of(line).xs(), PageLine.of(line).ys(), HALF_STROKE, width, height);
        }
        Point at = largest.getInteriorPoint();
        List<Spot> spots = new ArrayList<>();
        if (dimension == 2) {
            spots.add(new Spot(new Box(at.getX(), at.getY(), width / 2, height / 2, 0), 0));
        }
        for (Spot spot : Spots.around(at.getX(), at.getY(), SYMBOL_RADIUS, width, height)) {
            if (spot.leader().isEmpty()) {
                spots.add(new Spot(spot.box(), OFF_MIDDLE + spot.cost()));
            }
        }
        return spots;
    }

    /** The longest line that the lines of one name make together. */
    private static LineString longest(List<Geometry> shapes) {
        LineMerger merger = new LineMerger();
        merger.add(shapes);
        LineString longest = new GeometryFactory().createLineString(new Coordinate[0]);
        for (Object merged : merger.getMergedLineStrings()) {
            LineString line = (LineString) merged;
            longest = line.getLength() > longest.getLength() ? line : longest;
        }
        return longest;
    }
}
