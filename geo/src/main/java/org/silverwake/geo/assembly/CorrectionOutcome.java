// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

/**
 * What became of one correction.
 *
 * @param where file and line that gave it
 * @param status in one word
 * @param text what was done, or why not, in one line
 */
public record CorrectionOutcome(String where, Status status, String text) {
    /** What became of a correction. */
    public enum Status {
        APPLIED,
        /** Without it the program does the same by now. */
        NO_LONGER_NEEDED,
        /** What it speaks of is no longer as it was; it is not applied. */
        DOES_NOT_FIT
    }
}
