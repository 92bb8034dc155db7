// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.ScaledRun;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.transport.Bound;

/** The data of the demo's page, read by the contract alone, against the program's own answers and full runs. */
class ReportDataTest {
    /** ROUNDING: 32-bit floats, 6e-8 each, of up to ten parts, and spots left out at 1.5e-7. */
    private static final double ROUNDING = 1e-6;

    private static final long[] SEEDS = {1, 2, 3, 4, 5, 6, 7, 8};

    private static final Outcome PLAIN = run("scenario.yaml");
    private static final Outcome NOTES = run("today.yaml");

    private static Outcome run(String file) {
        return MainRun.run(DemoCopy.LANTERN.resolve(file), step -> {});
    }

    static Stream<Outcome> demos() {
        return Stream.of(PLAIN, NOTES);
    }

    private static PageModel page(Outcome outcome, Audience audience) {
        return new PageModel(ReportData.json(outcome, audience, "test"));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void asItWasRunTheAnswersAreTheRunsOwn(Outcome outcome) {
        compare(page(outcome, Audience.OFFICE), outcome, outcome.screening());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void leversGiveWhatAFullRunGives(Outcome outcome) {
        PageModel page = page(outcome, Audience.OFFICE);
        int sites = (int) page.items("levers").stream()
                .filter(lever -> lever.get("kind").equals("site"))
                .count();
        long fresh = System.nanoTime();
        for (long seed : with(SEEDS, fresh)) {
            Random random = new Random(seed);
            double[] ways = new double[sites];
            // some sites stop altogether, since then marks of their outfalls go
            Arrays.setAll(ways, l -> random.nextInt(4) == 0 ? 1 : random.nextDouble());
            page.move(ways);
            try {
                compare(page, outcome, ScaledRun.of(outcome, page.factors()).screening());
            } catch (AssertionError e) {
                throw new AssertionError("seed " + seed, e);
            }
        }
    }

    private static long[] with(long[] seeds, long fresh) {
        long[] all = Arrays.copyOf(seeds, seeds.length + 1);
        all[seeds.length] = fresh;
        return all;
    }

    static void compare(PageModel page, Outcome outcome, Screening screening) {
        int states = outcome.scenario().states().size();
        for (int g = 0; g < screening.compared().size(); g++) {
            Guideline guideline = screening.compared().get(g);
            assertThat(page.items("guidelines").get(g).get("id")).isEqualTo(guideline.id());
            for (int state = -1; state < states; state++) {
                List<PageModel.Shown> shown = page.shown(g, state);
                for (int r = 0; r < page.reaches(); r++) {
                    if (guideline.scope() == Medium.Scope.REACH || screening.applies(guideline, r)) {
                        compare(shown.get(r), screening, guideline, r, state);
                    }
                }
            }
        }
    }

    private static void compare(PageModel.Shown shown, Screening screening, Guideline guideline, int r, int state) {
        String where = guideline.id() + " of reach " + r + " in state " + state;
        if (screening.isLeftOut(guideline, r)) {
            assertThat(shown.shade()).as(where).isEqualTo("does-not-apply");
            return;
        }
        ScreeningRow row = state < 0 ? screening.row(guideline, r) : screening.inState(guideline, r, state);
        assertThat(shown.answer()).as(where).isEqualTo(row.answer().ordinal());
        assertThat(shown.reason())
                .as(where)
                .isEqualTo(row.verdict().reason().map(Enum::name).orElse(""));
        assertThat(shown.hatched()).as(where).isEqualTo(row.verdict().hatched());
        assertThat(shown.fromBackground()).as(where).isEqualTo(row.verdict().aboveFromBackground());
        row.values().ifPresent(values -> {
            close(where, shown.low(), values.band().low());
            close(where, shown.high(), values.band().high());
            close(where, shown.background(), values.band().background());
        });
    }

    private static void close(String where, double shown, double full) {
        assertThat(Math.abs(shown - full))
                .as("%s: %s against %s", where, shown, full)
                .isLessThanOrEqualTo(ROUNDING * full);
    }

    @Test
    void nearBankMarksAreThoseOfTheMap() {
        PageModel page = page(PLAIN, Audience.OFFICE);
        int marked = 0;
        for (int s = 0; s < PLAIN.scenario().states().size(); s++) {
            for (int r = 0; r < page.reaches(); r++) {
                boolean near = PLAIN.result().solution(Bound.CARRIED_THROUGH, s).isNearBank(r);
                assertThat(page.isNearBank(s, r)).isEqualTo(near);
                marked += near ? 1 : 0;
            }
        }
        assertThat(marked).isPositive();
    }

    @Test
    void placesHaveTheAnswersOfTheRun() {
        PageModel page = page(NOTES, Audience.PUBLIC);
        Screening screening = NOTES.screening();
        for (int g = 0; g < screening.compared().size(); g++) {
            Guideline guideline = screening.compared().get(g);
            List<PageModel.Shown> shown = page.shown(g, -1);
            for (int p = 0; p < screening.receptors().size(); p++) {
                Map<?, ?> place = page.items("places").get(p);
                boolean asked = guideline.scope() == Medium.Scope.REACH || (Boolean) place.get("drinking");
                int answer = shown.get((Integer) place.get("reach")).answer();
                Optional<Integer> own = screening
                        .verdict(guideline, screening.receptors().get(p))
                        .map(verdict -> verdict.answer().ordinal());
                assertThat(asked && answer >= 0 ? Optional.of(answer) : Optional.empty())
                        .as("%s at %s", guideline.id(), place.get("name"))
                        .isEqualTo(own);
            }
        }
    }

    /** What enters the river with every part leaves with it. */
    @Test
    void balancesOfPartsClose() {
        PageModel page = page(NOTES, Audience.OFFICE);
        List<String> in = List.of("released", "background", "lateral", "from bed");
        for (Object column : PageModel.list(PageModel.map(page.data(), "balance"), "columns")) {
            List<Object> parts = new ArrayList<>(PageModel.list((Map<?, ?>) column, "contributors"));
            parts.add(((Map<?, ?>) column).get("background"));
            for (Object part : parts) {
                double enters = 0;
                double sum = 0;
                for (Map.Entry<?, ?> flow : ((Map<?, ?>) part).entrySet()) {
                    double rate = PageModel.number(flow.getValue());
                    enters += in.contains(flow.getKey()) ? rate : 0;
                    sum += in.contains(flow.getKey()) ? rate : -rate;
                }
                assertThat(Math.abs(sum)).isLessThanOrEqualTo(1e-9 * enters);
            }
        }
    }

    @Test
    void itCanStandInAScriptElement() {
        String json = ReportData.json(NOTES, Audience.PUBLIC, "</script><script>alert(1)");
        assertThat(json).doesNotContain("<").doesNotContain("\u2028").doesNotContain("\u2029");
    }

    @Test
    void twiceIsTheSame() {
        assertThat(ReportData.json(NOTES, Audience.OFFICE, "test"))
                .isEqualTo(ReportData.json(NOTES, Audience.OFFICE, "test"));
    }
}
