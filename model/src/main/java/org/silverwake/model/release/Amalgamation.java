// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

/** How a site brings gold and mercury together. */
public enum Amalgamation {
    /** All the ore is ground or mixed with mercury. */
    WHOLE_ORE,
    /** Only a concentrate is. */
    CONCENTRATE,
    /** No mercury is used. */
    NONE;

    /** Published mercury used per gold [-] where all amalgam is burned in the open; never a silent default. */
    public Assumed ratio() {
        return this == WHOLE_ORE ? Published.WHOLE_ORE_RATIO : Published.CONCENTRATE_RATIO;
    }

    /** Published share of the mercury used that open burning sends to air [-]; the rest goes with the tailings. */
    public Assumed toAir() {
        return this == WHOLE_ORE ? Published.WHOLE_ORE_TO_AIR : Published.CONCENTRATE_TO_AIR;
    }
}
