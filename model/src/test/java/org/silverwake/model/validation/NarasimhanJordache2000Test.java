// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.model.release.Noted;
import org.silverwake.model.release.Reconciliation;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;

/**
 * Textbook example of weighted least-squares data reconciliation: a heat exchanger with a bypass, six flows of equal variance,
 * Narasimhan &amp; Jordache (2000), chapter 1. Measured 101.91, 64.45, 34.65, 64.20, 36.44, 98.88; reconciled 100.22, 64.50,
 * 35.72, 64.50, 35.72, 100.22. Both rows are from memory: the print was not seen. They agree with a solution by hand: streams
 * 2 = 4, 3 = 5, 1 = 6 = 2 + 3, so 4 x2 + 2 x3 = 101.91 + 98.88 + 64.45 + 64.20 = 329.44 and 2 x2 + 4 x3 = 101.91 + 98.88 +
 * 34.65 + 36.44 = 271.88; the sum is 601.32/6 = 100.22, x2 = (329.44 - 200.44)/2 = 64.50, x3 = (271.88 - 200.44)/2 = 35.72.
 */
@Reference(key = "narasimhan2000", locator = "chapter 1, heat exchanger with bypass, all flows measured (from memory)")
class NarasimhanJordache2000Test {
    /** PRINTED: half of the last of two decimals; the hand solution gives the same to rounding. */
    private static final double PRINTED = 0.005;

    private static Stream flow(String name, double measured) {
        return new Stream(name, Optional.of(Noted.of(measured, 1)));
    }

    @Test
    void heatExchangerWithBypass() {
        Reconciliation found = Reconciliation.of(
                List.of(
                        flow("1", 101.91),
                        flow("2", 64.45),
                        flow("3", 34.65),
                        flow("4", 64.20),
                        flow("5", 36.44),
                        flow("6", 98.88)),
                List.of(
                        Node.of("splitter", List.of("1"), List.of("2", "3"), 0),
                        Node.of("exchanger", List.of("2"), List.of("4"), 0),
                        Node.of("valve", List.of("3"), List.of("5"), 0),
                        Node.of("mixer", List.of("4", "5"), List.of("6"), 0)));
        List<Double> printed = List.of(100.22, 64.50, 35.72, 64.50, 35.72, 100.22);
        for (int i = 0; i < printed.size(); i++) {
            double ours = found.value(Integer.toString(i + 1)).value();
            assertThat(ours).isCloseTo(printed.get(i), within(PRINTED));
        }
        assertThat(found.degreesOfFreedom()).isEqualTo(4);
    }
}
