// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;

/**
 * How far each site's release falls.
 *
 * @param cuts share of each site's release that must go [-], 0 to 1
 * @param kilograms what that keeps out together [kg/a]
 * @param cost what that costs together [currency/a]; 0 where no costs were given
 * @param outcomes what becomes of each limit at present solids and water
 */
public record Cut(List<Double> cuts, double kilograms, double cost, List<Outcome> outcomes) {
    public Cut {
        cuts = List.copyOf(cuts);
        outcomes = List.copyOf(outcomes);
    }

    /** Whether all limits are met. */
    public boolean isSufficient() {
        return outcomes.stream().allMatch(Outcome::isMet);
    }

    /** Limits that even full cuts of the sites do not meet. */
    public List<Outcome> remaining() {
        return outcomes.stream().filter(o -> !o.isMet()).toList();
    }
}
