// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

/**
 * How a sample stands to a guideline value, and what to know of it.
 *
 * @param answer how it stands
 * @param remark why it may be held against that value though it is not quite of the same, or ""
 */
public record SampleVerdict(SampleAnswer answer, String remark) {
    /** In words: "above (already in its filtered part)". */
    public String words() {
        return remark.isEmpty() ? answer.words() : answer.words() + " (" + remark + ")";
    }
}
