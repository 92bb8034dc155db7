// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

/**
 * One accepted unit of a dimension: SI value = number x toSi + offset.
 *
 * @param name the one spelling used in messages and tables
 * @param toSi factor to SI [-]
 * @param offset added after the factor, only for temperatures [K]
 */
public record Unit(String name, double toSi, double offset) {
    /**
     * A number in this unit as SI.
     *
     * @param number a number [this unit]
     * @return the same [SI]
     */
    public double si(double number) {
        return number * toSi + offset;
    }

    /**
     * An SI value as a number in this unit.
     *
     * @param si value [SI]
     * @return the same [this unit]
     */
    public double number(double si) {
        return (si - offset) / toSi;
    }
}
