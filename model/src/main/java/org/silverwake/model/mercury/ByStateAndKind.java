// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.model.water.ReachKind;

/**
 * A number that may differ by flow state and by kind of reach.
 *
 * @param byState one list per flow state, each with one number per {@link ReachKind} in its order; a single list holds in
 *     every state
 */
public record ByStateAndKind(List<List<Double>> byState) {
    /** Copies the lists. */
    public ByStateAndKind {
        byState = byState.stream().map(List::copyOf).toList();
    }

    /** Finds the number of one flow state and kind. */
    public interface Source {
        /** The number, in the unit of what is asked for [any]. */
        double at(int state, ReachKind kind);
    }

    /** The same everywhere [any]. */
    public static ByStateAndKind same(double value) {
        return of(1, (state, kind) -> value);
    }

    /** As found for each flow state and kind. */
    public static ByStateAndKind of(int states, Source source) {
        return new ByStateAndKind(IntStream.range(0, states)
                .mapToObj(state -> Arrays.stream(ReachKind.values())
                        .map(kind -> source.at(state, kind))
                        .toList())
                .toList());
    }

    /** The number of a flow state and kind [any]. */
    public double at(int state, ReachKind kind) {
        return byState.get(byState.size() == 1 ? 0 : state).get(kind.ordinal());
    }
}
