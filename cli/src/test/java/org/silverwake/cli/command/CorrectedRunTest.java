// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.CORRECTIONS;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Corrections from the file to the result: two creeks, a with the site and b, flow into c, on which Wick lies. */
class CorrectedRunTest {
    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Far,village,5,-20.03,-30.02");
        rivers(A, B, C);
    }

    private void rivers(String a, String b, String c) {
        messy.file("r.geojson", ThreeReaches.layer(line("a", a, 1), line("b", b, 1), line("c", c, 2)));
    }

    private Messy.Said run(String... corrections) {
        if (corrections.length > 0) {
            messy.file("corrections.csv", CORRECTIONS + String.join("\n", corrections) + "\n");
        }
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    /** What the water brings to a place. */
    private String answer(String place) {
        return messy.table("places.csv").stream()
                .filter(row -> row.startsWith(place + ","))
                .findFirst()
                .orElseThrow();
    }

    private List<String> screening() {
        return messy.table("screening.csv");
    }

    @Test
    void moveToAnotherCreekMovesTheMercury() {
        run();
        String up = answer("Up");
        String far = answer("Far");
        Messy.Said said = run("move,site,Shed,,-20.02,-30.031,-20.02,-30.001,,the pit behind");
        assertThat(answer("Up")).isNotEqualTo(up);
        assertThat(answer("Far")).isNotEqualTo(far);
        assertThat(messy.table("sites.csv").get(1)).startsWith("Shed,Shed,slurry,-20.020000,-30.031000,");
        assertThat(said.all())
                .contains("1 correction from corrections.csv:")
                .contains(
                        "corrections.csv:2 move site Shed: applied: to -20.020000, -30.031000 from -20.020000, -30.001000");
        assertThat(messy.table("corrections.csv").get(1))
                .startsWith("corrections.csv:2,move site Shed,-20.020000,-30.031000,applied,")
                .endsWith("the pit behind");
    }

    @Test
    void moveOfAPointThatIsElsewhereByNow() {
        run();
        String up = answer("Up");
        Messy.Said said = run("move,site,Shed,,-20.02,-30.031,-20.04,-30.001,,");
        assertThat(answer("Up")).isEqualTo(up);
        assertThat(said.all())
                .contains("warning: corrections.csv:2 move site Shed: does not fit: sites.csv:2 has the position"
                        + " -20.020000, -30.001000 by now, not -20.040000, -30.001000 from where it was moved to"
                        + " -20.020000, -30.031000; the position of sites.csv:2 is used");
        assertThat(run("move,site,Shed,,-20.02,-30.001,-20.04,-30.001,,").all())
                .contains("warning: corrections.csv:2 move site Shed: no longer needed");
    }

    @Test
    void moveTooFarFromTheRiverNamesTheCorrection() {
        messy.file("corrections.csv", CORRECTIONS + "move,site,Shed,,-21,-31,,,,\n")
                .does("run")
                .refuses(3, "sites.csv:2, moved by corrections.csv:2, site \"Shed\"");
    }

    @Test
    void turnGivesWhatTheRightDrawingGives() {
        run();
        List<String> right = screening();
        rivers(A, B, "[-20.1,-30],[-20.05,-30]");
        run();
        assertThat(screening()).isNotEqualTo(right);
        run("turn,,,c,-20.05,-30,-20.1,-30,,");
        assertThat(screening()).isEqualTo(right);
    }

    @Test
    void outletTurnsTheRiverRound() {
        run();
        String wick = answer("Wick");
        Messy.Said said = run("outlet,,,a,-20,-30,,,,");
        assertThat(said.all()).contains("outlet a: applied: water leaves at 20.00000 W, 30.00000 S");
        assertThat(answer("Wick")).isNotEqualTo(wick);
        assertThat(messy.table("reaches.csv")).anySatisfy(row -> assertThat(row).startsWith("a.1,a,"));
    }

    @Test
    void refusedGapPartsTheRiver() {
        rivers(A, "[-20,-30.05],[-20.05,-30]", "[-20.05001,-30],[-20.1,-30]");
        Messy.Said joined = run();
        assertThat(joined.all()).doesNotContain("isolated part");
        String wick = answer("Wick");
        List<String> gap = messy.table("defects.csv").stream()
                .filter(row -> row.startsWith("gap,"))
                .toList();
        assertThat(gap).hasSize(1);
        String[] cells = gap.get(0).split(",");
        Messy.Said said =
                run("refuse,,," + cells[3].replace(' ', '|') + "," + cells[1] + "," + cells[2] + ",,,gap,two rivers");
        assertThat(said.all()).contains("applied", "found in the river layer: isolated part: 1");
        assertThat(answer("Wick")).isNotEqualTo(wick);
    }

    @Test
    void acceptedGapJoinsTheRiver() {
        rivers(A, B, "[-20.055,-30],[-20.1,-30]");
        assertThat(run().all()).contains("isolated part: 1");
        String wick = answer("Wick");
        Messy.Said said = run("accept,,,c|a,-20.055,-30,,,gap,culvert");
        assertThat(said.all())
                .contains("applied: a gap of 482 m between features c, a: joined")
                .doesNotContain("isolated part");
        assertThat(answer("Wick")).isNotEqualTo(wick);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "run"})
    void correctionsThatMeetNothingAreTold(String command) {
        messy.file("corrections.csv", CORRECTIONS + "refuse,,,a|c,-20.05,-30,,,gap,\naccept,,,x|c,-20.05,-30,,,gap,\n");
        Messy.Said said = messy.does(command);
        assertThat(said.code()).isZero();
        assertThat(said.all())
                .contains("warning: corrections.csv:2 refuse gap a|c: no longer needed: there is no such defect here")
                .contains(
                        "warning: corrections.csv:3 accept gap x|c: does not fit: the layer has no feature x any more");
    }

    @Test
    void unknownFeatureStopsTheRun() {
        messy.file("corrections.csv", CORRECTIONS + "turn,,,cc,-20.05,-30,,,,\n")
                .does("check")
                .refuses(3, "corrections.csv:2 feature: no line of the layer has the id cc; did you mean c?");
    }

    @Test
    void theRecordOfTheRunHoldsThem() throws IOException {
        run("outlet,,,c,,,,,,as always");
        assertThat(Files.readString(messy.out().resolve("run.json")))
                .contains("\"role\" : \"corrections\"")
                .contains("\"action\" : \"outlet\"")
                .contains("\"note\" : \"as always\"");
    }

    /** Every file but the record and the page, which name the empty table. */
    @Test
    void aTableWithoutRowsChangesNothing() throws IOException {
        run();
        List<String> names = names();
        Path before = temporary.resolve("before");
        Files.move(messy.out(), before);
        messy.file("corrections.csv", CORRECTIONS);
        run();
        assertThat(names()).isEqualTo(names).noneMatch(name -> name.contains("corrections"));
        for (String name : names) {
            if (!List.of("timing.json", "run.json", "report.html").contains(name)) {
                assertThat(Files.mismatch(before.resolve(name), messy.out().resolve(name)))
                        .as(name)
                        .isEqualTo(-1);
            }
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(messy.out())) {
            return all.filter(Files::isRegularFile)
                    .map(file -> messy.out().relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void demosDefectsAcceptedAreNotAskedAboutAgain() throws IOException {
        Messy demo = Messy.lantern(temporary.resolve("demo"));
        assertThat(demo.does("check").code()).isZero();
        List<String> defects = Files.readAllLines(demo.out().resolve("check-defects.csv"));
        assertThat(defects.size()).as("the demo's layer has its defects").isGreaterThan(1);
        List<String> rows = new ArrayList<>();
        for (String row : defects.subList(1, defects.size())) {
            String[] cells = row.split(",", 5);
            rows.add("accept,,," + cells[3].replace(' ', '|') + "," + cells[1] + "," + cells[2] + ",,,"
                    + cells[0].replace(' ', '-') + ",");
        }
        rows.add("move,site,Wickmill sheds,,-19.6496,-30.0822,-19.6889,-30.0871,,");
        demo.file("corrections.csv", CORRECTIONS + String.join("\n", rows) + "\n");
        Messy.Said said = demo.does("check");
        assertThat(said.code()).as("%s", said.err()).isZero();
        List<String> table = Files.readAllLines(demo.out().resolve("check-corrections.csv"));
        assertThat(table).hasSize(rows.size() + 1);
        assertThat(table.subList(1, table.size()))
                .allSatisfy(row -> assertThat(row).contains(",applied,"));
        for (String row : defects.subList(1, defects.size())) {
            assertThat(said.out()).noneMatch(line -> line.startsWith(row.split(",")[0] + " at "));
        }
    }
}
