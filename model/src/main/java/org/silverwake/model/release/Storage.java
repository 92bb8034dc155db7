// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;

/**
 * When what a site gives to the river goes there. Rates by flow state follow from the year's mean rate; state for state, share
 * of the year times rate, and what is kept, add up to it.
 */
public sealed interface Storage {
    /** At once, the same in all states. */
    record Straight() implements Storage {}

    /**
     * A heap by the bank. What is laid on it follows the work; in states that wash it, what is laid there goes at once, and
     * the stated shares of what the other states laid up goes too.
     *
     * @param washed share of what other states laid up that goes in each state [-], 0 in those that fill it, together at most
     *     1; the rest stays on the heap
     */
    record Heap(List<Double> washed) implements Storage {
        private static final double ROUNDING = 1e-9;

        /** Copies and checks the shares. */
        public Heap {
            washed = List.copyOf(washed);
            double sum = 0;
            for (double share : washed) {
                sum += share;
                if (!(share >= 0)) {
                    throw new IllegalArgumentException("a heap's washed-out share is " + share + "; give 0 to 1");
                }
            }
            if (sum > 1 + ROUNDING || sum == 0) {
                throw new IllegalArgumentException("a heap's washed-out shares sum to " + sum
                        + "; give shares above 0 that sum to at most 1, in the states that wash it");
            }
        }

        /**
         * All of it in the states that are not dry, in proportion to their length (common practice, no source).
         *
         * @param year the year
         * @param dry whether each state fills the heap
         */
        public static Heap washedByLength(FlowYear year, List<Boolean> dry) {
            List<Double> yearShares = year.shares();
            double wet = 0;
            for (int s = 0; s < yearShares.size(); s++) {
                wet += dry.get(s) ? 0 : yearShares.get(s);
            }
            List<Double> washed = new ArrayList<>();
            for (int s = 0; s < yearShares.size(); s++) {
                washed.add(dry.get(s) ? 0 : yearShares.get(s) / wet);
            }
            return new Heap(washed);
        }
    }

    /**
     * A pond that keeps its tailings but for a share.
     *
     * @param escaping share of the year's mass that leaves it [-], 0 to 1
     */
    record Pond(double escaping) implements Storage {
        /** Checks the share. */
        public Pond {
            if (!(escaping >= 0 && escaping <= 1)) {
                throw new IllegalArgumentException("a pond's escaping share is " + escaping + "; give 0 to 1");
            }
        }
    }

    /**
     * What goes, and what is kept.
     *
     * @param byState [kg/s in the state]
     * @param kept mean of the year [kg/s]
     */
    record Released(List<Double> byState, double kept) {
        /** Copies the list. */
        public Released {
            byState = List.copyOf(byState);
        }

        /** Mean of the year [kg/s] of what goes. */
        public double mean(FlowYear year) {
            return year.mean(byState);
        }
    }

    /**
     * What goes in each state.
     *
     * @param mean what is given to the river in the mean of the year [kg/s]
     * @param year shares of the year and of the work by state
     * @throws IllegalArgumentException if a heap states other than as many shares as there are states, or washes in a state
     *     that never is
     */
    default Released release(double mean, FlowYear year) {
        if (this instanceof Heap heap) {
            return wash(heap, mean, year);
        }
        double going = this instanceof Pond pond ? pond.escaping() : 1;
        List<Double> rates = new ArrayList<>();
        for (int s = 0; s < year.size(); s++) {
            rates.add(year.rate(mean * going * year.work().get(s), s));
        }
        return new Released(rates, mean * (1 - going));
    }

    private static Released wash(Heap heap, double mean, FlowYear year) {
        List<Double> washed = heap.washed();
        if (washed.size() != year.size()) {
            throw new IllegalArgumentException("a heap states " + washed.size() + " washed-out shares and there are "
                    + year.size() + " flow states; give one for each");
        }
        double laidUp = 0;
        double sum = 0;
        for (int s = 0; s < washed.size(); s++) {
            laidUp += washed.get(s) == 0 ? mean * year.work().get(s) : 0;
            sum += washed.get(s);
        }
        List<Double> rates = new ArrayList<>();
        for (int s = 0; s < washed.size(); s++) {
            if (washed.get(s) > 0 && year.shares().get(s) == 0) {
                throw new IllegalArgumentException(
                        "a heap is washed in a flow state whose share of the year is 0; give 0 there");
            }
            double going = washed.get(s) == 0 ? 0 : mean * year.work().get(s) + laidUp * washed.get(s);
            rates.add(year.rate(going, s));
        }
        return new Released(rates, laidUp * Math.max(0, 1 - sum));
    }
}
