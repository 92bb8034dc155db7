// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.OptionalDouble;

/**
 * A number of the field notes with its uncertainty.
 *
 * @param value the number [SI, or as the note says]
 * @param sd its standard deviation [the same unit], at least 0; empty where none is stated
 */
public record Noted(double value, OptionalDouble sd) {
    /** Checks the numbers. */
    public Noted {
        if (!Double.isFinite(value) || !(sd.orElse(0) >= 0) || Double.isInfinite(sd.orElse(0))) {
            throw new IllegalArgumentException("a note needs a finite number, and a standard deviation of at least 0");
        }
    }

    /**
     * A number of which no uncertainty is stated.
     *
     * @param value the number [SI, or as the note says]
     */
    public static Noted of(double value) {
        return new Noted(value, OptionalDouble.empty());
    }

    /**
     * A number and its standard deviation.
     *
     * @param value the number [SI, or as the note says]
     * @param sd standard deviation [the same unit]
     */
    public static Noted of(double value, double sd) {
        return new Noted(value, OptionalDouble.of(sd));
    }

    /**
     * So many times the number, and its standard deviation.
     *
     * @param factor [any], at least 0
     */
    public Noted times(double factor) {
        return new Noted(value * factor, sd.isPresent() ? OptionalDouble.of(sd.getAsDouble() * factor) : sd);
    }

    /**
     * The same with a standard deviation in any case.
     *
     * @param relative standard deviation over the number, where none is stated [-]
     */
    public Noted orRelative(double relative) {
        return sd.isPresent() ? this : of(value, Math.abs(value) * relative);
    }
}
