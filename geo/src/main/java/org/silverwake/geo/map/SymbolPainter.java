// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.geotools.api.style.Displacement;
import org.geotools.api.style.Fill;
import org.geotools.api.style.Graphic;
import org.geotools.api.style.GraphicalSymbol;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.PointSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Stroke;
import org.geotools.api.style.Symbolizer;
import org.geotools.api.style.TextSymbolizer;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Draws one symbolizer over one geometry that is already on the page; units of styles are points. Line symbolizers may carry
 * a graphic stroke (marks along the line, evenly spaced and centred, turned with it) and a perpendicular offset. Texts are handed to
 * {@link LabelInk}. External graphics and raster symbolizers are not drawn.
 */
final class SymbolPainter {
    private final Graphics2D g;
    private final Ink ink;
    private final LabelInk labels;
    private final Pens pens = new Pens();

    SymbolPainter(Graphics2D g, LabelInk labels) {
        this.g = g;
        this.labels = labels;
        ink = new Ink(g);
    }

    /** Paints one thing. */
    void paint(Symbolizer symbolizer, Object feature, Geometry page) {
        paint(symbolizer, feature, PageShape.of(page));
        dry();
    }

    /** Paints one of many things, which are on the page after {@link #dry}. */
    void paint(Symbolizer symbolizer, Object feature, PageShape page) {
        if (symbolizer instanceof LineSymbolizer line
                && line.getStroke() != null
                && line.getStroke().getGraphicStroke() == null) {
            labels.avoid(page, feature);
        }
        for (int k = 0; k < page.parts(); k++) {
            if (symbolizer instanceof LineSymbolizer line) {
                if (line.getStroke() != null && page.isLine(k)) {
                    paintLine(line, feature, page.line(k));
                }
            } else if (!page.part(k).isEmpty()) {
                paintPart(symbolizer, feature, page.part(k));
            }
        }
    }

    /** Puts what was painted on the page. */
    void dry() {
        ink.dry();
    }

    private void paintPart(Symbolizer symbolizer, Object feature, Geometry part) {
        if (symbolizer instanceof PolygonSymbolizer polygon && part instanceof Polygon area) {
            paintShape(outline(area), polygon.getFill(), polygon.getStroke(), feature);
        } else if (symbolizer instanceof PointSymbolizer point && point.getGraphic() != null) {
            Point at = part.getInteriorPoint();
            double size = StyleValues.number(point.getGraphic().getSize(), feature, 6);
            double angle = Math.toRadians(StyleValues.number(point.getGraphic().getRotation(), feature, 0));
            Displacement off = point.getGraphic().getDisplacement();
            double x = at.getX() + (off == null ? 0 : StyleValues.number(off.getDisplacementX(), feature, 0));
            double y = at.getY() - (off == null ? 0 : StyleValues.number(off.getDisplacementY(), feature, 0));
            Part.draw(g, "symbol", () -> paintMarks(point.getGraphic(), feature, x, y, size, angle));
            labels.keepClear(bounds(point.getGraphic(), feature, x, y, size, angle), feature);
        } else if (symbolizer instanceof TextSymbolizer text) {
            labels.add(text, feature, part);
        }
    }

    private void paintLine(LineSymbolizer symbolizer, Object feature, PageLine whole) {
        double offset = StyleValues.number(symbolizer.getPerpendicularOffset(), feature, 0);
        PageLine line = offset == 0 ? whole : whole.shifted(offset);
        Stroke stroke = symbolizer.getStroke();
        if (!line.isSeen(visible())) {
            return;
        }
        if (stroke.getGraphicStroke() != null) {
            paintAlong(stroke.getGraphicStroke(), feature, line);
        } else {
            ink.draw(line, pens.color(stroke, feature), pens.stroke(stroke, feature));
        }
    }

    private Rectangle2D visible() {
        Rectangle2D clip = g.getClipBounds();
        return clip == null ? new Rectangle2D.Double(-1e6, -1e6, 2e6, 2e6) : clip;
    }

    private void paintAlong(Graphic graphic, Object feature, PageLine line) {
        double size = StyleValues.number(graphic.getSize(), feature, 6);
        double gap = StyleValues.number(graphic.getGap(), feature, size);
        double need = StyleValues.number(graphic.getInitialGap(), feature, 0) * 2 + size;
        double turn = Math.toRadians(StyleValues.number(graphic.getRotation(), feature, 0));
        if (line.length() < need) {
            return;
        }
        double step = size + gap;
        int count = Math.max(1, (int) Math.floor(line.length() / step));
        double start = (line.length() - (count - 1) * step) / 2;
        for (int k = 0; k < count; k++) {
            double[] p = line.at(start + k * step, size);
            paintMarks(graphic, feature, p[0], p[1], size, p[2] + turn);
        }
    }

    private void paintMarks(Graphic graphic, Object feature, double x, double y, double size, double angle) {
        for (GraphicalSymbol symbol : graphic.graphicalSymbols()) {
            if (symbol instanceof Mark mark) {
                String name = StyleValues.text(mark.getWellKnownName(), feature, "square");
                paintShape(Marks.at(name, x, y, size, angle), mark.getFill(), mark.getStroke(), feature);
            }
        }
    }

    /** What the marks of a symbol cover, half of their edges included. */
    private static Rectangle2D bounds(Graphic graphic, Object feature, double x, double y, double size, double angle) {
        Rectangle2D bounds = null;
        for (GraphicalSymbol symbol : graphic.graphicalSymbols()) {
            if (symbol instanceof Mark mark) {
                String name = StyleValues.text(mark.getWellKnownName(), feature, "square");
                double edge = mark.getStroke() == null
                        ? 0
                        : StyleValues.number(mark.getStroke().getWidth(), feature, 1) / 2;
                Rectangle2D shape = Marks.at(name, x, y, size, angle).getBounds2D();
                shape.setFrame(
                        shape.getX() - edge,
                        shape.getY() - edge,
                        shape.getWidth() + 2 * edge,
                        shape.getHeight() + 2 * edge);
                bounds = bounds == null ? shape : bounds.createUnion(shape);
            }
        }
        return bounds == null ? new Rectangle2D.Double(x - size / 2, y - size / 2, size, size) : bounds;
    }

    private void paintShape(Shape shape, Fill fill, Stroke stroke, Object feature) {
        if (fill != null) {
            ink.fill(shape, pens.color(fill, feature));
        }
        if (stroke != null) {
            ink.draw(shape, pens.color(stroke, feature), pens.stroke(stroke, feature));
        }
    }

    private static Path2D outline(Polygon area) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.append(PageLine.of(area.getExteriorRing()).path(), false);
        for (int k = 0; k < area.getNumInteriorRing(); k++) {
            path.append(PageLine.of(area.getInteriorRingN(k)).path(), false);
        }
        return path;
    }
}
