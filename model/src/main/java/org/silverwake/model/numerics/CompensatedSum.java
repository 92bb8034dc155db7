// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

/** A sum that keeps what rounding drops (Neumaier 1974, eq. for the improved Kahan-Babuska sum). */
public final class CompensatedSum {
    private double sum;
    private double rest;

    /** Adds a term [any unit]. */
    public void add(double term) {
        double next = sum + term;
        rest += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
        sum = next;
    }

    /** The sum so far [the terms' unit]. */
    public double value() {
        return sum + rest;
    }
}
