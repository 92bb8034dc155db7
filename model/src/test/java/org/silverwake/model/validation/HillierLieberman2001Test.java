// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.silverwake.model.planning.Adoption;
import org.silverwake.model.planning.CostRange;
import org.silverwake.model.planning.Level;
import org.silverwake.model.planning.Limit;
import org.silverwake.model.planning.LinearResponse;
import org.silverwake.model.planning.Option;
import org.silverwake.model.planning.Plan;
import org.silverwake.model.planning.Planner;

/**
 * A textbook's least-cost plan against air pollution: six abatement methods, each used in part, three pollutants to be reduced
 * by 60, 150 and 125 million pounds a year. The book was not at hand: its numbers are as several course papers repeat them, and
 * the solution is a solver's printout in one of these: cost 32.15463, shares below.
 */
@Reference(key = "hillier2001", locator = "7th edition, chapter 3.4, example 3, page 50: controlling air pollution")
class HillierLieberman2001Test {
    /** PRINTED: seven digits; the plan's own rounding, 2e-7 of the dearest method, is of the same size. */
    private static final double PRINTED = 3e-6;

    private static final double[] COST = {8, 10, 7, 6, 11, 9};
    private static final double[][] REDUCTION = {
        {12, 9, 25, 20, 17, 13}, {35, 42, 18, 31, 56, 49}, {37, 53, 28, 24, 29, 20},
    };
    private static final double[] REQUIRED = {60, 150, 125};
    private static final double[] SHARES = {1, 0.6226975, 0.3434794, 1, 0.04757282, 1};
    private static final double LEAST_COST = 32.15463;

    /** Emissions are not printed; 200 of each leaves 140, 50 and 75 allowed, and the answer does not depend on it. */
    private static final double EMITTED = 200;

    private static Plan plan(Adoption adoption, double unit) {
        List<Option> options = new ArrayList<>();
        List<Limit> limits = new ArrayList<>();
        double[] none = new double[REQUIRED.length];
        double[][] slopes = new double[REQUIRED.length][COST.length];
        for (int i = 0; i < COST.length; i++) {
            options.add(new Option("method " + i, "steelworks", "", CostRange.of(COST[i]), 0));
        }
        for (int j = 0; j < REQUIRED.length; j++) {
            limits.add(Limit.of("pollutant " + j, unit * (EMITTED - REQUIRED[j])));
            none[j] = unit * EMITTED;
            for (int i = 0; i < COST.length; i++) {
                slopes[j][i] = -unit * REDUCTION[j][i];
            }
        }
        return Planner.of(options, limits, LinearResponse.of(none, slopes), adoption, 10)
                .cheapest(Level.MIDDLE);
    }

    @Test
    void caseSharesAndCostAreThosePrinted() {
        for (double unit : new double[] {1, 1e-12}) {
            Plan plan = plan(Adoption.PARTIAL, unit);
            assertThat(plan.isSufficient()).isTrue();
            assertThat(plan.cost().middle()).isCloseTo(LEAST_COST, within(PRINTED));
            for (int i = 0; i < SHARES.length; i++) {
                assertThat(plan.shares().get(i)).isCloseTo(SHARES[i], within(PRINTED));
            }
        }
    }
}
