// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioInput;

/** What an officer does to a workbook once its lock is off, and what stands only in a workbook: units, positions, yes and no. */
class OfficersDeedsTest {
    private static final int NAME = 1;
    private static final int LONGITUDE = 2;

    /** A second of arc has been given to a tenth; half of it [degrees]. */
    private static final double PRINTED = 0.05 / 3600;

    @TempDir
    private Path original;

    @TempDir
    private Path changed;

    private RawWorkbook book;

    @BeforeEach
    void copy() throws IOException {
        book = RawWorkbook.copyOf(SmallWorkbook.write(original));
        Files.writeString(changed.resolve("rivers.gpkg"), "");
    }

    private ScenarioInput read() {
        book.write(changed.resolve(WorkbookReader.FILE));
        return Scenarios.read(changed);
    }

    private List<String> refused() {
        book.write(changed.resolve(WorkbookReader.FILE));
        return WrongWorkbooksTest.refused(changed);
    }

    @Test
    void insertedColumnWithoutContent() {
        book.insertColumn("Sites", LONGITUDE);
        read();
        SmallWorkbook.assertSame(original, changed);
    }

    @Test
    void columnOfOnesOwnIsToldAndNotRead() {
        book.insertColumn("Sites", LONGITUDE).text("Sites!C4", "Owner").text("Sites!C6", "N. N.");
        assertThat(read().warnings())
                .contains("Sites!C3: the column \"Owner\" has no fixed name here, above its heading; it was not read");
        SmallWorkbook.assertSame(original, changed);
    }

    @Test
    void fixedNameCleared() {
        String place = book.resolve("[Sites|release|3]");
        book.blank(place);
        assertThat(refused())
                .contains(place
                        + ": the column \"Mercury released\" has no fixed name here, above its heading; put it back as"
                        + " a new workbook has it, or delete the column");
    }

    @Test
    void columnDeleted() {
        book.deleteColumn("Sites", NAME);
        assertThat(refused()).anyMatch(line -> line.startsWith("Sites!") && line.contains("name"));
    }

    @Test
    void columnNamedAnew() {
        book.blank("[Sites|release|3]").text("Sites!Z3", "mercury");
        assertThat(refused()).noneMatch(line -> line.contains("null"));
    }

    @Test
    void lockFileAloneIsNoScenario() throws IOException {
        Path folder = Files.createDirectory(changed.resolve("open"));
        Files.write(folder.resolve("~$scenario.xlsx"), new byte[165]);
        assertThat(WrongWorkbooksTest.refused(folder))
                .containsExactly(folder + ": there is no scenario here; give a folder that holds scenario.yaml or"
                        + " scenario.xlsx");
    }

    @Test
    void lockFileGivenForTheWorkbook() throws IOException {
        Path lock = changed.resolve("~$scenario.xlsx");
        Files.write(lock, new byte[165]);
        assertThat(WrongWorkbooksTest.refused(lock))
                .containsExactly(
                        "~$scenario.xlsx: is the mark of a program that has the workbook open; give scenario.xlsx,"
                                + " and close it there after saving");
    }

    @ParameterizedTest
    @CsvSource({"yes,no", "S\u00ed,No", "TRUE,FALSE", "verdadero,falso"})
    void yesAndNo(String yes, String no) {
        book.text("[Flow states|flood|6]", yes).text("[Flow states|flood|7]", no);
        assertThat(read().states().get(0).flood()).isTrue();
        assertThat(read().states().get(1).flood()).isFalse();
    }

    /** 12 kg/yr is 4 sacks of 3 kg: the same by hand. */
    @Test
    void unitsOfOnesOwnLikeTheTextDoor() throws IOException {
        Map<String, String> site = Map.of(
                "name", "Shed", "longitude", "-20.1", "latitude", "-30.1", "path", "slurry", "release", "4 sack/yr");
        WorkbookContents.Builder contents =
                SmallWorkbook.contents().put("units.sack", "3 kg").put("units.tin", "18 L");
        contents.addRow(
                "sites",
                Map.of(
                        "name",
                        "Vat",
                        "longitude",
                        "-20.1",
                        "latitude",
                        "-30.1",
                        "path",
                        "seepage",
                        "effluent",
                        "40 tin/d",
                        "concentration",
                        "5 ug/L"));
        contents.addRow(
                "sites",
                site.entrySet().stream()
                        .collect(java.util.stream.Collectors.toMap(
                                Map.Entry::getKey, e -> e.getKey().equals("name") ? "Sacks" : e.getValue())));
        SmallWorkbook.write(changed, contents.build(), "en");
        ScenarioInput found = Scenarios.read(changed);
        assertThat(String.valueOf(found.sites())).contains("Sacks");
        Path text = Files.createDirectory(changed.resolve("text"));
        Files.writeString(text.resolve("rivers.gpkg"), "");
        Files.writeString(text.resolve("sites.csv"), """
                name,longitude,latitude,path,release,effluent,concentration
                Shed,-20.1,-30.1,slurry,12 kg/yr,,
                Mill,-20.1,-30.1,slurry,12 kg/yr,,
                Vat,-20.1,-30.1,seepage,,40 tin/d,5 ug/L
                Sacks,-20.1,-30.1,slurry,4 sack/yr,,
                """);
        Files.writeString(text.resolve("places.csv"), """
                name,use,people,longitude,latitude
                Wick,village,420,-20.1,-30.2
                """);
        Files.writeString(text.resolve("scenario.yaml"), YAML);
        SmallWorkbook.assertSame(text, changed);
    }

    private static final String YAML = """
            title: Test
            prepared-by: Somebody
            date: 2026-11-25
            units: {sack: 3 kg, tin: 18 L}
            rivers:
              file: rivers.gpkg
              columns:
                drainage-area: {column: area, unit: km2}
              snap-tolerance: 2 m
            discharge:
              method: specific-discharge
              specific-discharge: {dry: 7 L/s/km2, wet: 38 L/s/km2}
            channel: {method: hydraulic-geometry, manning-n: 0.035}
            flow-states:
              dry: {share-of-year: 0.6, temperature: 21 degC, suspended-sediment: 18 mg/L, lateral-filtered-mercury: 0.6 ng/L}
              wet: {share-of-year: 0.4, temperature: 24 degC, suspended-sediment: 120 mg/L, lateral-filtered-mercury: 0.8 ng/L}
            solids:
              classes:
                silt: {diameter: 20 um}
            sites: {file: sites.csv}
            places: {file: places.csv}
            """;

    /** 20 deg 6 min is 20.1 deg. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "20\u00b006'00.0\"W|30\u00b006'00.0\"S",
                "20\u00b0 06' 00\" W|30\u00b0 06' 00\" S",
                "-20,1|-30,1",
                "20 06 00 W|30 06 00 S"
            })
    void degreesAsTheyCome(String longitude, String latitude) {
        book.text("[Sites|longitude|6]", longitude).text("[Sites|latitude|6]", latitude);
        ScenarioInput.Position at = read().sites().get(0).position();
        assertThat(at.x()).isCloseTo(-20.1, within(PRINTED));
        assertThat(at.y()).isCloseTo(-30.1, within(PRINTED));
    }
}
