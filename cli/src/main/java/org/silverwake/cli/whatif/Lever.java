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
 * @param error how far they are off a full run at its far end, where they are not exact and a run was made
 * @param closed sites and groups: how far they are off where tailings and water go too
 * @param kilograms to the river of what it acts on, now and at its far end [kg/yr]
 * @param gain practices: what they keep from the air, cost and leave
 * @param note words, "" for none
 */
record Lever(
        String label,
        Kind kind,
        List<End> ends,
        boolean exact,
        Optional<Deviation> error,
        Optional<Deviation> closed,
        Kilograms kilograms,
        Optional<PracticeGain> gain,
        String note) {
    Lever {
        ends = List.copyOf(ends);
    }

    /** Kinds of levers. */
    enum Kind {
        SITE,
        GROUP,
        PRACTICE;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Factor of a contributor at the lever's far end [-]. */
    record End(int contributor, double factor) {}

    /** To the river [kg/yr]. */
    record Kilograms(double now, double atEnd) {}

    /** Kept from the air [kg/yr]; cost, and what is left after it with what is given back [money/yr], where known. */
    record PracticeGain(double air, Optional<Spread> cost, Optional<Spread> left) {}
}
