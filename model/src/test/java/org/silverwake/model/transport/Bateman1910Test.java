// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.validation.Reference;

/**
 * Chains of reactions through the river run against Bateman's (1910) sums: of a unit of the first member,
 * N_n(t) = k_1 ... k_(n-1) sum over j of e^(-k_j t) / product over i != j of (k_i - k_j).
 */
@Reference(key = "bateman1910", locator = "solution of the chain, from memory")
class Bateman1910Test {
    /** The demand. ROUNDING: Bateman's own sums cancel as eps/(k t)^2, 1e-12 where k t is at least 0.02. */
    private static final double EXACT = 1e-9;

    private static final double RELEASED = 3e-7;
    private static final double VELOCITY = 0.4;
    private static final double DEPTH = 0.8;
    private static final double METERS = 8000;

    private static double bateman(double[] k, int n, double t) {
        double product = 1;
        double sum = 0;
        for (int j = 0; j < n; j++) {
            product *= j < n - 1 ? k[j] : 1;
            double below = 1;
            for (int i = 0; i < n; i++) {
                below *= i == j ? 1 : k[i] - k[j];
            }
            sum += StrictMath.exp(-k[j] * t) / below;
        }
        return product * sum;
    }

    private static Form form(String name, boolean exchanging, double log10Kd, boolean evades) {
        return new Form(name, exchanging, new Partitioned(List.of(log10Kd), List.of(0.0)), evades);
    }

    private static Reaction reaction(String from, String to, double rate) {
        return new Reaction(from, to, new FirstOrder(ByStateAndKind.same(rate), 1, false), Part.TOTAL);
    }

    private static TestRiver river(List<Form> forms, List<Reaction> reactions, double evasion) {
        TestRiver river = TestRiver.chain(6, METERS, 12);
        river.chemistry = new Chemistry(
                forms,
                reactions,
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(evasion),
                0);
        return river;
    }

    /** Complex, Hg(II), Hg(0), air: all dissolved, so that evasion is the last member's only loss. */
    private static SteadyResult toTheAir(double breakdown, double reduction, double evasion) {
        TestRiver river = river(
                List.of(
                        form(Form.COMPLEX, false, Double.NEGATIVE_INFINITY, false),
                        form(Form.ELEMENTAL, true, Double.NEGATIVE_INFINITY, true)),
                List.of(
                        reaction(Form.COMPLEX, StateLayout.EXCHANGEABLE, breakdown),
                        reaction(StateLayout.EXCHANGEABLE, Form.ELEMENTAL, reduction)),
                evasion * DEPTH);
        river.cohesive("none", 0, 0.1, 0, 1).site("r0", RELEASED, 1);
        river.furtherShares.put("site 1", Map.of(Form.COMPLEX, 1.0));
        return river.run();
    }

    @Test
    void complexToDivalentToElementalToTheAir() {
        double[] k = {4e-6, 3e-5, 1.1e-5, 0};
        SteadyResult result = toTheAir(k[0], k[1], k[2]);
        StateLayout layout = result.input().layout();
        List<String> names = List.of(Form.COMPLEX, StateLayout.EXCHANGEABLE, Form.ELEMENTAL);
        for (Bound bound : Bound.both()) {
            StateSolution solution = result.solution(bound, 0);
            for (int r = 0; r < 6; r++) {
                double t = (r + 1) * METERS / VELOCITY;
                for (int n = 0; n < names.size(); n++) {
                    double load = solution.loadOut(r, layout.place(names.get(n)), 0);
                    assertThat(load / (RELEASED * bateman(k, n + 1, t)))
                            .as("%s at the end of reach %d", names.get(n), r)
                            .isCloseTo(1, within(EXACT));
                }
            }
            // the air is the fourth member, which is stable
            double end = 6 * METERS / VELOCITY;
            double air = solution.releasedBalance(0).sum(Process.EVADED);
            assertThat(air / (RELEASED * bateman(k, 4, end))).isCloseTo(1, within(EXACT));
        }
    }

    /** Where all rates are one k, Bateman's sums divide by nothing; their limit is (k t)^(n-1)/(n-1)! e^(-k t). */
    @Test
    void equalRates() {
        double k = 2e-5;
        SteadyResult result = toTheAir(k, k, k);
        StateLayout layout = result.input().layout();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        for (int r = 0; r < 6; r++) {
            double x = k * (r + 1) * METERS / VELOCITY;
            double[] left = {1, x, x * x / 2};
            int[] places = {layout.place(Form.COMPLEX), layout.exchangeable(), layout.place(Form.ELEMENTAL)};
            for (int n = 0; n < places.length; n++) {
                assertThat(solution.loadOut(r, places[n], 0) / (RELEASED * left[n] * StrictMath.exp(-x)))
                        .isCloseTo(1, within(EXACT));
            }
        }
    }

    /**
     * Complex, Hg(II), MeHg without demethylation, where Hg(II) and MeHg also settle: each member decays by all that takes
     * it, and feeds the next by the reaction alone.
     */
    @Test
    void complexToDivalentToMethylWhileBothSettle() {
        double breakdown = 6e-6;
        double methylation = 5e-8;
        double kdDivalent = 200;
        double kdMethyl = 20;
        double settling = 6e-5;
        TestRiver river = river(
                List.of(
                        form(Form.COMPLEX, false, Double.NEGATIVE_INFINITY, false),
                        form(Form.METHYL, true, StrictMath.log10(kdMethyl * 1000), false)),
                List.of(
                        reaction(Form.COMPLEX, StateLayout.EXCHANGEABLE, breakdown),
                        reaction(StateLayout.EXCHANGEABLE, Form.METHYL, methylation)),
                0);
        river.sediment = 0.05;
        river.cohesive("silt", settling, 1e300, kdDivalent, 1).site("r0", RELEASED, 1);
        river.furtherShares.put("site 1", Map.of(Form.COMPLEX, 1.0));
        SteadyResult result = river.run();
        StateLayout layout = result.input().layout();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        double divalent = methylation + kdDivalent * 0.05 / (1 + kdDivalent * 0.05) * settling / DEPTH;
        double methyl = kdMethyl * 0.05 / (1 + kdMethyl * 0.05) * settling / DEPTH;
        double[] k = {breakdown, divalent, methyl};
        for (int r = 0; r < 6; r++) {
            double t = (r + 1) * METERS / VELOCITY;
            assertThat(solution.loadOut(r, layout.place(Form.COMPLEX), 0) / (RELEASED * bateman(k, 1, t)))
                    .isCloseTo(1, within(EXACT));
            assertThat(solution.loadOut(r, layout.exchangeable(), 0) / (RELEASED * bateman(k, 2, t)))
                    .isCloseTo(1, within(EXACT));
            double made = RELEASED * bateman(k, 3, t) * methylation / divalent;
            assertThat(solution.loadOut(r, layout.place(Form.METHYL), 0) / made).isCloseTo(1, within(EXACT));
        }
        Balance balance = solution.releasedBalance(0);
        assertThat(balance.closure()).isLessThan(1e-14);
    }
}
