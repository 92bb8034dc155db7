// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fish from the scenario to the tables: two creeks, a with the site and b, flow into c, where people fish at Nets. */
class FishRunTest {
    private static final String LAB = "samples: {file: lab.csv}\n";
    private static final String HEAD = "code,longitude,latitude,date,medium,substance,value,unit,species,length\n";
    private static final String FISH = "F1,-20.08,-30,2026-06-01,fish,MeHg,0.4,mg/kg wet,pike,31\n";

    private static final int SCENARIO = 2;

    /** Tables hold six digits. */
    private static final double PRINTED_PERCENT = 1e-3;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Nets,fishing,5,-20.075,-30")
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,release,exchangeable_share,share_methyl\n"
                                + "Shed,-20.02,-30.001,slurry,12 kg/yr,1,0.001\n")
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .yaml("use: [CCME-FW-iHg]", "use: [CCME-FW-iHg, USEPA-FISH-MeHg, EU-FISH-gen]")
                .yaml("guidelines:", "mercury: {demethylation-rate: 0 1/d}\nguidelines:");
    }

    private Messy.Said does(String command, String more) {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + more);
        return messy.does(command);
    }

    private Messy.Said run(String more) {
        Messy.Said said = does("run", more);
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        for (String cell : row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
            cells.add(cell.replace("\"", ""));
        }
        return cells;
    }

    /** Rows of a table whose cells under some heads are these. */
    private List<Map<String, String>> rows(String table, String... wanted) {
        List<String> lines = messy.table(table);
        List<String> heads = cells(lines.get(0));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = cells(line);
            Map<String, String> row = new HashMap<>();
            for (int i = 0; i < heads.size(); i++) {
                row.put(heads.get(i), cells.get(i));
            }
            boolean goes = true;
            for (int i = 0; i < wanted.length; i += 2) {
                goes &= row.get(wanted[i]).equals(wanted[i + 1]);
            }
            if (goes) {
                rows.add(row);
            }
        }
        return rows;
    }

    private Map<String, String> nets(int level) {
        return rows("fish.csv", "place", "Nets", "trophic level", String.valueOf(level))
                .get(0);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    @Test
    void withoutFishThereIsNoTrace() {
        messy.file(
                "sites.csv",
                "name,longitude,latitude,path,release,exchangeable_share\nShed,-20.02,-30.001,slurry,12 kg/yr,1\n");
        Messy.Said said = run("");
        assertThat(messy.out().resolve("tables/fish.csv")).doesNotExist();
        assertThat(said.all())
                .contains("not assessed anywhere, as the model does not carry what they are values of: USEPA-FISH-MeHg")
                .doesNotContain("caution: Fish:", "caution: Fish was");
    }

    /** A site's MeHg that nothing takes away: 0.012 kg/yr into 1 and 2 m3/s, sorbed not at all. */
    @Test
    void chainFromWaterToPortions() {
        messy.yaml("background-share: 1,", "background-share: 1, methyl-log10-kd: 1,");
        Messy.Said said = run("");
        double high = number(nets(4), "high [mg/kg wet]");
        double low = number(nets(4), "low [mg/kg wet]");
        assertThat(number(nets(4), "middle [mg/kg wet]"))
                .isCloseTo(StrictMath.sqrt(low * high), withinPercentage(PRINTED_PERCENT));
        assertThat(high / low).isGreaterThanOrEqualTo(25 * (1 - 1e-5));
        assertThat(high / number(nets(3), "high [mg/kg wet]"))
                .isCloseTo(2.7e6 / 6.8e5, withinPercentage(PRINTED_PERCENT));
        // CR_lim = RfD x BW / C; portions a week of 0.227 kg by an adult of 70 kg
        double portions = 1e-4 * 70 / high * 7 / 0.227;
        assertThat(portions).isLessThan(7);
        assertThat(number(nets(4), "adults: portions a week at the high estimate (7: 7 or more)"))
                .isCloseTo(portions, withinPercentage(PRINTED_PERCENT));
        assertThat(nets(4).get("read with the portions"))
                .startsWith("within a factor of 10 at best without fish samples from here");
        assertThat(rows("screening.csv", "guideline", "USEPA-FISH-MeHg", "feature", "c"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("answer")).isNotEqualTo("not assessed"));
        // creek b has no site, but its fish come down to where there is one
        assertThat(rows("screening.csv", "guideline", "USEPA-FISH-MeHg", "feature", "b"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(number(row, "high")).isPositive());
        assertThat(messy.text("../out/run.json")).contains("\"rangeStopsAtDams\" : false");
        assertThat(said.all())
                .contains("fish at Nets, trophic level 4: ")
                .contains(
                        "caution: Fish is good food. Advice on fish comes from the health authority: without their word, stop"
                                + " neither eating fish nor breastfeeding.")
                .contains("dams that keep fish apart are not known here")
                .doesNotContain("you may eat");
    }

    @Test
    void measuredFishTakeItsPlace() {
        messy.file("lab.csv", HEAD + FISH);
        Messy.Said said = run(LAB + "fish: {species: {Pike: 4}}\n");
        List<Map<String, String>> measured = rows("fish.csv", "trophic level", "4", "fish measured here [-]", "1");
        assertThat(measured).isNotEmpty().allSatisfy(row -> {
            assertThat(number(row, "low [mg/kg wet]")).isCloseTo(0.2, withinPercentage(PRINTED_PERCENT));
            assertThat(number(row, "middle [mg/kg wet]")).isCloseTo(0.4, withinPercentage(PRINTED_PERCENT));
            assertThat(number(row, "high [mg/kg wet]")).isCloseTo(0.8, withinPercentage(PRINTED_PERCENT));
            assertThat(row.get("rests on")).isEqualTo("fish measured here");
            assertThat(row.get("read with the portions")).isEqualTo("advice on eating fish is the health authority's");
        });
        assertThat(said.all()).doesNotContain("trophic level of pike");
        assertThat(messy.table("samples-compared.csv"))
                .anyMatch(row -> row.contains("fish that were measured take the place of the estimate (fish.csv)"));
    }

    /** The site closes in 2030: fish measured in the year of the work hold what was measured then, and less afterwards. */
    @Test
    void fishThroughTheYears() {
        messy.file("lab.csv", HEAD + FISH.replace("-20.08,-30", "-20.075,-30"));
        run(LAB + "fish: {species: {Pike: 4}}\nbed: {burial: 2 cm/yr}\n"
                + "history: {start: 2020, years: 40, changes: {closed: {year: 2030, factor: 0}}}\n");
        String middle = "fish of trophic level 4, middle [mg/kg wet]";
        Map<String, String> now =
                rows("years.csv", "place", "Nets", "year", "2026").get(0);
        assertThat(number(now, "fish of trophic level 4, low [mg/kg wet]"))
                .isCloseTo(0.2, withinPercentage(PRINTED_PERCENT));
        assertThat(number(now, middle)).isCloseTo(0.4, withinPercentage(PRINTED_PERCENT));
        Map<String, String> later =
                rows("years.csv", "place", "Nets", "year", "2059").get(0);
        assertThat(number(later, middle)).isLessThan(0.1 * number(now, middle));
        assertThat(rows("recovery.csv", "guideline", "USEPA-FISH-MeHg", "feature", "c"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(Integer.parseInt(row.get("high estimate below from")))
                        .isBetween(2030, 2059));
        assertThat(messy.out().resolve("maps/recovery-USEPA-FISH-MeHg.png")).exists();
    }

    @Test
    void aSpeciesNobodyPlacedGivesTheHigherAnswer() {
        messy.file(
                "lab.csv",
                HEAD + FISH + "F2,-20.08,-30,2026-06-02,fish,MeHg,<0.1,mg/kg wet,pike,20\n"
                        + "F3,-20.08,-30,2026-06-03,fish,MeHg,0.9,mg/kg dry,pike,22\n");
        Messy.Said said = run(LAB);
        assertThat(said.all())
                .contains("trophic level of pike is not stated; taken as 3, which gives the higher answer")
                .contains("samples of fish: 1 below a limit entered with the limit")
                .contains("samples of fish: 1 not used in place of the estimate");
    }

    /** Where the chain stands far below fish that were measured, no other fish are called below. */
    @Test
    void measuredFishAboveTheChainForbidBelow() {
        String few = "name,longitude,latitude,path,release,exchangeable_share,share_methyl\n"
                + "Shed,-20.02,-30.001,slurry,1 g/yr,1,0.001\n";
        messy.file("sites.csv", few);
        run("");
        assertThat(rows(
                        "screening.csv",
                        "guideline",
                        "EU-FISH-gen",
                        "feature",
                        "a",
                        "answer",
                        "below by this estimate"))
                .isNotEmpty();
        messy.file("lab.csv", HEAD + FISH);
        Messy.Said said = run(LAB + "fish: {species: {pike: 4}}\n");
        assertThat(said.all()).contains("hold more than the high estimate there");
        assertThat(rows("screening.csv", "guideline", "EU-FISH-gen", "feature", "a"))
                .isNotEmpty()
                .allSatisfy(row -> {
                    assertThat(row.get("answer")).isEqualTo("not assessed");
                    assertThat(row.get("reason")).isEqualTo("measured fish hold more than such an estimate says");
                });
    }

    @Test
    void withoutMethylmercuryTheReasonIsSaid() {
        messy.file(
                "sites.csv",
                "name,longitude,latitude,path,release,exchangeable_share\nShed,-20.02,-30.001,slurry,12 kg/yr,1\n");
        Messy.Said said = run("fish: {range: 5 km}\n");
        assertThat(said.all())
                .contains("fish: not assessed, since methylmercury is not carried; list methyl under mercury.forms")
                .contains("caution: Fish was not assessed: methylmercury is not carried.");
        assertThat(nets(4).get("rests on")).isEqualTo("not assessed: methylmercury is not carried (mercury.forms)");
    }

    @Test
    void wrongInputIsToldAllAtOnce() {
        Messy.Said said = does("check", "fish: {range: 10, baf-4: 6.4, species: {pike: 5}, baf-5: 1e6 L/kg}\n");
        assertThat(said.code()).isEqualTo(2);
        assertThat(String.join("\n", said.err()))
                .contains("fish.range: 10 has no unit; give a length")
                .contains("fish.baf-4: 6.4 has no unit; give a partition coefficient")
                .contains("fish.species.pike: \"5\" is not known; give 3 or 4")
                .contains("fish.baf-5");
    }

    /** The site's methylmercury is in a and c; behind a dam at the end of b its fish keep to the clean creek. */
    @Test
    void damsKeepFishApart() {
        String caution = "dams that keep fish apart are not known here";
        assertThat(run("").all()).contains(caution);
        assertThat(Double.parseDouble(creek().get("high [mg/kg wet]"))).isPositive();
        assertThat(run("fish: {dams: [b]}\n").all()).doesNotContain(caution);
        assertThat(creek().get("rests on")).isEqualTo("no methylmercury released or made within their range");
        assertThat(messy.text("../out/run.json")).contains("\"rangeStopsAtDams\" : true", "\"fish.dams\" : [");
    }

    private Map<String, String> creek() {
        return rows("fish.csv", "place", "", "feature", "b", "trophic level", "4")
                .get(0);
    }

    @Test
    void aDamOnNoFeatureIsRefused() {
        does("check", "fish: {dams: [bb, c]}\n").refuses(SCENARIO, "fish.dams: bb is no feature of the river layer");
        messy.does("run").refuses(SCENARIO, "fish.dams: bb is no feature of the river layer");
    }
}
