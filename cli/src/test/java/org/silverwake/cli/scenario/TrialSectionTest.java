// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/** What a page saved as tried, on the demo: releases as asked, wrong names told with their key. */
class TrialSectionTest {
    /** ROUNDING: a product of two doubles. */
    private static final double ROUNDING = 1e-15;

    @TempDir
    private Path folder;

    private ScenarioInput read(String file, String tried) {
        Path scenario = DemoCopy.into(folder.resolve("lantern-" + Math.abs(tried.hashCode())))
                .resolve(file);
        try {
            Files.writeString(scenario, "\n" + tried + "\n", StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return ScenarioReader.read(scenario);
    }

    private static Site site(ScenarioInput scenario, String name) {
        return scenario.sites().stream()
                .filter(site -> site.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Sconce sheds: 900 t/yr of tailings with 22 mg/kg, 0.4 L/s of water (sites.csv). */
    @Test
    void aFactorIsOfTheMercuryAlone() {
        ScenarioInput present = ScenarioReader.read(DemoCopy.LANTERN.resolve("scenario.yaml"));
        Site sheds =
                site(read("scenario.yaml", "tried: {sites: {Sconce sheds: 0.25, Upper Lamp: 0.5}}"), "Sconce sheds");
        Site now = site(present, "Sconce sheds");
        assertThat(sheds.tailings().orElseThrow().content()).isCloseTo(0.125 * 22e-6, within(ROUNDING));
        assertThat(sheds.tailings().orElseThrow().mass())
                .isEqualTo(now.tailings().orElseThrow().mass());
        assertThat(sheds.water()).isEqualTo(now.water());
    }

    @Test
    void whatIsClosedReleasesNothing() {
        ScenarioInput scenario = read("scenario.yaml", "tried: {closed: [Upper Lamp]}");
        List<Site> closed = scenario.sites().stream()
                .filter(site -> site.group().equals("Upper Lamp"))
                .toList();
        assertThat(closed).hasSizeGreaterThan(2).allSatisfy(site -> {
            assertThat(site.water()).allMatch(rate -> rate == 0);
            assertThat(site.cyanide().orElseThrow()).allMatch(rate -> rate == 0);
            site.tailings().ifPresent(t -> assertThat(t.mass()).allMatch(rate -> rate == 0));
            site.mercury().ifPresent(m -> assertThat(m).allMatch(rate -> rate == 0));
        });
        assertThat(scenario.warnings())
                .anySatisfy(line -> assertThat(line).contains("a trial, not the present: Upper Lamp closed"));
    }

    /** Ponds keep 0.9 of the tailings where all sheds have them (practices.csv): 0.4 of the sheds keep 0.36. */
    @Test
    void aPracticeIsTakenUpByAShareOfTheSheds() {
        ScenarioInput present = ScenarioReader.read(DemoCopy.LANTERN.resolve("today.yaml"));
        ScenarioInput tried = read("today.yaml", "tried: {practices: {ponds: 0.4}}");
        double now =
                site(present, "Sconce sheds").tailings().orElseThrow().mass().get(0);
        double then =
                site(tried, "Sconce sheds").tailings().orElseThrow().mass().get(0);
        assertThat(then / now).isCloseTo(1 - 0.9 * 0.4, within(1e3 * ROUNDING));
        assertThat(tried.fieldNotes().practicesInForce())
                .extracting(offered -> offered.practice().name())
                .containsExactly("ponds");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tried: {sites: {Sconce shed: 0.5}}  | tried.sites.Sconce shed  | "Sconce shed" is not a site or a group
            tried: {closed: [Lower Lamp]}       | tried.closed             | "Lower Lamp" is not a site or a group
            tried: {practices: {pond: 1}}       | tried.practices.pond     | "pond" is not a practice of the table
            tried: {practices: {ponds: 1.5}}    | tried.practices.ponds    | 0 to 1
            tried: {sites: {Sconce sheds: -1}}  | tried.sites.Sconce sheds | 0 to 1
            """)
    void whatCannotBeIsTold(String tried, String where, String words) {
        ScenarioException refused =
                Assertions.catchThrowableOfType(ScenarioException.class, () -> read("today.yaml", tried));
        assertThat(refused.problems()).anySatisfy(problem -> assertThat(problem).contains(where, words));
    }
}
