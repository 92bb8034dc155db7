// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

/**
 * One form turns into another, or is lost.
 *
 * @param from name of a form
 * @param to name of a core form, or {@link #LOST} where it leaves the water for good
 * @param law its rate
 * @param actsOn which part of the form reacts
 */
public record Reaction(String from, String to, FirstOrder law, Part actsOn) {
    /** What a form turns into that is no form any more. */
    public static final String LOST = "lost";

    /** A part of a form in water. */
    public enum Part {
        /** All of it. */
        TOTAL,
        /** What passes a filter. */
        FILTERED
    }
}
