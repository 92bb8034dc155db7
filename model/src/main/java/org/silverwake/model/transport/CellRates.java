// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.Partitioning;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * Rates of mercury in one flow state and bound, cell by cell: by process for the budget, and put together for the
 * propagator. Settling acts on the sorbed part of exchangeable mercury and on grain-bound mercury.
 */
final class CellRates {
    private final StateLayout layout;
    private final int forms;
    private final double[] settled;
    private final double[] gross;
    private final double[] overbank;
    private final double[] filtered;
    private final double conversion;

    private CellRates(StateLayout layout, int cells, double conversion) {
        this.layout = layout;
        this.forms = layout.count();
        this.settled = new double[cells * forms];
        this.gross = new double[cells * forms];
        this.overbank = new double[cells * forms];
        this.filtered = new double[cells];
        this.conversion = conversion;
    }

    static CellRates of(TransportInput input, Cells cells, StateHydraulics water, SolidsState solids) {
        CellRates rates =
                new CellRates(input.layout(), cells.count(), input.options().grainRelease());
        Settling settling = new Settling(input, water.state());
        for (int c = 0; c < cells.count(); c++) {
            if (water.isWet(c)) {
                rates.cell(input, water, solids, c, settling.overbank(water.velocity(c)));
            }
        }
        return rates;
    }

    private void cell(TransportInput input, StateHydraulics water, SolidsState solids, int c, double overbankRate) {
        int classes = layout.classCount();
        double[] own = new double[classes];
        double capacity = 0;
        double sediment = solids.sediment(c);
        for (int j = 0; j < classes; j++) {
            own[j] = CellCutter.coefficient(input, j, sediment) * solids.solids(c, j);
            capacity += own[j];
        }
        Partitioning split = Partitioning.of(input.doc().get(water.state()), capacity);
        filtered[c] = split.filtered();
        int exchangeable = c * forms + layout.exchangeable();
        for (int j = 0; j < classes; j++) {
            double rate = solids.rate(c, j);
            double kept = rate * SolidsState.scale(input, j, solids.beta(c));
            double sorbed = split.sorbed(own[j]);
            settled[exchangeable] += sorbed * kept;
            gross[exchangeable] += sorbed * rate;
            overbank[exchangeable] += sorbed * overbankRate;
            int grain = c * forms + layout.grainBound(j);
            settled[grain] = kept;
            gross[grain] = rate;
            overbank[grain] = overbankRate;
        }
    }

    /** Puts a cell's rates together for a propagator of this layout; {@code spread} is a loss shared by all [1/s]. */
    void fill(int cell, double spread, double[] into) {
        int exchangeable = cell * forms + layout.exchangeable();
        into[0] = -(settled[exchangeable] + overbank[exchangeable] + spread);
        for (int j = 0; j < layout.classCount(); j++) {
            int grain = cell * forms + layout.grainBound(j);
            int at = 1 + 2 * j;
            into[at] = settled[grain] + overbank[grain] + conversion + spread;
            into[at + 1] = conversion;
        }
    }

    /** A propagator that fits. */
    Propagator propagator() {
        return new Propagator(layout.core(), layout.feeders());
    }

    /** Settling rate of a form as the bound has it [1/s]. */
    double settled(int cell, int form) {
        return settled[cell * forms + form];
    }

    /** Gross settling rate of a form [1/s]. */
    double gross(int cell, int form) {
        return gross[cell * forms + form];
    }

    /** Overbank loss rate of a form [1/s]. */
    double overbank(int cell, int form) {
        return overbank[cell * forms + form];
    }

    /** Rate at which a form leaves as itself [1/s], the diagonal of the rates with its sign turned. */
    double lossRate(int cell, int form) {
        double turned = form == layout.exchangeable() ? 0 : conversion;
        return settled(cell, form) + overbank(cell, form) + turned;
    }

    /** Filtered share of exchangeable mercury [-]. */
    double filtered(int cell) {
        return filtered[cell];
    }

    /** Scales one settling rate, to show that the budget notices. */
    CellRates perturbed(int cell, int form, double factor) {
        CellRates copy = new CellRates(layout, filtered.length, conversion);
        System.arraycopy(settled, 0, copy.settled, 0, settled.length);
        System.arraycopy(gross, 0, copy.gross, 0, gross.length);
        System.arraycopy(overbank, 0, copy.overbank, 0, overbank.length);
        System.arraycopy(filtered, 0, copy.filtered, 0, filtered.length);
        copy.settled[cell * forms + form] *= factor;
        return copy;
    }
}
