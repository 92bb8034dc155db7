// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;

class SlopesTest {
    private static final double EXACT = 1e-12;
    private static final double FLOOR = 1e-5;

    @Test
    void attributesFirstThenHeightsThenNothing() {
        ReachTable reaches = Rivers.of(Map.of(), "a 0 1", "b 1 2", "c 2 3", "d 3 4");
        Column slope = new Column(4);
        slope.put(0, 0.02);
        slope.put(1, 0);
        Column upper = new Column(4);
        Column lower = new Column(4);
        upper.put(2, 105);
        lower.put(2, 102);
        Slopes slopes = Slopes.of(reaches, slope, upper, lower, FLOOR);
        assertThat(slopes.slope().at(0)).isEqualTo(0.02);
        assertThat(slopes.slope().at(1)).isEqualTo(FLOOR);
        assertThat(slopes.slope().at(2)).isCloseTo(0.003, within(EXACT));
        assertThat(slopes.slope().has(3)).isFalse();
        assertThat(slopes.floored()).isEqualTo(1);
    }

    /** Heights 110, 100, 104, 90: carved from above 110, 100, 100, 90, filled from below 110, 104, 104, 90; the mean of both. */
    @Test
    void aPitIsTakenOutHalfByFillingHalfByCarving() {
        ReachTable reaches = Rivers.of(Map.of(), "a 0 1", "b 1 2", "c 2 3");
        Slopes slopes = Slopes.of(reaches, new Column(3), Column.of(110, 100, 104), Column.of(100, 104, 90), FLOOR);
        assertThat(slopes.slope().at(0)).isCloseTo(0.008, within(EXACT));
        assertThat(slopes.slope().at(1)).isEqualTo(FLOOR);
        assertThat(slopes.slope().at(2)).isCloseTo(0.012, within(EXACT));
        assertThat(slopes.floored()).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("org.silverwake.model.network.RandomNetworks#drafts")
    void noSlopeFallsBelowTheFloorHoweverNoisyTheHeights(Draft draft) {
        ReachTable reaches = Rivers.of(draft, Map.of());
        int n = reaches.size();
        Random random = new Random(draft.seed());
        double[] height = random.doubles(reaches.network().nodeCount(), 0, 100).toArray();
        Column upper = new Column(n);
        Column lower = new Column(n);
        for (int r = 0; r < n; r++) {
            upper.put(r, height[reaches.network().fromNode(r)]);
            lower.put(r, height[reaches.network().toNode(r)]);
        }
        Slopes slopes = Slopes.of(reaches, new Column(n), upper, lower, FLOOR);
        int atFloor = 0;
        for (int r = 0; r < n; r++) {
            assertThat(slopes.slope().at(r)).as("%s", draft).isGreaterThanOrEqualTo(FLOOR);
            atFloor += slopes.slope().at(r) == FLOOR ? 1 : 0;
        }
        assertThat(slopes.floored()).as("%s", draft).isEqualTo(atFloor);
    }
}
