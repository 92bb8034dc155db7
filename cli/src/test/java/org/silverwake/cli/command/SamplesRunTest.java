// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Laboratories' tables through the whole program: what they change, what they do not, and what stops a run. */
class SamplesRunTest {
    private static final String SECTION = """
            samples:
              file: lab.csv
              columns: {date: sampled, type: kind}
              words: {Hg-T: total mercury}
            """;
    private static final String HEAD =
            "code,longitude,latitude,date,state,medium,substance,fraction,value,unit,limit,limit unit\n";
    private static final String PLACE = ",-19.7612,-30.0456,";
    private static final String WHOLE = "surface water,total mercury,total,";

    @TempDir
    private Path temporary;

    private Messy messy(String name) {
        return Messy.lantern(temporary.resolve(name).resolve("scenario"));
    }

    private Messy own(String name, String table) {
        return messy(name).yaml(SECTION, "samples: {file: lab.csv}\n").file("lab.csv", table);
    }

    private static Messy.Said ran(Messy messy) {
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    /** The line of a table that begins so. */
    private static String line(Messy messy, String table, String start) {
        return messy.table(table).stream()
                .filter(l -> l.startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void samplesChangeNoResult() throws IOException {
        Messy with = messy("with");
        ran(with);
        Messy without = messy("without").yaml(SECTION, "");
        ran(without);
        for (String file : List.of(
                "tables/reaches.csv",
                "tables/screening.csv",
                "tables/summary.csv",
                "tables/balance.csv",
                "tables/sites.csv",
                "tables/places.csv",
                "tables/water.csv",
                "layers/reaches.gpkg")) {
            assertThat(Files.mismatch(with.out().resolve(file), without.out().resolve(file)))
                    .as(file)
                    .isEqualTo(-1);
        }
        assertThat(with.out().resolve("layers/samples.gpkg")).exists();
        assertThat(without.out().resolve("layers/samples.gpkg")).doesNotExist();
        assertThat(without.out().resolve("tables/samples.csv")).doesNotExist();
        assertThat(with.text("../out/run.json")).contains("\"valueOrLimit\" : 1250");
    }

    /** Bottles of one code at two places: which of them moves must be told. */
    @Test
    void aCodeAtTwoPositionsMovesWhereItStood() {
        String table = HEAD + "W-01,-19.6357,-30.0718,2026-06-01,dry," + WHOLE + "300,ng/L,,\n" + "W-01" + PLACE
                + "2026-06-01,dry," + WHOLE + "310,ng/L,,\n";
        String head = "action,kind,name,longitude,latitude,was_longitude,was_latitude\n";
        Messy blind = own("blind", table).file("corrections.csv", head + "move,sample,W-01,-19.6496,-30.0822,,\n");
        assertThat(ran(blind).all())
                .contains("corrections.csv:2 move sample W-01: does not fit: \"W-01\" stands at several positions"
                        + " (lab.csv:2, lab.csv:3)")
                .contains("nothing was moved");
        String first = line(blind, "samples.csv", "lab.csv:2,");
        String second = line(blind, "samples.csv", "lab.csv:3,");
        Messy told = own("told", table)
                .file("corrections.csv", head + "move,sample,W-01,-19.6496,-30.0822,-19.6357,-30.0718\n");
        assertThat(ran(told).all())
                .contains("corrections.csv:2 move sample W-01: applied: to -19.649600, -30.082200 from -19.635700,"
                        + " -30.071800");
        assertThat(line(told, "samples.csv", "lab.csv:2,")).isNotEqualTo(first);
        assertThat(line(told, "samples.csv", "lab.csv:3,")).isEqualTo(second);
    }

    @Test
    void demoTellsRowByRow() {
        Messy demo = messy("demo");
        Messy.Said said = ran(demo);
        assertThat(said.all())
                .contains("samples: 16 rows, 14 understood, 1 left out, 1 refused")
                .contains("1 refused: date 03/06/2026 could be 2026-06-03 or 2026-03-06")
                .contains("1 left out: blank (field blank)")
                .contains("whole total Hg in surface water: 3 of 6 inside, 5 within 2, 6 within 5, 6 within 10; 2 of 3"
                        + " limits consistent")
                .contains("1 of 16 rows are refused")
                .doesNotContain("validated");
        assertThat(line(demo, "samples-compared.csv", "lab.csv:7,"))
                .contains("consistent with the limit,CCME-FW-iHg: can't tell");
        assertThat(line(demo, "samples-compared.csv", "lab.csv:9,")).contains("model above the limit");
        assertThat(line(demo, "samples-compared.csv", "lab.csv:2,")).contains(",0.75,0.75,1,");
        assertThat(demo.table("samples-compared.csv"))
                .anyMatch(l -> l.contains("F-01") && l.endsWith("the model does not carry mercury into fish yet"));
        assertThat(demo.table("samples-means.csv").get(1)).endsWith("15.5,28,40.5,CCME-FW-iHg,26,no,yes,yes,yes");
    }

    @Test
    void stateByColumnByMonthOrNotKnown() {
        Messy messy = own(
                        "state",
                        HEAD + "A" + PLACE + "2026-06-01,wet," + WHOLE + "300,ng/L,,\n"
                                + "B" + PLACE + "2026-06-01,," + WHOLE + "300,ng/L,,\n"
                                + "C" + PLACE + ",," + WHOLE + "310,ng/L,,\n"
                                + "D" + PLACE + "2026-12-01,," + WHOLE + "300,ng/L,,\n")
                .yaml("    share-of-year: 0.55\n", "    share-of-year: 0.55\n    months: [5, 6, 7]\n");
        ran(messy);
        assertThat(line(messy, "samples-compared.csv", "lab.csv:2,")).contains(",wet,as given,");
        assertThat(line(messy, "samples-compared.csv", "lab.csv:3,")).contains(",dry,by the month,");
        String all = ",dry; wet; flood,not known: range over all states,";
        assertThat(line(messy, "samples-compared.csv", "lab.csv:4,")).contains(all);
        assertThat(line(messy, "samples-compared.csv", "lab.csv:5,")).contains(all);
    }

    @Test
    void badRowsAreListedAndStopNothing() {
        Messy messy = own(
                "rows",
                HEAD + "A" + PLACE + "2026-06-01,dry," + WHOLE + "nonsense,ng/L,,\n"
                        + "B,10,50,2026-06-01,dry," + WHOLE + "300,ng/L,,\n"
                        + "C,,,2026-06-01,dry," + WHOLE + "300,ng/L,,\n"
                        + "D,0,0,2026-06-01,dry," + WHOLE + "300,ng/L,,\n"
                        + "E" + PLACE + "2026-06-01,dry," + WHOLE + "300,ng/L,,\n"
                        + "F" + PLACE + "2026-06-01,dry," + WHOLE + "300,ng/L,,\n");
        Messy.Said said = ran(messy);
        assertThat(said.all()).contains("1 of 6 rows are refused").contains("3 are understood but not placed");
        assertThat(line(messy, "samples.csv", "lab.csv:2,")).contains("is not understood");
        assertThat(line(messy, "samples.csv", "lab.csv:3,")).contains("km from the nearest reach");
        assertThat(line(messy, "samples.csv", "lab.csv:4,")).contains("has no position");
        assertThat(line(messy, "samples.csv", "lab.csv:5,")).contains("no position fix");
        assertThat(line(messy, "samples.csv", "lab.csv:7,"))
                .contains("left out,the same in everything but its code as lab.csv:6");
        assertThat(messy.does("check").all()).contains("samples: 6 rows, 4 understood, 1 left out, 1 refused");
    }

    @Test
    void wrongFilesStopARun() {
        messy("a").without("lab.csv").does("run").refuses(2, "samples.file", "there is no file lab.csv");
        messy("b")
                .yaml("date: sampled", "date: Sampling")
                .does("run")
                .refuses(2, "lab.csv:1 sampling", "column is missing");
        messy("c").yaml("Hg-T: total", "Hg-T: murky").does("run").refuses(2, "samples.words.Hg-T", "\"murky mercury\"");
        messy("d").yaml("date: sampled", "datum1: x").does("run").refuses(2, "samples.columns.datum1", "not a column");
        messy("g").yaml("  file: lab.csv\n", "").does("run").refuses(2, "samples", "names no table; give samples.file");
        messy("h")
                .yaml("type: kind}\n", "type: kind}\n  fixed: {fraction: wholly}\n")
                .does("run")
                .refuses(2, "samples.fixed.fraction", "\"wholly\" is not known; give one of whole, filtered");
        messy("i")
                .yaml("type: kind}\n", "type: kind}\n  more: {mud: {columns: {value: Hg}}}\n")
                .does("run")
                .refuses(2, "samples.more.mud", "names no table; give file");
        own("e", "code,amount\nA,3\n").does("run").refuses(2, "lab.csv:1 value", "samples.columns.value");
        messy("f")
                .yaml("    share-of-year: 0.55\n", "    share-of-year: 0.55\n    months: [May]\n")
                .does("run")
                .refuses(2, "flow-states.dry.months", "\"May\" is no month");
    }

    /** Used as they are, each doubt told in one line; two reasons to refuse one row are one row. */
    @Test
    void doubtsAreToldAndRowsAreCounted() {
        Messy messy = own(
                        "doubts",
                        HEAD + "A" + PLACE + "2031-06-01,dry," + WHOLE + "300,ng/L,,\n"
                                + "B" + PLACE + "1906-06-01,dry," + WHOLE + "300,ng/L,,\n"
                                + "C" + PLACE + "2026-12-01,dry," + WHOLE + "50,ng/L,,\n"
                                + "D" + PLACE + "2026-12-01,dry,surface water,total mercury,filtered,900,ng/L,,\n"
                                + "E" + PLACE + "2026-05-02,dry,surface water,total mercury,filtered,90,ug/L,,\n"
                                + "F" + PLACE + "01/02/2026,monsoon," + WHOLE + "300,ng/L,,\n"
                                + "G" + PLACE + ",," + WHOLE + ",ng/L,,\n")
                .yaml("    share-of-year: 0.55\n", "    share-of-year: 0.55\n    months: [5, 6, 7]\n")
                .yaml("    share-of-year: 0.42\n", "    share-of-year: 0.42\n    months: [7, 8, 12]\n");
        Messy.Said said = messy.does("check");
        String all = said.all() + "\n" + String.join("\n", said.err());
        assertThat(all)
                .contains("samples: 3 are dated after the scenario's own date 2026-11-25: check the year (lab.csv:2 A,")
                .contains("samples: 1 is dated before 1950: check the year (lab.csv:3 B)")
                .contains("samples: 2 are of a flow state whose months do not hold the sample's date")
                .contains("lab.csv:5 D, filtered, is above lab.csv:4 C, whole, of the same place and day")
                .contains("lab.csv:6: above 60 ug/L in filtered water")
                .contains("flow-states.wet.months: holds [7], which are months of dry too")
                .contains("samples: 7 rows, 5 understood, 1 refused, 1 no result yet")
                .contains("1 of 7 rows are refused");
        assertThat(all.split("\n"))
                .filteredOn(l -> l.strip().startsWith("1 refused: "))
                .hasSize(1);
    }

    /** cases.md: semicolons, decimal comma, a byte-order mark, the micro sign in three encodings. */
    @Test
    void filesAsOfficesSaveThem() {
        String rows = "code;longitude;latitude;state;medium;substance;fraction;value;unit;limit;limit unit\n"
                + "A;-19,7612;-30,0456;dry;surface water;total mercury;total;0,0002;mg/L;;\n"
                + "B;-19,7612;-30,0456;dry;surface water;total mercury;total;0,2;µg/L;;\n"
                + "C;-19,7612;-30,0456;dry;surface water;total mercury;total;< 0,2;ug/l;;\n"
                + "D;-19,7612;-30,0456;dry;surface water;total mercury;total;1.234,5;ng/L;;\n";
        Charset office = Charset.forName("windows-1252");
        Messy utf8 = messy("utf8").yaml(SECTION, "samples: {file: lab.csv}\n").file("lab.csv", "\ufeff" + rows);
        Messy latin = messy("latin").yaml(SECTION, "samples: {file: lab.csv}\n").file("lab.csv", rows, office);
        Messy greek = messy("greek")
                .yaml(SECTION, "samples: {file: lab.csv}\n")
                .file("lab.csv", rows.replace('\u00b5', '\u03bc'), StandardCharsets.UTF_8);
        for (Messy messy : List.of(utf8, latin, greek)) {
            assertThat(messy.does("check").code()).isZero();
            for (String each : List.of("lab.csv:2,A", "lab.csv:3,B", "lab.csv:4,C")) {
                assertThat(checked(messy, each)).contains(",200,ng/L,");
            }
            assertThat(checked(messy, "lab.csv:5,D")).contains("refused").contains("could be 1234.5 or 1.2345");
        }
    }

    private static String checked(Messy messy, String start) {
        try {
            return Files.readAllLines(messy.out().resolve("samples.csv")).stream()
                    .filter(l -> l.startsWith(start))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void severalFilesAndStations() {
        Messy messy = messy("files")
                .yaml(SECTION, """
                        samples:
                          stations: stations.csv
                          file: [one.csv, two.csv]
                          fixed: {substance: total mercury, unit: ng/L, fraction: whole, medium: surface water}
                          more:
                            mud:
                              file: mud.csv
                              columns: {value: Hg}
                              fixed: {substance: mercury, unit: ug/g dw, medium: sediment}
                        """)
                .file("stations.csv", "name,longitude,latitude\nBridge,-19.7612,-30.0456\n")
                .file("one.csv", "station,result\nBridge,300\n")
                .file("two.csv", "station,result\nTallowby,<2\nNowhere,5\n")
                .file("mud.csv", "station,Hg\nbridge,3.4\n");
        ran(messy);
        assertThat(line(messy, "samples.csv", "one.csv:2,")).contains("-19.761200");
        assertThat(line(messy, "samples.csv", "two.csv:2,")).contains("-19.633500"); // the place of that name
        assertThat(line(messy, "samples.csv", "two.csv:3,")).contains("no place, gauge, site or station is named");
        assertThat(line(messy, "samples.csv", "mud.csv:2,"))
                .contains("dry weight\",,3.4,mg/kg")
                .contains("-19.761200");
    }

    /** Tallowby lies above every shed and the intake's estimate is far below 6 ug/L: a bottle that says otherwise comes first. */
    @Test
    void samplesOutrankTheEstimateInTheFirstLines() {
        Messy messy = own(
                "outrank",
                HEAD + "Z1,-19.6335,-30.0731,2026-06-09,dry," + WHOLE + "300,ng/L,,\n"
                        + "Z2,-20.3733,-30.0124,2026-06-12,dry," + WHOLE + "8,ug/L,,\n"
                        + "Z3,-19.6335,-30.0731,2026-06-10,dry,surface water,total mercury,filtered,200,ng/L,,\n"
                        + "Z4,-19.6335,-30.0731,2026-06-11,dry," + WHOLE + "2,ng/L,,\n");
        List<String> out = ran(messy).out();
        int at = out.indexOf(
                "  samples above a value where the estimate says below: 3 (Z1: CCME-FW-iHg; Z2: WHO-DW-iHg; Z3:"
                        + " CCME-FW-iHg)");
        assertThat(at).as("%s", out).isPositive();
        assertThat(out.get(at + 2)).isEqualTo("  samples above a value in all: 3 of 4 that are held against one");
        assertThat(out.subList(0, at)).noneMatch(l -> l.contains("mercury over the year"));
        assertThat(line(messy, "samples-compared.csv", "lab.csv:3,"))
                .contains("WHO-DW-iHg: above (raw water against a drinking-water value)");
        assertThat(line(messy, "samples-compared.csv", "lab.csv:4,"))
                .contains("CCME-FW-iHg: above (already in its filtered part)");
        assertThat(line(messy, "samples-summary.csv", "all,")).endsWith(",3,3");
    }
}
