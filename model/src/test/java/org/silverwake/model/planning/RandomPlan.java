// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A random planning problem: up to 12 options, some in groups, some that pay for themselves, up to 5 limits of any size from
 * 1e-12 to 1e-3, about a third of the problems out of reach.
 */
final class RandomPlan {
    private static final int MOST_OPTIONS = 12;
    private static final int MOST_LIMITS = 5;

    final List<Option> options = new ArrayList<>();
    final List<Limit> limits = new ArrayList<>();
    final double[] none;
    final double[][] slopes;
    final double[] solids;
    final double[] weight;

    RandomPlan(long seed) {
        Random random = new Random(seed);
        int n = 1 + random.nextInt(MOST_OPTIONS);
        int m = 1 + random.nextInt(MOST_LIMITS);
        none = new double[m];
        slopes = new double[m][n];
        solids = new double[n];
        weight = new double[m];
        for (int i = 0; i < n; i++) {
            double cost = 1e4 * (random.nextDouble() * 1.3 - 0.3);
            double spread = 2e3 * random.nextDouble();
            String group = random.nextInt(3) == 0 ? "site " + random.nextInt(3) : "";
            options.add(new Option(
                    "option " + i,
                    "site",
                    group,
                    new CostRange(cost - spread, cost, cost + 2 * spread),
                    10 * random.nextDouble()));
            solids[i] = random.nextDouble() / n;
        }
        for (int j = 0; j < m; j++) {
            double allowed = Math.pow(10, -12 + 9 * random.nextDouble());
            limits.add(Limit.of("limit " + j, allowed));
            none[j] = allowed * (0.8 + 1.2 * random.nextDouble());
            weight[j] = 2 * random.nextDouble();
            double left = none[j];
            for (int i = 0; i < n; i++) {
                double effect = random.nextInt(4) == 0 ? 0 : random.nextDouble() * 1.8 * none[j] / n;
                if (random.nextInt(12) == 0) {
                    slopes[j][i] = effect / 4;
                } else {
                    slopes[j][i] = -Math.min(left, effect);
                    left += slopes[j][i];
                }
            }
        }
    }

    LinearResponse linear() {
        return LinearResponse.of(none, slopes);
    }

    /**
     * As {@link #linear}, but solids carry a part to where it does not count, at each limit another one: fewer solids, a weaker
     * cut; and neighbors save less together than alone. Slopes are at fixed solids and know nothing of neighbors.
     */
    Evaluator saturating() {
        LinearResponse linear = linear();
        return new Evaluator() {
            private double carried(int limit, double[] shares) {
                double left = 1;
                for (int i = 0; i < shares.length; i++) {
                    left -= solids[i] * shares[i];
                }
                return (1 + weight[limit]) / (1 + weight[limit] * left);
            }

            @Override
            public double[] values(double[] shares) {
                double[] values = linear.values(shares);
                for (int j = 0; j < values.length; j++) {
                    for (int i = 1; i < shares.length; i++) {
                        double both = Math.min(Math.abs(slopes[j][i - 1]), Math.abs(slopes[j][i]));
                        values[j] += both / 2 * shares[i - 1] * shares[i];
                    }
                    values[j] *= carried(j, shares);
                }
                return values;
            }

            @Override
            public double[][] slopes(double[] shares) {
                double[][] at = linear.slopes(shares);
                for (int j = 0; j < at.length; j++) {
                    for (int i = 0; i < at[j].length; i++) {
                        at[j][i] *= carried(j, shares);
                    }
                }
                return at;
            }
        };
    }

    double dearest() {
        return options.stream()
                .mapToDouble(o ->
                        Math.max(Math.abs(o.cost().low()), Math.abs(o.cost().high())))
                .max()
                .orElseThrow();
    }

    double worst(double[] values) {
        double worst = 0;
        for (int j = 0; j < values.length; j++) {
            worst = Math.max(worst, values[j] / limits.get(j).allowed());
        }
        return worst;
    }

    double cost(double[] shares, Level level) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * options.get(i).cost().at(level);
        }
        return sum;
    }

    /** All sets that groups allow. */
    List<double[]> sets() {
        int n = options.size();
        List<double[]> sets = new ArrayList<>();
        for (int bits = 0; bits < 1 << n; bits++) {
            double[] set = new double[n];
            boolean allowed = true;
            for (int i = 0; i < n; i++) {
                set[i] = bits >> i & 1;
                for (int k = 0; k < i; k++) {
                    allowed &= set[i] * set[k] == 0 || !options.get(i).excludes(options.get(k));
                }
            }
            if (allowed) {
                sets.add(set);
            }
        }
        return sets;
    }

    /** The best set of all, by trying each: cheapest that suffices, else least exceeding and of these the cheapest. */
    double[] bruteForce(Evaluator evaluator, Level level) {
        double[] best = null;
        double bestRatio = 0;
        double bestCost = 0;
        for (double[] set : sets()) {
            double worst = worst(evaluator.values(set));
            double ratio = worst <= 1 + Limit.TOLERANCE ? 1 : worst;
            double cost = cost(set, level);
            boolean same = best != null && Math.abs(ratio - bestRatio) <= 1e-9 * bestRatio;
            if (best == null || (same ? cost < bestCost : ratio < bestRatio)) {
                best = set;
                bestRatio = ratio;
                bestCost = cost;
            }
        }
        return best;
    }
}
