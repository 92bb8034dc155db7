// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.silverwake.cli.text.Texts;

/** Areas of groups of sites on the public page's map: drawn, named, told in words, and not on the office's page. */
class ReportGroupsTest extends OnDemoPages {
    private static final String GROUP = "Upper Lamp";

    private static String share() {
        var input = pages.outcome().result().input();
        var sites = pages.outcome().scenario().sites();
        double all =
                IntStream.range(0, sites.size()).mapToDouble(input::meanRelease).sum();
        double own = IntStream.range(0, sites.size())
                .filter(i -> sites.get(i).group().equals(GROUP))
                .mapToDouble(input::meanRelease)
                .sum();
        return Math.round(100 * own / all) + "%";
    }

    private static int count() {
        return (int) pages.outcome().scenario().sites().stream()
                .filter(site -> site.group().equals(GROUP))
                .map(site -> site.where())
                .distinct()
                .count();
    }

    private static void isTold() {
        assertThat(text("#card h3")).isEqualTo(GROUP);
        assertThat(text("#card")).contains(count() + " sites", share(), "In this area lie sites of one group");
    }

    /** A click on the ground of an area, away from lines and marks, which is of the areas' color there, 0.8 opaque as on sheets. */
    @Test
    void aClickIntoAnAreaTellsOfItsGroup() {
        browser.open(pages.everybody());
        List<?> at = (List<?>) browser.ask("""
                const map = document.getElementById('map');
                map.scrollIntoView({ block: 'center' });
                const canvas = map.querySelector('canvas');
                const box = canvas.getBoundingClientRect();
                const marks = [...document.querySelectorAll('.point, .point .name, .area-name')].map((m) => m.getBoundingClientRect());
                const pixels = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height).data;
                const is = (k) => Math.abs(pixels[k] - 0xec) < 3 && Math.abs(pixels[k + 1] - 0xdf) < 3 && Math.abs(pixels[k + 2] - 0xc6) < 3
                    && Math.abs(pixels[k + 3] - 204) < 3;
                const isWide = (k) => { for (let d = -12; d <= 12; d++) { if (!is(k + 4 * d) || !is(k + 4 * d * canvas.width)) { return false; } } return true; };
                const found = [];
                for (let k = 0; k < pixels.length; k += 4) {
                    if (is(k) && isWide(k)) {
                        const x = box.left + (k / 4 % canvas.width) * box.width / canvas.width;
                        const y = box.top + Math.floor(k / 4 / canvas.width) * box.height / canvas.height;
                        if (marks.every((m) => x < m.left - 4 || x > m.right + 4 || y < m.top - 4 || y > m.bottom + 4)) {
                            found.push([Math.round(x), Math.round(y)]);
                        }
                    }
                }
                found.sort((a, b) => b[1] - a[1]);
                return found[0];""");
        new Actions(browser.driver())
                .moveToLocation(((Number) at.get(0)).intValue(), ((Number) at.get(1)).intValue())
                .click()
                .perform();
        isTold();
        assertThat(browser.driver().getCurrentUrl()).endsWith("#a=Upper+Lamp");
        browser.ask("location.hash = ''");
        browser.ask("location.hash = 'a=Quinquet+Hill'");
        browser.waitFor("return document.querySelector('#card h3').textContent === 'Quinquet Hill'");
        assertThat(browser.driver().findElements(By.cssSelector(".area-name.chosen")))
                .hasSize(1);
    }

    /** The areas lie under the river: its lines are seen within them. */
    @Test
    void riversAreDrawnOverAreas() {
        browser.open(pages.everybody());
        double inked = browser.number("""
                const map = window.silverwake.map;
                const canvas = document.querySelector('#map canvas');
                const scale = canvas.width / canvas.getBoundingClientRect().width;
                const frame = document.getElementById('map').getBoundingClientRect();
                const box = canvas.getBoundingClientRect();
                const data = JSON.parse(document.getElementById('data').textContent);
                let lon = 0;
                let lat = 0;
                const ring = [];
                const steps = data.groups[0].points;
                for (let k = 0; k < steps.length; k += 2) {
                    lon += steps[k] * 1e-5;
                    lat += steps[k + 1] * 1e-5;
                    ring.push([lat, lon]);
                }
                const corners = ring.map((at) => map.latLngToContainerPoint(at));
                const from = { x: Math.min(...corners.map((c) => c.x)), y: Math.min(...corners.map((c) => c.y)) };
                const to = { x: Math.max(...corners.map((c) => c.x)), y: Math.max(...corners.map((c) => c.y)) };
                const pixels = canvas.getContext('2d').getImageData((frame.left + from.x - box.left) * scale,
                    (frame.top + from.y - box.top) * scale, (to.x - from.x) * scale, (to.y - from.y) * scale).data;
                const looks = data.shades.map((s) => parseInt(s.color.slice(1), 16));
                let inked = 0;
                for (let k = 0; k < pixels.length; k += 4) {
                    inked += pixels[k + 3] === 255 && looks.includes(pixels[k] * 65536 + pixels[k + 1] * 256 + pixels[k + 2]);
                }
                return inked;""");
        // an area is about 100 pixels wide, and a line of 5 pixels runs through it
        assertThat(inked).isGreaterThan(200);
    }

    @Test
    void focusTellsOfAGroup() {
        browser.open(pages.everybody());
        List<WebElement> names = browser.driver().findElements(By.cssSelector(".area-name"));
        assertThat(names.stream().map(WebElement::getText)).containsExactlyInAnyOrder(GROUP, "Quinquet Hill");
        WebElement name = names.stream()
                .filter(each -> each.getText().equals(GROUP))
                .findFirst()
                .orElseThrow();
        assertThat(name.getDomAttribute("aria-label")).isEqualTo(GROUP + ": " + count() + " sites");
        assertThat(name.getDomAttribute("tabindex")).isEqualTo("0");
        browser.ask("arguments[0].scrollIntoView({ block: 'center' }); arguments[0].focus();", name);
        isTold();
    }

    @Test
    void theLegendNamesAreasInEveryLanguage() {
        browser.open(pages.everybody());
        for (String language : Texts.LANGUAGES) {
            browser.find("#language option[value=" + language + "]").click();
            assertThat(text("#legend")).contains(Texts.of(language).text("sheet.area"));
        }
    }

    @Test
    void theOfficeHasSitesInPlaceOfAreas() {
        browser.open(pages.office());
        assertThat(browser.driver().findElements(By.cssSelector(".area-name"))).isEmpty();
        assertThat(text("#legend")).doesNotContain(Texts.of("en").text("sheet.area"));
    }
}
