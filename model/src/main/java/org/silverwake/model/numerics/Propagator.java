// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import java.util.Arrays;

/**
 * Carries loads through one stretch of water with constant rates: dW/dt = A W + b over travel time tau, with the outgoing
 * load and the time integral of every load. Every balance term is a rate times that integral, so none is found by
 * difference.
 *
 * <p>The states are a small <i>core</i>, whose members turn into one another both ways, and <i>feeders</i>, each of which
 * decays on its own and may feed the core. Rates of one stretch lie in a flat array: the core matrix row by row
 * (off-diagonals at least 0, diagonal minus the sum of all that leaves), then for each feeder its decay (at least 0) and
 * its yield to each core state (at least 0).
 *
 * <p>Method: uniformization and doubling. With q the largest decay and h = tau/2^n so that q h is at most 1/4, exp(Ah) =
 * e^(-qh) sum ((A + qI)h)^j/j!, all terms nonnegative; integrals likewise; n doublings without a subtraction. So nothing
 * is negative, nothing cancels, and equal rates are no trap. Squaring a core of several members lets rounding grow as 2^n
 * (about 1e-11 relative at q tau = 1e4); lone members (feeders, a core of one) decay by exp itself, so a slow one keeps all its
 * digits beside a fast one.
 * Essentially nonnegative matrices: Xue &amp; Ye (2013); Shao, Gao &amp; Xue (2014).
 *
 * <p>The stretch may also be still water, mixed all through; see {@link #prepareMixed}.
 *
 * <p>Not thread-safe: it owns its work space. Cost O(core^2 (core + feeders) n).
 */
public final class Propagator {
    private static final int TERMS = 12;
    private static final double LARGEST_STEP = 0.25;

    private final int core;
    private final int feeders;
    private final double[] e;
    private final double[] phi;
    private final double[] phi2;
    private final double[] f;
    private final double[] g;
    private final double[] g2;
    private final double[] s;
    private final double[] decay;
    private final double[] sPhi;
    private final double[] sPhi2;
    private final double[] p;
    private final double[] power;
    private final double[] work;
    private final double[] weight = new double[TERMS];
    private final double[] weight1 = new double[TERMS];
    private final double[] weight2 = new double[TERMS];
    private final double[] own;

    /** The numbers of the stretch in use, laid out as {@link #keep} has them: own ones, or kept ones where they lie. */
    private double[] numbers;

    private int start;

    /**
     * A propagator.
     *
     * @param core number of core states [-], at least 1
     * @param feeders number of feeders [-], at least 0
     */
    public Propagator(int core, int feeders) {
        this.core = core;
        this.feeders = feeders;
        this.e = new double[core * core];
        this.phi = new double[core * core];
        this.phi2 = new double[core * core];
        this.f = new double[core * feeders];
        this.g = new double[core * feeders];
        this.g2 = new double[core * feeders];
        this.s = new double[feeders];
        this.decay = new double[feeders];
        this.sPhi = new double[feeders];
        this.sPhi2 = new double[feeders];
        this.p = new double[core * core];
        this.power = new double[core * core];
        this.work = new double[core * core];
        this.own = new double[keptSize()];
        this.numbers = own;
    }

    /** Number of states [-]: core first, then feeders. */
    public int stateCount() {
        return core + feeders;
    }

    /** Number of rates of one stretch [-]. */
    public int rateCount() {
        return core * core + feeders * (core + 1);
    }

    /**
     * Takes the rates of a stretch and its travel time; {@link #apply} then serves any number of members.
     *
     * @param rates rates [1/s], laid out as the class comment says
     * @param offset where they begin
     * @param tau travel time [s], at least 0, finite
     * @throws IllegalArgumentException if tau is negative or not finite
     */
    public void prepare(double[] rates, int offset, double tau) {
        requireTime("travel time", tau);
        double q = 0;
        for (int i = 0; i < core; i++) {
            q = Math.max(q, -rates[offset + i * core + i]);
        }
        for (int k = 0; k < feeders; k++) {
            decay[k] = rates[offset + core * core + k * (core + 1)];
            q = Math.max(q, decay[k]);
        }
        int doublings = 0;
        double h = tau;
        while (q * h > LARGEST_STEP) {
            h *= 0.5;
            doublings++;
        }
        smallStep(rates, offset, q, h);
        double step = h;
        for (int d = 0; d < doublings; d++) {
            twice(step);
            step *= 2;
            if (core == 1) {
                e[0] = StrictMath.exp(rates[offset] * step);
            }
        }
        use();
    }

    /**
     * Takes the rates of a stretch of still water, mixed all through, and the time its water stays: the load out is W_out = (I - A T)^-1
     * (W_in + b T), its time integral T W_out, so that {@link #apply} and every balance go on as for flowing water. The core is
     * solved without a subtraction beyond that of its own leaks, so nothing is negative.
     *
     * @param rates rates [1/s], laid out as the class comment says
     * @param offset where they begin
     * @param residence time that water stays, volume over discharge out [s], at least 0, finite
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public void prepareMixed(double[] rates, int offset, double residence) {
        requireTime("residence time", residence);
        mixedCore(rates, offset, residence);
        for (int i = 0; i < core * core; i++) {
            phi[i] = residence * e[i];
            phi2[i] = residence * phi[i];
        }
        for (int k = 0; k < feeders; k++) {
            int at = offset + core * core + k * (core + 1);
            s[k] = 1 / (1 + rates[at] * residence);
            sPhi[k] = residence * s[k];
            sPhi2[k] = residence * sPhi[k];
            for (int i = 0; i < core; i++) {
                double fed = 0;
                for (int m = 0; m < core; m++) {
                    fed += phi[i * core + m] * rates[at + 1 + m];
                }
                f[k * core + i] = fed * s[k];
                g[k * core + i] = residence * f[k * core + i];
                g2[k * core + i] = residence * g[k * core + i];
            }
        }
        use();
    }

    /** Columns of (I - A T)^-1: what of each core state flows out as what. Flowing out is a leak of 1/T, here times T. */
    private void mixedCore(double[] rates, int offset, double residence) {
        double[] leak = new double[core];
        double[] column = new double[core];
        for (int j = 0; j < core; j++) {
            for (int from = 0; from < core; from++) {
                double lost = -rates[offset + from * core + from];
                for (int to = 0; to < core; to++) {
                    work[to * core + from] = residence * rates[offset + to * core + from];
                    lost -= to == from ? 0 : rates[offset + to * core + from];
                }
                leak[from] = 1 + residence * Math.max(0, lost);
                column[from] = from == j ? 1 : 0;
            }
            LossElimination.solve(work, leak, column, 0);
            for (int i = 0; i < core; i++) {
                e[i * core + j] = column[i];
            }
        }
    }

    private static void requireTime(String name, double time) {
        if (!(time >= 0 && time < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " " + time + " s is not allowed; it is at least 0 and finite");
        }
    }

    private void smallStep(double[] rates, int offset, double q, double h) {
        weights(q, h);
        for (int i = 0; i < core * core; i++) {
            p[i] = rates[offset + i];
        }
        for (int i = 0; i < core; i++) {
            p[i * core + i] += q;
        }
        Arrays.fill(e, 0);
        Arrays.fill(phi, 0);
        Arrays.fill(phi2, 0);
        Arrays.fill(power, 0);
        for (int i = 0; i < core; i++) {
            power[i * core + i] = 1;
        }
        for (int j = 0; j < TERMS; j++) {
            for (int i = 0; i < core * core; i++) {
                e[i] += power[i] * weight[j];
                phi[i] += power[i] * weight1[j];
                phi2[i] += power[i] * weight2[j];
            }
            multiply(p, power, core, work);
            System.arraycopy(work, 0, power, 0, core * core);
        }
        for (int k = 0; k < feeders; k++) {
            feederStep(rates, offset + core * core + k * (core + 1), k, q, h);
        }
    }

    private void feederStep(double[] rates, int at, int k, double q, double h) {
        double x = decay[k] * h;
        s[k] = StrictMath.exp(-x);
        sPhi[k] = h * meanOfDecay(x);
        double series = 0;
        double term = 0.5;
        for (int j = 0; j < TERMS; j++) {
            series += term;
            term *= -x / (j + 3);
        }
        sPhi2[k] = h * h * series;
        double[] u = new double[core];
        double r = 1;
        for (int j = 0; j < TERMS; j++) {
            for (int i = 0; i < core; i++) {
                int slot = k * core + i;
                f[slot] = (j == 0 ? 0 : f[slot]) + u[i] * weight[j];
                g[slot] = (j == 0 ? 0 : g[slot]) + u[i] * weight1[j];
                g2[slot] = (j == 0 ? 0 : g2[slot]) + u[i] * weight2[j];
            }
            double[] next = new double[core];
            for (int i = 0; i < core; i++) {
                double sum = rates[at + 1 + i] * r;
                for (int m = 0; m < core; m++) {
                    sum += p[i * core + m] * u[m];
                }
                next[i] = sum;
            }
            u = next;
            r *= q - decay[k];
        }
    }

    /** (1 - e^-x)/x [-], 1 at x = 0; x at least 0 [-]. */
    public static double meanOfDecay(double x) {
        return x == 0 ? 1 : -StrictMath.expm1(-x) / x;
    }

    /** Weights e^(-qh) h^j/j! and their first and second integrals over h, every term nonnegative. */
    private void weights(double q, double h) {
        double end = StrictMath.exp(-q * h);
        double head = 1;
        for (int j = 0; j < TERMS; j++) {
            weight[j] = end * head;
            double term = head * h / (j + 1);
            double first = 0;
            double second = 0;
            for (int k = 0; k < TERMS; k++) {
                first += term;
                double below = term * h / (j + 2 + k);
                second += (k + 1) * below;
                term = below * q;
            }
            weight1[j] = end * first;
            weight2[j] = end * second;
            head *= h / (j + 1);
        }
    }

    private void twice(double step) {
        for (int k = 0; k < feeders; k++) {
            int at = k * core;
            for (int i = 0; i < core; i++) {
                double phiF = 0;
                double phiG = 0;
                for (int m = 0; m < core; m++) {
                    phiF += phi[i * core + m] * f[at + m];
                    phiG += phi[i * core + m] * g[at + m];
                }
                work[i] = g[at + i] + phiF + g[at + i] * s[k];
                g2[at + i] = 2 * g2[at + i] + phiG + g[at + i] * sPhi[k];
            }
            for (int i = 0; i < core; i++) {
                double eF = 0;
                for (int m = 0; m < core; m++) {
                    eF += e[i * core + m] * f[at + m];
                }
                power[i] = eF + f[at + i] * s[k];
            }
            for (int i = 0; i < core; i++) {
                g[at + i] = work[i];
                f[at + i] = power[i];
            }
            sPhi2[k] = sPhi2[k] + step * sPhi[k] + s[k] * sPhi2[k];
            sPhi[k] += s[k] * sPhi[k];
            s[k] = StrictMath.exp(-decay[k] * 2 * step);
        }
        multiply(phi, phi, core, work);
        for (int i = 0; i < core * core; i++) {
            phi2[i] = 2 * phi2[i] + work[i];
        }
        multiply(e, phi, core, work);
        for (int i = 0; i < core * core; i++) {
            phi[i] += work[i];
        }
        multiply(e, e, core, work);
        System.arraycopy(work, 0, e, 0, core * core);
    }

    private static void multiply(double[] a, double[] b, int n, double[] product) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int m = 0; m < n; m++) {
                    sum += a[i * n + m] * b[m * n + j];
                }
                product[i * n + j] = sum;
            }
        }
    }

    /** Numbers needed to keep a prepared stretch [-]. */
    public int keptSize() {
        return 3 * core * core + 3 * core * feeders + 3 * feeders;
    }

    private void use() {
        int next = 0;
        for (double[] part : new double[][] {e, phi, phi2, f, g, g2, s, sPhi, sPhi2}) {
            System.arraycopy(part, 0, own, next, part.length);
            next += part.length;
        }
        numbers = own;
        start = 0;
    }

    /** Keeps the prepared stretch's numbers (mixed units [-] to [s2]) in an array at an index; {@link #takeUp} brings it back. */
    public void keep(double[] into, int at) {
        System.arraycopy(numbers, start, into, at, own.length);
    }

    /** Takes up a stretch kept before, its numbers [as kept] at an index; they are read where they lie, not copied. */
    public void takeUp(double[] from, int at) {
        numbers = from;
        start = at;
    }

    /** Carries the loads of all members through the prepared stretch; arrays as {@link #apply} has them, state by state [kg/s, kg]. */
    public void applyAll(double[] loadIn, double[] source, double[] loadOut, double[] loadTime, int members) {
        for (int m = 0; m < members; m++) {
            apply(loadIn, source, loadOut, loadTime, m, members);
        }
    }

    /**
     * Carries one member's loads through the prepared stretch. State i lies at {@code offset + i * stride} of every array.
     *
     * @param loadIn loads at the head [kg/s], at least 0
     * @param source constant source along the stretch [kg/s per s of travel], at least 0
     * @param loadOut receives loads at the end [kg/s]
     * @param loadTime receives the time integrals of the loads [kg]
     * @param offset where the member's first state lies
     * @param stride distance between its states
     */
    public void apply(double[] loadIn, double[] source, double[] loadOut, double[] loadTime, int offset, int stride) {
        double[] n = numbers;
        int square = core * core;
        int strip = core * feeders;
        for (int i = 0; i < core; i++) {
            double out = 0;
            double time = 0;
            int at = start + i * core;
            for (int m = 0; m < core; m++) {
                double w = loadIn[offset + m * stride];
                double b = source[offset + m * stride];
                out += n[at + m] * w + n[at + square + m] * b;
                time += n[at + square + m] * w + n[at + 2 * square + m] * b;
            }
            at = start + 3 * square + i;
            for (int k = 0; k < feeders; k++) {
                double w = loadIn[offset + (core + k) * stride];
                double b = source[offset + (core + k) * stride];
                out += n[at] * w + n[at + strip] * b;
                time += n[at + strip] * w + n[at + 2 * strip] * b;
                at += core;
            }
            loadOut[offset + i * stride] = out;
            loadTime[offset + i * stride] = time;
        }
        int lone = start + 3 * square + 3 * strip;
        for (int k = 0; k < feeders; k++) {
            int at = offset + (core + k) * stride;
            double w = loadIn[at];
            double b = source[at];
            loadOut[at] = n[lone + k] * w + n[lone + feeders + k] * b;
            loadTime[at] = n[lone + feeders + k] * w + n[lone + 2 * feeders + k] * b;
        }
    }

    /**
     * The transpose of {@link #apply}: how much a value changes with each load at the head and each source, given how much it
     * changes with each load at the end and each time integral. In exact numbers the sum of both products is the same on either
     * side. States lie as there.
     *
     * @param perOut change of the value per load at the end [value per kg/s]
     * @param perTime change of the value per time integral [value per kg]
     * @param perIn receives the change per load at the head [value per kg/s]
     * @param perSource receives the change per source [value per kg/s2]
     * @param offset where the member's first state lies
     * @param stride distance between its states
     */
    public void applyTransposed(
            double[] perOut, double[] perTime, double[] perIn, double[] perSource, int offset, int stride) {
        double[] n = numbers;
        int square = core * core;
        int strip = core * feeders;
        int lone = start + 3 * square + 3 * strip;
        for (int m = 0; m < core; m++) {
            double in = 0;
            double from = 0;
            for (int i = 0; i < core; i++) {
                double a = perOut[offset + i * stride];
                double t = perTime[offset + i * stride];
                int at = start + i * core + m;
                in += n[at] * a + n[at + square] * t;
                from += n[at + square] * a + n[at + 2 * square] * t;
            }
            perIn[offset + m * stride] = in;
            perSource[offset + m * stride] = from;
        }
        for (int k = 0; k < feeders; k++) {
            int at = offset + (core + k) * stride;
            double in = n[lone + k] * perOut[at] + n[lone + feeders + k] * perTime[at];
            double from = n[lone + feeders + k] * perOut[at] + n[lone + 2 * feeders + k] * perTime[at];
            for (int i = 0; i < core; i++) {
                double a = perOut[offset + i * stride];
                double t = perTime[offset + i * stride];
                int fed = start + 3 * square + k * core + i;
                in += n[fed] * a + n[fed + strip] * t;
                from += n[fed + strip] * a + n[fed + 2 * strip] * t;
            }
            perIn[at] = in;
            perSource[at] = from;
        }
    }
}
