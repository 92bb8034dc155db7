// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

/** One effect of a practice on a site's balance. Shares are of what is left after earlier effects [-], 0 to 1. */
public sealed interface Effect {
    /**
     * Retorts for amalgam that was burned in the open.
     *
     * @param share of the open burns [-]
     * @param recovery of the mercury driven off [-]
     */
    record Retorts(double share, double recovery) implements Effect {
        /** Checks the shares. */
        public Retorts {
            requireShare("retorts.share", share);
            requireShare("retorts.recovery", recovery);
        }
    }

    /**
     * Tailings kept that went to the river.
     *
     * @param share of them [-]
     */
    record Contained(double share) implements Effect {
        /** Checks the share. */
        public Contained {
            requireShare("contained.share", share);
        }
    }

    /**
     * Mercury taken out of tailings by sluice or table before they go anywhere.
     *
     * @param share of the tailings [-]
     * @param recovery of their mercury [-]
     */
    record Reprocessed(double share, double recovery) implements Effect {
        /** Checks the shares. */
        public Reprocessed {
            requireShare("reprocessed.share", share);
            requireShare("reprocessed.recovery", recovery);
        }
    }

    /**
     * A concentrate amalgamated in place of whole ore, with the published use per gold.
     *
     * @param share of the ore [-]
     */
    record ConcentrateOnly(double share) implements Effect {
        /** Checks the share. */
        public ConcentrateOnly {
            requireShare("concentrate.share", share);
        }
    }

    /**
     * Gravity alone.
     *
     * @param share of the ore [-]
     */
    record MercuryFree(double share) implements Effect {
        /** Checks the share. */
        public MercuryFree {
            requireShare("mercury-free.share", share);
        }
    }

    /**
     * Dissolved mercury thrown out of leach solution before it is let go.
     *
     * @param share of it [-]
     */
    record Detoxified(double share) implements Effect {
        /** Checks the share. */
        public Detoxified {
            requireShare("detoxified.share", share);
        }
    }

    /**
     * Refuses what is not a share.
     *
     * @param value [-]
     * @throws IllegalArgumentException if it is not from 0 to 1
     */
    static void requireShare(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " is " + value + "; give 0 to 1");
        }
    }
}
