// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.compare.Comparison;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Texts;
import org.silverwake.geo.map.MapFormat;

/** Sheets of the demo basin as a reader of PDF finds them. */
class PrintedSheetsTest {
    private static final Path DEMO = Path.of("..", "scenarios", "lantern");
    /** Letters that subtend 5 minutes of arc at 10 m [mm]: what sight of 6/6 resolves (Snellen; ISO 8596). */
    private static final double AT_TEN_METERS = 10_000 * Math.tan(Math.toRadians(5.0 / 60));

    private static final List<String> SITES = List.of(
            "Sconce", "Wickmill", "Pestle", "Quinquet mill", "Two Lamps", "Mantle sheds", "Chimney", "Girandole tanks");
    private static final List<String> VILLAGES =
            List.of("Tallowby", "Emberfold", "Candelhas", "Ljóskelda", "Mwangurobe", "Sulurenda", "Pavío", "Pelitarra");

    @TempDir
    private Path folder;

    /** The demo with other words in its scenario. */
    private Outcome demo(String audience, String paper, String kinds, String language) throws IOException {
        return demo(audience, paper, kinds, language, "scenario.yaml");
    }

    private Outcome demo(String audience, String paper, String kinds, String language, String file) throws IOException {
        Path copy = Files.createDirectories(folder.resolve("lantern"));
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path each : files.toList()) {
                Files.copy(each, copy.resolve(each.getFileName()), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
        }
        String text = Files.readString(copy.resolve(file));
        String[] how = paper.split(" ");
        String keys = "sheets:\n  paper: " + how[0] + "\n  orientation: " + how[1] + "\n  kinds: [" + kinds + "]\n";
        text = text.replaceAll("\n  kinds: \\[.*\\]", "");
        text = text.contains("\nsheets:\n") ? text.replace("\nsheets:\n", "\n" + keys) : text + "\n" + keys;
        text = text.replace("\noutputs:\n", "\noutputs:\n  audience: " + audience + "\n");
        Files.writeString(copy.resolve(file), "language: " + language + "\n" + text);
        return MainRun.run(copy.resolve(file), step -> {});
    }

    private Path sheets(Outcome outcome) {
        Path sheets = folder.resolve("sheets");
        PrintedSheets.draw(outcome, sheets, Set.of(MapFormat.PDF));
        return sheets;
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return new TreeSet<>(files.map(f -> f.getFileName().toString()).toList());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "public, A4 landscape, en",
        "public, A4 portrait, en",
        "public, A3 portrait, es",
        "office, A3 landscape, en",
        "office, A1 portrait, es",
        "public, A1 landscape, en"
    })
    void noTextLiesOnAnotherOrBeyondThePage(String audience, String paper, String language) throws IOException {
        Path sheets = sheets(demo(audience, paper, "map, flow-states, profile, site-shares", language));
        assertThat(names(sheets))
                .containsExactly(
                        "flow-states.pdf",
                        "map-dry.pdf",
                        "map-flood.pdf",
                        "map-wet.pdf",
                        "profile-lantern-main-stem.pdf",
                        "site-shares-dry.pdf",
                        "site-shares-flood.pdf",
                        "site-shares-wet.pdf");
        for (String name : names(sheets)) {
            SheetReader sheet = new SheetReader(sheets.resolve(name));
            assertThat(sheet.letters()).as(name).hasSizeGreaterThan(800);
            assertThat(sheet.overlaps()).as(name).isEmpty();
            assertThat(sheet.fontsNotEmbedded()).as(name).isEmpty();
        }
    }

    @Test
    void publicSheetsNameNoSiteAndOfficeSheetsSayThatTheyAreNotForPosting() throws IOException {
        Texts texts = Texts.of("en");
        Path sheets = sheets(demo("public", "A3 landscape", "map, flow-states, profile, site-shares", "en"));
        for (String name : names(sheets)) {
            String text = new SheetReader(sheets.resolve(name)).text();
            assertThat(SITES).as(name).noneMatch(text::contains);
            assertThat(text)
                    .as(name)
                    .doesNotContain(texts.text("not-for-posting"), "Girandole tanks", "Girandole yard", "Mantle Flats");
        }
        assertThat(new SheetReader(sheets.resolve("map-dry.pdf")).text()).contains("Upper Lamp", "Quinquet Hill");
        Path office = sheets(demo("office", "A3 landscape", "map", "en"));
        String text = new SheetReader(office.resolve("map-dry.pdf")).text();
        assertThat(text).contains(texts.text("not-for-posting"), "Quinquet mill");
    }

    @Test
    void everySheetHasAllCautionsAndWhoMadeItAndUntilWhen() throws IOException {
        Texts texts = Texts.of("en");
        Path sheets = sheets(demo("public", "A4 portrait", "map, flow-states, profile, site-shares", "en"));
        for (String name : names(sheets)) {
            String words = new SheetReader(sheets.resolve(name)).text().replaceAll("\\s+", "");
            for (String caution : texts.numbered("caution")) {
                // lines of columns side by side come in turn: words are looked for one by one
                assertThat(Stream.of(caution.split(" "))).as(name).allMatch(words::contains);
            }
            assertThat(words).as(name).contains("DonotuseafterNovember25,2027", "MadebySilverwakedemo");
            assertThat(words).as(name).contains("Districthealthpost");
        }
    }

    @Test
    void aTranslationThatNobodyReadIsADraft() throws IOException {
        Path sheets = sheets(demo("public", "A4 landscape", "map", "fr"));
        assertThat(new SheetReader(sheets.resolve("map-dry.pdf")).text())
                .contains(Texts.of("fr").text("draft"));
        Path english = sheets(demo("public", "A4 landscape", "map", "en"));
        assertThat(new SheetReader(english.resolve("map-dry.pdf")).text())
                .doesNotContain(Texts.of("en").text("draft"));
    }

    @ParameterizedTest
    @CsvSource({"A1 landscape, 25, 8", "A1 portrait, 25, 7.5"})
    void titleAnswersAndVillagesAreReadFromAfarAndCautionsAtArmsLength(String paper, double title, double village)
            throws IOException {
        Path sheets = sheets(demo("public", paper, "map", "en"));
        SheetReader sheet = new SheetReader(sheets.resolve("map-dry.pdf"));
        assertThat(SheetReader.onA1(sheet.sizeOf("Mercury in river water"))).isGreaterThan(title);
        for (String answer : List.of("Above the guide value", "May be above it", "Below by this", "Not assessed")) {
            assertThat(SheetReader.onA1(sheet.sizeOf(answer))).as(answer).isGreaterThan(AT_TEN_METERS);
        }
        for (String name : VILLAGES) {
            assertThat(SheetReader.onA1(sheet.sizeOf(name))).as(name).isGreaterThan(village);
        }
        assertThat(sheet.sizeOf("Boiling the water")).isGreaterThanOrEqualTo(9);
    }

    /** Words in the PDF as a reader finds them; all states have the same scale of values. */
    @Test
    void theProfileHasEachStateThePlacesByTheWayAndUnits() throws IOException {
        Path sheets = sheets(demo("public", "A3 landscape", "profile", "en"));
        String text = new SheetReader(sheets.resolve("profile-lantern-main-stem.pdf")).text();
        for (String line : List.of("dry", "wet", "flood", "Tallowby", "Emberfold", "Lucernhaven", "136 km")) {
            assertThat(text).contains(line);
        }
        assertThat(text.split("100 \u00b5g/L", -1)).hasSize(4);
        assertThat(text.split("guide value 0.026 \u00b5g/L", -1)).hasSize(4);
        Path spanish = sheets(demo("public", "A3 landscape", "profile", "es"));
        assertThat(new SheetReader(spanish.resolve("profile-lantern-main-stem.pdf")).text())
                .contains("0,0001 \u00b5g/L", "0,026 \u00b5g/L");
    }

    @Test
    void recoveryIsDrawnWhereAHistoryIsGiven() throws IOException {
        Path sheets = sheets(demo("public", "A3 landscape", "recovery", "en", "years.yaml"));
        assertThat(names(sheets)).isNotEmpty().allMatch(name -> name.startsWith("recovery-"));
        for (String name : names(sheets)) {
            SheetReader sheet = new SheetReader(sheets.resolve(name));
            assertThat(sheet.overlaps()).as(name).isEmpty();
            assertThat(sheet.text()).contains("Within 5 years");
        }
    }

    /** 333 reaches of the White River (open data of the National Hydrography Dataset Plus); sites and places are invented. */
    @ParameterizedTest
    @CsvSource({"public, A4 landscape", "office, A4 portrait"})
    void aRealNetworkHasNoTextOnAnother(String audience, String paper) throws IOException {
        Path rivers =
                Path.of(System.getProperty("silverwake.shared", ""), "data/open/networks/nhdplus_white_river_ar.gpkg");
        assumeTrue(Files.isRegularFile(rivers), "open data is not here: " + rivers);
        String[] how = paper.split(" ");
        Files.writeString(folder.resolve("scenario.yaml"), """
                title: A river
                prepared-by: a test
                date: 2026-11-25
                rivers:
                  file: %s
                  id: comid
                  name: gnis_name
                  columns: {drainage-area: {column: totdasqkm, unit: km2}}
                flow-states:
                  low: {share-of-year: 1, temperature: 20 degC, suspended-sediment: 20 mg/L, lateral-filtered-mercury: 0.3 ng/L}
                discharge: {method: specific-discharge, specific-discharge: {low: 5 L/s/km2}}
                channel: {method: hydraulic-geometry, manning-n: 0.035}
                solids:
                  classes: {silt: {diameter: 20 um, tau-cd: 0.3 Pa, background-share: 1, tailings-share: 1}}
                background: {solids-mercury-content: 0.02 mg/kg}
                sites: {file: sites.csv, snap-distance: 5 km}
                places: {file: places.csv, snap-distance: 5 km}
                guidelines: {use: [CCME-FW-iHg]}
                outputs: {audience: %s}
                sheets: {paper: %s, orientation: %s, kinds: [map, site-shares]}
                """.formatted(rivers, audience, how[0], how[1]));
        Files.writeString(folder.resolve("sites.csv"), """
                name,group,longitude,latitude,path,release,exchangeable_share
                Yard one,Hills,-93.80,36.60,slurry,3 kg/yr,0.5
                Yard two,Hills,-93.75,36.62,slurry,2 kg/yr,0.5
                Yard three,Hills,-93.70,36.58,slurry,1 kg/yr,0.5
                """);
        Files.writeString(folder.resolve("places.csv"), """
                name,use,people,longitude,latitude
                First Ford,village,10,-93.72,36.55
                Second Ford,village,20,-93.65,36.52
                Third Ford,drinking intake,0,-93.60,36.50
                """);
        Path sheets = sheets(MainRun.run(folder.resolve("scenario.yaml"), step -> {}));
        for (String name : names(sheets)) {
            SheetReader sheet = new SheetReader(sheets.resolve(name));
            assertThat(sheet.overlaps()).as(name).isEmpty();
            assertThat(sheet.text()).as(name).contains("First Ford");
        }
    }

    @Test
    void beforeAndAfterStandSideBySideWithKilograms() throws IOException {
        Outcome today = demo("public", "A3 landscape", "map", "en");
        Path lantern = folder.resolve("lantern");
        Files.writeString(
                lantern.resolve("half.yaml"),
                Files.readString(lantern.resolve("scenario.yaml")).replace("sites.csv", "half.csv"));
        // 900, 600 and 350 t/yr of slurry at 22, 35 and 48 mg/kg: half of the first is 9.9 kg/yr less than 90.75, as
        // balance.csv has it
        Files.writeString(
                lantern.resolve("half.csv"),
                Files.readString(lantern.resolve("sites.csv")).replace("slurry,900,", "slurry,450,"));
        Outcome half = MainRun.run(lantern.resolve("half.yaml"), step -> {});
        Comparison comparison = Comparison.of(
                List.of(lantern.resolve("scenario.yaml"), lantern.resolve("half.yaml")), List.of(today, half));
        Path sheets = folder.resolve("change");
        ChangeSheets.draw(comparison, sheets, Set.of(MapFormat.PDF));
        assertThat(names(sheets)).hasSize(1);
        SheetReader sheet =
                new SheetReader(sheets.resolve(names(sheets).iterator().next()));
        assertThat(sheet.overlaps()).isEmpty();
        assertThat(sheet.text().replaceAll("\\s+", "")).contains("90.7kg,then80.8kg");
    }
}
