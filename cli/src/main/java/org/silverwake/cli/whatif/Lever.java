// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.List;
import java.util.Optional;
import org.silverwake.model.release.Spread;

/**
 * What a person can move.
 *
 * @param label words
 * @param kind site, group or practice
 * @param ends what it makes of contributors at its far end
 * @param exact whether values follow to rounding
 * @param full what tailings and water do besides, where full runs were made: of a practice that is not exact as it is moved, of
 *     sites and groups where they close altogether
 * @param kilograms to the river of what it acts on, now and at its far end [kg/yr]
 * @param gain practices: what they keep from the air, cost and leave
 * @param note words, "" for none
 */
public record Lever(
        String label,
        Kind kind,
        List<End> ends,
        boolean exact,
        Optional<Full> full,
        Kilograms kilograms,
        Optional<PracticeGain> gain,
        String note) {
    /** Copies the list. */
    public Lever {
        ends = List.copyOf(ends);
    }

    /** Kinds of levers. */
    public enum Kind {
        SITE,
        GROUP,
        PRACTICE;

        /** Word in the data. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * What full runs say.
     *
     * @param uncorrected how far values in proportion to mercury are off at the far end
     * @param correction what makes them right there
     * @param halfway how far they then are off half way; empty where no run was made there
     */
    public record Full(Deviation uncorrected, Correction correction, Optional<Deviation> halfway) {}

    /** Factor of a contributor at the lever's far end [-]. */
    public record End(int contributor, double factor) {}

    /** To the river [kg/yr]. */
    public record Kilograms(double now, double atEnd) {}

    /** Kept from the air [kg/yr]; cost, and what is left after it with what is given back [money/yr], where known. */
    public record PracticeGain(double air, Optional<Spread> cost, Optional<Spread> left) {}
}
