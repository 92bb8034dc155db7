// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
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
 * content + filtered, and is carried without loss. Exchangeable; it shares the water's partition.
 */
final class BackgroundSweep {
    private final double[] head;
    private final double[] end;
    private final Balance balance;

    private BackgroundSweep(double[] head, double[] end, Balance balance) {
        this.head = head;
        this.end = end;
        this.balance = balance;
    }

    static BackgroundSweep run(TransportInput input, Cells cells, StateHydraulics water) {
        Hydraulics hydraulics = input.hydraulics();
        RiverNetwork network = hydraulics.reaches().network();
        int state = water.state();
        RoutedWater routed = hydraulics.water(state);
        HeadLoads loads = new HeadLoads(network, routed, 1);
        double[] head = new double[cells.count()];
        double[] end = new double[cells.count()];
        double[] entering = new double[network.size()];
        CompensatedSum in = new CompensatedSum();
        CompensatedSum taken = new CompensatedSum();
        CompensatedSum dry = new CompensatedSum();
        CompensatedSum exported = new CompensatedSum();
        double[] load = new double[1];
        for (int r = 0; r < network.size(); r++) {
            entering[r] = routed.supply().head(r) * content(input, state, Math.max(routed.mean(r), routed.head(r)));
            in.add(entering[r]);
            loads.arriving(r, entering, load);
            if (!routed.isWet(r)) {
                dry.add(load[0]);
                loads.leaveNothing(r);
                continue;
            }
            taken.add(load[0] * routed.abstractedShare(r));
            load[0] *= 1 - routed.abstractedShare(r);
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                head[c] = load[0];
                double added = Math.max(0, water.end(c) - water.head(c)) * content(input, state, water.mean(c));
                in.add(added);
                load[0] += added;
                end[c] = load[0];
            }
            loads.leave(r, load, 0);
            if (network.isOutlet(r)) {
                exported.add(load[0]);
            }
        }
        String form = input.layout().name(input.layout().exchangeable());
        List<Balance.Row> rows = new ArrayList<>();
        rows.add(new Balance.Row(Process.BACKGROUND, form, in.value()));
        rows.add(new Balance.Row(Process.EXPORTED, form, exported.value()));
        rows.add(new Balance.Row(Process.ABSTRACTED, form, taken.value()));
        rows.add(new Balance.Row(Process.HELD_DRY, form, dry.value()));
        return new BackgroundSweep(head, end, new Balance(rows));
    }

    private static double content(TransportInput input, int state, double discharge) {
        double sediment = discharge > 0 ? input.sediment().get(state).at(discharge) : 0;
        return sediment * input.backgroundContent() + input.lateralFiltered().get(state);
    }

    /** Load at a cell's head [kg/s]. */
    double head(int cell) {
        return head[cell];
    }

    /** Load at a cell's end [kg/s]. */
    double end(int cell) {
        return end[cell];
    }

    Balance balance() {
        return balance;
    }
}
