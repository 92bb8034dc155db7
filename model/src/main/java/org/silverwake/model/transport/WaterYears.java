// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.StateHydraulics;
import org.silverwake.model.water.WaterBodies;

/**
 * Water of every reach year by year, for some parts of a sample: its highest value in the year, and its mean over the time in
 * which the reach has water, 0 where it never has.
 */
final class WaterYears {
    private final StateLayout layout;
    private final Hydraulics hydraulics;
    private final Cells cells;
    private final int parts;
    private final double[][] atNone;
    private final double[][] rise;
    private final int reaches;
    private final int variants;
    private final int members;
    private final double[][][] mean;
    private final double[][][] worst;
    private final double[] wetShare;
    private final YearBand[] meanYears;
    private final YearBand[] worstYears;
    private List<NearBank> nearBank = List.of();

    WaterYears(TransportInput input, Cells cells, int years, List<SampledPart> parts) {
        this.layout = input.layout();
        this.hydraulics = input.hydraulics();
        this.cells = cells;
        this.reaches = input.hydraulics().reaches().size();
        this.variants = input.variantCount();
        this.members = variants + 1;
        int n = parts.size();
        this.parts = n;
        this.atNone = new double[n][layout.count()];
        this.rise = new double[n][layout.count()];
        for (int k = 0; k < n; k++) {
            for (int form = 0; form < layout.count(); form++) {
                atNone[k][form] = parts.get(k).weight(layout, form, 0);
                rise[k][form] = parts.get(k).weight(layout, form, 1) - atNone[k][form];
            }
        }
        this.mean = new double[n][variants][reaches];
        this.worst = new double[n][variants][reaches];
        this.wetShare = new double[reaches];
        this.meanYears = new YearBand[n];
        this.worstYears = new YearBand[n];
        for (int k = 0; k < n; k++) {
            meanYears[k] = new YearBand(years, reaches);
            worstYears[k] = new YearBand(years, reaches);
        }
    }

    /** Takes the near-bank values of a new era. */
    void era(List<NearBank> banks) {
        nearBank = List.copyOf(banks);
    }

    void newYear() {
        Arrays.fill(wetShare, 0);
        for (int k = 0; k < parts; k++) {
            for (int v = 0; v < variants; v++) {
                Arrays.fill(mean[k][v], 0);
                Arrays.fill(worst[k][v], 0);
            }
        }
    }

    /** Looks at one part of the network, for one thread; it writes to the reaches of its part alone. */
    final class Look {
        private final double[][][] now = new double[hydraulics.stateCount()][parts][variants];
        private final double[][] sum = new double[parts][variants];
        private final boolean[] wet = new boolean[hydraulics.stateCount()];

        /** Looks at a cell's head and end, in still water at its mixed water alone; the reach keeps the largest. */
        void pass(CellRates rates, StateHydraulics water, int c, double[] head, double[] end) {
            if (!water.isStill(c)) {
                look(rates, water.state(), c, head, water.head(c), true);
            }
            if (!water.isThrough(c)) {
                look(rates, water.state(), c, end, water.end(c), false);
            }
        }

        private void look(CellRates rates, int state, int c, double[] load, double discharge, boolean atHead) {
            if (!(discharge > 0)) {
                return;
            }
            wet[state] = true;
            NearBank bank = nearBank.get(state);
            boolean marked = bank.isMarked(cells.reach(c));
            for (double[] of : sum) {
                Arrays.fill(of, 0);
            }
            for (int form = 0; form < layout.count(); form++) {
                double filtered = rates.filtered(c, form);
                for (int k = 0; k < sum.length; k++) {
                    double weight = atNone[k][form] + rise[k][form] * filtered;
                    for (int v = 0; v < variants && weight > 0; v++) {
                        double value = (load[form * members + v] + load[form * members + members - 1]) / discharge;
                        if (marked) {
                            value += atHead ? bank.head(c, form, v) : bank.end(c, form, v);
                        }
                        sum[k][v] += weight * value;
                    }
                }
            }
            for (int k = 0; k < sum.length; k++) {
                for (int v = 0; v < variants; v++) {
                    now[state][k][v] = Math.max(now[state][k][v], sum[k][v]);
                }
            }
        }

        /** Ends a reach in a flow state of a step. */
        void leave(int reach, int state, double weight, double duration) {
            double share = weight * duration / Quantity.SECONDS_PER_YEAR;
            wetShare[reach] += wet[state] ? share : 0;
            wet[state] = false;
            for (int k = 0; k < parts; k++) {
                for (int v = 0; v < variants; v++) {
                    mean[k][v][reach] += share * now[state][k][v];
                    worst[k][v][reach] = Math.max(worst[k][v][reach], now[state][k][v]);
                    now[state][k][v] = 0;
                }
            }
        }
    }

    void endYear(int year) {
        for (int k = 0; k < parts; k++) {
            for (int v = 0; v < variants; v++) {
                for (int r = 0; r < reaches; r++) {
                    mean[k][v][r] /= wetShare[r] > 0 ? wetShare[r] : 1;
                }
                spread(mean[k][v]);
                spread(worst[k][v]);
            }
            for (int r = 0; r < reaches; r++) {
                meanYears[k].put(year, r, mean[k]);
                worstYears[k].put(year, r, worst[k]);
            }
        }
    }

    /** Gives all reaches of a still water the value of the reach that holds its volume, the largest where several do. */
    private void spread(double[] values) {
        for (WaterBodies.Body body : hydraulics.reaches().bodies().all()) {
            if (body.kind() == ReachKind.STILL_WATER) {
                double most = 0;
                for (int r : hydraulics.alike(body.reaches().get(0))) {
                    most = Math.max(most, values[r]);
                }
                for (int r : body.reaches()) {
                    values[r] = most;
                }
            }
        }
    }

    YearBand mean(int part) {
        return meanYears[part];
    }

    YearBand worst(int part) {
        return worstYears[part];
    }
}
