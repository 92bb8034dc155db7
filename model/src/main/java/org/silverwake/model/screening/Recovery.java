// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;

/**
 * When a value that changes from year to year comes below a guideline for good, as far as the years go.
 *
 * @param course what the years show
 * @param firstYearBelow first year [-], counted from 0, from which on it is no longer above; empty unless it recovers
 */
public record Recovery(Course course, OptionalInt firstYearBelow) {
    /** What the years show. */
    public enum Course {
        /** It is not above in any year. */
        NEVER_ABOVE("not above in these years"),
        /** It is above for some years and then no longer. */
        RECOVERS("comes below"),
        /** It is above in the last year. */
        STILL_ABOVE("still above in the last year");

        private final String words;

        Course(String words) {
            this.words = words;
        }
    }

    /** For tables. */
    public String words() {
        return course.words;
    }

    /**
     * Of a series.
     *
     * @param years how many [-], at least 1
     * @param value of each year [the guideline's unit]
     * @param guideline the value to come below [its own unit]
     */
    public static Recovery of(int years, IntToDoubleFunction value, double guideline) {
        int above = years - 1;
        while (above >= 0 && !(value.applyAsDouble(above) > guideline)) {
            above--;
        }
        if (above < 0) {
            return new Recovery(Course.NEVER_ABOVE, OptionalInt.empty());
        }
        return above == years - 1
                ? new Recovery(Course.STILL_ABOVE, OptionalInt.empty())
                : new Recovery(Course.RECOVERS, OptionalInt.of(above + 1));
    }
}
