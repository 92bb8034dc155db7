// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * The steady run: cells, then for every flow state hydraulics, background, and solids and mercury in both bounds. Refuses to
 * return a budget that does not close to 1e-9.
 */
public final class SteadyRun {
    /** Largest relative closure that is accepted [-]. */
    public static final double CLOSURE = 1e-9;

    private SteadyRun() {}

    /**
     * Runs.
     *
     * @throws OutsideModelException if a reach holds more than 200 g/L of solids
     * @throws IllegalStateException if a budget does not close
     */
    public static SteadyResult run(TransportInput input) {
        Cells cells = CellCutter.cut(input);
        SteadyResult result = solve(input, cells);
        return result;
    }

    /** Runs on cells cut once more in two, to show what cutting changes. */
    public static double changeOnHalving(TransportInput input, SteadyResult result) {
        SteadyResult finer = solve(input, result.cells().finer(2));
        double worst = 0;
        double released = result.largestReleasedLoad();
        for (int s = 0; s < input.stateCount(); s++) {
            StateSolution coarse = result.solution(Bound.LAID_DOWN, s);
            StateSolution fine = finer.solution(Bound.LAID_DOWN, s);
            for (int r = 0; r < input.hydraulics().reaches().size(); r++) {
                for (int v = 0; v < coarse.variants(); v++) {
                    double a = 0;
                    double b = 0;
                    for (int form = 0; form < input.layout().count(); form++) {
                        a += coarse.loadOut(r, form, v);
                        b += fine.loadOut(r, form, v);
                    }
                    if (b > 0.01 * released) {
                        worst = Math.max(worst, Math.abs(a - b) / b);
                    }
                }
            }
        }
        return worst;
    }

    static SteadyResult solve(TransportInput input, Cells cells) {
        List<StateSolution> laidDown = new ArrayList<>();
        List<StateSolution> carried = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            StateHydraulics water = StateHydraulics.of(input.hydraulics(), cells, s);
            BackgroundSweep background = BackgroundSweep.run(input, cells, water);
            laidDown.add(StateSolution.solve(input, cells, water, background, Bound.LAID_DOWN));
            carried.add(StateSolution.solve(input, cells, water, background, Bound.CARRIED_THROUGH));
        }
        SteadyResult result = new SteadyResult(input, cells, laidDown, carried);
        double closure = result.worstClosure();
        if (!(closure <= CLOSURE)) {
            throw new IllegalStateException(
                    "the mercury budget does not close: relative " + closure + ", allowed " + CLOSURE);
        }
        return result;
    }
}
