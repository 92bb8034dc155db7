// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.WaterProperties;

/** Solutions in closed form of what forms do on their way down one river without solids to settle with. */
class ExactFormsTest {
    /** EXACT: 1e-9 relative; rounding of squaring, 2^n eps, is far below it at these rates times travel time. */
    private static final double EXACT_PERCENT = 1e-7;

    private static final double KILOMETER = 1000;
    private static final double DAY = 86400;

    private static Form unbound(String name, boolean exchanging, boolean evades) {
        return new Form(name, exchanging, new Partitioned(List.of(Double.NEGATIVE_INFINITY), List.of(0.0)), evades);
    }

    private static Reaction turns(String from, String to, double rate) {
        return new Reaction(from, to, new FirstOrder(ByStateAndKind.same(rate), 1, false), Part.TOTAL);
    }

    private static Chemistry chemistry(List<Form> forms, List<Reaction> reactions, double evasion, double passivation) {
        return new Chemistry(
                forms,
                reactions,
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(5e-3),
                ByStateAndKind.same(evasion),
                passivation);
    }

    /** Two reaches of together 20 km, 0.4 m/s: 50,000 s. */
    private static TestRiver river() {
        TestRiver river = TestRiver.chain(2, 10 * KILOMETER, 5);
        return river.cohesive("fine", 0, 0.1, 200, 1);
    }

    /** Bateman (1910), three members in a row, also where two rates are all but equal. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2 / DAY, 1.999999 / DAY, 30 / DAY})
    void complexToDivalentToMethyl(double second) {
        double first = 2 / DAY;
        TestRiver river = river().site("r0", 3e-6, 1);
        river.furtherShares.put("site 1", Map.of(Form.COMPLEX, 1.0));
        river.chemistry = chemistry(
                List.of(unbound(Form.COMPLEX, false, false), unbound(Form.METHYL, true, false)),
                List.of(
                        turns(Form.COMPLEX, StateLayout.EXCHANGEABLE, first),
                        turns(StateLayout.EXCHANGEABLE, Form.METHYL, second)),
                Double.NaN,
                0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        StateLayout layout = river.input().layout();
        int end = river.index("r1");
        double t = 50_000;
        double complex = 3e-6 * StrictMath.exp(-first * t);
        // k1/(k2 - k1) (e^(-k1 t) - e^(-k2 t)) with the difference in one piece, so that near equal rates nothing
        // cancels
        double divalent = complex * first * t * expm1Over((second - first) * t);
        assertThat(solution.loadOut(end, layout.place(Form.COMPLEX), 0))
                .isCloseTo(complex, withinPercentage(EXACT_PERCENT));
        assertThat(solution.loadOut(end, layout.exchangeable(), 0))
                .isCloseTo(divalent, withinPercentage(EXACT_PERCENT));
        assertThat(solution.loadOut(end, layout.place(Form.METHYL), 0))
                .isCloseTo(3e-6 - complex - divalent, withinPercentage(EXACT_PERCENT));
    }

    /** (1 - e^(-x))/x. */
    private static double expm1Over(double x) {
        return x == 0 ? 1 : -StrictMath.expm1(-x) / x;
    }

    /** Where reduction is fast, what is left is what has not yet escaped: W0 e^(-v x/(H U)), to within a part k/k_red. */
    @Test
    void fastReductionLeavesEvasionAlone() {
        double evasion = 2e-5;
        double reduction = 1;
        TestRiver river = river().site("r0", 3e-6, 1);
        river.chemistry = chemistry(
                List.of(unbound(Form.ELEMENTAL, true, true)),
                List.of(turns(StateLayout.EXCHANGEABLE, Form.ELEMENTAL, reduction)),
                evasion,
                0);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        double k = evasion / 0.8;
        double t = 50_000;
        assertThat(solution.evasionRate(0, river.input().layout().place(Form.ELEMENTAL)))
                .isCloseTo(k, withinPercentage(EXACT_PERCENT));
        double chain =
                3e-6 * (reduction * StrictMath.exp(-k * t) - k * StrictMath.exp(-reduction * t)) / (reduction - k);
        double left = solution.loadOut(river.index("r1"), 0);
        assertThat(left).isCloseTo(chain, withinPercentage(EXACT_PERCENT));
        assertThat(left).isCloseTo(3e-6 * StrictMath.exp(-k * t), withinPercentage(100 * 2 * k / reduction));
        assertThat(solution.releasedBalance(0).sum(Process.EVADED))
                .isCloseTo(3e-6 - chain, withinPercentage(EXACT_PERCENT));
    }

    /**
     * Droplets in all but still water (shear velocity far below their fall, so that none is held up): half of them lie down
     * within ln 2 U H/w, w by Ferguson &amp; Church (2004), eq. 4, with C1 18 and C2 0.4 of smooth spheres, worked here.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-5, 1e-4})
    void dropletsToHalfDeposition(double diameter) {
        double nu = WaterProperties.at(20).kinematicViscosity();
        double rho = WaterProperties.at(20).density();
        double excess = (ElementalMercury.DENSITY - rho) / rho;
        double pull = excess * 9.81 * diameter * diameter;
        double fall = pull / (18 * nu + StrictMath.sqrt(0.75 * 0.4 * pull * diameter));
        double half = StrictMath.log(2) * 0.4 * 0.8 / fall;
        TestRiver river =
                TestRiver.chain(1, half, 5).cohesive("fine", 0, 0.1, 200, 1).site("r0", 1e-6, 1);
        river.skinShear = 1e-12;
        river.furtherShares.put("site 1", Map.of("droplets", 1.0));
        river.chemistry = chemistry(
                List.of(
                        unbound(Form.ELEMENTAL, true, false),
                        new Form("droplets", false, Droplets.of(diameter), false)),
                List.of(),
                Double.NaN,
                0);
        SteadyResult result = river.run();
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        assertThat(solution.loadOut(0, 0)).isCloseTo(0.5e-6, withinPercentage(EXACT_PERCENT));
        assertThat(result.solution(Bound.CARRIED_THROUGH, 0).loadOut(0, 0))
                .isCloseTo(1e-6, withinPercentage(EXACT_PERCENT));
    }

    /** With a clean surface droplets of 1 um dissolve before they settle, those of 100 um the other way round. */
    @Test
    void theSmallestDissolveBeforeTheySettle() {
        assertThat(dissolvedOverSettled(1e-6)).isGreaterThan(5);
        assertThat(dissolvedOverSettled(1e-4)).isLessThan(0.01);
    }

    private static double dissolvedOverSettled(double diameter) {
        TestRiver river = TestRiver.chain(1, 5 * KILOMETER, 5)
                .cohesive("fine", 0, 0.1, 200, 1)
                .site("r0", 1e-6, 1);
        river.skinShear = 1e-12;
        river.furtherShares.put("site 1", Map.of("droplets", 1.0));
        river.chemistry = chemistry(
                List.of(
                        unbound(Form.ELEMENTAL, true, false),
                        new Form("droplets", false, Droplets.of(diameter), false)),
                List.of(),
                Double.NaN,
                1);
        StateSolution solution = river.run().solution(Bound.LAID_DOWN, 0);
        double dissolved = solution.loadOut(0, river.input().layout().place(Form.ELEMENTAL), 0);
        double settled = solution.releasedBalance(0).sum(Process.SETTLED);
        assertThat(Collections.max(List.of(dissolved, settled))).isPositive();
        return dissolved / settled;
    }
}
