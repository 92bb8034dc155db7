// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/**
 * The cheapest plan by the middle costs, and whether another would be cheaper if costs came out low or high.
 *
 * @param low plan that is cheapest when all costs are low
 * @param middle plan that is cheapest by middle costs: the one to show
 * @param high plan that is cheapest when all costs are high
 */
public record PlanRange(Plan low, Plan middle, Plan high) {
    /** The plan that is cheapest at one end of the costs. */
    public Plan at(Level level) {
        return switch (level) {
            case LOW -> low;
            case MIDDLE -> middle;
            case HIGH -> high;
        };
    }

    /**
     * What the middle plan costs more than the cheapest one if costs come out at one end [currency/a], ≥ 0; 0 where the middle
     * plan stays the cheapest, or where one of the two does not suffice and costs do not compare.
     */
    public double regret(Level level) {
        if (at(level).isSufficient() != middle.isSufficient()) {
            return 0;
        }
        return Math.max(0, middle.cost().at(level) - at(level).cost().at(level));
    }
}
