// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Averaging.StateValue;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.transport.SteadyResult;

/**
 * Methylmercury in filtered water over the year, by reach: means of the flow states that have water, weighted by their shares.
 * NaN in a reach that is always dry.
 *
 * @param low low estimate [kg/m3]
 * @param high high estimate [kg/m3]
 * @param background background alone [kg/m3]
 */
record MethylWater(List<Double> low, List<Double> high, List<Double> background) {
    private static final Measure METHYL = Measure.FILTERED_METHYL;

    MethylWater {
        low = List.copyOf(low);
        high = List.copyOf(high);
        background = List.copyOf(background);
    }

    private interface Value {
        double at(int state, int reach);
    }

    static MethylWater of(SteadyResult result) {
        return new MethylWater(
                year(result, (s, r) -> result.low(s, r, METHYL.observable())),
                year(result, (s, r) -> result.high(s, r, METHYL.observable())),
                year(result, (s, r) -> result.background(s, r, METHYL.observable())));
    }

    private static List<Double> year(SteadyResult result, Value value) {
        List<Double> means = new ArrayList<>();
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
            List<StateValue> wet = new ArrayList<>();
            for (int s = 0; s < result.input().stateCount(); s++) {
                double share = result.input().hydraulics().share(s);
                if (result.isWet(s, r) && share > 0) {
                    wet.add(new StateValue(s, share, value.at(s, r)));
                }
            }
            means.add(wet.isEmpty() ? Double.NaN : Averaging.YEAR.compare(wet).value());
        }
        return means;
    }

    /** The same, each reach's value the mean over the range of its fish. */
    MethylWater over(FishRange range) {
        return new MethylWater(range.means(low), range.means(high), range.means(background));
    }

    boolean isDry(int reach) {
        return Double.isNaN(high.get(reach));
    }
}
