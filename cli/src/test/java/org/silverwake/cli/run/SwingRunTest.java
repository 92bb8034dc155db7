// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.SteadyRun;

/** The demo's field notes without their samples of tailings, so that releases have a range. */
class SwingRunTest {
    private static final double EXACT = 1e-10;

    private static Path scenario(Path folder, boolean samples, boolean office) throws IOException {
        Path demo = Path.of("..", "scenarios", "lantern");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        Path notes = folder.resolve("field-notes.csv");
        String text = Files.readString(notes);
        Files.writeString(
                notes, samples ? text : text.replace(",35 mg/kg,", ",,").replace(",48 mg/kg,", ",,"));
        Path yaml = folder.resolve("today.yaml");
        if (office) {
            String today = Files.readString(yaml);
            assertThat(today).contains("\noutputs:\n");
            Files.writeString(yaml, today.replace("\noutputs:\n", "\noutputs:\n  audience: office\n"));
        }
        return yaml;
    }

    private static double highest(SteadyResult run, int state, int reach) {
        double highest = 0;
        for (Bound bound : run.bounds()) {
            for (int v = 0; v < run.variants(); v++) {
                highest = Math.max(highest, run.largest(bound, v, state, reach, Fraction.WHOLE));
            }
        }
        return highest;
    }

    @Test
    void swingsAreWhatFullRunsFind(@TempDir Path folder) throws IOException {
        Apportioned apportioned = ApportionRun.run(scenario(folder, false, true), List.of("Mwangurobe"), step -> {});
        List<Swing> swings = SwingRun.run(apportioned);
        assertThat(swings).hasSize(3);
        Outcome outcome = apportioned.outcome();
        List<SiteRelease> sites = outcome.result().input().sites();
        for (Swing swing : swings) {
            int reach = outcome.basin().reachAt(outcome.basin().points("place").get(swing.place()));
            assertThat(swing.middle() / highest(outcome.result(), swing.state(), reach))
                    .isCloseTo(1, within(EXACT));
            assertThat(swing.bars()).isSortedAccordingTo((a, b) -> Double.compare(b.width(), a.width()));
            Swing.Bar bar = swing.bars().stream()
                    .filter(b -> b.name().equals("Wickmill sheds"))
                    .findFirst()
                    .orElseThrow();
            // measured content: 9 sheds x 80 kg x 4 a day x 208 d x 35 mg/kg; without it the range is wide
            assertThat(bar.release().high() * Quantity.SECONDS_PER_YEAR).isGreaterThan(20);
            int i = sites.stream().map(SiteRelease::name).toList().indexOf("Wickmill sheds");
            for (double[] end : new double[][] {
                {bar.release().low(), bar.low()}, {bar.release().high(), bar.high()}
            }) {
                List<SiteRelease> changed = new ArrayList<>(sites);
                SiteRelease own = sites.get(i);
                changed.set(i, own.times(end[0] / bar.release().middle()).withCarriersOf(own));
                SteadyResult full = SteadyRun.run(outcome.result().input().withSites(changed));
                assertThat(end[1] / highest(full, swing.state(), reach)).isCloseTo(1, within(EXACT));
            }
            assertThat(bar.high()).isGreaterThan(swing.middle());
            assertThat(bar.low()).isLessThan(swing.middle());
        }
    }

    @Test
    void groupsStandForSitesWhereEverybodyLooks(@TempDir Path folder) throws IOException {
        Apportioned apportioned = ApportionRun.run(scenario(folder, false, false), List.of("Mwangurobe"), step -> {});
        assertThat(SwingRun.run(apportioned).get(0).bars())
                .extracting(Swing.Bar::name)
                .containsExactlyInAnyOrder("Upper Lamp", "Quinquet Hill", "Mantle Flats");
    }

    @Test
    void measuredReleasesLeaveNothingOpen(@TempDir Path folder) throws IOException {
        Apportioned apportioned = ApportionRun.run(scenario(folder, true, true), List.of("Mwangurobe"), step -> {});
        assertThat(SwingRun.run(apportioned)).isEmpty();
    }
}
