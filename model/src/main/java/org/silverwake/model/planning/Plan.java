// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;

/**
 * A choice of options and what it does.
 *
 * @param shares share of each option [-], 0 to 1, in their order
 * @param cost what they cost together [currency/a]
 * @param kilograms what they keep out of the river together, added up over options [kg/a]
 * @param outcomes what becomes of each limit, by a full run with the plan
 * @param runs full runs that the search looked at, after the one with no option
 * @param settled whether the last linear problem named a set that had been run already; else the rounds ran out
 * @param proven whether no linear problem was left before its least cost was proven
 * @param exhaustive whether every set that could be better was run in full: then no better one exists, linear or not
 */
public record Plan(
        List<Double> shares,
        CostRange cost,
        double kilograms,
        List<Outcome> outcomes,
        int runs,
        boolean settled,
        boolean proven,
        boolean exhaustive) {
    public Plan {
        shares = List.copyOf(shares);
        outcomes = List.copyOf(outcomes);
    }

    /**
     * Whether all limits are met in the full run. Else no set that was run suffices and the plan is the least exceeding of them;
     * that none at all suffices is certain only where {@link #exhaustive} is true, or the values are linear in the shares.
     */
    public boolean isSufficient() {
        return outcomes.stream().allMatch(Outcome::isMet);
    }

    /** Limits that are not met, for which something remains over. */
    public List<Outcome> remaining() {
        return outcomes.stream().filter(o -> !o.isMet()).toList();
    }

    /** Highest value over its allowed one [-]; 0 where there are no limits. */
    public double worstRatio() {
        return outcomes.stream().mapToDouble(Outcome::ratio).max().orElse(0);
    }
}
