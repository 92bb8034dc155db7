// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.numerics.LossElimination;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.StateHydraulics;

/**
 * One cell's bed and the water of all flow states over it. What the bed gives back partly settles again in the same cell,
 * as it is or as another form, and partly leaves for good: out of the cell, to the air, over the bank. Together with
 * burial and reactions that makes the bed's own rates, every one a sum of terms that are not negative. Not thread-safe.
 */
final class BedCell {
    private final List<StateHydraulics> water;
    private final List<CellRates> rates;
    private final BedExchange exchange;
    private final int forms;
    private final int core;
    private final Propagator[] steps;
    private final double[] cellRates;
    private final double[] unit;
    private final double[] none;
    private final double[] out;
    private final double[] time;
    private final double[][] again;
    private final double[][] gone;
    private final double[] transfer;
    private final double[] leak;
    private int cell;

    BedCell(StateLayout layout, List<StateHydraulics> water, List<CellRates> rates, BedExchange exchange) {
        this.water = water;
        this.rates = rates;
        this.exchange = exchange;
        this.forms = layout.count();
        this.core = layout.core();
        int states = water.size();
        this.steps = new Propagator[states];
        Arrays.setAll(steps, s -> rates.get(s).propagator());
        this.cellRates = new double[steps[0].rateCount()];
        this.unit = new double[forms];
        this.none = new double[forms];
        this.out = new double[forms];
        this.time = new double[forms];
        this.again = new double[states][forms * forms];
        this.gone = new double[states][forms];
        this.transfer = new double[forms * forms];
        this.leak = new double[forms];
    }

    /** Takes a cell: the water of every flow state, and where what the bed gives back to it goes. */
    void take(int c) {
        cell = c;
        for (int s = 0; s < steps.length; s++) {
            if (water.get(s).isWet(c)) {
                rates.get(s).fill(c, 0, cellRates);
                water.get(s).prepare(steps[s], cellRates, 0, c);
                for (int form = 0; form < forms; form++) {
                    follow(s, form);
                }
            } else {
                Arrays.fill(again[s], 0);
                Arrays.fill(gone[s], 0);
            }
        }
    }

    private void follow(int s, int form) {
        double back = exchange.returned(s, cell, form);
        CellRates own = rates.get(s);
        unit[form] = 1 / water.get(s).travelTime(cell);
        steps[s].apply(none, unit, out, time, 0, 1);
        unit[form] = 0;
        gone[s][form] = 0;
        for (int i = 0; i < forms; i++) {
            again[s][i * forms + form] = back * (own.settled(cell, i) + own.toPores(cell, i)) * time[i];
            gone[s][form] += back * (out[i] + (own.overbank(cell, i) + own.evaded(cell, i)) * time[i]);
        }
    }

    /** The prepared water of a flow state, which must be wet. */
    Propagator step(int state) {
        return steps[state];
    }

    /** Rate at which the water of a state gives a form to the bed [1/s]. */
    double down(int state, int form) {
        return rates.get(state).settled(cell, form) + rates.get(state).toPores(cell, form);
    }

    /**
     * Works out the bed's own rates.
     *
     * @param weight of each flow state [-]
     * @param methylation share of the stated rate of methylation that goes on [-]
     */
    void weigh(double[] weight, double methylation) {
        Arrays.fill(transfer, 0);
        for (int form = 0; form < forms; form++) {
            leak[form] = exchange.buried(cell, form);
        }
        for (int s = 0; s < steps.length; s++) {
            if (weight[s] == 0) {
                continue;
            }
            for (int i = 0; i < forms * forms; i++) {
                transfer[i] += weight[s] * again[s][i];
            }
            for (int form = 0; form < forms; form++) {
                leak[form] += weight[s] * gone[s][form];
            }
            for (int t = 0; t < exchange.turns(); t++) {
                double rate = exchange.turned(t, s, cell) * (exchange.methylates(t) ? methylation : 1);
                transfer[exchange.to(t) * forms + exchange.from(t)] += weight[s] * rate;
            }
        }
    }

    /** The rates last weighed, as a propagator of the same layout takes them: dM/dt = A M + d. */
    void fill(double[] into) {
        Arrays.fill(into, 0);
        for (int j = 0; j < forms; j++) {
            int feeder = core * core + (j - core) * (core + 1);
            for (int i = 0; i < core; i++) {
                if (i != j) {
                    into[j < core ? i * core + j : feeder + 1 + i] = transfer[i * forms + j];
                }
            }
            if (j < core) {
                into[j * core + j] = -leaving(j);
            } else {
                into[feeder] = leaving(j);
            }
        }
    }

    /** Rate at which a form leaves the bed as itself, what settles again as itself left out [1/s]. */
    double leaving(int form) {
        double sum = leak[form];
        for (int i = 0; i < core; i++) {
            sum += i == form ? 0 : transfer[i * forms + form];
        }
        return sum;
    }

    /** Whether a form ever leaves the bed, as itself or as another. */
    boolean leaves(int form) {
        boolean core = false;
        for (int i = 0; i < this.core; i++) {
            core |= leak[i] > 0;
        }
        return form < this.core ? core : leak[form] > 0 || leaving(form) > 0 && core;
    }

    /** Rate at which a form leaves the cell for good [1/s]. */
    double leak(int form) {
        return leak[form];
    }

    /**
     * The stocks at which the bed is in balance.
     *
     * @param stock on entry what comes in [kg/s], then the stocks [kg]
     * @param horizon for how long a form is laid down that never leaves again [s]
     * @return what comes in and never leaves again [kg/s], at least 0
     */
    double balance(double[] stock, double horizon) {
        double[] coreTransfer = new double[core * core];
        double[] coreLeak = Arrays.copyOf(leak, core);
        double[] coreStock = Arrays.copyOf(stock, core);
        double staying = 0;
        for (int j = core; j < forms; j++) {
            double leaving = leaving(j);
            staying += leaving > 0 ? 0 : stock[j];
            stock[j] = leaving > 0 ? stock[j] / leaving : stock[j] * horizon;
            for (int i = 0; i < core; i++) {
                coreStock[i] += transfer[i * forms + j] * stock[j];
            }
        }
        for (int i = 0; i < core; i++) {
            System.arraycopy(transfer, i * forms, coreTransfer, i * core, core);
        }
        staying += LossElimination.solve(coreTransfer, coreLeak, coreStock, horizon);
        System.arraycopy(coreStock, 0, stock, 0, core);
        return staying;
    }
}
