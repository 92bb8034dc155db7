// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * The water of all flow states over the bed: solids, rates, background, and how loads go through a cell over given stocks.
 * Common to the steady bed and to the bed through the years.
 */
final class BedWater {
    private final TransportInput input;
    private final Cells cells;
    private final List<StateHydraulics> water;
    private final BedSolids.Outcome solids;
    private final List<CellRates> rates = new ArrayList<>();
    private final List<BackgroundSweep> background;
    private final BedExchange exchange;
    private final int exchangeable;
    private final int forms;
    private final int members;
    private final double[] source;
    private final double[] out;
    private final double[] time;

    BedWater(
            TransportInput input,
            BedInput bed,
            Cells cells,
            List<StateHydraulics> water,
            List<BackgroundSweep> background,
            BedSolids.Outcome solids) {
        this.input = input;
        this.cells = cells;
        this.water = water;
        this.background = background;
        this.solids = solids;
        this.exchange = new BedExchange(input, bed, cells, water, solids.motion());
        for (int s = 0; s < water.size(); s++) {
            int state = s;
            rates.add(CellRates.overBed(
                    input, cells, water.get(s), solids.water().get(s), c -> exchange.poreExchange(state, c)));
        }
        StateLayout layout = input.layout();
        this.exchangeable = layout.exchangeable();
        this.forms = layout.count();
        this.members = input.variantCount() + 1;
        this.source = new double[forms * members];
        this.out = new double[forms * members];
        this.time = new double[forms * members];
    }

    /** The same when other sites release mercury into the same water and solids. */
    BedWater of(TransportInput others) {
        return new BedWater(others, input.bed().orElseThrow(), cells, water, background, solids);
    }

    TransportInput input() {
        return input;
    }

    Cells cells() {
        return cells;
    }

    List<StateHydraulics> water() {
        return water;
    }

    BedSolids.Outcome solids() {
        return solids;
    }

    CellRates rates(int state) {
        return rates.get(state);
    }

    BedExchange exchange() {
        return exchange;
    }

    /** A worker for one thread. */
    BedCell cell() {
        return new BedCell(input.layout(), water, rates, exchange);
    }

    /** Loads of a state to be filled: nothing carried yet. */
    StateLoads loads(int state) {
        return new StateLoads(input, cells, water.get(state), releases(state), members);
    }

    /** Releases and headwater background of a state [kg/s], index (reach x forms + form) x members + member. */
    double[] releases(int state) {
        int reaches = input.hydraulics().reaches().size();
        int variants = members - 1;
        double[] released = Releases.mercury(input, state, variants);
        double[] all = new double[reaches * forms * members];
        for (int r = 0; r < reaches; r++) {
            for (int i = 0; i < forms; i++) {
                System.arraycopy(released, (r * forms + i) * variants, all, (r * forms + i) * members, variants);
            }
            all[(r * forms + exchangeable) * members + variants] =
                    background.get(state).atHead(r);
        }
        return all;
    }

    /** Where in a cell's loads the background's exchangeable mercury lies. */
    int takeUpIndex() {
        return exchangeable * members + members - 1;
    }

    /** Adds what the water of a state lays down on a cell's bed [kg/s], from the time integrals of its loads. */
    void addBrought(int state, int c, double weight, double[] integral, double[] into) {
        CellRates own = rates.get(state);
        for (int i = 0; i < forms; i++) {
            double down = weight * (own.settled(c, i) + own.toPores(c, i));
            for (int m = 0; m < members; m++) {
                into[i * members + m] += down * integral[i * members + m];
            }
        }
    }

    /** Adds to a source along a cell what its bed gives back to a state over mean stocks [kg/s per s of travel]. */
    void addReturned(int state, int c, double[] mean, double[] into) {
        double tau = water.get(state).travelTime(c);
        for (int i = 0; i < forms; i++) {
            double back = exchange.returned(state, c, i) / tau;
            for (int m = 0; m < members; m++) {
                into[i * members + m] += back * mean[i * members + m];
            }
        }
    }

    /** Adds what a cell's bed buries over mean stocks. */
    void addBuried(int c, double[] mean, YearBudget budget) {
        for (int i = 0; i < forms; i++) {
            double rate = exchange.buried(c, i);
            for (int m = 0; m < members; m++) {
                budget.addOne(YearBudget.Term.BURIED, m, rate * mean[i * members + m]);
            }
        }
    }

    /** Adds what the water of a state loses in a cell for good. */
    void addLosses(int state, int c, double weight, double[] integral, YearBudget budget) {
        CellRates own = rates.get(state);
        for (int i = 0; i < forms; i++) {
            double overbank = weight * own.overbank(c, i);
            double evaded = weight * own.evaded(c, i);
            for (int m = 0; m < members && overbank + evaded > 0; m++) {
                budget.addOne(YearBudget.Term.OVERBANK, m, overbank * integral[i * members + m]);
                budget.addOne(YearBudget.Term.EVADED, m, evaded * integral[i * members + m]);
            }
        }
    }

    /** What the water of a state takes up at a cell's head to hold the rated background solids [kg/s]. */
    double takenUp(int state, int c) {
        return background.get(state).takenUp(c);
    }

    /** Adds to a cell's load what its water takes up at its head to hold the rated background solids. */
    void takeUp(StateLoads loads, int state, int c, double[] load) {
        int at = exchangeable * members + members - 1;
        load[at] += background.get(state).takenUp(c);
        loads.addLateral(at, background.get(state).takenUp(c));
    }

    /**
     * Sets the source of background mercury along a cell [kg/s per s of travel]: with lateral water, and on the solids that
     * make up for those buried, so that solids held at their concentration bring no clean ones unseen.
     */
    void background(int state, int c, double[] into) {
        double along = background.get(state).along(c) + solids.motion().backgroundBuried(c) * input.backgroundContent();
        into[exchangeable * members + members - 1] = along / water.get(state).travelTime(c);
    }

    /** Carries the loads of a state through a cell over given stocks; the load then is that at the cell's end. */
    void carry(BedCell cell, StateLoads loads, int state, int c, double[] stock, double[] load) {
        double tau = water.get(state).travelTime(c);
        Arrays.fill(source, 0);
        background(state, c, source);
        int brought = exchangeable * members + members - 1;
        loads.addLateral(brought, source[brought] * tau);
        for (int i = 0; i < forms; i++) {
            double back = exchange.returned(state, c, i);
            for (int m = 0; m < members; m++) {
                double rate = back * stock[(c * forms + i) * members + m];
                source[i * members + m] += rate / tau;
                loads.addFromBed(i * members + m, rate);
            }
        }
        for (int m = 0; m < members; m++) {
            cell.step(state).apply(load, source, out, time, m, members);
        }
        loads.pass(c, load, out, time, 0);
        System.arraycopy(out, 0, load, 0, out.length);
    }

    /** Most exchangeable mercury of any variant, background included [kg], in stocks of a cell that begin at an index. */
    double exchangeable(double[] stock, int at) {
        double most = 0;
        for (int v = 0; v < members - 1; v++) {
            most = Math.max(most, stock[at + exchangeable * members + v]);
        }
        return most + stock[at + exchangeable * members + members - 1];
    }

    /**
     * Exchangeable mercury in a bed [kg] above which methylation is held back: what is made is at most what keeps MeHg up at its
     * ceiling. Infinite where there is no methylation or no ceiling.
     */
    double heldBackAbove(BedCell cell, int c, double[] weight) {
        OptionalInt turn = exchange.methylation();
        double rate = 0;
        for (int s = 0; turn.isPresent() && s < weight.length; s++) {
            rate += weight[s] * exchange.turned(turn.getAsInt(), s, c);
        }
        return rate > 0
                ? exchange.methylCeiling(c) * cell.leaving(exchange.to(turn.getAsInt())) / rate
                : Double.POSITIVE_INFINITY;
    }
}
