// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;

/**
 * Water of all flow states and the one bed under them in balance, in one pass down the network: in each cell the bed's stock
 * at which what is laid down over the year equals what leaves the bed, then the water of each state over it. Members are the
 * variants of the split, then the background.
 */
final class BedSteady {
    private static final int ROUNDS = 200;
    private static final double SETTLED_ON = 1e-13;

    private final TransportInput input;
    private final Cells cells;
    private final BedWater over;
    private final StateLayout layout;
    private final int forms;
    private final int members;
    private final BedCell cell;
    private final double[] share;
    private final double horizon;
    private final double[] stock;
    private final double[] methylation;
    private final double[] residence;
    private final double[] staying;
    private final double[] stayingHere;
    private final double[][] load;
    private final double[] source;
    private final double[] out;
    private final double[] time;

    private BedSteady(BedWater over, double horizon) {
        this.over = over;
        this.input = over.input();
        this.cells = over.cells();
        this.layout = input.layout();
        this.forms = layout.count();
        this.members = input.variantCount() + 1;
        this.horizon = horizon;
        this.cell = over.cell();
        int states = input.stateCount();
        this.share = new double[states];
        for (int s = 0; s < states; s++) {
            share[s] = input.hydraulics().share(s);
        }
        this.stock = new double[cells.count() * forms * members];
        this.methylation = new double[cells.count()];
        this.residence = new double[cells.count()];
        this.staying = new double[members];
        this.stayingHere = new double[members];
        Arrays.fill(methylation, 1);
        this.load = new double[states][forms * members];
        this.source = new double[forms * members];
        this.out = new double[forms * members];
        this.time = new double[forms * members];
    }

    /**
     * Solves.
     *
     * @param horizon for how long a form is laid down that never leaves the bed again [s]
     */
    static BedStocks solve(BedWater over, List<StateLoads> loads, double horizon) {
        BedSteady run = new BedSteady(over, horizon);
        run.sweep(loads, true);
        return new BedStocks(run.layout, run.members, run.stock, run.methylation, run.residence, run.staying);
    }

    /** Carries the water of every state over beds as they are. */
    static void carry(BedWater over, List<StateLoads> loads, BedStocks stocks) {
        BedSteady run = new BedSteady(over, 0);
        System.arraycopy(stocks.flat(), 0, run.stock, 0, run.stock.length);
        run.sweep(loads, false);
    }

    private void sweep(List<StateLoads> loads, boolean balancing) {
        int reaches = input.hydraulics().reaches().size();
        for (int r = 0; r < reaches; r++) {
            boolean[] wet = new boolean[load.length];
            for (int s = 0; s < load.length; s++) {
                wet[s] = loads.get(s).enter(r, load[s]);
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                cell.take(c);
                for (int s = 0; s < load.length; s++) {
                    if (wet[s]) {
                        over.takeUp(loads.get(s), s, c, load[s]);
                    }
                }
                if (balancing) {
                    bed(c, wet);
                }
                for (int s = 0; s < load.length; s++) {
                    if (wet[s]) {
                        over.carry(cell, loads.get(s), s, c, stock, load[s]);
                    }
                }
            }
            for (int s = 0; s < load.length; s++) {
                if (wet[s]) {
                    loads.get(s).leave(r, load[s]);
                }
            }
        }
    }

    /** Finds the stocks of a cell from what its water brings. */
    private void bed(int c, boolean[] wet) {
        double[] brought = new double[forms * members];
        for (int s = 0; s < load.length; s++) {
            if (wet[s]) {
                Arrays.fill(source, 0);
                over.background(s, c, source);
                for (int m = 0; m < members; m++) {
                    cell.step(s).apply(load[s], source, out, time, m, members);
                }
                for (int i = 0; i < forms; i++) {
                    double down = share[s] * cell.down(s, i);
                    for (int m = 0; m < members; m++) {
                        brought[i * members + m] += down * time[i * members + m];
                    }
                }
            }
        }
        double[] in = brought.clone();
        holdBack(c, brought);
        for (int m = 0; m < members; m++) {
            staying[m] += stayingHere[m];
        }
        residence[c] = residence(c, in, brought);
        System.arraycopy(brought, 0, stock, c * forms * members, forms * members);
    }

    /**
     * Mean time in the bed [s]: stock over what comes in, of the variant that stays longest (Little 1961); infinite where a
     * form comes in that never leaves, else 0 where no solids lie down or go, so that there is no bed to speak of.
     */
    private double residence(int c, double[] in, double[] held) {
        double longest = 0;
        for (int v = 0; v < members - 1; v++) {
            double enters = 0;
            double stays = 0;
            for (int i = 0; i < forms; i++) {
                enters += in[i * members + v];
                stays += held[i * members + v];
                if (in[i * members + v] > 0 && !cell.leaves(i)) {
                    return Double.POSITIVE_INFINITY;
                }
            }
            longest = enters > 0 ? Math.max(longest, stays / enters) : longest;
        }
        return over.solids().motion().isMoving(c) ? longest : 0;
    }

    /** Stocks in place of what comes in. What makes most MeHg decides how far its ceiling holds methylation back for all. */
    private void holdBack(int c, double[] brought) {
        double[] in = brought.clone();
        double[] own = new double[forms];
        double factor = 1;
        for (int round = 0; round < ROUNDS; round++) {
            cell.weigh(share, factor);
            for (int m = 0; m < members; m++) {
                for (int i = 0; i < forms; i++) {
                    own[i] = in[i * members + m];
                }
                stayingHere[m] = cell.balance(own, horizon);
                for (int i = 0; i < forms; i++) {
                    brought[i * members + m] = own[i];
                }
            }
            methylation[c] = factor;
            double enough = over.heldBackAbove(cell, c, share);
            double most = over.exchangeable(brought, 0);
            double next = most > enough ? enough / most : 1;
            if (Math.abs(next - factor) <= SETTLED_ON) {
                return;
            }
            factor = next;
        }
    }
}
