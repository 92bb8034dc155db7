// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.History.Era;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.YearsResult.Whereabouts;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * A bed and all forms on random braided networks, every parameter over ten orders of magnitude: nothing is negative and all
 * mercury is accounted for, in balance and through 20 years.
 */
class BedPropertiesTest {
    /** model.md section 7. */
    private static final double STEADY = 1e-9;
    /** model.md section 7. */
    private static final double YEARS = 1e-8;
    /** Below this part of what comes in, digits are not asked for. */
    private static final double NOTHING = 1e-60;

    private static final int DRAWS = 300;

    private static double spread(Random random, int lowest) {
        return StrictMath.pow(10, lowest + 10 * random.nextDouble());
    }

    private static Partitioned kd(Random random) {
        List<Double> log10 = new ArrayList<>();
        for (int j = 0; j < 3; j++) {
            log10.add(-3 + 10 * random.nextDouble());
        }
        double binding = random.nextBoolean() ? 0 : spread(random, -6);
        return new Partitioned(log10, List.of(binding, binding));
    }

    private static Reaction reaction(Random random, String from, String to) {
        Part part = random.nextBoolean() ? Part.TOTAL : Part.FILTERED;
        return new Reaction(from, to, new FirstOrder(ByStateAndKind.same(spread(random, -14)), 1.05, false), part);
    }

    static TestRiver river(Random random, long seed) {
        TestRiver river = ConservationTest.random(seed, true, 8);
        for (int k = 0; k < river.ids.size(); k++) {
            river.velocity.set(k, StrictMath.pow(10, -2 + 2.5 * random.nextDouble()));
            river.depth.set(k, StrictMath.pow(10, -1 + 2 * random.nextDouble()));
            river.head.set(k, river.head.get(k) * StrictMath.pow(10, 3 * random.nextDouble()));
        }
        river.flow = new double[] {1, 6};
        double wet = 0.5 * random.nextDouble();
        river.share = new double[] {1 - wet, wet};
        river.flood = List.of(false, random.nextBoolean());
        river.overbank = spread(random, -14);
        river.skinShear = StrictMath.pow(10, -3 + 4 * random.nextDouble());
        river.sediment = spread(random, -10);
        river.cohesive("a", spread(random, -11), 0.5, spread(random, -6), 0.5);
        river.particles("b", spread(random, -11), false, 1, spread(random, -6), OptionalDouble.empty(), 0.5);
        river.cohesive("c", spread(random, -11), 0.2, spread(random, -6), 0);
        river.grainRelease = spread(random, -14);
        river.content = spread(random, -14);
        river.filtered = spread(random, -16);
        river.chemistry = new Chemistry(
                List.of(
                        new Form(Form.METHYL, true, kd(random), false),
                        new Form(Form.ELEMENTAL, true, kd(random), true),
                        new Form(Form.COMPLEX, false, kd(random), false),
                        new Form("droplets 1 um", false, Droplets.of(1e-6), false),
                        new Form("droplets 100 um", false, Droplets.of(1e-4), false)),
                List.of(
                        reaction(random, StateLayout.EXCHANGEABLE, Form.ELEMENTAL),
                        reaction(random, Form.ELEMENTAL, StateLayout.EXCHANGEABLE),
                        reaction(random, StateLayout.EXCHANGEABLE, Form.METHYL),
                        reaction(random, Form.METHYL, StateLayout.EXCHANGEABLE),
                        reaction(random, Form.COMPLEX, StateLayout.EXCHANGEABLE)),
                List.of(20.0, 25.0),
                ByStateAndKind.same(spread(random, -6)),
                ByStateAndKind.same(spread(random, -9)),
                ByStateAndKind.same(random.nextBoolean() ? Double.NaN : spread(random, -13)),
                random.nextDouble());
        river.site("r1", spread(random, -14), OptionalDouble.empty(), 0.1 * random.nextDouble(), 1e-3, true);
        river.site("r5", spread(random, -14), OptionalDouble.of(random.nextDouble()), 0, 0, false);
        river.furtherShares.put("site 1", Map.of("droplets 1 um", 0.2, "droplets 100 um", 0.2, Form.COMPLEX, 0.2));
        river.furtherShares.put("site 2", Map.of(Form.ELEMENTAL, 0.1, Form.METHYL, 0.01));
        return river;
    }

    static TestBed bed(Random random) {
        TestBed bed = new TestBed();
        bed.thickness = StrictMath.pow(10, -3 + 3 * random.nextDouble());
        bed.porosity = 0.3 + 0.6 * random.nextDouble();
        bed.given = random.nextBoolean() ? BedInput.Given.BURIAL : BedInput.Given.EROSION;
        bed.burial = random.nextInt(4) == 0 ? 0 : spread(random, -16);
        bed.horizon = 20 * TestBed.YEAR;
        bed.erosionRate = spread(random, -12);
        bed.criticalShear = StrictMath.pow(10, -2 + 3 * random.nextDouble());
        bed.poreExchange = random.nextInt(4) == 0 ? 0 : spread(random, -15);
        bed.ceiling = random.nextBoolean() ? Double.POSITIVE_INFINITY : spread(random, -16);
        for (String form : List.of(StateLayout.EXCHANGEABLE, Form.METHYL, Form.ELEMENTAL, Form.COMPLEX)) {
            bed.kd(form, spread(random, -6));
        }
        bed.reaction(StateLayout.EXCHANGEABLE, Form.METHYL, spread(random, -16));
        bed.reaction(Form.METHYL, StateLayout.EXCHANGEABLE, spread(random, -15));
        bed.reaction(Form.COMPLEX, StateLayout.EXCHANGEABLE, spread(random, -15));
        return bed;
    }

    @Test
    void nothingIsNegativeAndNothingIsLostOverTenOrdersOfMagnitude() {
        List<Long> seeds = new ArrayList<>();
        for (long seed = 0; seed < DRAWS; seed++) {
            seeds.add(seed);
        }
        seeds.add(System.nanoTime());
        for (long seed : seeds) {
            Random random = new Random(seed);
            TestRiver river = river(random, seed);
            TransportInput input = river.input().over(bed(random).input(2));
            SteadyResult steady = SteadyRun.run(input);
            steady(seed, steady, steady.bedAnswer().orElseThrow());
            balanced(seed, steady);
            years(seed, steady);
        }
    }

    private static void steady(long seed, SteadyResult result, BedAnswer answer) {
        assertThat(answer.worstClosure()).as("seed %d", seed).isLessThanOrEqualTo(STEADY);
        assertThat(DoubleStream.of(answer.stocks().flat()).allMatch(stock -> stock >= 0 && stock < 1e300))
                .as("stocks, seed %d", seed)
                .isTrue();
        for (int s = 0; s < result.input().stateCount(); s++) {
            for (int v = 0; v < result.variants(); v++) {
                Balance balance = answer.solution(s).balance(v);
                assertThat(balance.rows()).as("seed %d", seed).allMatch(row -> row.rate() >= 0);
                loads(seed, result, answer.solution(s), v);
            }
        }
    }

    /** River and bed in balance, however slow: what is released is exported, evaded, overbank, buried, or never leaves a bed. */
    private static void balanced(long seed, SteadyResult result) {
        TransportInput input = result.input();
        Cells cells = result.cells();
        List<StateHydraulics> water = new ArrayList<>();
        List<BackgroundSweep> background = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            water.add(StateHydraulics.of(input.hydraulics(), cells, s));
            background.add(BackgroundSweep.run(input, cells, water.get(s)));
        }
        BedInput bed = input.bed().orElseThrow();
        BedSolids.Outcome solids = BedSolids.run(input, bed, cells, water);
        BedAnswer answer =
                BedAnswer.steady(new BedWater(input, bed, cells, water, background, solids), 20 * TestBed.YEAR);
        steady(seed, result, answer);
        for (int v = 0; v < result.variants(); v++) {
            double in = 0;
            double out = answer.stocks().staying(v);
            for (int form = 0; form < input.layout().count(); form++) {
                out += answer.buried(form, v);
            }
            for (int s = 0; s < input.stateCount(); s++) {
                Balance balance = answer.solution(s).releasedBalance(v);
                double share = input.hydraulics().share(s);
                in += share * balance.sum(Process.RELEASED);
                for (Process process : List.of(Process.EXPORTED, Process.OVERBANK, Process.EVADED)) {
                    out += share * balance.sum(process);
                }
            }
            assertThat(Math.abs(out - in) / in).as("seed %d", seed).isLessThanOrEqualTo(STEADY);
        }
    }

    private static void loads(long seed, SteadyResult result, StateSolution solution, int v) {
        StateLayout layout = result.input().layout();
        for (int c = 0; c < result.cells().count(); c++) {
            for (int form = 0; form < layout.count(); form++) {
                notNegative(seed, "load", solution.time(c, form, v));
            }
        }
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
            int end = result.cells().start(r + 1) - 1;
            for (int form = 0; form < layout.count(); form++) {
                notNegative(seed, "load", solution.loadOut(r, form, v));
                notNegative(seed, "filtered share", solution.filteredShare(end, form));
                notNegative(seed, "share not filtered", 1 - solution.filteredShare(end, form));
            }
        }
    }

    /** At least 0, and a number. */
    private static void notNegative(long seed, String what, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            fail("%s is %s, seed %d", what, value, seed);
        }
    }

    private static void years(long seed, SteadyResult steady) {
        List<Integer> order = seed % 4 == 0 ? List.of(0, 1) : List.of();
        YearsResult years = BedYears.run(
                steady,
                new History(
                        20,
                        List.of(new Era(0, steady.input().sites()), new Era(12, List.of())),
                        order,
                        Optional.empty()),
                List.of(Fraction.WHOLE));
        assertThat(years.worstClosure()).as("seed %d", seed).isLessThanOrEqualTo(YEARS);
        assertThat(DoubleStream.of(years.lastStock()).allMatch(stock -> stock >= 0 && stock < 1e300))
                .as("stocks, seed %d", seed)
                .isTrue();
        for (int v = 0; v < steady.variants(); v++) {
            double before = 0;
            for (int year = 0; year < years.years(); year++) {
                double out = 0;
                for (Whereabouts where : Whereabouts.values()) {
                    double amount = years.amount(where, year, v);
                    notNegative(seed, where.name(), amount);
                    boolean in = where == Whereabouts.RELEASED || where == Whereabouts.BEGAN;
                    out += in ? 0 : amount;
                }
                double in = years.amount(Whereabouts.RELEASED, year, v) + years.amount(Whereabouts.BEGAN, year, v);
                assertThat(Math.abs(out - in)).as("seed %d", seed).isLessThanOrEqualTo(YEARS * in + NOTHING);
                double exported = years.amount(Whereabouts.EXPORTED, year, v);
                assertThat(exported).as("exports only grow, seed %d", seed).isGreaterThanOrEqualTo(before);
                before = exported;
            }
        }
        for (int r = 0; r < steady.input().hydraulics().reaches().size(); r++) {
            for (int year = 0; year < years.years(); year++) {
                notNegative(seed, "bed", years.bed().low(year, r));
                notNegative(seed, "water", years.mean(0).low(year, r));
            }
        }
    }
}
