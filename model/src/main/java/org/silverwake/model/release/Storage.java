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
    /** At once, as the work goes. */
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
    }

    /**
     * A heap by the bank of which nothing is known but when it fills: all of it is washed out in the other states, in proportion
     * to their length (common practice, no source; told as assumed).
     *
     * @param filled for each state, whether the heap fills in it
     */
    record HeapByLength(List<Boolean> filled) implements Storage {
        /** Copies the list. */
        public HeapByLength {
            filled = List.copyOf(filled);
        }

        /**
         * The heap with its shares.
         *
         * @throws IllegalArgumentException if the list has another length than the year, or no state washes it
         */
        public Heap in(FlowYear year) {
            double washing = 0;
            for (int s = 0; s < year.size(); s++) {
                if (filled.size() != year.size()) {
                    throw new IllegalArgumentException("a heap says of " + filled.size()
                            + " flow states whether it fills," + " and there are " + year.size() + "; say it of each");
                }
                washing += filled.get(s) ? 0 : year.shares().get(s);
            }
            if (washing == 0) {
                throw new IllegalArgumentException("a heap fills in all flow states; name one that washes it out");
            }
            List<Double> washed = new ArrayList<>();
            for (int s = 0; s < year.size(); s++) {
                washed.add(filled.get(s) ? 0 : year.shares().get(s) / washing);
            }
            return new Heap(washed);
        }
    }

    /**
     * A pond that keeps its tailings but for a share, which leaves it alike through the year.
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
        if (this instanceof HeapByLength heap) {
            return wash(heap.in(year), mean, year);
        }
        if (this instanceof Pond pond) {
            List<Double> rates = year.shares().stream()
                    .map(share -> share == 0 ? 0 : mean * pond.escaping())
                    .toList();
            return new Released(rates, mean * (1 - pond.escaping()));
        }
        return new Released(year.spread(mean), 0);
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
