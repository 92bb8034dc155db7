// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans against all sets tried one by one, and small ones by hand. */
class PlannerTest {
    /** ROUNDING: costs that differ by less than this share of the dearest option count as equal, as Planner says. */
    private static final double TIE = 2e-7;

    /** ROUNDING: ratios that differ by less are equal, and a limit is met up to this: both as Planner says. */
    private static final double RATIO = 3e-9;

    private static final int PROBLEMS = 50;

    /** Full runs: the linear rounds alone. */
    private static final int TEN = 10;

    /** Full runs: some for sets that a linear problem names. */
    private static final int THIRTY = 30;

    /** Full runs: enough for all sets of 12 options. */
    private static final int ALL = 1 << 12;

    static Stream<Long> seeds() {
        return LongStream.concat(LongStream.range(0, PROBLEMS), LongStream.of(System.nanoTime()))
                .boxed();
    }

    private static double[] shares(Plan plan) {
        return plan.shares().stream().mapToDouble(s -> s).toArray();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void planEqualsBruteForceWhereValuesAreLinear(long seed) {
        RandomPlan problem = new RandomPlan(seed);
        LinearResponse model = problem.linear();
        PlanRange plans = Planner.of(problem.options, problem.limits, model, Adoption.ALL_OR_NOTHING, TEN)
                .plans();
        for (Level level : Level.values()) {
            Plan plan = plans.at(level);
            double[] best = problem.bruteForce(model, level);
            String which = "seed " + seed + ", " + level + " costs";
            double worst = problem.worst(model.values(best));
            assertThat(plan.isSufficient()).as(which).isEqualTo(worst <= 1 + Limit.TOLERANCE);
            if (!plan.isSufficient()) {
                assertThat(plan.worstRatio() / worst).as(which).isCloseTo(1, within(RATIO));
            }
            assertThat(plan.cost().at(level))
                    .as(which)
                    .isCloseTo(problem.cost(best, level), within(TIE * problem.dearest()));
            assertThat(problem.sets()).as(which).contains(shares(plan));
            assertThat(plan.settled() && plan.proven()).as(which).isTrue();
        }
    }

    /** The fixed problems hold what they should: without each kind the comparison above would show less. */
    @Test
    void randomProblemsAreOfAllKinds() {
        List<RandomPlan> problems =
                LongStream.range(0, PROBLEMS).mapToObj(RandomPlan::new).toList();
        long reachable = problems.stream()
                .filter(p -> p.worst(p.linear().values(p.bruteForce(p.linear(), Level.MIDDLE))) <= 1)
                .count();
        assertThat(reachable).isBetween(10L, 40L);
        assertThat(problems).anyMatch(p -> p.options.size() == 12);
        assertThat(problems).anyMatch(p -> p.sets().size() < 1 << p.options.size());
        assertThat(problems)
                .anyMatch(p -> p.options.stream().anyMatch(o -> o.cost().middle() < 0));
    }

    /**
     * Where effects depend on the solids that the plan itself takes away, this much is promised: what the plan says of a full
     * run is so, and no set that was run is better. The cheapest set of all may be missed.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void planIsTheBestOfTheSetsThatWereRun(long seed) {
        RandomPlan problem = new RandomPlan(seed);
        Evaluator model = problem.saturating();
        List<double[]> run = new ArrayList<>();
        Plan plan = Planner.of(problem.options, problem.limits, recording(model, run), Adoption.ALL_OR_NOTHING, TEN)
                .cheapest(Level.MIDDLE);
        String which = "seed " + seed;
        double worst = problem.worst(model.values(shares(plan)));
        assertThat(plan.isSufficient()).as(which).isEqualTo(worst <= 1 + Limit.TOLERANCE);
        assertThat(plan.worstRatio()).as(which).isCloseTo(worst, within(RATIO * worst));
        assertThat(plan.runs()).as(which).isLessThanOrEqualTo(10);
        assertThat(run).as(which).contains(shares(plan)).hasSizeLessThanOrEqualTo(11);
        for (double[] set : run) {
            double other = problem.worst(model.values(set));
            boolean worse = Math.max(1, other) > Math.max(1, worst) * (1 - RATIO)
                    && (Math.max(1, other) > Math.max(1, worst) * (1 + RATIO)
                            || problem.cost(set, Level.MIDDLE) >= plan.cost().middle() - TIE * problem.dearest());
            assertThat(worse).as(which + ", set " + Arrays.toString(set)).isTrue();
        }
        double[] best = problem.bruteForce(model, Level.MIDDLE);
        if (plan.isSufficient()) {
            assertThat(plan.cost().middle())
                    .as(which)
                    .isGreaterThanOrEqualTo(problem.cost(best, Level.MIDDLE) - TIE * problem.dearest());
        }
    }

    /** With runs enough, the plan equals brute force also where effects are not linear, and says so. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void planEqualsBruteForceOfFullRunsWhereRunsSuffice(long seed) {
        RandomPlan problem = new RandomPlan(seed);
        Evaluator model = problem.saturating();
        Plan plan = Planner.of(problem.options, problem.limits, model, Adoption.ALL_OR_NOTHING, ALL)
                .cheapest(Level.MIDDLE);
        String which = "seed " + seed;
        double[] best = problem.bruteForce(model, Level.MIDDLE);
        double worst = problem.worst(model.values(best));
        assertThat(plan.exhaustive()).as(which).isTrue();
        assertThat(Math.max(1, plan.worstRatio()) / Math.max(1, worst))
                .as(which)
                .isCloseTo(1, within(RATIO));
        assertThat(plan.cost().middle())
                .as(which)
                .isCloseTo(problem.cost(best, Level.MIDDLE), within(TIE * problem.dearest()));
    }

    /** Above 16 options sets are searched for, not listed; the same sets are run in the same order. */
    @Test
    void setsThatAreSearchedForAreThoseOfTheList() {
        int more = 0;
        for (long seed = 0; seed < PROBLEMS; seed++) {
            RandomPlan problem = new RandomPlan(seed);
            List<List<Double>> listed = order(problem, 16);
            List<List<Double>> searched = order(problem, 0);
            assertThat(listed.subList(0, Math.min(listed.size(), searched.size())))
                    .as("seed " + seed)
                    .isEqualTo(searched);
            more += listed.size() > searched.size() ? 1 : 0;
        }
        assertThat(more).isPositive();
    }

    private static List<List<Double>> order(RandomPlan problem, int mostListed) {
        List<double[]> run = new ArrayList<>();
        Evaluator model = recording(problem.saturating(), run);
        Runs runs = new Runs(model, problem.options.size(), problem.limits.size());
        new Rounds(problem.options, problem.limits, Adoption.ALL_OR_NOTHING, Level.MIDDLE, runs, THIRTY, mostListed)
                .plan();
        return run.stream().map(Runs::key).toList();
    }

    /** How often fewer runs find the cheapest set of all, in the 50 fixed problems. PINNED: the counts, not a promise. */
    @ParameterizedTest
    @CsvSource({"10, 38", "50, 48", "200, 50"})
    void fewRunsMostlyFindTheCheapestOfAll(int mostRuns, int expected) {
        int same = 0;
        for (long seed = 0; seed < PROBLEMS; seed++) {
            RandomPlan problem = new RandomPlan(seed);
            Plan plan = Planner.of(
                            problem.options, problem.limits, problem.saturating(), Adoption.ALL_OR_NOTHING, mostRuns)
                    .cheapest(Level.MIDDLE);
            same += Arrays.equals(shares(plan), problem.bruteForce(problem.saturating(), Level.MIDDLE)) ? 1 : 0;
        }
        assertThat(same).isEqualTo(expected);
    }

    private static Evaluator recording(Evaluator model, List<double[]> run) {
        return new Evaluator() {
            @Override
            public double[] values(double[] shares) {
                run.add(shares.clone());
                return model.values(shares);
            }

            @Override
            public double[][] slopes(double[] shares) {
                return model.slopes(shares);
            }
        };
    }

    private static Option option(String name, String group, double cost) {
        return new Option(name, "site", group, CostRange.of(cost), 1);
    }

    /** Allowed 6, now 10. Retorts -3 for 2, tailings -2 for 3, mercury-free -8 for 9: 5 for the first two, not 9. */
    @Test
    void twoSmallPracticesAreCheaperThanALargeOne() {
        List<Option> options = List.of(option("retorts", "", 2), option("tailings", "", 3), option("free", "", 9));
        Plan plan = Planner.of(
                        options,
                        List.of(Limit.of("village", 6)),
                        LinearResponse.of(new double[] {10}, new double[][] {{-3, -2, -8}}),
                        Adoption.ALL_OR_NOTHING,
                        TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.shares()).containsExactly(1.0, 1.0, 0.0);
        assertThat(plan.outcomes().get(0).planned()).isCloseTo(5, within(RATIO));
        assertThat(plan.outcomes().get(0).present()).isCloseTo(10, within(RATIO));
        assertThat(plan.remaining()).isEmpty();
    }

    /** The same, but retorts and tailings exclude one another. Then only the large one is left. */
    @Test
    void optionsOfOneGroupAreNotCombined() {
        List<Option> options = List.of(option("retorts", "a", 2), option("tailings", "a", 3), option("free", "", 9));
        Plan plan = Planner.of(
                        options,
                        List.of(Limit.of("village", 6)),
                        LinearResponse.of(new double[] {10}, new double[][] {{-3, -2, -8}}),
                        Adoption.ALL_OR_NOTHING,
                        TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.shares()).containsExactly(0.0, 0.0, 1.0);
    }

    /** A practice that pays for itself is taken though the limit is met without; one that would undo it is not. */
    @Test
    void whatPaysForItselfIsTaken() {
        List<Option> options = List.of(option("retorts", "", -2), option("dearer", "", 1), option("dirty", "", -1));
        Plan plan = Planner.of(
                        options,
                        List.of(Limit.of("village", 6)),
                        LinearResponse.of(new double[] {5}, new double[][] {{-1, -1, 5}}),
                        Adoption.ALL_OR_NOTHING,
                        TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.shares()).containsExactly(1.0, 0.0, 0.0);
        assertThat(plan.cost().middle()).isCloseTo(-2, within(RATIO));
    }

    /** Of three practices alike, any of which suffices, the first; of those that change nothing, none. */
    @Test
    void ofEqualSetsTheOneWithEarlierOptionsWins() {
        List<Option> options =
                List.of(option("idle", "", 0), option("a", "", 2), option("b", "", 2), option("c", "", 2));
        for (Adoption adoption : Adoption.values()) {
            Plan plan = Planner.of(
                            options,
                            List.of(Limit.of("village", 6)),
                            LinearResponse.of(new double[] {10}, new double[][] {{0, -4, -4, -4}}),
                            adoption,
                            TEN)
                    .cheapest(Level.MIDDLE);
            assertThat(plan.shares()).as(adoption.toString()).containsExactly(0.0, 1.0, 0.0, 0.0);
        }
    }

    /** 10 and 30 over 6 and 6; everything brings 5 and 12: twice the limit remains, and only b is needed for that. */
    @Test
    void whereNoSetSufficesItSaysWhatRemains() {
        List<Option> options = List.of(option("a", "", 2), option("b", "", 7));
        Plan plan = Planner.of(
                        options,
                        List.of(Limit.of("village", 6), Limit.of("intake", 6)),
                        LinearResponse.of(new double[] {10, 30}, new double[][] {{-4, -1}, {0, -18}}),
                        Adoption.ALL_OR_NOTHING,
                        TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.isSufficient()).isFalse();
        assertThat(plan.shares()).containsExactly(0.0, 1.0);
        assertThat(plan.worstRatio()).isCloseTo(2, within(RATIO));
        assertThat(plan.remaining()).extracting(o -> o.limit().name()).containsExactly("village", "intake");
        assertThat(plan.remaining().get(0).over()).isCloseTo(3, within(RATIO));
        assertThat(plan.remaining().get(1).over()).isCloseTo(6, within(RATIO));
    }

    /** Costs as ranges: a is 1, 4, 9 and b 3, 5, 6. Each alone suffices, so a by low and middle costs, b by high ones. */
    @Test
    void anotherSetIsCheaperWhereCostsComeOutHigh() {
        List<Option> options = List.of(
                new Option("a", "site", "", new CostRange(1, 4, 9), 1),
                new Option("b", "site", "", new CostRange(3, 5, 6), 1));
        PlanRange plans = Planner.of(
                        options,
                        List.of(Limit.of("village", 6)),
                        LinearResponse.of(new double[] {10}, new double[][] {{-4, -4}}),
                        Adoption.ALL_OR_NOTHING,
                        TEN)
                .plans();
        assertThat(plans.middle().shares()).containsExactly(1.0, 0.0);
        assertThat(plans.high().shares()).containsExactly(0.0, 1.0);
        assertThat(plans.regret(Level.LOW)).isZero();
        assertThat(plans.regret(Level.HIGH)).isCloseTo(3, within(RATIO));
    }

    /**
     * Two practices of -5 each that together save 6, not 10, off 10: the linear problem calls 1 + 1 enough for 3, the full run
     * has 4. The third, dearer one is found in further runs.
     */
    @Test
    void aSetThatTheFullRunRefusesIsNotTheAnswer() {
        Evaluator model = new Evaluator() {
            @Override
            public double[] values(double[] x) {
                return new double[] {10 - 5 * x[0] - 5 * x[1] - 8 * x[2] + 4 * x[0] * x[1]};
            }

            @Override
            public double[][] slopes(double[] x) {
                return new double[][] {{-5, -5, -8}};
            }
        };
        List<Option> options = List.of(option("a", "", 1), option("b", "", 1), option("free", "", 5));
        Plan plan = Planner.of(options, List.of(Limit.of("village", 3)), model, Adoption.ALL_OR_NOTHING, TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.shares()).containsExactly(0.0, 0.0, 1.0);
        assertThat(plan.isSufficient() && plan.settled()).isTrue();
        assertThat(plan.runs()).isGreaterThan(1);
    }

    /**
     * Partial: of 2, x + (x - x²/2)/2 is saved and 1 has to be; slopes at fixed solids see 1.5 - x/4. Each round comes nearer
     * to the root of x²/4 - 1.5 x + 1, which is 3 - √5, from the side that does not suffice, and by a factor of 7 alone: the
     * plan suffices in the full run because it aims a millionth lower.
     */
    @Test
    void partialSharesEndOnTheLimitOfTheFullRun() {
        Evaluator model = new Evaluator() {
            @Override
            public double[] values(double[] x) {
                return new double[] {1e-9 * (2 - 1.5 * x[0] + x[0] * x[0] / 4)};
            }

            @Override
            public double[][] slopes(double[] x) {
                return new double[][] {{-1e-9 * (1.5 - x[0] / 4)}};
            }
        };
        Plan plan = Planner.of(
                        List.of(option("a", "", 1)), List.of(Limit.of("village", 1e-9)), model, Adoption.PARTIAL, TEN)
                .cheapest(Level.MIDDLE);
        assertThat(plan.isSufficient()).isTrue();
        assertThat(plan.shares().get(0)).isCloseTo(3 - Math.sqrt(5), within(SHORT_OF));
    }

    /** Neither suffices: 30 - 18 is twice the limit of 6, 30 - 17.98 a little more though cheaper. One run, and it is a's. */
    @Test
    void theLeastExceedingSetIsNamedNotOneNearlyAsGood() {
        Plan plan = Planner.of(
                        List.of(option("a", "site", 7), option("b", "site", 6)),
                        List.of(Limit.of("village", 6)),
                        LinearResponse.of(new double[] {30}, new double[][] {{-18, -17.98}}),
                        Adoption.ALL_OR_NOTHING,
                        1)
                .cheapest(Level.MIDDLE);
        assertThat(plan.shares()).containsExactly(1.0, 0.0);
    }

    /** DISCRETIZATION: partial plans stop short of a limit by at most a millionth of it; the slope here is above 1 where it ends. */
    private static final double SHORT_OF = 1e-6;

    @Test
    void badInputIsRefused() {
        List<Option> options = List.of(option("a", "", 1));
        List<Limit> limits = List.of(Limit.of("village", 1));
        LinearResponse two = LinearResponse.of(new double[] {1, 1}, new double[][] {{1}, {1}});
        assertThatThrownBy(() -> Planner.of(List.of(), limits, two, Adoption.PARTIAL, TEN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() ->
                        Planner.of(options, limits, two, Adoption.PARTIAL, TEN).cheapest(Level.MIDDLE))
                .hasMessageContaining("1 limits");
        assertThatThrownBy(() -> Limit.of("village", 0)).hasMessageContaining("village");
        assertThatThrownBy(() -> new CostRange(2, 1, 3)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LinearResponse.of(new double[] {Double.NaN}, new double[][] {{1}}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
