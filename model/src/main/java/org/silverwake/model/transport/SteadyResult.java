// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Mixing;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;
import org.silverwake.model.water.WaterBodies;

/**
 * What a steady run found, by reach. Water values are the largest among a reach's cell heads (after mixing, where there is
 * water) and ends, near-bank values included; bed values the length-weighted mean of its cells. "Low" and "high" are taken over
 * all bounds and, where a site's split is not known, its extremes.
 */
public final class SteadyResult {
    /** Share of what was released above, or of a reach's load, from which on a load counts in quality figures [-]. */
    static final double COUNTS = 0.01;

    private final TransportInput input;
    private final StateLayout layout;
    private final Cells cells;
    private final ReachCells reachCells;
    private final List<StateSolution> laidDown;
    private final List<StateSolution> carried;
    private final Optional<BedAnswer> bed;
    private final BitSet belowSite;

    SteadyResult(
            TransportInput input,
            Cells cells,
            List<StateSolution> laidDown,
            List<StateSolution> carried,
            Optional<BedAnswer> bed) {
        this.input = input;
        this.layout = input.layout();
        this.cells = cells;
        this.reachCells = new ReachCells(input, cells);
        this.laidDown = List.copyOf(laidDown);
        this.carried = List.copyOf(carried);
        this.bed = bed;
        this.belowSite = reachesBelowSites();
    }

    private BitSet reachesBelowSites() {
        BitSet sites = new BitSet();
        input.sites().forEach(site -> sites.set(site.reach()));
        return reached(sites);
    }

    /** What a release at the heads of some reaches gets to. */
    BitSet reached(BitSet heads) {
        BitSet below = input.hydraulics().reaches().network().below(heads);
        // what enters a still water anywhere is everywhere in it
        for (WaterBodies.Body body : input.hydraulics().reaches().bodies().all()) {
            if (body.kind() == ReachKind.STILL_WATER && body.reaches().stream().anyMatch(below::get)) {
                body.reaches().forEach(below::set);
            }
        }
        return below;
    }

    /** Cells whose water is that of a reach: its own, or those that hold the volume of its still water. */
    int[] cellsOf(int reach) {
        return reachCells.of(reach);
    }

    /** The input. */
    public TransportInput input() {
        return input;
    }

    /** The cells. */
    public Cells cells() {
        return cells;
    }

    /**
     * The solution of a state in a bound.
     *
     * @throws java.util.NoSuchElementException if it is that with a bed and there is none
     */
    public StateSolution solution(Bound bound, int state) {
        return switch (bound) {
            case LAID_DOWN -> laidDown.get(state);
            case CARRIED_THROUGH -> carried.get(state);
            case WITH_BED -> bed.orElseThrow().solution(state);
        };
    }

    /** Mercury of a process, mean of the year over the flow states, background included [kg/s]. */
    public double yearly(Bound bound, int variant, Balance.Process process) {
        double sum = 0;
        for (int s = 0; s < input.stateCount(); s++) {
            sum += solution(bound, s).balance(variant).sum(process)
                    * input.hydraulics().share(s);
        }
        return sum;
    }

    /** Both bounds, and that with a bed where it is modelled. */
    public List<Bound> bounds() {
        return bed.isPresent() ? Bound.all() : Bound.both();
    }

    /** Those that tell of a part of a sample: of MeHg, which beds make, the two without a bed tell nothing where there is one. */
    public List<Bound> bounds(SampledPart part) {
        return bed.isPresent() && isMethylAlone(part) ? List.of(Bound.WITH_BED) : bounds();
    }

    private boolean isMethylAlone(SampledPart part) {
        for (int state = 0; state < layout.count(); state++) {
            if (!layout.name(state).equals(Form.METHYL) && part.weight(layout, state, 1) > 0) {
                return false;
            }
        }
        return true;
    }

    /** River and bed together, between the bounds; empty where the bed is not modelled. */
    public Optional<BedAnswer> bedAnswer() {
        return bed;
    }

    /** Whether the ceiling of MeHg holds methylation back anywhere, so that the bed is not linear in what is released. */
    public boolean isMethylationHeldBack() {
        for (int c = 0; bed.isPresent() && c < cells.count(); c++) {
            if (bed.get().stocks().methylation(c) < 1) {
                return true;
            }
        }
        return false;
    }

    /** Number of variants of the split [-]. */
    public int variants() {
        return laidDown.get(0).variants();
    }

    /** Whether some site lies upstream of a reach, or at its head. */
    public boolean isBelowSite(int reach) {
        return belowSite.get(reach);
    }

    /** Whether a reach carries water in a state. */
    public boolean isWet(int state, int reach) {
        return input.hydraulics().water(state).isWet(reach);
    }

    /** What of the water, all substances together. */
    public enum Fraction implements SampledPart {
        /** Whole water. */
        WHOLE,
        /** What passes a 0.45 um filter. */
        FILTERED;

        @Override
        public double weight(StateLayout states, int state, double filteredShare) {
            return this == FILTERED ? filteredShare : states.isSampled(state) ? 1 : 0;
        }
    }

    /** Largest value in a reach [kg/m3], near-bank values included; 0 where there is no water. */
    public double largest(Bound bound, int variant, int state, int reach, SampledPart part) {
        StateSolution solution = solution(bound, state);
        double largest = 0;
        for (int c : cellsOf(reach)) {
            for (Place place : Place.values()) {
                if (solution.hasWater(c, place)) {
                    largest = Math.max(largest, solution.part(part, c, place, variant, true));
                }
            }
        }
        return largest;
    }

    /** Largest background value in a reach [kg/m3], with a bed the higher of that with it; 0 where there is no water. */
    public double background(int state, int reach, SampledPart part) {
        double largest = 0;
        for (Bound bound : bounds()) {
            if (bound == Bound.LAID_DOWN) {
                continue; // the same load as carried through
            }
            StateSolution solution = solution(bound, state);
            for (int c : cellsOf(reach)) {
                for (Place place : Place.values()) {
                    if (solution.hasWater(c, place)) {
                        largest = Math.max(largest, solution.background(part, c, place));
                    }
                }
            }
        }
        return largest;
    }

    /** Lower of {@link #largest} over bounds and variants [kg/m3]. */
    public double low(int state, int reach, SampledPart part) {
        double low = Double.POSITIVE_INFINITY;
        for (Bound bound : bounds(part)) {
            for (int v = 0; v < variants(); v++) {
                low = Math.min(low, largest(bound, v, state, reach, part));
            }
        }
        return low;
    }

    /** Higher of {@link #largest} over bounds and variants [kg/m3]. */
    public double high(int state, int reach, SampledPart part) {
        double high = 0;
        for (Bound bound : bounds(part)) {
            for (int v = 0; v < variants(); v++) {
                high = Math.max(high, largest(bound, v, state, reach, part));
            }
        }
        return high;
    }

    /** Whether solids deposit in a reach in any state, so that its bed can be assessed. */
    public boolean isBedAssessed(int reach) {
        for (int c : cellsOf(reach)) {
            if (depositing(Bound.LAID_DOWN, c) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Solids that deposit gross in a cell over the year [kg/s]. */
    double depositing(Bound bound, int cell) {
        double solids = 0;
        for (int s = 0; s < input.stateCount(); s++) {
            StateSolution solution = solution(bound, s);
            if (solution.water().isWet(cell)) {
                solids += input.hydraulics().share(s) * solution.solidsDeposition(cell);
            }
        }
        return solids;
    }

    /**
     * Content of what lays down on a reach's bed [kg/kg dry]: mercury deposited over solids deposited, gross, over the year;
     * length-weighted over cells where solids deposit. With a bed, the content of its active layer. Only where the bed is
     * assessed.
     */
    public double bed(Bound bound, int variant, int reach) {
        if (bound == Bound.WITH_BED) {
            return bed.orElseThrow().content(reach, variant);
        }
        return bedMean(
                bound,
                reach,
                (solution, cell) -> solution.mercuryDeposition(cell, variant) + solution.backgroundDeposition(cell));
    }

    /** Lowest of {@link #bed} over bounds and variants [kg/kg dry]. */
    public double bedLow(int reach) {
        double low = Double.POSITIVE_INFINITY;
        for (Bound bound : bounds()) {
            for (int v = 0; v < variants(); v++) {
                low = Math.min(low, bed(bound, v, reach));
            }
        }
        return low;
    }

    /** Highest of {@link #bed} over bounds and variants [kg/kg dry]. */
    public double bedHigh(int reach) {
        double high = 0;
        for (Bound bound : bounds()) {
            for (int v = 0; v < variants(); v++) {
                high = Math.max(high, bed(bound, v, reach));
            }
        }
        return high;
    }

    /** The same of background mercury alone [kg/kg dry]. */
    public double backgroundBed(int reach) {
        double laid = bedMean(Bound.LAID_DOWN, reach, StateSolution::backgroundDeposition);
        return bed.map(answer -> Math.max(laid, answer.backgroundContent(reach)))
                .orElse(laid);
    }

    private interface CellValue {
        double of(StateSolution solution, int cell);
    }

    private double bedMean(Bound bound, int reach, CellValue deposited) {
        double sum = 0;
        double length = 0;
        for (int c : cellsOf(reach)) {
            double solids = depositing(bound, c);
            if (solids > 0) {
                double mercury = 0;
                for (int s = 0; s < input.stateCount(); s++) {
                    StateSolution solution = solution(bound, s);
                    if (solution.water().isWet(c)) {
                        mercury += input.hydraulics().share(s) * deposited.of(solution, c);
                    }
                }
                sum += mercury / solids * cells.length(c);
                length += cells.length(c);
            }
        }
        return length > 0 ? sum / length : 0;
    }

    /** Rate at which a reach loses released mercury over its banks in the mean of the year [kg/s]. */
    public double overbank(Bound bound, int variant, int reach) {
        double sum = 0;
        for (int s = 0; s < input.stateCount(); s++) {
            sum += input.hydraulics().share(s) * solution(bound, s).overbank(reach, variant);
        }
        return sum;
    }

    /** Worst relative closure over states, bounds and variants [-], of released mercury and of background each by itself. */
    public double worstClosure() {
        double worst = 0;
        for (Bound bound : bounds()) {
            for (int s = 0; s < input.stateCount(); s++) {
                for (int v = 0; v < variants(); v++) {
                    worst = Math.max(worst, solution(bound, s).worstClosure(v));
                }
            }
        }
        return worst;
    }

    /**
     * What is released upstream of each reach and at its head in a state [kg/s], less what abstractions take, as if nothing
     * were lost on the way: what loads are held against to say whether they count.
     */
    double[] releasedAbove(int state) {
        RiverNetwork network = input.hydraulics().reaches().network();
        RoutedWater water = input.hydraulics().water(state);
        HeadLoads loads = new HeadLoads(network, water, 1);
        double[] released = new double[network.size()];
        for (SiteRelease site : input.sites()) {
            released[site.reach()] += site.mercury().get(state);
        }
        double[] above = new double[network.size()];
        double[] load = new double[1];
        for (int r = 0; r < above.length; r++) {
            loads.arriving(r, released, load);
            above[r] = water.isWet(r) ? load[0] * (1 - water.abstractedShare(r)) : 0;
            load[0] = above[r];
            loads.leave(r, load, 0);
        }
        return above;
    }

    /**
     * Largest k D/U^2 of a state [-], D the longitudinal dispersion coefficient, k the rate at which a form leaves, over forms
     * that carry more than 1 % of the load out of a reach and reaches that pass on more than 1 % of what is released above
     * them; above 0.05 the sweep's neglect of dispersion shows. Still water is mixed and has none.
     */
    public double dispersionNumber(int state) {
        StateSolution solution = solution(Bound.LAID_DOWN, state);
        StateHydraulics water = solution.water();
        double[] above = releasedAbove(state);
        double worst = 0;
        for (int c = 0; c < cells.count(); c++) {
            if (!water.isWet(c) || water.isStill(c) || !(water.shearVelocity(c) > 0)) {
                continue;
            }
            double u = water.velocity(c);
            double dispersion = Mixing.longitudinal(u, water.width(c), water.depth(c), water.shearVelocity(c));
            worst = Math.max(worst, fastest(solution, c, above[cells.reach(c)]) * dispersion / (u * u));
        }
        return worst;
    }

    private double fastest(StateSolution solution, int cell, double above) {
        int reach = cells.reach(cell);
        double fastest = 0;
        for (int v = 0; v < variants(); v++) {
            double all = solution.loadOut(reach, v);
            for (int form = 0; form < layout.count(); form++) {
                if (all > COUNTS * above && solution.loadOut(reach, form, v) > COUNTS * all) {
                    fastest = Math.max(fastest, solution.lossRate(cell, form));
                }
            }
        }
        return fastest;
    }
}
