// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

/** Where a site's mercury comes from and goes to. */
public enum SitePath {
    CHARGED(true),
    USED(true),
    ERODED(true),
    FROM_DRUMS(true),
    HELD(false),
    SQUEEZED_BACK(false),
    RETORT_RECOVERED(false),
    TAILINGS_RECOVERED(false),
    PRODUCT(false),
    AIR_OPEN(false),
    AIR_RETORT(false),
    LAID_DOWN(false),
    RUNOFF(false),
    KEPT(false),
    SLURRY_DROPLETS(false),
    SLURRY_EXCHANGEABLE(false),
    SLURRY_GRAIN_BOUND(false),
    SLURRY_UNSPLIT(false),
    TANK_COMPLEX(false),
    TANK_RESIDUE(false);

    private final boolean incoming;

    SitePath(boolean incoming) {
        this.incoming = incoming;
    }

    /** Whether it brings mercury in. */
    public boolean isIncoming() {
        return incoming;
    }

    /** Whether it is driven off to the air, come down nearby or not. */
    public boolean isVapor() {
        return this == AIR_OPEN || this == AIR_RETORT || this == LAID_DOWN || this == RUNOFF;
    }

    /** Whether it goes with tailings to the river, leached ones included. */
    public boolean isSlurry() {
        return this == SLURRY_DROPLETS
                || this == SLURRY_EXCHANGEABLE
                || this == SLURRY_GRAIN_BOUND
                || this == SLURRY_UNSPLIT
                || this == TANK_RESIDUE;
    }

    /** Whether it goes to the river; runoff of what the air laid down is an upper-bound line, and not counted. */
    public boolean isRiver() {
        return isSlurry() || this == TANK_COMPLEX;
    }

    /** Whether it follows from the tailings. */
    boolean isFromTailings() {
        return isRiver() || this == TAILINGS_RECOVERED || this == KEPT;
    }

    /** Whether it is got back for use. */
    public boolean isRecovered() {
        return this == RETORT_RECOVERED || this == TAILINGS_RECOVERED;
    }
}
