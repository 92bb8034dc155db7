// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * Mercury that one declared abstraction takes out of the river, background included: what the budget's term "abstracted"
 * holds of it. Low and high are over both bounds and, where a split is not known, both extremes. Immutable.
 */
public final class AbstractedMercury {
    private final SteadyResult result;
    private final int reach;
    private final List<Double> parts;

    private AbstractedMercury(SteadyResult result, int reach, List<Double> parts) {
        this.result = result;
        this.reach = reach;
        this.parts = List.copyOf(parts);
    }

    /**
     * Between two bounds.
     *
     * @param low lower [kg/s], at least 0
     * @param high higher [kg/s], at least {@code low}
     */
    public record Range(double low, double high) {}

    /**
     * Of one abstraction.
     *
     * @param reach the reach at whose head it takes its water
     * @param parts by flow state, the part of the water taken there that this abstraction takes [-], 0 to 1; 1 where it is
     *     alone
     * @throws IllegalArgumentException if there are not as many parts as flow states
     */
    public static AbstractedMercury of(SteadyResult result, int reach, List<Double> parts) {
        if (parts.size() != result.input().stateCount()) {
            throw new IllegalArgumentException("one part per flow state is needed");
        }
        return new AbstractedMercury(result, reach, parts);
    }

    /** Water taken in a flow state, as far as the river has it [m3/s]. */
    public double water(int state) {
        return parts.get(state) * result.input().hydraulics().water(state).abstracted(reach);
    }

    /** Rate in a flow state [kg/s]. */
    public Range inState(int state) {
        return range((bound, variant) -> rate(bound, variant, state));
    }

    /** Mean rate over the year, flow states weighted by their share [kg/s]. */
    public Range overYear() {
        return range((bound, variant) -> {
            double sum = 0;
            for (int s = 0; s < parts.size(); s++) {
                sum += result.input().hydraulics().share(s) * rate(bound, variant, s);
            }
            return sum;
        });
    }

    private double rate(Bound bound, int variant, int state) {
        return parts.get(state) * result.solution(bound, state).abstracted(reach, variant);
    }

    private Range range(ToDoubleBiFunction<Bound, Integer> rate) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : result.bounds()) {
            for (int v = 0; v < result.variants(); v++) {
                double value = rate.applyAsDouble(bound, v);
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return new Range(low, high);
    }
}
