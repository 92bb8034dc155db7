// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.List;

/**
 * Values of a unit spot by spot, and those of its spots that can be the largest at some setting of the levers. A spot goes where
 * in every column another is at least as large whatever the levers say, to the rounding of what is written.
 */
final class Spots {
    /** A spot that falls short by no more than this, relative, goes as well: a few roundings of 32-bit floats. */
    private static final double ROUNDING = 1.5e-7;

    private final int columns;
    private final int spots;
    private final float[] base;
    private final List<float[]> responses;

    /**
     * Of a unit.
     *
     * @param spots number of spots [-]
     * @param base what no lever moves, index column x spots + spot
     * @param responses the same of each contributor that reaches it
     */
    Spots(int columns, int spots, float[] base, List<float[]> responses) {
        this.columns = columns;
        this.spots = spots;
        this.base = base;
        this.responses = responses;
    }

    /** Spots that stay; at least one. */
    List<Integer> kept() {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            kept.add(i);
        }
        for (int i = spots - 1; i >= 0 && kept.size() > 1; i--) {
            Integer spot = i;
            kept.remove(spot);
            if (!isCovered(i, kept)) {
                kept.add(spot);
            }
        }
        kept.sort(null);
        return kept;
    }

    private boolean isCovered(int spot, List<Integer> others) {
        for (int c = 0; c < columns; c++) {
            int column = c;
            if (others.stream().noneMatch(other -> isAtMost(column, spot, other))) {
                return false;
            }
        }
        return true;
    }

    /** Whether one spot is nowhere above another: contributors go from nothing to what they release now. */
    private boolean isAtMost(int column, int spot, int other) {
        double least = (double) at(base, column, other) - at(base, column, spot);
        double slack = at(base, column, spot);
        for (float[] response : responses) {
            least += Math.min(0, (double) at(response, column, other) - at(response, column, spot));
        }
        if (least >= 0) {
            return true;
        }
        for (float[] response : responses) {
            // the shortfall counts against what is there when the levers are where it is worst
            slack += (double) at(response, column, other) < at(response, column, spot) ? at(response, column, spot) : 0;
        }
        return -least <= ROUNDING * slack;
    }

    private float at(float[] values, int column, int spot) {
        return values[column * spots + spot];
    }
}
