// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

/**
 * A fish that a laboratory measured.
 *
 * @param reach reach it was caught in
 * @param level its trophic level
 * @param content its mercury, or the laboratory's limit where it lies below one [kg/kg wet], above 0
 */
public record MeasuredFish(int reach, TrophicLevel level, double content) {
    /** Refuses what no laboratory can report. */
    public MeasuredFish {
        if (!(content > 0 && content < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a fish of " + content + " kg/kg is not allowed; give a content above 0");
        }
    }
}
