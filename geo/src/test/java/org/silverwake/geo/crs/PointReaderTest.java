// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.PointReader.Fix;

class PointReaderTest {
    /** PRINTED: 9 decimals of a degree; 2e-7 degrees are 2 cm, what the library's shorter formulas (Molodensky) differ by. */
    private static final Offset<Double> PRINTED = within(2e-7);
    /** PRINTED: the guidance note gives thousandths of a second of arc, 3 cm; half of the last digit, twice. */
    private static final Offset<Double> THOUSANDTH_OF_A_SECOND = within(1e-3 / 3600);

    /** DISCRETIZATION: the library's shorter formulas (Molodensky) leave centimeters [m]. */
    private static final double MOLODENSKY = 0.1;

    private static Fix read(PointSystem system, double x, double y) {
        return new PointReader(LayerCrs.wgs84()).read(system, x, y);
    }

    private static double dms(double degrees, double minutes, double seconds) {
        return degrees + minutes / 60 + seconds / 3600;
    }

    /** IOGP Guidance Note 7-2, position vector transformation, WGS 72 to WGS 84 (EPSG:1238), values from memory. */
    @Test
    void agreesWithTheGuidanceNoteOnSevenParameters() {
        Fix fix = read(PointSystem.degrees(Datums.code("WGS 72")), 4, 55);
        assertThat(fix.longitude()).isCloseTo(dms(4, 0, 0.554), THOUSANDTH_OF_A_SECOND);
        assertThat(fix.latitude()).isCloseTo(dms(55, 0, 0.090), THOUSANDTH_OF_A_SECOND);
    }

    /** IOGP Guidance Note 7-2, geocentric translations, ED50 to WGS 84 in the North Sea, values from memory. */
    @Test
    void agreesWithTheGuidanceNoteOnThreeParameters() {
        Datum ed50 = Datums.find("EPSG:4230").orElseThrow();
        var shift = new Datum.Shift(
                "EPSG:0", List.of(-84.87, -96.49, -116.95, 0.0, 0.0, 0.0, 0.0), 1, "", -90, 90, -180, 180, false);
        double[] lonLat = LayerCrs.of(ed50.degrees(shift)).toLonLat(dms(2, 7, 51.477), dms(53, 48, 36.565));
        assertThat(lonLat[0]).isCloseTo(dms(2, 7, 46.38), within(0.005 / 3600));
        assertThat(lonLat[1]).isCloseTo(dms(53, 48, 33.82), within(0.005 / 3600));
    }

    /** References: cs2cs of PROJ 9.1.1 with the parameters of the EPSG operation named last. */
    @ParameterizedTest
    @CsvSource({
        "SAD69, 0, false, -56.1, -6.25, -56.100485599, -6.250382544, EPSG:5882",
        "S.A.D. 69, 21, true, 623456.7, 9308123.4, -55.884476594, -6.258550640, EPSG:5882",
        "PSAD-56, 19, true, 337500, 8562300, -70.500180636, -13.004130832, EPSG:1208",
    })
    void oldDatumsLeadToTheSamePlacesAsAnotherProgram(
            String datum, int zone, boolean south, double x, double y, double lon, double lat, String operation) {
        String code = Datums.code(datum);
        Fix fix = read(zone == 0 ? PointSystem.degrees(code) : PointSystem.utm(zone, south, code), x, y);
        assertThat(fix.longitude()).isCloseTo(lon, PRINTED);
        assertThat(fix.latitude()).isCloseTo(lat, PRINTED);
        assertThat(fix.shift())
                .hasValueSatisfying(s -> assertThat(s.operation()).contains(operation));
    }

    /** Every datum of the table, in the middle of each of its areas, against cs2cs where this machine has it. */
    @Test
    void everyDatumAgreesWithAnotherProgram() throws IOException, InterruptedException {
        assumeTrue(hasCs2cs(), "no cs2cs on this machine: datums are not compared with another program");
        int compared = 0;
        for (String code : Datums.names().values()) {
            Datum datum = Datums.find(code).orElseThrow();
            for (Datum.Shift shift : datum.shifts().stream().limit(3).toList()) {
                double x = Math.rint((shift.west() + shift.east()) / 2 * 100) / 100;
                double y = Math.rint((shift.south() + shift.north()) / 2 * 100) / 100;
                double[] lonLat = LayerCrs.of(datum.degrees(shift)).toLonLat(x, y);
                double[] other = cs2cs(datum, shift, x, y);
                assertThat(Geodesy.distance(lonLat[0], lonLat[1], other[0], other[1]))
                        .as(datum.title() + " by " + shift.operation())
                        .isLessThan(MOLODENSKY);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(80);
    }

    private static boolean hasCs2cs() throws InterruptedException {
        try {
            new ProcessBuilder("cs2cs")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
            return true;
        } catch (IOException absent) {
            return false;
        }
    }

    private static double[] cs2cs(Datum datum, Datum.Shift shift, double x, double y)
            throws IOException, InterruptedException {
        String shifts = shift.parameters().stream().map(String::valueOf).collect(Collectors.joining(","));
        Process process = new ProcessBuilder(
                        "cs2cs",
                        "-f",
                        "%.10f",
                        "+proj=longlat",
                        "+a=" + datum.semiMajor(),
                        "+rf=" + datum.inverseFlattening(),
                        "+towgs84=" + shifts,
                        "+to",
                        "+proj=longlat",
                        "+datum=WGS84")
                .start();
        process.getOutputStream()
                .write(String.format(Locale.ROOT, "%s %s%n", x, y).getBytes(StandardCharsets.US_ASCII));
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        process.waitFor();
        String[] parts = out.strip().split("\\s+");
        return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
    }

    @Test
    void tellsHowFarTheDatumMovedThePointAndWhere() {
        Fix fix = read(PointSystem.degrees("EPSG:4248"), -70.5, -13);
        PointReader.Shift shift = fix.shift().orElseThrow();
        // the distance is that between the two places, by GeographicLib
        assertThat(shift.meters())
                .isCloseTo(Geodesy.distance(-70.5, -13, fix.longitude(), fix.latitude()), within(1e-6));
        assertThat(shift.meters()).isBetween(100.0, 600.0);
        assertThat(shift.direction()).isEqualTo("south-west");
        assertThat(shift.datum()).isEqualTo("PSAD56 (EPSG:4248)");
        assertThat(shift.operation()).contains("EPSG:1208 (Peru - onshore; good to 16 m)");
        assertThat(shift.doubtMeters()).isGreaterThan(1);
    }

    @Test
    void modernDatumsAreNotShiftedAndUtmIsThatOfWgs84() {
        assertThat(read(PointSystem.degrees(Datums.code("SIRGAS 2000")), -60.25, -3.5))
                .isEqualTo(read(PointSystem.wgs84(), -60.25, -3.5));
        double[] utm = LayerCrs.of("EPSG:32721").toLonLat(400_000, 9_300_000);
        Fix fix = read(PointSystem.utm(21, true, Datums.WGS84), 400_000, 9_300_000);
        assertThat(fix.longitude()).isCloseTo(utm[0], PRINTED);
        assertThat(fix.shift()).isEmpty();
        Fix sirgas = read(PointSystem.utm(21, true, Datums.code("sirgas2000")), 400_000, 9_300_000);
        assertThat(sirgas.latitude()).isCloseTo(utm[1], PRINTED);
    }

    @Test
    void aProjectedSystemByItsCodeAndTheLayersOwn() {
        Fix grid = read(PointSystem.grid("EPSG:32650"), 400_000, 120_000);
        assertThat(grid.longitude()).isCloseTo(116.101202094, PRINTED);
        Fix own = new PointReader(LayerCrs.of("EPSG:32650")).read(PointSystem.layer(), 400_000, 120_000);
        assertThat(own.latitude()).isCloseTo(1.085541891, PRINTED);
        assertThatThrownBy(() -> read(PointSystem.grid("EPSG:4326"), 40, 12))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("is a system of degrees");
    }

    /** References: cct of PROJ 9.1.1 with the EPSG operation named last; the places are those of gold workings. */
    @ParameterizedTest
    @CsvSource({
        "Bogota 1975, -75, 6, EPSG:15723",
        "Bogota 1975, -74, 8, EPSG:15721",
        "Bogota 1975, -77.5, 12.5, EPSG:1125",
        "Pulkovo 1942, 60, 55, EPSG:5044",
        "Pulkovo 1942, -172, 65, EPSG:5044",
        "PSAD56, -64, 7, EPSG:1095",
        "Minna, 7, 9, EPSG:1168",
        "AGD66, 148, -36, EPSG:1666",
        "Ocotepeque 1935, -84, 10, EPSG:6889",
    })
    void aWholeCountryHasATransformationNotItsOilFieldsAlone(String datum, double x, double y, String operation)
            throws IOException, InterruptedException {
        Fix fix = read(PointSystem.degrees(Datums.code(datum)), x, y);
        assertThat(fix.shift())
                .hasValueSatisfying(s -> assertThat(s.operation()).contains(operation));
        assumeTrue(hasCs2cs(), "no cct on this machine: the place is not compared with another program");
        double[] other = cct(operation, x, y);
        assertThat(Geodesy.distance(fix.longitude(), fix.latitude(), other[0], other[1]))
                .isLessThan(MOLODENSKY);
    }

    private static double[] cct(String operation, double x, double y) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("cct", "-d", "10", operation).start();
        process.getOutputStream()
                .write(String.format(Locale.ROOT, "%s %s 0 0%n", y, x).getBytes(StandardCharsets.US_ASCII));
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        process.waitFor();
        String[] parts = out.strip().split("\\s+");
        return new double[] {Double.parseDouble(parts[1]), Double.parseDouble(parts[0])};
    }

    @Test
    void aNeighborCountrysTransformationIsNamedBesideTheOneTaken() {
        PointReader.Shift guyana = read(PointSystem.degrees(Datums.code("SAD69")), -58.9, 5.0)
                .shift()
                .orElseThrow();
        assertThat(guyana.operation()).contains("(Brazil; good to 5 m)");
        assertThat(guyana.others()).anySatisfy(other -> {
            assertThat(other.operation()).isEqualTo("EPSG:1872 (Guyana - onshore; good to 12 m)");
            assertThat(other.meters()).isBetween(5.0, 30.0);
        });
        PointReader.Shift tanzania = read(PointSystem.degrees(Datums.code("Arc 1960")), 37, -3)
                .shift()
                .orElseThrow();
        assertThat(tanzania.others())
                .extracting(PointReader.OtherWay::operation)
                .anyMatch(operation -> operation.contains("Tanzania"));
    }

    @Test
    void anAccuracyThatNobodyKnowsComesLastAndIsNoNumber() {
        PointReader.Shift segara =
                read(PointSystem.degrees(Datums.code("Segara")), 116, 3).shift().orElseThrow();
        assertThat(segara.operation()).contains("EPSG:1897 (Indonesia - Kalimantan E; accuracy not known)");
        for (String code : Datums.names().values()) {
            assertThat(Datums.find(code).orElseThrow().shifts())
                    .as(code)
                    .noneMatch(shift -> shift.accuracy() >= 900 && Double.isFinite(shift.accuracy()));
        }
        List<Datum.Shift> russia = Datums.find("EPSG:4284").orElseThrow().shiftsAt(60, 60);
        assertThat(russia.get(russia.size() - 1).operation()).isEqualTo("EPSG:1254");
    }

    @Test
    void aProjectedSystemsCodeLeadsWhereItsDatumAndZoneDo() {
        Fix named = read(PointSystem.utm(21, true, Datums.code("SAD69")), 623_456.7, 9_308_123.4);
        Fix coded = read(PointSystem.grid("EPSG:29191"), 623_456.7, 9_308_123.4);
        assertThat(Geodesy.distance(named.longitude(), named.latitude(), coded.longitude(), coded.latitude()))
                .isLessThan(MOLODENSKY);
        assertThat(coded.shift().orElseThrow().operation())
                .isEqualTo(named.shift().orElseThrow().operation());
        // on a layer of that very system, points go as the layer does, and it is told
        LayerCrs layer = LayerCrs.of("EPSG:29191");
        Fix own = new PointReader(layer).read(PointSystem.grid("EPSG:29191"), 623_456.7, 9_308_123.4);
        double[] onLayer = layer.toLonLat(623_456.7, 9_308_123.4);
        assertThat(own.longitude()).isCloseTo(onLayer[0], PRINTED);
        assertThat(own.shift().orElseThrow().operation()).contains("as the layer");
    }

    @Test
    void withoutAKnownTransformationAPointIsRefused() {
        // used in South America alone; 30 E 2 S lies in Africa
        assertThatThrownBy(() -> read(PointSystem.degrees("EPSG:4618"), 30, -2))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining(
                        "no transformation from datum SAD69 (EPSG:4618) to WGS 84 is known at 30.000, -2.000")
                .hasMessageContaining("it is used in South America - onshore")
                .hasMessageContaining("more areas; give the position in another datum");
        // EPSG has grids alone for this one
        assertThatThrownBy(() -> read(PointSystem.degrees(Datums.code("Corrego Alegre 1961")), -45, -15))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("EPSG gives none that is a shift of axes");
        // Beijing 1954 is not in the table; Mongolia is in none of its areas but the register's way is not to be
        // trusted
        assertThatThrownBy(() -> read(PointSystem.utm(21, true, "EPSG:4610"), 400_000, 9_300_000))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("EPSG:4610 is not among the datums known here");
    }

    @ParameterizedTest
    @CsvSource({
        "WGS84, EPSG:4326",
        "WGS 84, EPSG:4326",
        "wgs-1984, EPSG:4326",
        "SAD 69, EPSG:4618",
        "So Amrcn '69, EPSG:4618",
        "Provisional South American Datum 1956, EPSG:4248",
        "Prov So Amrcn '56, EPSG:4248",
        "C\u00f3rrego Alegre, EPSG:4225",
        "NAD27, EPSG:4267",
        "Arc 1960, EPSG:4210",
        "arc1950, EPSG:4209",
        "EPSG:4218, EPSG:4218",
        "urn:ogc:def:crs:EPSG::29191, EPSG:29191",
    })
    void namesAreReadAsTheyAreWritten(String written, String code) {
        assertThat(Datums.code(written)).isEqualTo(code);
    }

    @ParameterizedTest
    @CsvSource({
        "SAD 96, nearest known one is SAD69",
        "PSAD57, nearest known one is PSAD56",
        "PSAD 65, nearest known one is PSAD56",
        "Clarke 1866, names an ellipsoid",
        "the hill behind the camp, give the name of a datum",
    })
    void othersAreRefusedWithTheNearest(String written, String message) {
        assertThatThrownBy(() -> Datums.code(written))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("datum \"" + written + "\" is not known")
                .hasMessageContaining(message);
    }

    @Test
    void someWordsSayThatNobodyKnows() {
        assertThat(List.of("UNKWN", "Unknown", "OTHER", "?", "n/a")).allMatch(Datums::isUnknown);
        assertThat(Datums.isUnknown("SAD69")).isFalse();
    }
}
