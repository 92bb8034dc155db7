// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

/** One thing that a word tells: "medium is surface water". */
public record Meaning(Category category, String value) {
    @Override
    public String toString() {
        return value;
    }
}
