// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;

class CellsTest {
    /** ROUNDING of lengths of up to 1000 m. */
    private static final double EXACT = 1e-9;

    @Test
    void finerCellsByHand() {
        Cells cells =
                Cells.uncut(Rivers.of(Map.of(), "a 0 1 0 900", "b 1 2 1 300")).finer(3);
        assertThat(cells.count()).isEqualTo(6);
        assertThat(cells.start(1)).isEqualTo(3);
        assertThat(cells.reach(2)).isZero();
        assertThat(cells.from(1)).isCloseTo(300, within(EXACT));
        assertThat(cells.to(1)).isCloseTo(600, within(EXACT));
        assertThat(cells.length(4)).isCloseTo(100, within(EXACT));
    }

    @ParameterizedTest
    @MethodSource("org.silverwake.model.network.RandomNetworks#drafts")
    void cellsCoverTheirReachWithoutGapOrOverlap(Draft draft) {
        ReachTable reaches = Rivers.of(draft, Map.of());
        Cells cells = Cells.uncut(reaches).finer(3).finer(2);
        assertThat(cells.count()).isEqualTo(6 * reaches.size());
        assertThat(cells.start(reaches.size())).isEqualTo(cells.count());
        for (int r = 0; r < reaches.size(); r++) {
            double at = 0;
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                assertThat(cells.reach(c)).isEqualTo(r);
                assertThat(cells.from(c)).as("%s", draft).isEqualTo(at);
                assertThat(cells.length(c)).as("%s", draft).isCloseTo(reaches.length(r) / 6, within(EXACT));
                at = cells.to(c);
            }
            assertThat(at).as("%s: the end is exact", draft).isEqualTo(reaches.length(r));
        }
    }
}
