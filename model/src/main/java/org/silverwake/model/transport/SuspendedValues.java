// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.StateSolution.Place;

/**
 * Suspended solids of each reach, and the mercury on them: the largest among a reach's cells. Of what mercury is told by the
 * part of whole water that it is; its particulate part is what no filter lets pass.
 */
public final class SuspendedValues {
    private final SteadyResult result;
    private final StateLayout layout;

    /** Of a result. */
    public SuspendedValues(SteadyResult result) {
        this.result = result;
        this.layout = result.input().layout();
    }

    /** Suspended solids, tailings included [kg/m3]; there must be water. */
    public double sediment(Bound bound, int state, int reach) {
        double largest = 0;
        StateSolution solution = result.solution(bound, state);
        for (int c : result.cellsOf(reach)) {
            if (solution.water().isWet(c)) {
                largest = Math.max(largest, solution.sediment(c));
            }
        }
        return largest;
    }

    /** Suspended solids without tailings [kg/m3]. */
    public double backgroundSediment(int state, int reach) {
        double largest = 0;
        StateSolution solution = result.solution(Bound.LAID_DOWN, state);
        for (int c : result.cellsOf(reach)) {
            if (solution.water().isWet(c)) {
                largest = Math.max(largest, solution.sediment(c) - solution.tailings(c));
            }
        }
        return largest;
    }

    /** Mercury on suspended solids [kg/kg dry], lowest over bounds and variants; there must be solids. */
    public double contentLow(int state, int reach, SampledPart whole) {
        double low = Double.POSITIVE_INFINITY;
        for (Bound bound : result.bounds(whole)) {
            for (int v = 0; v < result.variants(); v++) {
                low = Math.min(low, content(bound, v, state, reach, whole));
            }
        }
        return low;
    }

    /** Mercury on suspended solids [kg/kg dry], highest over bounds and variants. */
    public double contentHigh(int state, int reach, SampledPart whole) {
        double high = 0;
        for (Bound bound : result.bounds(whole)) {
            for (int v = 0; v < result.variants(); v++) {
                high = Math.max(high, content(bound, v, state, reach, whole));
            }
        }
        return high;
    }

    /** The same of background mercury alone on background solids [kg/kg dry]. */
    public double backgroundContent(int state, int reach, SampledPart whole) {
        double largest = 0;
        StateSolution solution = result.solution(Bound.CARRIED_THROUGH, state);
        SampledPart held = (states, form, filtered) -> whole.weight(states, form, filtered) * (1 - filtered);
        for (int c : result.cellsOf(reach)) {
            double solids = solution.water().isWet(c) ? solution.sediment(c) : 0;
            for (Place place : Place.values()) {
                if (solids > 0 && solution.hasWater(c, place)) {
                    largest = Math.max(largest, solution.background(held, c, place) / solids);
                }
            }
        }
        return largest;
    }

    private double content(Bound bound, int variant, int state, int reach, SampledPart whole) {
        StateSolution solution = result.solution(bound, state);
        double largest = 0;
        for (int c : result.cellsOf(reach)) {
            double solids = solution.water().isWet(c) ? solution.sediment(c) : 0;
            if (solids > 0) {
                double particulate = 0;
                for (int form = 0; form < layout.count(); form++) {
                    particulate -= weight(whole, solution, c, form)
                            * solution.filteredShare(c, form)
                            * solution.mean(c, form, variant);
                }
                for (int form = 0; form < layout.count(); form++) {
                    particulate += weight(whole, solution, c, form) * solution.mean(c, form, variant);
                }
                largest = Math.max(largest, particulate / solids);
            }
        }
        return largest;
    }

    private double weight(SampledPart part, StateSolution solution, int cell, int form) {
        return part.weight(layout, form, solution.filteredShare(cell, form));
    }
}
