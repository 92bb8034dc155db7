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

/**
 * Field notes from the scenario to the river: two sheds, each 50 kg of whole ore a cycle, 4 cycles a day, 250 days; so 100 t of
 * tailings a year, of 30 mg/kg by samples, all to the river: 3 kg/yr.
 */
class NotesRunTest {
    /** Tables hold six digits. */
    private static final double PRINTED_PERCENT = 1e-3;

    private static final int SCENARIO = 2;
    private static final String HEAD =
            "site,practice,sheds,ore_per_cycle,cycles_per_day,working_days,gold,tailings_content,"
                    + "river_share,stored_share,exchangeable_share,grain_bound_share";
    private static final String SHEDS = "Shed,whole-ore,2,50 kg,4,250,0.2 kg/yr,30 mg/kg,1,0,0.2,0.8";

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Nets,fishing,5,-20.075,-30")
                .file("sites.csv", "name,longitude,latitude\nShed,-20.02,-30.001\n")
                .file("notes.csv", HEAD + "\n" + SHEDS + "\n")
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .yaml("sites: {file: sites.csv}", "sites: {file: sites.csv}\nfield-notes: {file: notes.csv}");
    }

    private Messy practices(String more, String rows) {
        return messy.file(
                        "practices.csv",
                        "name,start_year,contained,mercury_free,cost_per_year,drums_hold,drums_decay\n" + rows)
                .yaml("field-notes:", "practices: {file: practices.csv" + more + "}\nfield-notes:");
    }

    private Messy.Said run() {
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    private double released() {
        return messy.table("balance.csv").stream()
                .filter(row -> row.startsWith("dry,carried through,") && row.contains(",released,"))
                .mapToDouble(row -> Double.parseDouble(row.split(",", -1)[6]))
                .sum();
    }

    @Test
    void kilogramsOfOreBecomeARelease() {
        Messy.Said said = run();
        assertThat(released()).isCloseTo(3, withinPercentage(PRINTED_PERCENT));
        assertThat(said.all())
                .contains("mercury of Shed by field notes [kg/yr]: to the river 3, to the air")
                .contains("mercury use by practice [kg/yr], whole ore, 2 sheds: used ")
                .contains(
                        "(vapor hazard)",
                        "to be ended (Minamata, Annex C): open burning of amalgam, whole-ore amalgamation");
        assertThat(messy.table("site-balance.csv"))
                .anyMatch(row -> row.contains("to the river: grain-bound,2.4,2.4,2.4"))
                .anyMatch(row -> row.contains("to air, open burning (vapor hazard)"));
        assertThat(messy.table("mercury-use.csv").get(1)).startsWith("whole ore,,1,2,0.4,");
        assertThat(messy.table("field-notes-assumed.csv")).anyMatch(row -> row.contains("(from memory)"));
    }

    /** A pond that keeps nine tenths leaves 0.3 kg/yr; not in force, it changes nothing. */
    @Test
    void aPracticeInForceChangesIt() {
        practices("", "ponds,,0.9,,100,,\n");
        run();
        assertThat(released()).isCloseTo(3, withinPercentage(PRINTED_PERCENT));
        messy.yaml("file: practices.csv", "file: practices.csv, in-force: [ponds at Shad]");
        messy.does("check").refuses(SCENARIO, "\"ponds at Shad\" is no practice of the table");
        for (String words : List.of("ponds", "ponds at Shed")) {
            messy.file(
                    "scenario.yaml",
                    messy.text("scenario.yaml").replaceAll("in-force: \\[.*?]", "in-force: [" + words + "]"));
            run();
            assertThat(released()).isCloseTo(0.3, withinPercentage(PRINTED_PERCENT));
        }
        assertThat(messy.text("../out/run.json")).contains("\"Contained[share=0.9]\"");
    }

    /** By 2030 the sheds are free of mercury; what their drums hold, 0.5 kg each, goes by e^-1 in 2 years, in 2030 as below. */
    @Test
    void practicesBeginInTheirYear() {
        practices(", in-force: [gravity]", "gravity,2030,,1,100,0.5 kg,2 yr\n");
        messy.yaml("guidelines:", "mercury: {oxidation-rate: 0.1 1/d}\nguidelines:");
        run();
        assertThat(released()).isCloseTo(3, withinPercentage(PRINTED_PERCENT));
        messy.yaml("in-force: [gravity]", "in-force: [gravity], year: 2030");
        run();
        double first = 2 * 0.5 * (1 - StrictMath.exp(-0.5));
        assertThat(released()).isCloseTo(first, withinPercentage(PRINTED_PERCENT));
        messy.yaml("guidelines:", "bed: {burial: 1 cm/yr}\nhistory: {start: 2028, years: 4}\nguidelines:");
        run();
        List<String> rows = messy.table("whereabouts.csv");
        int at = List.of(rows.get(0).split(",")).indexOf("released since [kg]");
        double second = first + 2 * 0.5 * StrictMath.exp(-0.5) * (1 - StrictMath.exp(-0.5));
        double[] since = {3, 6, 6 + first, 6 + second};
        for (int year = 0; year < since.length; year++) {
            assertThat(Double.parseDouble(rows.get(1 + year).split(",", -1)[at]))
                    .isCloseTo(since[year], withinPercentage(PRINTED_PERCENT));
        }
    }

    /** A shed that leaches half its tailings has two discharge points; a correction of its place moves both. */
    @Test
    void bothPathsMoveWithTheirSite() {
        messy.file(
                        "notes.csv",
                        "site,practice,ore_per_cycle,cycles_per_day,working_days,gold,tailings_content,river_share,leached_share,"
                                + "tank_volume,tank_cycles\nShed,whole-ore,50 kg,4,250,0.2 kg/yr,30 mg/kg,0.5,0.5,5 m3,20\n")
                .file("corrections.csv", ThreeReaches.CORRECTIONS + "move,site,Shed,,-20.02,-30.031,-20.02,-30.001,,\n")
                .yaml("guidelines:", "corrections: {file: corrections.csv}\nguidelines:");
        run();
        assertThat(messy.table("sites.csv").subList(1, 3))
                .anyMatch(row -> row.startsWith("Shed,Shed,slurry,-20.020000,-30.031000,"))
                .anyMatch(row -> row.startsWith("\"Shed, leach tank\",Shed,leach tank,-20.020000,-30.031000,"));
    }

    @Test
    void badNotesAreToldWithTheirRange() {
        messy.file(
                "notes.csv", HEAD + ",retort_share,retort_recovery,amalgam_mercury_share\n" + SHEDS + ",1,1.2,0.98\n");
        Messy.Said said = messy.does("check");
        said.refuses(
                SCENARIO,
                "notes.csv:2: share that the retort gives back is 120 %",
                "usual 75 to 95 % (75 to 95 %, 95 % well run (from memory))");
    }

    @Test
    void aSiteWithNotesAndAReleaseIsRefused() {
        messy.file("sites.csv", "name,longitude,latitude,release\nShed,-20.02,-30.001,12 kg/yr\n");
        messy.does("check").refuses(SCENARIO, "stand beside field notes of the site");
    }

    /** Ponds meet the value at less cost than gravity does; prices are not given, so costs are all there is. */
    @Test
    void planFindsTheCheaper() throws Exception {
        practices("", "ponds,,0.99,,100,,\ngravity,,,1,500,,\n");
        Messy.Said said = Messy.say(
                "plan",
                messy.folder().toString(),
                "--at",
                "Wick",
                "--out",
                messy.out().toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(said.all())
                .contains(
                        "with it the value is met by the high estimate in a full run",
                        "ponds at Shed: 200 money a year, 2.97 kg a year kept out")
                .contains("every set that could be cheaper, so none is", "practices.in-force: [ponds at Shed]")
                .doesNotContain("NO SET");
        assertThat(messy.table("plan.csv"))
                .anyMatch(row -> row.startsWith("ponds,Shed,Shed,1,1,1,200,200,200,2.97"))
                .anyMatch(row -> row.startsWith("gravity,Shed,Shed,0,"));
        assertThat(messy.table("plan-values.csv").get(1))
                .startsWith("Wick,CCME-FW-iHg,")
                .contains(",yes,");
        assertThat(Files.exists(messy.out().resolve("budgets.png"))).isTrue();
        assertThat(messy.table("release-cuts.csv")).hasSize(2);
    }

    /** Full runs of a plan carry no cyanide: its values are not taken as met. */
    @Test
    void valuesOfCyanideAreNotPlannedFor() {
        practices("", "ponds,,0.99,,100,,\n");
        messy.file(
                        "sites.csv",
                        "name,longitude,latitude,path,release,cyanide\nShed,-20.02,-30.001,,,\n"
                                + "Tank,-20.021,-30.001,leach-tank,1 g/yr,50 t/yr\n")
                .yaml("use: [CCME-FW-iHg]", "use: [CCME-FW-iHg, USEPA-CN-acute]");
        run();
        assertThat(messy.text("../out/tables/screening.csv")).contains("USEPA-CN-acute");
        Messy.say(
                "plan",
                messy.folder().toString(),
                "--at",
                "Wick",
                "--out",
                messy.out().toString());
        assertThat(messy.text("../out/tables/plan-values.csv"))
                .contains("CCME-FW-iHg")
                .doesNotContain("USEPA-CN-acute");
    }

    /** Ponds move 2.97 of 3 kg/yr from the river to what is kept; the air gets what it got. */
    @Test
    void compareFollowsPaths() {
        practices("", "ponds,,0.99,,100,,\n");
        Messy other = Messy.empty(temporary.resolve("ponds"));
        for (String file : List.of("sites.csv", "notes.csv", "practices.csv", "places.csv", "r.geojson")) {
            other.file(file, messy.text(file));
        }
        other.file(
                "scenario.yaml",
                messy.text("scenario.yaml")
                        .replace("title: Three reaches", "title: Ponds")
                        .replace("file: practices.csv", "file: practices.csv, in-force: [ponds]"));
        Messy.Said said = Messy.say(
                "compare",
                messy.folder().toString(),
                other.folder().toString(),
                "--out",
                messy.out().toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(messy.table("mercury.csv"))
                .anyMatch(row -> row.startsWith("\"released, slurry\",,3,3,0.03,0.03"))
                .anyMatch(row -> row.startsWith("\"by field notes, in tailings kept\",,0,0,2.97,2.97"));
        String air = messy.table("mercury.csv").stream()
                .filter(row -> row.contains("to the air (vapor hazard)"))
                .findFirst()
                .orElseThrow();
        List<String> cells = List.of(air.split("\",")[1].split(","));
        assertThat(cells.subList(1, 3)).isEqualTo(cells.subList(3, 5));
    }

    @Test
    void whatCannotBeMetIsSaid() {
        practices("", "ponds,,0.3,,100,,\n");
        Messy.Said said = Messy.say(
                "plan",
                messy.folder().toString(),
                "--at",
                "Wick",
                "--out",
                messy.out().toString());
        assertThat(said.all())
                .contains("NO SET SUFFICES", "remains over: Wick, CCME-FW-iHg", "releases cut alike everywhere");
    }

    @Test
    void unknownPlaceAndNothingToPlanWithAreRefused() {
        practices("", "ponds,,0.5,,100,,\n");
        Messy.say(
                        "plan",
                        messy.folder().toString(),
                        "--at",
                        "Wic",
                        "--out",
                        messy.out().toString())
                .refuses(SCENARIO, "--at Wic is not known here", "Wick");
        messy.yaml("practices: {file: practices.csv}\n", "");
        Messy.say("plan", messy.folder().toString(), "--out", messy.out().toString())
                .refuses(SCENARIO, "there is nothing to plan with");
    }
}
