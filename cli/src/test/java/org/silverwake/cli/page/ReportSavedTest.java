// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Trial;
import org.silverwake.model.screening.Guideline;

/** What a page saves as tried is a scenario that runs, and the run gives what the page shows. */
class ReportSavedTest extends OnDemoPages {
    /** ROUNDING: what the page calls exact, 32-bit floats of up to ten parts and ratios left out at 5e-7. */
    private static final double EXACT = 1e-6;

    /** Moves the levers of these labels so far; those of 2 close. */
    private static String saved(Path page, Map<String, Double> ways) {
        browser.open(page);
        browser.ask("""
                const data = JSON.parse(document.getElementById('data').textContent);
                const at = (label) => arguments[0][label] || 0;
                const ways = Float64Array.from(data.levers, (lever) => Math.min(1, at(lever.label)));
                const closed = data.levers.map((lever) => at(lever.label) === 2);
                window.silverwake.choice.change('ways', { ways, closed });""", ways);
        browser.press("#whatif", "Save as file");
        return browser.downloaded("tried.yaml");
    }

    private static Outcome run(String text) {
        Path file = pages.scenario().resolveSibling("tried.yaml");
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return MainRun.run(file, step -> {});
    }

    /** Largest relative difference of a low or high estimate that the page shows from the run's, over guidelines, states and reaches. */
    private static double off(Outcome run) {
        double largest = 0;
        int compared = 0;
        for (int g = 0; g < run.screening().compared().size(); g++) {
            Guideline guideline = run.screening().compared().get(g);
            for (int state = 0; state < run.scenario().states().size(); state++) {
                Map<?, ?> read =
                        (Map<?, ?>) browser.ask("return window.silverwake.read(arguments[0], arguments[1])", g, state);
                for (int r = 0; r < ((List<?>) read.get("low")).size(); r++) {
                    Object low = ((List<?>) read.get("low")).get(r);
                    if (low != null && run.screening().applies(guideline, r)) {
                        var band = run.screening()
                                .inState(guideline, r, state)
                                .values()
                                .orElseThrow()
                                .band();
                        double high = ((Number) ((List<?>) read.get("high")).get(r)).doubleValue();
                        largest = Math.max(largest, Math.abs(((Number) low).doubleValue() / band.low() - 1));
                        largest = Math.max(largest, Math.abs(high / band.high() - 1));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
        return largest;
    }

    private static Trial trial(Outcome run) {
        return run.scenario().fieldNotes().trial();
    }

    @Test
    void mercuryOfSitesAndAPracticeWithoutMercury() {
        String text =
                saved(pages.office(), Map.of("gravity Upper Lamp", 1.0, "Quinquet mill", 0.35, "Mantle sheds", 1.0));
        Outcome run = run(text);
        assertThat(trial(run).practices()).isEqualTo(Map.of("gravity Upper Lamp", 1.0));
        assertThat(trial(run).sites()).isEqualTo(Map.of("Quinquet mill", 0.65, "Mantle sheds", 0.0));
        assertThat(off(run)).isLessThan(EXACT);
    }

    @Test
    void aClosedSite() {
        Outcome run = run(saved(pages.office(), Map.of("Sconce sheds", 2.0)));
        assertThat(trial(run).closed()).containsExactly("Sconce sheds");
        assertThat(off(run)).isLessThan(EXACT);
    }

    @Test
    void aPracticeThatKeepsTailings() {
        assertThat(off(run(saved(pages.office(), Map.of("ponds", 1.0))))).isLessThan(EXACT);
        Outcome half = run(saved(pages.office(), Map.of("ponds", 0.5)));
        assertThat(trial(half).practices()).isEqualTo(Map.of("ponds", 0.5));
        double stated = browser.number("""
                const data = JSON.parse(document.getElementById('data').textContent);
                return data.levers.find((lever) => lever.label === 'ponds').error.halfway.relative;""");
        assertThat(off(half)).isLessThanOrEqualTo(stated * (1 + EXACT)).isGreaterThan(EXACT);
    }

    /** A page of a run that tries something already saves both. */
    @Test
    void aTrialOfATrial() {
        Outcome first = run(saved(pages.office(), Map.of("Sconce sheds", 0.5, "gravity Mantle Flats", 1.0)));
        Path page = folder.resolve("tried.html");
        ReportPage.write(first, "test", page);
        String text = saved(page, Map.of("Sconce sheds", 0.5, "Wickmill sheds", 1.0));
        assertThat(text.lines().filter(line -> line.startsWith("tried:"))).hasSize(1);
        Outcome second = run(text);
        assertThat(trial(second).sites()).isEqualTo(Map.of("Sconce sheds", 0.25, "Wickmill sheds", 0.0));
        assertThat(trial(second).practices()).isEqualTo(Map.of("gravity Mantle Flats", 1.0));
        assertThat(off(second)).isLessThan(EXACT);
        assertThat(Cautions.of(second)).contains("This is a trial with other releases, not the present.");
        assertThat(Cautions.of(pages.outcome())).noneMatch(caution -> caution.contains("trial"));
    }

    /** Without the scenario's text there is the section alone; a group by its name, those put together as a remark. */
    @Test
    void whatEverybodySaves() throws IOException {
        String text = saved(pages.everybody(), Map.of("Upper Lamp", 0.4, "other sources", 0.5));
        assertThat(text).contains("\"Upper Lamp\": 0.6").contains("#   other sources: 0.5 of its mercury");
        String section = text.substring(text.indexOf("tried:"), text.indexOf("# not among them"));
        Outcome run = run(Files.readString(pages.scenario()) + "\n" + section);
        assertThat(trial(run).sites()).isEqualTo(Map.of("Upper Lamp", 0.6));
        int released = (int) IntStream.range(0, run.scenario().sites().size())
                .filter(i -> Math.abs(run.result().input().meanRelease(i)
                                        / pages.outcome().result().input().meanRelease(i)
                                - 0.6)
                        < EXACT)
                .count();
        assertThat(released).isEqualTo((int) run.scenario().sites().stream()
                .filter(site -> site.group().equals("Upper Lamp"))
                .count());
    }
}
