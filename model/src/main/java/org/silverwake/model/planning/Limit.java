// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.Objects;

/**
 * A value that is to be reached: one guideline at one receptor in one flow state.
 *
 * @param name which, in words
 * @param allowed highest value that meets it [any], > 0, in the unit of the evaluator's values
 * @param estimate which estimate of the value is held against it; the high one unless chosen otherwise
 */
public record Limit(String name, double allowed, Level estimate) {
    /** How far above the allowed value still counts as met, as a share of it: rounding, no more. */
    static final double TOLERANCE = 1e-9;

    public Limit {
        Objects.requireNonNull(name);
        Objects.requireNonNull(estimate);
        if (!(allowed > 0) || Double.isInfinite(allowed)) {
            throw new IllegalArgumentException("Allowed value of " + name + " is not above 0: " + allowed);
        }
    }

    /**
     * A limit that the high estimate has to meet.
     *
     * @param allowed highest value that meets it [any], > 0
     */
    public static Limit of(String name, double allowed) {
        return new Limit(name, allowed, Level.HIGH);
    }

    /**
     * Whether a value meets it, but for a billionth of rounding.
     *
     * @param value value at the receptor [any], in the unit of the allowed one
     */
    public boolean isMetBy(double value) {
        return value <= allowed * (1 + TOLERANCE);
    }
}
