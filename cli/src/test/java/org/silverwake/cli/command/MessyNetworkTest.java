// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.feature;
import static org.silverwake.cli.command.ThreeReaches.layer;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three reaches, a and b into c, drawn downstream, with discharges as attributes: what odd networks and points give. */
class MessyNetworkTest {
    private static final int SCENARIO = 2;
    private static final int DATA = 3;

    private static final String YAML = """
            title: Three reaches
            prepared-by: test
            date: 2026-11-25
            rivers:
              file: r.geojson
              id: rid
              columns:
                discharge: {dry: {column: dry, unit: m3/s}, wet: {column: wet, unit: m3/s}}
                slope: {column: slope, unit: m/m}
            flow-states:
              dry: {share-of-year: 0.6, temperature: 21 degC, suspended-sediment: 18 mg/L, lateral-filtered-mercury: 0.6 ng/L}
              wet: {share-of-year: 0.4, temperature: 24 degC, suspended-sediment: 120 mg/L, lateral-filtered-mercury: 0.8 ng/L}
            discharge: {method: attribute}
            channel: {method: hydraulic-geometry}
            solids:
              classes:
                silt: {diameter: 20 um, background-share: 1, tailings-share: 1}
            sites: {file: sites.csv}
            places: {file: places.csv}
            guidelines: {use: [CCME-FW-iHg, USEPA-AL-chronic]}
            outputs:
              profiles: [{name: P, from: a}]
            """;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = Messy.empty(temporary.resolve("three"))
                .file("scenario.yaml", YAML)
                .file(
                        "places.csv",
                        "name,use,people,longitude,latitude\nUp,village,20,-20.03,-30\nWick,village,420,-20.08,-30\n");
        sites("Shed,-20.02,-30.001,slurry,12 kg/yr");
        rivers(line("a", A, 1, 2), line("b", B, 1, 2), line("c", C, 2, 4));
    }

    private void sites(String... rows) {
        messy.file("sites.csv", "name,longitude,latitude,path,release\n" + String.join("\n", rows) + "\n");
    }

    private void rivers(String... features) {
        messy.file("r.geojson", layer(features));
    }

    private static String line(String id, String points, double dry, double wet) {
        return feature(
                "\"rid\":\"" + id + "\",\"dry\":" + dry + ",\"wet\":" + wet + ",\"slope\":0.001", "LineString", points);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "run"})
    void drawnFromMouthToSource(String command) {
        rivers(
                line("a", "[-20.05,-30],[-20,-30]", 1, 2),
                line("b", "[-20.05,-30],[-20,-30.05]", 1, 2),
                line("c", "[-20.1,-30],[-20.05,-30]", 2, 4));
        messy.does(command)
                .refuses(DATA, "r.geojson: all lines seem to be drawn from mouth to source", "name the outlet");
        // a check shows the lines as they are drawn
        assertThat(Files.exists(messy.out().resolve("check.html"))).isEqualTo(command.equals("check"));
        assertThat(Files.exists(messy.out())).isEqualTo(command.equals("check"));
    }

    @Test
    void aCircle() {
        rivers(
                line("a", A, 1, 2),
                line("b", B, 1, 2),
                line("c", C, 2, 4),
                line("d", "[-20.1,-30],[-20.05,-30.05],[-20,-30]", 1, 2));
        messy.does("check").refuses(DATA, "features a, c, d run in a circle near 20.00000 W, 30.00000 S; turn the one");
    }

    @Test
    void aReachWithoutWaterInOneState() {
        rivers(line("a", A, 0, 2), line("b", B, 1, 2), line("c", C, 1, 4));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).isZero();
        assertThat(said.all())
                .contains("warning: dry: no water where Shed releases; that mercury is counted as held dry");
        assertThat(messy.table("reaches.csv"))
                .anySatisfy(row -> assertThat(row)
                        .startsWith("a.1,a,")
                        .contains(",dry,yes,")
                        .doesNotContain("NaN", "Infinity"));
        assertThat(messy.table("places.csv"))
                .anySatisfy(row -> assertThat(row).startsWith("Up,village,20,").contains(",dry,yes,,,,"));
        // 12 kg/yr over 0.6 of the year stay where there is no water
        assertThat(messy.table("balance.csv"))
                .anySatisfy(row -> assertThat(row).startsWith("dry,laid down,exchangeable,held dry,Hg(II),12,7.2,"));
    }

    @Test
    void noWaterAnywhere() {
        rivers(line("a", A, 0, 0), line("b", B, 0, 0), line("c", C, 0, 0));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).isZero();
        assertThat(said.all()).contains("dry: no reach has water, so no concentration is given in this state");
        assertThat(messy.table("screening.csv"))
                .hasSizeGreaterThan(1)
                .filteredOn(row -> !row.startsWith("guideline"))
                .allSatisfy(row -> assertThat(row).contains("not assessed,no water"));
    }

    @Test
    void oneStateAlone() {
        messy.yaml(", wet: {column: wet, unit: m3/s}", "")
                .yaml("0.6, temp", "1, temp")
                .file("scenario.yaml", messy.text("scenario.yaml").replaceAll("(?m)^  wet:.*\n", ""));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(messy.table("reaches.csv")).hasSize(1 + 6);
    }

    @Test
    void sitesAtTheVeryHeadAndAtTheMouthAndTwoOnOneNode() {
        sites("Head,-20,-30.05,slurry,12 kg/yr", "Same,-20,-30.05,slurry,3 kg/yr", "Mouth,-20.1,-30,slurry,1 kg/yr");
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(said.all()).contains("released     16 / 16");
        assertThat(messy.table("sites.csv"))
                .anySatisfy(row -> assertThat(row).startsWith("Same,Same,slurry,-20.000000,-30.050000,0,b,0,b,"));
    }

    @Test
    void aNegativeReleaseBesideAnother() {
        sites("Head,-20,-30.05,slurry,12 kg/yr", "Same,-20,-30.05,slurry,-3 kg/yr");
        messy.does("run").refuses(SCENARIO, "sites.csv:3 release: -3 kg/yr is not allowed; give 0 to 1000000 kg/yr");
    }

    @Test
    void neitherSlopeNorRoughness() {
        messy.yaml("    slope: {column: slope, unit: m/m}\n", "");
        messy.does("run")
                .refuses(SCENARIO, "6 reaches have neither slope nor Manning n (a.1, a.2", "map a slope column");
    }

    @Test
    void heightsOfAnotherPlace() {
        String dem =
                Messy.LANTERN.resolve("dem.tif").toAbsolutePath().normalize().toString();
        messy.yaml("  id: rid", "  id: rid\n  elevation: {file: '" + dem + "', unit: m}")
                .yaml("sites: {file: sites.csv}\n", "")
                .yaml("places: {file: places.csv}\n", "");
        rivers(line("a", "[10,10],[10.05,10]", 1, 2));
        messy.does("check").refuses(DATA, "dem.tif: has no height at any reach of the river layer; give a raster");
    }

    @Test
    void sitesAsALayerOfPointsDrumsAndAPond() {
        messy.yaml("sites.csv", "sites.geojson")
                .file(
                        "sites.geojson",
                        layer(
                                "{\"type\":\"Feature\",\"properties\":{\"Name\":\"Retort\",\"path\":\"seepage\","
                                        + "\"release\":\"2 kg/yr\"},\"geometry\":{\"type\":\"Point\",\"coordinates\":[-20.02,-30.001]}}",
                                feature(
                                        "\"name\":\"Drums\",\"path\":\"slurry\",\"release\":1.5,\"release_unit\":\"kg/yr\"",
                                        "MultiPoint",
                                        "[-20.03,-30.001],[-20.032,-30.001]"),
                                feature(
                                        "\"name\":\"Pond\",\"path\":\"seepage\",\"release\":\"1 kg/yr\"",
                                        "Polygon",
                                        "[[-20.06,-30.001],[-20.062,-30.001],[-20.062,-30.003],[-20.06,-30.003],[-20.06,-30.001]]")));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(said.all()).contains("released     4.5 / 4.5");
        assertThat(messy.table("sites.csv"))
                .anySatisfy(row -> assertThat(row).startsWith("Retort,Retort,seepage,-20.020000,-30.001000,"))
                .anySatisfy(row -> assertThat(row).startsWith("Drums,Drums,slurry,-20.031000,-30.001000,"))
                .anySatisfy(row -> assertThat(row).startsWith("Pond,Pond,seepage,-20.061000,-30.002000,"));
    }

    @Test
    void anEffluentIsComparedWithEffluentValuesAndNoReachIs() {
        messy.yaml("use: [", "file: own.csv, use: [MY-EFF, ")
                .file(
                        "own.csv",
                        "id,medium,substance,fraction,basis,value,unit,protects,averaging,compare,body,document,year,"
                                + "jurisdiction,status,checked,note\n"
                                + "MY-EFF,effluent,total Hg,whole,,5,ug/L,rivers,any sample,effluent,Office,Permit,2026,"
                                + "here,current,printed value seen,\n")
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,effluent,concentration\nYard,-20.02,-30.001,seepage,0.2 L/s,40 ug/L\n");
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        // 40 ug/L over 5 ug/L, by hand
        assertThat(messy.table("sites.csv")).anySatisfy(row -> assertThat(row).contains("MY-EFF: 8"));
        assertThat(messy.table("screening.csv")).noneMatch(row -> row.startsWith("MY-EFF"));
    }

    @Test
    void sitesAsALayerWithMistakes() {
        messy.yaml("sites.csv", "sites.geojson")
                .file(
                        "sites.geojson",
                        layer(
                                feature("\"name\":\"L\"", "LineString", A),
                                "{\"type\":\"Feature\",\"properties\":{\"name\":\"N\"},\"geometry\":null}"));
        Messy.Said said = messy.does("check");
        said.refuses(SCENARIO, "sites.geojson: feature 1 is a line; give a point, several points, or an area");
        said.refuses(SCENARIO, "sites.geojson: feature 2 has no shape; give a point, several points, or an area");

        messy.file("sites.geojson", layer(feature("\"nam\":\"L\",\"path\":\"slurry\"", "MultiPoint", A)));
        assertThat(messy.does("check").err())
                .containsExactly(
                        "sites.geojson:1 nam: is not a column here; the nearest known one is name",
                        "sites.geojson:1 name: this column is missing; add it");
    }
}
