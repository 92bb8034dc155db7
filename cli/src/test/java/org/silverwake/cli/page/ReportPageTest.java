// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.print.PrintOptions;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.Rerun;
import org.silverwake.cli.run.ScaledRun;
import org.silverwake.cli.text.Texts;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;

/** The report page of the demo in a real browser that has no network: what it says, what sliders do, who can use it. */
class ReportPageTest extends OnDemoPages {
    /** ROUNDING: responses are 32-bit floats, 6e-8 each, of up to ten parts, and spots left out at 1.5e-7. */
    private static final double ROUNDING = 1e-6;

    private static final long[] SEEDS = {1, 2, 3};
    private static final String HOSTILE = "<img src=x onerror=window.hit=1>";
    /** The page's code where a value is not meant for a reach. */
    private static final int NONE = 4;

    private static final int SETTLED = 400;

    private static Outcome outcome;
    private static Path office;
    private static Path everybody;

    @BeforeAll
    static void keep() {
        outcome = pages.outcome();
        office = pages.office();
        everybody = pages.everybody();
    }

    private static String chosen(String select) {
        return (String) browser.ask("return arguments[0].selectedOptions[0].textContent", browser.find(select));
    }

    private static void speak(String language) {
        browser.find("#language option[value=" + language + "]").click();
        settle();
    }

    private static void settle() {
        browser.ask("window.settled = false; setTimeout(() => { window.settled = true; }, " + SETTLED + ")");
        browser.waitFor("return window.settled");
    }

    @Test
    void opensFromDiskWithCautionsAndWhoMadeIt() throws IOException {
        browser.open(office);
        assertThat(Files.size(office)).isLessThan(3_000_000);
        assertThat(text("#band")).startsWith("NOT FOR POSTING");
        assertThat(text("#head")).contains("Lantern River, today", "Silverwake demo", "Do not use after");
        List<String> cautions = Texts.of("en").numbered("caution");
        assertThat(text("#cautions")).contains(cautions);
        List<String> own = Cautions.of(outcome);
        assertThat(text("#cautions")).contains(own.subList(Cautions.always().size(), own.size()));
        double top = browser.number("return document.getElementById('cautions').getBoundingClientRect().top");
        assertThat(top).isLessThan(300);
        double inked = browser.number("""
                const canvas = document.querySelector('#map canvas');
                const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
                let inked = 0;
                for (let k = 0; k < pixels.length; k += 4) {
                    inked += pixels[k] === 0x6e && pixels[k + 1] === 0x10 && pixels[k + 2] === 0x44;
                }
                return inked;""");
        // 76 km above in a river 150 km long on a map of 800 pixels, 5 pixels wide: 1,000 at least
        assertThat(inked).isGreaterThan(1000);
        assertThat(browser.find("body").getText()).doesNotContainIgnoringCase("is safe ");
    }

    /** The page's own arithmetic against full runs of the program, levers set at random. */
    @Test
    void slidersGiveWhatAFullRunGives() {
        browser.open(office);
        int sites = outcome.result().input().sites().size();
        for (long seed : SEEDS) {
            Random random = new Random(seed);
            double[] ways = new double[sites];
            Arrays.setAll(ways, l -> random.nextInt(4) == 0 ? 1 : random.nextDouble());
            double[] factors = Arrays.stream(ways).map(way -> 1 - way).toArray();
            Rerun full = ScaledRun.of(outcome, factors);
            for (int g = 0; g < full.screening().compared().size(); g++) {
                for (int state = -1; state < outcome.scenario().states().size(); state++) {
                    compare(full, g, state, ways, "seed " + seed);
                }
            }
        }
    }

    private static void compare(Rerun full, int g, int state, double[] ways, String where) {
        Guideline guideline = full.screening().compared().get(g);
        List<?> siteWays = Arrays.stream(ways).boxed().toList();
        // levers of the page: sites come first, practices stay where they are
        Map<?, ?> read = (Map<?, ?>) browser.ask(
                "const ways = new Array(window.silverwake.choice.it.ways.length).fill(0);"
                        + "arguments[2].forEach((way, l) => { ways[l] = way; });"
                        + "return window.silverwake.read(arguments[0], arguments[1], ways)",
                g,
                state,
                siteWays);
        List<?> low = (List<?>) read.get("low");
        List<?> high = (List<?>) read.get("high");
        List<?> answer = (List<?>) read.get("answer");
        for (int r = 0; r < answer.size(); r++) {
            if (full.screening().isLeftOut(guideline, r) || !full.screening().applies(guideline, r)) {
                continue;
            }
            ScreeningRow row = state < 0
                    ? full.screening().row(guideline, r)
                    : full.screening().inState(guideline, r, state);
            String at = where + ", " + guideline.id() + ", reach " + r + ", state " + state;
            assertThat(((Number) answer.get(r)).intValue())
                    .as(at)
                    .isEqualTo(row.answer().ordinal());
            if (low.get(r) != null) {
                near(at, (Number) low.get(r), row.values().orElseThrow().band().low());
                near(at, (Number) high.get(r), row.values().orElseThrow().band().high());
            }
        }
    }

    private static void near(String at, Number shown, double full) {
        assertThat(shown.doubleValue() / full).as(at).isCloseTo(1, within(ROUNDING));
    }

    @Test
    void aSliderMovedByKeyboardChangesMapPlacesAndTablesAndStandsInTheLink() {
        browser.open(office);
        String before = text("#legend");
        WebElement slider = browser.driver().findElements(By.cssSelector("#whatif input[type=range]")).stream()
                .filter(s -> s.getDomAttribute("aria-describedby") != null)
                .filter(s -> label(s).equals("Sconce sheds"))
                .findFirst()
                .orElseThrow();
        browser.ask("document.querySelectorAll('#whatif details').forEach((d) => { d.open = true; })");
        slider.sendKeys(Keys.HOME);
        settle();
        assertThat(text("#effect")).contains("19.8 kg/yr", "kept out of the river");
        assertThat(text("#legend")).isNotEqualTo(before);
        assertThat(text("#table-sources tbody tr")).contains("Sconce sheds").endsWith("19.8 0");
        assertThat(browser.driver().getCurrentUrl()).contains("#w=s0%7E1");
        browser.waitFor("return document.getElementById('said').textContent.includes('19.8 kilograms')");
        browser.driver().navigate().back();
        settle();
        assertThat(text("#legend")).isEqualTo(before);
        browser.driver().navigate().forward();
        settle();
        assertThat(text("#effect")).contains("19.8 kg/yr");
        browser.press("#whatif", "Back to the present");
        assertThat(text("#legend")).isEqualTo(before);
    }

    private static String label(WebElement slider) {
        return String.valueOf(browser.ask("return arguments[0].labels[0].textContent", slider));
    }

    @Test
    void aLinkOpensWhatItSays() {
        browser.open(office);
        browser.ask("location.hash = 'g=WHO-DW-iHg&s=wet&p=Emberfold&l=es&w=s0~0.5'");
        settle();
        assertThat(chosen("#guideline")).startsWith("WHO-DW-iHg");
        assertThat(chosen("#state")).startsWith("wet");
        assertThat(text("#card h3")).isEqualTo("Emberfold");
        assertThat(browser.find("html").getDomAttribute("lang")).isEqualTo("es");
        assertThat(browser.number("return window.silverwake.choice.it.ways[0]")).isEqualTo(0.5);
        browser.ask("location.hash = 'g=nothing&r=nowhere&w=s0~7_x~1&l=xx'");
        settle();
        assertThat(text("#card")).contains("Nothing picked");
        assertThat(browser.number("return window.silverwake.choice.it.ways[0]")).isZero();
    }

    /** What is below the map stays there, whether sliders were moved or not. */
    @Test
    void theMapStandsAboveItsLegend() {
        browser.open(office);
        String gap = "return document.getElementById('legend').getBoundingClientRect().top"
                + " - document.getElementById('map').getBoundingClientRect().bottom";
        assertThat(browser.number(gap)).isPositive();
        browser.ask("location.hash = 'w=s0~0.5'");
        settle();
        assertThat(browser.number(gap)).isPositive();
        assertThat(text("#tried")).contains("not the present", "Sconce sheds 50%");
    }

    /** Drinking-water values are compared where people drink, and on no other reach. */
    @Test
    void drinkingWaterValuesAreForPlacesWherePeopleDrink() {
        browser.open(office);
        int guideline = outcome.screening().compared().stream()
                .map(Guideline::id)
                .toList()
                .indexOf("WHO-DW-iHg");
        List<?> answers = (List<?>)
                ((Map<?, ?>) browser.ask("return window.silverwake.read(arguments[0], -1)", guideline)).get("answer");
        Guideline drinking = outcome.screening().compared().get(guideline);
        for (int r = 0; r < answers.size(); r++) {
            boolean isCompared = ((Number) answers.get(r)).intValue() < NONE;
            assertThat(isCompared)
                    .as("reach " + r)
                    .isEqualTo(outcome.screening().applies(drinking, r));
        }
    }

    /** A click on a line of the color of "above" opens a card that says so; pointing at the map points in the profile. */
    @Test
    void aClickOnALineOpensItsCard() {
        browser.open(office);
        List<?> at = (List<?>) browser.ask("""
                const map = document.getElementById('map');
                map.scrollIntoView({ block: 'center' });
                const canvas = map.querySelector('canvas');
                const box = canvas.getBoundingClientRect();
                const frame = map.getBoundingClientRect();
                const marks = [...document.querySelectorAll('.point')].map((m) => m.getBoundingClientRect());
                const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
                const is = (k, r, g, b) => pixels[k] === r && pixels[k + 1] === g && pixels[k + 2] === b;
                const isAlone = (k) => { // no line of "may be above" near, whose end could be nearer
                    for (let dy = -14; dy <= 14; dy++) {
                        for (let dx = -14; dx <= 14; dx++) {
                            const n = k + 4 * (dx + dy * canvas.width);
                            if (is(n, 0xa3, 0x21, 0x3e) || is(n, 0xb8, 0x5a, 0x14)) {
                                return false;
                            }
                        }
                    }
                    return true;
                };
                for (let k = 0; k < pixels.length; k += 4) {
                    if (is(k, 0x6e, 0x10, 0x44) && isAlone(k)) {
                        const x = box.left + (k / 4 % canvas.width) * box.width / canvas.width;
                        const y = box.top + Math.floor(k / 4 / canvas.width) * box.height / canvas.height;
                        const isFree = marks.every((m) => x < m.left - 9 || x > m.right + 9 || y < m.top - 9 || y > m.bottom + 9);
                        if (isFree && x > frame.left + 20 && x < frame.right - 20 && y > frame.top + 20 && y < frame.bottom - 20) {
                            return [Math.round(x), Math.round(y)];
                        }
                    }
                }
                return [];""");
        new Actions(browser.driver())
                .moveToLocation(((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue())
                .click()
                .perform();
        assertThat(text("#card .verdict")).contains("Above the guide value");
        new Actions(browser.driver()).moveByOffset(2, 0).perform();
        assertThat(browser.driver().findElements(By.cssSelector("#profile .pointer line")))
                .hasSize(1);
    }

    @Test
    void aNameInATableAndAMarkByKeyboardArePicked() {
        browser.open(office);
        browser.press("#table-reaches", "L021.3");
        String card = text("#card");
        assertThat(card)
                .contains(
                        "Lantern River (L021.3)",
                        "Above the guide value",
                        "times",
                        "Sconce sheds",
                        "dry (55% of the year)");
        browser.press("#card", "Down: ");
        assertThat(text("#card h3")).isEqualTo("Lantern River (L021.4)");
        browser.press("#card", "Close");
        browser.ask("""
                const map = window.silverwake.map;
                map.getContainer().scrollIntoView({block: 'center'});
                const mark = [...document.querySelectorAll('.point')].find((p) => p.getAttribute('aria-label').includes('Pelitarra'));
                mark.focus();""");
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        assertThat(text("#card h3")).isEqualTo("Pelitarra");
        assertThat(text("#card")).contains("890 people");
    }

    @Test
    void everyControlHasANameAndIsLargeEnough() {
        browser.open(office);
        browser.ask("document.querySelectorAll('details').forEach((d) => { d.open = true; })");
        List<?> wrong = (List<?>) browser.ask("""
                return [...document.querySelectorAll('button, select, input, a[href], summary, [tabindex="0"]')].filter((e) => {
                    const box = e.getBoundingClientRect();
                    const name = e.getAttribute('aria-label') || e.textContent.trim() || (e.labels && e.labels.length && e.labels[0].textContent.trim());
                    const small = box.width > 1 && (box.height < 24 || box.width < 24);
                    return !name || small;
                }).map((e) => e.outerHTML.slice(0, 120));""");
        assertThat(wrong).isEmpty();
    }

    @Test
    void languageIsSwitchedAndNumbersWithIt() {
        browser.open(office);
        assertThat(browser.find(".draft").isDisplayed()).isFalse();
        for (String language : Texts.LANGUAGES) {
            Texts texts = Texts.of(language);
            speak(language);
            assertThat(text("#cautions")).contains(texts.text("caution.1"));
            assertThat(text("#choices")).contains(texts.text("page.state"));
            assertThat(browser.find(".draft").isDisplayed())
                    .isEqualTo(texts.reviewedBy().isEmpty());
        }
        speak("es");
        assertThat(text("#table-sources tbody tr")).contains("19,8");
    }

    @Test
    void tablesAreSortedSearchedAndSaved() {
        browser.open(office);
        browser.press("#table-places thead", "High");
        assertThat(text("#table-places tbody tr")).startsWith("Emberfold");
        browser.find("#find-places").sendKeys("irrig");
        assertThat(browser.driver().findElements(By.cssSelector("#table-places tbody tr")))
                .hasSize(1);
        browser.press("#table-places", "Save as CSV");
        assertThat(browser.downloaded("places.csv")).contains("Mwangurobe").doesNotContain("Emberfold");
    }

    @Test
    void aPhoneHasOneColumnThatIsNotWiderThanItself() {
        try (Browser phone = Browser.phone(folder.resolve("phone"))) {
            phone.open(everybody);
            assertThat(phone.number("return document.documentElement.scrollWidth - window.innerWidth"))
                    .isLessThanOrEqualTo(0);
            assertThat(phone.number("return document.getElementById('card').getBoundingClientRect().top"
                            + " - document.getElementById('map').getBoundingClientRect().bottom"))
                    .isGreaterThan(0);
            assertThat(phone.complaints()).isEmpty();
        }
    }

    /** The phone's map stays in sight while people scroll; on paper it has its place below the cautions all the same. */
    @Test
    void printedFromAPhoneTheMapStandsBelowTheCautions() throws IOException {
        try (Browser phone = Browser.phone(folder.resolve("printing-phone"))) {
            phone.open(everybody);
            byte[] pdf = Base64.getDecoder()
                    .decode(phone.driver().print(new PrintOptions()).getContent());
            try (PDDocument document = Loader.loadPDF(pdf)) {
                PDFTextStripper fromTheTop = new PDFTextStripper();
                fromTheTop.setSortByPosition(true);
                String text = fromTheTop.getText(document).replaceAll("\\s+", " ");
                assertThat(text).contains("Pav\u00edo Alto", "Local law");
                assertThat(text.indexOf("Pav\u00edo Alto")).isGreaterThan(text.indexOf("Local law"));
            }
        }
    }

    /** No single site's name, and no position where one is, stands anywhere in the file. */
    @Test
    void thePublicPageHoldsNoSingleSite() throws IOException {
        String page = Files.readString(everybody);
        outcome.scenario()
                .sites()
                .forEach(site ->
                        assertThat(page).doesNotContain("\"" + site.name()).doesNotContain(site.name() + "\""));
        browser.open(everybody);
        assertThat(browser.find("#band").isDisplayed()).isFalse();
        assertThat(text("#table-sources")).contains("Upper Lamp").doesNotContain("Sconce sheds");
        assertThat(browser.driver().findElements(By.cssSelector(".point[aria-label^=Site]")))
                .isEmpty();
    }

    @Test
    void printHasMapCautionsAndTablesAndNoControls() throws IOException {
        browser.open(office);
        byte[] pdf = Base64.getDecoder()
                .decode(browser.driver().print(new PrintOptions()).getContent());
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains(Texts.of("en").numbered("caution"));
            assertThat(text)
                    .contains("NOT FOR POSTING", "What the lines mean", "Emberfold", "L021.3", "Do not use after");
            assertThat(text).doesNotContain("Copy the link", "Save as CSV", "Move a slider");
        }
    }

    /** A river without a guide value and without a site still has a page, on which nothing is assessed. */
    @Test
    void aRunWithoutGuidelinesAndSitesOpens() {
        Path bare = folder.resolve("bare");
        new Sketched().line("upper", HOSTILE, 0, 9000, 300, 7500, 0, 6000).check(bare, HOSTILE, "upper");
        Path page = folder.resolve("bare.html");
        ReportPage.write(MainRun.run(bare.resolve("scenario").resolve("scenario.yaml"), step -> {}), "test", page);
        browser.open(page);
        assertThat(text("h1")).isEqualTo(HOSTILE);
        assertThat(text("#choices")).contains("No guide value");
        assertThat(text("#table-reaches")).contains("Not assessed");
        assertThat(browser.ask("return window.hit")).isNull();
        assertThat(browser.driver().findElements(By.cssSelector("img, #whatif input")))
                .isEmpty();
    }
}
