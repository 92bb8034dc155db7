// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.silverwake.cli.text.Texts;
import org.silverwake.geo.map.ReachShade;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Maps of the demo that know where on the ground they lie. */
class GroundFormatsRunTest {
    private static final String MAP = "maps/CCME-FW-iHg-dry";
    /** Bytes of a GeoPackage's header of a line before its WKB: OGC 12-128r17, clause 2.1.3, with an envelope of four numbers. */
    private static final int BLOB_HEADER = 40;

    /** PRINTED: half of the sixth decimal in both directions [degrees], some 0.08 m. */
    private static final double A_DECIMETER = 7.1e-7;

    /** Some 1 m [degrees]; corners that the layer itself has may lie nearer than a phone tells its own place. */
    private static final double A_METER = 1e-5;

    /** Of a stretch between two corners. */
    private static final int PARTS = 8;

    @TempDir
    private static Path folder;

    /** For everybody, in English. */
    private static Path out;

    /** For the office, in Spanish. */
    private static Path office;

    @BeforeAll
    static void run() {
        out = run("out", Messy.LANTERN, "tif,kmz");
        Messy lantern = Messy.lantern(folder.resolve("lantern"));
        lantern.yaml("\noutputs:\n", "\noutputs:\n  audience: office\n");
        lantern.file("scenario.yaml", "language: es\n" + lantern.text("scenario.yaml"));
        office = run("office", lantern.folder(), "kmz");
    }

    private static Path run(String name, Path scenario, String formats) {
        Path to = folder.resolve(name);
        Messy.Said said = Messy.say("run", scenario.toString(), "--formats", formats, "--out", to.toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
        return to;
    }

    /** A reach of the layer. */
    private record Reach(String shade, double low, double high, Coordinate[] line) {
        ReachShade look() {
            return ReachShade.valueOf(shade.toUpperCase(Locale.ROOT).replace('-', '_'));
        }
    }

    private static Map<String, Reach> reaches() throws SQLException, ParseException {
        Map<String, Reach> reaches = new LinkedHashMap<>();
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + out.resolve("layers/reaches.gpkg"));
                Statement sql = file.createStatement();
                ResultSet rows = sql.executeQuery(
                        "SELECT reach, class, geom, ratio_low_ccme_fw_ihg, ratio_high_ccme_fw_ihg FROM reaches_dry")) {
            while (rows.next()) {
                byte[] blob = rows.getBytes(3);
                reaches.put(
                        rows.getString(1),
                        new Reach(
                                rows.getString(2),
                                rows.getDouble(4),
                                rows.getDouble(5),
                                new WKBReader()
                                        .read(Arrays.copyOfRange(blob, BLOB_HEADER, blob.length))
                                        .getCoordinates()));
            }
        }
        return reaches;
    }

    @Test
    void tifAloneLeavesNoPictures() {
        assertThat(out.resolve(MAP + ".tif")).isRegularFile();
        assertThat(out.resolve(MAP + ".png")).doesNotExist();
        assertThat(out.resolve("profiles")).doesNotExist();
    }

    /**
     * Against an independent program, where the machine has it: gdallocationinfo of GDAL. What stands over rivers, such as names, symbols and
     * arrows, hides some points of a reach; whether a line lies where it should to a pixel is tested in geo, without them.
     */
    @Test
    void gdalFindsReachesInTheirColorsWhereTheLayerSaysTheyAre() throws Exception {
        assumeThat(says("", "gdalinfo", "--version")).as("gdalinfo on the path").isNotNull();
        Path tif = out.resolve(MAP + ".tif");
        assertThat(says("", "gdalinfo", "-json", tif.toString())).contains("ID[\\\"EPSG\\\",4326]");
        Map<String, Reach> reaches = reaches();
        StringBuilder places = new StringBuilder();
        reaches.values().forEach(reach -> {
            for (Coordinate at : along(reach.line())) {
                places.append(String.format(Locale.ROOT, "%.9f %.9f\n", at.x, at.y));
            }
        });
        String[] values = says(places.toString(), "gdallocationinfo", "-valonly", "-wgs84", tif.toString())
                .split("\\s+");
        List<String> hidden = new ArrayList<>();
        int k = 0;
        for (Map.Entry<String, Reach> each : reaches.entrySet()) {
            String color = each.getValue().look().withLegend("").color();
            boolean found = false;
            for (int p = 0; p < along(each.getValue().line()).size(); p++, k += 3) {
                found |= color.equals(String.format(
                        "#%02x%02x%02x",
                        Integer.parseInt(values[k]), Integer.parseInt(values[k + 1]), Integer.parseInt(values[k + 2])));
            }
            if (!found) {
                hidden.add(each.getKey());
            }
        }
        assertThat(k).isEqualTo(values.length);
        // pieces that were cut off at places and sites lie under their symbols and names
        assertThat(hidden)
                .as("of %d reaches", reaches.size())
                .hasSizeLessThan(reaches.size() / 10)
                .allMatch(id -> id.contains("."));
    }

    private static Document kml(Path file) throws Exception {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .parse(zip.getInputStream(zip.getEntry("doc.kml")));
        }
    }

    private static List<Element> all(NodeList nodes) {
        return IntStream.range(0, nodes.getLength())
                .mapToObj(k -> (Element) nodes.item(k))
                .toList();
    }

    private static List<Element> lines(Document kml) {
        return all(kml.getElementsByTagName("Placemark")).stream()
                .filter(place -> place.getElementsByTagName("LineString").getLength() == 1)
                .toList();
    }

    private static String text(Element in, String name) {
        return in.getElementsByTagName(name).item(0).getTextContent();
    }

    private static List<Coordinate> corners(Element placemark) {
        return Arrays.stream(text(placemark, "coordinates").split(" "))
                .map(pair -> pair.split(","))
                .map(pair -> new Coordinate(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])))
                .toList();
    }

    /** Everything in a KMZ, unpacked, one letter to the byte. */
    private static String bytes(Path kmz) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipFile zip = new ZipFile(kmz.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                all.append(entry.getName());
                all.append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    /** Names and notes of the demo's sites. */
    private static List<String> siteWords() throws IOException {
        List<String> words = new ArrayList<>(List.of("Quinquet pond"));
        List<String> rows = Files.readAllLines(Messy.LANTERN.resolve("sites.csv"));
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            words.add(cells[0]);
            words.add(cells[cells.length - 1]);
        }
        assertThat(words).hasSize(17);
        return words;
    }

    /** Reaches that begin at a site. */
    private static Set<String> belowSites() throws IOException {
        List<String> rows = Files.readAllLines(out.resolve("tables/sites.csv"));
        int column = List.of(rows.get(0).split(",")).indexOf("reach");
        Set<String> reaches = new TreeSet<>();
        rows.subList(1, rows.size()).forEach(row -> reaches.add(row.split(",")[column]));
        return reaches;
    }

    /** In the office each reach is a placemark, in the folder, color and numbers of its answer, along the line of the layer. */
    @Test
    void phonesOfTheOfficeShowEachReachAsTheMapDoes() throws Exception {
        Document kml = kml(office.resolve(MAP + ".kmz"));
        Texts texts = Texts.of("es");
        Map<String, String> colors = new LinkedHashMap<>();
        all(kml.getElementsByTagName("LineStyle"))
                .forEach(style ->
                        colors.put("#" + ((Element) style.getParentNode()).getAttribute("id"), text(style, "color")));
        Map<String, Element> placemarks = new LinkedHashMap<>();
        for (Element line : lines(kml)) {
            placemarks.put(text(line, "name").replaceAll(".*\\((.*)\\)$", "$1"), line);
        }
        Map<String, Reach> reaches = reaches();
        assertThat(placemarks).containsOnlyKeys(reaches.keySet());
        reaches.forEach((id, reach) -> {
            Element line = placemarks.get(id);
            String rgb = reach.look().withLegend("").color();
            // KML: opacity, blue, green, red (OGC 07-147r2, kml:color)
            assertThat(colors.get(text(line, "styleUrl")))
                    .as(id)
                    .isEqualTo("ff" + rgb.substring(5, 7) + rgb.substring(3, 5) + rgb.substring(1, 3));
            String folder = text((Element) line.getParentNode(), "name");
            assertThat(folder)
                    .as(id)
                    .startsWith(
                            texts.text("shade." + reach.look().key(), "", "").substring(0, 10));
            if (reach.look().ordinal() < ReachShade.NOT_ASSESSED.ordinal()) {
                assertThat(text(line, "description"))
                        .as(id)
                        .contains(texts.number(reach.low(), 3), texts.number(reach.high(), 3) + " ve");
            }
            List<Coordinate> corners = corners(line);
            assertThat(corners.get(0).distance(reach.line()[0])).isLessThan(A_DECIMETER);
            assertThat(corners.get(corners.size() - 1).distance(reach.line()[reach.line().length - 1]))
                    .isLessThan(A_DECIMETER);
            assertThat(corners)
                    .as(id)
                    .allMatch(corner -> Arrays.stream(reach.line()).anyMatch(at -> at.distance(corner) < A_DECIMETER));
        });
        String about = text(kml.getDocumentElement(), "description");
        assertThat(about).contains(texts.numbered("caution")).contains(texts.text("not-for-posting"));
        assertThat(about).contains(texts.text("draft"));
        assertThat(bytes(office.resolve(MAP + ".kmz"))).contains("Sconce sheds", "icons/site.png");
    }

    /** With a history, how long recovery takes is a map too: every reach in the class of the layer's own column. */
    @Test
    void recoveryIsAMapForPhonesWhereAHistoryIsGiven() throws Exception {
        Messy lantern = Messy.lantern(folder.resolve("years"));
        lantern.with("years.yaml", "\noutputs:\n", "\noutputs:\n  audience: office\n");
        Path years = run("years-out", lantern.folder().resolve("years.yaml"), "kmz");
        Document kml = kml(years.resolve("maps/recovery-CCME-FW-iHg.kmz"));
        Map<String, String> looks = new TreeMap<>();
        lines(kml)
                .forEach(line -> looks.put(
                        text(line, "name").replaceAll(".*\\((.*)\\)$", "$1"),
                        text(line, "styleUrl").substring(1)));
        Map<String, String> layer = new TreeMap<>();
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + years.resolve("layers/reaches.gpkg"));
                Statement sql = file.createStatement();
                ResultSet rows = sql.executeQuery("SELECT reach, recovery_class_ccme_fw_ihg FROM reaches_dry")) {
            while (rows.next()) {
                layer.put(rows.getString(1), rows.getString(2));
            }
        }
        assertThat(looks).isEqualTo(layer);
        assertThat(new TreeSet<>(looks.values())).hasSizeGreaterThan(2);
        assertThat(text(kml.getDocumentElement(), "description"))
                .contains(Texts.of("en").numbered("caution"))
                .contains("Within 5 years");
    }

    /** In public nothing in the file names a single site, and no line begins, ends or has a corner where one gives to the river. */
    @Test
    void phonesOfEverybodyShowNoSingleSite() throws Exception {
        List<String> words = siteWords();
        for (String state : List.of("dry", "wet", "flood")) {
            assertThat(bytes(out.resolve("maps/CCME-FW-iHg-" + state + ".kmz")))
                    .as(state)
                    .contains("Tallowby", "This is a screening, a first estimate")
                    .doesNotContain(words)
                    .doesNotContain("site.png", "NOT FOR POSTING", "http://www.opengis.net/kml/2.2/", "https:");
        }
        Map<String, Reach> reaches = reaches();
        Set<String> below = belowSites();
        List<Element> lines = lines(kml(out.resolve(MAP + ".kmz")));
        assertThat(lines).hasSize(reaches.size() - below.size());
        for (String id : below) {
            Coordinate cut = reaches.get(id).line()[0];
            assertThat(lines)
                    .as(id)
                    .allMatch(line -> corners(line).stream().noneMatch(at -> at.distance(cut) < A_METER));
            // where it goes on as before, the stretch across it looks as bad as its worst part
            Element across = lines.stream()
                    .filter(line -> corners(line).stream()
                            .anyMatch(at -> at.distance(reaches.get(id).line()[1]) < A_DECIMETER))
                    .findFirst()
                    .orElse(null);
            if (across != null) {
                ReachShade look = ReachShade.valueOf(text(across, "styleUrl")
                        .substring(1)
                        .toUpperCase(Locale.ROOT)
                        .replace('-', '_'));
                assertThat(look).as(id).isLessThanOrEqualTo(reaches.get(id).look());
            }
        }
    }

    /** An independent reader, where the machine has one: ogrinfo of GDAL finds as many lines as the file has. */
    @Test
    void gdalReadsAsManyLines() throws Exception {
        assumeThat(says("", "ogrinfo", "--version")).as("ogrinfo on the path").isNotNull();
        String told = says("", "ogrinfo", "-al", office.resolve(MAP + ".kmz").toString());
        assertThat(told).doesNotContain("ERROR");
        assertThat(told.split("LINESTRING", -1)).hasSize(reaches().size() + 1);
    }

    /** Its corners and places between them. */
    private static List<Coordinate> along(Coordinate[] line) {
        List<Coordinate> places = new ArrayList<>();
        for (int k = 1; k < line.length; k++) {
            for (int part = 0; part < PARTS; part++) {
                double to = (double) part / PARTS;
                places.add(new Coordinate(
                        line[k - 1].x + to * (line[k].x - line[k - 1].x),
                        line[k - 1].y + to * (line[k].y - line[k - 1].y)));
            }
        }
        return places;
    }

    /** What a program says when it is told something; null where it is absent. */
    private static String says(String told, String... command) throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException e) {
            return null;
        }
        Thread teller = new Thread(() -> {
            try (var in = process.getOutputStream()) {
                in.write(told.getBytes(StandardCharsets.UTF_8));
            } catch (IOException e) {
                // it has heard enough
            }
        });
        teller.start();
        try (InputStream answer = process.getInputStream()) {
            String text = new String(answer.readAllBytes(), StandardCharsets.UTF_8);
            teller.join();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return text.strip();
        }
    }
}
