// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.numerics.CompensatedSum;

/**
 * A year of flow states, and how a site's work spreads over it.
 *
 * @param shares shares of the year by state [-], summing to 1
 * @param work shares of the year's work done in each state [-], summing to 1; 0 in a state that never is
 */
public record FlowYear(List<Double> shares, List<Double> work) {
    private static final double ROUNDING = 1e-6;

    /** Copies and checks the shares, and makes them sum to 1 exactly. */
    public FlowYear {
        shares = whole("shares of the year", shares);
        work = whole("shares of the work", work);
        if (shares.size() != work.size()) {
            throw new IllegalArgumentException("there are " + shares.size() + " shares of the year and " + work.size()
                    + " of the work; give one of each for each flow state");
        }
        for (int s = 0; s < shares.size(); s++) {
            if (shares.get(s) == 0 && work.get(s) > 0) {
                throw new IllegalArgumentException("work is done in a flow state whose share of the year is 0; give 0");
            }
        }
    }

    /**
     * A year in which work goes on alike in all states.
     *
     * @param shares shares of the year by state [-], summing to 1
     */
    public static FlowYear even(List<Double> shares) {
        return new FlowYear(shares, shares);
    }

    private static List<Double> whole(String what, List<Double> shares) {
        double sum = sum(shares);
        if (!(Math.abs(sum - 1) <= ROUNDING) || shares.stream().anyMatch(share -> !(share >= 0))) {
            throw new IllegalArgumentException(what + " sum to " + sum + "; give shares from 0 that sum to 1");
        }
        return shares.stream().map(share -> share / sum).toList();
    }

    private static double sum(List<Double> values) {
        CompensatedSum sum = new CompensatedSum();
        values.forEach(sum::add);
        return sum.value();
    }

    /** Number of flow states. */
    public int size() {
        return shares.size();
    }

    /**
     * Mean of the year of something by state.
     *
     * @param byState its value in each state [any]
     * @return its mean [the same]
     */
    public double mean(List<Double> byState) {
        List<Double> parts = new ArrayList<>();
        for (int s = 0; s < shares.size(); s++) {
            parts.add(shares.get(s) * byState.get(s));
        }
        return sum(parts);
    }

    /** The rate in a state that brings this part of the year's mean; 0 in a state that never is. */
    double rate(double partOfMean, int state) {
        return shares.get(state) == 0 ? 0 : partOfMean / shares.get(state);
    }

    /** Something that follows the work, by state. */
    List<Double> spread(double mean) {
        List<Double> rates = new ArrayList<>();
        for (int s = 0; s < shares.size(); s++) {
            rates.add(rate(mean * work.get(s), s));
        }
        return rates;
    }
}
