// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.geo.crs.PointSystem;

class PositionsTest {
    /** ROUNDING: degrees. */
    private static final double ROUNDING = 1e-12;

    /** ROUNDING: a few products of doubles, in percent. */
    private static final double PRODUCTS = 1e-12;

    @TempDir
    private Path folder;

    private ScenarioFolder sites(String header, String row) {
        return new ScenarioFolder(folder)
                .file("sites.csv", "name;path;release;" + header + "\nShed;slurry;12 kg/yr;" + row + "\n");
    }

    private Position position(String header, String row) {
        return sites(header, row).read().sites().get(0).position();
    }

    @Test
    void degreesMinutesAndSecondsStandInAnyTable() {
        Position site = position("longitude;latitude", "19\u00b038'58,6\"O;30\u00b004'56\"S");
        assertThat(site.x()).isCloseTo(-(19 + 38 / 60.0 + 58.6 / 3600), within(ROUNDING));
        assertThat(site.y()).isCloseTo(-(30 + 4 / 60.0 + 56 / 3600.0), within(ROUNDING));
        assertThat(site.system()).isEqualTo(PointSystem.wgs84());
        ScenarioInput input = new ScenarioFolder(folder)
                .file("places.csv", "name,use,longitude,latitude\nWick,village,W 20 06 00,S 30.2\n")
                .read();
        assertThat(input.places().get(0).position().x()).isCloseTo(-20.1, within(ROUNDING));
        assertThat(input.places().get(0).position().y()).isCloseTo(-30.2, within(ROUNDING));
    }

    /** The degree sign in the two encodings that offices save; reference/cases.md, encodings. */
    @ParameterizedTest
    @CsvSource({"UTF-8", "windows-1252"})
    void theDegreeSignIsReadInBothEncodings(Charset charset) {
        ScenarioInput input = new ScenarioFolder(folder)
                .file(
                        "places.csv",
                        "\ufeff".substring(charset.equals(StandardCharsets.UTF_8) ? 0 : 1)
                                + "name,use,longitude,latitude\nWick,village,20\u00b006'W,30\u00b012\u00b4S\n",
                        charset)
                .read();
        assertThat(input.places().get(0).position().x()).isCloseTo(-20.1, within(ROUNDING));
        assertThat(input.places().get(0).position().y()).isCloseTo(-30.2, within(ROUNDING));
    }

    @Test
    void utmWithItsDatumAndAccuracy() {
        Position at = position("easting;northing;zone;datum;accuracy", "623.456,7;9.308.123;21 sur;SAD-69;0,05 km");
        assertThat(at.system()).isEqualTo(PointSystem.utm(21, true, "EPSG:4618"));
        assertThat(at.x()).isCloseTo(623456.7, within(1e-6));
        assertThat(at.y()).isCloseTo(9308123, within(1e-6));
        assertThat(at.accuracy().getAsDouble()).isCloseTo(50, within(1e-9));
        assertThat(position("easting;northing;datum", "623456;9308123;EPSG:29191")
                        .system())
                .isEqualTo(PointSystem.grid("EPSG:29191"));
    }

    @Test
    void anUnknownDatumIsAWarning() {
        ScenarioInput input =
                sites("longitude;latitude;datum", "-20,1;-30,1;UNKWN").read();
        assertThat(input.sites().get(0).position().system()).isEqualTo(PointSystem.wgs84());
        assertThat(input.warnings())
                .anySatisfy(w -> assertThat(w)
                        .startsWith("sites.csv:2 datum: \"UNKWN\" does not say which")
                        .contains("100 to 400 m"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "longitude;latitude;datum | -20,1;-30,1;SAD 79 | sites.csv:2 datum: datum \"SAD 79\" is not known; the nearest known one is SAD69",
                "longitude;latitude;datum | -20,1;-30,1;Clarke 1880 | sites.csv:2 datum: datum \"Clarke 1880\" is not known; it names an ellipsoid",
                "longitude;latitude | 30\u00b006'S;20\u00b006'W | sites.csv:2 longitude: \"30\u00b006'S\" is a latitude (S) in the place of the longitude; swap the two",
                "longitude;latitude | -20,1;30.123 | sites.csv:2 latitude: \"30.123\" could be 30123 or 30,123",
                "easting;northing | 623456;9308123 | sites.csv:2 zone: is blank; give the UTM zone with north or south, such as 21 south",
                "easting;northing;zone | 623456;9308123;21 | sites.csv:2 zone: zone 21 is there north and south of the equator",
                "easting;northing;zone | 9308123;623456;21 south | sites.csv:2 easting, northing: look swapped",
                "easting;zone | 623456;21 south | sites.csv:2 northing: is blank; give 0 to 10000000 m",
                "easting;northing;zone;x;y | 623456;9308123;21 south;3;4 | sites.csv:2 longitude, latitude: stand apart from",
                "x;y;datum | 3;4;SAD69 | sites.csv:2 datum: stands beside x, y",
                "longitude;latitude;accuracy | -20,1;-30,1;15 | sites.csv:2 accuracy: 15 has no unit; give a length",
                "release_unit;note | ;n | sites.csv:2 longitude, latitude: are blank; give longitude and latitude in degrees (longitude first), or x and y in the layer's system, or easting, northing and zone",
            })
    void whatIsNoPositionIsToldInOneLine(String header, String row, String message) {
        assertThat(sites(header, row).problems())
                .anySatisfy(p -> assertThat(p).startsWith(message).doesNotContain("\n"));
    }

    @Test
    void outletsAndSitesOfTheScenarioItselfTakeThemToo() {
        ScenarioInput input = new ScenarioFolder(folder)
                .with(
                        "rivers.gpkg",
                        "rivers.gpkg\n  outlets: [{easting: 623456, northing: 9308123, zone: 21 south, datum: PSAD56},"
                                + " {longitude: 20\u00b030'W, latitude: -30.5}]")
                .with(
                        "sites: {file: sites.csv}",
                        "sites:\n  more:\n    Pond: {easting: 623456, northing: 9308123, zone: 21M, accuracy: 20 m,"
                                + " path: seepage, release: 1 kg/yr}")
                .read();
        assertThat(input.rivers().outlets().get(0).position().orElseThrow().system())
                .isEqualTo(PointSystem.utm(21, true, "EPSG:4248"));
        assertThat(input.rivers().outlets().get(1).position().orElseThrow().x()).isCloseTo(-20.5, within(ROUNDING));
        assertThat(input.sites().get(0).position().system()).isEqualTo(PointSystem.utm(21, true, "EPSG:4326"));
        assertThat(new ScenarioFolder(folder)
                        .with(
                                "rivers.gpkg",
                                "rivers.gpkg\n  outlets: [{easting: 62345, northing: 9308123, zone: 21 south}]")
                        .problems())
                .containsExactly(
                        "scenario.yaml:6 rivers.outlets[1].easting: 62345 is not allowed; give 100000 to 900000 m");
    }

    @Test
    void localUnitsStandInTablesAndInTheScenario() {
        ScenarioInput input = new ScenarioFolder(folder)
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,tailings,content,water,water_unit\n"
                                + "Shed,-20.1,-30.1,slurry,3 drum charges/d,5 g/sack,2,tins/h\n")
                .plus("units: {sack: 50 kg, drum charge: 0.8 sack, tin: 18 L}")
                .with(
                        "temperature: 21 degC, suspended-sediment: 18 mg/L",
                        "temperature: 21 degC, suspended-sediment: 324 mg/tin")
                .read();
        ScenarioInput.Tailings tailings = input.sites().get(0).tailings().orElseThrow();
        assertThat(tailings.mass().get(0)).isCloseTo(120.0 / 86400, withinPercentage(PRODUCTS));
        assertThat(tailings.content()).isCloseTo(1e-4, withinPercentage(PRODUCTS));
        assertThat(input.sites().get(0).water().get(0)).isCloseTo(1e-5, withinPercentage(PRODUCTS));
        assertThat(input.states().get(0).suspendedSediment().getAsDouble())
                .isCloseTo(0.018, withinPercentage(PRODUCTS));
        assertThat(input.localUnits())
                .containsExactly(
                        Map.entry("sack", "50 kg"), Map.entry("drum charge", "0.8 sack"), Map.entry("tin", "18 L"));
    }

    @Test
    void wrongUnitsAreToldWhereTheyStand() {
        assertThat(new ScenarioFolder(folder)
                        .site("release", "3 skacs/yr")
                        .plus("units: {sack: 50 kg, g: 3 kg, pot: 2 pots, tin: 18}")
                        .problems())
                .containsExactlyInAnyOrder(
                        "scenario.yaml:19 units.g: is a unit already, of mass; give your unit another name",
                        "scenario.yaml:19 units.pot: is defined by itself (2 pots); give a mass such as 50 kg or a volume"
                                + " such as 18 L",
                        "scenario.yaml:19 units.tin: \"18\" has no unit; give a mass (kg, t, g, mg) or a volume (m3, L,"
                                + " ML)",
                        "sites.csv:2 release: skacs is not known as a unit; the nearest one defined under units is sack");
    }
}
