// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import org.silverwake.model.numerics.Propagator;

/**
 * Everything of one era that time steps need again and again, worked out once per cell: the water of each flow state and the
 * bed over each kind of step, as kept propagators. A kind of step is a set of weights of the flow states and a duration.
 */
final class BedSteps {
    /** Change of the share of methylation that is worth a new propagator [-]. */
    private static final double WORTH = 1e-12;

    private final BedWater over;
    private final List<Kind> kinds;
    private final int kept;
    private final double[][] water;
    private final double[][] bed;
    private final double[][] methylation;
    private final double[][] enough;
    private final BedCell cell;
    private final double[] bedRates;
    private final Propagator maker;

    /**
     * A kind of step.
     *
     * @param weight of each flow state [-]
     * @param duration [s]
     */
    record Kind(List<Double> weight, double duration) {
        Kind {
            weight = List.copyOf(weight);
        }

        double[] weights() {
            return weight.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    BedSteps(BedWater over, List<Kind> kinds) {
        this.over = over;
        this.kinds = List.copyOf(kinds);
        this.cell = over.cell();
        this.maker = over.rates(0).propagator();
        this.kept = maker.keptSize();
        this.bedRates = new double[maker.rateCount()];
        int cells = over.cells().count();
        this.water = new double[over.input().stateCount()][cells * kept];
        this.bed = new double[kinds.size()][cells * kept];
        this.methylation = new double[kinds.size()][cells];
        this.enough = new double[kinds.size()][cells];
        for (double[] each : methylation) {
            Arrays.fill(each, 1);
        }
        for (int c = 0; c < cells; c++) {
            cell.take(c);
            for (int s = 0; s < water.length; s++) {
                if (over.water().get(s).isWet(c)) {
                    cell.step(s).keep(water[s], c * kept);
                }
            }
            for (int k = 0; k < bed.length; k++) {
                prepareBed(c, k);
                enough[k][c] = over.heldBackAbove(cell, c, kinds.get(k).weights());
            }
        }
    }

    private void prepareBed(int c, int k) {
        cell.weigh(kinds.get(k).weights(), methylation[k][c]);
        cell.fill(bedRates);
        maker.prepare(bedRates, 0, kinds.get(k).duration());
        maker.keep(bed[k], c * kept);
    }

    /** Holds methylation back as the exchangeable mercury of each cell's bed asks [kg], once a year. */
    void holdBack(double[] exchangeable) {
        if (over.exchange().methylation().isEmpty()) {
            return;
        }
        for (int c = 0; c < methylation[0].length; c++) {
            double most = exchangeable[c];
            boolean taken = false;
            for (int k = 0; k < kinds.size(); k++) {
                double next = most > enough[k][c] ? enough[k][c] / most : 1;
                if (Math.abs(next - methylation[k][c]) > WORTH) {
                    if (!taken) {
                        cell.take(c);
                        taken = true;
                    }
                    methylation[k][c] = next;
                    prepareBed(c, k);
                }
            }
        }
    }

    /** Takes up the water of a flow state in a cell, which must be wet. */
    void takeWater(Propagator into, int state, int c) {
        into.takeUp(water[state], c * kept);
    }

    /** Takes up the bed of a cell over a kind of step. */
    void takeBed(Propagator into, int kind, int c) {
        into.takeUp(bed[kind], c * kept);
    }

    /** Kinds of steps. */
    List<Kind> kinds() {
        return kinds;
    }
}
