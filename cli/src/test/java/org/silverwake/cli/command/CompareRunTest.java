// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios side by side: two creeks, a with the site and b, flow into c. */
class CompareRunTest {
    /** Tables hold six digits. */
    private static final double PRINTED_PERCENT = 1e-3;

    private static final int SCENARIO = 2;

    @TempDir
    private Path temporary;

    private Messy today;

    private Messy folder(String name, String release, String title) {
        return ThreeReaches.scenario(temporary.resolve(name), "Nets,fishing,5,-20.075,-30")
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,release,exchangeable_share\nShed,-20.02,-30.001,slurry," + release
                                + ",1\n")
                .yaml("title: Three reaches", "title: " + title)
                .yaml("guidelines:", "outputs: {profiles: [{name: main, from: a}]}\nguidelines:");
    }

    @BeforeEach
    void write() {
        today = folder("today", "12 kg/yr", "Today");
    }

    private Messy.Said compare(Messy... others) {
        String[] words = new String[others.length + 4];
        words[0] = "compare";
        words[1] = today.folder().toString();
        for (int k = 0; k < others.length; k++) {
            words[k + 2] = others[k].folder().toString();
        }
        words[others.length + 2] = "--out";
        words[others.length + 3] = temporary.resolve("out").toString();
        return Messy.say(words);
    }

    private List<String> table(String name) throws Exception {
        return Files.readAllLines(temporary.resolve("out/tables").resolve(name));
    }

    private static double number(String row, int cell) {
        return Double.parseDouble(row.split(",", -1)[cell]);
    }

    /** Half of all mercury and no solids in it: water falls to a half but for the background, exactly. */
    @Test
    void halfIsHalf() throws Exception {
        Messy.Said said = compare(folder("half", "6 kg/yr", "Half"));
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(table("mercury.csv"))
                .contains("\"released, slurry\",,12,12,6,6")
                .anyMatch(row -> row.startsWith("exported,carried through,"));
        String below = table("reaches.csv").stream()
                .filter(row -> row.contains(",a,") && row.contains(",above,"))
                .reduce((one, other) -> other)
                .orElseThrow();
        double before = number(below, 8);
        double after = number(below, 12);
        double background = number(
                table("reaches.csv").stream()
                        .filter(row -> row.contains(",a,") && !row.contains(",above,"))
                        .findFirst()
                        .orElseThrow(),
                8);
        assertThat((after - background) / (before - background)).isCloseTo(0.5, withinPercentage(PRINTED_PERCENT));
        assertThat(number(below, 14)).isCloseTo(after / before, withinPercentage(PRINTED_PERCENT));
        assertThat(temporary.resolve("out/maps/change-CCME-FW-iHg-2-half.png")).exists();
        assertThat(temporary.resolve("out/maps/1-today/CCME-FW-iHg-dry.png")).exists();
        assertThat(temporary.resolve("out/profiles/main-dry.png")).exists();
        assertThat(said.all()).contains("released, slurry", "12 / 6", "caution: This is a screening");
    }

    /** A place more cuts reach c once more: its parts are found by feature and stretch, and nothing else changes. */
    @Test
    void anotherCutIsTheSameRiver() throws Exception {
        Messy more = folder("more", "12 kg/yr", "More places");
        more.file("places.csv", more.text("places.csv") + "Bend,village,1,-20.065,-30\n");
        Messy.Said said = compare(more);
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(table("reaches.csv").stream().skip(1))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(number(row, 14)).isCloseTo(1, withinPercentage(0.1)));
        assertThat(table("places.csv")).anyMatch(row -> row.startsWith("Wick,"));
    }

    @Test
    void equalTitlesAreToldApart() {
        assertThat(compare(folder("again", "12 kg/yr", "Today")).all()).contains("Today (today)", "Today (again)");
    }

    @Test
    void otherFlowStatesAreRefused() {
        Messy other = folder("other", "12 kg/yr", "Other").yaml("  dry: {", "  low: {");
        compare(other).refuses(SCENARIO, "Other: flow states low are not those of Today, dry");
        assertThat(temporary.resolve("out")).doesNotExist();
    }

    @Test
    void anotherRiverIsRefused() {
        Messy other = folder("other", "12 kg/yr", "Other")
                .file("r.geojson", ThreeReaches.layer(line("x", A, 1), line("y", B, 1), line("z", C, 2)))
                .yaml("from: a", "from: x");
        compare(other).refuses(SCENARIO, "Other: none of its features is one of Today");
    }

    @Test
    void oneScenarioIsTooFew() {
        compare().refuses(SCENARIO, "compare");
    }
}
