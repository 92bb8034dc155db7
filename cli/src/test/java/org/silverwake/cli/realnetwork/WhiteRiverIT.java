// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** White River: discharge, slope, drainage area and velocity from the layer's own attributes. */
class WhiteRiverIT {
    /** ROUNDING: a sum of some hundred terms. */
    private static final double ROUNDING_PERCENT = 1e-10;

    /** PRINTED: the README gives the outlet's discharge to 0.1 cfs. */
    private static final double PRINTED = 0.05;

    /** PINNED: what this version finds, as the document prints it. */
    private static final double PINNED = 0.005;

    /** International foot, exact. */
    private static final double FOOT = 0.3048;

    private static final double CFS = FOOT * FOOT * FOOT;

    @TempDir
    private static Path folder;

    private static Reaches reaches;

    @BeforeAll
    static void run() {
        reaches = new Reaches(RealScenario.of("white-river", folder).run());
    }

    @Test
    void everyReachCarriesTheAttributesDischarge() {
        assertThat(reaches.lasts().count()).isEqualTo(333);
        reaches.lasts()
                .forEach(r -> assertThat(reaches.water().end(r))
                        .as(reaches.feature(r))
                        .isCloseTo(
                                reaches.attribute(r, "q0001e").orElseThrow() * CFS,
                                withinPercentage(ROUNDING_PERCENT)));
        // README: 2484.4 cfs at the outlet of the largest area
        assertThat(reaches.water().end(reaches.last("8585800")) / CFS).isCloseTo(2484.4, within(PRINTED));
    }

    @Test
    void waterBalanceCloses() {
        double out = 0;
        for (int r = 0; r < reaches.size(); r++) {
            out += reaches.basin().network().isOutlet(r) ? reaches.water().end(r) : 0;
            out += Math.max(0, reaches.water().head(r) - reaches.water().end(r));
        }
        assertThat(reaches.water().left()).isCloseTo(reaches.water().entered(), withinPercentage(ROUNDING_PERCENT));
        assertThat(out).isCloseTo(reaches.water().entered(), withinPercentage(ROUNDING_PERCENT));
        // the attribute is adjusted at gauges, so that it falls downstream here and there; each fall is listed
        assertThat(reaches.water().corrected()).isNotEmpty();
        assertThat(reaches.outcome().warnings())
                .anyMatch(w -> w.startsWith(reaches.water().corrected().size() + " reaches lose water by correction"));
    }

    @Test
    void inflowsFromOutsideTheExtractAreFoundAndListed() {
        Set<String> found = new TreeSet<>();
        for (int r = 0; r < reaches.size(); r++) {
            if (reaches.water().supply().head(r) > 0) {
                found.add(reaches.feature(r));
            }
        }
        // README: 12 headwater reaches. Ids: fromnode is no feature's tonode and totdasqkm above 1.01 areasqkm, by SQL
        assertThat(found)
                .containsExactlyInAnyOrder(
                        "8589490", "8585314", "8584852", "8585032", "8584848", "8584846", "8586392", "8589236",
                        "8585964", "8589516", "8589512", "8586066");
        String line = reaches.outcome().warnings().stream()
                .filter(w -> w.startsWith("12 headwaters drain land outside the layer"))
                .findFirst()
                .orElseThrow();
        assertThat(found).allMatch(line::contains);
    }

    @Test
    void missingSlopesStayMissing() {
        // README: -9998 = missing (4 rows); 1e-5 is the file's own floor
        assertThat(reaches.lasts().filter(r -> !reaches.column("slope").has(r)).count())
                .isEqualTo(4);
        assertThat(reaches.lasts()
                        .mapToDouble(reaches.hydraulics()::slope)
                        .min()
                        .orElseThrow())
                .isZero();
    }

    /** docs/validation/white-river-velocity.md. The attribute is itself a regression after Jobson (1996), no measurement. */
    @Test
    void derivedVelocityAgainstTheAttribute() {
        Ratios ratios = Ratios.of(reaches.lasts()
                .mapToDouble(r ->
                        reaches.velocity(r) / (reaches.attribute(r, "v0001e").orElseThrow() * FOOT))
                .toArray());
        assertThat(ratios.count()).isEqualTo(333);
        assertThat(ratios.median()).isCloseTo(0.945, within(PINNED));
        assertThat(ratios.tenth()).isCloseTo(0.860, within(PINNED));
        assertThat(ratios.ninetieth()).isCloseTo(1.422, within(PINNED));
        assertThat(ratios.lowest()).isCloseTo(0.652, within(PINNED));
        assertThat(ratios.highest()).isCloseTo(1.829, within(PINNED));
    }
}
