// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;
import java.util.Locale;

/** Parts of a KML file that are texts of their own: colors, and descriptions in HTML as viewers show them in a balloon. */
final class KmlText {
    private KmlText() {}

    /**
     * A color as KML writes it: opacity, blue, green, red (OGC 07-147r2, kml:color).
     *
     * @param color as #rrggbb
     */
    static String color(String color) {
        return "ff" + color.substring(5, 7) + color.substring(3, 5) + color.substring(1, 3);
    }

    /** Bands, legend and what is said of the map. */
    static String about(PhoneMap map) {
        StringBuilder html = new StringBuilder();
        map.bands().forEach(band -> html.append("<p><b>").append(escape(band)).append("</b></p>"));
        html.append("<p><b>").append(escape(map.legendTitle())).append("</b><br/>");
        map.classes()
                .forEach(look -> html.append(String.format(
                        Locale.ROOT,
                        "<font color=\"%s\">&#9644;&#9644;</font> %s<br/>",
                        look.color(),
                        escape(look.legend()))));
        html.append("</p>");
        for (PhoneMap.Section section : map.about()) {
            html.append("<p>");
            if (!section.heading().isEmpty()) {
                html.append("<b>").append(escape(section.heading())).append("</b><br/>");
            }
            section.lines().forEach(line -> html.append(escape(line)).append("<br/>"));
            html.append("</p>");
        }
        return html.toString();
    }

    /** A table, with remarks below. */
    static String table(List<PhoneMap.Fact> facts, List<String> remarks) {
        StringBuilder html = new StringBuilder("<table>");
        facts.forEach(fact -> html.append("<tr><td>")
                .append(escape(fact.label()))
                .append("</td><td><b>")
                .append(escape(fact.text()))
                .append("</b></td></tr>"));
        html.append("</table>");
        remarks.forEach(remark -> html.append("<p>").append(escape(remark)).append("</p>"));
        return html.toString();
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
