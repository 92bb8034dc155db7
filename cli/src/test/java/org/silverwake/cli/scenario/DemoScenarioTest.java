// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/** The demo's scenario, read from a copy beside empty layers: this door checks that layers are there, not what they hold. */
class DemoScenarioTest {
    /** ROUNDING: a product or two of doubles. */
    private static final double ROUNDING = 1e-15;

    @TempDir
    private Path folder;

    private ScenarioInput read() throws IOException {
        Path demo = Path.of("..", "scenarios", "lantern");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(f -> f.toString().matches(".*\\.(yaml|csv|geojson)"))
                    .toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Files.createFile(folder.resolve("rivers.gpkg"));
        Files.createFile(folder.resolve("dem.tif"));
        return ScenarioReader.read(folder);
    }

    @Test
    void demoReadsWithUnits() throws IOException {
        ScenarioInput input = read();
        assertThat(input.states()).extracting(s -> s.name()).containsExactly("dry", "wet", "flood");
        assertThat(input.states().get(0).temperature()).isCloseTo(21, within(ROUNDING));
        assertThat(input.states().get(2).flood()).isTrue();
        // 7 L/s/km2 = 7e-3 m3/s over 1e6 m2
        assertThat(input.discharge().specificDischarge().get(0)).isCloseTo(7e-9, within(ROUNDING));
        assertThat(input.rivers().columns().get(0).toSi()).isCloseTo(1e6, within(ROUNDING));
        assertThat(input.rivers().columns().get(0).missing()).containsExactly("-9999");
        assertThat(input.rivers().snapToleranceMeters()).isCloseTo(2, within(ROUNDING));
        assertThat(input.solids().classes().get(1).cohesive()).isTrue();
        assertThat(input.solids().classes().get(2).cohesive()).isFalse();
        assertThat(input.sourceFiles()).hasSizeGreaterThanOrEqualTo(4);
    }

    @Test
    void demoHasSitesAndPlaces() throws IOException {
        ScenarioInput input = read();
        assertThat(input.sites()).isNotEmpty();
        for (Site site : input.sites()) {
            assertThat(site.where()).matches("(sites.csv|scenario.yaml):\\d+");
            assertThat(site.water()).hasSize(3);
        }
        // 0.8 kg/yr over 365.25 d of 86,400 s, from scenario.yaml itself
        Site pond = input.sites().get(input.sites().size() - 1);
        assertThat(pond.name()).isEqualTo("Quinquet pond");
        assertThat(pond.mercury().orElseThrow().get(0)).isCloseTo(0.8 / 31_557_600, within(ROUNDING));
        assertThat(input.places().stream().map(p -> p.uses()).flatMap(List::stream))
                .contains(PlaceUse.VILLAGE);
    }
}
