// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
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
import org.silverwake.model.transport.StateSolution.Place;

/** All forms together: mass, signs, samples, and a form that nobody has heard of. */
class FormsTest {
    /** ROUNDING of a few thousand additions and of squaring a core of three. */
    private static final double CLOSED = 1e-11;

    private static final double ROUNDING_PERCENT = 1e-9;

    private static List<Form> forms(int classes) {
        List<Double> none = new ArrayList<>();
        List<Double> some = new ArrayList<>();
        for (int j = 0; j < classes; j++) {
            none.add(Double.NEGATIVE_INFINITY);
            some.add(log10(40.0 / (j + 1)));
        }
        return List.of(
                new Form(Form.COMPLEX, false, new Partitioned(none, List.of(0.0)), false),
                new Form(Form.ELEMENTAL, true, new Partitioned(none, List.of(0.0)), true),
                new Form("droplets 3 um", false, Droplets.of(3e-6), false),
                new Form("droplets 100 um", false, Droplets.of(1e-4), false),
                new Form(Form.METHYL, true, new Partitioned(some, List.of(0.0)), false));
    }

    /** Of a coefficient [m3/kg] [log10 L/kg]. */
    private static double log10(double kd) {
        return StrictMath.log10(kd * 1000);
    }

    private static Reaction reaction(String from, String to, double rate, Part part) {
        return new Reaction(from, to, new FirstOrder(ByStateAndKind.same(rate), 1.06, false), part);
    }

    private static Chemistry chemistry(int classes, double scale) {
        List<Reaction> reactions = List.of(
                reaction(StateLayout.EXCHANGEABLE, Form.ELEMENTAL, 1e-7 * scale, Part.FILTERED),
                reaction(Form.ELEMENTAL, StateLayout.EXCHANGEABLE, 2e-7 * scale, Part.TOTAL),
                reaction(StateLayout.EXCHANGEABLE, Form.METHYL, 1e-9 * scale, Part.TOTAL),
                reaction(Form.METHYL, StateLayout.EXCHANGEABLE, 3e-7 * scale, Part.FILTERED),
                reaction(Form.COMPLEX, StateLayout.EXCHANGEABLE, 1e-6 * scale, Part.TOTAL));
        return new Chemistry(
                forms(classes),
                reactions,
                List.of(20.0),
                ByStateAndKind.same(0.5),
                ByStateAndKind.same(5e-3),
                ByStateAndKind.same(Double.NaN),
                1);
    }

    private static TestRiver river(long seed, double scale) {
        TestRiver river = ConservationTest.random(seed, true);
        river.cohesive("fine", 4e-5, 0.1, 200, 1);
        river.cohesive("tailings", 3e-4, 0.1, 40, 0);
        river.grainRelease = 1e-7 * scale;
        river.chemistry = chemistry(2, scale);
        river.cut = true;
        Random random = new Random(seed);
        for (int k = 0; k < 5; k++) {
            river.site(
                    river.ids.get(random.nextInt(river.ids.size())), 1e-6, OptionalDouble.empty(), 0.03, 0.01, k == 0);
            Map<String, Double> shares = new HashMap<>();
            shares.put(Form.COMPLEX, 0.2 * random.nextDouble());
            shares.put(Form.ELEMENTAL, 0.1 * random.nextDouble());
            shares.put("droplets 3 um", 0.2 * random.nextDouble());
            shares.put("droplets 100 um", 0.3 * random.nextDouble());
            river.furtherShares.put("site " + (k + 1), shares);
        }
        return river;
    }

    @Test
    void budgetClosesAndNothingIsNegativeOverTenOrdersOfRates() {
        for (long seed = 0; seed < 6; seed++) {
            for (double scale : new double[] {1e-5, 1, 1e5}) {
                SteadyResult result = river(seed, scale).run();
                StateLayout layout = result.input().layout();
                for (Bound bound : Bound.both()) {
                    StateSolution solution = result.solution(bound, 0);
                    for (int v = 0; v < result.variants(); v++) {
                        Balance balance = solution.releasedBalance(v);
                        assertThat(balance.closure())
                                .as("seed %d, scale %s", seed, scale)
                                .isLessThan(CLOSED);
                        assertThat(balance.sum(Process.EVADED)).isPositive();
                        assertThat(balance.rows()).allMatch(row -> row.rate() >= 0);
                        for (int c = 0; c < result.cells().count(); c++) {
                            for (int form = 0; form < layout.count(); form++) {
                                assertThat(solution.time(c, form, v)).isGreaterThanOrEqualTo(0);
                            }
                        }
                    }
                }
            }
        }
    }

    @Test
    void twiceTheMercuryTwiceTheResult() {
        TestRiver once = river(3, 1);
        TestRiver twice = river(3, 1);
        twice.sites.replaceAll(s -> new TestRiver.Site(
                s.name(), s.reach(), 2 * s.mercury(), s.exchangeable(), s.shares(), s.solids(), s.water(), s.atBank()));
        StateSolution one = once.run().solution(Bound.LAID_DOWN, 0);
        StateSolution two = twice.run().solution(Bound.LAID_DOWN, 0);
        for (int r = 0; r < once.ids.size(); r++) {
            assertThat(two.loadOut(r, 0)).isCloseTo(2 * one.loadOut(r, 0), withinPercentage(ROUNDING_PERCENT));
        }
    }

    /** Half the reaches, the same numbers at the end: cells of a chain may be cut anywhere where nothing but mercury changes. */
    @Test
    void splittingAReachChangesNothing() {
        double[] out = new double[2];
        for (int k = 0; k < 2; k++) {
            TestRiver river = TestRiver.chain(k + 1, 8000.0 / (k + 1), 12);
            river.sediment = 0.05;
            river.cohesive("fine", 4e-5, 0.1, 200, 1);
            river.chemistry = chemistry(1, 1);
            river.site("r0", 1e-6, 0.5);
            river.furtherShares.put("site 1", Map.of(Form.COMPLEX, 0.4, "droplets 3 um", 0.3));
            out[k] = river.run().solution(Bound.LAID_DOWN, 0).loadOut(river.index("r" + k), 0);
        }
        assertThat(out[1]).isCloseTo(out[0], withinPercentage(ROUNDING_PERCENT));
    }

    /** A sample of whole water has no droplets above 63 um, and a filter holds all droplets. */
    @Test
    void samplesLeaveLargeDropletsOut() {
        TestRiver river = TestRiver.chain(1, 1000, 10);
        river.sediment = 0.05;
        river.cohesive("fine", 0, 0.1, 200, 1);
        river.chemistry = new Chemistry(
                forms(1),
                List.of(),
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(0),
                0);
        river.site("r0", 1e-6, 1);
        river.furtherShares.put("site 1", Map.of("droplets 3 um", 0.25, "droplets 100 um", 0.25, Form.COMPLEX, 0.25));
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        StateLayout layout = river.input().layout();
        double fine = solution.form(0, Place.HEAD, layout.place("droplets 3 um"), 0);
        assertThat(fine).isCloseTo(0.25e-7, withinPercentage(ROUNDING_PERCENT));
        assertThat(solution.whole(0, Place.HEAD, 0, false)).isCloseTo(0.75e-7, withinPercentage(ROUNDING_PERCENT));
        double sorbing = 1 / (1 + 200 * 0.05);
        assertThat(solution.filtered(0, Place.HEAD, 0, false))
                .isCloseTo(0.25e-7 + 0.25e-7 * sorbing, withinPercentage(ROUNDING_PERCENT));
    }

    /** A form of another name needs no more than its entry: it is carried, budgeted and turned into Hg(II). */
    @Test
    void aFormThatNobodyHasHeardOf() {
        TestRiver river = TestRiver.chain(1, 5000, 10);
        river.sediment = 0.02;
        river.cohesive("fine", 0, 0.1, 100, 1);
        Form strange = new Form("strange", false, new Partitioned(List.of(log10(3.0)), List.of(0.0)), false);
        river.chemistry = new Chemistry(
                List.of(strange),
                List.of(reaction("strange", StateLayout.EXCHANGEABLE, 1e-5, Part.TOTAL)),
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(Double.NaN),
                0);
        river.site("r0", 1e-6, 1);
        river.furtherShares.put("site 1", Map.of("strange", 1.0));
        SteadyResult result = river.run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        double left = StrictMath.exp(-1e-5 * 5000 / 0.4);
        int place = result.input().layout().place("strange");
        assertThat(solution.loadOut(0, place, 0)).isCloseTo(1e-6 * left, withinPercentage(ROUNDING_PERCENT));
        assertThat(solution.loadOut(0, 0, 0)).isCloseTo(1e-6 * (1 - left), withinPercentage(ROUNDING_PERCENT));
        assertThat(solution.balance(0).closure()).isCloseTo(0, within(1e-14));
    }

    @Test
    void whatCannotBeIsRefused() {
        TestRiver river = TestRiver.chain(1, 1000, 10);
        river.cohesive("fine", 0, 0.1, 200, 1).site("r0", 1e-6, 1);
        river.chemistry = new Chemistry(
                forms(1),
                List.of(reaction(Form.ELEMENTAL, Form.COMPLEX, 1e-6, Part.TOTAL)),
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(Double.NaN),
                0);
        assertThatThrownBy(river::run).hasMessageContaining("reaction Hg(0) to Hg-CN is not allowed");
        Form twice =
                new Form(StateLayout.EXCHANGEABLE, true, new Partitioned(List.of(log10(1.0)), List.of(0.0)), false);
        assertThatThrownBy(() -> StateLayout.of(List.of(), List.of(twice))).hasMessageContaining("two have one name");
    }
}
