// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Yes-or-no sets that may be better than the best of the linear rounds: run as long as runs are left. */
final class Candidates {
    /** Options up to which all sets are listed: 65 536 of them. */
    private static final int MOST_LISTED = 16;

    private final Rounds rounds;
    private final Question question;
    private final List<Option> options;

    Candidates(Rounds rounds, Question question, List<Option> options) {
        this.rounds = rounds;
        this.question = question;
        this.options = options;
    }

    /** True where no set is left that could be better than the best. */
    boolean runAll() {
        for (int k = 0; k < rounds.responses().size(); k++) {
            runNamed(rounds.responses().get(k));
        }
        if (options.size() > MOST_LISTED || !rounds.hasRunsLeft()) {
            return false;
        }
        List<Candidate> left = new ArrayList<>();
        for (double[] set : sets()) {
            if (!rounds.hasRun(set) && rounds.canBeBetter(set)) {
                left.add(new Candidate(set, leastWorst(set), question.price(set)));
            }
        }
        left.sort(Comparator.comparingDouble(Candidate::ratio).thenComparingDouble(Candidate::price));
        for (Candidate next : left) {
            if (rounds.canBeBetter(next.set)) {
                if (!rounds.hasRunsLeft()) {
                    return false;
                }
                rounds.run(next.set);
            }
        }
        return true;
    }

    /** Runs sets that one linear problem calls sufficient, the cheapest first, until one is no better than the best. */
    private void runNamed(LinearResponse response) {
        while (rounds.hasRunsLeft()) {
            LinearProgram program = question.under(response);
            rounds.seen().forEach(set -> Question.exclude(program, set));
            Optional<double[]> next = rounds.solve(program);
            if (next.isEmpty() || !rounds.canBeBetter(next.get())) {
                return;
            }
            if (rounds.run(next.get()) && rounds.isSufficient()) {
                rounds.responses().add(rounds.around(next.get()));
            }
        }
    }

    /** The worst ratio by the linear problem that is most hopeful of the set. */
    private double leastWorst(double[] set) {
        return rounds.responses().stream()
                .mapToDouble(r -> rounds.worst(r.values(set)))
                .min()
                .orElse(1);
    }

    private List<double[]> sets() {
        int n = options.size();
        List<double[]> sets = new ArrayList<>(List.of(new double[n]));
        for (int i = 0; i < n; i++) {
            for (double[] set : List.copyOf(sets)) {
                if (mayJoin(i, set)) {
                    double[] larger = Arrays.copyOf(set, n);
                    larger[i] = 1;
                    sets.add(larger);
                }
            }
        }
        return sets;
    }

    private boolean mayJoin(int option, double[] set) {
        for (int k = 0; k < option; k++) {
            if (set[k] > 0 && options.get(k).excludes(options.get(option))) {
                return false;
            }
        }
        return true;
    }

    /** A set, what the linear problems expect of it, and its price. */
    private static final class Candidate {
        private final double[] set;
        private final double ratio;
        private final double price;

        private Candidate(double[] set, double ratio, double price) {
            this.set = set;
            this.ratio = ratio;
            this.price = price;
        }

        private double ratio() {
            return ratio;
        }

        private double price() {
            return price;
        }
    }
}
