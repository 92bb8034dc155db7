// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * Still water, mixed all through, against the closed form of one tank and against a dense inverse of Apache Commons Math (LU with
 * pivoting) of the same equation, W_out = (I - A T)^-1 (W_in + b T).
 */
class MixedPropagatorTest {
    /** ROUNDING: a few operations. */
    private static final double EXACT = 1e-14;
    /** ROUNDING: seven states, and what the dense inverse itself loses. */
    private static final double AGAINST_DENSE = 1e-12;

    private static final int CORE = 3;
    private static final int FEEDERS = 4;
    private static final int STATES = CORE + FEEDERS;

    @Test
    void oneTankLetsPassOneOverOnePlusKT() {
        // steady mass balance of a mixed tank with first-order loss: Q c_in = Q c + k V c, so c/c_in = 1/(1 + k T)
        Propagator propagator = new Propagator(1, 1);
        double k = 3e-6;
        double residence = 2e6;
        propagator.prepareMixed(new double[] {-k, k, 0}, 0, residence);
        double[] out = new double[2];
        double[] time = new double[2];
        propagator.apply(new double[] {5, 2}, new double[2], out, time, 0, 1);
        assertThat(out[0]).isCloseTo(5.0 / 7, within(EXACT));
        assertThat(out[1]).isCloseTo(2.0 / 7, within(EXACT));
        // what the tank holds is its volume times its concentration: load out times T
        assertThat(time[0]).isCloseTo(residence * 5.0 / 7, within(residence * EXACT));
    }

    @Test
    void aSourceIsMixedInTheSame() {
        // per s of stay: b T enters
        Propagator propagator = new Propagator(1, 0);
        propagator.prepareMixed(new double[] {-4e-6}, 0, 1e6);
        double[] out = new double[1];
        double[] time = new double[1];
        propagator.apply(new double[] {0}, new double[] {3e-6}, out, time, 0, 1);
        assertThat(out[0]).isCloseTo(3.0 / 5, within(EXACT));
        assertThat(time[0]).isCloseTo(1e6 * 3 / 5, within(1e6 * EXACT));
    }

    @Test
    void coupledFormsAgreeWithADenseInverse() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            double residence = StrictMath.pow(10, 3 + 5 * random.nextDouble());
            double[] rates = rates(random, 8);
            double[] in = loads(random);
            double[] source = loads(random);
            Propagator propagator = new Propagator(CORE, FEEDERS);
            propagator.prepareMixed(rates, 0, residence);
            double[] out = new double[STATES];
            double[] time = new double[STATES];
            propagator.apply(in, source, out, time, 0, 1);
            RealMatrix tank = new Array2DRowRealMatrix(STATES, STATES);
            for (int i = 0; i < STATES; i++) {
                tank.setEntry(i, i, 1 - residence * entry(rates, i, i));
                for (int j = 0; j < STATES; j++) {
                    if (i != j) {
                        tank.setEntry(i, j, -residence * entry(rates, i, j));
                    }
                }
            }
            RealVector entering = new ArrayRealVector(in).add(new ArrayRealVector(source).mapMultiply(residence));
            RealVector dense = new LUDecomposition(tank).getSolver().solve(entering);
            for (int i = 0; i < STATES; i++) {
                assertThat(out[i] / dense.getEntry(i))
                        .as("seed %d, state %d", seed, i)
                        .isCloseTo(1, within(AGAINST_DENSE));
                assertThat(time[i] / (residence * dense.getEntry(i)))
                        .as("seed %d, state %d", seed, i)
                        .isCloseTo(1, within(AGAINST_DENSE));
            }
        }
    }

    @Test
    void whatEntersLeavesOrIsLostAndNothingIsNegative() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            double residence = StrictMath.pow(10, 10 * random.nextDouble());
            double[] rates = rates(random, 12);
            double[] in = loads(random);
            Propagator propagator = new Propagator(CORE, FEEDERS);
            propagator.prepareMixed(rates, 0, residence);
            double[] out = new double[STATES];
            double[] time = new double[STATES];
            propagator.apply(in, new double[STATES], out, time, 0, 1);
            double entered = 0;
            double accounted = 0;
            for (int j = 0; j < STATES; j++) {
                assertThat(out[j]).isNotNegative();
                double lost = -entry(rates, j, j);
                for (int i = 0; i < CORE; i++) {
                    lost -= i == j ? 0 : entry(rates, i, j);
                }
                entered += in[j];
                accounted += out[j] + lost * time[j];
            }
            assertThat(accounted / entered).as("seed %d", seed).isCloseTo(1, within(AGAINST_DENSE));
        }
    }

    @Test
    void manyTanksInSeriesAreFlowingWater() {
        // n tanks of T/n: (1 + k T/n)^-n, which goes to e^-kT with an error that halves with n (Levenspiel 1999, tanks
        // in series)
        Propagator plug = new Propagator(CORE, FEEDERS);
        Random random = new Random(4);
        double[] rates = rates(random, 2);
        double tau = 1e3;
        double[] in = loads(random);
        double[] expected = new double[STATES];
        plug.prepare(rates, 0, tau);
        plug.apply(in, new double[STATES], expected, new double[STATES], 0, 1);
        double before = 0;
        for (int n = 256; n <= 4096; n *= 2) {
            double error = 0;
            double[] out = series(rates, tau, n, in);
            for (int i = 0; i < STATES; i++) {
                error = Math.max(error, Math.abs(out[i] / expected[i] - 1));
            }
            if (before > 0) {
                assertThat(StrictMath.log(before / error) / StrictMath.log(2)).isBetween(0.9, 1.1);
            }
            before = error;
        }
    }

    private static double[] series(double[] rates, double tau, int n, double[] in) {
        Propagator tank = new Propagator(CORE, FEEDERS);
        tank.prepareMixed(rates, 0, tau / n);
        double[] load = in.clone();
        double[] out = new double[STATES];
        for (int k = 0; k < n; k++) {
            tank.apply(load, new double[STATES], out, new double[STATES], 0, 1);
            System.arraycopy(out, 0, load, 0, STATES);
        }
        return load;
    }

    @Test
    void aStretchIsKeptAndTakenUp() {
        Random random = new Random(9);
        Propagator propagator = new Propagator(CORE, FEEDERS);
        propagator.prepareMixed(rates(random, 4), 0, 1e5);
        double[] kept = new double[propagator.keptSize()];
        propagator.keep(kept, 0);
        double[] in = loads(random);
        double[] first = new double[STATES];
        propagator.apply(in, in, first, new double[STATES], 0, 1);
        Propagator other = new Propagator(CORE, FEEDERS);
        other.takeUp(kept, 0);
        double[] second = new double[STATES];
        other.apply(in, in, second, new double[STATES], 0, 1);
        assertThat(second).isEqualTo(first);
    }

    @Test
    void anEndlessStayIsRefused() {
        assertThatThrownBy(() -> new Propagator(1, 0).prepareMixed(new double[1], 0, Double.POSITIVE_INFINITY))
                .hasMessageContaining("residence time Infinity s is not allowed");
    }

    /** Entry of the full matrix A, row i, column j. */
    private static double entry(double[] rates, int i, int j) {
        if (j < CORE) {
            return i < CORE ? rates[i * CORE + j] : 0;
        }
        int at = CORE * CORE + (j - CORE) * (CORE + 1);
        return i == j ? -rates[at] : i < CORE ? rates[at + 1 + i] : 0;
    }

    /** Rates over some decades below 1e-3 /s. */
    private static double[] rates(Random random, int decades) {
        double[] rates = new double[CORE * CORE + FEEDERS * (CORE + 1)];
        for (int j = 0; j < CORE; j++) {
            double out = rate(random, decades);
            for (int i = 0; i < CORE; i++) {
                if (i != j) {
                    rates[i * CORE + j] = rate(random, decades);
                    out += rates[i * CORE + j];
                }
            }
            rates[j * CORE + j] = -out;
        }
        for (int k = 0; k < FEEDERS; k++) {
            int at = CORE * CORE + k * (CORE + 1);
            double out = rate(random, decades);
            for (int i = 0; i < CORE; i++) {
                rates[at + 1 + i] = rate(random, decades);
                out += rates[at + 1 + i];
            }
            rates[at] = out;
        }
        return rates;
    }

    private static double rate(Random random, int decades) {
        return StrictMath.pow(10, -3 - decades * random.nextDouble());
    }

    private static double[] loads(Random random) {
        double[] loads = new double[STATES];
        for (int i = 0; i < STATES; i++) {
            loads[i] = random.nextDouble();
        }
        return loads;
    }
}
