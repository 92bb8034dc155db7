// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The propagator against closed forms, and against a general-purpose integrator of Apache Commons Math (Dormand &amp;
 * Prince 8(5,3)).
 */
class PropagatorTest {
    /** ROUNDING: a few operations per doubling. */
    private static final double EXACT = 1e-13;
    /** The demand; the reference integrator's own tolerance is 1e-10. */
    private static final double AGAINST_INTEGRATOR = 1e-6;

    private static final int CORE = 3;
    private static final int FEEDERS = 4;

    @Test
    void aLoneStateDecaysExponentially() {
        Propagator propagator = new Propagator(1, 0);
        propagator.prepare(new double[] {-2e-4}, 0, 5000);
        double[] out = new double[1];
        double[] time = new double[1];
        propagator.apply(new double[] {3}, new double[] {0}, out, time, 0, 1);
        assertThat(out[0]).isCloseTo(3 * StrictMath.exp(-1.0), within(3 * EXACT));
        assertThat(time[0]).isCloseTo(3 * (1 - StrictMath.exp(-1.0)) / 2e-4, within(15000 * EXACT));
    }

    @Test
    void aSourceFillsUpToItsClosedForm() {
        // dW/dt = -k W + b, W(0) = 0: W = b/k (1 - e^-kt); integral = b/k (t - (1 - e^-kt)/k)
        Propagator propagator = new Propagator(1, 1);
        double k = 3e-4;
        double t = 20000;
        propagator.prepare(new double[] {-k, k, 0}, 0, t);
        double[] out = new double[2];
        double[] time = new double[2];
        propagator.apply(new double[] {0, 0}, new double[] {5e-9, 7e-9}, out, time, 0, 1);
        double grown = (1 - StrictMath.exp(-k * t)) / k;
        assertThat(out[0] / (5e-9 * grown)).isCloseTo(1, within(EXACT));
        assertThat(out[1] / (7e-9 * grown)).isCloseTo(1, within(EXACT));
        assertThat(time[0] / (5e-9 * (t - grown) / k)).isCloseTo(1, within(10 * EXACT));
        assertThat(time[1] / (7e-9 * (t - grown) / k)).isCloseTo(1, within(10 * EXACT));
    }

    @Test
    void equalRatesAreNoTrap() {
        // Bateman (1910) with equal rates: second member = k t e^-kt
        Propagator propagator = new Propagator(1, 1);
        double k = 1e-4;
        propagator.prepare(new double[] {-k, k, k}, 0, 30000);
        double[] out = new double[2];
        propagator.apply(new double[] {0, 1}, new double[2], out, new double[2], 0, 1);
        assertThat(out[0]).isCloseTo(3 * StrictMath.exp(-3.0), within(10 * EXACT));
    }

    @Test
    void aSlowCoreOfOneKeepsItsDigitsBesideAFastFeeder() {
        // sand that falls at once beside exchangeable mercury that hardly does: q tau = 4e8
        Propagator propagator = new Propagator(1, 1);
        double slow = 1e-6;
        double tau = 4e5;
        propagator.prepare(new double[] {-slow, 1e3, 1}, 0, tau);
        double[] out = new double[2];
        double[] time = new double[2];
        propagator.apply(new double[] {1, 1}, new double[2], out, time, 0, 1);
        double fed = 1 / (1e3 - slow);
        assertThat(out[0] / ((1 + fed) * StrictMath.exp(-slow * tau))).isCloseTo(1, within(EXACT));
        assertThat(out[0] + slow * time[0]).isCloseTo(1 + time[1], within(EXACT));
        assertThat(time[1]).isCloseTo(1e-3, within(1e-3 * EXACT));
    }

    @Test
    void strideAndOffsetReachOnlyTheirMember() {
        Propagator propagator = new Propagator(1, 1);
        propagator.prepare(new double[] {-1e-4, 2e-4, 2e-4}, 0, 1e4);
        double[] in = {1, 10, 2, 20};
        double[] out = {-1, -1, -1, -1};
        double[] time = {-1, -1, -1, -1};
        propagator.apply(in, new double[4], out, time, 1, 2);
        double[] plain = new double[2];
        propagator.apply(new double[] {10, 20}, new double[2], plain, new double[2], 0, 1);
        assertThat(out).containsExactly(-1, plain[0], -1, plain[1]);
    }

    @Test
    void thousandRandomReachesAgreeWithAGeneralIntegrator() {
        long[] seeds = {1, 2, 3, 4, 5, 6, 7, 8, 9, System.nanoTime()};
        for (long seed : seeds) {
            Random random = new Random(seed);
            double worst = 0;
            for (int trial = 0; trial < 100; trial++) {
                worst = Math.max(worst, relativeErrorOfRandomReach(random, seed));
            }
            assertThat(worst).as("seed %d", seed).isLessThan(AGAINST_INTEGRATOR);
        }
    }

    @Test
    void nothingIsNegativeAndMassClosesOverTenOrdersOfRates() {
        Random random = new Random(11);
        Propagator propagator = new Propagator(CORE, FEEDERS);
        for (int trial = 0; trial < 2000; trial++) {
            double[] loss = new double[CORE + FEEDERS];
            double[] rates = randomRates(random, loss, 1e-9, 1e-2);
            double tau = logUniform(random, 1e2, 1e6);
            double[] in = new double[CORE + FEEDERS];
            double[] source = new double[CORE + FEEDERS];
            double[] out = new double[CORE + FEEDERS];
            double[] time = new double[CORE + FEEDERS];
            double entered = 0;
            for (int i = 0; i < in.length; i++) {
                in[i] = logUniform(random, 1e-15, 1e-5);
                source[i] = logUniform(random, 1e-15, 1e-5) / tau;
                entered += in[i] + source[i] * tau;
            }
            propagator.prepare(rates, 0, tau);
            propagator.apply(in, source, out, time, 0, 1);
            double left = 0;
            for (int i = 0; i < in.length; i++) {
                assertThat(out[i]).as("seed 11, trial %d", trial).isGreaterThanOrEqualTo(0);
                assertThat(time[i]).isGreaterThanOrEqualTo(0);
                left += out[i] + loss[i] * time[i];
            }
            // ROUNDING: 2^n eps with q tau up to 3e4
            assertThat(left / entered).as("seed 11, trial %d", trial).isCloseTo(1, within(3e-11));
        }
    }

    private static double relativeErrorOfRandomReach(Random random, long seed) {
        double[] loss = new double[CORE + FEEDERS];
        double tau = logUniform(random, 1e2, 1e6);
        double[] rates = randomRates(random, loss, 1e-9, 1e-2);
        double[] in = new double[CORE + FEEDERS];
        double[] source = new double[CORE + FEEDERS];
        for (int i = 0; i < in.length; i++) {
            in[i] = random.nextDouble();
            source[i] = random.nextDouble() / tau;
        }
        double[] out = new double[in.length];
        double[] time = new double[in.length];
        Propagator propagator = new Propagator(CORE, FEEDERS);
        propagator.prepare(rates, 0, tau);
        propagator.apply(in, source, out, time, 0, 1);
        double[] expected = integrate(rates, in, source, tau);
        double worst = 0;
        for (int i = 0; i < in.length; i++) {
            assertThat(out[i]).as("seed %d", seed).isGreaterThanOrEqualTo(0);
            worst = Math.max(worst, Math.abs(out[i] - expected[i]) / Math.max(Math.abs(expected[i]), 1e-6));
            double t = expected[in.length + i];
            worst = Math.max(worst, Math.abs(time[i] / tau - t) / Math.max(t, 1e-6));
        }
        return worst;
    }

    /** State and integral over tau (per tau), in scaled time. */
    private static double[] integrate(double[] rates, double[] in, double[] source, double tau) {
        int n = CORE + FEEDERS;
        double[][] a = new double[n][n];
        for (int i = 0; i < CORE; i++) {
            System.arraycopy(rates, i * CORE, a[i], 0, CORE);
        }
        for (int k = 0; k < FEEDERS; k++) {
            int at = CORE * CORE + k * (CORE + 1);
            a[CORE + k][CORE + k] = -rates[at];
            for (int i = 0; i < CORE; i++) {
                a[i][CORE + k] = rates[at + 1 + i];
            }
        }
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2 * n;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dy) {
                for (int i = 0; i < n; i++) {
                    double sum = source[i];
                    for (int m = 0; m < n; m++) {
                        sum += a[i][m] * y[m];
                    }
                    dy[i] = sum * tau;
                    dy[n + i] = y[i];
                }
            }
        };
        double[] y = new double[2 * n];
        System.arraycopy(in, 0, y, 0, n);
        // With an absolute tolerance of 1e-12 the integrator's own error reaches the test's 1e-6 of a state of 1e-6
        new DormandPrince853Integrator(1e-12, 1, 1e-15, 1e-12).integrate(equations, 0, y, 1, y);
        return y;
    }

    private static double[] randomRates(Random random, double[] loss, double low, double high) {
        double[] rates = new double[CORE * CORE + FEEDERS * (CORE + 1)];
        for (int j = 0; j < CORE; j++) {
            loss[j] = logUniform(random, low, high);
            double leaving = loss[j];
            for (int i = 0; i < CORE; i++) {
                if (i != j) {
                    rates[i * CORE + j] = logUniform(random, low, high);
                    leaving += rates[i * CORE + j];
                }
            }
            rates[j * CORE + j] = -leaving;
        }
        for (int k = 0; k < FEEDERS; k++) {
            int at = CORE * CORE + k * (CORE + 1);
            loss[CORE + k] = logUniform(random, low, high);
            double decay = loss[CORE + k];
            for (int i = 0; i < CORE; i++) {
                rates[at + 1 + i] = logUniform(random, low, high);
                decay += rates[at + 1 + i];
            }
            rates[at] = decay;
        }
        return rates;
    }

    private static double logUniform(Random random, double low, double high) {
        return low * StrictMath.pow(high / low, random.nextDouble());
    }

    /** What stands for every linear map: the value of what comes out is the transposed value of what goes in. */
    @Test
    void theTransposeGivesTheSameValueFromTheOtherSide() {
        Random random = new Random(5);
        int states = CORE + FEEDERS;
        for (int draw = 0; draw < 200; draw++) {
            Propagator propagator = new Propagator(CORE, FEEDERS);
            double tau = StrictMath.pow(10, 2 + 4 * random.nextDouble());
            if (draw % 2 == 0) {
                propagator.prepare(rates(random), 0, tau);
            } else {
                propagator.prepareMixed(rates(random), 0, tau);
            }
            double[][] side = new double[4][states];
            for (double[] each : side) {
                for (int i = 0; i < states; i++) {
                    each[i] = random.nextDouble();
                }
            }
            double[] out = new double[states];
            double[] time = new double[states];
            propagator.apply(side[0], side[1], out, time, 0, 1);
            double[] perIn = new double[states];
            double[] perSource = new double[states];
            propagator.applyTransposed(side[2], side[3], perIn, perSource, 0, 1);
            double forward = dot(side[2], out) + dot(side[3], time);
            double backward = dot(perIn, side[0]) + dot(perSource, side[1]);
            assertThat(backward / forward).as("draw %d", draw).isCloseTo(1, within(10 * EXACT));
        }
    }

    private static double[] rates(Random random) {
        double[] rates = new double[CORE * CORE + FEEDERS * (CORE + 1)];
        for (int j = 0; j < CORE; j++) {
            double leaving = StrictMath.pow(10, -7 + 4 * random.nextDouble());
            for (int i = 0; i < CORE; i++) {
                if (i != j) {
                    rates[i * CORE + j] = StrictMath.pow(10, -7 + 4 * random.nextDouble());
                    leaving += rates[i * CORE + j];
                }
            }
            rates[j * CORE + j] = -leaving;
        }
        for (int k = 0; k < FEEDERS; k++) {
            int at = CORE * CORE + k * (CORE + 1);
            for (int i = 0; i < CORE; i++) {
                rates[at + 1 + i] = StrictMath.pow(10, -7 + 4 * random.nextDouble());
                rates[at] += rates[at + 1 + i];
            }
        }
        return rates;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
