// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.List;
import org.silverwake.cli.run.Rerun;
import org.silverwake.model.screening.ReachValues.Estimate;

/**
 * How far values moved by levers are off a full run.
 *
 * @param everywhere largest relative difference of a low or high estimate from the run's, over measures, states and units [-]
 * @param places the same over units with a place [-]
 * @param least smallest ratio of a moved estimate to the run's, everywhere [-], at most 1
 * @param most largest ratio [-], at least 1
 * @param unit where the difference is largest; -1 for nowhere
 * @param measure of what
 */
public record Deviation(double everywhere, double places, double least, double most, int unit, int measure) {
    /**
     * Compares.
     *
     * @param factors by contributor [-]
     * @param corrections of the levers that have gone some way
     * @param way how far those have gone [-]
     * @param run with the same releases, its solids and its water
     */
    static Deviation of(Linear linear, double[] factors, List<Correction> corrections, double way, Rerun run) {
        Search search = new Search(linear);
        ScreenedValues full = new ScreenedValues(run.screening().values(), linear.units());
        ScreenedValues own = new ScreenedValues(linear.outcome().screening().values(), linear.units());
        for (int m = 0; m < linear.measures().size(); m++) {
            Measured measured = linear.measures().get(m);
            for (int s = 0; linear.isMoved(measured) && s < linear.sets(m).size(); s++) {
                double[][] moved = linear.sets(m).get(s).at(factors);
                for (int u = 0; u < linear.units().count(); u++) {
                    boolean both = own.isAssessed(u) && full.isAssessed(u) && full.has(measured, s, u);
                    if (both && !Double.isNaN(moved[0][u])) {
                        double low = moved[0][u];
                        double high = moved[1][u];
                        for (Correction correction : corrections) {
                            low *= correction.at(m, s, 0, u, way);
                            high *= correction.at(m, s, 1, u, way);
                        }
                        search.see(m, u, low, full.of(measured, Estimate.LAID_DOWN, s, u));
                        search.see(m, u, high, full.of(measured, Estimate.CARRIED_THROUGH, s, u));
                    }
                }
            }
        }
        return new Deviation(search.everywhere, search.places, search.least, search.most, search.unit, search.measure);
    }

    /** The largest so far. */
    private static final class Search {
        private final boolean[] hasPlace;
        private double everywhere;
        private double places;
        private double least = 1;
        private double most = 1;
        private int unit = -1;
        private int measure = -1;

        Search(Linear linear) {
            this.hasPlace = new boolean[linear.units().count()];
            linear.outcome()
                    .screening()
                    .receptors()
                    .forEach(place -> place.reach()
                            .ifPresent(reach -> hasPlace[linear.units().ofPlace(reach)] = true));
        }

        void see(int m, int u, double moved, double full) {
            double off = full > 0 ? Math.abs(moved - full) / full : 0;
            least = full > 0 ? Math.min(least, moved / full) : least;
            most = full > 0 ? Math.max(most, moved / full) : most;
            if (off > everywhere) {
                everywhere = off;
                unit = u;
                measure = m;
            }
            places = hasPlace[u] ? Math.max(places, off) : places;
        }
    }
}
