// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.model.numerics.Propagator;

/**
 * Everything of one era that time steps need again and again, worked out once per cell: the water of each flow state and the
 * bed over each kind of step, as kept propagators. A kind of step is a set of weights of the flow states and a duration.
 */
final class BedSteps {
    /** Change of the share of methylation that is worth a new propagator [-]. */
    private static final double WORTH = 1e-12;

    private final BedWater over;
    private final int kept;
    private final double[][] water;
    private final double[][] bed;
    private final double[][] methylation;
    private final double[][] enough;
    private final double[][] weight;
    private final int[][] active;
    private final double[] duration;
    private final double[][] releases;

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
        this.kept = over.rates(0).propagator().keptSize();
        int cells = over.cells().count();
        int states = over.input().stateCount();
        this.water = new double[states][cells * kept];
        this.bed = new double[kinds.size()][cells * kept];
        this.methylation = new double[kinds.size()][cells];
        this.enough = new double[kinds.size()][cells];
        this.weight = new double[kinds.size()][];
        this.active = new int[kinds.size()][];
        this.duration = kinds.stream().mapToDouble(Kind::duration).toArray();
        for (int k = 0; k < weight.length; k++) {
            double[] of = kinds.get(k).weights();
            weight[k] = of;
            active[k] = IntStream.range(0, states).filter(s -> of[s] > 0).toArray();
        }
        this.releases = new double[states][];
        Arrays.setAll(releases, over::releases);
    }

    /** What makes cells ready; one for each thread. */
    Maker maker() {
        return new Maker();
    }

    /** Makes cells ready, for one thread; it writes to what is kept of its cells alone. */
    final class Maker {
        private final BedCell cell = over.cell();
        private final Propagator propagator = over.rates(0).propagator();
        private final double[] bedRates = new double[propagator.rateCount()];

        /** Makes a cell ready for an era, methylation as it is stated. */
        void prepare(int c) {
            cell.take(c);
            for (int s = 0; s < water.length; s++) {
                if (over.water().get(s).isWet(c)) {
                    cell.step(s).keep(water[s], c * kept);
                }
            }
            for (int k = 0; k < bed.length; k++) {
                methylation[k][c] = 1;
                bed(c, k);
                enough[k][c] = over.heldBackAbove(cell, c, weight[k]);
            }
        }

        private void bed(int c, int k) {
            cell.weigh(weight[k], methylation[k][c]);
            cell.fill(bedRates);
            propagator.prepare(bedRates, 0, duration[k]);
            propagator.keep(bed[k], c * kept);
        }

        /** Holds methylation back as the exchangeable mercury of a cell's bed asks [kg], once a year. */
        void holdBack(int c, double exchangeable) {
            boolean taken = false;
            for (int k = 0; k < bed.length; k++) {
                double next = exchangeable > enough[k][c] ? enough[k][c] / exchangeable : 1;
                if (Math.abs(next - methylation[k][c]) > WORTH) {
                    if (!taken) {
                        cell.take(c);
                        taken = true;
                    }
                    methylation[k][c] = next;
                    bed(c, k);
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

    /** Weight of each flow state in a kind of step [-]. */
    double[] weight(int kind) {
        return weight[kind];
    }

    /** Flow states of some weight in a kind of step. */
    int[] active(int kind) {
        return active[kind];
    }

    /** How long a kind of step lasts [s]. */
    double duration(int kind) {
        return duration[kind];
    }

    /** Releases and headwater background of a flow state [kg/s], as {@link BedWater#releases} has them. */
    double[] releases(int state) {
        return releases[state];
    }
}
