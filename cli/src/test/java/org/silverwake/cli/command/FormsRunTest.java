// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.cli.command.ThreeReaches.A;
import static org.silverwake.cli.command.ThreeReaches.B;
import static org.silverwake.cli.command.ThreeReaches.C;
import static org.silverwake.cli.command.ThreeReaches.line;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.water.Cells;

/**
 * Further forms from the scenario to tables and pictures: creeks a, with the site, and b, of 1 m3/s each, flow into c. There
 * is no background, so all mercury is the site's 12 kg/yr.
 */
class FormsRunTest {
    /** Tables hold six digits. */
    private static final double PRINTED = 1e-5;

    /** ROUNDING of one propagator step for each of a few cells. */
    private static final double EXACT = 1e-9;

    private static final double YEAR = 365.25 * 86400;
    private static final double DAY = 86400;
    private static final double NANOGRAMS_PER_LITER = 1e9;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void write() {
        messy = ThreeReaches.scenario(temporary.resolve("three"), "Far,village,5,-20.025,-30.025")
                .file("r.geojson", ThreeReaches.layer(line("a", A, 1), line("b", B, 1), line("c", C, 2)))
                .yaml("lateral-filtered-mercury: 0.6 ng/L", "lateral-filtered-mercury: 0 ng/L")
                .yaml("use: [CCME-FW-iHg]", "use: [CCME-FW-iHg, CCME-FW-MeHg, ZA-TWQR, USEPA-AL-chronic]");
        more("background: {solids-mercury-content: 0 mg/kg}\n");
    }

    private void more(String lines) {
        messy.file("scenario.yaml", messy.text("scenario.yaml") + lines);
    }

    private void site(String path, String columns, String cells) {
        messy.file(
                "sites.csv",
                "name,longitude,latitude,path,release,outfall," + columns + "\nShed,-20.02,-30.001," + path
                        + ",12 kg/yr,mid-channel," + cells + "\n");
    }

    private Messy.Said run() {
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

    private static List<String> cells(String row) {
        List<String> cells = new ArrayList<>();
        for (String cell : row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
            cells.add(cell.replace("\"", ""));
        }
        return cells;
    }

    /** The last row of a feature, of a form or guideline, of a table. */
    private double last(String file, String feature, String key, String value, String name) {
        List<String> features = column(file, "feature");
        List<String> keys = column(file, key);
        int row = -1;
        for (int i = 0; i < features.size(); i++) {
            boolean found = keys.get(i).equals(value) || keys.get(i).startsWith(value + " (not checked");
            row = features.get(i).equals(feature) && found ? i : row;
        }
        assertThat(row).as("%s of %s in %s", value, feature, file).isNotNegative();
        return Double.parseDouble(column(file, name).get(row));
    }

    private double form(String feature, String form, String name) {
        return last("forms.csv", feature, "form", form, name);
    }

    private double screened(String guideline, String name) {
        return last("screening.csv", "c", "guideline", guideline, name);
    }

    @Test
    void withoutFurtherFormsThereIsNoTrace() {
        more("outputs: {profiles: [{name: main, from: a}]}\n");
        Messy.Said said = run();
        assertThat(messy.out().resolve("tables/forms.csv")).doesNotExist();
        assertThat(messy.out().resolve("profiles/main-dry.png")).exists();
        assertThat(messy.out().resolve("profiles/main-forms-dry-exchangeable.png"))
                .doesNotExist();
        assertThat(said.all()).doesNotContain("Hg(0)", "droplets");
        assertThat(Messy.say("check", messy.folder().toString()).all()).doesNotContain("Hg(0)");
    }

    /**
     * Bateman (1910), three members in a row: complex to Hg(II) at k1, Hg(II) to Hg(0) at k2, which stays. Only filtered Hg(II)
     * is reduced; with log10 Kd 1 and 18 mg/L of sediment that is 1/(1 + 0.01 m3/kg x 0.018 kg/m3) of it.
     */
    @Test
    void batemanAlongAReach() {
        site("leach-tank", "exchangeable_share,share_complex", "1,1");
        more("""
                mercury:
                  log10-kd: 1 log10 L/kg
                  forms: [elemental]
                  complex-breakdown-rate: 4 1/d
                  reduction-rate: 6 1/d
                  oxidation-rate: 0 1/d
                  light-attenuation: 0 1/m
                  evasion-velocity: 0 m/h
                """);
        Outcome outcome = MainRun.run(messy.folder(), step -> {});
        StateSolution solution = outcome.result().solution(Bound.CARRIED_THROUGH, 0);
        StateLayout layout = outcome.result().input().layout();
        Cells cells = outcome.result().cells();
        var network = outcome.basin().network();
        int reach = outcome.basin().reachAt(outcome.basin().points("site").get(0));
        double time = 0;
        for (int r = reach; isOfA(outcome, r); r = network.out(network.toNode(r), 0)) {
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                time += solution.water().travelTime(c);
            }
            reach = r;
        }
        double released = 12 / YEAR;
        double k1 = 4 / DAY;
        double k2 = 6 / DAY / (1 + 0.01 * 0.018);
        double complex = released * Math.exp(-k1 * time);
        double divalent = released * k1 / (k2 - k1) * (Math.exp(-k1 * time) - Math.exp(-k2 * time));
        double elemental = released - complex - divalent;
        // the three are of one size, so that none is right by chance
        assertThat(List.of(complex, divalent, elemental)).allMatch(part -> part > 0.1 * released);
        assertThat(solution.loadOut(reach, layout.place(Form.COMPLEX), 0)).isCloseTo(complex, within(EXACT * released));
        assertThat(solution.loadOut(reach, layout.exchangeable(), 0)).isCloseTo(divalent, within(EXACT * released));
        assertThat(solution.loadOut(reach, layout.place(Form.ELEMENTAL), 0))
                .isCloseTo(elemental, within(EXACT * released));
        run();
        double kilograms = YEAR * PRINTED * released;
        String high = "load at end, high [kg/yr]";
        assertThat(form("a", Form.COMPLEX, high)).isCloseTo(complex * YEAR, within(kilograms));
        assertThat(form("a", StateLayout.EXCHANGEABLE, high)).isCloseTo(divalent * YEAR, within(kilograms));
        assertThat(form("a", Form.ELEMENTAL, high)).isCloseTo(elemental * YEAR, within(kilograms));
        assertThat(form("a", Form.ELEMENTAL, "at end, mixed, high [ng/L]"))
                .isCloseTo(elemental * NANOGRAMS_PER_LITER, within(PRINTED * released * NANOGRAMS_PER_LITER));
    }

    private static boolean isOfA(Outcome outcome, int reach) {
        return outcome.basin().reach(reach).part().featureId().equals("a");
    }

    /** A cyanide complex passes the filter; the same mercury as exchangeable Hg(II) does so but in part, 1/(1 + Kd m). */
    @Test
    void theComplexIsScreenedByFilteredMercury() {
        site("leach-tank", "exchangeable_share,share_complex", "1,1");
        more("mercury: {complex-breakdown-rate: 0 1/d}\n");
        run();
        double inC = 12 / YEAR / 2 * NANOGRAMS_PER_LITER;
        double microgramsPerLiter = inC / 1000;
        assertThat(screened("USEPA-AL-chronic", "low")).isCloseTo(microgramsPerLiter, within(PRINTED));
        assertThat(screened("USEPA-AL-chronic", "high")).isCloseTo(microgramsPerLiter, within(PRINTED));
        assertThat(form("c", Form.COMPLEX, "largest, low [ng/L]")).isCloseTo(inC, within(inC * PRINTED));
        assertThat(screened("CCME-FW-iHg", "high")).isCloseTo(microgramsPerLiter, within(PRINTED));
        site("leach-tank", "exchangeable_share,share_complex", "1,0");
        run();
        double filtered = 1 / (1 + Math.pow(10, 5.3) / 1000 * 0.018);
        assertThat(screened("USEPA-AL-chronic", "high")).isCloseTo(microgramsPerLiter * filtered, within(PRINTED));
    }

    @Test
    void inorganicAndMethylAreTotal() {
        site("slurry", "exchangeable_share,share_methyl,share_elemental", "0.5,0.02,0.1");
        more("""
                mercury:
                  oxidation-rate: 0 1/d
                  demethylation-rate: 0 1/d
                """); // so that nothing grows on the way, and all are largest at the head
        run();
        for (String end : List.of("low", "high")) {
            double total = screened("ZA-TWQR", end);
            double methyl = screened("CCME-FW-MeHg", end);
            assertThat(methyl).isGreaterThan(0.01 * total);
            assertThat(screened("CCME-FW-iHg", end) + methyl).isCloseTo(total, within(total * PRINTED));
            double sum = 0;
            for (String form : List.of("Hg(II)", "Hg(0)", "MeHg", "grain-bound silt")) {
                sum += form("c", form, "largest, " + end + " [ng/L]");
            }
            assertThat(sum).isCloseTo(1000 * total, within(1000 * total * PRINTED));
        }
    }

    @Test
    void wholeWaterLeavesLargeDropletsOut() {
        site("slurry", "exchangeable_share,share_droplets", "1,0.75");
        more("""
                mercury:
                  droplets: {fine: {diameter: 20 um, share: 0.4}, coarse: {diameter: 64 um, share: 0.6}}
                  oxidation-rate: 1 1/d
                """);
        Messy.Said said = run();
        double atSite = 12 / YEAR / dischargeAtSite() * NANOGRAMS_PER_LITER;
        assertThat(most("droplets coarse")).isCloseTo(0.45 * atSite, within(atSite * PRINTED));
        assertThat(most("droplets fine")).isCloseTo(0.3 * atSite, within(atSite * PRINTED));
        assertThat(column("forms.csv", "in a water sample")).contains("yes", "");
        List<String> whole = column("reaches.csv", "carried through: total Hg at head, mixed [ng/L]");
        assertThat(whole.stream().mapToDouble(FormsRunTest::number).max().getAsDouble())
                .isCloseTo(0.55 * atSite, within(atSite * PRINTED));
        assertThat(said.all())
                .contains(
                        "caution: Mercury droplets above 63 um are left out of values of water, as samples miss them.");
    }

    /** Discharge at the head of the site's reach, as the table of reaches has it [m3/s]. */
    private double dischargeAtSite() {
        String reach = column("sites.csv", "reach").get(0);
        return Double.parseDouble(column("reaches.csv", "discharge at head [m3/s]")
                .get(column("reaches.csv", "reach").indexOf(reach)));
    }

    /** Largest at the head of any reach, which is that of the site. */
    private double most(String form) {
        List<String> forms = column("forms.csv", "form");
        List<String> values = column("forms.csv", "at head, mixed, high [ng/L]");
        double most = 0;
        for (int i = 0; i < forms.size(); i++) {
            most = forms.get(i).equals(form) ? Math.max(most, number(values.get(i))) : most;
        }
        return most;
    }

    private static double number(String cell) {
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    @Test
    void anUnknownSplitIsCalledWhatItIsTakenAs() {
        site("leach-tank", "exchangeable_share", "");
        more("mercury: {forms: [complex, droplets], oxidation-rate: 1 1/d}\n");
        Messy.Said said = run();
        assertThat(column("balance.csv", "unknown split taken as"))
                .contains("exchangeable", "grain-bound", "Hg-CN", "droplets");
        assertThat(messy.table("reaches.csv").get(0))
                .contains("unknown split exchangeable: ", "unknown split Hg-CN: ", "unknown split droplets: ");
        assertThat(said.all()).contains("all extremes were run");
    }

    /**
     * A leach tank and a slurry of 12 kg/yr each, both unknown: in one extreme the tank's is all complex while the slurry's,
     * which cannot be, is exchangeable, not droplets; so the extremes are the same in the same order for all sites.
     */
    @Test
    void sitesShareTheirExtremes() {
        messy.file(
                "sites.csv",
                "name,longitude,latitude,path,release,outfall\nSheds,-20.02,-30.001,slurry,12 kg/yr,mid-channel\n"
                        + "Tanks,-20.021,-30.001,leach-tank,12 kg/yr,mid-channel\n");
        more("mercury: {forms: [complex, droplets], oxidation-rate: 1 1/d}\n");
        run();
        assertThat(new LinkedHashSet<>(column("balance.csv", "unknown split taken as")))
                .containsExactly("exchangeable", "grain-bound", "Hg-CN", "droplets");
        List<String> rows = messy.table("balance.csv").stream()
                .filter(row -> row.contains(",Hg-CN,released,"))
                .filter(row -> row.startsWith("dry,carried through,"))
                .toList();
        assertThat(rows.stream().filter(row -> number(cells(row).get(5)) > 0))
                .extracting(row -> cells(row).get(4) + " " + cells(row).get(5))
                .containsExactlyInAnyOrder("Hg(II) 12", "Hg-CN 12");
    }

    @Test
    void whatTheChecksFindIsTold() {
        site("slurry", "exchangeable_share,share_droplets,share_elemental", "1,0.5,0.5");
        messy.with("sites.csv", "12 kg/yr", "12000 kg/yr");
        more("mercury: {oxidation-rate: 1 1/d}\n");
        Messy.Said said = run();
        assertThat(said.all())
                .contains("dissolved Hg(0) is above a tenth of its solubility")
                .contains("caution: In places droplets dissolve more slowly than computed");
        assertThat(text("run.json")).contains("\"formChecks\"", "\"elementalAboveTenthOfSolubility\" : [\n");
    }

    @Test
    void withinTheirRangesTheChecksAreSilent() {
        site("slurry", "exchangeable_share,share_droplets", "1,0.01");
        more("mercury: {oxidation-rate: 1 1/d, evasion-velocity: 0.1 m/h}\n");
        Messy.Said said = run();
        assertThat(said.all()).doesNotContain("solubility", "by which Hg(0) goes to the air");
        assertThat(text("run.json")).contains("\"elementalAboveTenthOfSolubility\" : [ ]");
    }

    private String text(String file) {
        try {
            return Files.readString(messy.out().resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void picturesAreDrawnOfWhatIsCarriedAndAskedFor() {
        site("slurry", "exchangeable_share,share_methyl", "0.5,0.01");
        more("""
                mercury: {demethylation-rate: 1 1/d}
                outputs:
                  profiles: [{name: main, from: a}]
                  forms: [methyl, complex, grain-bound]
                  form-media: [whole-water, filtered-water, bed-sediment]
                """);
        Messy.Said said = run();
        assertThat(said.all())
                .contains("outputs.forms[2]: complex is not carried, so no picture of it is drawn")
                .contains("outputs.form-media: bed-sediment is drawn form by form only where the bed is modelled");
        assertThat(messy.out().resolve("profiles").toFile().list())
                .containsExactlyInAnyOrder(
                        "main-dry.png",
                        "main-forms-dry.png",
                        "main-methyl-whole-water-dry.png",
                        "main-methyl-filtered-water-dry.png",
                        "main-grain-bound-whole-water-dry.png");
        assertThat(messy.out().resolve("maps").toFile().list())
                .contains(
                        "methyl-whole-water-dry.png",
                        "methyl-filtered-water-dry.png",
                        "grain-bound-whole-water-dry.png")
                .doesNotContain("grain-bound-filtered-water-dry.png", "complex-whole-water-dry.png");
    }

    @Test
    void theBedIsDrawnWhereItIsModelled() {
        site("slurry", "exchangeable_share,share_methyl", "0.5,0.01");
        more("""
                mercury: {demethylation-rate: 1 1/d}
                outputs: {profiles: [{name: main, from: a}], forms: [methyl], form-media: [suspended-solids, bed-sediment]}
                bed: {active-layer: 1 cm, tau-ce: 0.5 Pa}
                """);
        run();
        assertThat(messy.out().resolve("maps/methyl-bed-sediment.png")).exists();
        assertThat(messy.out().resolve("maps/methyl-suspended-solids-dry.png")).exists();
        assertThat(messy.out().resolve("profiles/main-methyl-bed-sediment.png")).exists();
    }
}
