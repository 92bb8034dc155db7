// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Steady stocks by hand. */
class LossEliminationTest {
    /** ROUNDING: a dozen operations. */
    private static final double EXACT = 1e-14;

    private static final double HORIZON = 1e9;

    private static void near(double actual, double expected) {
        assertThat(actual / expected).isCloseTo(1, within(EXACT));
    }

    /** Two states, 3e-7 and 5e-7 1/s to and fro, leaks 1e-7 and 2e-7, in 4 and 1, by Cramer's rule. */
    @Test
    void twoStatesThatTurnIntoOneAnother() {
        double[] transfer = {0, 5e-7, 3e-7, 0};
        double[] leak = {1e-7, 2e-7};
        double[] stock = {4, 1};
        double staying = LossElimination.solve(transfer, leak, stock, HORIZON);
        // (4e-7) M0 - (5e-7) M1 = 4, -(3e-7) M0 + (7e-7) M1 = 1: determinant 13e-14
        near(stock[0], (4 * 7e-7 + 5e-7) / 13e-14);
        near(stock[1], (4e-7 + 3e-7 * 4) / 13e-14);
        assertThat(staying).isZero();
    }

    @Test
    void aStateThatNeverLeavesIsFilledForTheHorizon() {
        double[] stock = {4, 1};
        double staying = LossElimination.solve(new double[4], new double[] {0, 2e-7}, stock, HORIZON);
        near(stock[0], 4 * HORIZON);
        near(stock[1], 1 / 2e-7);
        near(staying, 4);
    }

    /** Whichever of the two stands first: one turns into the other, which never leaves. */
    @Test
    void whatTurnsIntoAStateThatNeverLeavesIsItselfInBalance() {
        for (int last = 0; last < 2; last++) {
            int first = 1 - last;
            double[] transfer = new double[4];
            transfer[last * 2 + first] = 5e-7;
            double[] stock = new double[2];
            stock[first] = 3;
            stock[last] = 1;
            double staying = LossElimination.solve(transfer, new double[2], stock, HORIZON);
            near(stock[first], 3 / 5e-7);
            near(stock[last], 4 * HORIZON);
            near(staying, 4);
        }
    }
}
