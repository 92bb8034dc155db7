// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/** Corners that a line cannot do without (Douglas and Peucker 1973); without recursion, since rivers may have very many. */
public final class Corners {
    private Corners() {}

    /** How far a corner lies from the stretch between two others, all by their numbers in the line. */
    @FunctionalInterface
    public interface Distance {
        /** In the unit of the tolerance. */
        double of(int corner, int from, int to);
    }

    /**
     * The corners kept, both ends among them.
     *
     * @param count of the line's corners, at least 1
     * @param tolerance how far a corner may lie from the line without it
     */
    public static BitSet kept(int count, double tolerance, Distance distance) {
        BitSet kept = new BitSet();
        kept.set(0);
        kept.set(count - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, count - 1});
        while (!open.isEmpty()) {
            int[] span = open.pop();
            int farthest = -1;
            double most = tolerance;
            for (int k = span[0] + 1; k < span[1]; k++) {
                double far = distance.of(k, span[0], span[1]);
                if (far > most) {
                    most = far;
                    farthest = k;
                }
            }
            if (farthest >= 0) {
                kept.set(farthest);
                open.push(new int[] {span[0], farthest});
                open.push(new int[] {farthest, span[1]});
            }
        }
        return kept;
    }
}
