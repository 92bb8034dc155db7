// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.Optional;
import org.silverwake.model.release.SiteRelease;

/**
 * What the river goes through over the years.
 *
 * @param years how many [-], at least 1
 * @param eras what sites release, from the first year on, in order; the first begins in year 0
 * @param order flow states in the order in which they follow one another in a year; empty where all are taken together, each
 *     with its share
 * @param content mercury content of the bed by reach in the beginning [kg/kg dry], all of it exchangeable, at least that of
 *     the background; empty where the bed begins with its background alone
 */
public record History(int years, List<Era> eras, List<Integer> order, Optional<List<Double>> content) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is no era from year 0 on, or eras are out of order
     */
    public History {
        eras = List.copyOf(eras);
        order = List.copyOf(order);
        content = content.map(List::copyOf);
        if (years < 1 || eras.isEmpty() || eras.get(0).from() != 0) {
            throw new IllegalArgumentException("a history needs years, and an era that begins in year 0");
        }
        for (int e = 1; e < eras.size(); e++) {
            if (eras.get(e).from() <= eras.get(e - 1).from()) {
                throw new IllegalArgumentException("eras must follow one another");
            }
        }
    }

    /**
     * A time in which sites release what they do without a change.
     *
     * @param from its first year [-], counted from 0
     * @param sites releases
     */
    public record Era(int from, List<SiteRelease> sites) {
        /** Copies the list. */
        public Era {
            sites = List.copyOf(sites);
        }
    }

    /** Whether all flow states are taken together in every step. */
    public boolean isTogether() {
        return order.isEmpty();
    }
}
