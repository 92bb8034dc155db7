// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.silverwake.geo.map.ReachShade;

/** Maps of the demo that know where on the ground they lie. */
class GroundFormatsRunTest {
    private static final String MAP = "maps/CCME-FW-iHg-dry";
    /** Bytes of a GeoPackage's header of a line before its WKB: OGC 12-128r17, clause 2.1.3, with an envelope of four numbers. */
    private static final int BLOB_HEADER = 40;

    /** Of a stretch between two corners. */
    private static final int PARTS = 8;

    @TempDir
    private static Path folder;

    private static Path out;

    @BeforeAll
    static void run() {
        out = folder.resolve("out");
        Messy.Said said = Messy.say("run", Messy.LANTERN.toString(), "--formats", "tif", "--out", out.toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
    }

    /** A reach of the layer. */
    private record Reach(String shade, Coordinate[] line) {}

    private static Map<String, Reach> reaches() throws SQLException, ParseException {
        Map<String, Reach> reaches = new LinkedHashMap<>();
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + out.resolve("layers/reaches.gpkg"));
                Statement sql = file.createStatement();
                ResultSet rows = sql.executeQuery("SELECT reach, class, geom FROM reaches_dry")) {
            while (rows.next()) {
                byte[] blob = rows.getBytes(3);
                reaches.put(
                        rows.getString(1),
                        new Reach(
                                rows.getString(2),
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
            String color = ReachShade.valueOf(
                            each.getValue().shade().toUpperCase(Locale.ROOT).replace('-', '_'))
                    .withLegend("")
                    .color();
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
