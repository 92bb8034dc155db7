// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.place.PlacedPoint;

/** Kamp: one measured discharge in, the others on the network as check; heights from the raster. */
class KampIT {
    /** ROUNDING: the gauge is met. */
    private static final double ROUNDING_PERCENT = 1e-9;

    /** PINNED: what this version finds, as docs/validation/kamp-discharge.md prints it. */
    private static final double PINNED = 0.01;

    @TempDir
    private static Path folder;

    private static Reaches reaches;

    @BeforeAll
    static void run() {
        reaches = new Reaches(RealScenario.of("kamp", folder).run());
    }

    private static Map<String, Double> measured() throws IOException {
        Map<String, Double> measured = new LinkedHashMap<>();
        List<String> lines = Files.readAllLines(
                RealScenario.open().resolve("observations/kamp_measured_discharge.csv"), StandardCharsets.UTF_8);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            measured.put("id " + cells[0], Double.valueOf(cells[3]));
        }
        return measured;
    }

    /** Computed over measured by place. */
    private static Map<String, Double> ratios() throws IOException {
        Map<String, Double> ratios = new LinkedHashMap<>();
        for (PlacedPoint place : reaches.basin().points("place")) {
            String name = place.request().name();
            double computed = reaches.water().head(reaches.basin().reachAt(place));
            ratios.put(name, computed / measured().get(name));
        }
        return ratios;
    }

    @Test
    void theGaugeIsMet() throws IOException {
        PlacedPoint gauge = reaches.basin().points("gauge").get(0);
        assertThat(gauge.featureId()).isEqualTo("1231");
        assertThat(reaches.water().head(reaches.basin().reachAt(gauge)))
                .isCloseTo(measured().get("id 1"), withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void otherMeasuredDischargesAreTheCheck() throws IOException {
        Map<String, Double> ratios = ratios();
        Ratios all = Ratios.of(
                ratios.values().stream().mapToDouble(Double::doubleValue).toArray());
        Ratios factors =
                Ratios.of(ratios.values().stream().mapToDouble(Ratios::factor).toArray());
        assertThat(all.count()).isEqualTo(13);
        assertThat(all.median()).isCloseTo(1.06, within(PINNED));
        assertThat(factors.median()).isCloseTo(1.24, within(PINNED));
        assertThat(factors.highest()).isCloseTo(5.50, within(PINNED));
        assertThat(ratios.get("id 3")).isCloseTo(1 / factors.highest(), within(PINNED));
        // the four that fit badly; the other nine are within a factor 1.25
        assertThat(ratios.entrySet().stream()
                        .filter(e -> Ratios.factor(e.getValue()) > 1.25)
                        .map(Map.Entry::getKey))
                .containsExactly("id 3", "id 4", "id 11", "id 15");
    }

    @Test
    void slopesComeFromTheRaster() {
        assertThat(reaches.basin().table().column("slope")).isEmpty();
        for (int r = 0; r < reaches.size(); r++) {
            assertThat(reaches.hydraulics().slope(r)).as(reaches.feature(r)).isPositive();
        }
        // the file's slope is that of the same raster, raw; where ours differs, a pit or a climb was taken out
        Ratios slopes = Ratios.of(reaches.lasts()
                .filter(r -> reaches.basin().table().shareOfGroup(r) == 1)
                .filter(r -> reaches.attribute(r, "slope").orElseThrow() > 0)
                .mapToDouble(r -> reaches.hydraulics().slope(r)
                        / reaches.attribute(r, "slope").orElseThrow())
                .toArray());
        assertThat(slopes.median()).isCloseTo(1, within(PINNED));
        assertThat(slopes.tenth()).isCloseTo(0.98, within(PINNED));
    }
}
