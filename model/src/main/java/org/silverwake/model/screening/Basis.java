// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

/** What a content is divided by. */
public enum Basis {
    /** Mass of dry solids. */
    DRY_WEIGHT("dry weight"),
    /** Mass of wet tissue. */
    WET_WEIGHT("wet weight"),
    /** Not a content. */
    NONE("");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    /** Word used in tables, "" for none. */
    public String word() {
        return word;
    }
}
