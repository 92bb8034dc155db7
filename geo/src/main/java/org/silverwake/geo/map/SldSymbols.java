// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.style.Displacement;
import org.geotools.api.style.Fill;
import org.geotools.api.style.Graphic;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.PointSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Stroke;
import org.geotools.api.style.StyleFactory;
import org.geotools.api.style.TextSymbolizer;
import org.geotools.styling.StyleFactoryImpl;
import org.w3c.dom.Element;

/** The symbols of a style file. Defaults are those of SLD 1.0 (OGC 02-070, section 11; from memory). */
final class SldSymbols {
    private static final StyleFactory STYLES = new StyleFactoryImpl();
    private static final Set<String> STROKE = Set.of(
            "stroke",
            "stroke-width",
            "stroke-opacity",
            "stroke-linecap",
            "stroke-linejoin",
            "stroke-dasharray",
            "stroke-dashoffset");
    private static final Set<String> FILL = Set.of("fill", "fill-opacity");
    private static final Set<String> FONT = Set.of("font-family", "font-style", "font-weight", "font-size");
    private static final Set<String> MARKS = Set.of("square", "circle", "triangle", "star", "cross", "x");

    private final SldDocument document;
    private final SldValues values;

    SldSymbols(SldDocument document) {
        this.document = document;
        this.values = new SldValues(document);
    }

    LineSymbolizer line(Element element) {
        checkUnit(element);
        LineSymbolizer line = STYLES.createLineSymbolizer();
        line.setStroke(SldDocument.child(element, "Stroke").map(this::stroke).orElseGet(STYLES::getDefaultStroke));
        values.number(element, "PerpendicularOffset").ifPresent(line::setPerpendicularOffset);
        return line;
    }

    PolygonSymbolizer area(Element element) {
        checkUnit(element);
        PolygonSymbolizer area = STYLES.createPolygonSymbolizer();
        area.setFill(SldDocument.child(element, "Fill").map(this::fill).orElse(null));
        area.setStroke(SldDocument.child(element, "Stroke").map(this::stroke).orElse(null));
        return area;
    }

    PointSymbolizer point(Element element) {
        checkUnit(element);
        PointSymbolizer point = STYLES.createPointSymbolizer();
        SldDocument.child(element, "Graphic").ifPresent(graphic -> point.setGraphic(graphic(graphic)));
        return point;
    }

    TextSymbolizer text(Element element) {
        checkUnit(element);
        TextSymbolizer text = STYLES.createTextSymbolizer();
        values.value(element, "Label").ifPresent(text::setLabel);
        SldDocument.child(element, "Font").ifPresent(font -> {
            Map<String, Expression> of = values.parameters(font, FONT);
            text.fonts().clear();
            text.fonts()
                    .add(STYLES.createFont(
                            of.getOrDefault("font-family", SldValues.literal("DejaVu Sans")),
                            of.getOrDefault("font-style", SldValues.literal("normal")),
                            of.getOrDefault("font-weight", SldValues.literal("normal")),
                            of.getOrDefault("font-size", SldValues.literal(10))));
        });
        SldDocument.child(element, "Halo")
                .ifPresent(halo -> text.setHalo(STYLES.createHalo(
                        SldDocument.child(halo, "Fill")
                                .map(this::fill)
                                .orElseGet(() -> STYLES.createFill(SldValues.literal("#ffffff"))),
                        values.number(halo, "Radius").orElse(SldValues.literal(1)))));
        text.setFill(SldDocument.child(element, "Fill")
                .map(this::fill)
                .orElseGet(() -> STYLES.createFill(SldValues.literal("#000000"))));
        boolean ofLine = SldDocument.child(element, "LabelPlacement")
                .flatMap(placement -> SldDocument.child(placement, "LinePlacement"))
                .isPresent();
        text.setLabelPlacement(ofLine ? Symbols.besideLine() : Symbols.besidePoint());
        return text;
    }

    private Stroke stroke(Element element) {
        Map<String, Expression> of = values.parameters(element, STROKE);
        Stroke stroke = STYLES.createStroke(
                of.getOrDefault("stroke", SldValues.literal("#000000")),
                of.getOrDefault("stroke-width", SldValues.literal(1)),
                of.getOrDefault("stroke-opacity", SldValues.literal(1)));
        Optional.ofNullable(of.get("stroke-linecap")).ifPresent(stroke::setLineCap);
        Optional.ofNullable(of.get("stroke-linejoin")).ifPresent(stroke::setLineJoin);
        Optional.ofNullable(of.get("stroke-dashoffset")).ifPresent(stroke::setDashOffset);
        Optional.ofNullable(of.get("stroke-dasharray"))
                .ifPresent(dash -> stroke.setDashArray(dash(element, dash.evaluate(null, String.class))));
        SldDocument.child(element, "GraphicStroke")
                .flatMap(graphic -> SldDocument.child(graphic, "Graphic").map(inner -> {
                    Graphic along = graphic(inner);
                    values.number(graphic, "Gap").ifPresent(along::setGap);
                    values.number(graphic, "InitialGap").ifPresent(along::setInitialGap);
                    return along;
                }))
                .ifPresent(stroke::setGraphicStroke);
        refuse(element, "GraphicFill", "give a plain stroke or a GraphicStroke");
        return stroke;
    }

    private float[] dash(Element where, String text) {
        String[] parts = text.strip().split("[\\s,]+");
        float[] lengths = new float[parts.length];
        try {
            for (int k = 0; k < parts.length; k++) {
                lengths[k] = Float.parseFloat(parts[k]);
            }
            boolean positive = Arrays.stream(parts)
                            .mapToDouble(Double::parseDouble)
                            .allMatch(v -> v >= 0)
                    && Arrays.stream(parts).mapToDouble(Double::parseDouble).sum() > 0;
            if (positive) {
                return lengths;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        document.problem(
                where,
                "stroke-dasharray \"" + text.strip() + "\" is no list of lengths; give dash and gap, such as 6 3");
        return new float[0];
    }

    private Fill fill(Element element) {
        Map<String, Expression> of = values.parameters(element, FILL);
        refuse(element, "GraphicFill", "give a plain color");
        return STYLES.createFill(
                of.getOrDefault("fill", SldValues.literal("#808080")),
                of.getOrDefault("fill-opacity", SldValues.literal(1)));
    }

    private Graphic graphic(Element element) {
        refuse(element, "ExternalGraphic", "give a Mark");
        Graphic graphic = STYLES.createDefaultGraphic();
        graphic.graphicalSymbols().clear();
        SldDocument.children(element, "Mark")
                .forEach(mark -> graphic.graphicalSymbols().add(mark(mark)));
        graphic.setSize(values.number(element, "Size").orElse(SldValues.literal(6)));
        values.number(element, "Rotation").ifPresent(graphic::setRotation);
        SldDocument.child(element, "Displacement").ifPresent(by -> graphic.setDisplacement(displacement(by)));
        return graphic;
    }

    private Displacement displacement(Element by) {
        return STYLES.createDisplacement(
                values.number(by, "DisplacementX").orElse(SldValues.literal(0)),
                values.number(by, "DisplacementY").orElse(SldValues.literal(0)));
    }

    private Mark mark(Element element) {
        Mark mark = STYLES.createMark();
        String name = SldDocument.text(element, "WellKnownName").orElse("square");
        if (!MARKS.contains(name)) {
            document.problem(
                    element,
                    "mark \"" + name + "\" is not drawn; give "
                            + String.join(", ", MARKS.stream().sorted().toList()));
        }
        mark.setWellKnownName(SldValues.literal(name));
        mark.setFill(SldDocument.child(element, "Fill").map(this::fill).orElse(null));
        mark.setStroke(SldDocument.child(element, "Stroke").map(this::stroke).orElse(null));
        return mark;
    }

    /** Lengths on the ground would need the map's scale. */
    private void checkUnit(Element element) {
        String unit = element.getAttribute("uom");
        if (!unit.isEmpty() && !unit.endsWith("/pixel")) {
            document.problem(element, "uom \"" + unit + "\" is not drawn; leave it away or give the pixel of SE 1.1");
        }
    }

    private void refuse(Element element, String name, String remedy) {
        SldDocument.child(element, name).ifPresent(found -> document.problem(found, name + " is not drawn; " + remedy));
    }
}
