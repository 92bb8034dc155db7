// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.planning.Adoption;
import org.silverwake.model.planning.CostRange;
import org.silverwake.model.planning.Evaluator;
import org.silverwake.model.planning.Level;
import org.silverwake.model.planning.Limit;
import org.silverwake.model.planning.Option;
import org.silverwake.model.planning.Plan;
import org.silverwake.model.planning.Planner;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.SteadyResult.Fraction;

/**
 * Plans on random braided rivers with the full model: of sites that each may keep back half of all they release, or all their
 * tailings but little of their mercury's filtered part, the plan is the cheapest of all sets, each run in full. Tailings bind
 * mercury, so values are not linear in what is taken up, and a practice may make filtered mercury worse.
 */
class PlanOnRiversTest {
    private static final int BASINS = 50;
    private static final int MOST_RUNS = 4096;
    private static final int FEW_SITES = 3;
    private static final int MANY_SITES = 6;
    private static final int MANY_EACH = 25;
    /** Costs within 2e-7 of the dearest count as equal. */
    private static final double TIE = 1e-6;

    private static final double RATIO = 1e-9;

    static Stream<Long> seeds() {
        return LongStream.concat(LongStream.range(0, BASINS), LongStream.of(System.nanoTime()))
                .boxed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theCheapestOfAllSets(long seed) {
        Basin basin = new Basin(seed);
        Plan plan = Planner.of(basin.options, basin.limits, basin, Adoption.ALL_OR_NOTHING, MOST_RUNS)
                .cheapest(Level.MIDDLE);
        double leastCost = Double.POSITIVE_INFINITY;
        double leastWorst = Double.POSITIVE_INFINITY;
        for (double[] set : basin.sets()) {
            double worst = basin.worst(set);
            leastWorst = Math.min(leastWorst, worst);
            if (worst <= 1 + RATIO) {
                leastCost = Math.min(leastCost, basin.cost(set));
            }
        }
        String which = "seed " + seed;
        assertThat(plan.exhaustive()).as(which).isTrue();
        assertThat(plan.isSufficient()).as(which).isEqualTo(leastWorst <= 1 + RATIO);
        if (plan.isSufficient()) {
            assertThat(plan.cost().middle()).as(which).isCloseTo(leastCost, within(TIE * basin.dearest()));
        } else {
            assertThat(plan.worstRatio() / leastWorst).as(which).isCloseTo(1, within(RATIO));
        }
    }

    /** A river with sites, two practices at each, and values at two reaches. */
    private static final class Basin implements Evaluator {
        private final TransportInput input;
        private final List<Option> options = new ArrayList<>();
        private final List<Limit> limits = new ArrayList<>();
        private final List<Integer> reaches = new ArrayList<>();
        private final Map<List<Double>, double[]> known = new HashMap<>();

        Basin(long seed) {
            Random random = new Random(seed * 31 + 7);
            TestRiver river = ConservationTest.random(seed, true);
            river.cohesive("fine", 2e-5, 0.1, 200, 1);
            river.cohesive("tailings", 3e-4, 0.07, 100, 0);
            river.filtered = 1e-10;
            river.cut = false;
            int sites = seed % MANY_EACH == 0 ? MANY_SITES : FEW_SITES;
            for (int k = 0; k < sites; k++) {
                String reach = river.ids.get(random.nextInt(river.ids.size() / 2));
                river.site(
                        reach, 1e-6 * random.nextDouble(), OptionalDouble.of(0.3), 0.1 * random.nextDouble(), 0, false);
            }
            input = river.input();
            for (int k = 0; k < sites; k++) {
                for (String name : List.of("half", "no tailings")) {
                    options.add(
                            new Option(name, "site " + k, "site " + k, CostRange.of(10 * random.nextDouble() - 1), 1));
                }
            }
            int last = input.hydraulics().reaches().size() - 1;
            reaches.addAll(List.of(last, last - 2 - random.nextInt(last / 2)));
            double[] present = read(input);
            double[] least = values(new double[options.size()]);
            for (double[] set : sets()) {
                double[] found = values(set);
                for (int i = 0; i < least.length; i++) {
                    least[i] = Math.min(least[i], found[i]);
                }
            }
            for (int i = 0; i < present.length; i++) {
                // between the least there can be alone and the present, now and then below the least
                double part = 1.1 * random.nextDouble() - 0.1;
                limits.add(Limit.of("value " + i, Math.max(1e-15, least[i] + part * (present[i] - least[i]))));
            }
        }

        /** All sets of at most one practice at each site. */
        List<double[]> sets() {
            List<double[]> sets = new ArrayList<>(List.of(new double[options.size()]));
            for (int i = 0; i < options.size(); i += 2) {
                for (double[] set : List.copyOf(sets)) {
                    for (int which = 0; which < 2; which++) {
                        double[] more = set.clone();
                        more[i + which] = 1;
                        sets.add(more);
                    }
                }
            }
            return sets;
        }

        double cost(double[] set) {
            double sum = 0;
            for (int i = 0; i < set.length; i++) {
                sum += set[i] * options.get(i).cost().middle();
            }
            return sum;
        }

        double dearest() {
            return options.stream()
                    .mapToDouble(o -> Math.abs(o.cost().middle()))
                    .max()
                    .orElseThrow();
        }

        double worst(double[] set) {
            double[] values = values(set);
            double worst = 0;
            for (int i = 0; i < values.length; i++) {
                worst = Math.max(worst, values[i] / limits.get(i).allowed());
            }
            return worst;
        }

        @Override
        public double[] values(double[] shares) {
            List<Double> key = new ArrayList<>();
            List<SiteRelease> sites = new ArrayList<>();
            for (double share : shares) {
                key.add(share);
            }
            for (int k = 0; k < input.sites().size(); k++) {
                SiteRelease site = input.sites().get(k);
                double half = 1 - 0.5 * shares[2 * k];
                double tailings = 1 - shares[2 * k + 1];
                sites.add(new SiteRelease(
                        site.name(),
                        site.reach(),
                        site.mercury().stream()
                                .map(m -> m * half * (0.8 + 0.2 * tailings))
                                .toList(),
                        site.exchangeableShare(),
                        site.classShares(),
                        site.solids().stream().map(w -> w * half * tailings).toList(),
                        site.water(),
                        site.atBank(),
                        site.furtherShares(),
                        site.moreExtremes()));
            }
            return known.computeIfAbsent(key, k -> read(input.withSites(sites))).clone();
        }

        private double[] read(TransportInput of) {
            SteadyResult result = SteadyRun.run(of);
            double[] values = new double[reaches.size() * 2];
            for (int i = 0; i < reaches.size(); i++) {
                boolean wet = result.isWet(0, reaches.get(i));
                values[2 * i] = wet ? result.high(0, reaches.get(i), Fraction.WHOLE) : 0;
                values[2 * i + 1] = wet ? result.high(0, reaches.get(i), Fraction.FILTERED) : 0;
            }
            return values;
        }

        @Override
        public double[][] slopes(double[] shares) {
            double[] now = values(shares);
            double[][] slopes = new double[now.length][options.size()];
            for (int i = 0; i < options.size(); i++) {
                double[] other = shares.clone();
                other[i] = shares[i] < 1 ? 1 : 0;
                double[] then = values(other);
                for (int j = 0; j < now.length; j++) {
                    slopes[j][i] = (then[j] - now[j]) / (other[i] - shares[i]);
                }
            }
            return slopes;
        }
    }
}
