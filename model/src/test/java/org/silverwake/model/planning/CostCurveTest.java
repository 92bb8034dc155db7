// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Curves against all sets tried one by one. */
class CostCurveTest {
    /** ROUNDING: budgets and kilograms are held to 1e-9 of the largest; costs that differ by 2e-7 count as equal. */
    private static final double ROUNDING = 3e-7;

    private static final int BUDGETS = 7;

    static Stream<Long> seeds() {
        return LongStream.concat(LongStream.range(0, 20), LongStream.of(System.nanoTime()))
                .boxed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void curvesEqualBruteForceWhereValuesAreLinear(long seed) {
        RandomPlan problem = new RandomPlan(seed);
        LinearResponse model = problem.linear();
        CostCurve curve =
                CostCurve.of(problem.options, problem.limits, model, Adoption.ALL_OR_NOTHING, Level.MIDDLE, BUDGETS);
        List<double[]> sets = problem.sets();
        double slack = ROUNDING * problem.dearest();
        for (int k = 0; k < BUDGETS; k++) {
            String which = "seed " + seed + ", budget " + k;
            CostPoint kilograms = curve.mostKilograms().get(k);
            CostPoint limits = curve.mostLimits().get(k);
            double budget = kilograms.budget();
            double most = sets.stream()
                    .filter(s -> problem.cost(s, Level.MIDDLE) <= budget + slack)
                    .mapToDouble(s -> Option.kilograms(problem.options, s))
                    .max()
                    .orElseThrow();
            long met = sets.stream()
                    .filter(s -> problem.cost(s, Level.MIDDLE) <= budget + slack)
                    .mapToLong(s -> met(problem, model.values(s)))
                    .max()
                    .orElseThrow();
            assertThat(kilograms.kilograms()).as(which).isCloseTo(most, within(ROUNDING * most));
            assertThat(kilograms.cost()).as(which).isLessThanOrEqualTo(budget + slack);
            assertThat((long) limits.limitsMet()).as(which).isEqualTo(met);
            assertThat(limits.cost()).as(which).isLessThanOrEqualTo(budget + slack);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreMoneyNeverBuysLess(long seed) {
        RandomPlan problem = new RandomPlan(seed);
        for (Adoption adoption : Adoption.values()) {
            CostCurve curve =
                    CostCurve.of(problem.options, problem.limits, problem.saturating(), adoption, Level.HIGH, BUDGETS);
            for (int k = 1; k < BUDGETS; k++) {
                String which = "seed " + seed + ", " + adoption + ", budget " + k;
                CostPoint less = curve.mostKilograms().get(k - 1);
                CostPoint more = curve.mostKilograms().get(k);
                assertThat(more.budget()).as(which).isGreaterThanOrEqualTo(less.budget());
                assertThat(more.kilograms())
                        .as(which)
                        .isGreaterThanOrEqualTo(less.kilograms() - ROUNDING * less.kilograms());
                CostPoint limits = curve.mostLimits().get(k);
                double[] shares = limits.shares().stream().mapToDouble(x -> x).toArray();
                assertThat((long) limits.limitsMet())
                        .as(which)
                        .isEqualTo(met(problem, problem.saturating().values(shares)));
                assertThat(problem.cost(shares, Level.HIGH))
                        .as(which)
                        .isLessThanOrEqualTo(limits.budget() + ROUNDING * problem.dearest());
                assertThat(curve.mostLimits().get(k).limitsMet())
                        .as(which)
                        .isGreaterThanOrEqualTo(curve.mostLimits().get(k - 1).limitsMet());
            }
        }
    }

    private static long met(RandomPlan problem, double[] values) {
        long met = 0;
        for (int j = 0; j < values.length; j++) {
            met += problem.limits.get(j).isMetBy(values[j]) ? 1 : 0;
        }
        return met;
    }

    /** a pays 2 and keeps 1 kg, b costs 3 for 2 kg, c 5 for 4 kg; a and b meet the limit. */
    @Test
    void curveByHand() {
        List<Option> options = List.of(
                new Option("a", "site", "", CostRange.of(-2), 1),
                new Option("b", "site", "", CostRange.of(3), 2),
                new Option("c", "site", "", CostRange.of(5), 4));
        CostCurve curve = CostCurve.of(
                options,
                List.of(Limit.of("village", 6)),
                LinearResponse.of(new double[] {10}, new double[][] {{-1, -4, -3}}),
                Adoption.ALL_OR_NOTHING,
                Level.MIDDLE,
                6);
        // everything that costs: b and c, 8; budgets -2, 0, 2, 4, 6, 8
        assertThat(curve.mostKilograms())
                .extracting(CostPoint::shares)
                .containsExactly(
                        List.of(1.0, 0.0, 0.0),
                        List.of(1.0, 0.0, 0.0),
                        List.of(1.0, 1.0, 0.0),
                        List.of(1.0, 0.0, 1.0),
                        List.of(1.0, 1.0, 1.0),
                        List.of(1.0, 1.0, 1.0));
        assertThat(curve.mostLimits()).extracting(CostPoint::limitsMet).containsExactly(0, 0, 1, 1, 1, 1);
        assertThat(curve.mostKilograms().get(5).cost()).isCloseTo(6, within(ROUNDING));
    }
}
