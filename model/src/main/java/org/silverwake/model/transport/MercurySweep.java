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
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;

/**
 * Released mercury of one flow state in one bound: loads at every cell's head and end and their time integrals, for all
 * variants at once (the inner stride). Array index: (cell x forms + form) x variants + variant.
 */
final class MercurySweep {
    private final StateLayout layout;
    private final RiverNetwork network;
    private final Cells cells;
    private final StateHydraulics hydraulics;
    private final RoutedWater water;
    private final int variants;
    private final int width;
    private final double[] releases;
    private final double[] head;
    private final double[] end;
    private final double[] time;
    private final double[] abstracted;
    private final double[] heldDry;
    private final double[] lateral;
    private final double[] exported;
    private final double[] spreadLoss;
    private final Map<Integer, double[]> takenAt = new HashMap<>();

    private MercurySweep(
            TransportInput input, Cells cells, StateHydraulics hydraulics, double[] releases, int variants) {
        this.layout = input.layout();
        this.network = input.hydraulics().reaches().network();
        this.cells = cells;
        this.hydraulics = hydraulics;
        this.water = input.hydraulics().water(hydraulics.state());
        this.variants = variants;
        this.width = layout.count() * variants;
        this.releases = releases;
        this.head = new double[cells.count() * width];
        this.end = new double[cells.count() * width];
        this.time = new double[cells.count() * width];
        this.abstracted = new double[width];
        this.heldDry = new double[width];
        this.lateral = new double[width];
        this.exported = new double[width];
        this.spreadLoss = new double[cells.count()];
    }

    static MercurySweep run(TransportInput input, Cells cells, StateHydraulics hydraulics, CellRates rates) {
        int variants = input.variantCount();
        double[] releases = Releases.mercury(input, hydraulics.state(), variants);
        return run(input, cells, hydraulics, rates, releases, variants, Lateral.none(cells.count()));
    }

    static MercurySweep run(
            TransportInput input,
            Cells cells,
            StateHydraulics hydraulics,
            CellRates rates,
            double[] releases,
            int variants,
            Lateral lateral) {
        MercurySweep sweep = new MercurySweep(input, cells, hydraulics, releases, variants);
        sweep.sweep(rates, lateral);
        return sweep;
    }

    private void sweep(CellRates rates, Lateral along) {
        Propagator propagator = rates.propagator();
        double[] cellRates = new double[propagator.rateCount()];
        HeadLoads loads = new HeadLoads(network, water, width);
        double[] load = new double[width];
        double[] source = new double[width];
        double[] out = new double[width];
        double[] integral = new double[width];
        CompensatedSum[] gone = sums(3 * width);
        for (int r = 0; r < network.size(); r++) {
            loads.arriving(r, releases, load);
            double share = water.abstractedShare(r);
            addAll(gone, width, load, share);
            if (share > 0) {
                takenAt.put(r, Arrays.stream(load).map(l -> l * share).toArray());
            }
            for (int i = 0; i < width; i++) {
                load[i] *= 1 - share;
            }
            if (!water.isWet(r)) {
                addAll(gone, 0, load, 1);
                loads.leaveNothing(r);
                continue;
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                double tau = hydraulics.travelTime(c);
                spreadLoss[c] = along.lossRate(c);
                rates.fill(c, spreadLoss[c], cellRates);
                propagator.prepare(cellRates, 0, tau);
                for (int i = 0; i < width; i++) {
                    source[i] = i / variants == layout.exchangeable() ? along.source(c) : 0;
                    gone[2 * width + i].add(source[i] * tau);
                }
                for (int v = 0; v < variants; v++) {
                    propagator.apply(load, source, out, integral, v, variants);
                }
                System.arraycopy(load, 0, head, c * width, width);
                System.arraycopy(out, 0, end, c * width, width);
                System.arraycopy(integral, 0, time, c * width, width);
                System.arraycopy(out, 0, load, 0, width);
            }
            loads.leave(r, load, 0);
            if (network.isOutlet(r)) {
                for (int i = 0; i < width; i++) {
                    exported[i] += load[i];
                }
            }
        }
        for (int i = 0; i < width; i++) {
            heldDry[i] = gone[i].value();
            abstracted[i] = gone[width + i].value();
            lateral[i] = gone[2 * width + i].value();
        }
    }

    private static CompensatedSum[] sums(int n) {
        CompensatedSum[] sums = new CompensatedSum[n];
        for (int i = 0; i < n; i++) {
            sums[i] = new CompensatedSum();
        }
        return sums;
    }

    private static void addAll(CompensatedSum[] sums, int offset, double[] load, double factor) {
        for (int i = 0; i < load.length; i++) {
            sums[offset + i].add(load[i] * factor);
        }
    }

    /** The budget of a variant: every loss is a rate times the time integral of the load. */
    Balance balance(CellRates rates, int variant) {
        List<Balance.Row> rows = new ArrayList<>();
        for (int form = 0; form < layout.count(); form++) {
            int i = form * variants + variant;
            CompensatedSum released = new CompensatedSum();
            for (int r = 0; r < network.size(); r++) {
                released.add(releases[r * width + i]);
            }
            CompensatedSum settled = new CompensatedSum();
            CompensatedSum overbank = new CompensatedSum();
            CompensatedSum evaded = new CompensatedSum();
            CompensatedSum taken = new CompensatedSum();
            taken.add(abstracted[i]);
            for (int c = 0; c < cells.count(); c++) {
                double w = time[c * width + i];
                settled.add(rates.settled(c, form) * w);
                overbank.add(rates.overbank(c, form) * w);
                evaded.add(rates.evaded(c, form) * w);
                taken.add(spreadLoss[c] * w);
            }
            String name = layout.name(form);
            rows.add(new Balance.Row(Process.RELEASED, name, released.value()));
            rows.add(new Balance.Row(Process.LATERAL, name, lateral[i]));
            rows.add(new Balance.Row(Process.EXPORTED, name, exported[i]));
            rows.add(new Balance.Row(Process.SETTLED, name, settled.value()));
            rows.add(new Balance.Row(Process.OVERBANK, name, overbank.value()));
            rows.add(new Balance.Row(Process.ABSTRACTED, name, taken.value()));
            if (evaded.value() > 0) {
                rows.add(new Balance.Row(Process.EVADED, name, evaded.value()));
            }
            rows.add(new Balance.Row(Process.HELD_DRY, name, heldDry[i]));
        }
        return new Balance(rows);
    }

    /** What abstractions at a reach's head take of all forms [kg/s]. */
    double taken(int reach, int variant) {
        double[] taken = takenAt.get(reach);
        double sum = 0;
        for (int form = 0; taken != null && form < layout.count(); form++) {
            sum += taken[form * variants + variant];
        }
        return sum;
    }

    /** Load at a cell's head [kg/s]. */
    double head(int cell, int form, int variant) {
        return head[cell * width + form * variants + variant];
    }

    /** Load at a cell's end [kg/s]. */
    double end(int cell, int form, int variant) {
        return end[cell * width + form * variants + variant];
    }

    /** Time integral of the load in a cell [kg]. */
    double time(int cell, int form, int variant) {
        return time[cell * width + form * variants + variant];
    }

    /** Number of variants [-]. */
    int variants() {
        return variants;
    }

    /**
     * What enters and leaves along cells: exchangeable mercury of lateral water, and abstraction spread along a cell.
     * Arrays by cell.
     */
    static final class Lateral {
        private final double[] source;
        private final double[] loss;

        /** Source [kg/s per s of travel] and loss rate [1/s] by cell. */
        Lateral(double[] source, double[] loss) {
            this.source = source;
            this.loss = loss;
        }

        static Lateral none(int cells) {
            return new Lateral(new double[cells], new double[cells]);
        }

        double source(int cell) {
            return source[cell];
        }

        double lossRate(int cell) {
            return loss[cell];
        }
    }
}
