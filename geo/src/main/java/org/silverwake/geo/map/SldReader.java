// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.geotools.api.style.FeatureTypeStyle;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;
import org.geotools.api.style.StyleFactory;
import org.geotools.api.style.Symbolizer;
import org.geotools.filter.FilterDOMParser;
import org.geotools.styling.StyleFactoryImpl;
import org.geotools.util.SimpleInternationalString;
import org.w3c.dom.Element;

/**
 * Reads styles of SLD 1.0 (OGC 02-070) and SE 1.1 (OGC 05-077r4, alone or in SLD 1.1): rules with filters and scales; symbols of lines, areas,
 * points and texts. Lengths are points of the page, one for each pixel of the standards. What cannot be drawn is no silent gap: all
 * such places are told together, with their lines.
 */
final class SldReader {
    private static final StyleFactory STYLES = new StyleFactoryImpl();
    private static final Set<String> OF_RULES = Set.of(
            "Name",
            "Title",
            "Abstract",
            "Description",
            "LegendGraphic",
            "Filter",
            "ElseFilter",
            "MinScaleDenominator",
            "MaxScaleDenominator");

    private final SldDocument document;
    private final SldSymbols symbols;

    private SldReader(SldDocument document) {
        this.document = document;
        this.symbols = new SldSymbols(document);
    }

    /**
     * Reads all styles of a file as one: the passes of each after those of the one before.
     *
     * @throws org.silverwake.geo.GeoDataException with one line for each problem
     */
    static Read read(Path file) {
        SldDocument document = SldDocument.read(file);
        SldReader reader = new SldReader(document);
        List<Element> passes = new ArrayList<>();
        gather(document.root(), passes);
        if (passes.isEmpty()) {
            document.problem(document.root(), "no FeatureTypeStyle in it; give an SLD 1.0 or SE 1.1 file");
        }
        Style style = STYLES.createStyle();
        passes.forEach(pass -> style.featureTypeStyles().add(reader.pass(pass)));
        document.requireNoProblems();
        Set<String> properties = new TreeSet<>();
        passes.forEach(pass -> properties(pass, properties));
        return new Read(style, properties);
    }

    /** What a file says, and the properties it asks for, geometries apart. */
    record Read(Style style, Set<String> properties) {}

    private static void properties(Element element, Set<String> properties) {
        if (element.getLocalName().equals("PropertyName")) {
            properties.add(element.getTextContent().strip());
        } else if (!element.getLocalName().equals("Geometry")) {
            SldDocument.children(element).forEach(child -> properties(child, properties));
        }
    }

    private static void gather(Element element, List<Element> passes) {
        if (element.getLocalName().equals("FeatureTypeStyle")) {
            passes.add(element);
        } else {
            SldDocument.children(element).forEach(child -> gather(child, passes));
        }
    }

    private FeatureTypeStyle pass(Element element) {
        return STYLES.createFeatureTypeStyle(
                SldDocument.children(element, "Rule").stream().map(this::rule).toArray(Rule[]::new));
    }

    private Rule rule(Element element) {
        Rule rule = STYLES.createRule();
        SldDocument.text(element, "Name").ifPresent(rule::setName);
        Element words = SldDocument.child(element, "Description").orElse(element);
        Optional<String> title = SldDocument.text(words, "Title");
        Optional<String> more = SldDocument.text(words, "Abstract");
        rule.setDescription(STYLES.description(
                title.map(SimpleInternationalString::new).orElse(null),
                more.map(SimpleInternationalString::new).orElse(null)));
        SldDocument.child(element, "Filter").ifPresent(filter -> filter(filter, rule));
        rule.setElseFilter(SldDocument.child(element, "ElseFilter").isPresent());
        SldDocument.child(element, "MinScaleDenominator").ifPresent(e -> rule.setMinScaleDenominator(scale(e)));
        SldDocument.child(element, "MaxScaleDenominator").ifPresent(e -> rule.setMaxScaleDenominator(scale(e)));
        for (Element child : SldDocument.children(element)) {
            symbolizer(child).ifPresent(rule.symbolizers()::add);
        }
        return rule;
    }

    private Optional<Symbolizer> symbolizer(Element element) {
        String name = element.getLocalName();
        return switch (name) {
            case "LineSymbolizer" -> Optional.of(symbols.line(element));
            case "PolygonSymbolizer" -> Optional.of(symbols.area(element));
            case "PointSymbolizer" -> Optional.of(symbols.point(element));
            case "TextSymbolizer" -> Optional.of(symbols.text(element));
            default -> {
                if (!OF_RULES.contains(name)) {
                    document.problem(
                            element,
                            name + " is not drawn; give LineSymbolizer, PolygonSymbolizer, PointSymbolizer or"
                                    + " TextSymbolizer");
                }
                yield Optional.empty();
            }
        };
    }

    private void filter(Element element, Rule rule) {
        List<Element> inside = SldDocument.children(element);
        try {
            rule.setFilter(inside.size() == 1 ? FilterDOMParser.parseFilter(inside.get(0)) : null);
        } catch (RuntimeException e) {
            rule.setFilter(null);
        }
        if (rule.getFilter() == null) {
            document.problem(
                    element, "this Filter cannot be used; give one comparison, or one And, Or or Not, of OGC filters");
        }
    }

    private double scale(Element element) {
        try {
            double scale = Double.parseDouble(element.getTextContent().strip());
            if (scale >= 0) {
                return scale;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        document.problem(
                element,
                element.getLocalName() + " \"" + element.getTextContent().strip()
                        + "\" is no scale; give a number such as 50000 for 1 : 50,000");
        return 0;
    }
}
