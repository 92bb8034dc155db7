// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares from the scenario to table, picture and words: creek a with Shed and creek b with Mill flow into c, on which Wick lies. */
class ApportionRunTest {
    /** Tables hold six digits. */
    private static final double PRINTED = 1e-5;

    private static final String SITES =
            "name,group,longitude,latitude,path,tailings,content,exchangeable_share,water,outfall\n"
                    + "Shed,Up Creek,-20.02,-30.001,slurry,400 t/yr,30 mg/kg,0.5,0.2 L/s,mid-channel\n"
                    + "Mill,Down Creek,-20.03,-30.02,slurry,100 t/yr,60 mg/kg,0.5,0.1 L/s,mid-channel\n";

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Far,village,5,-20.01,-30.04")
                .file("sites.csv", SITES)
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .yaml("diameter: 20 um,", "diameter: 20 um, tau-cd: 4 Pa,");
    }

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        for (String cell : row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
            cells.add(cell.replace("\"", ""));
        }
        return cells;
    }

    private List<List<String>> rows(Predicate<List<String>> wanted) {
        return messy.table("apportion.csv").stream()
                .skip(1)
                .map(ApportionRunTest::cells)
                .filter(wanted)
                .toList();
    }

    private double number(List<String> row, String column) {
        return Double.parseDouble(
                row.get(cells(messy.table("apportion.csv").get(0)).indexOf(column)));
    }

    private Messy.Said apportion(String... more) {
        List<String> words = new ArrayList<>(List.of(
                "apportion", messy.folder().toString(), "--out", messy.out().toString()));
        words.addAll(List.of(more));
        return Messy.say(words.toArray(String[]::new));
    }

    @Test
    void everyValueIsSharedOutWhole() {
        Messy.Said said = apportion();
        assertThat(said.code()).as("%s", said.err()).isZero();
        List<List<String>> rows = rows(row -> true);
        // 3 places; whole and filtered in one state, and the bed; 2 bounds; 2 sites and the background
        assertThat(rows).hasSize(3 * 3 * 2 * 3);
        for (int k = 0; k < rows.size(); k += 3) {
            double sum = 0;
            double value = number(rows.get(k), "value [unit]");
            for (List<String> row : rows.subList(k, k + 3)) {
                sum += number(row, "contribution [unit]");
            }
            assertThat(sum / value).as("%s", rows.get(k)).isCloseTo(1, within(PRINTED));
        }
        assertThat(rows(row -> row.get(0).equals("Up") && row.contains("Mill")))
                .allMatch(row -> number(row, "contribution [unit]") == 0);
        assertThat(rows(row -> row.get(0).equals("Wick") && row.contains("Mill")))
                .allMatch(row -> number(row, "contribution [unit]") > 0);
        assertThat(said.all())
                .contains(
                        "Far: nothing arrives from any listed site",
                        "not evidence against a person",
                        "at most 1e-10 is allowed");
        assertThat(messy.out().resolve("shares/wick.png")).isNotEmptyFile();
    }

    @Test
    void closedIsWhatARunWithoutTheSiteFinds() {
        apportion("--at", "wick");
        List<List<String>> mill = rows(row -> row.contains("Mill"));
        assertThat(rows(row -> true)).allMatch(row -> row.get(0).equals("Wick"));
        messy.file("sites.csv", SITES.substring(0, SITES.indexOf("Mill")));
        apportion("--at", "Wick");
        List<List<String>> shed = rows(row -> row.contains("Shed"));
        assertThat(mill).hasSameSizeAs(shed).isNotEmpty();
        for (int k = 0; k < mill.size(); k++) {
            double closed = number(mill.get(k), "value if closed [unit]");
            assertThat(closed / number(shed.get(k), "value [unit]"))
                    .as("%s", mill.get(k))
                    .isCloseTo(1, within(PRINTED));
            double change = closed - number(mill.get(k), "value [unit]");
            assertThat(number(mill.get(k), "change if closed [unit]"))
                    .isCloseTo(change, within(2 * PRINTED * Math.abs(closed)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'bed: {active-layer: 1 cm, tau-ce: 4 Pa}',false",
        "'bed: {active-layer: 100 cm, tau-ce: 4 Pa, horizon: 2 yr}',true"
    })
    void theBedIsSharedOutTooInBalanceOrAfterYears(String bed, boolean afterYears) {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + bed + "\n");
        Messy.Said said = apportion("--at", "Wick", "--at", "Up");
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(said.all().contains("after 2 years at this rate")).isEqualTo(afterYears);
        List<List<String>> withBed = rows(row -> row.contains("with the bed"));
        // 2 places; whole, filtered, bed; 2 sites and the background
        assertThat(withBed).hasSize(2 * 3 * 3);
        assertThat(withBed)
                .filteredOn(row -> row.contains("Shed"))
                .allMatch(row -> number(row, "contribution [unit]") > 0);
    }

    @Test
    void whatCannotBeSharedOutIsSaid() {
        apportion("--at", "Wik").refuses(2, "--at Wik is no place of the scenario", "Wick");
        messy.file("sites.csv", SITES.substring(0, SITES.indexOf("Shed")));
        apportion().refuses(2, "no site is listed");
    }
}
