// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * Solids of one flow state in one bound, cell by cell: mean content of water, gross settling rates, and the factor beta
 * by which the bound scales them. Background solids are held at their concentration and never become a conveyor by
 * themselves: whether their settling removes mercury is what the bounds differ in.
 */
final class SolidsState {
    /** Solids after mixing above which the run is refused [kg/m3]. */
    static final double REFUSED = 200;

    private static final int ROUNDS = 60;
    private static final double CONVERGED = 1e-14;

    private final int classes;
    private final double[] rate;
    private final double[] solids;
    private final double[] tailings;
    private final double[] beta;
    private final List<Integer> slurry = new ArrayList<>();

    SolidsState(int cells, int classes) {
        this.classes = classes;
        this.rate = new double[cells * classes];
        this.solids = new double[cells * classes];
        this.tailings = new double[cells * classes];
        this.beta = new double[cells];
    }

    static SolidsState sweep(TransportInput input, Cells cells, StateHydraulics water, Bound bound) {
        int state = water.state();
        int classes = input.classes().size();
        SolidsState result = new SolidsState(cells.count(), classes);
        Settling settling = new Settling(input, state);
        RiverNetwork network = input.hydraulics().reaches().network();
        HeadLoads loads = new HeadLoads(network, input.hydraulics().water(state), classes);
        double[] releases = Releases.solids(input, state);
        double[] load = new double[classes];
        for (int r = 0; r < network.size(); r++) {
            loads.arriving(r, releases, load);
            double kept = 1 - input.hydraulics().water(state).abstractedShare(r);
            for (int j = 0; j < classes; j++) {
                load[j] *= kept;
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                if (water.isWet(c)) {
                    double background = input.sediment().get(state).at(water.mean(c));
                    result.note(network, state, r, entering(background, load, water.mean(c)));
                    result.cell(input, settling, water, c, load, bound);
                }
            }
            loads.leave(r, load, 0);
            if (!input.hydraulics().water(state).isWet(r)) {
                loads.leaveNothing(r);
            }
        }
        return result;
    }

    private void cell(
            TransportInput input, Settling settling, StateHydraulics water, int c, double[] load, Bound bound) {
        double mean = water.mean(c);
        double background = input.sediment().get(water.state()).at(mean);
        Deposition.Flow flow = settling.flow(water, c);
        double lost = settling.overbank(water, c);
        double present = entering(background, load, mean);
        double factor = 1;
        for (int round = 0; round < ROUNDS; round++) {
            for (int j = 0; j < classes; j++) {
                rate[c * classes + j] = settling.rate(j, water, c, flow, present);
            }
            factor = bound == Bound.LAID_DOWN ? 1 : netFactor(input, water, c, load, lost);
            for (int j = 0; j < classes; j++) {
                double gone = rate[c * classes + j] * scale(input, j, factor) + lost;
                tailings[c * classes + j] = load[j] / mean * water.meanLeft(c, gone);
                double own = background * input.classes().get(j).backgroundShare();
                solids[c * classes + j] = own * held(water, c, gone) + tailings[c * classes + j];
            }
            double next = sediment(c);
            if (!Deposition.isHindered(present) || Math.abs(next - present) <= CONVERGED * present) {
                break;
            }
            present = next;
        }
        beta[c] = factor;
        for (int j = 0; j < classes; j++) {
            load[j] *= water.endLeft(c, rate[c * classes + j] * scale(input, j, factor) + lost);
        }
    }

    /**
     * Share of the river's own solids that its water holds [-]: all, since a river takes up what it lays down; in still water
     * what does not settle of them.
     */
    static double held(StateHydraulics water, int cell, double gone) {
        return water.isMixed(cell) ? water.endLeft(cell, gone) : 1;
    }

    private static double entering(double background, double[] load, double discharge) {
        double all = background;
        for (double each : load) {
            all += each / discharge;
        }
        return all;
    }

    /**
     * The factor beta at which net deposition equals what is stated: beta x gross deposition = S. Gross deposition falls as
     * beta grows, since tailings then run out along the cell, but beta x gross deposition is increasing and concave in beta:
     * Newton's iteration from 0 climbs to the root and never passes it.
     */
    private double netFactor(TransportInput input, StateHydraulics water, int c, double[] load, double lost) {
        double stated = input.options().netSedimentation();
        double[] net = new double[2];
        net(input, water, c, load, lost, 1, net);
        if (!(stated > 0) || !(net[0] > 0)) {
            return 0;
        }
        if (net[0] <= stated) {
            return 1;
        }
        double factor = 0;
        for (int round = 0; round < ROUNDS; round++) {
            net(input, water, c, load, lost, factor, net);
            double step = (stated - net[0]) / net[1];
            factor += step;
            if (!(step > CONVERGED * factor)) {
                break;
            }
        }
        return Math.min(1, factor);
    }

    /** Net deposition [kg/m2/s] at a factor and its derivative, into {@code net}. */
    private void net(
            TransportInput input,
            StateHydraulics water,
            int c,
            double[] load,
            double lost,
            double factor,
            double[] net) {
        double mean = water.mean(c);
        double tau = water.travelTime(c);
        double background = input.sediment().get(water.state()).at(mean);
        net[0] = 0;
        net[1] = 0;
        for (int j = 0; j < classes; j++) {
            if (isScaled(input, j)) {
                double fall = rate[c * classes + j] * water.depth(c);
                double held = background * input.classes().get(j).backgroundShare();
                double part = factor * rate[c * classes + j] * tau;
                double gone = part + lost * tau;
                if (water.isMixed(c)) {
                    double entering = held + load[j] / mean;
                    net[0] += fall * factor * entering / (1 + gone);
                    net[1] += fall * entering * (1 + lost * tau) / ((1 + gone) * (1 + gone));
                    continue;
                }
                double left = Propagator.meanOfDecay(gone);
                double slope = gone > 0 ? left + part / gone * (StrictMath.exp(-gone) - left) : 1;
                net[0] += fall * factor * (held + load[j] / mean * left);
                net[1] += fall * (held + load[j] / mean * slope);
            }
        }
    }

    /** Notes slurry, and refuses what is no river any more. */
    void note(RiverNetwork network, int state, int reach, double all) {
        if (all > REFUSED) {
            throw new OutsideModelException(
                    state,
                    "reach " + network.id(reach) + ": " + Math.round(all)
                            + " g/L of solids after mixing; above " + Math.round(REFUSED)
                            + " g/L this is no river any more; lower the tailings or check their unit");
        }
        if (Deposition.isHindered(all) && (slurry.isEmpty() || slurry.get(slurry.size() - 1) != reach)) {
            slurry.add(reach);
        }
    }

    /** Keeps a cell's gross rate [1/s], solids and tailings [kg/m3] of a class over a bed, where nothing is scaled. */
    void put(int cell, int j, double gross, double all, double carried) {
        rate[cell * classes + j] = gross;
        solids[cell * classes + j] = all;
        tailings[cell * classes + j] = carried;
        beta[cell] = 1;
    }

    /** A measured retention length is net by definition and holds in both bounds. */
    static boolean isScaled(TransportInput input, int j) {
        return input.classes().get(j).retentionLength().isEmpty();
    }

    static double scale(TransportInput input, int j, double beta) {
        return isScaled(input, j) ? beta : 1;
    }

    /** Gross settling rate of a class [1/s]. */
    double rate(int cell, int j) {
        return rate[cell * classes + j];
    }

    /** All solids of a class, mean of the cell [kg/m3]. */
    double solids(int cell, int j) {
        return solids[cell * classes + j];
    }

    /** Tailings solids of a class, mean of the cell [kg/m3]. */
    double tailings(int cell, int j) {
        return tailings[cell * classes + j];
    }

    /** All solids, mean of the cell [kg/m3]. */
    double sediment(int cell) {
        double sum = 0;
        for (int j = 0; j < classes; j++) {
            sum += solids[cell * classes + j];
        }
        return sum;
    }

    /** Factor on the settling rates of classes without a retention length [-]. */
    double beta(int cell) {
        return beta[cell];
    }

    /** Reaches marked as slurry. */
    List<Integer> slurry() {
        return List.copyOf(slurry);
    }
}
