// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.List;

/**
 * The cheapest set of options that brings all values under their limits.
 *
 * <ol>
 *   <li>The model is run in full with no option, then made linear there: effects of options at the solids of that run.
 *   <li>The linear problem is solved: least cost with all limits met, or, where no set meets them, the least worst ratio of a
 *       value to its limit and then the least cost.
 *   <li>The model is run in full with that set.
 *   <li>From 1 with the new run, until a set comes up that was run before, or ten runs are made.
 *   <li>While runs are left, yes-or-no sets that would be better are run as well: first those that any of the linear problems
 *       calls sufficient, then, of up to 16 options, all others that cost less than the best, the least exceeding first.
 * </ol>
 *
 * <p>What is certain: the plan is feasible in a full run if it says so, and no set that was run is better (feasible and
 * cheaper, or, where none was feasible, less exceeding). Where values are in truth linear in the shares, it is the cheapest of
 * all sets. Where they are not, a cheaper set that was never run can exist, unless step 5 came to its end, which the plan says.
 *
 * <p>Costs that differ by less than {@code 2e-7} of the dearest option count as equal; then fewer options win, then earlier
 * ones. A limit counts as met up to {@code 1e-9} of it. Not safe for use by several threads.
 */
public final class Planner {
    /** Options up to which all sets are listed: 65 536 of them. */
    private static final int MOST_LISTED = 16;

    private final List<Option> options;
    private final List<Limit> limits;
    private final Adoption adoption;
    private final Runs runs;
    private final int mostRuns;

    private Planner(List<Option> options, List<Limit> limits, Evaluator evaluator, Adoption adoption, int mostRuns) {
        this.options = List.copyOf(options);
        this.limits = List.copyOf(limits);
        this.adoption = adoption;
        this.runs = new Runs(evaluator, options.size(), limits.size());
        this.mostRuns = mostRuns;
    }

    /**
     * A planner; nothing is run yet.
     *
     * @param options what can be done, at least one
     * @param limits what is to be reached, at least one
     * @param mostRuns full runs that one search may look at after the one with no option; what steps 1 to 4 leave goes to step 5
     * @throws IllegalArgumentException if there is no option, no limit or no run
     */
    public static Planner of(
            List<Option> options, List<Limit> limits, Evaluator evaluator, Adoption adoption, int mostRuns) {
        if (options.isEmpty() || limits.isEmpty() || mostRuns < 1) {
            throw new IllegalArgumentException("A plan needs at least one option, one limit and one run");
        }
        return new Planner(options, limits, evaluator, adoption, mostRuns);
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
        return new Rounds(options, limits, adoption, level, runs, mostRuns, MOST_LISTED).plan();
    }
}
