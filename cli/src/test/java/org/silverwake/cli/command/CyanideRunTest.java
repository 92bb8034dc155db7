// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.layer;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cyanide and suspended solids from the scenario to tables, maps and cautions. Creeks a and b flow into c; the yard is on a. */
class CyanideRunTest {
    /** PRINTED: tables have six significant digits; in percent. */
    private static final double PRINTED = 1e-3;

    private static final double YEAR = 31557600;
    private static final String HEAD = "name,longitude,latitude,path,effluent,concentration,cyanide_concentration\n";
    private static final String YARD = "Yard,-20.02,-30.001,leach-tank,1 L/s,50 ug/L,";
    private static final String DEADLY = "Cyanide kills at once and is not mercury";

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Ford,fishing,3,-20.02,-30.03")
                .file("r.geojson", layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .file("sites.csv", HEAD + YARD + "200 mg/L\n")
                .yaml("[CCME-FW-iHg]", "[CCME-FW-iHg, USEPA-CN-acute, ICMI-CN-discharge, ID-PP22-TSS-2]");
    }

    private Messy.Said run(String... more) {
        List<String> arguments = new ArrayList<>(
                List.of("run", messy.folder().toString(), "--out", messy.out().toString()));
        arguments.addAll(List.of(more));
        Messy.Said said = Messy.say(arguments.toArray(String[]::new));
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    /** The last cell of the row of a reach in reaches.csv but {@code fromEnd}. */
    private double last(String reach, int fromEnd) {
        String row = messy.table("reaches.csv").stream()
                .filter(l -> l.startsWith(reach + ","))
                .findFirst()
                .orElseThrow();
        String[] cells = row.split(",", -1);
        return Double.parseDouble(cells[cells.length - 1 - fromEnd]);
    }

    private String answer(String guideline, String reach) {
        return messy.table("screening.csv").stream()
                .filter(l -> l.startsWith(guideline) && l.contains("," + reach + ","))
                .findFirst()
                .orElseThrow();
    }

    /** W/Q: 1 L/s x 200 mg/L is 2e-4 kg/s; below the confluence 2 m3/s and the effluent carry it, and nothing is lost. */
    @Test
    void dilutedOnItsWayAndScreened() {
        messy.yaml("guidelines:", "cyanide: {free-share: 0.5}\nguidelines:");
        Messy.Said said = run("--all");
        double mixed = 2e-4 / 2.001 * 1e6;
        assertThat(messy.table("reaches.csv").get(0)).endsWith("WAD cyanide [ug/L],free cyanide [ug/L]");
        assertThat(last("c.2", 1)).isCloseTo(mixed, withinPercentage(PRINTED));
        assertThat(last("c.2", 0)).isCloseTo(mixed / 2, withinPercentage(PRINTED));
        // free: 50 ug/L against 22 ug/L, a stated factor of 5
        assertThat(answer("USEPA-CN-acute", "c.2")).contains(",may be above,");
        assertThat(answer("USEPA-CN-acute", "b.1")).contains(",not assessed,no cyanide given upstream,");
        assertThat(messy.out().resolve("maps/USEPA-CN-acute-dry.png")).exists();
        // 200 mg/L over 0.5 mg/L
        assertThat(messy.table("sites.csv").get(1)).contains("ICMI-CN-discharge: 400,6312 kg/yr WAD");
        assertThat(messy.table("places.csv").get(0)).endsWith("WAD cyanide [ug/L],free cyanide [ug/L]");
        assertThat(said.all())
                .contains(DEADLY, "WAD cyanide over the year [kg as CN]: released 6312, exported 6312")
                .doesNotContain("was not assessed", "cyanide is given, but none");
        assertThat(messy.text("../out/run.json")).contains("\"cyanideBalance\"", "\"cyanide [kg/s]\"");
    }

    /** e^(-k t) with t the travel time that reaches.csv states; in balance.csv what is released is exported or lost. */
    @Test
    void lostOnItsWayAtTheStatedRate() {
        run();
        double start = last("c.2", 1);
        messy.yaml(
                "guidelines:",
                "cyanide: {loss-rate: {value: 9 1/d, by-state: {dry: 4 1/d}}, loss-theta: 1.05}\nguidelines:");
        run();
        List<String> head = Arrays.asList(messy.table("reaches.csv").get(0).split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"));
        double hours = 0;
        for (String reach : List.of("a.2", "a.3", "c.1")) {
            String row = messy.table("reaches.csv").stream()
                    .filter(l -> l.startsWith(reach + ","))
                    .findFirst()
                    .orElseThrow();
            hours +=
                    Double.parseDouble(row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")[head.indexOf("travel time [h]")]);
        }
        double rate = 4 * Math.pow(1.05, 21 - 20); // 21 degC, of the state's own rate
        assertThat(last("c.2", 1) / start).isCloseTo(Math.exp(-rate * hours / 24), withinPercentage(10 * PRINTED));
        double in = 0;
        double out = 0;
        for (String row : messy.table("balance.csv")) {
            String[] cells = row.split(",");
            if (row.contains("WAD cyanide")) {
                double year = Double.parseDouble(cells[6]);
                in += cells[3].equals("released") ? year : 0;
                out += cells[3].equals("released") ? 0 : year;
                assertThat(Double.parseDouble(cells[7])).isLessThan(1e-9);
            }
        }
        assertThat(in).isCloseTo(2e-4 * YEAR, withinPercentage(PRINTED));
        assertThat(out).isCloseTo(in, withinPercentage(PRINTED));
        assertThat(messy.table("balance.csv")).anyMatch(l -> l.contains(",lost,WAD cyanide,"));
    }

    /** One tank's cyanide is given, the other's is not: how many is said, and below that tank no reach is below a value. */
    @Test
    void aTankWithoutItsCyanideIsNotForgotten() {
        messy.file("sites.csv", HEAD + YARD + "1 ug/L\nOther,-20.02,-30.031,leach-tank,1 L/s,50 ug/L,\n");
        assertThat(run().all())
                .contains("Cyanide from 1 of 2 leach tanks was not assessed.", DEADLY)
                .contains("sites.csv:3 path: is a leach tank: cyanide was not assessed");
        assertThat(answer("USEPA-CN-acute", "a.3")).contains(",below by this estimate,");
        String unknown = ",not assessed,\"a leach tank above, of which no cyanide is given\",";
        assertThat(answer("USEPA-CN-acute", "b.2")).contains(unknown);
        assertThat(answer("USEPA-CN-acute", "c.2")).contains(unknown);
    }

    @Test
    void withoutAnyCyanideAllIsAsBefore() {
        messy.file("sites.csv", HEAD + YARD + "\n");
        assertThat(run().all())
                .contains("Cyanide from leach tanks was not assessed.")
                .doesNotContain(DEADLY, "WAD cyanide");
        assertThat(messy.table("reaches.csv").get(0)).doesNotContain("cyanide");
    }

    @Test
    void cyanideThatIsComparedWithNothingIsSaid() {
        messy.yaml(" USEPA-CN-acute, ICMI-CN-discharge,", "");
        assertThat(run().all()).contains("cyanide is given, but none of the chosen guideline values is one of cyanide");
    }

    /**
     * 2e5 t/yr of tailings in 1 m3/s are 6.3 g/L, far over the 50 mg/L of ID-PP22-TSS-2; the creek without any has 18 mg/L, which
     * may be above with a stated factor of 5. The default map stays one of mercury.
     */
    @Test
    void suspendedSolidsAreScreenedWithTheTailingsInThem() {
        messy.file(
                        "sites.csv",
                        "name,longitude,latitude,path,tailings,content\nMill,-20.02,-30.001,slurry,2e5 t/yr,4 mg/kg\n")
                .yaml(
                        "[CCME-FW-iHg, USEPA-CN-acute, ICMI-CN-discharge, ID-PP22-TSS-2]",
                        "[ID-PP22-TSS-2, CCME-FW-iHg]");
        run();
        assertThat(answer("ID-PP22-TSS-2", "a.2")).contains(",above,");
        assertThat(answer("ID-PP22-TSS-2", "b.1")).contains(",may be above,");
        assertThat(messy.out().resolve("maps/CCME-FW-iHg-dry.png")).exists();
    }
}
