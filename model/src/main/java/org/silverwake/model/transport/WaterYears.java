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
    private final double[] mean;
    private final double[] worst;
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
        this.mean = new double[reaches * n * variants];
        this.worst = new double[reaches * n * variants];
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
        Arrays.fill(mean, 0);
        Arrays.fill(worst, 0);
    }

    private int at(int reach, int part, int variant) {
        return (reach * parts + part) * variants + variant;
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
                for (int v = 0; v < variants; v++) {
                    double value = (load[form * members + v] + load[form * members + members - 1]) / discharge;
                    if (marked) {
                        value += atHead ? bank.head(c, form, v) : bank.end(c, form, v);
                    }
                    for (int k = 0; k < sum.length; k++) {
                        double weight = atNone[k][form] + rise[k][form] * filtered;
                        sum[k][v] += weight > 0 ? weight * value : 0;
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
                    int at = at(reach, k, v);
                    mean[at] += share * now[state][k][v];
                    worst[at] = Math.max(worst[at], now[state][k][v]);
                    now[state][k][v] = 0;
                }
            }
        }
    }

    void endYear(int year) {
        for (int r = 0; r < reaches; r++) {
            for (int i = at(r, 0, 0); i < at(r + 1, 0, 0); i++) {
                mean[i] /= wetShare[r] > 0 ? wetShare[r] : 1;
            }
        }
        for (int k = 0; k < parts; k++) {
            for (int v = 0; v < variants; v++) {
                spread(mean, k, v);
                spread(worst, k, v);
            }
            for (int r = 0; r < reaches; r++) {
                put(meanYears[k], year, r, mean, k);
                put(worstYears[k], year, r, worst, k);
            }
        }
    }

    private void put(YearBand band, int year, int reach, double[] values, int part) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int v = 0; v < variants; v++) {
            least = Math.min(least, values[at(reach, part, v)]);
            most = Math.max(most, values[at(reach, part, v)]);
        }
        band.put(year, reach, least, most);
    }

    /** Gives all reaches of a still water the value of the reach that holds its volume, the largest where several do. */
    private void spread(double[] values, int part, int variant) {
        for (WaterBodies.Body body : hydraulics.reaches().bodies().all()) {
            if (body.kind() == ReachKind.STILL_WATER) {
                double most = 0;
                for (int r : hydraulics.alike(body.reaches().get(0))) {
                    most = Math.max(most, values[at(r, part, variant)]);
                }
                for (int r : body.reaches()) {
                    values[at(r, part, variant)] = most;
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
