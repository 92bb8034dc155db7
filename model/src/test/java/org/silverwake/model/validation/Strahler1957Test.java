// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.silverwake.model.network.CycleException;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.network.StreamOrder;

/** Strahler (1957) stream order: the definition, by hand. */
@Reference(key = "strahler1957", locator = "definition of stream order")
class Strahler1957Test {
    /** Orders in the order given; reaches as "from-to" pairs. */
    private static List<Integer> orders(int[]... reaches) {
        List<String> ids = new ArrayList<>();
        int[] from = new int[reaches.length];
        int[] to = new int[reaches.length];
        for (int i = 0; i < reaches.length; i++) {
            ids.add("r" + i);
            from[i] = reaches[i][0];
            to[i] = reaches[i][1];
        }
        RiverNetwork network = RiverNetwork.of(ids, from, to);
        int[] order = StreamOrder.strahler(network);
        List<Integer> given = new ArrayList<>();
        for (int i = 0; i < reaches.length; i++) {
            given.add(order[network.reachOfInput(i)]);
        }
        return given;
    }

    private static int[] reach(int from, int to) {
        return new int[] {from, to};
    }

    @Test
    void case1TwoFirstOrdersMakeASecond() {
        assertThat(orders(reach(0, 2), reach(1, 2), reach(2, 3))).containsExactly(1, 1, 2);
    }

    @Test
    void case2SecondAndFirstStaySecond() {
        assertThat(orders(reach(0, 2), reach(1, 2), reach(2, 4), reach(3, 4), reach(4, 5)))
                .containsExactly(1, 1, 2, 1, 2);
    }

    @Test
    void case3TwoSecondOrdersMakeAThird() {
        assertThat(orders(reach(0, 4), reach(1, 4), reach(2, 5), reach(3, 5), reach(4, 6), reach(5, 6), reach(6, 7)))
                .containsExactly(1, 1, 1, 1, 2, 2, 3);
    }

    @Test
    void case4ThreeFirstOrdersAtOneNodeMakeASecond() {
        assertThat(orders(reach(0, 3), reach(1, 3), reach(2, 3), reach(3, 4))).containsExactly(1, 1, 1, 2);
    }

    @Test
    void case5TwoSecondsAndAFirstAtOneNodeMakeAThird() {
        assertThat(orders(
                        reach(0, 5),
                        reach(1, 5),
                        reach(2, 6),
                        reach(3, 6),
                        reach(5, 7),
                        reach(6, 7),
                        reach(4, 7),
                        reach(7, 8)))
                .containsExactly(1, 1, 1, 1, 2, 2, 1, 3);
    }

    @Test
    void case6AChainKeepsItsOrder() {
        assertThat(orders(reach(0, 1), reach(1, 2), reach(2, 3), reach(3, 4))).containsExactly(1, 1, 1, 1);
    }

    @Test
    void case7AFirstOrderThatSplitsAndRejoinsStaysFirst() {
        assertThat(orders(reach(0, 1), reach(1, 2), reach(1, 2), reach(2, 3))).containsExactly(1, 1, 1, 1);
    }

    @Test
    void case7BraidsWithinBraidsAndHigherOrdersStayToo() {
        // an order-2 trunk (reach 2) into three arms, one split again, all rejoined
        assertThat(orders(
                        reach(0, 2),
                        reach(1, 2),
                        reach(2, 3),
                        reach(3, 6),
                        reach(3, 6),
                        reach(3, 4),
                        reach(4, 6),
                        reach(4, 6),
                        reach(6, 7)))
                .containsExactly(1, 1, 2, 2, 2, 2, 2, 2, 2);
    }

    @Test
    void case8EightSourcesInABalancedTreeMakeAFourth() {
        List<int[]> reaches = new ArrayList<>();
        for (int k = 0; k < 15; k++) {
            // heap numbering turned downstream: node k flows to (k-1)/2, node 0 to the mouth
            reaches.add(k == 0 ? reach(0, 15) : reach(k, (k - 1) / 2));
        }
        assertThat(orders(reaches.toArray(new int[0][])).get(0)).isEqualTo(4);
    }

    @Test
    void case9AHerringBoneStaysSecond() {
        List<int[]> reaches = new ArrayList<>();
        for (int k = 0; k < 8; k++) {
            reaches.add(reach(k, k + 1));
        }
        for (int k = 1; k <= 7; k++) {
            reaches.add(reach(100 + k, k));
        }
        List<Integer> orders = orders(reaches.toArray(new int[0][]));
        assertThat(orders.get(7)).isEqualTo(2);
        assertThat(orders.get(0)).isEqualTo(1);
    }

    @Test
    void case10ACircleIsAnErrorAndNotAnEndlessLoop() {
        assertThatThrownBy(() -> orders(reach(0, 1), reach(1, 2), reach(2, 1))).isInstanceOf(CycleException.class);
    }

    @Test
    void anArmThatMeetsItsEqualRises() {
        // reach 0 (first) splits; one arm meets another first order and becomes a second; rejoined it stays a second
        assertThat(orders(reach(0, 1), reach(1, 4), reach(1, 3), reach(2, 3), reach(3, 4), reach(4, 5)))
                .containsExactly(1, 1, 1, 1, 2, 2);
    }
}
