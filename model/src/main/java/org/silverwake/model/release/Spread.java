// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.function.DoubleUnaryOperator;

/**
 * A number as low, middle and high.
 *
 * @param low [its unit]
 * @param middle [its unit], at least low
 * @param high [its unit], at least middle
 */
public record Spread(double low, double middle, double high) {
    /** Which of the three. */
    public enum Level {
        LOW,
        MIDDLE,
        HIGH
    }

    /** Checks the order. */
    public Spread {
        if (!(low <= middle && middle <= high)) {
            throw new IllegalArgumentException(
                    "low " + low + ", middle " + middle + ", high " + high + " are not in order");
        }
    }

    /**
     * A number without a range.
     *
     * @param value [its unit]
     */
    public static Spread exact(double value) {
        return new Spread(value, value, value);
    }

    /** One of the three [its unit]. */
    public double at(Level level) {
        return switch (level) {
            case LOW -> low;
            case MIDDLE -> middle;
            case HIGH -> high;
        };
    }

    /** Whether low and high differ. */
    public boolean hasWidth() {
        return high > low;
    }

    /**
     * Whether a number lies from low to high.
     *
     * @param value [its unit]
     */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }

    /** All three by a rising function. */
    public Spread map(DoubleUnaryOperator rising) {
        return new Spread(rising.applyAsDouble(low), rising.applyAsDouble(middle), rising.applyAsDouble(high));
    }
}
