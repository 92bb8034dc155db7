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

    /** Stocks at index (cell x forms + form) x members + member [kg], share of methylation by cell [-]. */
    BedStocks(StateLayout layout, int members, double[] stock, double[] methylation) {
        this.forms = layout.count();
        this.members = members;
        this.stock = stock;
        this.methylation = methylation;
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

    /** Number of members [-]. */
    int members() {
        return members;
    }

    /** The flat array. */
    double[] flat() {
        return stock;
    }
}
