// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.Partheniades1965;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.StateHydraulics;

/**
 * Solids over a bed that all flow states share, in balance over the year and per class: sum of share x (deposition -
 * erosion) = burial. What erodes has the bed's own mixture, in which each class has its share of deposition. Background
 * solids stay held at their concentration in the water; tailings solids are carried, laid down and taken up again. In still
 * water nothing is held up: erosion is what shear takes, burial all the rest, whatever else is stated.
 */
final class BedSolids {
    private static final int ROUNDS = 500;
    private static final double CONVERGED = 1e-14;

    private final TransportInput input;
    private final BedInput bed;
    private final Cells cells;
    private final List<StateHydraulics> water;
    private final int states;
    private final int classes;
    private final List<Settling> settling = new ArrayList<>();
    private final List<SolidsState> solids = new ArrayList<>();
    private final double[][] resuspension;
    private final double[] burial;
    private final double[] backgroundBuried;
    private final double[] width;
    private final BitSet eaten = new BitSet();
    private final BitSet shortOfSolids = new BitSet();
    private final BitSet quiet = new BitSet();
    private final Propagator propagator = new Propagator(1, 0);

    /** Of the present cell: loads at its head [kg/s] by state and class; then what one round found. */
    private final double[][] load;

    private final double[][] rate;
    private final double[][] settlingIn;
    private final double[][] perUnit;
    private final double[][] out;
    private final double[][] outPerUnit;
    private final double[] lost;
    private final double[] eroded;
    private final double[] deposited;
    private final double[] mixture;

    private BedSolids(TransportInput input, BedInput bed, Cells cells, List<StateHydraulics> water) {
        this.input = input;
        this.bed = bed;
        this.cells = cells;
        this.water = water;
        this.states = water.size();
        this.classes = input.classes().size();
        this.resuspension = new double[states][cells.count()];
        this.burial = new double[cells.count()];
        this.backgroundBuried = new double[cells.count()];
        this.width = new double[cells.count()];
        this.load = new double[states][classes];
        this.rate = new double[states][classes];
        this.settlingIn = new double[states][classes];
        this.perUnit = new double[states][classes];
        this.out = new double[states][classes];
        this.outPerUnit = new double[states][classes];
        this.lost = new double[states];
        this.eroded = new double[states];
        this.deposited = new double[states];
        this.mixture = new double[classes];
        for (int s = 0; s < states; s++) {
            settling.add(new Settling(input, s));
            solids.add(new SolidsState(cells.count(), classes));
        }
    }

    static Outcome run(TransportInput input, BedInput bed, Cells cells, List<StateHydraulics> water) {
        BedSolids result = new BedSolids(input, bed, cells, water);
        result.sweep();
        return new Outcome(List.copyOf(result.solids), result.motion());
    }

    private void sweep() {
        RiverNetwork network = input.hydraulics().reaches().network();
        List<HeadLoads> loads = new ArrayList<>();
        List<double[]> releases = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            loads.add(new HeadLoads(network, input.hydraulics().water(s), classes));
            releases.add(Releases.solids(input, s));
        }
        for (int r = 0; r < network.size(); r++) {
            for (int s = 0; s < states; s++) {
                loads.get(s).arriving(r, releases.get(s), load[s]);
                double kept = 1 - input.hydraulics().water(s).abstractedShare(r);
                for (int j = 0; j < classes; j++) {
                    load[s][j] *= kept;
                }
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                cell(network, r, c);
            }
            for (int s = 0; s < states; s++) {
                if (input.hydraulics().water(s).isWet(r)) {
                    loads.get(s).leave(r, load[s], 0);
                } else {
                    loads.get(s).leaveNothing(r);
                }
            }
        }
    }

    private void cell(RiverNetwork network, int reach, int c) {
        width[c] = bedWidth(reach, c);
        double area = width[c] * cells.length(c);
        ReachKind kind = input.hydraulics().reaches().kind(reach);
        double stated = bed.turnover().given() == BedInput.Given.BURIAL
                ? bed.turnover().burial().at(0, kind) * bed.dryDensity() * area
                : 0;
        double[] present = new double[states];
        for (int s = 0; s < states; s++) {
            eroded[s] = 0;
            if (water.get(s).isWet(c)) {
                present[s] = background(s, c);
                for (int j = 0; j < classes; j++) {
                    present[s] += load[s][j] / water.get(s).mean(c);
                }
                solids.get(s).note(network, s, reach, present[s]);
            }
        }
        Arrays.fill(mixture, 0);
        double buried = 0;
        for (int round = 0; round < ROUNDS; round++) {
            boolean dense = round == 0;
            for (int s = 0; s < states; s++) {
                dense |= Deposition.isHindered(present[s]);
            }
            if (dense) {
                rates(c, present);
            }
            double[] erodedBefore = eroded.clone();
            double[] mixtureBefore = mixture.clone();
            buried = turnOver(reach, c, stated);
            mix(buried);
            put(c, present);
            if (round > 0 && isSame(erodedBefore, eroded) && isSame(mixtureBefore, mixture)) {
                break;
            }
        }
        for (int s = 0; s < states; s++) {
            double wet = water.get(s).width(c) * cells.length(c);
            resuspension[s][c] = wet > 0 ? eroded[s] / (bed.dryDensity() * wet) : 0;
            for (int j = 0; j < classes; j++) {
                load[s][j] = water.get(s).isWet(c) ? out[s][j] + outPerUnit[s][j] * eroded[s] * mixture[j] : 0;
            }
        }
        backgroundBuried[c] = backgroundBuried(c, buried);
        burial[c] = area > 0 ? (buried + retained(c)) / (bed.dryDensity() * area) : 0;
    }

    private double bedWidth(int reach, int c) {
        double middle = 0.5 * (cells.from(c) + cells.to(c));
        return input.hydraulics().bedWidth(reach, middle);
    }

    private double background(int s, int c) {
        return input.sediment().get(s).at(water.get(s).mean(c));
    }

    /** The river's own solids of a class in the water of a state [kg/m3]. */
    private double held(int s, int c, int j) {
        return background(s, c)
                * input.classes().get(j).backgroundShare()
                * SolidsState.held(water.get(s), c, rate[s][j] + lost[s]);
    }

    /** What the water of each state does with the tailings solids that enter it, and with a unit [kg/s] taken up along it. */
    private void rates(int c, double[] present) {
        double[] into = new double[1];
        double[] none = new double[1];
        double[] outgoing = new double[1];
        double[] time = new double[1];
        for (int s = 0; s < states; s++) {
            StateHydraulics flow = water.get(s);
            if (!flow.isWet(c)) {
                lost[s] = 0;
                Arrays.fill(rate[s], 0);
                Arrays.fill(settlingIn[s], 0);
                Arrays.fill(perUnit[s], 0);
                Arrays.fill(out[s], 0);
                Arrays.fill(outPerUnit[s], 0);
                continue;
            }
            lost[s] = settling.get(s).overbank(flow, c);
            Deposition.Flow here = settling.get(s).flow(flow, c);
            for (int j = 0; j < classes; j++) {
                rate[s][j] = settling.get(s).rate(j, flow, c, here, present[s]);
                flow.prepare(propagator, new double[] {-(rate[s][j] + lost[s])}, 0, c);
                into[0] = load[s][j];
                none[0] = 0;
                propagator.apply(into, none, outgoing, time, 0, 1);
                out[s][j] = outgoing[0];
                settlingIn[s][j] = time[0];
                into[0] = 0;
                none[0] = 1 / flow.travelTime(c);
                propagator.apply(into, none, outgoing, time, 0, 1);
                outPerUnit[s][j] = outgoing[0];
                perUnit[s][j] = time[0];
            }
        }
    }

    /** Erosion of each state [kg/s] so that the year closes; returns burial [kg/s]. */
    private double turnOver(int reach, int c, double stated) {
        double laidDown = 0;
        double could = 0;
        double[] potential = new double[states];
        for (int s = 0; s < states; s++) {
            StateHydraulics flow = water.get(s);
            deposited[s] = 0;
            if (!flow.isWet(c)) {
                continue;
            }
            double volume = flow.mean(c) * flow.travelTime(c);
            for (int j = 0; j < classes; j++) {
                if (SolidsState.isScaled(input, j)) {
                    deposited[s] += rate[s][j] * (held(s, c, j) * volume + tailings(s, j));
                }
            }
            laidDown += input.hydraulics().share(s) * deposited[s];
            if (flow.isThrough(c)) {
                continue;
            }
            potential[s] = Partheniades1965.erosion(
                            bed.turnover().erosionRate(),
                            flow.skinShear(c),
                            bed.turnover().criticalShear())
                    * flow.width(c)
                    * cells.length(c);
            could += input.hydraulics().share(s) * potential[s];
        }
        double erosion;
        boolean still = input.hydraulics().isStill(reach);
        if (still || bed.turnover().given() == BedInput.Given.EROSION) {
            erosion = Math.min(could, laidDown);
            eaten.set(reach, eaten.get(reach) || could > laidDown);
        } else {
            erosion = Math.max(0, laidDown - stated);
            shortOfSolids.set(reach, shortOfSolids.get(reach) || stated > laidDown);
            if (could == 0 && erosion > 0) {
                // no state is strong enough: what has been laid down goes back in the state that brought it
                quiet.set(reach);
                System.arraycopy(deposited, 0, potential, 0, states);
                could = laidDown;
            }
        }
        for (int s = 0; s < states; s++) {
            eroded[s] = could > 0 ? erosion * (potential[s] / could) : 0;
        }
        return still || bed.turnover().given() == BedInput.Given.EROSION
                ? Math.max(0, laidDown - could)
                : Math.min(stated, laidDown);
    }

    private double tailings(int s, int j) {
        return settlingIn[s][j] + perUnit[s][j] * eroded[s] * mixture[j];
    }

    /** Shares of tailings classes in the bed's solids, at which each class closes over the year. */
    private void mix(double buried) {
        for (int j = 0; j < classes; j++) {
            double brought = 0;
            double leaves = buried;
            for (int s = 0; s < states && SolidsState.isScaled(input, j); s++) {
                double share = input.hydraulics().share(s);
                brought += share * rate[s][j] * settlingIn[s][j];
                leaves += share * eroded[s] * (outPerUnit[s][j] + lost[s] * perUnit[s][j]);
            }
            mixture[j] = brought > 0 && leaves > 0 ? brought / leaves : 0;
        }
    }

    private void put(int c, double[] present) {
        for (int s = 0; s < states; s++) {
            StateHydraulics flow = water.get(s);
            if (!flow.isWet(c)) {
                continue;
            }
            double volume = flow.mean(c) * flow.travelTime(c);
            present[s] = background(s, c);
            for (int j = 0; j < classes; j++) {
                double carried = tailings(s, j) / volume;
                solids.get(s).put(c, j, rate[s][j], held(s, c, j) + carried, carried);
                present[s] += carried;
            }
        }
    }

    /** Background solids laid down for good, shared out over the part of the year in which there is water [kg/s]. */
    private double backgroundBuried(int c, double buried) {
        double own = 1;
        for (double share : mixture) {
            own -= share;
        }
        double sum = Math.max(0, own) * buried;
        double wet = 0;
        for (int s = 0; s < states; s++) {
            if (water.get(s).isWet(c)) {
                double volume = water.get(s).mean(c) * water.get(s).travelTime(c);
                wet += input.hydraulics().share(s);
                for (int j = 0; j < classes; j++) {
                    double held = held(s, c, j);
                    boolean forGood = !SolidsState.isScaled(input, j);
                    sum += forGood ? input.hydraulics().share(s) * rate[s][j] * held * volume : 0;
                }
            }
        }
        return wet > 0 ? sum / wet : 0;
    }

    /** Solids laid down for good by classes with a measured retention length [kg/s]. */
    private double retained(int c) {
        double sum = 0;
        for (int s = 0; s < states; s++) {
            if (water.get(s).isWet(c)) {
                double volume = water.get(s).mean(c) * water.get(s).travelTime(c);
                for (int j = 0; j < classes; j++) {
                    sum += SolidsState.isScaled(input, j)
                            ? 0
                            : input.hydraulics().share(s)
                                    * rate[s][j]
                                    * solids.get(s).solids(c, j)
                                    * volume;
                }
            }
        }
        return sum;
    }

    private static boolean isSame(double[] before, double[] after) {
        boolean same = true;
        for (int i = 0; i < before.length; i++) {
            same &= Math.abs(after[i] - before[i]) <= CONVERGED * after[i];
        }
        return same;
    }

    /** How the bed moves. */
    private BedMotion motion() {
        return new BedMotion(resuspension, burial, width, backgroundBuried, eaten, shortOfSolids, quiet);
    }

    /**
     * What came out.
     *
     * @param water solids in the water, by flow state
     * @param motion how the bed moves
     */
    record Outcome(List<SolidsState> water, BedMotion motion) {}
}
