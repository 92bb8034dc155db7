// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/** How the content of a reach's bed is read from the run: deposition over deposition, or what the bed holds over its solids. */
final class BedReadings {
    private final SteadyResult result;
    private final int forms;

    BedReadings(SteadyResult result) {
        this.result = result;
        this.forms = result.input().layout().count();
    }

    /** Whether a bound has a bed content in a reach. */
    boolean isThere(Bound bound, int reach) {
        return bound == Bound.WITH_BED ? result.bedAnswer().orElseThrow().hasBed(reach) : length(bound, reach) > 0;
    }

    /** Length of cells in which the bed of a reach is assessed [m]. */
    private double length(Bound bound, int reach) {
        double length = 0;
        for (int c : result.cellsOf(reach)) {
            if (bound == Bound.WITH_BED || result.depositing(bound, c) > 0) {
                length += result.cells().length(c);
            }
        }
        return length;
    }

    private interface PerCell {
        void add(int cell, double weight);
    }

    /** Hands out every cell that counts, and what mercury in it counts for: its part of the length over its solids. */
    private void cells(Bound bound, int reach, PerCell each) {
        double length = length(bound, reach);
        for (int c : result.cellsOf(reach)) {
            double solids = bound == Bound.WITH_BED
                    ? result.bedAnswer().orElseThrow().over().exchange().solids(c)
                    : result.depositing(bound, c);
            if (solids > 0) {
                each.add(c, result.cells().length(c) / length / solids);
            }
        }
    }

    Reading reading(Bound bound, int reach) {
        Reading reading = new Reading(result.cells().count(), forms);
        cells(bound, reach, (c, weight) -> {
            for (int form = 0; form < forms; form++) {
                if (bound == Bound.WITH_BED) {
                    reading.stock(c, form, weight);
                } else {
                    time(reading, bound, c, form, weight);
                }
            }
        });
        return reading;
    }

    private void time(Reading reading, Bound bound, int cell, int form, double weight) {
        for (int s = 0; s < result.input().stateCount(); s++) {
            StateSolution solution = result.solution(bound, s);
            if (solution.water().isWet(cell)) {
                double share = result.input().hydraulics().share(s);
                reading.time(s, cell, form, weight * share * solution.rates().gross(cell, form));
            }
        }
    }

    /** Background of the content [kg/kg dry]. */
    double background(Bound bound, int reach) {
        if (bound == Bound.WITH_BED) {
            return result.bedAnswer().orElseThrow().backgroundContent(reach);
        }
        double[] sum = new double[1];
        cells(bound, reach, (c, weight) -> {
            for (int s = 0; s < result.input().stateCount(); s++) {
                StateSolution solution = result.solution(bound, s);
                if (solution.water().isWet(c)) {
                    double share = result.input().hydraulics().share(s);
                    sum[0] += weight * share * solution.backgroundDeposition(c);
                }
            }
        });
        return sum[0];
    }
}
