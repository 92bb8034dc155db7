// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

/**
 * The model's estimate at a sample's place: both bounds, over the flow states the sample may belong to.
 *
 * @param low lower bound [kg/m3 or kg/kg], at least 0
 * @param high higher bound [kg/m3 or kg/kg], at least {@code low}
 */
public record ModelRange(double low, double high) {
    /** Refuses what is negative or the wrong way round. */
    public ModelRange {
        if (!(low >= 0 && high >= low && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a range of " + low + " to " + high + " is not allowed");
        }
    }

    /** The range that holds this one and another. */
    public ModelRange with(ModelRange other) {
        return new ModelRange(Math.min(low, other.low), Math.max(high, other.high));
    }
}
