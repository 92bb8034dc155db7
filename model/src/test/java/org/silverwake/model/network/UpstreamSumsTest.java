// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;

/** Against a plain search that collects each upstream reach once. Values are whole numbers, so that sums are exact. */
class UpstreamSumsTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void totalsAgreeWithASearch(Draft draft) {
        RiverNetwork network = draft.network();
        double[] local = wholeNumbers(network.size(), draft.seed());
        double[] before = local.clone();
        double[] total = new UpstreamSums(network).total(local);
        for (int r = 0; r < network.size(); r++) {
            assertThat(total[r]).as("%s, reach %s", draft, r).isEqualTo(slowTotal(network, local, r));
        }
        assertThat(local).as("input is left alone").isEqualTo(before);
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void localValuesGiveTheTotalsBack(Draft draft) {
        RiverNetwork network = draft.network();
        double[] totals = wholeNumbers(network.size(), draft.seed() + 7);
        boolean[] known = new boolean[network.size()];
        Random random = new Random(draft.seed());
        for (int r = 0; r < known.length; r++) {
            known[r] = random.nextDouble() < 0.7;
        }
        double[] local = new UpstreamSums(network).local(totals, known);
        for (int r = 0; r < network.size(); r++) {
            if (known[r]) {
                assertThat(slowTotal(network, local, r))
                        .as("%s, reach %s", draft, r)
                        .isEqualTo(totals[r]);
            } else {
                assertThat(local[r]).as("%s, reach %s", draft, r).isZero();
            }
        }
    }

    /** More than two blocks of 4096 reaches; the twin looks at reaches about the block edges and at random. */
    @Test
    void severalBlocksOfABraidedNetwork() {
        Draft draft = RandomNetworks.braid(4, 9000);
        RiverNetwork network = draft.network();
        assertThat(network.size()).isGreaterThan(2 * 4096 + 100);
        assertThat(network.loopCount()).isGreaterThan(500);
        double[] local = wholeNumbers(network.size(), 11);
        UpstreamSums sums = new UpstreamSums(network);
        double[] total = sums.total(local);
        boolean[] known = new boolean[network.size()];
        java.util.Arrays.fill(known, true);
        double[] back = sums.local(total, known);
        Random random = new Random(12);
        int last = network.size() - 1;
        int[] edges = {0, 63, 64, 4095, 4096, 4097, 8191, 8192, last};
        for (int i = 0; i < 150; i++) {
            int r = i < edges.length ? edges[i] : random.nextInt(network.size());
            assertThat(total[r]).as("%s, reach %s", draft, r).isEqualTo(slowTotal(network, local, r));
        }
        assertThat(back).isEqualTo(local);
        double[] ones = new double[network.size()];
        java.util.Arrays.fill(ones, 1);
        double most = java.util.Arrays.stream(sums.total(ones)).max().orElse(0);
        assertThat(most).as("some reach drains more than a block").isGreaterThan(4096);
    }

    @Test
    void aLoopCountsItsTrunkOnce() {
        // trunk 5 splits into arms 1 and 2, which rejoin in 3: 5, 6, 7, and 11 at the end (not 16)
        RiverNetwork network = RiverNetwork.of(
                java.util.List.of("trunk", "left", "right", "end"), new int[] {0, 1, 1, 2}, new int[] {1, 2, 2, 3});
        assertThat(new UpstreamSums(network).total(new double[] {5, 1, 2, 3})).containsExactly(5, 6, 7, 11);
    }

    private static double slowTotal(RiverNetwork network, double[] local, int reach) {
        Set<Integer> above = SlowUpstream.of(network, reach);
        double sum = 0;
        for (int r : above) {
            sum += local[r];
        }
        return sum;
    }

    private static double[] wholeNumbers(int n, long seed) {
        Random random = new Random(seed);
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = random.nextInt(1000);
        }
        return values;
    }
}
