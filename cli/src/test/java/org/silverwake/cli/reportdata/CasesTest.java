// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.ScaledRun;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.whatif.FullValues;

/** Data of the report page on rivers of all kinds: with a bed, with further forms, with nothing in them, and large. */
class CasesTest {
    private static final long[] SEEDS = {11, 12, 13, 14};
    private static final int MEGABYTES_3 = 3_000_000;
    private static final String METHYL = "mercury: {forms: [methyl], demethylation-rate: 0.01 1/d}\n";

    @TempDir
    private Path folder;

    private CombRiver comb() {
        return new CombRiver(folder.resolve("comb"), 8)
                .site("Alder pans", "Upper", 0, 12, "0.3")
                .site("Birch pans", "Upper", 2, 8, "")
                .site("Cedar pans", "Lower", 5, 3, "0.6")
                .village("Elm", 1, false)
                .village("Fir", 5, true)
                .village("Ash", 7, false);
    }

    private static PageModel office(Outcome outcome) {
        return new PageModel(ReportData.json(outcome, Audience.OFFICE, "test"));
    }

    /** Any setting of the levers against the full run. */
    private static void asFullRuns(Outcome outcome) {
        PageModel page = office(outcome);
        for (long seed : SEEDS) {
            Random random = new Random(seed);
            double[] ways = new double[page.items("levers").size()];
            Arrays.setAll(ways, l -> random.nextInt(4) == 0 ? 1 : random.nextDouble());
            page.move(ways);
            ReportDataTest.compare(
                    page, outcome, ScaledRun.of(outcome, page.factors()).screening());
        }
    }

    @Test
    void overABedInBalance() {
        Outcome outcome = comb().more(CombRiver.BED).run();
        assertThat(outcome.result().bedAnswer().orElseThrow().afterYears()).isEmpty();
        asFullRuns(outcome);
    }

    @Test
    void overABedShownAfterYears() {
        Outcome outcome = comb().more("bed: {active-layer: 100 cm, tau-ce: 4 Pa, horizon: 2 yr}\n")
                .run();
        assertThat(outcome.result().bedAnswer().orElseThrow().afterYears()).isPresent();
        asFullRuns(outcome);
    }

    @Test
    void withMethylmercuryFromTheBed() {
        Outcome outcome = comb().more(METHYL)
                .more("bed: {active-layer: 1 cm, tau-ce: 4 Pa, methyl-ceiling: 1000000 ug/kg}\n")
                .yaml("CCME-FW-iHg", "CCME-FW-iHg, CCME-FW-MeHg")
                .run();
        assertThat(outcome.result().isMethylationHeldBack()).isFalse();
        asFullRuns(outcome);
    }

    /** Fish swim, so each answers to the water of its whole range. */
    @Test
    void fishFollowTheWater() {
        Outcome outcome = comb().more(METHYL)
                .more("bed: {active-layer: 1 cm, tau-ce: 4 Pa, methyl-ceiling: 1000000 ug/kg}\n")
                .yaml("CCME-FW-iHg", "CCME-FW-iHg, USEPA-FISH-MeHg")
                .run();
        assertThat(office(outcome).items("measures")).anyMatch(measure -> measure.get("fish") != null);
        asFullRuns(outcome);
        PageModel shown = new PageModel(ReportData.json(outcome, Audience.PUBLIC, "test"));
        assertThat(shown.items("measures"))
                .filteredOn(measure -> measure.get("medium").equals("fish"))
                .allSatisfy(measure -> assertThat(measure.get("linear")).isEqualTo(false));
    }

    @Test
    void withAllWaysOfAveraging() {
        Outcome outcome = comb().yaml("USEPA-AL-chronic", "USEPA-AL-chronic, USEPA-AL-acute, BC-FW-Hg, ANZG-FW-95")
                .run();
        asFullRuns(outcome);
    }

    @Test
    void whereMethylationIsHeldBackNoLeverMovesAnything() {
        Outcome outcome = comb().more(METHYL)
                .more("bed: {active-layer: 1 cm, tau-ce: 4 Pa, methyl-ceiling: 0.011 ug/kg}\n")
                .run();
        assertThat(outcome.result().isMethylationHeldBack()).isTrue();
        PageModel page = office(outcome);
        assertThat(page.items("measures")).isNotEmpty().allSatisfy(measure -> {
            assertThat(measure.get("linear")).isEqualTo(false);
            assertThat((String) measure.get("reason")).contains("held back");
        });
        ReportDataTest.compare(page, outcome, outcome.screening());
    }

    @Test
    void withoutSitesThereAreNoLevers() {
        Outcome outcome = new CombRiver(folder.resolve("bare"), 3)
                .village("Elm", 1, false)
                .run();
        for (Audience audience : Audience.values()) {
            PageModel page = new PageModel(ReportData.json(outcome, audience, "test"));
            assertThat(page.items("levers")).isEmpty();
            assertThat(PageModel.map(page.data(), "whatIf").get("possible")).isEqualTo(false);
            ReportDataTest.compare(page, outcome, outcome.screening());
        }
    }

    @Test
    void withoutPlacesAndInOneState() {
        Outcome outcome = new CombRiver(folder.resolve("one"), 3)
                .site("Alder pans", "", 1, 12, "0.3")
                .yaml("share-of-year: 0.7", "share-of-year: 1")
                .yaml(
                        "  wet: {share-of-year: 0.3, temperature: 21 degC, suspended-sediment: 90 mg/L, lateral-filtered-mercury: 0.6 ng/L}\n",
                        "")
                .run();
        assertThat(office(outcome).items("places")).isEmpty();
        asFullRuns(outcome);
    }

    @Test
    void withoutAValueForRiversWholeWaterIsShown() {
        Outcome outcome = comb().yaml("[CCME-FW-iHg, WHO-DW-iHg, USEPA-AL-chronic, CCME-SED-ISQG]", "[]")
                .run();
        PageModel page = office(outcome);
        assertThat(page.items("guidelines")).isEmpty();
        assertThat(page.items("measures")).hasSize(1);
        assertThat(page.values(0, 0)[1]).doesNotContain(0);
    }

    @Test
    void aSiteWithoutWaterMovesNothing() {
        Outcome outcome = comb().firstCreekDry().run();
        PageModel page = office(outcome);
        double[][] before = page.values(0, 0);
        page.move(1);
        assertThat(Arrays.deepEquals(page.values(0, 0), before)).isTrue();
        asFullRuns(outcome);
    }

    @Test
    void allSitesInOneGroup() {
        Outcome outcome = new CombRiver(folder.resolve("group"), 5)
                .site("Alder pans", "All pans", 0, 12, "0.3")
                .site("Birch pans", "All pans", 1, 8, "")
                .site("Cedar pans", "All pans", 2, 3, "0.6")
                .run();
        PageModel page = new PageModel(ReportData.json(outcome, Audience.PUBLIC, "test"));
        assertThat(page.items("contributors")).hasSize(1);
        assertThat(page.items("contributors").get(0).get("name")).isEqualTo("All pans");
        page.move(0.4);
        double[] factors = {0.6, 0.6, 0.6};
        double[][] full = FullValues.of(outcome, ScaledRun.of(outcome, factors), Audience.PUBLIC, 0, 0);
        double[][] shown = page.values(0, 0);
        for (int u = 0; u < page.reaches(); u++) {
            assertThat(Math.abs(shown[0][u] / full[0][u] - 1)).isLessThan(1e-6);
            assertThat(Math.abs(shown[1][u] / full[1][u] - 1)).isLessThan(1e-6);
        }
    }

    @Test
    void fewerThanThreeSitesTellNothingToThePublic() {
        Outcome outcome = new CombRiver(folder.resolve("two"), 4)
                .site("Alder pans", "Upper", 0, 12, "0.3")
                .site("Birch pans", "Upper", 2, 8, "")
                .run();
        PageModel page = new PageModel(ReportData.json(outcome, Audience.PUBLIC, "test"));
        assertThat(page.items("contributors")).isEmpty();
        assertThat(page.items("levers")).isEmpty();
        assertThat(page.data().get("balance")).isNull();
        assertThat((String) PageModel.map(page.data(), "whatIf").get("reason")).contains("fewer than three");
    }

    /** 500 reaches with 20 sites: what is asked of a page of that size. */
    @Test
    void fiveHundredReachesAreSmallAndFewerCharactersPutSitesTogether() {
        CombRiver river = new CombRiver(folder.resolve("many"), 250);
        for (int k = 0; k < 20; k++) {
            river.site("Pans " + k, "Group " + k / 5, 3 * k, 5 + k, k % 4 == 0 ? "" : "0.4");
        }
        Outcome outcome = river.village("Elm", 100, false).run();
        assertThat(outcome.basin().network().size()).isGreaterThan(500);
        String whole = ReportData.json(outcome, Audience.OFFICE, "test");
        assertThat(whole.length()).isLessThan(MEGABYTES_3);
        assertThat(grouping(whole)).isEqualTo("none");
        String groups = ReportData.json(outcome, Audience.OFFICE, "test", whole.length() / 2);
        assertThat(groups.length()).isLessThanOrEqualTo(whole.length() / 2);
        assertThat(grouping(groups)).isEqualTo("groups");
        PageModel page = new PageModel(groups);
        assertThat(page.items("contributors")).hasSize(4);
        ReportDataTest.compare(page, outcome, outcome.screening());
        PageModel none = new PageModel(ReportData.json(outcome, Audience.OFFICE, "test", 1));
        assertThat(none.items("levers")).isEmpty();
        ReportDataTest.compare(none, outcome, outcome.screening());
    }

    private static Object grouping(String json) {
        return PageModel.map(new PageModel(json).data(), "whatIf").get("grouped");
    }

    /** Lines lose points that a map does not show, never their ends, and stay within the tolerance. */
    @Test
    void linesAreDeltaCodedFromEndToEnd() {
        Outcome outcome = comb().run();
        PageModel page = office(outcome);
        Map<?, ?> reaches = PageModel.map(page.data(), "reaches");
        List<?> points = PageModel.list(reaches, "points");
        int at = 0;
        double x = 0;
        double y = 0;
        for (int r = 0; r < page.reaches(); r++) {
            var reach = outcome.basin().reach(r);
            int size = (Integer) PageModel.list(reaches, "size").get(r);
            for (int k = 0; k < size; k++) {
                x += (Integer) points.get(at++) * 1e-5;
                y += (Integer) points.get(at++) * 1e-5;
                int own = k == 0 ? 0 : k == size - 1 ? reach.pointCount() - 1 : -1;
                if (own >= 0) {
                    assertThat(Math.abs(x - reach.longitude(own))).isLessThan(1e-5);
                    assertThat(Math.abs(y - reach.latitude(own))).isLessThan(1e-5);
                }
            }
        }
        assertThat(at).isEqualTo(points.size());
    }
}
