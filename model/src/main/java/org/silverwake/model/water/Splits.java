// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;

/** Share of the water at its upper node that each reach takes; 1 but at bifurcations, where the shares of the arms sum to 1. */
public final class Splits {
    private final double[] share;
    private final List<Integer> assumedEqual;

    private Splits(double[] share, List<Integer> assumedEqual) {
        this.share = share;
        this.assumedEqual = List.copyOf(assumedEqual);
    }

    /**
     * Shares in proportion to a column (a split attribute, or the arms' discharges) where all arms of a bifurcation have
     * it, at least 0 and not all 0; else equal, and listed.
     */
    public static Splits of(RiverNetwork network, Optional<Column> weight) {
        double[] share = new double[network.size()];
        Arrays.fill(share, 1);
        List<Integer> equal = new ArrayList<>();
        for (int node = 0; node < network.nodeCount(); node++) {
            if (network.isBifurcation(node)) {
                double sum = 0;
                boolean known = weight.isPresent();
                for (int k = 0; k < network.outCount(node) && known; k++) {
                    int arm = network.out(node, k);
                    known = weight.get().has(arm) && weight.get().at(arm) >= 0;
                    sum += known ? weight.get().at(arm) : 0;
                }
                known &= sum > 0;
                if (!known) {
                    equal.add(node);
                }
                for (int k = 0; k < network.outCount(node); k++) {
                    int arm = network.out(node, k);
                    share[arm] = known ? weight.get().at(arm) / sum : 1.0 / network.outCount(node);
                }
            }
        }
        return new Splits(share, equal);
    }

    /** Share of a reach [-], 0 to 1. */
    public double share(int reach) {
        return share[reach];
    }

    /** Nodes whose arms share equally for want of anything better. */
    public List<Integer> assumedEqual() {
        return assumedEqual;
    }
}
