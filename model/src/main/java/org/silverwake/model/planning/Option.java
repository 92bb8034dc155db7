// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;
import java.util.Objects;

/**
 * One practice at one site or group of sites, to be adopted or not.
 *
 * @param name what changes
 * @param concerns site or group it concerns
 * @param group options of the same group exclude one another: of their shares at most 1 in all; empty where it excludes none
 * @param cost what it costs when adopted in full [currency/a], negative where it pays for itself
 * @param kilograms mercury it keeps out of the river when adopted in full [kg/a]; adds up over options, which overstates
 *     what two of them save at one site
 */
public record Option(String name, String concerns, String group, CostRange cost, double kilograms) {
    public Option {
        Objects.requireNonNull(name);
        Objects.requireNonNull(concerns);
        Objects.requireNonNull(group);
        Objects.requireNonNull(cost);
        if (!Double.isFinite(kilograms)) {
            throw new IllegalArgumentException("Kilograms kept out of " + name + " are not a number: " + kilograms);
        }
    }

    /** Whether this and another option may not be adopted together in full. */
    public boolean excludes(Option other) {
        return !group.isEmpty() && group.equals(other.group);
    }

    /**
     * Kilograms kept out by several options, each at its share.
     *
     * @param shares share of each option [-], 0 to 1
     */
    static double kilograms(List<Option> options, double[] shares) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * options.get(i).kilograms();
        }
        return sum;
    }
}
