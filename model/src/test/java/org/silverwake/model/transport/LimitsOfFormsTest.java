// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
import org.silverwake.model.validation.Reference;

/** Limits in which one process alone decides what becomes of a form, through the river run. */
class LimitsOfFormsTest {
    private static final double DAY = 86400;
    private static final double RELEASED = 1e-9;
    private static final double WARM = 25;

    private static final Form ELEMENTAL =
            new Form(Form.ELEMENTAL, true, new Partitioned(List.of(Double.NEGATIVE_INFINITY), List.of(0.0)), true);

    private static Chemistry chemistry(List<Form> forms, List<Reaction> reactions, double airFilm, double passivation) {
        return new Chemistry(
                forms,
                reactions,
                List.of(WARM),
                ByStateAndKind.same(0),
                ByStateAndKind.same(airFilm),
                ByStateAndKind.same(Double.NaN),
                passivation);
    }

    private static Reaction reduction(double rate, Part part) {
        return new Reaction(
                StateLayout.EXCHANGEABLE, Form.ELEMENTAL, new FirstOrder(ByStateAndKind.same(rate), 1, false), part);
    }

    /** One reach of 1 m depth at 0.5 m/s and 25 degC. */
    private static TestRiver river(double meters) {
        TestRiver river = TestRiver.chain(1, meters, 12);
        river.velocity.set(0, 0.5);
        river.depth.set(0, 1.0);
        river.celsius = WARM;
        return river;
    }

    private static double leftAfterFastReduction(double airFilm) {
        TestRiver river = river(20000);
        river.cohesive("none", 0, 0.1, 0, 1).site("r0", RELEASED, 1);
        river.chemistry = chemistry(List.of(ELEMENTAL), List.of(reduction(1, Part.TOTAL)), airFilm, 0);
        return river.run().solution(Bound.LAID_DOWN, 0).loadOut(0, 0) / RELEASED;
    }

    /**
     * Fast reduction: evasion governs. By hand from checks C11 and B10: O'Connor-Dobbins 2.7789 /d over 1 m for oxygen at 20
     * degC; times (1.874e-5/2.1e-5)^(1/2), 2.625 m/d for Hg(0); times 1.025^5, 2.9699 m/d. Air's film 432 m/d x 0.310 = 133.9 m/d.
     * Both in series 2.9055 m/d; in 20000/0.5 s = 0.46296 d, e^-1.34512 = 0.26051 is left.
     */
    @Test
    @Reference(key = "chin2006", locator = "reaeration formulas, metric")
    @Reference(key = "sander2023", locator = "Hg, Hscp")
    void evasionGovernsWhereReductionIsFast() {
        // PRINTED: 2.625 and 0.310 to half of their last digit are 3e-4 and 5e-5 of 0.26051; 3.4e-5/1 of reduction is
        // left
        assertThat(leftAfterFastReduction(432 / DAY) / 0.26051).isCloseTo(1, within(4e-4));
        // still air: v = 0.310 k_g, k_g 1 m/d: e^(-0.31 x 0.46296) = 0.86632, short of 0.31/2.97 for the water's film
        double air = 1 / (1 / 0.310 + 1 / 2.9699);
        assertThat(leftAfterFastReduction(1 / DAY) / StrictMath.exp(-air * 0.46296))
                .isCloseTo(1, within(3e-4));
    }

    /**
     * Check C13, combined loss: Kd 1e5 L/kg, 100 mg/L, w 1e-4 m/s, H 1.5 m, 0.1 /d on the dissolved part, U 0.4 m/s: 0.0480476
     * after 20 km; by settling alone with all of it on particles 0.0356740.
     */
    @Test
    @Reference(key = "thomann1987", locator = "combined loss, from memory")
    void settlingAndLossOfTheDissolvedPartTogether() {
        double printed = 5.1e-8;
        double[] kd = {100, 1e12};
        double[] expected = {0.0480476, 0.0356740};
        for (int k = 0; k < kd.length; k++) {
            TestRiver river = TestRiver.chain(1, 20000, 9);
            river.depth.set(0, 1.5);
            river.celsius = WARM;
            river.sediment = 0.1;
            river.cohesive("silt", 1e-4, 1e300, kd[k], 1).site("r0", RELEASED, 1);
            river.chemistry = chemistry(List.of(ELEMENTAL), List.of(reduction(0.1 / DAY, Part.FILTERED)), 1, 0);
            double left = river.run().solution(Bound.LAID_DOWN, 0).loadOut(0, 0, 0) / RELEASED;
            assertThat(left).isCloseTo(expected[k], within(printed));
        }
    }

    private static SteadyResult droplets(double diameter, double meters, double passivation, double shear) {
        TestRiver river = river(meters);
        river.skinShear = shear;
        river.cohesive("none", 0, 0.1, 0, 1).site("r0", RELEASED, 1);
        river.furtherShares.put("site 1", Map.of("droplets", 1.0));
        Form form = new Form("droplets", false, Droplets.of(diameter), false);
        river.chemistry = chemistry(List.of(ELEMENTAL, form), List.of(), 1, passivation);
        return river.run();
    }

    private static double laidDown(SteadyResult result) {
        return result.solution(Bound.LAID_DOWN, 0).releasedBalance(0).sum(Process.SETTLED) / RELEASED;
    }

    /** Ferguson &amp; Church (2004), eq. 4, of a sphere (C1 18, C2 0.4) of 13,534 kg/m3 in water of 25 degC (Kell's density, checks B29). */
    private static double settling(double diameter) {
        double buoyancy = (13534 / 997.044895418 - 1) * 9.81;
        double viscosity = 8.90438981615e-4 / 997.044895418;
        double drag = StrictMath.sqrt(0.75 * 0.4 * buoyancy * diameter * diameter * diameter);
        return buoyancy * diameter * diameter / (18 * viscosity + drag);
    }

    /** In a river (u* 0.05 m/s) turbulence holds 1 and 10 um up for good, while 100 um drops at once, P = 0.0557/(0.41 x 0.05) = 2.7. */
    @Test
    void turbulenceHoldsSmallDropletsUp() {
        double shear = 997 * 0.05 * 0.05;
        assertThat(laidDown(droplets(1e-6, 160e3, 0, shear))).isZero();
        assertThat(laidDown(droplets(1e-5, 160e3, 0, shear))).isZero();
        assertThat(laidDown(droplets(1e-4, StrictMath.log(2) * 0.5 / settling(1e-4), 0, shear)))
                .isCloseTo(0.5, within(2e-11));
    }

    /**
     * Dissolving beside settling, Sh = 2 + 0.6 Re^(1/2) Sc^(1/3) by hand at 25 degC with nu 8.93e-7, D 1.874e-9 m2/s (Sc 476.6), 60
     * ug/L: Sh 2.0137, 2.4318, 13.702; k = 6 Sh D C_sat/(rho d^2) = 1.0038e-4, 1.2122e-6, 6.830e-8 1/s. Of what is released, w/H /(w/H + k)
     * is laid down: 7.10 % of 1 um, 99.84 % of 10 um, all of 100 um. So 1 um dissolves (half in 3.5 km) before it settles (half in 45 km), as
     * model.md 5.1 says; from 10 um on it is the other way round.
     */
    @ParameterizedTest
    @CsvSource({"1e-6, 1.0038e-4", "1e-5, 1.2122e-6", "1e-4, 6.830e-8"})
    @Reference(key = "ranz1952", locator = "Sh = 2 + 0.6 Re^(1/2) Sc^(1/3), from memory")
    void theSmallestDissolveBeforeTheySettle(double diameter, double dissolving) {
        double still = 1e-9;
        double settling = settling(diameter);
        double total = settling + dissolving;
        double half = StrictMath.log(2) * 0.5 / total;
        SteadyResult result = droplets(diameter, half, 1, still);
        int place = result.input().layout().place("droplets");
        StateSolution solution = result.solution(Bound.LAID_DOWN, 0);
        // PRINTED: D to four digits, viscosity to three on the small term
        double printed = 6e-4 * dissolving / total;
        assertThat(solution.loadOut(0, place, 0) / RELEASED).isCloseTo(0.5, within(0.5 * printed + 1e-10));
        assertThat(laidDown(result)).isCloseTo(0.5 * settling / total, within(printed));
        // a passive skin dissolves a hundredth as fast
        double slow = settling + dissolving / 100;
        double passive = laidDown(droplets(diameter, StrictMath.log(2) * 0.5 / slow, 0.01, still));
        assertThat(passive).isCloseTo(0.5 * settling / slow, within(printed));
        assertThat(settling > dissolving).isEqualTo(diameter > 5e-6);
    }
}
