// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.ReachTable;

/** How far fish swim, by lengths added up by hand. */
class FishRangeTest {
    private static final double ROUNDING = 1e-12;

    private static ReachTable table(int[] from, int[] to, double... lengths) {
        List<String> ids =
                IntStream.range(0, from.length).mapToObj(k -> "r" + k).toList();
        RiverNetwork network = RiverNetwork.of(ids, from, to);
        double[] ordered = new double[lengths.length];
        int[] group = new int[lengths.length];
        for (int r = 0; r < lengths.length; r++) {
            ordered[r] = lengths[network.inputIndex(r)];
            group[r] = r;
        }
        return new ReachTable(network, ordered, group, Map.of());
    }

    private static double length(ReachTable table, FishRange range, int of, int in) {
        int at = table.network().reachOfInput(of);
        return range.lengths(at).getOrDefault(table.network().reachOfInput(in), 0.0);
    }

    /** A chain of 4, 6 and 30 km: from the middle of the second, 10 km each way. */
    @Test
    void upAndDown() {
        ReachTable chain = table(new int[] {0, 1, 2}, new int[] {1, 2, 3}, 4000, 6000, 30000);
        FishRange range = new FishRange(chain, 10000, r -> true);
        assertThat(length(chain, range, 1, 0)).isEqualTo(4000); // all of it, though 7 km would do
        assertThat(length(chain, range, 1, 1)).isEqualTo(6000);
        assertThat(length(chain, range, 1, 2)).isEqualTo(7000);
    }

    /** The range of a long reach lies within it. */
    @Test
    void withinAReach() {
        ReachTable chain = table(new int[] {0, 1}, new int[] {1, 2}, 30000, 5000);
        FishRange range = new FishRange(chain, 10000, r -> true);
        assertThat(range.lengths(0)).containsOnly(Map.entry(0, 20000.0));
    }

    /** A dam at the lower end of the second reach: no fish passes, from above or from below. */
    @Test
    void toTheDam() {
        ReachTable chain = table(new int[] {0, 1, 2}, new int[] {1, 2, 3}, 4000, 6000, 30000);
        int dam = chain.network().toNode(chain.network().reachOfInput(1));
        FishRange range = new FishRange(chain, 10000, r -> true, node -> node == dam);
        assertThat(length(chain, range, 1, 0)).isEqualTo(4000);
        assertThat(length(chain, range, 1, 2)).isZero();
        FishRange far = new FishRange(chain, 20000, r -> true, node -> node == dam);
        assertThat(length(chain, far, 2, 2)).isEqualTo(30000);
        assertThat(length(chain, far, 2, 1)).isZero();
    }

    /** Down to a confluence and up the other river. */
    @Test
    void intoTributaries() {
        ReachTable y = table(new int[] {0, 1, 2}, new int[] {2, 2, 3}, 8000, 20000, 1000);
        FishRange range = new FishRange(y, 10000, r -> true);
        assertThat(length(y, range, 0, 1)).isEqualTo(6000);
        assertThat(length(y, range, 0, 2)).isEqualTo(1000);
    }

    /** A loop of 12 km is reached from both sides, and no part of it counts twice. */
    @Test
    void roundALoop() {
        ReachTable loop = table(new int[] {0, 1, 1, 2}, new int[] {1, 2, 2, 3}, 2000, 4000, 12000, 2000);
        FishRange range = new FishRange(loop, 10000, r -> true);
        // 9 km are left at its upper end, 5 km at the lower one: more than the 12 km there are
        assertThat(length(loop, range, 0, 2)).isEqualTo(12000);
        FishRange shorter = new FishRange(loop, 8000, r -> true);
        // 7 km and 3 km
        assertThat(length(loop, shorter, 0, 2)).isEqualTo(10000);
    }

    /** Where there is never water, no fish pass. */
    @Test
    void dryReachesStopIt() {
        ReachTable chain = table(new int[] {0, 1, 2}, new int[] {1, 2, 3}, 1000, 1000, 1000);
        FishRange range = new FishRange(chain, 10000, r -> r != chain.network().reachOfInput(1));
        assertThat(length(chain, range, 0, 2)).isZero();
        assertThat(range.lengths(chain.network().reachOfInput(1))).isEmpty();
    }

    /** The mean is weighted by length: (4 x 1 + 6 x 2 + 7 x 5) / 17. */
    @Test
    void meanByLength() {
        ReachTable chain = table(new int[] {0, 1, 2}, new int[] {1, 2, 3}, 4000, 6000, 30000);
        List<Double> means = new FishRange(chain, 10000, r -> true).means(List.of(1.0, 2.0, 5.0));
        assertThat(means.get(1)).isCloseTo(3.0, within(ROUNDING));
    }
}
