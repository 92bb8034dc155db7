// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.layer;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two creeks meet in Round Lake, by polygon, table or river layer, in the user's own words: from the scenario to the tables.
 */
class StillWaterRunTest {
    private static final int SCENARIO = 2;
    private static final int DATA = 3;
    /** PRINTED: tables have six significant digits. */
    private static final double PRINTED = 1e-5;
    /** DISCRETIZATION: less than 1 % settles in the last 100 m of the creek: w L/(U H) with U some 0.3 m/s and H 0.4 m. */
    private static final double IN_THE_CREEK = 0.01;
    /** DISCRETIZATION: the ellipsoid's degrees of 30 S are told to four digits, and edges are cut to the meter. */
    private static final double DEGREES = 2e-3;

    private static final String POLYGONS = """
            water-bodies:
              polygons: {file: lakes.%s, name: name, depth: {column: depth, unit: m}}
            """;
    /** Over the lower ends of both creeks and the upper end of c. */
    private static final double[] BOX = {-20.06, -30.01, -20.045, -29.99};

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Pier,fishing,3,-20.055,-30")
                .file("r.geojson", layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)));
    }

    private Messy with(String more) {
        return messy.file("scenario.yaml", messy.text("scenario.yaml") + more);
    }

    private static String lake(String depth) {
        return PolygonFiles.geoJson("Round Lake", depth, BOX[0], BOX[1], BOX[2], BOX[3]);
    }

    private List<Map<String, String>> reaches() {
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return rows();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static List<Map<String, String>> inLake(List<Map<String, String>> rows) {
        return rows.stream()
                .filter(r -> r.get("water body").equals("Round Lake"))
                .toList();
    }

    @Test
    void aPolygonIsOneWater() {
        with(POLYGONS.formatted("geojson")).file("lakes.geojson", layer(lake("4")));
        List<Map<String, String>> lake = inLake(reaches());
        assertThat(lake.stream().map(r -> r.get("feature")).distinct()).containsExactlyInAnyOrder("a", "b", "c");
        assertThat(lake).allSatisfy(r -> assertThat(r.get("kind")).isEqualTo("still water"));
        for (String column : List.of("total Hg, whole, low [ng/L]", "total Hg, whole, high [ng/L]")) {
            assertThat(lake.stream().map(r -> r.get(column)).distinct())
                    .as(column)
                    .hasSize(1);
        }
        // 0.015 x 0.02 degrees at 30 S: 111,320 m x cos 30 and 110,850 m to the degree: 3.206 km2 within 0.1 %
        double hours = lake.stream()
                .filter(r -> !r.get("travel time [h]").isEmpty())
                .mapToDouble(r -> number(r, "travel time [h]"))
                .sum();
        double area = 0.015 * 111_412 * StrictMath.cos(Math.toRadians(30)) * 0.02 * 110_852;
        assertThat(hours / (area * 4 / 2 / 3600)).isCloseTo(1, within(DEGREES));
    }

    @Test
    void allFormatsGiveTheSame() {
        with(POLYGONS.formatted("geojson")).file("lakes.geojson", layer(lake("4")));
        List<Map<String, String>> expected = reaches();
        PolygonFiles.shapefile(messy.folder(), "Round Lake", 4, BOX);
        messy.yaml("lakes.geojson", "lakes.shp");
        assertThat(reaches()).isEqualTo(expected);
        PolygonFiles.geoPackage(messy.folder(), "Round Lake", 4, BOX);
        messy.yaml("lakes.shp", "lakes.gpkg");
        assertThat(reaches()).isEqualTo(expected);
    }

    /** The middle of the lake by hand: all mercury in grains of silt that settle; 1/(1 + w A/Q) of it goes on. */
    @Test
    void aTableGivesAreaAndDepth() {
        List<Map<String, String>> river = reaches();
        assertThat(river.get(0)).doesNotContainKey("water body");
        with("""
                water-bodies: {file: lakes.csv}
                """)
                .yaml("columns:\n", """
                        kinds: {artificial path: still water, 55800: still water}
                          columns:
                            kind: {column: kind}
                            water-body: {column: lake}
                        """.indent(0).stripTrailing() + "\n")
                .yaml("silt: {", "silt: {settling-velocity: 0.002 mm/s, tau-cd: 10 Pa, ")
                .file("lakes.csv", "name,area,mean_depth\nRound Lake,3.2 km2,4 m\n")
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,release,exchangeable_share\n"
                                + "Shed,-20.049,-30.0,slurry,12 kg/yr,0\n")
                .file(
                        "r.geojson",
                        layer(
                                line("a", A, 1),
                                line("b", B, 1),
                                ThreeReaches.feature(
                                        "\"rid\":\"c\",\"q\":2,\"slope\":0.001,\"kind\":\"Artificial Path\",\"lake\":\"Round Lake\"",
                                        "LineString",
                                        "[-20.05,-30],[-20.07,-30]"),
                                ThreeReaches.feature(
                                        "\"rid\":\"d\",\"q\":2,\"slope\":0.001,\"kind\":55800.0,\"lake\":\"Round Lake\"",
                                        "LineString",
                                        "[-20.07,-30],[-20.1,-30]")));
        List<Map<String, String>> lake = inLake(reaches());
        assertThat(lake.stream().map(r -> r.get("feature")).distinct()).containsExactlyInAnyOrder("c", "d");
        double settled = 2e-6 * 3.2e6 / 2;
        double entering = 12 / (365.25 * 86400) / 2 * 1e9;
        String grains = lake.get(0).keySet().stream()
                .filter(k -> k.startsWith("laid down") && k.contains("silt"))
                .findFirst()
                .orElseThrow();
        assertThat(number(lake.get(0), grains) / (entering / (1 + settled))).isCloseTo(1, within(IN_THE_CREEK));
        assertThat(lake.stream().map(r -> r.get("travel time [h]")).filter(t -> !t.isEmpty()))
                .singleElement()
                .satisfies(t -> assertThat(Double.parseDouble(t) / (3.2e6 * 4 / 2 / 3600))
                        .isCloseTo(1, within(PRINTED)));
    }

    @Test
    void attributesOfTheRiverLayerDoToo() {
        messy.yaml("columns:\n", """
                columns:
                    kind: {column: kind}
                    water-body-area: {column: km2, unit: km2}
                    water-body-depth: {column: deep, unit: m}
                """.stripTrailing() + "\n")
                .file(
                        "r.geojson",
                        layer(
                                line("a", A, 1),
                                line("b", B, 1),
                                ThreeReaches.feature(
                                        "\"rid\":\"c\",\"q\":2,\"slope\":0.001,\"kind\":\"still water\",\"km2\":3.2,\"deep\":4",
                                        "LineString",
                                        C)));
        List<Map<String, String>> rows = reaches();
        List<String> hours = rows.stream()
                .filter(r -> r.get("water body").equals("c"))
                .map(r -> r.get("travel time [h]"))
                .filter(t -> !t.isEmpty())
                .toList();
        assertThat(hours).hasSize(1);
        assertThat(Double.parseDouble(hours.get(0)) / (3.2e6 * 4 / 2 / 3600)).isCloseTo(1, within(PRINTED));
    }

    @Test
    void stillWaterWithoutDataIsToldAndTakenAsChannel() {
        with(POLYGONS.formatted("geojson")).file("lakes.geojson", layer(lake("null")));
        String line =
                "reaches of kind still water have no area or mean depth (Round Lake) and are treated as channel, which"
                        + " overstates what gets through them and understates what settles in them; give both in"
                        + " water-bodies.file, or polygons with a depth";
        assertThat(messy.does("check").all()).contains(line);
        Messy.Said said = messy.does("run");
        assertThat(said.code()).isZero();
        assertThat(said.all())
                .contains(line)
                .contains("caution: Still water of unknown area or depth is taken as river");
    }

    @Test
    void eachMistakeIsNamed() {
        with(POLYGONS.formatted("geojson"))
                .file(
                        "lakes.geojson",
                        layer(lake("-4"), PolygonFiles.geoJson("Pond", "\"?\"", -20.3, -30, -20.29, -29.99)));
        Messy.Said said = messy.does("check");
        said.refuses(DATA, "water-bodies.polygons: lakes.geojson: feature", "column depth: \"-4\" is not a depth");
        said.refuses(DATA, "\"?\" is not a depth");
        messy.file(
                "lakes.geojson",
                layer(
                        lake("4"),
                        PolygonFiles.geoJson("Old Lake", "2", -20.055, -30.01, -20.044, -29.99),
                        PolygonFiles.geoJson("Pond", "1", -20.3, -30, -20.29, -29.99)));
        messy.does("check").refuses(DATA, "polygons Round Lake and Old Lake lie on one another, and line");
        messy.file("lakes.geojson", layer(lake("4"), PolygonFiles.geoJson("Pond", "1", -20.3, -30, -20.29, -29.99)));
        assertThat(messy.does("check").all())
                .contains(
                        "no line of the river layer runs through 1 of 2 polygons of still water, which are left out: Pond");
    }

    @Test
    void rowsThatNameNothingAreRefused() {
        with("water-bodies: {file: lakes.csv}\n")
                .file("lakes.csv", "name,area,mean_depth,kind\nc,3.2 km2,4 m,\nRound,3.2,4 m,lake\nd,1 km2,-1 m,\n");
        Messy.Said said = messy.does("check");
        said.refuses(SCENARIO, "lakes.csv:3 area", "unit");
        said.refuses(SCENARIO, "lakes.csv:3 kind: \"lake\" is not allowed; give still water or wetland");
        said.refuses(SCENARIO, "lakes.csv:4 mean_depth: -1 m is not allowed; give 0.01 to 1700 m");
        messy.file("lakes.csv", "name,area,mean_depth\nc,3.2 km2,4 m\nRound,3.2 km2,4 m\n");
        messy.does("check")
                .refuses(
                        DATA,
                        "lakes.csv:3 name: no polygon, no water-body and no feature of the river layer is called Round");
    }

    @Test
    void wordsThatMeanNothingAreCounted() {
        messy.yaml("columns:\n", "kinds: {lagoon: pond}\n  columns:\n");
        messy.does("check")
                .refuses(
                        SCENARIO,
                        "rivers.kinds.lagoon: \"pond\" is not known; give channel or still water or wetland or canal");
        messy.does("check").refuses(SCENARIO, "rivers.kinds: says what values mean, but rivers.columns.kind");
        messy.yaml("kinds: {lagoon: pond}\n  columns:\n", "columns:\n    kind: {column: kind}\n")
                .file(
                        "r.geojson",
                        layer(
                                line("a", A, 1),
                                line("b", B, 1),
                                ThreeReaches.feature(
                                        "\"rid\":\"c\",\"q\":2,\"slope\":0.001,\"kind\":\"lagoon\"", "LineString", C)));
        assertThat(messy.does("check").all())
                .contains("reaches of kind lagoon are treated as channel; say in rivers.kinds what it means");
    }

    @Test
    void aCanalNeedsNoSlope() {
        messy.yaml("columns:\n", "columns:\n    kind: {column: kind}\n")
                .file(
                        "r.geojson",
                        layer(
                                line("a", A, 1),
                                line("b", B, 1),
                                ThreeReaches.feature("\"rid\":\"c\",\"q\":2,\"kind\":\"canal\"", "LineString", C)));
        assertThat(messy.does("run").code()).isZero();
        messy.with("r.geojson", "\"canal\"", "\"channel\"");
        messy.does("run").refuses(SCENARIO, "have neither slope nor Manning n");
    }

    private List<Map<String, String>> rows() {
        String between = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";
        List<Map<String, String>> rows = new ArrayList<>();
        List<String> lines = messy.table("reaches.csv");
        String[] heading = lines.get(0).split(between, -1);
        for (String text : lines.subList(1, lines.size())) {
            String[] cells = text.split(between, -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int k = 0; k < heading.length; k++) {
                row.put(heading[k].replace("\"", ""), cells[k].replace("\"", ""));
            }
            rows.add(row);
        }
        return rows;
    }
}
