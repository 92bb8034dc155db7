// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/** Carries released mercury of one flow state in one bound down the network, for all variants of the split at once. */
final class MercurySweep {
    private MercurySweep() {}

    static StateLoads run(TransportInput input, Cells cells, StateHydraulics hydraulics, CellRates rates) {
        int variants = input.variantCount();
        double[] releases = Releases.mercury(input, hydraulics.state(), variants);
        return run(input, cells, hydraulics, rates, releases, variants, Lateral.none(cells.count()));
    }

    static StateLoads run(
            TransportInput input,
            Cells cells,
            StateHydraulics hydraulics,
            CellRates rates,
            double[] releases,
            int variants,
            Lateral along) {
        StateLoads loads = new StateLoads(input, cells, hydraulics, releases, variants);
        Propagator propagator = rates.propagator();
        double[] cellRates = new double[propagator.rateCount()];
        int width = input.layout().count() * variants;
        int exchangeable = input.layout().exchangeable();
        double[] load = new double[width];
        double[] source = new double[width];
        double[] out = new double[width];
        double[] integral = new double[width];
        for (int r = 0; r < input.hydraulics().reaches().size(); r++) {
            if (!loads.enter(r, load)) {
                continue;
            }
            if (!along.isAny() && isEmpty(load)) {
                // what carries nothing takes no time: all loads and integrals are 0 as they stand
                loads.leave(r, load);
                continue;
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                double tau = hydraulics.travelTime(c);
                rates.fill(c, along.lossRate(c), cellRates);
                hydraulics.prepare(propagator, cellRates, 0, c);
                for (int v = 0; v < variants; v++) {
                    source[exchangeable * variants + v] = along.source(c);
                    loads.addLateral(exchangeable * variants + v, along.source(c) * tau);
                    propagator.apply(load, source, out, integral, v, variants);
                }
                loads.pass(c, load, out, integral, along.lossRate(c));
                System.arraycopy(out, 0, load, 0, width);
            }
            loads.leave(r, load);
        }
        return loads;
    }

    private static boolean isEmpty(double[] load) {
        for (double each : load) {
            if (each != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * What enters and leaves along cells: exchangeable mercury of lateral water, and abstraction spread along a cell.
     * Arrays by cell.
     */
    static final class Lateral {
        private final double[] source;
        private final double[] loss;
        private final boolean any;

        /** Source [kg/s per s of travel] and loss rate [1/s] by cell. */
        Lateral(double[] source, double[] loss) {
            this.source = source;
            this.loss = loss;
            this.any = !isEmpty(source) || !isEmpty(loss);
        }

        /** Whether anything enters or leaves along any cell. */
        boolean isAny() {
            return any;
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
