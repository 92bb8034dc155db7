// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest set of options that brings all values under their limits.
 *
 * <ol>
 *   <li>The model is run in full with no option, then made linear there: effects of options at the solids of that run.
 *   <li>The linear problem is solved: least cost with all limits met, or, where no set meets them, the least worst ratio of a
 *       value to its limit and then the least cost.
 *   <li>The model is run in full with that set. A set that a full run refuses is never named again as one that suffices.
 *   <li>From 1 with the new run, until a set comes up that was run before, or ten runs are made.
 * </ol>
 *
 * <p>What is certain: the plan is feasible in a full run if it says so, and no set that was run is better (feasible and
 * cheaper, or, where none was feasible, less exceeding). Where values are in truth linear in the shares, it is the cheapest of
 * all sets. Where they are not, a cheaper set that no linear problem names can exist.
 *
 * <p>Costs that differ by less than {@code 2e-7} of the dearest option count as equal; then fewer options win, then earlier
 * ones. A limit counts as met up to {@code 1e-9} of it. Not safe for use by several threads.
 */
public final class Planner {
    private static final int MOST_ROUNDS = 10;

    /** Shares nearer than this are the same. */
    private static final double SAME = 1e-7;

    /** Partial shares end on a limit; where a full run found one exceeded, the next aims this much lower. */
    private static final double SHORT_OF = 1e-6;

    /** Ratios that differ by less are equal, relative. */
    private static final double EQUAL_RATIO = 1e-9;

    private final List<Option> options;
    private final List<Limit> limits;
    private final Adoption adoption;
    private final Runs runs;

    private Planner(List<Option> options, List<Limit> limits, Evaluator evaluator, Adoption adoption) {
        this.options = List.copyOf(options);
        this.limits = List.copyOf(limits);
        this.adoption = adoption;
        this.runs = new Runs(evaluator, options.size(), limits.size());
    }

    /**
     * A planner; nothing is run yet.
     *
     * @param options what can be done, at least one
     * @param limits what is to be reached, at least one
     * @throws IllegalArgumentException if there is no option or no limit
     */
    public static Planner of(List<Option> options, List<Limit> limits, Evaluator evaluator, Adoption adoption) {
        if (options.isEmpty() || limits.isEmpty()) {
            throw new IllegalArgumentException("A plan needs at least one option and one limit");
        }
        return new Planner(options, limits, evaluator, adoption);
    }

    /** The cheapest plans by low, middle and high costs; full runs are shared among them. */
    public PlanRange plans() {
        return new PlanRange(cheapest(Level.LOW), cheapest(Level.MIDDLE), cheapest(Level.HIGH));
    }

    /**
     * The cheapest plan when costs are at one end of their ranges.
     *
     * @throws IllegalArgumentException if the evaluator's answers have the wrong size or are not finite
     */
    public Plan cheapest(Level level) {
        return new Round(new Question(options, limits, adoption, level)).plan();
    }

    /** One search with its memory. */
    private final class Round {
        private final Question question;
        private final List<double[]> seen = new ArrayList<>();
        private final List<double[]> refused = new ArrayList<>();
        private final double[] ceilings = new double[limits.size()];
        private double[] best;
        private boolean proven = true;

        Round(Question question) {
            this.question = question;
            Arrays.fill(ceilings, 1);
        }

        Plan plan() {
            double[] at = new double[options.size()];
            run(at);
            while (seen.size() <= MOST_ROUNDS) {
                Optional<double[]> next = next(runs.around(at));
                if (next.isEmpty() || isSeen(next.get())) {
                    return finished(true);
                }
                at = next.get();
                run(at);
            }
            return finished(false);
        }

        private void run(double[] shares) {
            double[] values = runs.values(shares);
            seen.add(shares);
            if (worst(values) > 1) {
                refused.add(shares);
                for (int j = 0; j < values.length; j++) {
                    if (adoption == Adoption.PARTIAL
                            && seen.size() > 1
                            && !limits.get(j).isMetBy(values[j])) {
                        ceilings[j] = 1 - SHORT_OF;
                    }
                }
            }
            if (best == null || isBetter(shares, best)) {
                best = shares;
            }
        }

        private Optional<double[]> next(LinearResponse response) {
            LinearProgram program = question.under(response, ceilings);
            if (adoption == Adoption.ALL_OR_NOTHING) {
                refused.forEach(set -> Question.exclude(program, set));
            }
            Optional<double[]> sufficient = solve(program);
            if (sufficient.isPresent() || worst(runs.values(best)) <= 1) {
                return sufficient;
            }
            return solve(question.leastWorst(response)).flatMap(x -> {
                double[] relaxed = new double[limits.size()];
                Arrays.fill(relaxed, Math.max(1, x[options.size()]) * (1 + EQUAL_RATIO));
                return solve(question.under(response, relaxed));
            });
        }

        private Optional<double[]> solve(LinearProgram program) {
            Search.Answer answer = Search.solve(program);
            proven &= answer.isProven();
            return answer.unknowns().map(this::tidy);
        }

        /** Yes-or-no shares without the solver's dust. */
        private double[] tidy(double[] x) {
            for (int i = 0; i < options.size(); i++) {
                if (adoption == Adoption.ALL_OR_NOTHING || Math.abs(x[i] - Math.rint(x[i])) < Limit.TOLERANCE) {
                    x[i] = Math.rint(x[i]) + 0.0;
                }
            }
            return x;
        }

        private boolean isSeen(double[] shares) {
            return seen.stream().anyMatch(before -> {
                double apart = 0;
                for (int i = 0; i < shares.length; i++) {
                    apart = Math.max(apart, Math.abs(before[i] - shares[i]));
                }
                return apart < SAME;
            });
        }

        private boolean isBetter(double[] shares, double[] than) {
            double ratio = worst(runs.values(shares));
            double other = worst(runs.values(than));
            if (Math.abs(ratio - other) > EQUAL_RATIO * other) {
                return ratio < other;
            }
            return question.price(shares) < question.price(than);
        }

        private Plan finished(boolean settled) {
            double[] values = runs.values(best);
            double[] present = runs.present();
            List<Outcome> outcomes = new ArrayList<>();
            for (int j = 0; j < values.length; j++) {
                outcomes.add(new Outcome(limits.get(j), present[j], values[j]));
            }
            return new Plan(
                    Runs.key(best),
                    CostRange.total(options, best),
                    Option.kilograms(options, best),
                    outcomes,
                    seen.size() - 1,
                    settled,
                    proven);
        }
    }

    /** Highest ratio of a value to its limit, 1 where all are met: then only the cost counts. */
    private double worst(double[] values) {
        double worst = 1;
        for (int j = 0; j < values.length; j++) {
            if (!limits.get(j).isMetBy(values[j])) {
                worst = Math.max(worst, values[j] / limits.get(j).allowed());
            }
        }
        return worst;
    }
}
