// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Ground;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.ReachShade;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

class KmzWriterTest {
    /** PRINTED: half of the sixth decimal. */
    private static final double PRINTED = 5.001e-7;

    /**
     * Which elements may stand in which, in this order: ogckml22.xsd of OGC 07-147r2, as far as the writer uses it, from memory; a name
     * with * may stand there any number of times.
     */
    private static final Map<String, List<String>> SCHEMA = Map.ofEntries(
            Map.entry("kml", List.of("Document")),
            Map.entry(
                    "Document",
                    List.of(
                            "name",
                            "visibility",
                            "open",
                            "Snippet",
                            "description",
                            "Style*",
                            "ScreenOverlay*",
                            "Folder*")),
            Map.entry("Style", List.of("IconStyle", "LabelStyle", "LineStyle", "PolyStyle", "BalloonStyle")),
            Map.entry("LineStyle", List.of("color", "colorMode", "width")),
            Map.entry("IconStyle", List.of("color", "colorMode", "scale", "heading", "Icon", "hotSpot")),
            Map.entry("Icon", List.of("href")),
            Map.entry(
                    "ScreenOverlay",
                    List.of(
                            "name",
                            "visibility",
                            "Snippet",
                            "description",
                            "color",
                            "drawOrder",
                            "Icon",
                            "overlayXY",
                            "screenXY",
                            "rotationXY",
                            "size",
                            "rotation")),
            Map.entry("Folder", List.of("name", "visibility", "open", "Snippet", "description", "Placemark*")),
            Map.entry(
                    "Placemark",
                    List.of("name", "visibility", "open", "Snippet", "description", "styleUrl", "LineString", "Point")),
            Map.entry("LineString", List.of("extrude", "tessellate", "altitudeMode", "coordinates")),
            Map.entry("Point", List.of("extrude", "altitudeMode", "coordinates")));

    @TempDir
    private Path folder;

    /** Three reaches across the antimeridian, the second of which begins at a cut. */
    private static RiverMap map() {
        return new RiverMap(
                List.of(
                        reach(0, 179.97, -17.001, 179.98, -17.0, 179.985, -17.0, 179.99, -17.0),
                        reach(1, 179.99, -17.0, 179.995, -17.00005, 180.02, -17.03),
                        reach(2, 180.02, -17.03, 180.03, -17.03)),
                4,
                List.of());
    }

    private static RiverMap.Reach reach(int number, double... lonLat) {
        Coordinate[] points = new Coordinate[lonLat.length / 2];
        for (int k = 0; k < points.length; k++) {
            points[k] = new Coordinate(lonLat[2 * k], lonLat[2 * k + 1]);
        }
        return new RiverMap.Reach(
                "R" + number,
                new ReachPart("R" + number, number, 0, 0, 1000, false),
                number,
                number + 1,
                1000,
                new GeometryFactory().createLineString(points),
                Optional.empty(),
                Map.of(),
                Map.of());
    }

    private static PhoneMap phone(MapPoint.Kind kind, String... bands) {
        LineClass above = ReachShade.ABOVE.withLegend("Above & far <5 times>");
        LineClass below = ReachShade.BELOW.withLegend("Below");
        LineClass none = ReachShade.NOT_ASSESSED.withLegend("Not assessed");
        return new PhoneMap(
                "Lantern River",
                List.of(bands),
                "This is a screening.",
                "Estimate for river water:",
                List.of(above, below, none),
                List.of(
                        new PhoneMap.Stretch(
                                "Upper & \"middle\" ]]> river",
                                0,
                                List.of(0, 1),
                                List.of(new PhoneMap.Fact("Estimate", "1 < 2 µg/L")),
                                List.of("A remark.")),
                        new PhoneMap.Stretch("Lower river", 1, List.of(2), List.of(), List.of())),
                "Places",
                List.of(new PhoneMap.Place(
                        new MapPoint(kind, "Ljóskelda", 180.02, -17.03), "Village", List.of(), List.of())),
                List.of(new PhoneMap.Section("Before you use this map", List.of("This is a screening."))));
    }

    private Path written() {
        Path file = folder.resolve("map.kmz");
        KmzWriter.write(file, map(), phone(MapPoint.Kind.VILLAGE));
        return file;
    }

    private static Map<String, byte[]> parts(Path file) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 2, 0, 0));
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static Document document(Path file) throws Exception {
        DocumentBuilderFactory readers = DocumentBuilderFactory.newDefaultInstance();
        readers.setNamespaceAware(true);
        return readers.newDocumentBuilder()
                .parse(new ByteArrayInputStream(parts(file).get("doc.kml")));
    }

    private static List<Element> all(Document document, String name) {
        List<Element> found = new ArrayList<>();
        var nodes = document.getElementsByTagNameNS("http://www.opengis.net/kml/2.2", name);
        for (int k = 0; k < nodes.getLength(); k++) {
            found.add((Element) nodes.item(k));
        }
        return found;
    }

    private static List<double[]> coordinates(Element of) {
        String text = of.getElementsByTagName("coordinates").item(0).getTextContent();
        return Arrays.stream(text.split(" "))
                .map(pair -> Arrays.stream(pair.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    @Test
    void elementsStandInTheOrderOfTheSchema() throws Exception {
        follows(document(written()).getDocumentElement());
    }

    private static void follows(Element element) {
        List<String> allowed = SCHEMA.getOrDefault(element.getLocalName(), List.of());
        int at = 0;
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inside) {
                int next = at;
                while (next < allowed.size()
                        && !allowed.get(next).replace("*", "").equals(inside.getLocalName())) {
                    next++;
                }
                assertThat(next)
                        .as("%s in %s", inside.getLocalName(), element.getLocalName())
                        .isLessThan(allowed.size());
                at = allowed.get(next).endsWith("*") ? next : next + 1;
                assertThat(inside.getNamespaceURI()).isEqualTo("http://www.opengis.net/kml/2.2");
                follows(inside);
            } else if (!allowed.isEmpty()) {
                assertThat(child.getTextContent()).isBlank();
            }
        }
    }

    /** Corners are the river map's, within half of the last decimal and between -180 and 180; those within 5 m of the line go. The cut between parts is not told. */
    @Test
    void linesAreThoseOfTheReachesWithoutTheCutBetweenThem() throws Exception {
        List<Element> lines = all(document(written()), "LineString");
        assertThat(lines).hasSize(2);
        double[][] kept = {{179.97, -17.001}, {179.98, -17}, {179.995, -17.00005}, {-179.98, -17.03}};
        List<double[]> first = coordinates(lines.get(0));
        assertThat(first).hasSize(kept.length);
        for (int k = 0; k < kept.length; k++) {
            assertThat(first.get(k)).hasSize(2);
            assertThat(first.get(k)[0]).isCloseTo(kept[k][0], within(PRINTED));
            assertThat(first.get(k)[1]).isCloseTo(kept[k][1], within(PRINTED));
        }
        assertThat(coordinates(lines.get(1)).get(1)[0]).isCloseTo(-179.97, within(PRINTED));
    }

    /** Against JTS: no corner that was left out lies farther from the line than the tolerance, in meters of the place. */
    @Test
    void simplifiedLinesStayWithinFiveMeters() {
        double[] lonLat = new double[2 * 400];
        for (int k = 0; k < 400; k++) {
            lonLat[2 * k] = -20 + 2e-4 * k;
            lonLat[2 * k + 1] = -30 + 1e-3 * Math.sin(k / 9.0) + 2e-5 * Math.sin(k * 1.7);
        }
        RiverMap river = new RiverMap(List.of(reach(0, lonLat)), 2, List.of());
        List<Coordinate> kept = PhoneLines.of(river, List.of(List.of(0))).get(0);
        assertThat(kept).hasSizeBetween(20, 250);
        GeometryFactory shapes = new GeometryFactory();
        double east = Ground.metersPerDegreeEast(-30);
        double north = Ground.metersPerDegreeNorth(-30);
        LineString line = shapes.createLineString(kept.stream()
                .map(at -> new Coordinate(at.x * east, at.y * north))
                .toArray(Coordinate[]::new));
        // the library's own simplifier, of the same rule, keeps the same corners
        Coordinate[] plane = Arrays.stream(river.reach(0).line().getCoordinates())
                .map(at -> new Coordinate(at.x * east, at.y * north))
                .toArray(Coordinate[]::new);
        assertThat(DouglasPeuckerSimplifier.simplify(shapes.createLineString(plane), PhoneLines.FINEST)
                        .getNumPoints())
                .isEqualTo(kept.size());
        for (Coordinate at : river.reach(0).line().getCoordinates()) {
            Point point = shapes.createPoint(new Coordinate(at.x * east, at.y * north));
            assertThat(line.distance(point)).isLessThan(PhoneLines.FINEST + 0.01);
        }
    }

    /** A river of very many corners is told more coarsely, so that a phone can hold it. */
    @Test
    void manyCornersBecomeFewer() {
        Random random = new Random(7);
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (int number = 0; number < 400; number++) {
            double[] lonLat = new double[2 * 600];
            for (int k = 0; k < 600; k++) {
                lonLat[2 * k] = -20 + 3e-4 * k;
                lonLat[2 * k + 1] = -30 + 1e-4 * random.nextGaussian();
            }
            reaches.add(reach(number, lonLat));
        }
        RiverMap rivers = new RiverMap(reaches, 401, List.of());
        List<List<Integer>> each =
                IntStream.range(0, 400).mapToObj(number -> List.of(number)).toList();
        List<List<Coordinate>> lines = PhoneLines.of(rivers, each);
        assertThat(PhoneLines.of(rivers, each.subList(0, 1)).get(0)).hasSizeGreaterThan(400);
        assertThat(lines.stream().mapToInt(List::size).sum()).isBetween(10_000, PhoneLines.MOST_CORNERS);
        for (int number = 0; number < 400; number++) {
            Coordinate[] whole = reaches.get(number).line().getCoordinates();
            List<Coordinate> line = lines.get(number);
            assertThat(line.get(0).distance(whole[0])).isLessThan(PRINTED);
            assertThat(line.get(line.size() - 1).distance(whole[whole.length - 1]))
                    .isLessThan(PRINTED);
        }
    }

    /** KML writes opacity, blue, green, red (OGC 07-147r2, kml:color): of #6e1044, ff44106e. */
    @Test
    void stylesHaveTheColorsAndWidthsOfTheClasses() throws Exception {
        Document document = document(written());
        Map<String, String> looks = new LinkedHashMap<>();
        for (Element style : all(document, "LineStyle")) {
            looks.put(((Element) style.getParentNode()).getAttribute("id"), style.getTextContent());
        }
        assertThat(looks)
                .containsExactly(
                        Map.entry("above", "ff44106e5.2"),
                        Map.entry("below", "ffce97642.2"),
                        Map.entry("not-assessed", "ffb8b8b82.0"));
        assertThat(all(document, "styleUrl").stream().map(Element::getTextContent))
                .containsExactly("#above", "#below", "#village");
        assertThat(all(document, "Folder").stream().map(f -> f.getFirstChild().getTextContent()))
                .containsExactly("Above & far <5 times>", "Below", "Places");
    }

    @Test
    void textsStayWhatTheyAreAndNothingAsksTheNetwork() throws Exception {
        Document document = document(written());
        assertThat(all(document, "Placemark").get(0).getFirstChild().getTextContent())
                .isEqualTo("Upper & \"middle\" ]]> river");
        assertThat(all(document, "description").get(1).getTextContent())
                .isEqualTo("<table><tr><td>Estimate</td><td><b>1 &lt; 2 µg/L</b></td></tr></table><p>A remark.</p>");
        String text = new String(parts(written()).get("doc.kml"), StandardCharsets.UTF_8);
        assertThat(text.replace("xmlns=\"http://www.opengis.net/kml/2.2\"", ""))
                .doesNotContain("http", "NetworkLink", "<script");
    }

    /** Every picture that is spoken of is there, and can be read. */
    @Test
    void picturesAreInTheFile() throws Exception {
        Map<String, byte[]> parts = parts(written());
        assertThat(parts.keySet()).containsExactly("doc.kml", "legend.png", "icons/village.png");
        for (Element href : all(document(written()), "href")) {
            assertThat(ImageIO.read(new ByteArrayInputStream(parts.get(href.getTextContent()))))
                    .isNotNull();
        }
    }

    @Test
    void sameMapGivesSameBytesInAnyTimeZone() throws Exception {
        byte[] first = Files.readAllBytes(written());
        TimeZone zone = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(Arrays.equals(Files.readAllBytes(written()), first)).isTrue();
        } finally {
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void singleSitesNeedABand() {
        assertThatThrownBy(() -> phone(MapPoint.Kind.SITE)).hasMessageContaining("not for posting");
        assertThat(phone(MapPoint.Kind.SITE, "NOT FOR POSTING").places()).hasSize(1);
    }

    /** An independent reader, where the machine has one: ogrinfo of GDAL. */
    @Test
    void ogrinfoReadsIt() {
        Programs.require("ogrinfo");
        String text = Programs.says("ogrinfo", "-al", written().toString());
        assertThat(text)
                .contains("Layer name: Above & far <5 times>", "LINESTRING", "Layer name: Places", "(-179.98 -17.03")
                .contains("Ljóskelda")
                .doesNotContain("Warning", "ERROR");
    }
}
