// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.silverwake.cli.run.Rerun;
import org.silverwake.model.screening.ReachValues.Estimate;

/**
 * What tailings and water that go with the mercury make of values at the far end of a lever: a full run's low and high estimate
 * over those in proportion to mercury alone. In between it is taken to the power of the way; that is chosen, since it is
 * exact at both ends and never negative.
 */
public final class Correction {
    /** Ratios nearer to 1 are rounding: half of the 1e-6 that a page calls exact. */
    private static final double ROUNDING = 5e-7;

    private final List<List<float[][]>> ratios;
    private final BitSet units;

    private Correction(List<List<float[][]>> ratios, BitSet units) {
        this.ratios = ratios;
        this.units = units;
    }

    /**
     * Of a lever.
     *
     * @param factors of contributors at its far end [-]
     * @param run the full run there
     */
    static Correction of(Linear linear, double[] factors, Rerun run) {
        List<List<float[][]>> ratios = new ArrayList<>();
        BitSet units = new BitSet();
        for (int m = 0; m < linear.measures().size(); m++) {
            List<float[][]> own = new ArrayList<>();
            for (int s = 0;
                    linear.isMoved(linear.measures().get(m))
                            && s < linear.sets(m).size();
                    s++) {
                own.add(ratios(linear, m, s, factors, run, units));
            }
            ratios.add(own);
        }
        return new Correction(ratios, units);
    }

    private static float[][] ratios(Linear linear, int m, int s, double[] factors, Rerun run, BitSet units) {
        Measured measured = linear.measures().get(m);
        ScreenedValues full = new ScreenedValues(run.screening().values(), linear.units());
        double[][] moved = linear.sets(m).get(s).at(factors);
        int n = linear.units().count();
        float[][] ratios = new float[2][n];
        for (int u = 0; u < n; u++) {
            boolean there = full.has(measured, s, u);
            ratios[0][u] = ratio(there ? full.of(measured, Estimate.LAID_DOWN, s, u) : 0, moved[0][u]);
            ratios[1][u] = ratio(there ? full.of(measured, Estimate.CARRIED_THROUGH, s, u) : 0, moved[1][u]);
            if (ratios[0][u] != 1 || ratios[1][u] != 1) {
                units.set(u);
            }
        }
        return ratios;
    }

    private static float ratio(double full, double moved) {
        boolean both = full > 0 && moved > 0;
        return both && Math.abs(full / moved - 1) > ROUNDING ? (float) (full / moved) : 1;
    }

    /** What it multiplies an estimate by when the lever has gone so far [-]; estimate 0 low, 1 high. */
    double at(int measure, int state, int estimate, int unit, double way) {
        return Math.pow(ratios.get(measure).get(state)[estimate][unit], way);
    }

    /** Units where it is not 1. */
    public BitSet units() {
        return (BitSet) units.clone();
    }

    /** Number of states of a measure; 0 where no lever moves it. */
    public int states(int measure) {
        return ratios.get(measure).size();
    }

    /** Number of measures [-]. */
    public int measures() {
        return ratios.size();
    }

    /** Ratios of the units where it is not 1. */
    public Floats ratios(int measure, int state, int estimate) {
        float[] all = ratios.get(measure).get(state)[estimate];
        int[] own = units.stream().toArray();
        float[] some = new float[own.length];
        for (int i = 0; i < own.length; i++) {
            some[i] = all[own[i]];
        }
        return Floats.of(some);
    }
}
