// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

/** Which part of the water sample is analyzed. */
public enum Fraction {
    /** The whole sample; droplets above 63 um are left out, as samples do. */
    WHOLE("whole"),
    /** What passes a 0.45 um filter. */
    FILTERED("filtered"),
    /** Not a water sample. */
    NONE("");

    private final String word;

    Fraction(String word) {
        this.word = word;
    }

    /** Word used in tables, "" for none. */
    public String word() {
        return word;
    }
}
