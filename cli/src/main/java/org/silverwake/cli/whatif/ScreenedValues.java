// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Estimate;

/** What a run screened of a measure, by unit: the largest among the parts of a unit that are assessed. */
final class ScreenedValues {
    private final ReachValues values;
    private final ReachUnits units;

    ScreenedValues(ReachValues values, ReachUnits units) {
        this.values = values;
        this.units = units;
    }

    /** Whether some part of a unit is assessed. */
    boolean isAssessed(int unit) {
        return values.notAssessed(units.assessed(unit, values)[0]).isEmpty();
    }

    /** Whether there is a value. */
    boolean has(Measured measured, int state, int unit) {
        for (int r : units.assessed(unit, values)) {
            if (hasAt(measured, state, r)) {
                return true;
            }
        }
        return false;
    }

    private boolean hasAt(Measured measured, int state, int reach) {
        return switch (measured.kind()) {
            case WATER, ON_SOLIDS -> values.has(measured.water().orElseThrow(), state, reach);
            case BED -> values.hasBed() && !Double.isNaN(values.bed(Estimate.BACKGROUND, reach));
            case FISH -> values.hasFish() && !Double.isNaN(values.fish(Estimate.BACKGROUND, reach));
        };
    }

    /** Parts of a unit that are assessed and have a value. */
    int[] parts(Measured measured, int state, int unit) {
        return java.util.Arrays.stream(units.assessed(unit, values))
                .filter(r -> hasAt(measured, state, r))
                .toArray();
    }

    /** The value [kg/m3 or kg/kg]; 0 where there is none. */
    double of(Measured measured, Estimate estimate, int state, int unit) {
        double largest = 0;
        for (int r : parts(measured, state, unit)) {
            double value = switch (measured.kind()) {
                case WATER, ON_SOLIDS -> values.value(measured.water().orElseThrow(), estimate, state, r);
                case BED -> values.bed(estimate, r);
                case FISH -> values.fish(estimate, r);
            };
            largest = Math.max(largest, value);
        }
        return largest;
    }
}
