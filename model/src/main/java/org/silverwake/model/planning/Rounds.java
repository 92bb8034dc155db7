// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One search of {@link Planner} with its memory: what was run, and the best so far. */
final class Rounds {
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
    private final Question question;
    private final Runs runs;
    private final int mostRuns;
    private final int mostListed;
    private final List<double[]> seen = new ArrayList<>();
    private final Set<List<Double>> keys = new HashSet<>();
    private final List<LinearResponse> responses = new ArrayList<>();
    private final double[] ceilings;
    private double[] best;
    private boolean settled;
    private boolean proven = true;

    Rounds(
            List<Option> options,
            List<Limit> limits,
            Adoption adoption,
            Level level,
            Runs runs,
            int mostRuns,
            int mostListed) {
        this.options = options;
        this.limits = limits;
        this.adoption = adoption;
        this.question = new Question(options, limits, adoption, level);
        this.runs = runs;
        this.mostRuns = mostRuns;
        this.mostListed = mostListed;
        this.ceilings = new double[limits.size()];
        Arrays.fill(ceilings, 1);
    }

    Plan plan() {
        double[] at = new double[options.size()];
        run(at);
        while (seen.size() <= Math.min(MOST_ROUNDS, mostRuns) && !settled) {
            LinearResponse response = runs.around(at);
            responses.add(response);
            Optional<double[]> next = next(response);
            if (next.isEmpty() || isSeen(next.get())) {
                settled = true;
            } else {
                at = next.get();
                run(at);
            }
        }
        boolean exhaustive =
                adoption == Adoption.ALL_OR_NOTHING && new Candidates(this, question, options, mostListed).runAll();
        return plan(exhaustive);
    }

    boolean hasRunsLeft() {
        return seen.size() <= mostRuns;
    }

    List<LinearResponse> responses() {
        return responses;
    }

    List<double[]> seen() {
        return seen;
    }

    /** Whether a full run of the set was looked at in this search. */
    boolean hasRun(double[] set) {
        return keys.contains(Runs.key(set));
    }

    /** Whether a set could be better than the best: cheaper, or nothing suffices yet. */
    boolean canBeBetter(double[] shares) {
        return !isSufficient() || question.price(shares) < question.price(best);
    }

    boolean isSufficient() {
        return worst(runs.values(best)) <= 1;
    }

    /** A full run; true where it is the best so far. */
    boolean run(double[] shares) {
        double[] values = runs.values(shares);
        seen.add(shares);
        keys.add(Runs.key(shares));
        if (worst(values) > 1) {
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
            return true;
        }
        return false;
    }

    LinearResponse around(double[] shares) {
        return runs.around(shares);
    }

    Optional<double[]> solve(LinearProgram program) {
        Search.Answer answer = Search.solve(program);
        proven &= answer.isProven();
        return answer.unknowns().map(this::tidy);
    }

    /** Highest ratio of a value to its limit, 1 where all are met: then only the cost counts. */
    double worst(double[] values) {
        double worst = 1;
        for (int j = 0; j < values.length; j++) {
            if (!limits.get(j).isMetBy(values[j])) {
                worst = Math.max(worst, values[j] / limits.get(j).allowed());
            }
        }
        return worst;
    }

    private Optional<double[]> next(LinearResponse response) {
        Optional<double[]> sufficient = solve(question.under(response, ceilings));
        if (sufficient.isPresent() || isSufficient()) {
            return sufficient;
        }
        return solve(question.leastWorst(response)).flatMap(x -> {
            double[] relaxed = new double[limits.size()];
            Arrays.fill(relaxed, Math.max(1, x[options.size()]) * (1 + EQUAL_RATIO));
            return solve(question.under(response, relaxed));
        });
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

    private Plan plan(boolean exhaustive) {
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
                proven,
                exhaustive);
    }
}
