// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.CompensatedSum;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;

/**
 * Loads of one flow state at every cell's head and end and their time integrals, for several members at once (the inner
 * stride): variants of the split, the background. A sweep fills it reach by reach, downstream. Array index: (cell x forms +
 * form) x members + member.
 */
final class StateLoads {
    private final StateLayout layout;
    private final RiverNetwork network;
    private final Cells cells;
    private final RoutedWater water;
    private final int members;
    private final int width;
    private final double[] releases;
    private final HeadLoads arriving;
    private final double[] head;
    private final double[] end;
    private final double[] time;
    private final CompensatedSum[] abstracted;
    private final CompensatedSum[] heldDry;
    private final CompensatedSum[] lateral;
    private final CompensatedSum[] fromBed;
    private final double[] exported;
    private final double[] spreadLoss;
    private final Map<Integer, double[]> takenAt = new HashMap<>();

    /**
     * Nothing yet.
     *
     * @param releases at the heads of reaches [kg/s], index (reach x forms + form) x members + member
     */
    StateLoads(TransportInput input, Cells cells, StateHydraulics hydraulics, double[] releases, int members) {
        this.layout = input.layout();
        this.network = input.hydraulics().reaches().network();
        this.cells = cells;
        this.water = input.hydraulics().water(hydraulics.state());
        this.members = members;
        this.width = layout.count() * members;
        this.releases = releases;
        this.arriving = new HeadLoads(network, water, width);
        this.head = new double[cells.count() * width];
        this.end = new double[cells.count() * width];
        this.time = new double[cells.count() * width];
        this.abstracted = sums(width);
        this.heldDry = sums(width);
        this.lateral = sums(width);
        this.fromBed = sums(width);
        this.exported = new double[width];
        this.spreadLoss = new double[cells.count()];
    }

    private static CompensatedSum[] sums(int n) {
        CompensatedSum[] sums = new CompensatedSum[n];
        Arrays.setAll(sums, i -> new CompensatedSum());
        return sums;
    }

    /** Fills {@code load} with what a reach's water carries at its head, abstractions gone; false where the reach is dry. */
    boolean enter(int reach, double[] load) {
        arriving.arriving(reach, releases, load);
        double share = water.abstractedShare(reach);
        addAll(abstracted, load, share);
        if (share > 0) {
            takenAt.put(reach, Arrays.stream(load).map(l -> l * share).toArray());
        }
        for (int i = 0; i < width; i++) {
            load[i] *= 1 - share;
        }
        if (!water.isWet(reach)) {
            addAll(heldDry, load, 1);
            arriving.leaveNothing(reach);
            return false;
        }
        return true;
    }

    /** Keeps what passed through a cell: loads at its head and end, their time integrals, and what came in along it [kg/s]. */
    void pass(int cell, double[] in, double[] out, double[] integral, double spread) {
        System.arraycopy(in, 0, head, cell * width, width);
        System.arraycopy(out, 0, end, cell * width, width);
        System.arraycopy(integral, 0, time, cell * width, width);
        spreadLoss[cell] = spread;
    }

    /** Adds what came in with lateral water [kg/s]. */
    void addLateral(int index, double rate) {
        lateral[index].add(rate);
    }

    /** Adds what the bed gave back [kg/s]. */
    void addFromBed(int index, double rate) {
        fromBed[index].add(rate);
    }

    /** Keeps the loads at a reach's end. */
    void leave(int reach, double[] load) {
        arriving.leave(reach, load, 0);
        if (network.isOutlet(reach)) {
            for (int i = 0; i < width; i++) {
                exported[i] += load[i];
            }
        }
    }

    private static void addAll(CompensatedSum[] sums, double[] load, double factor) {
        for (int i = 0; i < load.length; i++) {
            sums[i].add(load[i] * factor);
        }
    }

    /** The budget of a member: every loss is a rate times the time integral of the load. */
    Balance balance(CellRates rates, int member) {
        List<Balance.Row> rows = new ArrayList<>();
        for (int form = 0; form < layout.count(); form++) {
            int i = form * members + member;
            CompensatedSum released = new CompensatedSum();
            for (int r = 0; r < network.size(); r++) {
                released.add(releases[r * width + i]);
            }
            CompensatedSum settled = new CompensatedSum();
            CompensatedSum overbank = new CompensatedSum();
            CompensatedSum evaded = new CompensatedSum();
            CompensatedSum lost = new CompensatedSum();
            CompensatedSum toPores = new CompensatedSum();
            CompensatedSum taken = new CompensatedSum();
            taken.add(abstracted[i].value());
            for (int c = 0; c < cells.count(); c++) {
                double w = time[c * width + i];
                settled.add(rates.settled(c, form) * w);
                overbank.add(rates.overbank(c, form) * w);
                evaded.add(rates.evaded(c, form) * w);
                lost.add(rates.lost(c, form) * w);
                toPores.add(rates.toPores(c, form) * w);
                taken.add(spreadLoss[c] * w);
            }
            String name = layout.name(form);
            rows.add(new Balance.Row(Process.RELEASED, name, released.value()));
            rows.add(new Balance.Row(Process.LATERAL, name, lateral[i].value()));
            rows.add(new Balance.Row(Process.EXPORTED, name, exported[i]));
            rows.add(new Balance.Row(Process.SETTLED, name, settled.value()));
            rows.add(new Balance.Row(Process.OVERBANK, name, overbank.value()));
            rows.add(new Balance.Row(Process.ABSTRACTED, name, taken.value()));
            if (evaded.value() > 0) {
                rows.add(new Balance.Row(Process.EVADED, name, evaded.value()));
            }
            if (lost.value() > 0) {
                rows.add(new Balance.Row(Process.LOST, name, lost.value()));
            }
            if (fromBed[i].value() > 0 || toPores.value() > 0) {
                rows.add(new Balance.Row(Process.FROM_BED, name, fromBed[i].value()));
                rows.add(new Balance.Row(Process.TO_PORES, name, toPores.value()));
            }
            rows.add(new Balance.Row(Process.HELD_DRY, name, heldDry[i].value()));
        }
        return new Balance(rows);
    }

    /** What abstractions at a reach's head take of all forms [kg/s]. */
    double taken(int reach, int member) {
        double[] taken = takenAt.get(reach);
        double sum = 0;
        for (int form = 0; taken != null && form < layout.count(); form++) {
            sum += taken[form * members + member];
        }
        return sum;
    }

    /** Load at a cell's head [kg/s]. */
    double head(int cell, int form, int member) {
        return head[cell * width + form * members + member];
    }

    /** Load at a cell's end [kg/s]. */
    double end(int cell, int form, int member) {
        return end[cell * width + form * members + member];
    }

    /** Time integral of the load in a cell [kg]. */
    double time(int cell, int form, int member) {
        return time[cell * width + form * members + member];
    }

    /** Number of members [-]. */
    int members() {
        return members;
    }
}
