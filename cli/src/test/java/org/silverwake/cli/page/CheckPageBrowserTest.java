// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The check page in a real browser that has no network: what is seen, what is corrected, what is saved. */
class CheckPageBrowserTest {
    /** PRINTED: the page and the program print distances to 0.1 m below 10 m and to 1 m above. */
    private static final double PRINTED = 1;

    /** MEASUREMENT: half a pixel of the map at the zoom of these tests, in degrees. */
    private static final double PIXEL = 1e-4;

    /** ROUNDING: the page writes degrees with seven decimals, the layer had seven, lines come with six. */
    private static final double WRITTEN = 1e-6;

    private static final String HOSTILE = "<img src=x onerror=window.hit=1>";
    private static final String QUOTED = "=\"Pan\", the old";

    @TempDir
    static Path folder;

    private static Sketched.Checked checked;
    private static Browser desktop;

    private Browser browser;

    /**
     * A main stem of three reaches to the south, whose second is joined over a gap of 3 m; a tributary drawn upstream; a
     * creek that ends 40 m short of the river; sites, one of them 6.5 km away from everything.
     */
    @BeforeAll
    static void check() {
        checked = sketch().check(folder, "Creeks </title><script>window.hit=2</script>", "lower");
    }

    private static Sketched sketch() {
        return new Sketched()
                .line("upper", "Lantern River", 0, 9000, 300, 7500, 0, 6000)
                .line("middle", "Lantern River", 3, 6000, -200, 4500, 0, 3000)
                .line("lower", "Lantern River", 0, 3000, 0, 0)
                .line("back", "Amber Creek", 0, 3000, 2500, 3400, 4000, 4800)
                .line("short", HOSTILE, -4000, 5000, -2000, 4600, -240, 4600)
                .site("Sconce", 400, 7900)
                .site(HOSTILE, 250, 1200)
                .site(QUOTED, 120, 5000)
                .site("Far pan", 9000, 9000);
    }

    private void open() {
        if (desktop == null) {
            desktop = Browser.desktop(folder.resolve("desktop"));
        }
        browser = desktop;
        browser.open(checked.page());
    }

    @AfterAll
    static void close() {
        if (desktop != null) {
            desktop.close();
        }
    }

    @AfterEach
    void nothingAmissInTheBrowser() {
        if (browser != null) {
            assertThat(browser.ask("return window.hit")).isNull();
            assertThat(browser.complaints()).isEmpty();
            assertThat(browser.requests()).isEmpty();
        }
    }

    private void search(String word) {
        browser.find("#search").sendKeys(Keys.chord(Keys.CONTROL, "a"), word, Keys.ENTER);
    }

    private WebElement mark(String name) {
        return browser.driver().findElements(By.cssSelector(".point")).stream()
                .filter(m -> m.getDomAttribute("aria-label").equals("Site " + name))
                .findFirst()
                .orElseThrow();
    }

    /** Saved rows, header apart, as the file has them. */
    private List<String> saved() {
        browser.press("#list-corrections", "Save corrections");
        String text = browser.downloaded("corrections.csv");
        assertThat(text).as("the mark that tells a spreadsheet of UTF-8").startsWith("\ufeff");
        List<String> lines = Arrays.asList(text.substring(1).split("\r\n"));
        assertThat(lines.get(0))
                .isEqualTo("action,kind,name,feature,longitude,latitude,was_longitude,was_latitude,defect,note");
        return lines.subList(1, lines.size());
    }

    private static double[] degrees(String row, int... columns) {
        String[] cells = row.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
        return Arrays.stream(columns)
                .mapToDouble(c -> Double.parseDouble(cells[c]))
                .toArray();
    }

    private static void isAt(double[] found, double east, double north, double tolerance) {
        assertThat(found[0]).isCloseTo(Sketched.east(east), within(tolerance));
        assertThat(found[1]).isCloseTo(Sketched.north(north), within(tolerance));
    }

    @Test
    void networkAndPointsAreDrawn() {
        assertThat(checked.code()).as(checked.said()).isEqualTo(3);
        assertThat(checked.said()).contains("Far pan", "check.html");
        open();
        double inked = browser.number("""
                const canvas = document.querySelector('#map canvas');
                const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
                let inked = 0;
                for (let k = 0; k < pixels.length; k += 4) {
                    inked += pixels[k] === 0x2d && pixels[k + 1] === 0x4a && pixels[k + 2] === 0x73 && pixels[k + 3] === 255;
                }
                return inked;""");
        // the main stem is 9 km long in a map of at least 600 pixels: its line alone is that long and over 2 pixels
        // wide
        assertThat(inked).isGreaterThan(1200);
        assertThat(browser.driver().findElements(By.cssSelector(".point"))).hasSize(4);
        assertThat(browser.find(".leaflet-control-scale-line").getText()).matches("\\d+ k?m");
        assertThat(browser.find("#band").getText()).contains("NOT FOR POSTING");
        assertThat(browser.find("h1").getText()).startsWith("Creeks </title>");
        assertThat(browser.driver().getTitle()).startsWith("Check: Creeks");
        new Actions(browser.driver())
                .moveToElement(browser.find("#map"), 40, 40)
                .perform();
        assertThat(browser.find(".here").getText()).matches("\\d+\\.\\d{5} W, \\d+\\.\\d{5} S");
        assertThat(browser.find("footer").getText()).contains("not a finding of safety");
        assertThat(browser.find("body").getText()).doesNotContainIgnoringCase("is safe");
    }

    @Test
    void pointWithoutAPlaceStandsOutWithItsReason() {
        open();
        assertThat(browser.find("#list-lost").getText()).contains("Far pan");
        browser.find("#list-lost .item").click();
        assertThat(browser.find("#card").getText()).contains("Too far from the river: 6.5", "at most", "sites.csv:5");
        assertThat(browser.find(".point.lost.chosen").getDomAttribute("aria-label"))
                .isEqualTo("Site Far pan");
        browser.press("#card", "Bring it to the middle");
        assertThat(saved()).singleElement().asString().startsWith("move,site,Far pan,,-");
    }

    @Test
    void hostileNamesAreText() {
        open();
        search("onerror");
        assertThat(browser.find("#card h2").getText()).isEqualTo(HOSTILE);
        assertThat(browser.find("#lists").getText()).contains(HOSTILE);
        assertThat(browser.driver().findElements(By.tagName("img"))).isEmpty();
        search("short");
        assertThat(browser.find("#card h2").getText()).isEqualTo("short (" + HOSTILE + ")");
    }

    /** The page's live distance is the one that the program finds for the same position. */
    @Test
    void draggedPointIsMovedAndItsDistanceIsTheProgramsOwn() throws IOException {
        open();
        search("Sconce");
        new Actions(browser.driver()).dragAndDropBy(mark("Sconce"), -18, 10).perform();
        String card = browser.find("#card").getText();
        assertThat(card).doesNotContain("Too far");
        assertThat(browser.find("#list-corrections").getText()).contains("Site Sconce moved to", "Not saved yet");
        List<String> rows = saved();
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).startsWith("move,site,Sconce,,");
        isAt(degrees(rows.get(0), 6, 7), 400, 7900, WRITTEN);
        double[] now = degrees(rows.get(0), 4, 5);
        double dx = browser.number(
                "const m = window.silverwake.map; return m.latLngToContainerPoint([arguments[1], arguments[0]]).x"
                        + " - m.latLngToContainerPoint([arguments[3], arguments[2]]).x",
                now[0],
                now[1],
                Sketched.east(400),
                Sketched.north(7900));
        assertThat(dx).isCloseTo(-18, within(PRINTED));

        Path scenario = folder.resolve("moved");
        Files.createDirectories(scenario);
        for (String file : List.of("scenario.yaml", "rivers.geojson", "sites.csv")) {
            Files.copy(folder.resolve("scenario").resolve(file), scenario.resolve(file));
        }
        Path sites = scenario.resolve("sites.csv");
        Files.writeString(
                sites,
                Files.readString(sites)
                        .replaceFirst("\"Sconce\",[^,]*,[^,]*,", "\"Sconce\"," + now[0] + "," + now[1] + ","));
        Sketched.Checked again = Sketched.Checked.of(scenario, folder.resolve("moved-out"));
        assertThat(found("Distance\\s+([0-9.]+) m from", card))
                .isCloseTo(found("site Sconce: ([0-9.]+) m from feature", again.said()), within(PRINTED));
    }

    private static double found(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void nameThatLooksLikeAFormulaComesBackWhole() {
        open();
        search("old");
        new Actions(browser.driver()).dragAndDropBy(mark(QUOTED), 0, 30).perform();
        assertThat(saved()).singleElement().asString().startsWith("move,site,\"=\"\"Pan\"\", the old\",,-");
    }

    @Test
    void turnedReachRunsFromItsOldEnd() {
        open();
        search("lower");
        assertThat(browser.find("#card").getText()).contains("as the line is drawn");
        browser.press("#card", "Turn all 2 reaches of lower"); // a site cuts it in two
        assertThat(browser.find("#card").getText()).contains("against the drawn line", "You turned it");
        List<String> rows = saved();
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).startsWith("turn,,,lower,");
        isAt(degrees(rows.get(0), 4, 5), 0, 0, WRITTEN);
        isAt(degrees(rows.get(0), 6, 7), 0, 3000, WRITTEN);
        browser.press("#list-corrections", "Undo");
        assertThat(browser.find("#list-corrections").getText()).contains("None yet");
    }

    @Test
    void outletIsChosenAtAFreeEndAlone() {
        open();
        search("middle");
        assertThat(browser.find("#card").getText())
                .contains("click the last reach")
                .doesNotContain("leaves the network here");
        search("upper");
        browser.press("#card", "Water leaves the network here");
        List<String> rows = saved();
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0)).startsWith("outlet,,,upper,");
        isAt(degrees(rows.get(0), 4, 5), 0, 9000, WRITTEN);
    }

    @Test
    void repairIsRefusedAndOpenGapJoined() {
        open();
        String found = browser.find("#list-defects").getText();
        assertThat(found).contains("a gap of 3.01 m between features", "drawn upstream", "without touching it");
        open("a gap of 3");
        browser.press("#card", "Refuse the repair");
        assertThat(browser.find("#card").getText()).contains("You said: Refuse the repair");
        open("drawn upstream");
        browser.press("#card", "Accept the repair");
        open("without touching it");
        browser.press("#card", "Join them");
        List<String> rows = saved();
        assertThat(rows).hasSize(3);
        assertThat(rows.get(0))
                .startsWith("refuse,,,")
                .contains("upper", "|", "middle")
                .endsWith(",,,gap,");
        isAt(degrees(rows.get(0), 4, 5), 1.5, 6000, PIXEL);
        assertThat(rows.get(1)).startsWith("accept,,,back,").endsWith(",,,flipped-line,");
        assertThat(rows.get(2)).startsWith("accept,,,short|middle,").endsWith(",,,gap,");
    }

    private void open(String words) {
        browser.driver().findElements(By.cssSelector("#list-defects .item")).stream()
                .filter(item -> item.getText().contains(words))
                .findFirst()
                .orElseThrow()
                .click();
    }

    @Test
    void savedFileIsLoadedAgainRowByRow() throws IOException {
        open();
        search("lower");
        browser.press("#card", "Turn all");
        search("old");
        new Actions(browser.driver()).dragAndDropBy(mark(QUOTED), 0, 30).perform();
        List<String> rows = saved();
        Path file = folder.resolve("earlier.csv");
        Files.writeString(
                file,
                "action,kind,name,feature,longitude,latitude,was_longitude,was_latitude,defect,note\n"
                        + String.join("\n", rows)
                        + "\nmove,site,Nobody,,-20,-30,,,,\nfly,,,,,,,,,\n");
        open();
        browser.find("#load").sendKeys(file.toAbsolutePath().toString());
        browser.waitFor("return document.querySelectorAll('#list-corrections .entry').length === 2");
        assertThat(browser.find("#list-corrections").getText())
                .contains(
                        "2 corrections read",
                        "Line 4: there is no site \"Nobody\" here",
                        "Line 5: \"fly\" is no action");
        assertThat(saved()).containsExactlyElementsOf(rows);
    }

    @Test
    void aSpreadsheetsSemicolonsAndDecimalCommasAreLoaded() throws IOException {
        Path file = folder.resolve("semicolons.csv");
        Files.writeString(
                file,
                "\ufeffaction;kind;name;feature;longitude;latitude;was_longitude;was_latitude;defect;note\n"
                        + "move;site;Sconce;;-20,001;-30,002;;;;\"by ford, left; bank\"\n");
        open();
        browser.find("#load").sendKeys(file.toAbsolutePath().toString());
        browser.waitFor("return document.querySelectorAll('#list-corrections .entry').length === 1");
        assertThat(saved()).containsExactly("move,site,Sconce,,-20.0010000,-30.0020000,,,,\"by ford, left; bank\"");
    }

    @Test
    void everythingIsReachedByKeyboardOnAPhone() {
        try (Browser phone = Browser.phone(folder.resolve("phone"))) {
            browser = phone;
            browser.open(checked.page());
            typesAPositionByKeyboard();
            nothingAmissInTheBrowser();
        }
        browser = null;
    }

    private void typesAPositionByKeyboard() {
        double wide = browser.number("return document.documentElement.scrollWidth");
        assertThat(wide).isLessThanOrEqualTo(390);
        browser.find("#search").sendKeys("Sconce", Keys.TAB, Keys.ENTER);
        assertThat(browser.find("#card h2").getText()).isEqualTo("Sconce");
        browser.find("#card summary").sendKeys(Keys.ENTER);
        WebElement longitude = browser.find("input[name=lon]");
        longitude.sendKeys(Keys.chord(Keys.CONTROL, "a"), "-20,001", Keys.ENTER);
        assertThat(saved()).singleElement().asString().startsWith("move,site,Sconce,,-20.0010000,");
    }
}
