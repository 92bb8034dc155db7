// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bed and history from the scenario to the tables: two creeks, a with the site and b, flow into c, on which Wick lies. */
class BedRunTest {
    /** Tables hold six digits. */
    private static final double PRINTED = 1e-5;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Far,village,5,-20.025,-30.025")
                .file(
                        "sites.csv",
                        "name,longitude,latitude,path,release,exchangeable_share\n"
                                + "Shed,-20.02,-30.001,slurry,12 kg/yr,0.5\n")
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .yaml("use: [CCME-FW-iHg]", "use: [CCME-FW-iHg, CCME-SED-ISQG]")
                .yaml("diameter: 20 um,", "diameter: 20 um, tau-cd: 4 Pa,");
    }

    private Messy.Said run(String more) {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + more);
        Messy.Said said = messy.does("run");
        assertThat(said.code()).as("%s", said.err()).isZero();
        return said;
    }

    private List<String> column(String file, String name) {
        List<String> rows = messy.table(file);
        int at = cells(rows.get(0)).indexOf(name);
        assertThat(at).as("%s in %s", name, rows.get(0)).isNotNegative();
        return rows.stream().skip(1).map(row -> cells(row).get(at)).toList();
    }

    private double value(String file, String name, int row) {
        return Double.parseDouble(column(file, name).get(row));
    }

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        for (String cell : row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
            cells.add(cell.replace("\"", ""));
        }
        return cells;
    }

    @Test
    void withoutABedThereIsNoTrace() {
        Messy.Said said = run("");
        assertThat(messy.table("balance.csv")).noneMatch(row -> row.contains("with the bed"));
        assertThat(messy.out().resolve("tables/bed.csv")).doesNotExist();
        assertThat(messy.out().resolve("tables/years.csv")).doesNotExist();
        assertThat(said.all()).doesNotContain("with the bed");
    }

    @Test
    void theBedLiesBetweenItsBounds() {
        Messy.Said said = run("bed: {active-layer: 1 cm, tau-ce: 4 Pa}\n");
        assertThat(said.all())
                .contains("laid down / carried through / with the bed", "mercury stays in the slowest bed for");
        assertThat(column("balance.csv", "bound")).contains("with the bed");
        assertThat(column("balance.csv", "relative closure [-]"))
                .allSatisfy(closure -> assertThat(Double.parseDouble(closure)).isLessThan(1e-9));
        int last = messy.table("reaches.csv").size() - 2;
        double down = value("reaches.csv", "laid down: total Hg at end, mixed [ng/L]", last);
        double through = value("reaches.csv", "carried through: total Hg at end, mixed [ng/L]", last);
        assertThat(value("reaches.csv", "with the bed: total Hg at end, mixed [ng/L]", last))
                .isBetween(down * (1 - PRINTED), through * (1 + PRINTED))
                .isNotCloseTo(down, within(down * PRINTED));
        assertThat(column("bed.csv", "after years at this rate")).containsOnly("in balance");
    }

    @Test
    void aSlowBedIsToldOf() {
        Messy.Said said = run("bed: {active-layer: 100 cm, tau-ce: 4 Pa, horizon: 2 yr}\n");
        assertThat(said.all())
                .contains("river and bed are shown after 2 years at this rate")
                .contains("caution: Beds change slowly: shown is what is there after 2 years at this rate.");
        assertThat(column("bed.csv", "after years at this rate")).containsOnly("2");
    }

    @Test
    void waterRecoversAtOnceAndTheBedLater() {
        run(
                "bed: {active-layer: 5 cm, tau-ce: 4 Pa, burial: 2 mm/yr}\n"
                        + "history: {start: 2000, years: 80, changes: {begin: {year: 2000, factor: 1}, end: {year: 2030, factor: 0}}}\n");
        List<String> guidelines = column("recovery.csv", "guideline");
        List<String> reaches = column("recovery.csv", "feature");
        List<String> from = column("recovery.csv", "high estimate below from");
        int water = -1;
        int bed = -1;
        for (int i = 0; i < guidelines.size(); i++) {
            if (reaches.get(i).equals("c")) {
                water = guidelines.get(i).equals("CCME-FW-iHg") ? i : water;
                bed = guidelines.get(i).equals("CCME-SED-ISQG") ? i : bed;
            }
        }
        assertThat(Integer.parseInt(from.get(water))).isBetween(2030, 2040);
        assertThat(Integer.parseInt(from.get(bed)))
                .isBetween(2031, 2079)
                .isGreaterThan(Integer.parseInt(from.get(water)));
        assertThat(messy.table("years.csv")).hasSize(1 + 3 * 80);
        assertThat(messy.out().resolve("maps/recovery-CCME-SED-ISQG.png")).exists();
        assertThat(messy.out().resolve("years/wick.png")).exists();
    }

    @Test
    void whatFloodsLayOnLandIsOnAMap() {
        messy.yaml("lateral-filtered-mercury: 0.6 ng/L}", "lateral-filtered-mercury: 0.6 ng/L, flood: true}");
        run("flood: {overbank-share-per-km: 0.02 1/km}\n");
        double lost = 0;
        for (String high : column("overbank.csv", "released mercury laid on land, high [kg/yr]")) {
            lost += Double.parseDouble(high);
        }
        List<String> processes = column("balance.csv", "process");
        double most = 0;
        double inBound = 0;
        for (int i = 0; i < processes.size(); i++) {
            boolean first = column("balance.csv", "bound").get(i).equals("carried through");
            inBound += first && processes.get(i).equals("overbank")
                    ? value("balance.csv", "mass over the year [kg]", i)
                    : 0;
            most = Math.max(most, inBound);
        }
        // the balance holds the background's part too, which loses nothing
        assertThat(lost).isPositive().isCloseTo(most, within(most * 1e-4));
        assertThat(messy.out().resolve("maps/overbank.png")).exists();
    }

    @Test
    void allMercuryIsSomewhereInEveryYear() {
        run(
                "bed: {active-layer: 5 cm, tau-ce: 4 Pa, burial: 2 mm/yr}\n"
                        + "history: {start: 2000, years: 30, bed-content: 1 mg/kg, changes: {end: {year: 2010, factor: 0.25}}}\n");
        for (int year = 0; year < 30; year++) {
            double released = value("whereabouts.csv", "released since [kg]", year);
            // 12 kg in each of the first ten years and a quarter of that in the others
            assertThat(released)
                    .isCloseTo(12 * Math.min(year + 1, 10) + 3 * Math.max(0, year - 9), within(released * PRINTED));
            double somewhere = 0;
            for (String where : List.of(
                    "in the beds",
                    "buried below them",
                    "gone to the air",
                    "past the outlets",
                    "on flooded land",
                    "taken with water",
                    "held where there is no water")) {
                somewhere += value("whereabouts.csv", where + " [kg]", year);
            }
            double began = value("whereabouts.csv", "in the beds at the beginning [kg]", year);
            assertThat(began).isPositive();
            assertThat(somewhere).isCloseTo(began + released, within((began + released) * PRINTED));
        }
    }

    @Test
    void whatIsWrongIsToldAllAtOnce() {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + """
                bed: {given: erosion, burial: 1 mm/yr, tau-ce: 0.5 Pa, methyl-ceiling: {by-state: {dry: 10 ug/kg}}}
                history:
                  start: 1990.5
                  years: 20
                  order: [dry, wet]
                  changes: {later: {year: 2050, factor: 0}, who: {year: 1995, factor: 1, sites: [Shedd]}}
                """);
        Messy.Said said = messy.does("run");
        said.refuses(2, "bed.burial: follows from erosion where bed.given is erosion");
        said.refuses(2, "bed.methyl-ceiling.by-state: the one bed lies under all flow states");
        said.refuses(2, "bed.tau-ce: 0.5 Pa is below tau-cd of class silt, 4 Pa");
        said.refuses(2, "history.start: 1990.5 is not a whole number");
        said.refuses(2, "history.order[2]: \"wet\" is no flow state");
        said.refuses(2, "history.changes.who.sites[1]: Shedd is neither a site nor a group of sites");
        assertThat(Files.exists(messy.out())).isFalse();
    }

    @Test
    void aHistoryNeedsItsYearsAndABed() {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + """
                bed: {modelled: false}
                history: {start: 2000, changes: {late: {year: 2050, factor: 0}}}
                """);
        Messy.Said said = messy.does("run");
        said.refuses(2, "history.years: is missing");
        said.refuses(2, "bed.modelled: false does not go with a history, which needs the bed");
    }
}
