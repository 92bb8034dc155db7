// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;

/**
 * A yearly cost and how sure it is; negative where money comes back.
 *
 * @param low least it may cost [currency/a]
 * @param middle best guess [currency/a]
 * @param high most it may cost [currency/a]
 */
public record CostRange(double low, double middle, double high) {
    public CostRange {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= middle && middle <= high)) {
            throw new IllegalArgumentException("Cost range out of order: " + low + ", " + middle + ", " + high);
        }
    }

    /**
     * A cost that is known.
     *
     * @param cost all three [currency/a]
     */
    public static CostRange of(double cost) {
        return new CostRange(cost, cost, cost);
    }

    /** The cost at one end of the range [currency/a]. */
    public double at(Level level) {
        return switch (level) {
            case LOW -> low;
            case MIDDLE -> middle;
            case HIGH -> high;
        };
    }

    /**
     * Cost of several options together, each at its share.
     *
     * @param shares share of each option [-], 0 to 1
     */
    static CostRange total(List<Option> options, double[] shares) {
        double[] sums = new double[Level.values().length];
        for (int i = 0; i < shares.length; i++) {
            for (Level level : Level.values()) {
                sums[level.ordinal()] += shares[i] * options.get(i).cost().at(level);
            }
        }
        return new CostRange(sums[Level.LOW.ordinal()], sums[Level.MIDDLE.ordinal()], sums[Level.HIGH.ordinal()]);
    }
}
