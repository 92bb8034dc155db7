// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.nio.file.Path;
import java.util.List;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;

/** A style file of the user's own for reaches, in SLD 1.0 or SE 1.1. */
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

    Style style() {
        return read.style();
    }

    /** Rules with a title, in the order of the file: what a legend can tell. */
    List<Rule> titled() {
        return style().featureTypeStyles().stream()
                .flatMap(pass -> pass.rules().stream())
                .filter(rule ->
                        rule.getDescription() != null && rule.getDescription().getTitle() != null)
                .toList();
    }
}
