// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;

/**
 * The mercury sweep of one bound transposed: from what is read at a place up the network, once, to what a release at the
 * head of any reach adds to it. Solids and water are those of the run. All flow states go together: one bed may tie them to one another.
 * Several readings go side by side (the inner stride). Over a bed in balance every cell is passed backwards as it was passed
 * forwards: water gives to the bed by its time integral, the bed's stocks answer at the methylation the run found, and give
 * back to the water of every state.
 */
final class TransposedSweep {
    private final TransportInput input;
    private final RiverNetwork network;
    private final Cells cells;
    private final List<StateSolution> solutions;
    private final Optional<BedAnswer> bed;
    private final List<Reading> readings;
    private final int states;
    private final int forms;
    private final int members;
    private final int width;
    private final double[][][] arriving;
    private final Propagator[] steps;
    private final double[] cellRates;
    private final Optional<BedCell> bedCell;
    private final double[] share;
    private final boolean[] leads;
    private final double[][] perLoad;
    private final double[][] perTime;
    private final double[] perIn;
    private final double[] perSource;

    private TransposedSweep(
            TransportInput input,
            Cells cells,
            List<StateSolution> solutions,
            Optional<BedAnswer> bed,
            List<Reading> readings) {
        this.input = input;
        this.network = input.hydraulics().reaches().network();
        this.cells = cells;
        this.solutions = solutions;
        this.bed = bed;
        this.readings = List.copyOf(readings);
        this.states = solutions.size();
        this.forms = input.layout().count();
        this.members = readings.size();
        this.width = forms * members;
        this.arriving = new double[states][network.size()][];
        this.steps = new Propagator[states];
        Arrays.setAll(steps, s -> solutions.get(s).rates().propagator());
        this.cellRates = new double[steps[0].rateCount()];
        this.bedCell = bed.map(answer -> answer.over().cell());
        this.share = new double[states];
        Arrays.setAll(share, input.hydraulics()::share);
        this.leads = new boolean[network.size()];
        this.perLoad = new double[states][width];
        this.perTime = new double[states][width];
        this.perIn = new double[width];
        this.perSource = new double[width];
    }

    /**
     * Sweeps.
     *
     * @param solutions of the bound, by flow state
     * @param bed the bed in balance, for the bound that has it
     */
    static TransposedSweep run(
            TransportInput input,
            Cells cells,
            List<StateSolution> solutions,
            Optional<BedAnswer> bed,
            List<Reading> readings) {
        TransposedSweep sweep = new TransposedSweep(input, cells, solutions, bed, readings);
        for (int r = sweep.network.size() - 1; r >= 0; r--) {
            sweep.reach(r);
        }
        return sweep;
    }

    /** What a release of a form at the head of a reach adds to a reading [value per kg/s]. */
    double perRelease(int state, int reach, int form, int reading) {
        double[] here = arriving[state][reach];
        return here == null ? 0 : here[form * members + reading];
    }

    private void reach(int r) {
        if (!leads(r)) {
            return;
        }
        leads[r] = true;
        boolean[] wet = new boolean[states];
        for (int s = 0; s < states; s++) {
            wet[s] = input.hydraulics().water(s).isWet(r);
            Arrays.fill(perLoad[s], 0);
            if (wet[s]) {
                below(s, r, perLoad[s]);
            }
        }
        for (int c = cells.start(r + 1) - 1; c >= cells.start(r); c--) {
            take(c, wet);
            cell(c, wet);
        }
        for (int s = 0; s < states; s++) {
            double kept = 1 - input.hydraulics().water(s).abstractedShare(r);
            if (wet[s]) {
                arriving[s][r] =
                        Arrays.stream(perLoad[s]).map(value -> value * kept).toArray();
            }
        }
    }

    /** Whether anything is read in a reach or below it. */
    private boolean leads(int r) {
        int node = network.toNode(r);
        for (int k = 0; k < network.outCount(node); k++) {
            if (leads[network.out(node, k)]) {
                return true;
            }
        }
        for (int c = cells.start(r); c < cells.start(r + 1); c++) {
            if (isRead(c)) {
                return true;
            }
        }
        return false;
    }

    private boolean isRead(int c) {
        for (int s = 0; s < states; s++) {
            for (Reading reading : readings) {
                if (reading.reads(s, c)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Adds what the load at a reach's end does in the reaches below, each of which takes its share. */
    private void below(int s, int r, double[] into) {
        RoutedWater water = input.hydraulics().water(s);
        int node = network.toNode(r);
        for (int k = 0; k < network.outCount(node); k++) {
            double[] there = arriving[s][network.out(node, k)];
            double part = water.splits().share(network.out(node, k));
            for (int i = 0; there != null && i < width; i++) {
                into[i] += part * there[i];
            }
        }
    }

    private void take(int c, boolean[] wet) {
        if (bedCell.isPresent()) {
            bedCell.get().take(c);
            return;
        }
        for (int s = 0; s < states; s++) {
            if (wet[s]) {
                solutions.get(s).rates().fill(c, 0, cellRates);
                solutions.get(s).water().prepare(steps[s], cellRates, 0, c);
            }
        }
    }

    private Propagator step(int s) {
        return bedCell.isPresent() ? bedCell.get().step(s) : steps[s];
    }

    private void cell(int c, boolean[] wet) {
        boolean read = isRead(c);
        for (int s = 0; s < states; s++) {
            Arrays.fill(perTime[s], 0);
            for (int m = 0; read && wet[s] && m < members; m++) {
                readings.get(m).addEnd(s, c, perLoad[s], m, members);
                readings.get(m).addTime(s, c, perTime[s], m, members);
            }
        }
        if (bedCell.isPresent()) {
            throughBed(bedCell.get(), c, wet);
        }
        for (int s = 0; s < states; s++) {
            if (wet[s]) {
                transposed(s);
                System.arraycopy(perIn, 0, perLoad[s], 0, width);
                for (int m = 0; read && m < members; m++) {
                    readings.get(m).addHead(s, c, perLoad[s], m, members);
                }
            }
        }
    }

    private void transposed(int s) {
        for (int m = 0; m < members; m++) {
            step(s).applyTransposed(perLoad[s], perTime[s], perIn, perSource, m, members);
        }
    }

    /** Adds to what time integrals count for in a cell what they do by way of its bed. */
    private void throughBed(BedCell cell, int c, boolean[] wet) {
        BedExchange exchange = bed.orElseThrow().over().exchange();
        double[] perStock = new double[width];
        for (int m = 0; m < members; m++) {
            readings.get(m).addStock(c, perStock, m, members);
        }
        for (int s = 0; s < states; s++) {
            if (wet[s]) {
                transposed(s);
                StateHydraulics water = solutions.get(s).water();
                for (int i = 0; i < forms; i++) {
                    double back = exchange.returned(s, c, i) / water.travelTime(c);
                    for (int m = 0; m < members; m++) {
                        perStock[i * members + m] += back * perSource[i * members + m];
                    }
                }
            }
        }
        double[] perBrought = perBrought(cell, c, perStock);
        for (int s = 0; s < states; s++) {
            for (int i = 0; wet[s] && i < forms; i++) {
                double down = share[s] * cell.down(s, i);
                for (int m = 0; m < members; m++) {
                    perTime[s][i * members + m] += down * perBrought[i * members + m];
                }
            }
        }
    }

    /** What each form that comes into the bed counts for, by the stocks that stand in balance with it. */
    private double[] perBrought(BedCell cell, int c, double[] perStock) {
        double[] perBrought = new double[width];
        double[] stocks = new double[forms];
        cell.weigh(share, bed.orElseThrow().stocks().methylation(c));
        for (int in = 0; in < forms; in++) {
            Arrays.fill(stocks, 0);
            stocks[in] = 1;
            cell.balance(stocks, input.bed().orElseThrow().horizon());
            for (int i = 0; i < forms; i++) {
                for (int m = 0; m < members; m++) {
                    perBrought[in * members + m] += stocks[i] * perStock[i * members + m];
                }
            }
        }
        return perBrought;
    }
}
