// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.History.Era;
import org.silverwake.model.transport.YearsResult.Whereabouts;

/** Beds that take in what they never give back, and histories whose sites are not those of the steady run. */
class BedThatKeepsTest {
    /** ROUNDING: a few dozen operations. */
    private static final double SAME = 1e-12;

    /** Fast water in which no silt stays down (shear above tau_cd) and 100 um droplets drop at once. */
    private static TestRiver fast(OptionalDouble split) {
        TestRiver river = TestRiver.chain(2, 3000, 5);
        river.skinShear = 2.5;
        river.sediment = 0.05;
        river.cohesive("silt", 1e-4, 0.1, 200, 1).site("r0", 1e-6, split, 0, 0, false);
        river.furtherShares.put("site 1", Map.of("droplets", 0.25));
        river.chemistry = new Chemistry(
                List.of(new Form("droplets", false, Droplets.of(1e-4), false)),
                List.of(),
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(Double.NaN),
                0);
        return river;
    }

    /**
     * No solids lie down, so none goes back or is buried, and the droplets stay: the bed is that of 30 years, and their stock
     * what those bring. Of Hg(II), of which 1 part in 11 is filtered, pore water takes up v f A/Q on the way, 2e-4, and gives
     * back what its bed holds at a rate k; after t it still keeps v f A/Q exp(-k t), but for terms of the order of its square.
     */
    @Test
    void dropletsOnABedWhoseSolidsDoNotMoveAreShownAfterTheHorizon() {
        TestRiver river = fast(OptionalDouble.of(1));
        TestBed bed = new TestBed();
        bed.horizon = 30 * TestBed.YEAR;
        bed.kd(StateLayout.EXCHANGEABLE, 80);
        SteadyResult result = SteadyRun.run(river.input().over(bed.input(1)));
        BedAnswer answer = result.bedAnswer().orElseThrow();
        int droplets = result.input().layout().place("droplets");
        assertThat(answer.stock(droplets, 0) / (0.25e-6 * bed.horizon)).isCloseTo(1, within(SAME));
        assertThat(answer.stocks().staying(0) / 0.25e-6).isCloseTo(1, within(SAME));
        assertThat(answer.solution(0).loadOut(1, droplets, 0)).isLessThan(1e-6 * SAME);
        assertThat(answer.afterYears()).hasValue(30);
        double share = 1 / (1 + 200 * 0.05);
        double taken = bed.poreExchange * share * 5 / (0.4 * 0.8) * 6000 / 5;
        double back = bed.poreExchange / (bed.thickness * (bed.porosity + 80 * (1 - bed.porosity) * bed.density));
        double left = taken * StrictMath.exp(-back * bed.horizon);
        assertThat((1 - answer.solution(0).loadOut(1, 0, 0) / 0.75e-6) / left).isCloseTo(1, within(2 * taken));
        assertThat(answer.worstClosure()).isLessThan(SAME);
    }

    /** A site of unknown split ends, or another of known split follows: both variants go on. */
    @Test
    void sitesOfUnknownSplitMayEnd() {
        TestRiver river = fast(OptionalDouble.empty());
        SteadyResult steady = SteadyRun.run(river.input().over(new TestBed().input(1)));
        TestRiver after = fast(OptionalDouble.of(1));
        YearsResult years = BedYears.run(
                steady,
                new History(
                        6,
                        List.of(
                                new Era(0, steady.input().sites()),
                                new Era(2, List.of()),
                                new Era(4, after.input().sites())),
                        List.of(),
                        Optional.empty()),
                List.of(SteadyResult.Fraction.WHOLE));
        for (int v = 0; v < 2; v++) {
            assertThat(years.amount(Whereabouts.RELEASED, 3, v) / (2e-6 * TestBed.YEAR))
                    .isCloseTo(1, within(SAME));
            assertThat(years.amount(Whereabouts.RELEASED, 5, v) / (4e-6 * TestBed.YEAR))
                    .isCloseTo(1, within(SAME));
        }
        assertThat(years.mean(0).high(3, 1)).isLessThan(years.mean(0).high(1, 1));
    }

    @Test
    void aSiteOfMoreExtremesThanTheSteadyRunHasIsRefused() {
        SteadyResult steady = SteadyRun.run(fast(OptionalDouble.of(1)).input().over(new TestBed().input(1)));
        History history = new History(
                2, List.of(new Era(0, fast(OptionalDouble.empty()).input().sites())), List.of(), Optional.empty());
        assertThatThrownBy(() -> BedYears.run(steady, history, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 extremes");
    }
}
