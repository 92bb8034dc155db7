// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;
import org.geotools.api.style.Symbolizer;
import org.geotools.api.style.TextSymbolizer;

/** A style file of the user's own for reaches or for a layer under them, in SLD 1.0 or SE 1.1. */
public final class OwnStyle {
    private final String name;
    private final SldReader.Read read;

    private OwnStyle(String name, SldReader.Read read) {
        this.name = name;
        this.read = read;
    }

    /**
     * Reads a style.
     *
     * @throws org.silverwake.geo.GeoDataException with one line for each place that cannot be used
     */
    public static OwnStyle read(Path file) {
        return new OwnStyle(file.getFileName().toString(), SldReader.read(file));
    }

    /** The file's name. */
    public String name() {
        return name;
    }

    /** Columns the style asks for that are not among these, sorted. */
    public List<String> unknown(List<String> columns) {
        return read.properties().stream()
                .filter(property -> !columns.contains(property))
                .toList();
    }

    /** Whether it writes texts. */
    public boolean hasTexts() {
        return rules().anyMatch(rule -> rule.symbolizers().stream().anyMatch(TextSymbolizer.class::isInstance));
    }

    private Stream<Rule> rules() {
        return style().featureTypeStyles().stream().flatMap(pass -> pass.rules().stream());
    }

    /** A row for each rule with a title, in the order of the file. */
    void legend(Panel panel, double size) {
        for (Rule rule : titled()) {
            List<Symbolizer> looks = rule.symbolizers().stream()
                    .filter(symbolizer -> !(symbolizer instanceof TextSymbolizer))
                    .toList();
            String title = rule.getDescription().getTitle().toString();
            if (looks.stream().anyMatch(PolygonSymbolizer.class::isInstance)) {
                panel.area(looks, title, size);
            } else if (looks.stream().anyMatch(LineSymbolizer.class::isInstance)) {
                panel.line(looks, title, size);
            } else {
                panel.point(looks, title, size);
            }
        }
    }

    Style style() {
        return read.style();
    }

    /** Rules with a title, in the order of the file: what a legend can tell. */
    List<Rule> titled() {
        return rules().filter(rule ->
                        rule.getDescription() != null && rule.getDescription().getTitle() != null)
                .toList();
    }
}
