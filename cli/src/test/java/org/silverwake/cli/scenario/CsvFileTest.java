// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;

/** Tables as offices save them; cases from reference/cases.md ("Semicolon CSV, decimal comma" and "made by hand"). */
class CsvFileTest {
    /** ROUNDING: a few products of doubles, in percent. */
    private static final double ROUNDING = 1e-12;

    @TempDir
    private Path folder;

    private ScenarioInput sites(String text, Charset charset) {
        return new ScenarioFolder(folder).file("sites.csv", text, charset).read();
    }

    @Test
    void semicolonAndDecimalComma() {
        ScenarioInput input = sites(
                "name;longitude;latitude;path;effluent;effluent_unit;concentration;concentration_unit\n"
                        + "Galp\u00e3o;-20,1;-30,125;leach-tank;0,5;L/s;0,0002;mg/L\n",
                StandardCharsets.UTF_8);
        assertThat(input.sites().get(0).effluent().orElseThrow().concentration())
                .isCloseTo(2e-7, withinPercentage(ROUNDING));
        assertThat(input.sites().get(0).position().y()).isCloseTo(-30.125, withinPercentage(ROUNDING));
    }

    @Test
    void semicolonAndDecimalPoint() {
        // 12.125 alone could be twelve thousand; -20.1 in the same file says that points are decimal
        ScenarioInput input = sites(
                "name;longitude;latitude;path;release\nShed;-20.1;-30.125;slurry;12.125 kg/yr\n",
                StandardCharsets.UTF_8);
        assertThat(input.sites().get(0).mercury().orElseThrow().get(0))
                .isCloseTo(12.125 / 31557600, withinPercentage(ROUNDING));
    }

    @Test
    void numbersThatCouldBeTwoAreRefusedWithBoth() {
        ScenarioFolder scenario = new ScenarioFolder(folder);
        String header = "name;longitude;latitude;path;release\n";
        assertThat(scenario.file("sites.csv", header + "Shed;-20,1;-30,1;slurry;1.234,5 kg/yr\n")
                        .problems())
                .singleElement()
                .isEqualTo(
                        "sites.csv:2 release: \"1.234,5\" could be 1234.5 or 1.2345; give it without thousands separators");
        assertThat(scenario.file("sites.csv", header + "Shed;-20,1;-30,1;slurry;1.234 kg/yr\n")
                        .problems())
                .singleElement()
                .asString()
                .contains("\"1.234\" could be 1234 or 1,234");
        assertThat(scenario.file("sites.csv", header.replace(';', ',') + "Shed,-20.1,-30.1,slurry,\"1,234 kg/yr\"\n")
                        .problems())
                .singleElement()
                .asString()
                .contains("\"1,234\" could be 1234 or 1.234");
        assertThat(scenario.file("sites.csv", header.replace(';', ',') + "Shed,-20.1,-30.1,slurry,\"0,5 kg/yr\"\n")
                        .problems())
                .singleElement()
                .asString()
                .contains("\"0,5\" has a decimal comma; give decimals with a point, 0.5");
    }

    @Test
    void unquotedDecimalCommaInCommaFileIsACellTooMany() {
        assertThat(new ScenarioFolder(folder)
                        .file("sites.csv", "name,longitude,latitude,path,release\nShed,-20.1,-30.1,slurry,0,5 kg/yr\n")
                        .problems())
                .anySatisfy(p -> assertThat(p).startsWith("sites.csv:2: has 6 cells under 5 headings"));
    }

    @Test
    void byteOrderMarkBlankLinesQuotesAndCase() {
        ScenarioInput input = sites(
                "\ufeffName,LONGITUDE,Latitude,Path,Release,Note on access\r\n\r\n"
                        + "\"Shed, upper\",-20.1,-30.1,slurry,12 kg/yr,\"by boat,\nthen on foot\"\r\n,,,,,\r\n"
                        + "Lower,-20.2,-30.2,slurry,3 kg/yr,\r\n",
                StandardCharsets.UTF_8);
        assertThat(input.sites()).extracting(s -> s.name()).containsExactly("Shed, upper", "Lower");
        // heading 1, blank 2, a row over lines 3 and 4, blank cells 5
        assertThat(input.sites()).extracting(s -> s.where()).containsExactly("sites.csv:3", "sites.csv:6");
    }

    @Test
    void officeEncodingAndThreeMicroSigns() {
        String header = "name,longitude,latitude,path,effluent,concentration\n";
        String row = "Sha\u00edd,-20.1,-30.1,seepage,1 L/s,";
        ScenarioInput old = sites(header + row + "4 \u00b5g/L\n", Charset.forName("windows-1252"));
        assertThat(old.sites().get(0).name()).isEqualTo("Sha\u00edd");
        for (String micro : List.of("\u00b5", "\u03bc", "u")) {
            assertThat(sites(header + row + "4 " + micro + "g/L\n", StandardCharsets.UTF_8)
                            .sites()
                            .get(0)
                            .effluent()
                            .orElseThrow()
                            .concentration())
                    .isCloseTo(4e-9 * 1000, withinPercentage(ROUNDING));
        }
        assertThat(old.sites().get(0).effluent().orElseThrow().concentration())
                .isCloseTo(4e-6, withinPercentage(ROUNDING));
    }

    @Test
    void sixteenBitTextAndAnEmptyFileAreRefused() {
        assertThat(new ScenarioFolder(folder)
                        .file("sites.csv", ScenarioFolder.SITES, StandardCharsets.UTF_16)
                        .problems())
                .containsExactly("sites.csv: cannot be read as text (UTF-16); save it as CSV in UTF-8");
        assertThat(new ScenarioFolder(folder).file("sites.csv", "").problems())
                .containsExactly("sites.csv: is empty; give a heading line and a line for each entry");
    }

    @Test
    void placesAndTheirUses() {
        ScenarioInput input = new ScenarioFolder(folder)
                .file(
                        "places.csv",
                        "name,use,people,longitude,latitude\nWick,Village | drinking_intake; school,420,-20.1,-30.1\n"
                                + "Pool,fishing,,-20.2,-30.1\n")
                .read();
        assertThat(input.places().get(0).uses())
                .containsExactly(PlaceUse.VILLAGE, PlaceUse.DRINKING_INTAKE, PlaceUse.SCHOOL);
        assertThat(input.places())
                .extracting(p -> p.people())
                .containsExactly(OptionalInt.of(420), OptionalInt.empty());
        assertThat(input.warnings())
                .containsExactly("places.csv:1 people_source: is blank for Wick; say where each number of people comes"
                        + " from (a census and its year, a head count, an estimate and whose)");
        assertThat(new ScenarioFolder(folder)
                        .file("places.csv", "name,use,people,longitude,latitude\nWick,vilage,4.5,-20.1,-30.1\n")
                        .problems())
                .anySatisfy(p -> assertThat(p)
                        .contains("places.csv:2 use: \"vilage\" is not a use; the nearest known one is village"))
                .anySatisfy(p -> assertThat(p).contains("places.csv:2 people: 4.5 is not a whole number"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            , ~ 5.000 ~ "5.000" could be 5000 or 5
            , ~ 1.000 ~ "1.000" could be 1000 or 1
            , ~ 12.345 ~ "12.345" could be 12345 or 12
            ; ~ 5,000 ~ "5,000" could be 5000 or 5
            ; ~ 5.000 ~ "5.000" could be 5000 or 5
            """)
    void aCountWithASeparatorIsRefusedWithBothReadings(char separator, String people, String problem) {
        String text = "name,use,people,longitude,latitude\nWick,village,".replace(',', separator)
                + people
                + ",-20.1,-30.1\n".replace(',', separator);
        assertThat(new ScenarioFolder(folder).file("places.csv", text).problems())
                .contains("places.csv:2 people: " + problem + "; give the count without a separator");
    }

    @Test
    void aWorkbookNamedCsvIsCalledOne() {
        assertThat(new ScenarioFolder(folder)
                        .file("sites.csv", "PK\u0003\u0004\u0002\u007f\"x,", StandardCharsets.ISO_8859_1)
                        .problems())
                .containsExactly("sites.csv: is a workbook, not text; save it as CSV (comma or semicolon separated)");
    }

    @Test
    void aQuoteLeftOpenIsToldInWords() {
        assertThat(new ScenarioFolder(folder)
                        .file("sites.csv", ScenarioFolder.SITES + "\"Pit,-20.1" + "x".repeat(20_000_000))
                        .problems())
                .singleElement()
                .asString()
                .startsWith("sites.csv:")
                .contains("a quote that is opened is not closed")
                .doesNotContain("Exception");
    }

    @Test
    void abstractions() {
        ScenarioInput input = new ScenarioFolder(folder)
                .plus("abstractions: {file: abstractions.csv}")
                .file(
                        "abstractions.csv",
                        "name,longitude,latitude,discharge,use\nCanal,-20.1,-30.1,50 L/s,irrigation\n")
                .read();
        assertThat(input.abstractions().get(0).discharge()).containsExactly(0.05, 0.05);
        assertThat(input.abstractions().get(0).use()).isEqualTo("irrigation");
    }
}
