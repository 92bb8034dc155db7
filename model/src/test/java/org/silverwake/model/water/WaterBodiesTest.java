// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.WaterBodies.Body;

/** Reaches of bodies of water, against networks drawn in comments. */
class WaterBodiesTest {
    /** Reach k runs from node k to node k + 1. */
    private static RiverNetwork chain(int reaches) {
        int[] from = new int[reaches];
        int[] to = new int[reaches];
        String[] ids = new String[reaches];
        for (int k = 0; k < reaches; k++) {
            ids[k] = "r" + k;
            from[k] = k;
            to[k] = k + 1;
        }
        return RiverNetwork.of(List.of(ids), from, to);
    }

    private static Body lake(Integer... reaches) {
        return new Body("Round Lake", ReachKind.STILL_WATER, 1e6, 4, List.of(reaches));
    }

    @Test
    void aBodyIsLeftWhereItsLastReachEnds() {
        RiverNetwork network = chain(5);
        Body lake = lake(1, 2, 3);
        WaterBodies bodies = WaterBodies.of(network, List.of(lake));
        assertThat(bodies.exits(lake)).containsExactly(3);
        assertThat(bodies.isStill(2)).isTrue();
        assertThat(bodies.isStill(4)).isFalse();
        assertThat(bodies.of(0)).isEmpty();
    }

    @Test
    void aBodyAtTheOutletIsLeftThere() {
        Body lake = lake(1, 2);
        assertThat(WaterBodies.of(chain(3), List.of(lake)).exits(lake)).containsExactly(2);
    }

    @Test
    void aBodyMayBeLeftInTwoPlaces() {
        // 0 -> 1 (lake) -> 2 (lake) -> 3; a canal leaves between 1 and 2
        RiverNetwork network = RiverNetwork.of(
                List.of("in", "upper", "lower", "canal", "out"), new int[] {0, 1, 2, 2, 3}, new int[] {1, 2, 3, 9, 4});
        Body lake = lake(network.reachOfInput(1), network.reachOfInput(2));
        assertThat(WaterBodies.of(network, List.of(lake)).exits(lake))
                .containsExactlyInAnyOrder(network.reachOfInput(1), network.reachOfInput(2));
    }

    @Test
    void whatLeavesAndComesBackIsFound() {
        RiverNetwork network = chain(6);
        assertThat(WaterBodies.between(network, List.of(1, 4))).containsExactly(2, 3);
        assertThat(WaterBodies.between(network, List.of(1, 2))).isEmpty();
        assertThatThrownBy(() -> WaterBodies.of(network, List.of(lake(1, 4))))
                .hasMessage("Round Lake: water leaves it and comes back");
    }

    @Test
    void aReachIsInOneBody() {
        assertThatThrownBy(() -> WaterBodies.of(
                        chain(4), List.of(lake(1, 2), new Body("Other", ReachKind.WETLAND, 1, 1, List.of(2)))))
                .hasMessage("reach r2 lies in Round Lake and in Other");
    }

    @Test
    void onlyStillWaterAndWetlandsAreBodies() {
        assertThatThrownBy(() -> new Body("Long", ReachKind.CANAL, 1, 1, List.of(0)))
                .hasMessage("Long: a body of water is still water or wetland, not canal");
        assertThatThrownBy(() -> new Body("Flat", ReachKind.WETLAND, 1, 0, List.of(0)))
                .hasMessage("Flat: area 1.0 m2, depth 0.0 m, 1 reaches");
    }
}
