// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.silverwake.geo.GeoDataException;

class CellNumbersTest {
    @Test
    void aFileHoldsWhatMemoryHolds() {
        CellNumbers memory = CellNumbers.of(1000);
        CellNumbers file = CellNumbers.inFile(1000, 1);
        for (int cell = 0; cell < 1000; cell++) {
            assertThat(file.at(cell)).isZero();
            memory.put(cell, cell * 7919);
            file.put(cell, cell * 7919);
        }
        memory.putHeight(999, -2.5f);
        file.putHeight(999, -2.5f);
        for (int cell = 0; cell < 1000; cell++) {
            assertThat(file.at(cell)).isEqualTo(memory.at(cell));
        }
        assertThat(file.heightAt(999)).isEqualTo(-2.5f);
    }

    @Test
    void theQueueGivesLowestFirstAndEqualOnesInOrder() {
        CellNumbers links = CellNumbers.of(10);
        LevelQueue queue = new LevelQueue(links, 5);
        assertThat(queue.take()).isEqualTo(-1);
        queue = new LevelQueue(links, 5);
        queue.add(7, 3, 1);
        queue.add(2, 1, 7);
        queue.add(9, 3, 4);
        queue.add(0, 3, 0);
        assertThat(queue.take()).isEqualTo(2);
        assertThat(queue.way()).isEqualTo(7);
        assertThat(queue.level()).isEqualTo(1);
        queue.add(1, 1, 2);
        assertThat(queue.take()).isEqualTo(1);
        assertThat(queue.take()).isEqualTo(7);
        assertThat(queue.take()).isEqualTo(9);
        assertThat(queue.way()).isEqualTo(4);
        assertThat(queue.take()).isZero();
        assertThat(queue.take()).isEqualTo(-1);
    }

    @Test
    void roomIsLookedForBeforeItIsTaken() {
        // 2 GB a file, a million of them: more than any disk has
        assertThatThrownBy(() -> CellNumbers.inFile(500_000_000, 1_000_000))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("the elevation raster needs 2000000000 MB more there for a while; make room")
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(1));
    }
}
