// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.StateLayout;

/** What the bed's active layer holds: kg by cell, form and member (variants of the split, then the background). */
final class BedStocks {
    private final int forms;
    private final int members;
    private final double[] stock;
    private final double[] methylation;
    private final double[] residence;
    private final double[] staying;

    /**
     * Stocks at index (cell x forms + form) x members + member [kg], share of methylation by cell [-], mean time in the bed by
     * cell [s], what all beds take in and never give up again by member [kg/s].
     */
    BedStocks(
            StateLayout layout,
            int members,
            double[] stock,
            double[] methylation,
            double[] residence,
            double[] staying) {
        this(layout.count(), members, stock, methylation, residence, staying);
    }

    private BedStocks(
            int forms, int members, double[] stock, double[] methylation, double[] residence, double[] staying) {
        this.forms = forms;
        this.members = members;
        this.stock = stock;
        this.methylation = methylation;
        this.residence = residence;
        this.staying = staying;
    }

    /** Stock [kg]. */
    double at(int cell, int form, int member) {
        return stock[(cell * forms + form) * members + member];
    }

    /** Released mercury and background together in a variant [kg]. */
    double at(int cell, int form, int variant, boolean withBackground) {
        return at(cell, form, variant) + (withBackground ? at(cell, form, members - 1) : 0);
    }

    /** Share of the stated methylation that the ceiling lets go on [-]. */
    double methylation(int cell) {
        return methylation[cell];
    }

    /** How long released mercury stays in a cell's bed in the mean [s]; 0 where none is, infinite where some never leaves. */
    double residence(int cell) {
        return residence[cell];
    }

    /** What all beds take in in balance and never give up again [kg/s]. */
    double staying(int member) {
        return staying[member];
    }

    /** Number of members [-]. */
    int members() {
        return members;
    }

    /** Other stocks of the same bed. */
    BedStocks with(double[] other) {
        return new BedStocks(forms, members, other, methylation, residence, staying);
    }

    /** The flat array. */
    double[] flat() {
        return stock;
    }
}
