// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

/** How one sample stands to a guideline value. It speaks of that sample alone, of its day and place. */
public enum SampleAnswer {
    /** The sample is above the value. */
    ABOVE("above"),
    /** The sample is not above the value. */
    NOT_ABOVE("not above"),
    /** The limit of the laboratory is above the value (or its range ends below it): the sample does not tell. */
    CANNOT_TELL("can't tell");

    private final String words;

    SampleAnswer(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
