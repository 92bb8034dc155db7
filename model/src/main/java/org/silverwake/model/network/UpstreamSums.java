// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.Arrays;

/**
 * Sums over everything upstream of a reach, each upstream reach counted once even where braids rejoin. "Upstream" is
 * every reach from which a reach can be reached, itself included. Works in blocks of reaches, so memory stays at
 * O(n) longs; cost O(n^2/64) at worst, O(n) on trees.
 */
public final class UpstreamSums {
    private static final int WORDS = 64;
    private static final int BLOCK = WORDS * Long.SIZE;

    private final RiverNetwork network;
    private final boolean tree;

    /** Sums on a network. */
    public UpstreamSums(RiverNetwork network) {
        this.network = network;
        boolean branching = false;
        for (int node = 0; node < network.nodeCount(); node++) {
            branching |= network.outCount(node) > 1 && network.inCount(node) > 0;
        }
        this.tree = !branching;
    }

    /**
     * Sum of local values over each reach and all upstream of it, each once.
     *
     * @param local value of each reach [any unit]
     * @return sums [the local values' unit]
     */
    public double[] total(double[] local) {
        double[] totals = new double[local.length];
        boolean[] known = new boolean[local.length];
        sweep(local.clone(), totals, known);
        return totals;
    }

    /**
     * Local values whose upstream sums are the given totals. Where a total is not known, the local value is 0. Local
     * values come out negative where totals fall downstream.
     *
     * @param totals sum at the lower end of each reach [any unit]
     * @param known where a total is given
     * @return local values [the totals' unit]
     */
    public double[] local(double[] totals, boolean[] known) {
        return local(totals, known, new double[totals.length]);
    }

    /**
     * As {@link #local(double[], boolean[])}, but where a total is not known, the local value is a given one.
     *
     * @param totals sum at the lower end of each reach [any unit]
     * @param known where a total is given
     * @param given local values where no total is known [the totals' unit]
     * @return local values [the totals' unit]
     */
    public double[] local(double[] totals, boolean[] known, double[] given) {
        double[] local = given.clone();
        sweep(local, totals.clone(), known);
        return local;
    }

    /** Fills local from totals where known, totals from local elsewhere, in downstream order. */
    private void sweep(double[] local, double[] totals, boolean[] known) {
        double[] above = new double[local.length];
        if (tree) {
            for (int r = 0; r < local.length; r++) {
                int node = network.fromNode(r);
                for (int k = 0; k < network.inCount(node); k++) {
                    above[r] += totals[network.in(node, k)];
                }
                settle(r, local, totals, known, above);
            }
            return;
        }
        long[] mask = new long[local.length * WORDS];
        for (int start = 0; start < local.length; start += BLOCK) {
            int end = Math.min(local.length, start + BLOCK);
            Arrays.fill(mask, start * WORDS, mask.length, 0);
            for (int r = start; r < local.length; r++) {
                gather(mask, r, start);
                for (int w = 0; w < WORDS; w++) {
                    long bits = mask[r * WORDS + w];
                    while (bits != 0) {
                        above[r] += local[start + w * Long.SIZE + Long.numberOfTrailingZeros(bits)];
                        bits &= bits - 1;
                    }
                }
                if (r < end) {
                    settle(r, local, totals, known, above);
                    mask[r * WORDS + (r - start) / Long.SIZE] |= 1L << (r - start);
                }
            }
        }
    }

    private void gather(long[] mask, int reach, int start) {
        int node = network.fromNode(reach);
        for (int k = 0; k < network.inCount(node); k++) {
            int upstream = network.in(node, k);
            if (upstream >= start) {
                for (int w = 0; w < WORDS; w++) {
                    mask[reach * WORDS + w] |= mask[upstream * WORDS + w];
                }
            }
        }
    }

    private static void settle(int r, double[] local, double[] totals, boolean[] known, double[] above) {
        if (known[r]) {
            local[r] = totals[r] - above[r];
        } else {
            totals[r] = above[r] + local[r];
        }
    }
}
