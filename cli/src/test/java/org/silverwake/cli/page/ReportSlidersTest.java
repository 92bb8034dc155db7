// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.Rerun;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;

/** Sliders of practices and boxes that close sites, moved in a browser, against full runs with the same in force. */
class ReportSlidersTest extends OnDemoPages {
    /** ROUNDING: what the page calls exact, 32-bit floats of up to ten parts and ratios left out at 5e-7. */
    private static final double EXACT = 1e-6;

    private static final Pattern AT_MOST = Pattern.compile("by at most ([0-9.]+)%");
    private static final Pattern UP_TO = Pattern.compile("by up to ([0-9.]+)%");
    private static final double PER_CENT = 0.01;

    private static Outcome outcome;

    @BeforeAll
    static void keep() {
        outcome = pages.outcome();
    }

    private static void open(Path page) {
        browser.open(page);
        browser.ask("document.querySelectorAll('#whatif details').forEach((d) => { d.open = true; })");
    }

    private static WebElement lever(String label) {
        return browser.driver().findElements(By.cssSelector("#whatif .lever")).stream()
                .filter(each -> each.findElement(By.tagName("label")).getText().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static WebElement slider(String label) {
        return lever(label).findElement(By.cssSelector("input[type=range]"));
    }

    private static void moveTo(WebElement slider, double part) {
        browser.ask(
                "arguments[0].value = String(100 * arguments[1]); arguments[0].dispatchEvent(new Event('input'));"
                        + "arguments[0].dispatchEvent(new Event('change'));",
                slider,
                part);
    }

    private static double said(Pattern pattern, String text) {
        Matcher said = pattern.matcher(text);
        assertThat(said.find()).as(text).isTrue();
        return PER_CENT * Double.parseDouble(said.group(1));
    }

    /** Largest relative difference of what the page shows from a full run, over guidelines, states and reaches, and whether answers differ. */
    private record Difference(double largest, List<String> answers, int compared) {}

    private static Difference difference(Rerun full) {
        double largest = 0;
        List<String> answers = new ArrayList<>();
        int compared = 0;
        for (int g = 0; g < full.screening().compared().size(); g++) {
            Guideline guideline = full.screening().compared().get(g);
            for (int state = -1; state < outcome.scenario().states().size(); state++) {
                Map<?, ?> read =
                        (Map<?, ?>) browser.ask("return window.silverwake.read(arguments[0], arguments[1])", g, state);
                List<?> answer = (List<?>) read.get("answer");
                for (int r = 0; r < answer.size(); r++) {
                    if (full.screening().isLeftOut(guideline, r)
                            || !full.screening().applies(guideline, r)) {
                        continue;
                    }
                    ScreeningRow row = state < 0
                            ? full.screening().row(guideline, r)
                            : full.screening().inState(guideline, r, state);
                    if (((Number) answer.get(r)).intValue() != row.answer().ordinal()) {
                        answers.add(guideline.id() + ", reach " + r + ", state " + state + ": " + row.answer());
                    }
                    Object low = ((List<?>) read.get("low")).get(r);
                    if (low != null && row.values().isPresent()) {
                        var band = row.values().get().band();
                        largest = Math.max(largest, off(low, band.low()));
                        largest = Math.max(largest, off(((List<?>) read.get("high")).get(r), band.high()));
                        compared++;
                    }
                }
            }
        }
        return new Difference(largest, answers, compared);
    }

    private static double off(Object shown, double full) {
        return Math.abs(((Number) shown).doubleValue() / full - 1);
    }

    private static List<OfferedPractice> practices() {
        return outcome.scenario().fieldNotes().practices();
    }

    @Test
    void aPracticeAtItsEndIsWhatAFullRunWithItInForceGives() {
        open(pages.office());
        assertThat(practices()).isNotEmpty();
        for (OfferedPractice practice : practices()) {
            WebElement slider = slider(practice.practice().name());
            slider.sendKeys(Keys.END);
            Difference off = difference(Rerun.taking(outcome, List.of(practice), 1));
            assertThat(off.largest()).as(practice.practice().name()).isLessThan(EXACT);
            assertThat(off.answers()).as(practice.practice().name()).isEmpty();
            assertThat(off.compared()).isGreaterThan(1000);
            slider.sendKeys(Keys.HOME);
        }
    }

    /** Half way the page says how far it is off at most; it is not farther off, and not by much less in the worst case. */
    @Test
    void aPracticeHalfWayIsNotFartherOffThanThePageSays() {
        open(pages.office());
        double most = 0;
        for (OfferedPractice practice : practices()) {
            String name = practice.practice().name();
            String text = lever(name).getText();
            double stated = text.contains("Exact.") ? EXACT : said(AT_MOST, text);
            moveTo(slider(name), 0.5);
            Difference off = difference(Rerun.taking(outcome, List.of(practice), 0.5));
            assertThat(off.largest()).as(name).isLessThanOrEqualTo(stated);
            most = Math.max(most, off.largest());
            moveTo(slider(name), 0);
        }
        assertThat(most).isGreaterThan(EXACT);
    }

    @Test
    void allPracticesTogetherAreNotFartherOffThanThePageSays() {
        open(pages.office());
        practices().forEach(practice -> slider(practice.practice().name()).sendKeys(Keys.END));
        double off = difference(Rerun.taking(outcome, practices(), 1)).largest();
        String hint = browser.driver().findElements(By.cssSelector("#whatif > .hint")).stream()
                .map(WebElement::getText)
                .filter(text -> text.startsWith("All practices"))
                .findFirst()
                .orElseThrow();
        assertThat(off).isLessThanOrEqualTo(said(UP_TO, hint)).isGreaterThan(EXACT);
    }

    /** A closed site has neither mercury nor tailings nor water; without the box it is as far off as the page says. */
    @Test
    void aClosedSiteIsWhatAFullRunWithoutItGives() {
        open(pages.office());
        List<String> names = outcome.scenario().sites().stream()
                .map(site -> site.where())
                .distinct()
                .toList();
        assertThat(names).hasSizeGreaterThan(5);
        for (String where : names) {
            List<Integer> points = IntStream.range(0, outcome.scenario().sites().size())
                    .filter(i -> outcome.scenario().sites().get(i).where().equals(where))
                    .boxed()
                    .toList();
            isClosedExactly(outcome.scenario().sites().get(points.get(0)).name(), points);
        }
    }

    private static Difference isClosedExactly(String name, List<Integer> points) {
        Rerun full = Rerun.closing(outcome, points);
        WebElement lever = lever(name);
        moveTo(slider(name), 0);
        double mercuryAlone = difference(full).largest();
        assertThat(mercuryAlone).as(name).isLessThanOrEqualTo(said(UP_TO, lever.getText()));
        WebElement box = lever.findElement(By.cssSelector("input[type=checkbox]"));
        box.click();
        assertThat(browser.find("#tried").getText()).contains(name, "closed altogether");
        Difference off = difference(full);
        assertThat(off.largest()).as(name).isLessThan(EXACT);
        assertThat(off.answers()).as(name).isEmpty();
        moveTo(slider(name), 1);
        assertThat(box.isSelected()).isFalse();
        return off;
    }

    @Test
    void allSitesClosedAreNotFartherOffThanThePageSays() {
        open(pages.office());
        browser.driver()
                .findElements(By.cssSelector("#whatif input[type=checkbox]"))
                .forEach(WebElement::click);
        List<Integer> all =
                IntStream.range(0, outcome.scenario().sites().size()).boxed().toList();
        String hint = browser.driver().findElements(By.cssSelector("#whatif > .hint")).stream()
                .map(WebElement::getText)
                .filter(text -> text.startsWith("With closing"))
                .findFirst()
                .orElseThrow();
        assertThat(difference(Rerun.closing(outcome, all)).largest()).isLessThanOrEqualTo(said(UP_TO, hint));
    }

    @Test
    void aClosedSiteStandsInTheLink() {
        open(pages.office());
        WebElement box = browser.find("#whatif .lever input[type=checkbox]");
        box.click();
        assertThat(browser.driver().getCurrentUrl()).contains("w=s0%7E1").endsWith("&c=s0");
        browser.ask("location.hash = ''");
        browser.waitFor("return !window.silverwake.choice.it.closed[0]");
        browser.driver().navigate().back();
        browser.waitFor("return window.silverwake.choice.it.closed[0]");
        assertThat(browser.find("#whatif .lever input[type=checkbox]").isSelected())
                .isTrue();
    }
}
