// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;

/**
 * What a budget buys.
 *
 * @param budget what may be spent [currency/a]
 * @param cost what is spent: the least for the same benefit [currency/a], not above the budget
 * @param kilograms mercury kept out of the river, added up over options [kg/a]
 * @param limitsMet how many limits a full run with these shares meets
 * @param shares share of each option [-], 0 to 1
 */
public record CostPoint(double budget, double cost, double kilograms, int limitsMet, List<Double> shares) {
    public CostPoint {
        shares = List.copyOf(shares);
    }
}
