// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What money buys: for each of a grid of budgets the most kilograms kept out, and the most limits met. Neither falls as the
 * budget rises. The grid runs from the cheapest that can be done (negative where practices pay for themselves) to the cost of
 * everything that groups allow.
 *
 * <p>Kilograms add up, so those are the most there are. Limits are counted in full runs: the least cost of meeting 1, 2, 3 ...
 * limits by the linear problem at present solids names the sets, a full run counts, and a budget gets the best of all sets run
 * here that it can pay. A better set that the linear problem does not name may exist where values are not linear in the shares.
 */
public final class CostCurve {
    /** Budgets and benefits may be missed by this share of their largest. */
    private static final double ROUNDING = 1e-9;

    private final List<CostPoint> mostKilograms;
    private final List<CostPoint> mostLimits;

    private CostCurve(List<CostPoint> mostKilograms, List<CostPoint> mostLimits) {
        this.mostKilograms = List.copyOf(mostKilograms);
        this.mostLimits = List.copyOf(mostLimits);
    }

    /**
     * Computes both curves.
     *
     * @param budgets how many budgets, at least 2
     * @param level which end of the costs is paid
     * @throws IllegalArgumentException if there is no option, no limit or fewer than two budgets
     */
    public static CostCurve of(
            List<Option> options,
            List<Limit> limits,
            Evaluator evaluator,
            Adoption adoption,
            Level level,
            int budgets) {
        if (options.isEmpty() || limits.isEmpty() || budgets < 2) {
            throw new IllegalArgumentException("A cost curve needs options, limits and two budgets");
        }
        return new Making(options, limits, evaluator, adoption, level).curve(budgets);
    }

    /** For each budget, ascending, the most kilograms that it keeps out. */
    public List<CostPoint> mostKilograms() {
        return mostKilograms;
    }

    /** For each budget, ascending, the most limits that it meets and, of sets that meet as many, the cheapest. */
    public List<CostPoint> mostLimits() {
        return mostLimits;
    }

    /** What is needed while both curves are made. */
    private static final class Making {
        private final List<Option> options;
        private final List<Limit> limits;
        private final Level level;
        private final Question question;
        private final Runs runs;
        private final double dearest;

        Making(List<Option> options, List<Limit> limits, Evaluator evaluator, Adoption adoption, Level level) {
            this.options = options;
            this.limits = limits;
            this.level = level;
            this.question = new Question(options, limits, adoption, level);
            this.runs = new Runs(evaluator, options.size(), limits.size());
            double largest = IntStream.range(0, options.size())
                    .mapToDouble(i -> Math.abs(cost(i)))
                    .max()
                    .orElse(0);
            this.dearest = largest > 0 ? largest : 1;
        }

        CostCurve curve(int budgets) {
            double least = costOf(shares(question.cheapest(0)));
            LinearProgram everything = question.free(0);
            for (int i = 0; i < options.size(); i++) {
                everything.setCost(i, -cost(i) / dearest);
            }
            double most = costOf(shares(everything));
            List<CostPoint> kilograms = new ArrayList<>();
            for (int k = 0; k < budgets; k++) {
                double budget = least + (most - least) * k / (budgets - 1);
                kilograms.add(point(budget, mostKilograms(budget)));
            }
            List<CostPoint> pool = new ArrayList<>(kilograms);
            LinearResponse response = runs.around(new double[options.size()]);
            for (int count = 0; count <= limits.size(); count++) {
                Search.solve(question.meeting(response, count))
                        .unknowns()
                        .ifPresent(x -> pool.add(point(most, Arrays.copyOf(x, options.size()))));
            }
            List<CostPoint> limitsMet =
                    kilograms.stream().map(p -> best(pool, p.budget(), least)).toList();
            return new CostCurve(kilograms, limitsMet);
        }

        /** Most kilograms within the budget, then the least cost for these. */
        private double[] mostKilograms(double budget) {
            double heaviest = options.stream()
                    .mapToDouble(o -> Math.abs(o.kilograms()))
                    .max()
                    .orElse(0);
            double scale = heaviest > 0 ? heaviest : 1;
            LinearProgram most = question.free(0);
            double[] costs = new double[options.size()];
            double[] benefits = new double[options.size()];
            for (int i = 0; i < costs.length; i++) {
                costs[i] = cost(i);
                benefits[i] = -options.get(i).kilograms();
                most.setCost(i, benefits[i] / scale);
            }
            most.addRow(costs, budget, dearest);
            double kilograms = Option.kilograms(options, shares(most));
            LinearProgram cheapest = question.cheapest(0);
            cheapest.addRow(costs, budget, dearest);
            cheapest.addRow(benefits, -kilograms + ROUNDING * scale, scale);
            return shares(cheapest);
        }

        private CostPoint best(List<CostPoint> pool, double budget, double least) {
            double paid = Math.max(budget, least) + ROUNDING * dearest;
            CostPoint best = pool.stream()
                    .filter(p -> p.cost() <= paid)
                    .max(Comparator.comparingInt(CostPoint::limitsMet)
                            .thenComparing(
                                    Comparator.comparingDouble(CostPoint::cost).reversed()))
                    .orElseThrow();
            return new CostPoint(budget, best.cost(), best.kilograms(), best.limitsMet(), best.shares());
        }

        private CostPoint point(double budget, double[] shares) {
            double[] values = runs.values(shares);
            int met = (int) IntStream.range(0, values.length)
                    .filter(j -> limits.get(j).isMetBy(values[j]))
                    .count();
            return new CostPoint(budget, costOf(shares), Option.kilograms(options, shares), met, Runs.key(shares));
        }

        private double[] shares(LinearProgram program) {
            return Search.solve(program)
                    .unknowns()
                    .orElseThrow(() -> new IllegalStateException("No set within the budget"));
        }

        private double cost(int option) {
            return options.get(option).cost().at(level);
        }

        private double costOf(double[] shares) {
            return CostRange.total(options, shares).at(level);
        }
    }
}
