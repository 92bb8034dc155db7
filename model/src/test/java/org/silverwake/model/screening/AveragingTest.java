// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.silverwake.model.screening.Averaging.Compared;
import org.silverwake.model.screening.Averaging.StateValue;

/** By hand. A year has 365.25 d. */
class AveragingTest {
    /** A handful of products and sums, in percent. */
    private static final double ROUNDING = 1e-12;

    private static final List<StateValue> STATES =
            List.of(new StateValue(0, 0.55, 10), new StateValue(1, 0.42, 4), new StateValue(2, 0.03, 100));

    private static double value(Averaging averaging, List<StateValue> states) {
        return averaging.compare(states).value();
    }

    @Test
    void worstState() {
        for (Averaging averaging : List.of(Averaging.ANY_STATE, Averaging.SHORT, Averaging.TAP)) {
            assertThat(averaging.compare(STATES)).isEqualTo(new Compared(100, 100, 2));
        }
    }

    /** 0.55 x 10 + 0.42 x 4 + 0.03 x 100 = 10.18; the worst state stands beside it. */
    @Test
    void yearMean() {
        Compared compared = Averaging.YEAR.compare(STATES);
        assertThat(compared.value()).isCloseTo(10.18, withinPercentage(ROUNDING));
        assertThat(compared.worst()).isCloseTo(100, withinPercentage(ROUNDING));
        assertThat(compared.worstState()).isEqualTo(2);
    }

    /** Without the dry state the rest of the year counts in full: (0.42 x 4 + 0.03 x 100) / 0.45 = 10.4. */
    @Test
    void yearMeanWithoutADryState() {
        assertThat(value(Averaging.YEAR, STATES.subList(1, 3))).isCloseTo(10.4, withinPercentage(ROUNDING));
    }

    /** The flood lasts 0.03 x 365.25 = 10.9575 d; 19.0425 d of the next worst fill the 30 d: 42.87250. */
    @Test
    void thirtyDaysFilledByTheNextWorst() {
        assertThat(value(Averaging.THIRTY_DAY, STATES))
                .isCloseTo((10.9575 * 100 + 19.0425 * 10) / 30, withinPercentage(ROUNDING));
    }

    /** A worst state of 30 d or more fills the window alone. */
    @Test
    void thirtyDaysOfALongState() {
        List<StateValue> states = List.of(new StateValue(0, 0.9, 1), new StateValue(1, 0.1, 7));
        assertThat(value(Averaging.THIRTY_DAY, states)).isCloseTo(7, withinPercentage(ROUNDING));
    }

    /** Three states, the two worst 3.6525 d and 7.305 d long. */
    @Test
    void thirtyDaysOverThreeStates() {
        List<StateValue> states =
                List.of(new StateValue(0, 0.97, 1), new StateValue(1, 0.01, 9), new StateValue(2, 0.02, 5));
        assertThat(value(Averaging.THIRTY_DAY, states))
                .isCloseTo((3.6525 * 9 + 7.305 * 5 + 19.0425) / 30, withinPercentage(ROUNDING));
    }

    /** Water for 10.9575 d a year alone: its whole time is the mean. */
    @Test
    void thirtyDaysOfLessWater() {
        assertThat(value(Averaging.THIRTY_DAY, STATES.subList(2, 3))).isCloseTo(100, withinPercentage(ROUNDING));
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> Averaging.YEAR.compare(List.of())).hasMessage("no flow state has water");
        assertThatThrownBy(() -> Averaging.BED.compare(STATES)).hasMessageContaining("not an average");
    }
}
