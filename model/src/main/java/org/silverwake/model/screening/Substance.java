// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** What is measured. */
public enum Substance {
    /** All forms of mercury. */
    TOTAL_MERCURY("total Hg"),
    /** Total less methylmercury. */
    INORGANIC_MERCURY("inorganic Hg"),
    /** Methylmercury, as Hg. */
    METHYLMERCURY("MeHg"),
    /** Free cyanide, as CN. */
    FREE_CYANIDE("free cyanide"),
    /** Weak-acid dissociable cyanide, as CN. */
    WAD_CYANIDE("WAD cyanide"),
    /** Suspended solids themselves. */
    SUSPENDED_SOLIDS("suspended solids");

    private static final Set<Substance> ALWAYS =
            Collections.unmodifiableSet(EnumSet.of(TOTAL_MERCURY, INORGANIC_MERCURY, SUSPENDED_SOLIDS));

    private final String word;

    Substance(String word) {
        this.word = word;
    }

    /** Those that every run carries. */
    public static Set<Substance> always() {
        return ALWAYS;
    }

    /** Whether it is mercury, in some form or all. */
    public boolean isMercury() {
        return this == TOTAL_MERCURY || this == INORGANIC_MERCURY || this == METHYLMERCURY;
    }

    /** Whether it is cyanide, which is dissolved and in water alone. */
    public boolean isCyanide() {
        return this == FREE_CYANIDE || this == WAD_CYANIDE;
    }

    /** Word used in tables. */
    public String word() {
        return word;
    }
}
