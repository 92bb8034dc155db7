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
    private final Rounds rounds;
    private final Question question;
    private final List<Option> options;
    private final boolean listed;
    private final List<Candidate> sets = new ArrayList<>();

    /**
     * Candidates of one search.
     *
     * @param mostListed options up to which all sets are listed, else searched for
     */
    Candidates(Rounds rounds, Question question, List<Option> options, int mostListed) {
        this.rounds = rounds;
        this.question = question;
        this.options = options;
        this.listed = options.size() <= mostListed;
        if (listed) {
            sets().forEach(set -> sets.add(new Candidate(set, question.price(set))));
            sets.sort(Comparator.comparingDouble(Candidate::key));
        }
    }

    /** True where no set is left that could be better than the best. */
    boolean runAll() {
        for (int k = 0; k < rounds.responses().size(); k++) {
            runNamed(rounds.responses().get(k));
        }
        return listed && runRest();
    }

    /** Runs sets that one linear problem calls sufficient, the cheapest first, until one is no better than the best. */
    private void runNamed(LinearResponse response) {
        while (rounds.hasRunsLeft()) {
            Optional<double[]> next = listed ? cheapestListed(response) : cheapestFound(response);
            if (next.isEmpty() || !rounds.canBeBetter(next.get())) {
                return;
            }
            if (rounds.run(next.get()) && rounds.isSufficient()) {
                rounds.responses().add(rounds.around(next.get()));
            }
        }
    }

    private Optional<double[]> cheapestFound(LinearResponse response) {
        LinearProgram program = question.under(response);
        rounds.seen().forEach(set -> Question.exclude(program, set));
        return rounds.solve(program);
    }

    private Optional<double[]> cheapestListed(LinearResponse response) {
        return sets.stream()
                .filter(c -> rounds.worst(response.values(c.set)) <= 1 && !rounds.hasRun(c.set))
                .map(c -> c.set)
                .findFirst();
    }

    /** Runs all others that could be better, the least exceeding by the most hopeful linear problem first. */
    private boolean runRest() {
        List<Candidate> left = new ArrayList<>();
        for (Candidate candidate : sets) {
            if (!rounds.hasRun(candidate.set) && rounds.canBeBetter(candidate.set)) {
                left.add(new Candidate(candidate.set, leastWorst(candidate.set)));
            }
        }
        left.sort(Comparator.comparingDouble(Candidate::key));
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

    /** A set and what it is sorted by; of equals the order before stays. */
    private static final class Candidate {
        private final double[] set;
        private final double key;

        private Candidate(double[] set, double key) {
            this.set = set;
            this.key = key;
        }

        private double key() {
            return key;
        }
    }
}
