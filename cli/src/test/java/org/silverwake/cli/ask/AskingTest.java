// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.command.Silverwake;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioInput;
import picocli.CommandLine;

/** Odd answers: each gets one line and is asked again, and what is written at the end can be checked. */
class AskingTest {
    private static final List<String> RIVERS = List.of("", "", "");
    private static final List<String> STATES = List.of("", "", "", "");
    private static final List<String> GAUGE =
            List.of("gauge", "G", "-20.3746", "-30.0052", "15 m3/s", "82 m3/s", "450 m3/s");
    private static final List<String> END = List.of("Peru", "A title", "A name");

    @TempDir
    Path folder;

    private boolean written;

    @BeforeEach
    void riverFile() throws IOException {
        Files.copy(Path.of("..", "scenarios", "lantern", "rivers.gpkg"), folder.resolve("rivers.gpkg"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wrong.gpkg | there is no file wrong.gpkg; give a file's name",
                ". | . is a folder; give a file's name",
            })
    void noRiverFile(String answer, String line) throws IOException {
        assertThat(ask(List.of(answer, "\"rivers.gpkg\"", "stop"))).contains(line, "80 features in layer rivers");
        assertNothingWritten();
    }

    @ParameterizedTest
    @CsvSource({"stop", "QUIT", "exit"})
    void stops(String word) throws IOException {
        assertThat(ask(concat(RIVERS, List.of(word)))).contains("stopped; nothing was written");
        assertNothingWritten();
    }

    @Test
    void endOfInputAtEveryQuestion() throws IOException {
        List<String> all = concat(RIVERS, STATES, GAUGE, List.of("none"), END.subList(0, 2));
        for (int n = 0; n < all.size(); n++) {
            assertThat(ask(all.subList(0, n))).endsWith("stopped; nothing was written\n");
            assertNothingWritten();
        }
    }

    /** Shapes of the awkward files (README of the open data). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pyshp_REL.zip | holds no lines",
                "planetiler_geopackage-unindexed.gpkg | holds no lines",
                "nga_test.gpkg | is a SQLite database but no GeoPackage",
                "nga_gdal_sample.gpkg | holds several layers: linestring2d",
                "mb_polylinem.shp | states no coordinate system",
            })
    void noRivers(String file, String line) throws IOException {
        Path path = Path.of(System.getProperty("silverwake.shared", ""), "data/open/awkward", file);
        assumeTrue(Files.isRegularFile(path), "open data is not here: " + path);
        assertThat(ask(List.of(path.toAbsolutePath().toString(), "", "rivers.gpkg")))
                .contains(line);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "drainage area = river km2 | river holds text (Lantern River), not numbers",
                "drainage area = nowhere | there is no column \"nowhere\"; columns are",
                "reach id = river | is blank or the same in several features",
                "depth = area_km2 km2 | km2 is a unit of area, not of length",
                "kind = kind m | kind has no unit",
                "height = area_km2 | give one of reach id, river name",
            })
    void columnThatCannotBe(String answer, String line) throws IOException {
        assertThat(ask(List.of("", answer))).contains(line);
    }

    @Test
    void unitOfColumnIsAskedFor() throws IOException {
        String said = ask(List.of("", "discharge = AREA_KM2", "", "m2", "cfs", "discharge = none", "yes"));
        assertThat(said)
                .contains("unit of area_km2, discharge (such as m3/s)", "give a unit, or none")
                .contains("m2 is a unit of area, not of discharge", "area_km2 cfs")
                .contains("3. Where does the water leave");
    }

    @Test
    void outletThatIsNotThere() throws IOException {
        assertThat(ask(concat(RIVERS.subList(0, 2), List.of("L999", "0", "1"))))
                .contains("no reach has the id \"L999\"", "no reach has the id \"0\"", "4. Which states");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dry 0.5, wet 0.4 | they sum to 0.9; give shares that sum to 1",
                "dry | has no share of the year",
                "dry 0.5, dry 0.5 | is there twice",
                "dry season 0.5, dry-season 0.5 | is there twice",
                "dry/low 0.5, wet 0.5 | cannot be the name of a flow state",
                "unit 0.5, wet 0.5 | cannot be the name of a flow state",
            })
    void statesThatCannotBe(String answer, String line) throws IOException {
        assertThat(ask(concat(RIVERS, List.of(answer)))).contains(line).doesNotContain("Water temperature");
    }

    @Test
    void sharesAsPeopleWriteThem() {
        assertThat(texts("dry 7 months, wet 5 months")).containsExactly("dry 0.583333", "wet 0.416667");
        assertThat(texts("Dry: 60%, Wet: 40 %")).containsExactly("dry 0.6", "wet 0.4");
        assertThat(texts("seca 0,25; lluvias 0,75")).containsExactly("seca 0.25", "lluvias 0.75");
        assertThat(texts("all 1")).containsExactly("all 1");
        assertThat(texts("a 0.333, b 0.333, c 0.333,")).containsExactly("a 0.333333", "b 0.333333", "c 0.333334");
    }

    private static List<String> texts(String answer) {
        return StateShares.parse(answer).stream()
                .map(s -> s.state() + " " + s.text())
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24, 20 mg/L, 0.5 ng/L | 24 has no unit",
                "24 degC, 20 mg/L | give three values",
                "24 degC, -20 mg/L, 0.5 ng/L | -20 mg/L is not allowed; give 0 to 200000 mg/L",
                "240 degC, 20 mg/L, 0.5 ng/L | 240 degC is not allowed; give 0 to 45 degC",
                "24 degC, 20 mg/L, 0.5 kg | kg is a unit of mass, not of concentration",
                "24 degC; 20,5 mg/L; 1 ng/L | has a decimal comma",
            })
    void waterThatCannotBe(String answer, String line) throws IOException {
        assertThat(ask(concat(RIVERS, List.of("", answer)))).contains(line).doesNotContain("   wet [");
    }

    @Test
    void gauge() throws IOException {
        String said = ask(concat(
                RIVERS,
                List.of("all 1", ""),
                List.of("gauge", "G", "x", "-30.0052", "-20.3746", "maybe", "again"),
                List.of("20\u00b022'28.6\"W", "30 00 18.7 S", "15", "-1 m3/s", "1,500 m3/s", "15000 L/s", "none"),
                END));
        assertThat(said)
                .contains("\"x\" is not a longitude", "with longitude and latitude swapped", "give again or keep")
                .contains("15 has no unit", "-1 m3/s is not allowed", "could be 1500 or 1.500");
        ScenarioInput.Position at = Scenarios.read(folder).gauges().get(0).position();
        // 30 + 0/60 + 18.7/3600
        assertThat(at.y()).isEqualTo(-30.0051944);
        assertThat(check()).isEqualTo(0);
    }

    @Test
    void yieldNeedsAreas() throws IOException {
        List<String> none = List.of("", "drainage area = none", "", "");
        assertThat(ask(concat(none, STATES, List.of("yield"))))
                .contains("yield needs the drainage areas, which the river file does not have");
    }

    /**
     * The same site, as offices write it; every list ends in the same scenario. Easting and northing by PROJ
     * (gdaltransform, EPSG:4326 to EPSG:32727).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "site,lon,lat,mercury (kg/yr)~A,-19.6496,-30.0822,3",
                "site;lon;lat;Mercury kg/year~A;-19,6496;-30,0822;3,0",
                "site\tlon\tlat\tHg lost (kg per year)~A\t-19.6496\t-30.0822\t3",
                "Sites of the district, 2026~~site,lon,lat,mercury (kg/yr)~A,-19.6496,-30.0822,3~Total,,,3",
                "Mina;Longitud;Latitud;Mercurio (kg/año)~A;-19,6496;-30,0822;3",
                "id,longitude (deg),latitude (deg),mercury,unit~A,-19.6496,-30.0822,3,kg/yr",
                "name,X,Y,release_dry (kg/yr),release_wet (kg/yr),release_flood (kg/yr)~A,-19.6496,-30.0822,3,3,3",
                "name,UTM E,UTM N,Zone,mercury (kg/yr)~A,630141.5,6671337.3,27 S,3",
            })
    void sameSite(String text) throws IOException {
        Charset charset = text.startsWith("Mina") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
        Files.write(folder.resolve("sites.csv"), text.replace('~', '\n').getBytes(charset));
        ask(concat(RIVERS, STATES, GAUGE, List.of("", "", ""), END));
        List<ScenarioInput.Site> sites = Scenarios.read(folder).sites();
        assertThat(sites).extracting(ScenarioInput.Site::name).containsExactly("A");
        double kilogramsPerYear = 1 / (365.25 * 86400);
        assertThat(sites.get(0).mercury().orElseThrow())
                .allSatisfy(rate -> assertThat(rate / kilogramsPerYear).isBetween(2.9999, 3.0001));
        assertThat(check()).isEqualTo(0);
    }

    @Test
    void unitOfReleaseIsAskedFor() throws IOException {
        Files.writeString(folder.resolve("sites.csv"), "site,lon,lat,mercury\nA,-19.6496,-30.0822,3\n");
        String said = ask(concat(RIVERS, STATES, GAUGE, List.of("", "", "barrels", "g/d", "", ""), END));
        assertThat(said)
                .contains("unit of mercury (such as kg/yr)", "give a unit, or none")
                .contains("barrels is not known as a unit of mass per time", "mercury              -> release, g/d");
        assertThat(check()).isEqualTo(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "site,lon,lat,mercury (kg/yr)~A,-19.6,-30.0,3~A,-19.7,-30.0,3 | \"A\" is there twice",
                "site,mercury (kg/yr)~A,3 | longitude, latitude: are blank",
                "site,lon,lat~A,-19.6,-30.0 | release, tailings, effluent: none is given",
                "site,lon,lat,mercury (kg/yr)~A,-19.6,-30.0,unknown | \"unknown\" is not a mass per time",
            })
    void whatIsMissingIsSaidAtTheEnd(String text, String line) throws IOException {
        Files.writeString(folder.resolve("sites.csv"), text.replace('~', '\n'));
        String said = ask(concat(RIVERS, STATES, GAUGE, List.of("", "", ""), END));
        assertThat(said).contains("Before a run, mend in the workbook:", line);
        assertThat(written).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"'' | is empty", "site,lon,lat | has no rows", "a,a,b~1,2,3 | is a column twice"})
    void listThatIsNone(String text, String line) throws IOException {
        Files.writeString(folder.resolve("sites.csv"), text.replace('~', '\n'));
        assertThat(ask(concat(RIVERS, STATES, GAUGE, List.of("", "none"), END))).contains(line, "7. Which country");
    }

    @Test
    void countries() throws IOException {
        List<String> before = concat(RIVERS, STATES, GAUGE, List.of("none"));
        assertThat(ask(concat(before, List.of("Perru", "PER\u00da", "A title", "A name"))))
                .contains("jurisdiction Perru is not in the library (did you mean Peru?)", "12 values");
        assertThat(written).isTrue();
        Files.delete(folder.resolve("scenario.xlsx"));
        assertThat(ask(concat(before, List.of("ghana", "nothing", "pe-eca-1a1", "A title", "A name"))))
                .contains("no national value", "guideline nothing is not known");
        assertThat(check()).isEqualTo(0);
    }

    private void assertNothingWritten() throws IOException {
        assertThat(written).isFalse();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(folder.resolve("rivers.gpkg"));
        }
    }

    private int check() throws IOException {
        StringWriter words = new StringWriter();
        CommandLine line = Silverwake.commandLine();
        line.setOut(new PrintWriter(words));
        line.setErr(new PrintWriter(words));
        return line.execute(
                "check", folder.toString(), "--out", folder.resolve("out").toString());
    }

    private String ask(List<String> answers) throws IOException {
        StringWriter shown = new StringWriter();
        String typed = answers.isEmpty() ? "" : String.join("\n", answers) + "\n";
        try (BufferedReader in = new BufferedReader(new StringReader(typed))) {
            written = Asking.run(in, new PrintWriter(shown), folder, LocalDate.of(2026, 11, 25));
        }
        return shown.toString().replace(System.lineSeparator(), "\n");
    }

    @SafeVarargs
    private static List<String> concat(List<String>... parts) {
        List<String> all = new ArrayList<>();
        for (List<String> part : parts) {
            all.addAll(part);
        }
        return all;
    }
}
