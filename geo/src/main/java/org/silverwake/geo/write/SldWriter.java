// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;
import java.util.stream.Collectors;
import org.silverwake.geo.map.LineClass;

/** Writes a style of line classes as SLD 1.0.0 (OGC 02-070), one rule per class with the lines that maps draw it by, by hand: the library's writer is not to be had. */
final class SldWriter {
    private SldWriter() {}

    static String lines(String layer, ReachStyle style) {
        StringBuilder sld = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<StyledLayerDescriptor version=\"1.0.0\" xmlns=\"http://www.opengis.net/sld\""
                + " xmlns:ogc=\"http://www.opengis.net/ogc\">\n"
                + "<NamedLayer><Name>" + escape(layer) + "</Name><UserStyle><Name>" + escape(style.name())
                + "</Name><FeatureTypeStyle>\n");
        // The first class of the legend comes last, so that it is drawn on top.
        List<LineClass> classes = style.classes();
        for (int k = classes.size() - 1; k >= 0; k--) {
            sld.append(rule(style.column(), classes.get(k)));
        }
        return sld.append("</FeatureTypeStyle></UserStyle></NamedLayer>\n</StyledLayerDescriptor>\n")
                .toString();
    }

    private static String rule(String column, LineClass look) {
        String lines = look.strokes().stream()
                .map(stroke -> line(look.color(), stroke))
                .collect(Collectors.joining());
        return "<Rule><Name>" + escape(look.key()) + "</Name><Title>" + escape(look.legend()) + "</Title>"
                + "<ogc:Filter><ogc:PropertyIsEqualTo><ogc:PropertyName>" + escape(column) + "</ogc:PropertyName>"
                + "<ogc:Literal>" + escape(look.key()) + "</ogc:Literal></ogc:PropertyIsEqualTo></ogc:Filter>"
                + lines + "</Rule>\n";
    }

    private static String line(String color, LineClass.Stroke stroke) {
        String dash = stroke.dash().isEmpty()
                ? ""
                : parameter(
                        "stroke-dasharray",
                        stroke.dash().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        return "<LineSymbolizer><Stroke>" + parameter("stroke", color)
                + parameter("stroke-width", String.valueOf(stroke.width()))
                + parameter("stroke-linejoin", "round") + parameter("stroke-linecap", stroke.cap()) + dash
                + "</Stroke></LineSymbolizer>";
    }

    private static String parameter(String name, String value) {
        return "<CssParameter name=\"" + name + "\">" + value + "</CssParameter>";
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
