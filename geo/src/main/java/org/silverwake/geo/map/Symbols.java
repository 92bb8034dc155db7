// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import org.geotools.api.filter.Filter;
import org.geotools.api.filter.FilterFactory;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.style.FeatureTypeStyle;
import org.geotools.api.style.Fill;
import org.geotools.api.style.Font;
import org.geotools.api.style.Graphic;
import org.geotools.api.style.Halo;
import org.geotools.api.style.LabelPlacement;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.PointSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Stroke;
import org.geotools.api.style.Style;
import org.geotools.api.style.StyleFactory;
import org.geotools.api.style.Symbolizer;
import org.geotools.api.style.TextSymbolizer;
import org.geotools.filter.FilterFactoryImpl;
import org.geotools.styling.StyleFactoryImpl;

/** Short ways to build styles. Colors as #rrggbb, lengths in points. The factories are made directly: their search costs time. */
final class Symbols {
    private static final FilterFactory FILTERS = new FilterFactoryImpl();
    private static final StyleFactory STYLES = new StyleFactoryImpl();

    private Symbols() {}

    static Style style(FeatureTypeStyle... passes) {
        Style style = STYLES.createStyle();
        style.featureTypeStyles().addAll(List.of(passes));
        return style;
    }

    static FeatureTypeStyle pass(Rule... rules) {
        return STYLES.createFeatureTypeStyle(rules);
    }

    static Rule rule(Filter filter, Symbolizer... symbolizers) {
        Rule rule = STYLES.createRule();
        rule.setFilter(filter);
        rule.symbolizers().addAll(List.of(symbolizers));
        return rule;
    }

    static Filter equal(String property, Object value) {
        return FILTERS.equals(FILTERS.property(property), literal(value));
    }

    static LineSymbolizer line(String color, double width, List<Double> dash, String cap) {
        Stroke stroke = stroke(color, width);
        stroke.setLineCap(literal(cap));
        stroke.setLineJoin(literal("round"));
        if (!dash.isEmpty()) {
            float[] lengths = new float[dash.size()];
            for (int k = 0; k < lengths.length; k++) {
                lengths[k] = dash.get(k).floatValue();
            }
            stroke.setDashArray(lengths);
        }
        LineSymbolizer line = STYLES.createLineSymbolizer();
        line.setStroke(stroke);
        return line;
    }

    static LineSymbolizer shifted(LineSymbolizer line, double offset) {
        line.setPerpendicularOffset(literal(offset));
        return line;
    }

    /** Marks along a line, none on lines too short to have {@code margin} free at both ends. */
    static LineSymbolizer along(Mark mark, double size, double gap, double margin) {
        Graphic graphic = graphic(mark, size);
        graphic.setGap(literal(gap));
        graphic.setInitialGap(literal(margin));
        Stroke stroke = stroke("#000000", 1);
        stroke.setGraphicStroke(graphic);
        LineSymbolizer line = STYLES.createLineSymbolizer();
        line.setStroke(stroke);
        return line;
    }

    /** An area filled with a color of some opacity [0 to 1], with an edge. */
    static PolygonSymbolizer area(String fill, double opacity, String edge, double edgeWidth) {
        PolygonSymbolizer area = STYLES.createPolygonSymbolizer();
        area.setFill(STYLES.createFill(literal(fill), literal(opacity)));
        area.setStroke(stroke(edge, edgeWidth));
        return area;
    }

    static PointSymbolizer point(Mark mark, double size) {
        PointSymbolizer point = STYLES.createPointSymbolizer();
        point.setGraphic(graphic(mark, size));
        return point;
    }

    /** A mark that stands above its point by so many of its sizes as a property says. */
    static PointSymbolizer raised(Mark mark, double size, String property) {
        PointSymbolizer point = point(mark, size);
        Expression up = FILTERS.multiply(FILTERS.property(property), literal(size));
        point.getGraphic().setDisplacement(STYLES.createDisplacement(literal(0), up));
        return point;
    }

    /** A mark that stands above its point by a length. */
    static PointSymbolizer raised(Mark mark, double size, double up) {
        PointSymbolizer point = point(mark, size);
        point.getGraphic().setDisplacement(STYLES.createDisplacement(literal(0), literal(up)));
        return point;
    }

    /** A mark; null for no fill or no edge. */
    static Mark mark(String name, String fill, String edge, double edgeWidth) {
        Mark mark = STYLES.createMark();
        mark.setWellKnownName(literal(name));
        mark.setFill(fill == null ? null : fill(fill));
        mark.setStroke(edge == null ? null : stroke(edge, edgeWidth));
        return mark;
    }

    /** A mark whose fill is the color in a property. */
    static Mark markOf(String name, String property, String edge, double edgeWidth) {
        Mark mark = mark(name, null, edge, edgeWidth);
        mark.setFill(STYLES.createFill(FILTERS.property(property), literal(1)));
        return mark;
    }

    static TextSymbolizer text(String property, Letters letters, String color, LabelPlacement placement) {
        Font font = STYLES.createFont(
                literal("DejaVu Sans"), literal(letters.style()), literal(letters.weight()), literal(letters.size()));
        Halo halo = STYLES.createHalo(fill("#ffffff"), literal(1.6));
        TextSymbolizer text = STYLES.createTextSymbolizer();
        text.setLabel(FILTERS.property(property));
        text.setFont(font);
        text.setFill(fill(color));
        text.setHalo(halo);
        text.setLabelPlacement(placement);
        text.setPriority(FILTERS.property("priority"));
        return text;
    }

    /** How text is set. */
    record Letters(double size, String weight, String style) {}

    static LabelPlacement besidePoint() {
        return STYLES.createPointPlacement(
                STYLES.createAnchorPoint(literal(0), literal(0.5)),
                STYLES.createDisplacement(literal(0), literal(0)),
                literal(0));
    }

    static LabelPlacement besideLine() {
        return STYLES.createLinePlacement(literal(0));
    }

    private static Graphic graphic(Mark mark, double size) {
        Graphic graphic = STYLES.createDefaultGraphic();
        graphic.graphicalSymbols().clear();
        graphic.graphicalSymbols().add(mark);
        graphic.setSize(literal(size));
        return graphic;
    }

    private static Stroke stroke(String color, double width) {
        return STYLES.createStroke(literal(color), literal(width), literal(1));
    }

    private static Fill fill(String color) {
        return STYLES.createFill(literal(color), literal(1));
    }

    private static Expression literal(Object value) {
        return FILTERS.literal(value);
    }
}
