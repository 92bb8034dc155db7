// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;

class RiverNetworkTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";

    @Test
    void aForkedRiverIsSortedDownstream() {
        // outlet first, then the arms of a loop, then two headwaters
        RiverNetwork network = RiverNetwork.of(
                List.of("mouth", "left", "right", "trunk", "brook"), new int[] {3, 2, 2, 0, 1}, new int[] {4, 3, 3, 2, 2
                });
        assertThat(network.size()).isEqualTo(5);
        assertThat(network.nodeCount()).isEqualTo(5);
        List<String> order = new ArrayList<>();
        for (int r = 0; r < network.size(); r++) {
            order.add(network.id(r));
        }
        assertThat(order).containsExactly("trunk", "brook", "left", "right", "mouth");
        assertThat(network.isBifurcation(2)).isTrue();
        assertThat(network.isBifurcation(3)).isFalse();
        assertThat(network.isHeadwater(0)).isTrue();
        assertThat(network.isHeadwater(2)).isFalse();
        assertThat(network.isOutlet(4)).isTrue();
        assertThat(network.inputIndex(4)).isZero();
        assertThat(network.reachOfInput(0)).isEqualTo(4);
        assertThat(network.loopCount()).isEqualTo(1);
        assertThat(network.components()).containsExactly(0, 0, 0, 0, 0);
    }

    @Test
    void twoReachesFromOneSourceAreNoBifurcation() {
        RiverNetwork network = RiverNetwork.of(List.of("a", "b"), new int[] {0, 0}, new int[] {1, 2});
        assertThat(network.isBifurcation(0)).isFalse();
        assertThat(network.isHeadwater(0)).isTrue();
        assertThat(network.isHeadwater(1)).isTrue();
    }

    @Test
    void circlesAreRefusedAndTheirReachesNamed() {
        // a -> (b, c in a circle) -> d, and a reach that bites its own tail; a and d lie beside the circle
        List<String> ids = List.of("a", "b", "c", "d", "tail");
        int[] from = {0, 1, 2, 2, 7};
        int[] to = {1, 2, 1, 3, 7};
        CycleException refusal = catchThrowableOfType(CycleException.class, () -> RiverNetwork.of(ids, from, to));
        assertThat(refusal.cycles()).containsExactly(List.of(1, 2), List.of(4));
        assertThat(refusal).hasMessage("reaches run in a circle: [b, c] [tail]");
    }

    @Test
    void aCircleOfAHundredThousandReachesIsFoundWithoutOverflow() {
        int n = 100_000;
        List<String> ids = new ArrayList<>();
        int[] from = new int[n];
        int[] to = new int[n];
        for (int i = 0; i < n; i++) {
            ids.add("r" + i);
            from[i] = i;
            to[i] = (i + 1) % n;
        }
        CycleException refusal = catchThrowableOfType(CycleException.class, () -> RiverNetwork.of(ids, from, to));
        assertThat(refusal.cycles()).hasSize(1);
        assertThat(refusal.cycles().get(0)).hasSize(n);
    }

    @Test
    void badListsAreRefused() {
        assertThatThrownBy(() -> RiverNetwork.of(List.of("a"), new int[] {0, 1}, new int[] {1}))
                .hasMessageContaining("same length");
        assertThatThrownBy(() -> RiverNetwork.of(List.of("a", "a"), new int[] {0, 1}, new int[] {1, 2}))
                .hasMessageContaining("used twice");
        assertThatThrownBy(() -> RiverNetwork.of(List.of("a"), new int[] {-1}, new int[] {1}))
                .hasMessageContaining("node numbers run from 0");
    }

    @Test
    void anEmptyNetworkHasNothing() {
        RiverNetwork network = RiverNetwork.of(List.of(), new int[0], new int[0]);
        assertThat(network.size()).isZero();
        assertThat(network.loopCount()).isZero();
        assertThat(network.components()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void everyReachComesAfterAllThatFlowIntoIt(Draft draft) {
        RiverNetwork network = draft.network();
        Set<Integer> inputs = new HashSet<>();
        for (int r = 0; r < network.size(); r++) {
            int i = network.inputIndex(r);
            inputs.add(i);
            assertThat(network.reachOfInput(i)).as("%s", draft).isEqualTo(r);
            assertThat(network.id(r)).isEqualTo("r" + i);
            assertThat(network.fromNode(r)).isEqualTo(draft.from().get(i));
            assertThat(network.toNode(r)).isEqualTo(draft.to().get(i));
            for (int k = 0; k < network.inCount(network.fromNode(r)); k++) {
                assertThat(network.in(network.fromNode(r), k)).as("%s", draft).isLessThan(r);
            }
            for (int k = 0; k < network.outCount(network.toNode(r)); k++) {
                assertThat(network.out(network.toNode(r), k)).as("%s", draft).isGreaterThan(r);
            }
        }
        assertThat(inputs).hasSize(draft.from().size());
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void neighborsAgreeWithASearchOfTheLists(Draft draft) {
        RiverNetwork network = draft.network();
        for (int node = 0; node < network.nodeCount(); node++) {
            assertThat(network.inCount(node)).as("%s", draft).isEqualTo(Collections.frequency(draft.to(), node));
            assertThat(network.outCount(node)).as("%s", draft).isEqualTo(Collections.frequency(draft.from(), node));
            for (int k = 0; k < network.inCount(node); k++) {
                assertThat(network.toNode(network.in(node, k))).isEqualTo(node);
            }
            for (int k = 0; k < network.outCount(node); k++) {
                assertThat(network.fromNode(network.out(node, k))).isEqualTo(node);
            }
        }
        for (int r = 0; r < network.size(); r++) {
            assertThat(network.isHeadwater(r)).isEqualTo(!draft.to().contains(network.fromNode(r)));
            assertThat(network.isOutlet(r)).isEqualTo(!draft.from().contains(network.toNode(r)));
        }
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void componentsAndLoopsAgreeWithASearch(Draft draft) {
        RiverNetwork network = draft.network();
        int[] component = network.components();
        int expected = 0;
        boolean[] seen = new boolean[network.size()];
        for (int r = 0; r < network.size(); r++) {
            if (!seen[r]) {
                for (int reached : connected(network, r)) {
                    seen[reached] = true;
                    assertThat(component[reached]).as("%s", draft).isEqualTo(expected);
                }
                expected++;
            }
        }
        Set<Integer> nodes = new HashSet<>(draft.from());
        nodes.addAll(draft.to());
        assertThat(network.loopCount()).as("%s", draft).isEqualTo(network.size() - nodes.size() + expected);
    }

    private static Set<Integer> connected(RiverNetwork network, int start) {
        Set<Integer> found = new HashSet<>(Set.of(start));
        ArrayDeque<Integer> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            int r = open.remove();
            for (int other = 0; other < network.size(); other++) {
                boolean touches = network.fromNode(other) == network.fromNode(r)
                        || network.fromNode(other) == network.toNode(r)
                        || network.toNode(other) == network.fromNode(r)
                        || network.toNode(other) == network.toNode(r);
                if (touches && found.add(other)) {
                    open.add(other);
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void turningOneReachUpstreamMakesACircleOfWhatLiesBetween(Draft draft) {
        // a reach from the end of some way back to its start: exactly the reaches on ways between are in the circle
        RiverNetwork network = draft.network();
        int end = network.size() - 1;
        List<String> ids = new ArrayList<>();
        int[] from = new int[network.size() + 1];
        int[] to = new int[network.size() + 1];
        for (int i = 0; i < network.size(); i++) {
            ids.add("r" + i);
            from[i] = draft.from().get(i);
            to[i] = draft.to().get(i);
        }
        Set<Integer> above = SlowUpstream.of(network, end);
        int head = Collections.min(above);
        ids.add("back");
        from[network.size()] = network.toNode(end);
        to[network.size()] = network.fromNode(head);
        Set<Integer> expected = new HashSet<>(Set.of(network.size()));
        for (int r : above) {
            boolean below = network.fromNode(r) == network.fromNode(head);
            for (int up : SlowUpstream.of(network, r)) {
                below |= network.fromNode(up) == network.fromNode(head);
            }
            if (below) {
                expected.add(network.inputIndex(r));
            }
        }
        for (int r = 0; r < network.size(); r++) {
            // parallel reaches that end at the same node lie between, too
            if (network.toNode(r) == network.toNode(end)) {
                for (int up : SlowUpstream.of(network, r)) {
                    for (int down : SlowUpstream.of(network, up)) {
                        if (network.fromNode(down) == network.fromNode(head)) {
                            expected.add(network.inputIndex(up));
                        }
                    }
                }
            }
        }
        CycleException refusal = catchThrowableOfType(CycleException.class, () -> RiverNetwork.of(ids, from, to));
        assertThat(refusal).as("%s", draft).isNotNull();
        assertThat(refusal.cycles()).as("%s", draft).hasSize(1);
        assertThat(new HashSet<>(refusal.cycles().get(0))).as("%s", draft).isEqualTo(expected);
        assertThat(refusal).hasMessageContaining("back");
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void renumberingChangesNothingThatHasAName(Draft draft) {
        RiverNetwork one = draft.network();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            places.add(i);
        }
        Collections.shuffle(places, new Random(draft.seed() + 1));
        List<String> ids = new ArrayList<>();
        int[] from = new int[one.size()];
        int[] to = new int[one.size()];
        for (int i = 0; i < one.size(); i++) {
            ids.add("r" + places.get(i));
            from[i] = 2 * draft.from().get(places.get(i)) + 5;
            to[i] = 2 * draft.to().get(places.get(i)) + 5;
        }
        RiverNetwork two = RiverNetwork.of(ids, from, to);
        assertThat(two.loopCount()).as("%s", draft).isEqualTo(one.loopCount());
        int[] orderOne = StreamOrder.strahler(one);
        int[] orderTwo = StreamOrder.strahler(two);
        double[] localOne = new double[one.size()];
        double[] localTwo = new double[one.size()];
        for (int i = 0; i < one.size(); i++) {
            localOne[one.reachOfInput(places.get(i))] = 1 + places.get(i);
            localTwo[two.reachOfInput(i)] = 1 + places.get(i);
        }
        double[] totalOne = new UpstreamSums(one).total(localOne);
        double[] totalTwo = new UpstreamSums(two).total(localTwo);
        for (int i = 0; i < one.size(); i++) {
            int a = one.reachOfInput(places.get(i));
            int b = two.reachOfInput(i);
            assertThat(orderTwo[b]).as("%s", draft).isEqualTo(orderOne[a]);
            // whole numbers: sums are exact in any order
            assertThat(totalTwo[b]).as("%s", draft).isEqualTo(totalOne[a]);
            assertThat(two.isHeadwater(b)).isEqualTo(one.isHeadwater(a));
            assertThat(two.isOutlet(b)).isEqualTo(one.isOutlet(a));
        }
    }
}
