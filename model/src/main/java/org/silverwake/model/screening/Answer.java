// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

/** The four answers of screening. None of them says that water is fit for use. */
public enum Answer {
    /** Above the guideline even by the low bound divided by the stated factor. */
    ABOVE("above"),
    /** Neither above nor below beyond the stated factor. */
    MAY_BE_ABOVE("may be above"),
    /** Below the guideline even by the high bound times the stated factor. */
    BELOW_BY_THIS_ESTIMATE("below by this estimate"),
    /** Nothing is said; the reason stands beside it. */
    NOT_ASSESSED("not assessed");

    private final String words;

    Answer(String words) {
        this.words = words;
    }

    /** Words for legends and tables. */
    public String words() {
        return words;
    }
}
