// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.List;

/**
 * One form turns into another.
 *
 * @param from name of a form
 * @param to name of a core form
 * @param law rate by flow state
 * @param actsOn which part of the form reacts
 */
public record Reaction(String from, String to, List<FirstOrder> law, Part actsOn) {
    /** Copies the list. */
    public Reaction {
        law = List.copyOf(law);
    }

    /** A part of a form in water. */
    public enum Part {
        /** All of it. */
        TOTAL,
        /** What passes a filter. */
        FILTERED
    }
}
