// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.HashMap;
import java.util.Map;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Mixing;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.StateHydraulics;

/**
 * What is on top of the mixed concentration near the bank below outfalls: within the full-mixing length L_m of a bank
 * outfall, part x (max(1, 0.89 sqrt(L_m/x)) - 1), part from that site alone, x at least one width. It ends at a
 * bifurcation, at still water and at a confluence that brings more than half of the water, and never exceeds the release's own
 * concentration. The factor is that of a vertical line source at a bank with reflection, Fischer et al. (1979).
 */
final class NearBank {
    private static final double LINE_SOURCE = 0.89;
    private static final double HALF = 0.5;

    private final TransportInput input;
    private final RiverNetwork network;
    private final StateLayout layout;
    private final Cells cells;
    private final StateHydraulics hydraulics;
    private final RoutedWater water;
    private final CellRates rates;
    private final int variants;
    private final int width;
    /** By cell, at its head and at its end; cells of unmarked reaches have none. */
    private final Map<Integer, double[]> head = new HashMap<>();

    private final Map<Integer, double[]> end = new HashMap<>();
    private final boolean[] marked;
    private final boolean[] within;

    private NearBank(TransportInput input, Cells cells, StateHydraulics hydraulics, CellRates rates, int variants) {
        this.input = input;
        this.network = input.hydraulics().reaches().network();
        this.layout = input.layout();
        this.cells = cells;
        this.hydraulics = hydraulics;
        this.water = input.hydraulics().water(hydraulics.state());
        this.rates = rates;
        this.variants = variants;
        this.width = layout.count() * variants;
        this.marked = new boolean[network.size()];
        this.within = new boolean[network.size()];
    }

    static NearBank run(TransportInput input, Cells cells, StateHydraulics hydraulics, CellRates rates) {
        NearBank result = new NearBank(input, cells, hydraulics, rates, input.variantCount());
        for (SiteRelease site : input.sites()) {
            if (site.atBank()
                    && !input.hydraulics().isStill(site.reach())
                    && site.mercury().get(hydraulics.state()) > 0
                    && result.water.isWet(site.reach())) {
                result.follow(site);
            }
        }
        return result;
    }

    private void follow(SiteRelease site) {
        int first = cells.start(site.reach());
        double oneWidth = hydraulics.width(first);
        double mixing = Mixing.fullMixingLength(
                Mixing.BANK,
                hydraulics.velocity(first),
                oneWidth,
                hydraulics.depth(first),
                hydraulics.shearVelocity(first),
                input.options().transverse());
        double[] load = new double[width];
        for (int v = 0; v < variants; v++) {
            Releases.add(layout, site, hydraulics.state(), v, load, v, variants);
        }
        double kept = 1 - water.abstractedShare(site.reach());
        for (int i = 0; i < width; i++) {
            load[i] *= kept;
        }
        double own = site.water().get(hydraulics.state()) > 0
                ? site.mercury().get(hydraulics.state()) / site.water().get(hydraulics.state())
                : Double.POSITIVE_INFINITY;
        double x = 0;
        int reach = site.reach();
        while (reach >= 0 && x < mixing) {
            marked[reach] = true;
            x = alongReach(reach, x, oneWidth, mixing, own, load);
            within[reach] |= x <= oneWidth;
            reach = next(reach, load);
        }
    }

    private double alongReach(int reach, double from, double oneWidth, double mixing, double own, double[] load) {
        Propagator propagator = rates.propagator();
        double[] cellRates = new double[propagator.rateCount()];
        double[] none = new double[width];
        double[] out = new double[width];
        double[] time = new double[width];
        double x = from;
        for (int c = cells.start(reach); c < cells.start(reach + 1); c++) {
            put(head, c, load, hydraulics.head(c), Math.max(x, oneWidth), mixing, own);
            rates.fill(c, 0, cellRates);
            propagator.prepare(cellRates, 0, hydraulics.travelTime(c));
            for (int v = 0; v < variants; v++) {
                propagator.apply(load, none, out, time, v, variants);
            }
            System.arraycopy(out, 0, load, 0, width);
            x += cells.length(c);
            put(end, c, load, hydraulics.end(c), Math.max(x, oneWidth), mixing, own);
        }
        return x;
    }

    private void put(
            Map<Integer, double[]> into, int c, double[] load, double discharge, double x, double mixing, double own) {
        if (!(discharge > 0)) {
            return;
        }
        double[] values = into.computeIfAbsent(c, k -> new double[width]);
        double extra = Math.max(1, LINE_SOURCE * StrictMath.sqrt(mixing / x)) - 1;
        for (int v = 0; v < variants; v++) {
            double part = 0;
            for (int form = 0; form < layout.count(); form++) {
                part += load[form * variants + v] / discharge;
            }
            double allowed = part * extra;
            if (part * (1 + extra) > own) {
                allowed = Math.max(0, own - part);
            }
            for (int form = 0; form < layout.count(); form++) {
                double share = part > 0 ? load[form * variants + v] / discharge / part : 0;
                values[form * variants + v] += share * allowed;
            }
        }
    }

    private int next(int reach, double[] load) {
        int node = network.toNode(reach);
        if (network.outCount(node) != 1) {
            return -1;
        }
        int below = network.out(node, 0);
        if (input.hydraulics().isStill(below) || !water.isWet(below) || water.end(reach) < HALF * water.head(below)) {
            return -1;
        }
        double kept = 1 - water.abstractedShare(below);
        for (int i = 0; i < width; i++) {
            load[i] *= kept;
        }
        return below;
    }

    /** On top of the mixed concentration at a cell's head [kg/m3]. */
    double head(int cell, int form, int variant) {
        return value(head, cell, form, variant);
    }

    /** On top of the mixed concentration at a cell's end [kg/m3]. */
    double end(int cell, int form, int variant) {
        return value(end, cell, form, variant);
    }

    private double value(Map<Integer, double[]> of, int cell, int form, int variant) {
        double[] values = marked[cells.reach(cell)] ? of.get(cell) : null;
        return values == null ? 0 : values[form * variants + variant];
    }

    /** Whether part of a reach lies within the full-mixing length of a bank outfall. */
    boolean isMarked(int reach) {
        return marked[reach];
    }

    /** Whether a whole reach lies nearer to a bank outfall than one width. */
    boolean isWithinOneWidth(int reach) {
        return within[reach];
    }
}
