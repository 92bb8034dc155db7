// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.Rerun;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.model.screening.ReachValues.Estimate;

/** What a full run screened, by the reaches that a page of an audience shows. */
public final class FullValues {
    private FullValues() {}

    /** Low and high of a measure in a state. */
    public static double[][] of(Outcome outcome, Rerun run, Audience audience, int measure, int state) {
        ReachUnits units = ReachUnits.of(outcome, audience);
        ScreenedValues values = new ScreenedValues(run.screening().values(), units);
        Measured measured = Measured.of(outcome).get(measure);
        double[][] found = new double[2][units.count()];
        for (int u = 0; u < units.count(); u++) {
            found[0][u] = values.of(measured, Estimate.LAID_DOWN, state, u);
            found[1][u] = values.of(measured, Estimate.CARRIED_THROUGH, state, u);
        }
        return found;
    }
}
