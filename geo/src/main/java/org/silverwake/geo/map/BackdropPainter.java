// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Draws what lies under the rivers, and its rows of the legend: of layers with a style of their own, those of its rules that have a title. Names are left to {@link BackdropNames}. */
final class BackdropPainter {
    private static final double DOT = 1.15;
    private static final double DOT_STEP = 5;
    private static final double SQUARE = 3.6;
    private static final float SQUARE_EDGE = 0.7f;
    private static final double LEGEND_SIZE = 10.5;

    private final MapFrame frame;
    private final Ground ground;
    private final Rectangle2D view;

    BackdropPainter(MapFrame frame, Ground ground) {
        this.frame = frame;
        this.ground = ground;
        view = frame.view();
    }

    /** Draws slopes, then the layers, the lowest first; the caller clips to the view. */
    void paint(Graphics2D g) {
        ground.relief().ifPresent(relief -> relief.paint(g, frame));
        for (BackdropLayer layer : ground.layers()) {
            if (layer.look().style().isPresent()) {
                new MapPainter(g, frame)
                        .paint(layer.features(), layer.look().style().get().style());
            } else {
                paint(g, layer, BackdropLook.of(layer.look()));
            }
        }
    }

    void paint(Graphics2D g, BackdropLayer layer, BackdropLook look) {
        for (BackdropLayer.Item item : layer.items()) {
            paint(g, frame.toPage(item.shape()), look);
        }
    }

    private void paint(Graphics2D g, Geometry page, BackdropLook look) {
        if (!page.getEnvelopeInternal().intersects(PageBox.of(view))) {
            return;
        }
        for (int k = 0; k < page.getNumGeometries(); k++) {
            Geometry part = page.getGeometryN(k);
            if (part.isEmpty() || !part.getEnvelopeInternal().intersects(PageBox.of(view))) {
                continue;
            }
            if (part.getNumGeometries() > 1) {
                paint(g, part, look);
            } else if (part instanceof Polygon area) {
                area(g, outline(area), look);
            } else if (part instanceof LineString line) {
                line(g, path(line), look);
            } else {
                point(g, part.getCoordinate().x, part.getCoordinate().y, look);
            }
        }
    }

    private static void area(Graphics2D g, Shape area, BackdropLook look) {
        look.fill().ifPresent(fill -> {
            g.setColor(fill);
            g.fill(area);
        });
        if (look.dotted()) {
            dots(g, area, look);
        } else {
            line(g, area, look);
        }
    }

    private static void line(Graphics2D g, Shape line, BackdropLook look) {
        g.setColor(look.edge());
        g.setStroke(look.stroke());
        g.draw(line);
    }

    /** Dots on a grid that is fixed to the page, so that areas side by side have one pattern. */
    private static void dots(Graphics2D g, Shape area, BackdropLook look) {
        Shape old = g.getClip();
        g.clip(area);
        Rectangle2D box = g.getClipBounds();
        Path2D dots = new Path2D.Double();
        if (box != null && !box.isEmpty()) {
            double rise = DOT_STEP * Math.sqrt(3) / 2;
            for (long row = (long) Math.floor(box.getY() / rise) - 1; row * rise <= box.getMaxY() + rise; row++) {
                double shift = row % 2 == 0 ? 0 : DOT_STEP / 2;
                for (long k = (long) Math.floor(box.getX() / DOT_STEP) - 1;
                        k * DOT_STEP <= box.getMaxX() + DOT_STEP;
                        k++) {
                    dots.append(new Ellipse2D.Double(k * DOT_STEP + shift, row * rise, DOT, DOT), false);
                }
            }
        }
        g.setColor(look.edge());
        g.fill(dots);
        g.setClip(old);
    }

    private static void point(Graphics2D g, double x, double y, BackdropLook look) {
        Rectangle2D square = new Rectangle2D.Double(x - SQUARE / 2, y - SQUARE / 2, SQUARE, SQUARE);
        g.setColor(look.fill().orElse(Color.WHITE));
        g.fill(square);
        g.setColor(look.edge());
        g.setStroke(new java.awt.BasicStroke(SQUARE_EDGE));
        g.draw(square);
    }

    private static Path2D outline(Polygon area) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.append(path(area.getExteriorRing()), false);
        for (int k = 0; k < area.getNumInteriorRing(); k++) {
            path.append(path(area.getInteriorRingN(k)), false);
        }
        return path;
    }

    private static Path2D path(LineString line) {
        return PageLine.of(line).path();
    }

    /** What is drawn within the view, two to a row, and how slopes are drawn. */
    void legend(Panel panel, GroundWords words) {
        List<Consumer<Rectangle2D>> samples = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (BackdropLayer layer : ground.layers()) {
            int dimension = dimensionInView(layer);
            String text = layer.look().kind() == BackdropLayer.Kind.OTHER
                    ? layer.title()
                    : words.kinds().get(layer.look().kind());
            boolean hasOwn = layer.look().style().isPresent();
            if (dimension >= 0 && !hasOwn && !texts.contains(text)) {
                BackdropLook look = BackdropLook.of(layer.look());
                samples.add(room -> sample(panel.graphics(), room, look, dimension));
                texts.add(text);
            }
        }
        if (!texts.isEmpty()) {
            panel.samples(samples, texts, LEGEND_SIZE);
        }
        ground.layers().stream()
                .filter(layer -> dimensionInView(layer) >= 0)
                .forEach(layer -> layer.look().style().ifPresent(style -> style.legend(panel, LEGEND_SIZE)));
        ground.relief()
                .ifPresent(relief -> panel.paragraph(
                        words.relief().replace("{0}", Surround.number(relief.exaggeration())), LEGEND_SIZE - 1));
    }

    private int dimensionInView(BackdropLayer layer) {
        return layer.items().stream()
                .filter(item -> frame.toPage(item.shape()).getEnvelopeInternal().intersects(PageBox.of(view)))
                .mapToInt(item -> item.shape().getDimension())
                .max()
                .orElse(-1);
    }

    private static void sample(Graphics2D g, Rectangle2D room, BackdropLook look, int dimension) {
        double middle = room.getCenterY();
        switch (dimension) {
            case 2 -> area(g, room, look);
            case 1 -> line(g, new Line2D.Double(room.getX(), middle, room.getMaxX(), middle), look);
            default -> point(g, room.getCenterX(), middle, look);
        }
    }
}
