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

    /** Spots that stay, in their order; at least one. */
    List<Integer> kept() {
        List<Integer> kept = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            kept.add(i);
        }
        for (int i = spots - 1; i >= 0 && kept.size() > 1; i--) {
            List<Integer> others = new ArrayList<>(kept);
            others.remove(Integer.valueOf(i));
            if (isCovered(i, others)) {
                kept = others;
            }
        }
        return kept;
    }

    private boolean isCovered(int spot, List<Integer> others) {
        for (int c = 0; c < columns; c++) {
            int column = c;
            if (others.stream().noneMatch(other -> isAtMost(column, spot, other, other))
                    && !isBetween(column, spot, others)) {
                return false;
            }
        }
        return true;
    }

    /** Whether some spot above and some spot below it on the way, mixed, are nowhere under it. */
    private boolean isBetween(int column, int spot, List<Integer> others) {
        int next = 0;
        while (next < others.size() && others.get(next) < spot) {
            next++;
        }
        if (next == 0 || next == others.size()) {
            return false;
        }
        int first = others.get(0);
        int last = others.get(others.size() - 1);
        int above = others.get(next - 1);
        int below = others.get(next);
        return isAtMost(column, spot, first, last)
                || isAtMost(column, spot, above, below)
                || isAtMost(column, spot, first, below)
                || isAtMost(column, spot, above, last);
    }

    /** Whether a spot is nowhere above some mixture of two others, so that one of the two is always as large. */
    private boolean isAtMost(int column, int spot, int one, int other) {
        double[] mixture = {0, 1};
        narrow(mixture, at(base, column, spot), at(base, column, one), at(base, column, other));
        for (float[] response : responses) {
            narrow(mixture, at(response, column, spot), at(response, column, one), at(response, column, other));
        }
        return mixture[0] <= mixture[1];
    }

    /** Narrows the part of one in a mixture with another to where the mixture is at least a value. */
    private static void narrow(double[] mixture, float value, float one, float other) {
        double wanted = value * (1 - ROUNDING);
        double slope = (double) one - other;
        double missing = wanted - other;
        if (slope > 0) {
            mixture[0] = Math.max(mixture[0], missing / slope);
        } else if (slope < 0) {
            mixture[1] = Math.min(mixture[1], missing / slope);
        } else if (missing > 0) {
            mixture[1] = -1;
        }
    }

    private float at(float[] values, int column, int spot) {
        return values[column * spots + spot];
    }
}
