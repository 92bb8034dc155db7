// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.feature;
import static org.silverwake.cli.command.ThreeReaches.layer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Three reaches, a and b into c, cut at a shed, two villages and a canal into a.1 a.2 a.3, b, c.1 c.2 c.3: classes, people,
 * irrigation, from the scenario to the tables.
 */
class ReachClassRunTest {
    private static final int SCENARIO = 2;
    /** PRINTED: tables have six significant digits; in percent. */
    private static final double PRINTED = 1e-3;

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
            abstractions: {file: abstractions.csv}
            guidelines: {use: [CCME-FW-iHg, WHO-DW-iHg]}
            """;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = Messy.empty(temporary.resolve("three"))
                .file("scenario.yaml", YAML)
                .file("r.geojson", layer(line("a", "I", A, 1, 2), line("b", "II", B, 1, 2), line("c", "I", C, 2, 4)))
                .file("sites.csv", "name,longitude,latitude,path,release\nShed,-20.02,-30.001,slurry,12 kg/yr\n")
                .file("places.csv", """
                        name,use,people,people_source,longitude,latitude
                        Up,village; drinking intake,20,head count 2026,-20.03,-30
                        Wick,fishing;village,420,census 2024,-20.08,-30
                        Hut,village,,,-20.08,-30
                        Weir,livestock,7,,-20.08,-30
                        """)
                .file("abstractions.csv", """
                        name,longitude,latitude,discharge,use,area,plough_depth
                        Canal,-20.06,-30,100 L/s,irrigation,40 ha,
                        Pump,-20.06,-30,50 L/s,Irrigation of gardens,2500 m2,15 cm
                        Mill,-20.06,-30,10 L/s,cooling,,
                        """);
    }

    private static String line(String id, String use, String points, double dry, double wet) {
        return feature(
                "\"rid\":\"" + id + "\",\"use\":\"" + use + "\",\"dry\":" + dry + ",\"wet\":" + wet
                        + ",\"slope\":0.001",
                "LineString",
                points);
    }

    private static String box(double west, double east) {
        return layer("{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[["
                + String.format(
                        java.util.Locale.ROOT,
                        "[%1$s,-30.01],[%2$s,-30.01],[%2$s,-29.99],[%1$s,-29.99],[%1$s,-30.01]",
                        west,
                        east)
                + "]]}}");
    }

    private void classes(String lines) {
        messy.file("scenario.yaml", YAML + "reach-classes:\n" + lines.indent(2));
    }

    /** Rows of a table as cells by heading; no cell of these tables holds a comma in quotes before the columns looked at. */
    private List<Map<String, String>> rows(String table) {
        List<String> lines = messy.table(table);
        String[] heading = lines.get(0).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String text : lines.subList(1, lines.size())) {
            String[] cells = text.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int k = 0; k < heading.length; k++) {
                row.put(heading[k].replace("\"", ""), cells[k].replace("\"", ""));
            }
            rows.add(row);
        }
        return rows;
    }

    private Map<String, String> classesByReach() {
        Map<String, String> found = new LinkedHashMap<>();
        rows("reaches.csv").forEach(row -> found.put(row.get("reach"), row.get("classes")));
        return found;
    }

    private void run() {
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
    }

    /** The box reaches from 20.068 W on: 60 % of c.2 (20.06 to 20.08 W), nothing of c.1, all of c.3. */
    @Test
    void fourWaysToChooseReaches() {
        messy.file("box.geojson", box(-20.2, -20.068));
        classes("""
                works: {column: use, values: II, guidelines: [USEPA-AL-chronic]}
                villages: {ranges: [{from: Up, to: Wick}], guidelines: [CCME-FW-iHg], legal: by-law 3, use: fishing}
                park: {polygons: {file: box.geojson}, guidelines: USEPA-AL-chronic}
                rest: {default: true, guidelines: [CCME-FW-iHg, USEPA-AL-chronic]}
                """);
        run();
        assertThat(classesByReach())
                .containsEntry("a.1", "rest")
                .containsEntry("a.2", "rest")
                .containsEntry("a.3", "villages")
                .containsEntry("b", "works")
                .containsEntry("c.1", "villages")
                .containsEntry("c.2", "villages; park")
                .containsEntry("c.3", "park");
        assertThat(rows("screening.csv"))
                .filteredOn(row -> row.get("guideline").equals("CCME-FW-iHg"))
                .filteredOn(row -> row.get("answer").equals("does not apply"))
                .extracting(row -> row.get("reach"))
                .containsExactlyInAnyOrder("b", "c.3");
        assertThat(rows("screening.csv"))
                .filteredOn(row -> row.get("guideline").equals("USEPA-AL-chronic"))
                .filteredOn(row -> row.get("answer").equals("does not apply"))
                .extracting(row -> row.get("reach"))
                .containsExactlyInAnyOrder("a.3", "c.1");
        assertThat(rows("reaches.csv"))
                .filteredOn(row -> row.get("reach").equals("b"))
                .extracting(row -> row.get("values that do not apply here"))
                .containsOnly("CCME-FW-iHg");
        // Wick's reach is the park's alone, but the drinking-water value holds where people drink
        assertThat(rows("places.csv"))
                .filteredOn(row -> row.get("place").equals("Wick"))
                .filteredOn(row -> row.get("answer").equals("does not apply"))
                .extracting(row -> row.get("guideline"))
                .containsOnly("CCME-FW-iHg");
    }

    /** c is 4.82 km long, cut at 0.96 and 2.89 km: from 1.5 km on it holds 72 % of c.2; up to 4 km 57 % of c.3, to 3.5 km 31 %. */
    @Test
    void chainageCutsReachesByTheLargerPart() {
        classes("""
                far: {ranges: [{from: c, from-chainage: 1.5 km, to: c, to-chainage: 4000 m}], guidelines: [USEPA-AL-chronic]}
                near: {ranges: [{from: c, from-chainage: 1.5 km, to: c, to-chainage: 3.5 km}, {from: b, to: b}],
                  guidelines: [USEPA-AL-chronic]}
                down: {ranges: [{from: Wick}], guidelines: [CCME-FW-iHg]}
                """);
        run();
        assertThat(classesByReach())
                .containsEntry("a.3", "")
                .containsEntry("b", "near")
                .containsEntry("c.1", "")
                .containsEntry("c.2", "far; near")
                .containsEntry("c.3", "far; down");
    }

    @Test
    void everythingThatIsNotThereIsToldAtOnce() {
        messy.file("far.geojson", box(10, 11)).file("lines.geojson", messy.text("r.geojson"));
        classes("""
                one: {column: usage, values: [I], guidelines: [CCME-FW-iHg]}
                two: {column: use, values: [I, III], guidelines: [CCME-FW-iHg]}
                three: {ranges: [{from: Wik, to: c}], guidelines: [CCME-FW-iHg]}
                four: {ranges: [{from: a, to: b}], guidelines: [CCME-FW-iHg]}
                five: {ranges: [{from: c, to: a}], guidelines: [CCME-FW-iHg]}
                six: {ranges: [{from: c, from-chainage: 7 km}], guidelines: [CCME-FW-iHg]}
                seven: {ranges: [{from: Wick, from-chainage: 1 km}], guidelines: [CCME-FW-iHg]}
                eight: {polygons: {file: far.geojson}, guidelines: [CCME-FW-iHg]}
                nine: {polygons: {file: lines.geojson}, guidelines: [CCME-FW-iHg]}
                """);
        Messy.Said said = messy.does("check");
        String where = "scenario.yaml:";
        said.refuses(
                SCENARIO, where, " reach-classes.one.column: usage is not a column of r.geojson", "known one is use");
        said.refuses(SCENARIO, " reach-classes.two.values: no reach has III in column use", "I");
        said.refuses(
                SCENARIO, " reach-classes.three.ranges: Wik is neither a feature", "the nearest known one is Wick");
        said.refuses(SCENARIO, " reach-classes.four.ranges: b does not lie downstream of a; give two points of one");
        said.refuses(SCENARIO, " reach-classes.five.ranges: a does not lie downstream of c, but upstream of it; turn");
        said.refuses(SCENARIO, " reach-classes.six.ranges: chainage 7000 m lies beyond c, which is 48");
        said.refuses(SCENARIO, " reach-classes.seven.ranges: Wick is a point, which takes no chainage");
        said.refuses(SCENARIO, " reach-classes.eight: no reach of the river belongs to it");
        said.refuses(
                SCENARIO, " reach-classes.nine.polygons: lines.geojson: feature ", "LineString; give a layer of pol");
        messy.does("run").refuses(SCENARIO, " reach-classes.eight: no reach of the river belongs to it");
    }

    @Test
    void everythingWrongInTheScenarioIsToldAtOnce() {
        classes("""
                one: {column: use, values: [I], guidelines: [CCME-FW-iHgg]}
                two: {column: use, values: [I], default: true, guidelines: [CCME-FW-iHg]}
                three: {guidelines: [CCME-FW-iHg]}
                four: {default: true}
                five: {default: true, guidelines: [CCME-FW-iHg]}
                six: {values: [I], guidelines: [CCME-FW-iHg]}
                seven: {column: use, guidelines: [CCME-FW-iHg], name: x}
                eight: {ranges: [{to: c}], guidelines: [CCME-FW-iHg]}
                nine: {polygons: {file: none.gpkg}, guidelines: [CCME-FW-iHg]}
                """);
        Messy.Said said = messy.does("check");
        said.refuses(SCENARIO, " reach-classes.one.guidelines[1]: ", "CCME-FW-iHgg");
        said.refuses(SCENARIO, " reach-classes.two: says in 2 ways which reaches belong to it; keep one of");
        said.refuses(SCENARIO, " reach-classes.three: does not say which reaches belong to it; give column");
        said.refuses(SCENARIO, " reach-classes.four.guidelines: is missing");
        said.refuses(SCENARIO, " reach-classes.five.default: is true at four already");
        said.refuses(SCENARIO, " reach-classes.six.values: are given without column");
        said.refuses(SCENARIO, " reach-classes.seven.values: is missing");
        said.refuses(SCENARIO, " reach-classes.seven.name: is not a key");
        said.refuses(SCENARIO, " reach-classes.eight.ranges[1].from: is missing");
        said.refuses(SCENARIO, " reach-classes.nine.polygons.file: there is no file none.gpkg");
    }

    /** 20 people at the intake, 420 at Wick, 7 at the weir, where nobody drinks; Hut is not known. */
    @Test
    void peopleFirstAndEverybodyOnce() {
        Messy.Said said = messy.does("run");
        assertThat(said.out().get(1)).contains("People and intakes by drinking-water values (WHO-DW-iHg)");
        assertThat(said.all())
                .contains("* how many people depend on 1 place is not known", ": Hut")
                .contains("places.csv:1 people_source: is blank for Weir; say where");
        for (String state : List.of("as the guideline asks", "dry", "wet")) {
            List<Map<String, String>> lines = rows("summary.csv").stream()
                    .filter(row -> row.get("guideline").equals("WHO-DW-iHg"))
                    .filter(row -> row.get("flow state").equals(state))
                    .toList();
            assertThat(lines).hasSize(5);
            assertThat(lines.stream()
                            .mapToInt(row -> Integer.parseInt(row.get("people [-]")))
                            .sum())
                    .isEqualTo(20 + 420 + 7);
            assertThat(lines.get(4)).containsEntry("answer", "does not apply").containsEntry("people [-]", "7");
            assertThat(lines.stream()
                            .mapToInt(row -> Integer.parseInt(row.get("drinking intakes [-]")))
                            .sum())
                    .isEqualTo(1);
            assertThat(lines.stream()
                            .mapToInt(row -> Integer.parseInt(row.get("places without a number of people [-]")))
                            .sum())
                    .isEqualTo(1);
        }
        assertThat(rows("places.csv"))
                .extracting(row -> row.get("people [-]") + " " + row.get("people_source"))
                .contains("20 head count 2026", "420 census 2024", "not known ", "7 ");
        // the first rows are the values together; km of river add up to all there is
        assertThat(rows("summary.csv").get(0).get("guideline")).isEqualTo("drinking-water values (WHO-DW-iHg)");
        double river = rows("summary.csv").stream()
                .filter(row -> row.get("guideline").equals("river-water values (CCME-FW-iHg)"))
                .filter(row -> row.get("flow state").equals("wet"))
                .mapToDouble(row -> Double.parseDouble(row.get("river [km]")))
                .sum();
        double length = rows("reaches.csv").stream()
                .filter(row -> row.get("flow state").equals("wet"))
                .mapToDouble(row -> Double.parseDouble(row.get("length [m]")))
                .sum();
        assertThat(river).isCloseTo(length / 1000, withinPercentage(PRINTED));
    }

    @Test
    void aClassWithoutAValueOfRiverWaterIsTold() {
        classes("all:\n  {column: use, values: [I, II], guidelines: [CCME-SED-ISQG]}");
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said).isZero();
        assertThat(said.all())
                .contains("class all has no value of river water, so nothing is said of the water of ")
                .contains("Up, Wick, Hut, Weir");
        classes("all:\n  {column: use, values: [I, II], guidelines: [CCME-FW-iHg]}");
        assertThat(messy.does("run").all()).doesNotContain("has no value of river water");
    }

    /**
     * Three take water at one point, 100, 50 and 10 L/s: their mercury is in the same ratio.
     * The canal's plough layer is 40 ha x 0.2 m x 1300 kg/m3 = 1.04e8 kg, the pump's 2500 m2 x 0.15 m x 1300 = 487,500 kg.
     */
    @Test
    void irrigation() {
        Messy.Said said = messy.does("run");
        List<Map<String, String>> year = rows("abstractions.csv").stream()
                .filter(row -> row.get("flow state").equals("whole year"))
                .toList();
        assertThat(year).extracting(row -> row.get("abstraction")).containsExactly("Canal", "Pump", "Mill");
        for (String bound : List.of("low", "high")) {
            String mercury = "mercury taken, " + bound + " [kg/yr]";
            double canal = Double.parseDouble(year.get(0).get(mercury));
            double pump = Double.parseDouble(year.get(1).get(mercury));
            double mill = Double.parseDouble(year.get(2).get(mercury));
            assertThat(canal).isPositive();
            assertThat(canal / pump).isCloseTo(2, withinPercentage(PRINTED));
            assertThat(canal / mill).isCloseTo(10, withinPercentage(PRINTED));
            String added = "added to the plough layer, " + bound + " [mg/kg/yr]";
            assertThat(Double.parseDouble(year.get(0).get(added)))
                    .isCloseTo(canal * 1e6 / 1.04e8, withinPercentage(PRINTED));
            assertThat(Double.parseDouble(year.get(1).get(added)))
                    .isCloseTo(pump * 1e6 / 487_500, withinPercentage(PRINTED));
            assertThat(year.get(2).get(added)).isEmpty();
        }
        assertThat(said.all())
                .contains(
                        "Canal (irrigation): ",
                        " kg/yr of mercury to the fields, ",
                        "plough layer of 40 ha (0.2 m deep, 1300 kg/m3)")
                .contains("is not compared with a soil value");
    }

    /** With the split known there is one variant: low and high are the two bounds, and each equals the budget's term. */
    @Test
    void abstractionsAddUpToTheBudget() {
        messy.file(
                "sites.csv",
                "name,longitude,latitude,path,release,exchangeable_share\n"
                        + "Shed,-20.02,-30.001,slurry,12 kg/yr,0.3\n");
        run();
        for (String bound : List.of("laid down", "carried through")) {
            double budget = rows("balance.csv").stream()
                    .filter(row -> row.get("process").equals("abstracted")
                            && row.get("bound").equals(bound))
                    .mapToDouble(row -> Double.parseDouble(row.get("mass over the year [kg]")))
                    .sum();
            String column = "mercury taken, " + (bound.equals("laid down") ? "low" : "high") + " [kg/yr]";
            double points = rows("abstractions.csv").stream()
                    .filter(row -> row.get("flow state").equals("whole year"))
                    .mapToDouble(row -> Double.parseDouble(row.get(column)))
                    .sum();
            assertThat(points).isPositive().isCloseTo(budget, withinPercentage(PRINTED));
        }
    }

    @Test
    void fieldColumnsGoWithIrrigationAlone() {
        messy.file("abstractions.csv", """
                name,longitude,latitude,discharge,use,area
                Mill,-20.06,-30,10 L/s,cooling,3 ha
                """);
        messy.does("check").refuses(SCENARIO, "abstractions.csv:2 area: is given, but the use is not irrigation");
        messy.with("abstractions.csv", "cooling,3 ha", "irrigation,");
        assertThat(messy.does("check").all())
                .contains("abstractions.csv:2 area: is blank, so mercury added to the soil is not told");
    }
}
