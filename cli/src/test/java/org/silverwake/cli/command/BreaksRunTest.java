// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.CORRECTIONS;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mercury that leaves a river where it should not: two creeks, a with the site and b, flow into c, on which Wick lies. */
class BreaksRunTest {
    /** Ends 0.0004 degrees before c begins: 38.6 m on the ellipsoid at 30 S. */
    private static final String A_CUT = "[-20,-30],[-20.0496,-30]";

    private static final String B = "[-20.05,-30.05],[-20.05,-30]";

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Far,village,5,-20.05,-30.02");
    }

    private Messy.Said run(String... features) {
        messy.file("r.geojson", ThreeReaches.layer(features));
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    private String place(String name) {
        List<String> rows = messy.table("places.csv").stream()
                .filter(row -> row.startsWith(name + ","))
                .toList();
        assertThat(rows).isNotEmpty();
        return rows.stream().collect(Collectors.joining("\n"));
    }

    @Test
    void aWholeRiverHasNoBreak() {
        Messy.Said said = run(line("a", A, 1), line("b", B, 1), line("c", C, 2));
        assertThat(said.all()).doesNotContain("leaves the network", "open break", "open gap");
        assertThat(place("Wick")).contains(",above,");
    }

    @Test
    void belowAnOpenGapNothingIsBelow() {
        Messy.Said said = run(line("a", A_CUT, 1), line("b", B, 1), line("c", C, 2));
        assertThat(said.out())
                .anySatisfy(row -> assertThat(row)
                        .contains("warning: mercury of Shed (", "kg/yr) leaves the network at the end of a")
                        .contains("(-20.049600, -30.000000)", "a ends 39 m from"))
                .anySatisfy(row -> assertThat(row)
                        .contains("warning: open gap in the river layer", "mercury may come over it to c"))
                .anySatisfy(row -> assertThat(row).contains("caution: The river has an open break"))
                .anySatisfy(row -> assertThat(row).matches(".* not assessed +420 people.*"));
        assertThat(place("Wick"))
                .contains("not assessed,an open gap in the river layer above")
                .doesNotContain("below by this estimate");
        assertThat(place("Up")).contains(",above,");
        assertThat(place("Far")).contains("below by this estimate");
    }

    @Test
    void aGapThatTheUserLeavesOpenIsSettled() {
        messy.file("corrections.csv", CORRECTIONS + "refuse,,,a|b,-20.0496,-30,,,gap,a sink hole\n");
        Messy.Said said = run(line("a", A_CUT, 1), line("b", B, 1), line("c", C, 2));
        assertThat(said.all()).doesNotContain("open break", "open gap");
        assertThat(place("Wick")).contains("below by this estimate").doesNotContain("open gap");
    }

    @Test
    void aLineTurnedWronglyTakesTheRiverAway() {
        // a second creek, d, joins between c and e; c turned runs head-on against a and b
        String d = "[-20.06,-30.05],[-20.1,-30]";
        String e = "[-20.1,-30],[-20.15,-30]";
        messy.file("corrections.csv", CORRECTIONS + "turn,,,c,-20.1,-30,,,,\n")
                .yaml("  id: rid", "  id: rid\n  outlets: [e]")
                .file(
                        "places.csv",
                        "name,use,people,longitude,latitude\nUp,village,20,-20.03,-30\nWick,village,420,-20.12,-30\n");
        Messy.Said said = run(line("a", A, 1), line("b", B, 1), line("c", C, 2), line("d", d, 1), line("e", e, 3));
        assertThat(said.out())
                .anySatisfy(row -> assertThat(row)
                        .contains("warning: mercury of Shed (", "leaves the network at the end of a and b and c")
                        .contains("meet head-on there", "corrections.csv:2 turns c"));
        assertThat(place("Wick"))
                .contains("not assessed,water above runs to an end that nobody named an outlet")
                .doesNotContain("below by this estimate");
    }

    @Test
    void anEndThatIsNamedAnOutletIsNone() {
        messy.yaml("  id: rid", "  id: rid\n  outlets: [a, c]");
        Messy.Said said = run(line("a", A_CUT, 1), line("b", B, 1), line("c", C, 2));
        assertThat(said.all()).doesNotContain("leaves the network at the end of", "open break");
        assertThat(place("Wick")).contains("below by this estimate");
    }

    @Test
    void anAbstractionThatTakesTheWholeRiverIsNamed() {
        messy.yaml("sites: {file", "abstractions: {file: taken.csv}\nsites: {file")
                .file(
                        "taken.csv",
                        "name,use,longitude,latitude,discharge,discharge_unit,area,area_unit\n"
                                + "Weir,irrigation,-20.035,-30,60000,L/s,1,ha\n");
        Messy.Said said = run(line("a", A, 1), line("b", B, 1), line("c", C, 2));
        // 60 m3/s over 31557600 s on 10000 m2: 189 km of water
        assertThat(said.out())
                .anySatisfy(row -> assertThat(row)
                        .contains(
                                "warning: taken.csv:2 Weir: it takes all the water", "dry: asked 60000 L/s, the river")
                        .contains("answers for Wick further down", "check the discharge and its unit"))
                .anySatisfy(row -> assertThat(row).contains("Weir: asks for 189000 m of water a year on its 1 ha"));
    }

    @Test
    void aReachThatAnAbstractionEmptiesIsNotBelow() {
        messy.file(
                        "taken.csv",
                        "name,use,longitude,latitude,discharge,discharge_unit\nWeir,mine,-20.035,-30,60000,L/s\n")
                .yaml("sites: {file", "abstractions: {file: taken.csv}\nsites: {file")
                .file("places.csv", "name,use,people,longitude,latitude\nDry,village,20,-20.045,-30\n");
        run(line("a", A, 1), line("b", B, 1), line("c", C, 2));
        assertThat(place("Dry"))
                .doesNotContain("below by this estimate")
                .contains("not assessed,an abstraction takes all");
    }
}
