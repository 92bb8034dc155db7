// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.water.Cells;

/** Cells whose water is that of a reach, found once for all reaches: its own, or those that hold the volume of its still water. */
final class ReachCells {
    private final int[][] cells;

    ReachCells(TransportInput input, Cells all) {
        this.cells = new int[input.hydraulics().reaches().size()][];
        for (int r = 0; r < cells.length; r++) {
            cells[r] = input.hydraulics().cellsOf(r, all);
        }
    }

    /** Of a reach; at least one. Not to be changed. */
    int[] of(int reach) {
        return cells[reach];
    }
}
