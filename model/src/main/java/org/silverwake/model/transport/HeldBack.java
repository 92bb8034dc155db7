// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * The exchangeable mercury by which methylation is held back, cell by cell and year by year: kept while one run goes through
 * the years, and used in place of its own by another that carries a part of the same mercury.
 */
final class HeldBack {
    private enum Use {
        FORGET,
        KEEP,
        FOLLOW
    }

    private final List<double[]> years;
    private final Use use;
    private int next;

    private HeldBack(List<double[]> years, Use use) {
        this.years = years;
        this.use = use;
    }

    /** Of a run that nothing follows. */
    static HeldBack forgotten() {
        return new HeldBack(List.of(), Use.FORGET);
    }

    /** Of a run that others will follow. */
    static HeldBack kept() {
        return new HeldBack(new ArrayList<>(), Use.KEEP);
    }

    /** The same years once more, for another run. */
    HeldBack again() {
        return new HeldBack(years, Use.FOLLOW);
    }

    /** The next year's exchangeable mercury by cell [kg]: a run's own, or that kept before. */
    double[] year(int cells, IntToDoubleFunction own) {
        if (use == Use.FOLLOW) {
            return years.get(next++);
        }
        double[] year = new double[cells];
        Arrays.setAll(year, own);
        if (use == Use.KEEP) {
            years.add(year);
        }
        return year;
    }
}
