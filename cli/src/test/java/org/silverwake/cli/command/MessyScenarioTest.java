// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo with one thing wrong: exit code 2 for the scenario and its tables, 3 for data; one clear line each. */
class MessyScenarioTest {
    private static final int SCENARIO = 2;
    private static final int DATA = 3;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void copy() {
        messy = Messy.lantern(temporary.resolve("lantern"));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                // found | written instead | the line says
                "21 degC | 21 | flow-states.dry.temperature: 21 has no unit; give a temperature in one of",
                "18 mg/L | 18 mg/kg | mg/kg is a unit of content per dry mass, not of concentration; give one of",
                "snap-tolerance | snap-tolerence | snap-tolerence: is not a key; the nearest known one is snap-tolerance",
                "file: sites.csv | file: site.csv | sites.file: there is no file site.csv; give a path from",
                "manning-n: 0.035 | manning-n: -0.035 | channel.manning-n: -0.035 is not allowed; give 0.01 to 0.3",
                "year: 0.42 | year: 42 | flow-states.wet.share-of-year: 42 is not allowed; give 0 to 1",
                "5 um, | 5 um, log10-kd: 200000, | it looks like Kd itself, whose logarithm is 5.30103",
                "5 um, | 5 um, kd: 5.3 L/kg, | kd: is not a key; the nearest known one is log10-kd",
                "diameter: 5 um | diameter: -5 um | diameter: -5 um is not allowed; give 0.1 to 10000 um",
                "unit: km2 | unit: m | m is a unit of length, not of area; give one of m2, km2",
                "2026-11-25 | 25/11/2026 | \"25/11/2026\" is not a date; give it as YYYY-MM-DD",
                "title: Lantern | title: A%title: Lantern | title: is written twice; keep one",
                "use: [CCME-FW-iHg | use: [CCME-FW-iHgg | CCME-FW-iHgg is not known (did you mean CCME-FW-iHg?)",
                "SED-ISQG] | SED-ISQG, USEPA-RfC-Hg0] | USEPA-RfC-Hg0 is a limit in air or of intake",
                "guideline: CCME-FW-iHg | guideline: EU | EU is not among the guidelines used; give one of CCME-FW-iHg",
                "guideline: CCME-FW-iHg | guideline: WHO-DW-iHg | WHO-DW-iHg is not compared with reaches; give one of",
                "guideline: CCME-FW-iHg | guideline: CCME-SED-ISQG | is for bed sediment, but the map's medium is surface water",
                "medium: surface water | medium: sediment | \"sediment\" is not known; the nearest known one is bed sediment",
            })
    void scenario(String old, String replacement, String said) {
        messy.yaml(old, replacement.replace("%", "\n"));
        messy.does("check").refuses(SCENARIO, "scenario.yaml", said);
        assertThat(messy.out()).doesNotExist();
    }

    /** The network can be looked at all the same. */
    @Test
    void endOfAProfile() {
        String said =
                "L0210 is neither a feature of the river layer nor a site or place; the nearest known one is L021";
        messy.yaml("from: L021", "from: L0210");
        messy.does("run").refuses(SCENARIO, "scenario.yaml", said);
        assertThat(messy.out()).doesNotExist();
        messy.does("check").refuses(SCENARIO, "scenario.yaml", said);
        assertThat(messy.out().resolve("check.html")).content().contains(said);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "-19.6496,-30.0822 | 0,0 | 2 | sites.csv:2 longitude, latitude: 0, 0 means no position fix; give",
                "-19.6496,-30.0822 | -19.6496,-30.44 | 3 | lies 39.0 km from the nearest reach, L021 (Lantern River); at most 500 m",
                "-19.6496,-30.0822 | -30.0822,-19.6496 | 3 | with longitude and latitude swapped (-19.649600, -30.082200",
                "-19.6496,-30.0822 | 19.6496,-30.0822 | 3 | with the longitude's sign changed (-19.649600, -30.082200",
                "-19.6496,-30.0822 | -19.6496,-300.822 | 2 | sites.csv:2 latitude: -300.822 is not allowed; give",
                "Wickmill sheds | Sconce sheds | 2 | sites.csv:3 name: \"Sconce sheds\" is there twice; give each row its own",
                "slurry,900 | slurry,-900 | 2 | sites.csv:2 tailings: -900 t/yr is not allowed; give 0 to 1e9 t/yr",
                "slurry,900 | slurry,9e12 | 2 | sites.csv:2 tailings: 9e12 t/yr is not allowed; give 0 to 1e9 t/yr",
                "900,t/yr,22,mg/kg | 900,t/yr,22,mg/L | 2 | mg/L is a unit of concentration, not of content per dry mass",
                "900,t/yr,22,mg/kg | 900,,22,mg/kg | 2 | sites.csv:2 tailings: 900 has no unit; give",
                "name,group | nam,group | 2 | sites.csv:1 name: this column is missing; add it",
                "year_share_dry | year_share_dri | 2 | sites.csv:1 year_share_dri: is not a column here; the nearest known one is year_share_dry",
                "tailings,tailings_unit | tailing,tailings_unit | 2 | sites.csv:1 tailing: is not a column here; the nearest known one is tailings",
            })
    void sites(String old, String replacement, int code, String said) {
        messy.with("sites.csv", old, replacement);
        messy.does("check").refuses(code, "sites.csv", said);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE gpkg_geometry_columns SET srs_id = -1 | states no coordinate system; give rivers.crs",
                "DELETE FROM rivers | layer \"rivers\" has no features; give a layer that has some",
                "UPDATE rivers SET geom = NULL | no usable line among 80 features; give a layer of lines",
                "UPDATE rivers SET area_km2 = 'abc' WHERE reach_id = 'L005' | feature L005, column area_km2 (drainage-area): \"abc\" is not a number",
                "UPDATE rivers SET area_km2 = -5 WHERE reach_id = 'L005' | \"-5.0\" is negative; give 0 or more",
            })
    void rivers(String statement, String said) {
        messy.rivers(statement);
        messy.does("check").refuses(DATA, "rivers.gpkg", said);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "column: area_km2 | column: area | rivers.columns.drainage-area names column area, which the layer does not have",
                "id: reach_id | id: reachid | there is no id column \"reachid\"; nearest is \"reach_id\"",
                "name: river | name: rivers | rivers.name names column rivers, which the layer does not have",
                "layer: rivers | layer: river | there is no layer \"river\"; the layers are rivers",
                "layer: rivers | crs: EPSG:32726 | the file states WGS 84 (EPSG:4326), but rivers.crs says WGS 84 / UTM zone 26S",
                "[L001] | [L901] | no line has the id L901; did you mean L0",
            })
    void riverKeys(String old, String replacement, String said) {
        messy.yaml(old, replacement);
        messy.does("check").refuses(DATA, said);
    }

    /** A page that says "please log in", saved under the file's name. */
    @ParameterizedTest
    @CsvSource({"rivers.gpkg, is not a GeoPackage", "dem.tif, cannot be read as a GeoTIFF elevation raster"})
    void filesThatAreSomethingElse(String file, String said) {
        messy.file(file, "<html>log in</html>");
        messy.does("check").refuses(DATA, file, said);
    }

    @ParameterizedTest
    @CsvSource({"rivers.gpkg, rivers.file", "dem.tif, rivers.elevation.file", "places.csv, places.file"})
    void filesThatAreMissing(String file, String key) {
        messy.without(file);
        messy.does("run").refuses(SCENARIO, key + ": there is no file " + file);
    }

    @Test
    void allProblemsInOneGo() {
        messy.yaml("21 degC", "21")
                .yaml("snap-tolerance", "snap-tolerence")
                .yaml("use: [CCME-FW-iHg", "use: [CCME-FW-iHgg")
                .with("sites.csv", "slurry,900", "slurry,-900")
                .with(
                        "places.csv",
                        "district roll 2025 (invented),-19.6335,-30.0731",
                        "district roll 2025 (invented),0,0");
        Messy.Said said = messy.does("run");
        assertThat(said.err()).hasSize(5);
        assertThat(said.err().get(0)).startsWith("scenario.yaml:16 ");
        assertThat(said.code()).isEqualTo(SCENARIO);
    }

    @Test
    void everyPointThatIsFarIsTold() {
        messy.with("sites.csv", "-19.6496,-30.0822", "-19.6496,-30.6")
                .with("places.csv", "-19.6335,-30.0731", "-30.0731,-19.6335");
        Messy.Said said = messy.does("check");
        said.refuses(DATA, "sites.csv:2 site \"Sconce sheds\": lies 56.7 km");
        said.refuses(DATA, "places.csv:2 place \"Tallowby\"", "swapped");
    }

    @Test
    void twoFeaturesOfOneIdAreNamed() {
        messy.rivers("UPDATE rivers SET reach_id = 'L002' WHERE reach_id = 'L003'");
        Messy.Said said = messy.does("check");
        assertThat(said.code()).isZero();
        assertThat(said.all()).contains("duplicate id", "id L002 is used by 2 features");
    }

    @Test
    void semicolonsDecimalCommasAndOfficeLetters() throws Exception {
        List<String> expected = points(messy.does("check"));
        String table =
                messy.text("places.csv").replace(';', '|').replace(',', ';').replaceAll("(\\d)\\.(\\d)", "$1,$2");
        messy.file("places.csv", table, Charset.forName("windows-1252"));
        assertThat(Files.readString(messy.folder().resolve("places.csv"), Charset.forName("windows-1252")))
                .contains("Ljóskelda;village;240;district roll 2025 (invented);-20,0045");
        assertThat(points(messy.does("check")))
                .isEqualTo(expected)
                .anySatisfy(line -> assertThat(line).startsWith("place Ljóskelda: 198 m"));
    }

    private static List<String> points(Messy.Said said) {
        return said.out().stream()
                .filter(line -> line.startsWith("place ") || line.startsWith("site "))
                .toList();
    }

    @Test
    void aFolderWithSpacesAndAccents() {
        assumeTrue(
                System.getProperty("sun.jnu.encoding", "")
                        .toUpperCase(java.util.Locale.ROOT)
                        .startsWith("UTF"),
                "this machine's file names take no accents");
        Messy accented = Messy.lantern(temporary.resolve("señal río abajo").resolve("año 1"));
        assertThat(accented.does("run").code()).isZero();
        assertThat(accented.out().resolve("maps")).isNotEmptyDirectory();
    }

    @Test
    void noScenario() {
        Messy.say("run", temporary.resolve("none").toString())
                .refuses(SCENARIO, "none: there is no scenario here; give a folder that holds scenario.yaml");
        assertThat(Path.of("out", "none")).doesNotExist();
    }

    @Test
    void slurryIsToldAndMudIsRefused() {
        messy.with("sites.csv", "slurry,900,", "slurry,900000,");
        Messy.Said told = messy.does("run");
        assertThat(told.code()).isZero();
        assertThat(told.all()).contains("slurry, outside this model, above 5 g/L of solids in L021.3", "more reaches");
        assertThat(messy.table("reaches.csv").get(0)).contains(",slurry,");

        messy.with("sites.csv", "slurry,900000,", "slurry,900000000,");
        messy.does("run").refuses(SCENARIO, "reach L021.3: ", " g/L of solids", "above 200 g/L", "lower the tailings");
    }

    @Test
    void noSitesAndNoPlaces() {
        messy.file("scenario.yaml", messy.text("scenario.yaml").replaceAll("(?m)^(sites|places):.*\\n( .*\\n)*", ""));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).isZero();
        assertThat(said.all())
                .contains("above                    0 km", "so nobody is counted; list where people live")
                .doesNotContain("0 people")
                .doesNotContain("released     ");
        assertThat(messy.table("sites.csv")).hasSize(1);
        assertThat(messy.table("places.csv")).hasSize(1);
    }
}
