// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.CompensatedSum;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;

/**
 * Background mercury of one flow state, the same in both bounds: it enters with headwater and lateral water at sediment x
 * content + filtered, and is carried without loss. Where sediment is rated by discharge and a river so holds more than its
 * waters brought, it takes the rest from its bed and banks at the same content; still water takes nothing. Exchangeable; it shares the water's
 * partition.
 */
final class BackgroundSweep implements BackgroundLoads {
    /** Place of mercury on solids [kg/s] among what is carried. */
    private static final int SOLIDS = 0;
    /** Place of the water that the land brought [m3/s], which holds the filtered mercury. */
    private static final int WATER = 1;

    private final int exchangeable;
    private final StateHydraulics water;
    private final double[] head;
    private final double[] end;
    private final double[] atHead;
    private final double[] takenUp;
    private final double[] along;
    private final Map<Integer, Double> takenAt;
    private final Balance balance;

    private BackgroundSweep(
            int exchangeable,
            StateHydraulics water,
            double[] head,
            double[] end,
            double[][] entering,
            Map<Integer, Double> takenAt,
            Balance balance) {
        this.exchangeable = exchangeable;
        this.water = water;
        this.atHead = entering[0];
        this.takenUp = entering[1];
        this.along = entering[2];
        this.head = head;
        this.end = end;
        this.takenAt = takenAt;
        this.balance = balance;
    }

    static BackgroundSweep run(TransportInput input, Cells cells, StateHydraulics water) {
        Hydraulics hydraulics = input.hydraulics();
        RiverNetwork network = hydraulics.reaches().network();
        int state = water.state();
        RoutedWater routed = hydraulics.water(state);
        HeadLoads loads = new HeadLoads(network, routed, 2);
        double[] head = new double[cells.count()];
        double[] end = new double[cells.count()];
        double[] entering = new double[2 * network.size()];
        double[] atHead = new double[network.size()];
        double[] added = new double[cells.count()];
        double[] along = new double[cells.count()];
        double filtered = input.lateralFiltered().get(state);
        boolean rated = input.sediment().get(state).b() != 0;
        CompensatedSum in = new CompensatedSum();
        CompensatedSum taken = new CompensatedSum();
        Map<Integer, Double> takenAt = new HashMap<>();
        CompensatedSum dry = new CompensatedSum();
        CompensatedSum exported = new CompensatedSum();
        double[] load = new double[2];
        for (int r = 0; r < network.size(); r++) {
            double onSolids = onSolids(input, state, water.mean(cells.start(r)));
            entering[2 * r + SOLIDS] = routed.supply().head(r) * onSolids;
            entering[2 * r + WATER] = routed.supply().head(r);
            atHead[r] = routed.supply().head(r) * (onSolids + filtered);
            in.add(atHead[r]);
            loads.arriving(r, entering, load);
            double share = routed.abstractedShare(r);
            if (share > 0) {
                takenAt.put(r, share * (load[SOLIDS] + filtered * load[WATER]));
                taken.add(takenAt.get(r));
            }
            load[SOLIDS] *= 1 - share;
            load[WATER] *= 1 - share;
            if (!routed.isWet(r)) {
                dry.add(load[SOLIDS] + filtered * load[WATER]);
                loads.leaveNothing(r);
                continue;
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                onSolids = onSolids(input, state, water.mean(c));
                double held = rated && !water.isStill(c) ? Math.min(load[WATER], water.head(c)) * onSolids : 0;
                double takenUp = Math.max(0, held - load[SOLIDS]);
                double lateral = Math.max(0, water.end(c) - water.head(c));
                load[SOLIDS] += takenUp;
                head[c] = load[SOLIDS] + filtered * load[WATER];
                load[SOLIDS] += lateral * onSolids;
                load[WATER] += lateral;
                end[c] = load[SOLIDS] + filtered * load[WATER];
                added[c] = takenUp;
                along[c] = lateral * (onSolids + filtered);
                in.add(takenUp);
                in.add(along[c]);
            }
            loads.leave(r, load, 0);
            if (network.isOutlet(r)) {
                exported.add(load[SOLIDS] + filtered * load[WATER]);
            }
        }
        String form = input.layout().name(input.layout().exchangeable());
        List<Balance.Row> rows = new ArrayList<>();
        rows.add(new Balance.Row(Process.BACKGROUND, form, in.value()));
        rows.add(new Balance.Row(Process.EXPORTED, form, exported.value()));
        rows.add(new Balance.Row(Process.ABSTRACTED, form, taken.value()));
        rows.add(new Balance.Row(Process.HELD_DRY, form, dry.value()));
        return new BackgroundSweep(
                input.layout().exchangeable(),
                water,
                head,
                end,
                new double[][] {atHead, added, along},
                takenAt,
                new Balance(rows));
    }

    /** Mercury on background solids per water [kg/m3] at a discharge. */
    private static double onSolids(TransportInput input, int state, double discharge) {
        return discharge > 0 ? input.sediment().get(state).at(discharge) * input.backgroundContent() : 0;
    }

    /** What enters a reach with headwaters [kg/s]. */
    double atHead(int reach) {
        return atHead[reach];
    }

    /** What a cell's water takes up at its head to hold its rated solids [kg/s]. */
    double takenUp(int cell) {
        return takenUp[cell];
    }

    /** What enters a cell with lateral water [kg/s]. */
    double along(int cell) {
        return along[cell];
    }

    @Override
    public double head(int cell, int form) {
        return form == exchangeable ? head[cell] : 0;
    }

    @Override
    public double end(int cell, int form) {
        return form == exchangeable ? end[cell] : 0;
    }

    @Override
    public double time(int cell, int form) {
        double mean = water.isMixed(cell) ? end[cell] : 0.5 * (head[cell] + end[cell]);
        return form == exchangeable ? mean * water.travelTime(cell) : 0;
    }

    @Override
    public double taken(int reach) {
        return takenAt.getOrDefault(reach, 0.0);
    }

    @Override
    public Balance balance() {
        return balance;
    }
}
