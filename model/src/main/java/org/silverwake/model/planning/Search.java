// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.Arrays;
import java.util.Optional;

/**
 * Yes-or-no choices by branch and bound, depth first. Each node's bound is a linear problem with rows a little wider than
 * asked; what is accepted meets the rows in plain arithmetic. Of equal answers the first found stays.
 */
final class Search {
    /** How far rows are widened for bounds, in their scale: well above the simplex's rounding. */
    private static final double WIDER = 1e-7;

    /** How near 0 or 1 counts as decided in a bound's solution. */
    private static final double DECIDED = 1e-6;

    /** A bound must lie this far below the best, in units of the dearest unknown, to be looked at. */
    private static final double BETTER = 1e-12;

    /** Nodes after which the search stops and says that it did. */
    private static final int MOST_NODES = 20_000;

    private final LinearProgram program;
    private final double margin;
    private double[] best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private int nodes;

    private Search(LinearProgram program) {
        this.program = program;
        double dearest = 0;
        for (int i = 0; i < program.unknowns(); i++) {
            dearest = Math.max(dearest, Math.abs(program.cost(i)));
        }
        margin = BETTER * dearest;
    }

    /** What was found, and whether nothing cheaper can exist. */
    static final class Answer {
        private final double[] x;
        private final boolean proven;

        private Answer(double[] x, boolean proven) {
            this.x = x;
            this.proven = proven;
        }

        /** The unknowns, or none where no choice meets the rows. */
        Optional<double[]> unknowns() {
            return Optional.ofNullable(x).map(double[]::clone);
        }

        boolean isProven() {
            return proven;
        }
    }

    static Answer solve(LinearProgram program) {
        Search search = new Search(program);
        double[] fixed = new double[program.unknowns()];
        Arrays.fill(fixed, Simplex.FREE);
        search.visit(fixed);
        return new Answer(search.best, search.nodes <= MOST_NODES);
    }

    private void visit(double[] fixed) {
        if (++nodes > MOST_NODES) {
            return;
        }
        boolean decided = mostUndecided(fixed, fixed) < 0;
        Optional<double[]> bound = Simplex.solve(program, fixed, decided ? 0 : WIDER);
        if (bound.isEmpty() || program.costOf(bound.get()) >= bestCost - margin) {
            return;
        }
        double[] x = bound.get();
        if (decided) {
            accept(x);
            return;
        }
        int branch = mostUndecided(fixed, x);
        if (isWhole(x, branch)) {
            // All choices are made; the best of this part of the tree where it costs no more than the bound.
            double[] whole = rounded(x);
            Optional<double[]> exact = Simplex.solve(program, whole, 0);
            if (exact.isPresent() && accept(exact.get()) && program.costOf(exact.get()) <= program.costOf(x) + margin) {
                return;
            }
        }
        double first = Math.rint(x[branch]);
        for (double choice : new double[] {first, 1 - first}) {
            double[] next = fixed.clone();
            next[branch] = choice;
            visit(next);
        }
    }

    private boolean accept(double[] x) {
        if (!program.isMetBy(x)) {
            return false;
        }
        double cost = program.costOf(x);
        if (cost < bestCost - margin) {
            best = x;
            bestCost = cost;
        }
        return true;
    }

    /** The open choice that lies farthest from 0 and 1, of equals the first; -1 where none is open. */
    private int mostUndecided(double[] fixed, double[] x) {
        int most = -1;
        double farthest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            double away = Math.abs(x[i] - Math.rint(x[i]));
            if (program.isBinary(i) && fixed[i] == Simplex.FREE && away > farthest) {
                most = i;
                farthest = away;
            }
        }
        return most;
    }

    private static boolean isWhole(double[] x, int most) {
        return Math.abs(x[most] - Math.rint(x[most])) <= DECIDED;
    }

    private double[] rounded(double[] x) {
        double[] whole = x.clone();
        for (int i = 0; i < x.length; i++) {
            whole[i] = program.isBinary(i) ? Math.rint(x[i]) : Simplex.FREE;
        }
        return whole;
    }
}
