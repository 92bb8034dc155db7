// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapPoint;

/**
 * A {@link PhoneMap} as KML 2.2 (OGC 07-147r2): a folder for each class that occurs, one for places, the legend over the screen. Coordinates have
 * six decimals, about a decimeter. Nothing in it asks the network. Elements stand in the order that the standard's schema asks for.
 */
final class KmlDocument {
    static final String NAMESPACE = "http://www.opengis.net/kml/2.2";
    static final String LEGEND = "legend.png";

    private final PhoneMap phone;
    private final XMLStreamWriter xml;
    private final List<List<Coordinate>> lines;

    private KmlDocument(RiverMap map, PhoneMap phone, XMLStreamWriter xml) {
        this.phone = phone;
        this.xml = xml;
        lines = PhoneLines.of(
                map, phone.stretches().stream().map(PhoneMap.Stretch::reaches).toList());
    }

    /** The file, in UTF-8. */
    static byte[] bytes(RiverMap map, PhoneMap phone) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
            new KmlDocument(map, phone, xml).write();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("the Java in use cannot write XML", e);
        }
        return out.toByteArray();
    }

    /** Where the picture of a kind of point is. */
    static String icon(MapPoint.Kind kind) {
        return "icons/" + key(kind) + ".png";
    }

    private static String key(MapPoint.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Kinds of points that occur. */
    static Set<MapPoint.Kind> kinds(PhoneMap phone) {
        Set<MapPoint.Kind> kinds = new TreeSet<>();
        phone.places().forEach(place -> kinds.add(place.kind()));
        return kinds;
    }

    private void write() throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeStartElement("kml");
        xml.writeDefaultNamespace(NAMESPACE);
        begin("Document");
        element("name", phone.title());
        element("open", "1");
        html(KmlText.about(phone));
        for (LineClass look : phone.classes()) {
            style(look);
        }
        for (MapPoint.Kind kind : kinds(phone)) {
            style(kind);
        }
        legend();
        for (int k = 0; k < phone.classes().size(); k++) {
            folder(k);
        }
        places();
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void style(LineClass look) throws XMLStreamException {
        begin("Style");
        xml.writeAttribute("id", look.key());
        xml.writeStartElement("LineStyle");
        element("color", KmlText.color(look.color()));
        element("width", String.valueOf(look.width()));
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void style(MapPoint.Kind kind) throws XMLStreamException {
        begin("Style");
        xml.writeAttribute("id", key(kind));
        xml.writeStartElement("IconStyle");
        element("scale", "0.8");
        xml.writeStartElement("Icon");
        element("href", icon(kind));
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndElement();
    }

    /** In the lower left corner, a third of the screen high; it can be switched off. */
    private void legend() throws XMLStreamException {
        begin("ScreenOverlay");
        element("name", phone.legendTitle());
        xml.writeStartElement("Icon");
        element("href", LEGEND);
        xml.writeEndElement();
        spot("overlayXY", "0", "0", "fraction");
        spot("screenXY", "0.02", "0.04", "fraction");
        spot("size", "0", "0.36", "fraction");
        xml.writeEndElement();
    }

    private void spot(String name, String x, String y, String units) throws XMLStreamException {
        xml.writeEmptyElement(name);
        xml.writeAttribute("x", x);
        xml.writeAttribute("y", y);
        xml.writeAttribute("xunits", units);
        xml.writeAttribute("yunits", units);
    }

    private void folder(int lineClass) throws XMLStreamException {
        LineClass look = phone.classes().get(lineClass);
        int[] own = IntStream.range(0, phone.stretches().size())
                .filter(k -> phone.stretches().get(k).lineClass() == lineClass)
                .toArray();
        if (own.length == 0) {
            return;
        }
        begin("Folder");
        element("name", look.legend());
        for (int k : own) {
            PhoneMap.Stretch stretch = phone.stretches().get(k);
            begin("Placemark");
            element("name", stretch.name());
            snippet(look.legend());
            html(KmlText.table(stretch.facts(), stretch.remarks()));
            element("styleUrl", "#" + look.key());
            xml.writeStartElement("LineString");
            element("tessellate", "1");
            element("coordinates", coordinates(lines.get(k)));
            xml.writeEndElement();
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private void places() throws XMLStreamException {
        if (phone.places().isEmpty()) {
            return;
        }
        begin("Folder");
        element("name", phone.placesTitle());
        for (PhoneMap.Place place : phone.places()) {
            MapPoint at = place.point();
            begin("Placemark");
            element("name", at.label());
            snippet(place.kindWords());
            html(KmlText.table(place.facts(), place.remarks()));
            element("styleUrl", "#" + key(at.kind()));
            xml.writeStartElement("Point");
            element("coordinates", coordinates(List.of(new Coordinate(at.longitude(), at.latitude()))));
            xml.writeEndElement();
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private static String coordinates(List<Coordinate> line) {
        StringBuilder text = new StringBuilder();
        for (Coordinate at : line) {
            text.append(text.isEmpty() ? "" : " ").append(String.format(Locale.ROOT, "%.6f,%.6f", at.x, at.y));
        }
        return text.toString();
    }

    private void begin(String name) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeStartElement(name);
    }

    private void element(String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void snippet(String text) throws XMLStreamException {
        xml.writeStartElement("Snippet");
        xml.writeAttribute("maxLines", "1");
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void html(String html) throws XMLStreamException {
        xml.writeStartElement("description");
        // no ]]> can be in it: every > of a text is escaped, and those of tags follow letters, quotes or slashes
        xml.writeCData(html);
        xml.writeEndElement();
    }
}
