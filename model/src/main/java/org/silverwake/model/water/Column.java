// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.BitSet;

/** One attribute of all reaches, with gaps: a value is either there or not, never a stand-in number. */
public final class Column {
    private final double[] values;
    private final BitSet present = new BitSet();

    /** An empty column for a number of reaches [-]. */
    public Column(int size) {
        this.values = new double[size];
    }

    /** A column with these values, all present [any unit]. */
    public static Column of(double... values) {
        Column column = new Column(values.length);
        for (int i = 0; i < values.length; i++) {
            column.put(i, values[i]);
        }
        return column;
    }

    /**
     * Puts a value while the column is being built.
     *
     * @param reach reach index [-]
     * @param value finite [any unit]
     */
    public void put(int reach, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("reach " + reach + ": " + value + " is not a number");
        }
        values[reach] = value;
        present.set(reach);
    }

    /** Whether a reach has a value. */
    public boolean has(int reach) {
        return present.get(reach);
    }

    /** The value of a reach, in the column's unit [SI]. */
    public double at(int reach) {
        if (!present.get(reach)) {
            throw new IllegalStateException("reach " + reach + " has no value");
        }
        return values[reach];
    }

    /** Number of reaches with a value [-]. */
    public int count() {
        return present.cardinality();
    }
}
