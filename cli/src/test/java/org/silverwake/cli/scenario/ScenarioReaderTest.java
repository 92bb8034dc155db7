// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.cli.scenario.ScenarioInput.Channel;
import org.silverwake.cli.scenario.ScenarioInput.Discharge;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;

class ScenarioReaderTest {
    /** ROUNDING: a few products of doubles near 1. */
    private static final double ROUNDING = 1e-14;

    private static final String SPECIFIC =
            "  method: specific-discharge\n" + "  specific-discharge: {dry: 7 L/s/km2, wet: 38 L/s/km2}\n";

    @TempDir
    private Path folder;

    /** Each: what is replaced, by what, and the one line that must come of it. */
    static Stream<Arguments> refusals() {
        return Stream.of(
                // unit missing, wrong dimension, decimal comma, negative
                change(
                        "120 mg/L",
                        "120",
                        "scenario.yaml:8 flow-states.wet.suspended-sediment: 120 has no unit; give a concentration in one of kg/m3"),
                change(
                        "120 mg/L",
                        "120 mg/kg",
                        "suspended-sediment: mg/kg is a unit of content per dry mass, not of concentration; give one of"),
                change(
                        "18 mg/L",
                        "\"0,5 mg/L\"",
                        "scenario.yaml:7 flow-states.dry.suspended-sediment: \"0,5\" has a decimal comma"),
                change(
                        "18 mg/L",
                        "-3 mg/L",
                        "scenario.yaml:7 flow-states.dry.suspended-sediment: -3 mg/L is not allowed; give 0 to 200000 mg/L"),
                change("18 mg/L", "[1, 2]", "suspended-sediment: found a list; give a single value"),
                change(
                        "21 degC",
                        "294 kK",
                        "temperature: kK is not known as a unit of temperature; give one of K, degC"),
                change(
                        "temperature: 21 degC, ",
                        "",
                        "scenario.yaml:7 flow-states.dry.temperature: is missing; give 0 to 45 degC"),
                change(
                        "lateral-filtered-mercury: 0.6 ng/L",
                        "flood: false",
                        "flow-states.dry.lateral-filtered-mercury: is missing; give 0 to 1000000 ng/L"),
                change(
                        "suspended-sediment: 18 mg/L",
                        "rating: {a: 12 mg/L, b: 0.9}, suspended-sediment: 18 mg/L",
                        "flow-states.dry: needs suspended-sediment, or rating with a and b; give one of the two"),
                change(
                        "share-of-year: 0.4",
                        "share-of-year: 0.5",
                        "scenario.yaml:6 flow-states: share-of-year sums to 1.1; give shares that sum to 1"),
                change("  dry: {share", "  unit: {share", "flow-states.unit: cannot be the name of a flow state"),
                change(
                        "0.6 ng/L}",
                        "0.6 ng/L, flood: yes}",
                        "flow-states.dry.flood: \"yes\" is not known; give true or false"),
                // keys
                change(
                        "prepared-by",
                        "preparedby",
                        "scenario.yaml:2 preparedby: is not a key; the nearest known one is prepared-by"),
                change(
                        "temperature: 21",
                        "temprature: 21",
                        "flow-states.dry.temprature: is not a key; the nearest known one is temperature"),
                change(
                        "date: 2026-11-25",
                        "date: 2026-11-25\ndate: 2026-11-26",
                        "scenario.yaml:4 date: is written twice; keep one"),
                change(
                        "date: 2026-11-25",
                        "date: 03/04/2021",
                        "scenario.yaml:3 date: \"03/04/2021\" is not a date; give it as YYYY-MM-DD"),
                change("title: Test", "title:", "scenario.yaml:1 title: has no value; give it (title of the work"),
                // files
                change("rivers.gpkg", "river.gpkg", "scenario.yaml:5 rivers.file: there is no file river.gpkg"),
                change("sites.csv", "sites.geojson", "sites.file: there is no file sites.geojson"),
                // rivers
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  snap-tolerance: 10",
                        "scenario.yaml:6 rivers.snap-tolerance: 10 has no unit; give a length in one of m, km"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  snap-tolerance: 10 deg",
                        "rivers.snap-tolerance: deg is a unit of angle, not of length"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {drainage-aera: {column: A, unit: km2}}",
                        "rivers.columns.drainage-aera: is not a key; the nearest known one is drainage-area"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {drainage-area: {column: A}}",
                        "rivers.columns.drainage-area.unit: is missing; give one of m2, km2"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {drainage-area: {column: A, unit: km}}",
                        "rivers.columns.drainage-area.unit: km is a unit of length, not of area"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {drainage-area: A}",
                        "rivers.columns.drainage-area: is no map; give a map of column, unit, missing"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {discharge: {dri: {column: Q, unit: cfs}}}",
                        "rivers.columns.discharge.dri: is not a flow state; the nearest known one is dry"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  outlets: [{longitude: 3}]",
                        "rivers.outlets[1].latitude: is missing; give -90 to 90 deg"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  orient-by: [elevation, downhill]",
                        "rivers.orient-by[2]: \"downhill\" is not known; give outlet or elevation or drainage-area or drawn"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  elevation: {file: rivers.gpkg}",
                        "rivers.elevation.unit: is missing; give one of m, km"),
                change(
                        "{method: hydraulic-geometry}",
                        "manning",
                        "scenario.yaml:12 channel: is no map; give a map of method"),
                change(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {depth: {unit: m}}",
                        "rivers.columns.depth.column: is missing; give it (column of the river layer)"),
                // water
                change(
                        "method: specific-discharge",
                        "method: guess",
                        "discharge.method: \"guess\" is not known; give attribute or specific-discharge or gauges or headwaters"),
                change(
                        "wet: 38 L/s/km2",
                        "wett: 38 L/s/km2",
                        "discharge.specific-discharge.wett: is not a flow state; the nearest known one is wet"),
                change(
                        ", wet: 38 L/s/km2",
                        "",
                        "discharge.specific-discharge.wet: is missing; give 0 to 10000 L/s/km2"),
                change(SPECIFIC, "  method: attribute\n", "discharge.method: attribute needs rivers.columns.discharge"),
                change(SPECIFIC, "  method: gauges\n", "discharge.method: gauges needs a table of gauges"),
                change(
                        SPECIFIC,
                        "  method: headwaters\n",
                        "discharge.lateral-inflow: gives no value per flow state; give a map of dry, wet"),
                change(
                        SPECIFIC,
                        SPECIFIC + "  area-exponent: 0.8\n",
                        "discharge.area-exponent: acts only with method gauges and one gauge"),
                change(
                        "hydraulic-geometry",
                        "manning",
                        "channel.method: manning needs channel.manning-n; give 0.01 to 0.3"),
                change(
                        "hydraulic-geometry",
                        "attribute",
                        "channel.method: attribute needs rivers.columns.velocity, or both width and depth"),
                change(
                        "hydraulic-geometry",
                        "manning, manning-n: 3",
                        "channel.manning-n: 3 is not allowed; give 0.01 to 0.3"),
                // solids
                change("diameter: 5 um, ", "", "solids.classes.wash-load.diameter: is missing; give 0.1 to 10000 um"),
                change(
                        "tailings-share: 0.3",
                        "tailings-share: 0.4",
                        "solids.classes: tailings-share sums to 1.1; give shares that sum to 1"),
                change(
                        "tailings-share: 0.3",
                        "background-share: 0.3",
                        "solids.classes.wash-load.background-share: is written twice"),
                change(
                        "5 um,",
                        "5 um, law: measured,",
                        "solids.classes.wash-load.law: measured needs settling-velocity"),
                change(
                        "5 um,",
                        "5 um, law: stokes, settling-velocity: 1 mm/s,",
                        "law: stokes stands beside a measured settling-velocity"),
                change(
                        "5 um,",
                        "5 um, log10-kd: 5.3 L/kg,",
                        "log10-kd: L/kg is a unit of partition coefficient, not of base-10 logarithm of L/kg"),
                change(
                        "places: {file: places.csv}",
                        "places: {file: places.csv, snap-distance: 0 m}",
                        "places.snap-distance: 0 m is not allowed; give 1 to 20000 m"));
    }

    private static Arguments change(String old, String replacement, String line) {
        return Arguments.of(old, replacement, line);
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void refusedWithOneClearLine(String old, String replacement, String line) {
        List<String> problems =
                new ScenarioFolder(folder).with(old, replacement).problems();
        assertThat(problems).anySatisfy(problem -> assertThat(problem).contains(line));
        assertThat(problems)
                .allSatisfy(problem -> assertThat(problem).doesNotContain("\n").startsWith("scenario.yaml:"));
    }

    /** Each: lines added to the scenario, and the line that must come of it. */
    static Stream<Arguments> mercuryRefusals() {
        return Stream.of(
                Arguments.of(
                        "mercury: {kd: 5.3}", "mercury.kd: 5.3 looks like a logarithm; write mercury.log10-kd: 5.3"),
                Arguments.of(
                        "mercury: {kd: 5.3 L/kg}",
                        "mercury.kd: 5.3 L/kg looks like a logarithm; write mercury.log10-kd: 5.3"),
                Arguments.of(
                        "mercury: {kd: 200000}",
                        "mercury.kd: 200000 has no unit; give a partition coefficient in one of m3/kg, L/kg"),
                Arguments.of(
                        "mercury: {log10-kd: 200000}", "mercury.log10-kd: looks like the partition coefficient itself"),
                Arguments.of(
                        "mercury: {log10-kd: 200000 L/kg}",
                        "mercury.log10-kd: looks like the partition coefficient itself"),
                Arguments.of("mercury: {log10-kd: 9}", "mercury.log10-kd: 9 is not allowed; give 1 to 8 log10 L/kg"),
                Arguments.of(
                        "mercury: {kd: 2e5 L/kg, log10-kd: 5}",
                        "mercury.kd: stands beside mercury.log10-kd; keep one of them"),
                Arguments.of("mercury: {basis: free}", "mercury.basis: free needs mercury.doc-log10-k"),
                Arguments.of(
                        "mercury: {basis: free, doc-log10-k: 5}",
                        "mercury.basis: free needs dissolved-organic-carbon in flow state dry"),
                Arguments.of(
                        "mercury: {doc-log10-k: 5}",
                        "mercury.doc-log10-k: acts only with basis: free, since a Kd of basis filtered already holds"),
                Arguments.of(
                        "background: {solids-mercury-content: 0.05}",
                        "background.solids-mercury-content: 0.05 has no unit; give a content per dry mass"),
                Arguments.of("outputs: {profiles: [{from: A}]}", "outputs.profiles[1].name: is missing"));
    }

    @ParameterizedTest
    @MethodSource("mercuryRefusals")
    void addedLinesRefused(String lines, String line) {
        assertThat(new ScenarioFolder(folder).plus(lines).problems())
                .anySatisfy(problem -> assertThat(problem).contains("scenario.yaml:19 " + line));
    }

    @Test
    void allProblemsAtOnce() {
        List<String> problems = new ScenarioFolder(folder)
                .with("120 mg/L", "120")
                .with("21 degC", "21 m")
                .with("prepared-by", "preparedby")
                .with("rivers.gpkg", "none.gpkg")
                .plus("mercury: {kd: 5.3}")
                .site("release", "-4 kg/yr")
                .problems();
        // preparedby is unknown, and prepared-by is missing
        assertThat(problems).hasSize(7);
        assertThat(problems)
                .filteredOn(p -> p.startsWith("sites.csv:2 release: -4 kg/yr is not allowed"))
                .hasSize(1);
    }

    @Test
    void problemsStandByFileAndLine() {
        List<String> problems = new ScenarioFolder(folder)
                .with("{file: places.csv}", "{file: nowhere.csv}")
                .with("temperature: 24 degC", "temperature: 24")
                .with("prepared-by", "preparedby")
                .problems();
        assertThat(problems)
                .extracting(p -> p.split("[ ]")[0])
                .containsExactly("scenario.yaml:1", "scenario.yaml:2", "scenario.yaml:8", "scenario.yaml:18");
    }

    @Test
    void whatIsGivenButNotUsedIsAWarning() {
        ScenarioInput input = new ScenarioFolder(folder)
                .with(SPECIFIC, SPECIFIC + "  lateral-inflow: {dry: 3 L/s/km, wet: 9 L/s/km}\n")
                .read();
        assertThat(input.warnings())
                .containsExactly("scenario.yaml:12 discharge.lateral-inflow: is not used by this method");
    }

    @Test
    void brokenYamlAndNoScenarioAtAll() {
        assertThat(new ScenarioFolder(folder)
                        .with("title: Test", "title: [Test")
                        .problems())
                .singleElement()
                .asString()
                .contains("is not YAML here");
        assertThatThrownBy(() -> ScenarioReader.read(folder.resolve("nowhere")))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("give a folder that holds scenario.yaml");
    }

    @Test
    void yamlWordsStayWords() {
        // YAML 1.1 would read no as false and 010 as 8
        ScenarioInput input = new ScenarioFolder(folder)
                .with("title: Test", "title: no")
                .with("rivers.gpkg", "rivers.gpkg\n  outlets: [001, {feature: 1, basin-area: 3 km2}]")
                .read();
        assertThat(input.project().title()).isEqualTo("no");
        assertThat(input.rivers().outlets())
                .extracting(o -> o.feature().orElse(""))
                .containsExactly("001", "1");
        assertThat(input.rivers().outlets().get(1).basinArea().getAsDouble()).isCloseTo(3e6, within(1e-6));
    }

    @Test
    void defaultsAreFilledIn() {
        ScenarioInput input = new ScenarioFolder(folder).read();
        SolidsClass wash = input.solids().classes().get(0);
        // model.md 4 and 11: 2650 quartz, Ferguson & Church, Krone below 63 um with 0.1 Pa, log10 Kd 5.3
        assertThat(wash.density()).isCloseTo(2650, within(ROUNDING));
        assertThat(wash.law()).isEqualTo("ferguson-church");
        assertThat(wash.cohesive()).isTrue();
        assertThat(wash.criticalShearDeposition()).isCloseTo(0.1, within(ROUNDING));
        assertThat(wash.log10Kd()).isCloseTo(5.3, within(ROUNDING));
        assertThat(input.solids().classes().get(1).cohesive()).isFalse();
        assertThat(input.background().solidsContent()).isCloseTo(5e-8, within(ROUNDING));
        assertThat(input.mercury().basis()).isEqualTo(Mercury.Basis.FILTERED);
        assertThat(input.settings().value("sites.snap-distance")).isCloseTo(500, within(ROUNDING));
        assertThat(input.rivers().orientBy()).containsExactly("outlet", "elevation", "drainage-area", "drawn");
        assertThat(input.warnings()).isEmpty();
    }

    @Test
    void settingsStandNestedAnywhere() {
        ScenarioInput input = new ScenarioFolder(folder)
                .with("hydraulic-geometry}", "manning, manning-n: 0.035}")
                .with("solids:\n", "solids:\n  net-sedimentation: 2 mm/yr\n")
                .plus("mercury: {kd: 200000 L/kg}")
                .read();
        assertThat(input.channel().method()).isEqualTo(Channel.Method.MANNING);
        assertThat(input.settings().value("channel.manning-n")).isCloseTo(0.035, within(ROUNDING));
        assertThat(input.settings().value("solids.net-sedimentation")).isCloseTo(2e-3 / 31557600, within(1e-24));
        // log10(200000) = 5.30103
        assertThat(input.settings().value("mercury.log10-kd")).isCloseTo(5.301029995663981, within(ROUNDING));
    }

    @Test
    void everyWayOfDischarge() {
        ScenarioInput byColumn = new ScenarioFolder(folder)
                .with(SPECIFIC, "  method: attribute\n")
                .with(
                        "rivers.gpkg",
                        "rivers.gpkg\n  columns: {discharge: {dry: {column: q_dry, unit: cfs, missing: [-9, -99]},"
                                + " wet: {column: q_wet, unit: m3/s}}}")
                .read();
        assertThat(byColumn.rivers().columns())
                .extracting(c -> c.key())
                .containsExactly("discharge.dry", "discharge.wet");
        assertThat(byColumn.rivers().columns().get(0).missing()).containsExactly("-9", "-99");

        ScenarioInput headwaters = new ScenarioFolder(folder)
                .with(
                        SPECIFIC,
                        "  method: headwaters\n  headwater-discharge: {dry: 0.2 m3/s, wet: 900 L/s}\n"
                                + "  lateral-inflow: {dry: 3 L/s/km, wet: 9 L/s/km}\n")
                .read();
        assertThat(headwaters.discharge().method()).isEqualTo(Discharge.Method.HEADWATERS);
        assertThat(headwaters.discharge().headwaterDischarge()).containsExactly(0.2, 0.9);
        assertThat(headwaters.discharge().lateralPerLength().get(1)).isCloseTo(9e-6, within(ROUNDING));

        ScenarioInput gauges = new ScenarioFolder(folder)
                .with(SPECIFIC, "  method: gauges\n  area-exponent: 0.9\n")
                .plus("gauges: {file: gauges.csv}")
                .file(
                        "gauges.csv",
                        "name,x,y,discharge_dry,discharge_wet,discharge_unit\nMill,500000,6200000,3,20,m3/s\n")
                .read();
        assertThat(gauges.gauges().get(0).discharge()).containsExactly(3.0, 20.0);
        assertThat(gauges.gauges().get(0).position().inLayerCrs()).isTrue();
        assertThat(gauges.discharge().areaExponent()).isCloseTo(0.9, within(ROUNDING));
    }
}
