// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class StorageTest {
    /** ROUNDING: a dozen operations on numbers of order 1. */
    private static final double ROUNDING = 1e-14;

    private static final FlowYear YEAR = FlowYear.even(List.of(0.6, 0.3, 0.1));

    private static void assertClosed(Storage.Released released, double mean) {
        assertThat(released.mean(YEAR) + released.kept()).isCloseTo(mean, within(1e-12 * mean)); // ROUNDING
    }

    /** Dry 0.6, wet 0.3, flood 0.1 of the year: 0.6 laid up, washed 0.75 and 0.25 of it. Wet 1 + 0.45/0.3, flood 1 + 0.15/0.1. */
    @Test
    void heapIsWashedOutWhollyUnlessStated() {
        Storage heap = new Storage.HeapByLength(List.of(true, false, false));
        Storage.Released released = heap.release(1, YEAR);
        assertThat(released.byState().get(0)).isZero();
        assertThat(released.byState().get(1)).isCloseTo(2.5, within(ROUNDING));
        assertThat(released.byState().get(2)).isCloseTo(2.5, within(ROUNDING));
        assertThat(released.kept()).isCloseTo(0, within(ROUNDING));
        assertClosed(released, 1);
    }

    /** Half in the wet state, 0.3 in the flood, the rest stays: 1 + 0.3/0.3, 1 + 0.18/0.1, kept 0.6 x 0.2. */
    @Test
    void heapByGivenShares() {
        Storage.Released released = new Storage.Heap(List.of(0.0, 0.5, 0.3)).release(7, YEAR);
        assertThat(released.byState().get(1)).isCloseTo(7 * 2.0, within(7 * ROUNDING));
        assertThat(released.byState().get(2)).isCloseTo(7 * 2.8, within(7 * ROUNDING));
        assertThat(released.kept()).isCloseTo(7 * 0.12, within(7 * ROUNDING));
        assertClosed(released, 7);
    }

    /** Work in the dry state alone: straight 1/0.6 then, none later; a heap holds all of it back for wet and flood. */
    @Test
    void workInTheDryStateAlone() {
        FlowYear dryWork = new FlowYear(YEAR.shares(), List.of(1.0, 0.0, 0.0));
        Storage.Released straight = new Storage.Straight().release(3, dryWork);
        assertThat(straight.byState().get(0)).isCloseTo(5, within(ROUNDING));
        assertThat(straight.byState().get(1)).isZero();
        Storage.Released heap = new Storage.HeapByLength(List.of(true, false, false)).release(3, dryWork);
        assertThat(heap.byState().get(0)).isZero();
        assertThat(heap.byState().get(1)).isCloseTo(7.5, within(ROUNDING));
        assertThat(heap.mean(dryWork)).isCloseTo(3, within(ROUNDING));
    }

    @Test
    void straightAndPond() {
        Storage.Released straight = new Storage.Straight().release(3, YEAR);
        assertThat(straight.byState()).allSatisfy(rate -> assertThat(rate).isCloseTo(3, within(ROUNDING)));
        assertClosed(straight, 3);
        Storage.Released pond = new Storage.Pond(0.05).release(3, YEAR);
        assertThat(pond.byState().get(2)).isCloseTo(0.15, within(ROUNDING));
        assertThat(pond.kept()).isCloseTo(2.85, within(ROUNDING));
        assertClosed(pond, 3);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Storage.Heap(List.of(0.0, 0.9, 0.3))).hasMessageContaining("sum to 1.2");
        assertThatThrownBy(() -> new Storage.Heap(List.of(0.0, 0.0, 0.0))).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new Storage.Heap(List.of(0.0, 1.0)).release(1, YEAR))
                .hasMessageContaining("states 2 washed-out shares");
        assertThatThrownBy(() -> new Storage.Heap(List.of(0.0, 1.0)).release(1, FlowYear.even(List.of(1.0, 0.0))))
                .hasMessageContaining("share of the year is 0");
        assertThatThrownBy(() -> FlowYear.even(List.of(0.6, 0.3)))
                .hasMessageContaining("shares of the year sum to 0.8");
        assertThatThrownBy(() -> new FlowYear(List.of(1.0, 0.0), List.of(0.5, 0.5)))
                .hasMessageContaining("work is done in a flow state");
        assertThatThrownBy(() -> new Storage.HeapByLength(List.of(true, true, true)).release(1, YEAR))
                .hasMessageContaining("fills in all flow states");
        assertThatThrownBy(() -> new Storage.HeapByLength(List.of(true)).release(1, YEAR))
                .hasMessageContaining("says of 1 flow states");
        assertThatThrownBy(() -> new Storage.Pond(1.2)).hasMessageContaining("1.2");
    }
}
