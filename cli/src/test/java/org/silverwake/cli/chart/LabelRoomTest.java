// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names around a chart never cover each other. */
class LabelRoomTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void namesAndTheirLinesKeepClear() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            List<MarkLabels.Wanted> wanted = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                wanted.add(new MarkLabels.Wanted(random.nextDouble() * 400, 30 + random.nextDouble() * 90, 0));
            }
            List<MarkLabels.Placed> placed = new MarkLabels(0, 420, 3, 5)
                    .place(wanted).stream().flatMap(Optional::stream).toList();
            assertThat(placed).as("seed %d", seed).hasSizeGreaterThan(5);
            for (MarkLabels.Placed a : placed) {
                assertThat(a.from()).isGreaterThanOrEqualTo(0);
                assertThat(a.to()).isLessThanOrEqualTo(420);
                for (MarkLabels.Placed b : placed) {
                    boolean other = a.x() != b.x() || a.row() != b.row();
                    boolean overlap = other && a.row() == b.row() && a.from() < b.to() && b.from() < a.to();
                    boolean crossed = other && b.row() > a.row() && b.x() > a.from() && b.x() < a.to();
                    assertThat(overlap || crossed)
                            .as("seed %d: %s %s", seed, a, b)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void whatFindsNoRoomIsLeftOut() {
        List<MarkLabels.Wanted> twice = List.of(new MarkLabels.Wanted(5, 90, 0), new MarkLabels.Wanted(6, 90, 0));
        assertThat(new MarkLabels(0, 100, 3, 1).place(twice).stream().flatMap(Optional::stream))
                .hasSize(1);
    }

    /** Three names where only one has room: the lowest rank stays, wherever it stands in the list. */
    @Test
    void lowRanksStay() {
        for (int site = 0; site < 3; site++) {
            List<MarkLabels.Wanted> wanted = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                wanted.add(new MarkLabels.Wanted(5 + k, 90, k == site ? 0 : 2));
            }
            List<Optional<MarkLabels.Placed>> placed = new MarkLabels(0, 100, 3, 1).place(wanted);
            assertThat(placed.stream().flatMap(Optional::stream)).hasSize(1);
            assertThat(placed.get(site)).as("site %d", site).isPresent();
        }
    }

    /** By hand: two blocks of 10 that both want the center 50 stand at 45 and, one gap of 2 lower, at 57. */
    @Test
    void blocksAreSpread() {
        double[] tops = EndLabels.spread(new double[] {50, 50}, new double[] {10, 10}, 2, 0, 100);
        assertThat(tops[0]).isCloseTo(45, within(ROUNDING));
        assertThat(tops[1]).isCloseTo(57, within(ROUNDING));
        double[] low = EndLabels.spread(new double[] {95, 99}, new double[] {10, 10}, 2, 0, 100);
        assertThat(low[0]).isCloseTo(78, within(ROUNDING));
        assertThat(low[1]).isCloseTo(90, within(ROUNDING));
    }
}
