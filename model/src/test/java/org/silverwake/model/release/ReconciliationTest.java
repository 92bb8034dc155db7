// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;
import org.silverwake.model.release.Reconciliation.Value;

class ReconciliationTest {
    /** ROUNDING: a few hundred operations on numbers of order 100. */
    private static final double ROUNDING = 1e-11;

    private static Stream measured(String name, double value, double sd) {
        return new Stream(name, Optional.of(Noted.of(value, sd)));
    }

    private static Stream open(String name) {
        return new Stream(name, Optional.empty());
    }

    private static double value(Reconciliation found, String name) {
        return found.value(name).value();
    }

    /**
     * By hand: 10 +- 1 in, 6 +- 1 and 3 +- 2 out. The gap of 1 is shared in proportion to variance, 1 : 1 : 4 of 6, so
     * 10 - 1/6, 6 + 1/6, 3 + 4/6. Objective 1^2/6. After it the sd of the inflow is sqrt(1 - 1/6). All three tests are
     * 1/sqrt(6) in size.
     */
    @Test
    void gapIsSharedByVariance() {
        Reconciliation found = Reconciliation.of(
                List.of(measured("in", 10, 1), measured("a", 6, 1), measured("b", 3, 2)),
                List.of(Node.of("split", List.of("in"), List.of("a", "b"), 0)));
        assertThat(value(found, "in")).isCloseTo(10 - 1.0 / 6, within(ROUNDING));
        assertThat(value(found, "a")).isCloseTo(6 + 1.0 / 6, within(ROUNDING));
        assertThat(value(found, "b")).isCloseTo(3 + 4.0 / 6, within(ROUNDING));
        assertThat(found.value("in").sd()).isCloseTo(StrictMath.sqrt(5.0 / 6), within(ROUNDING));
        assertThat(found.objective()).isCloseTo(1.0 / 6, within(ROUNDING));
        assertThat(found.degreesOfFreedom()).isEqualTo(1);
        for (Value each : found.values()) {
            assertThat(Math.abs(each.test().orElseThrow())).isCloseTo(1 / StrictMath.sqrt(6), within(ROUNDING));
        }
        assertThat(found.improbable()).isEmpty();
    }

    /** With one degree of freedom p = erfc(sqrt(objective/2)); objective 4 gives 0.0455002638963584 (two-sided 2 sigma, tables). */
    @Test
    void probabilityOfTheMisfit() {
        Reconciliation found = Reconciliation.of(
                List.of(measured("in", 4, 1), measured("out", 0, StrictMath.sqrt(3))),
                List.of(Node.of("pipe", List.of("in"), List.of("out"), 0)));
        assertThat(found.objective()).isCloseTo(4, within(ROUNDING));
        assertThat(found.pValue()).isCloseTo(0.0455002638963584, within(1e-13)); // ROUNDING
    }

    /** A note four times too large among five that agree is the worst of the improbable ones. */
    @Test
    void grossErrorIsNamed() {
        Reconciliation found = Reconciliation.of(
                List.of(
                        measured("1", 100, 1),
                        measured("2", 101, 1),
                        measured("3", 400, 1),
                        measured("4", 99, 1),
                        measured("5", 100, 1)),
                List.of(
                        Node.of("a", List.of("1"), List.of("2"), 0),
                        Node.of("b", List.of("2"), List.of("3"), 0),
                        Node.of("c", List.of("3"), List.of("4"), 0),
                        Node.of("d", List.of("4"), List.of("5"), 0)));
        assertThat(found.improbable().get(0).stream().name()).isEqualTo("3");
        assertThat(found.pValue()).isLessThan(1e-6);
    }

    /** What no measurement reaches has no value; what is reached has one, beside it. */
    @Test
    void unobservableStreamIsNotInvented() {
        Reconciliation found = Reconciliation.of(
                List.of(measured("in", 10, 1), open("x"), open("y"), open("z"), measured("w", 4, 1)),
                List.of(
                        Node.of("first", List.of("in"), List.of("x", "y"), 0),
                        Node.of("second", List.of("w"), List.of("z"), 1)));
        assertThat(found.notDetermined()).containsExactly("x", "y");
        assertThat(found.isDetermined("x")).isFalse();
        assertThat(found.isDetermined("y")).isFalse();
        assertThat(value(found, "z")).isCloseTo(3, within(ROUNDING));
        assertThat(found.value("z").sd()).isCloseTo(1, within(ROUNDING));
        assertThat(found.degreesOfFreedom()).isZero();
        assertThatThrownBy(() -> found.value("x"))
                .hasMessageContaining("x is not determined by the notes")
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** A condition with coefficients: a is a third of b, and both together 12 +- 0: 3 and 9. */
    @Test
    void conditionWithCoefficients() {
        Reconciliation found = Reconciliation.of(
                List.of(measured("sum", 12, 0), open("a"), open("b")),
                List.of(
                        Node.of("node", List.of("sum"), List.of("a", "b"), 0),
                        new Node("third", Map.of("a", 3.0, "b", -1.0), 0)));
        assertThat(value(found, "a")).isCloseTo(3, within(ROUNDING));
        assertThat(value(found, "b")).isCloseTo(9, within(ROUNDING));
    }

    /** An exact stream is not moved; two exact ones that part are refused. */
    @Test
    void exactStreams() {
        List<Node> pipe = List.of(Node.of("pipe", List.of("in"), List.of("out"), 0));
        Reconciliation found = Reconciliation.of(List.of(measured("in", 5, 0), measured("out", 7, 1)), pipe);
        assertThat(value(found, "out")).isCloseTo(5, within(ROUNDING));
        assertThat(found.value("in").test()).isEmpty();
        assertThatThrownBy(() -> Reconciliation.of(List.of(measured("in", 5, 0), measured("out", 7, 0)), pipe))
                .hasMessageContaining("do not balance");
    }

    /** One node twice over adds no knowledge. */
    @Test
    void repeatedNodeCountsOnce() {
        Node pipe = Node.of("pipe", List.of("in"), List.of("out"), 0);
        Reconciliation found =
                Reconciliation.of(List.of(measured("in", 5, 1), measured("out", 7, 1)), List.of(pipe, pipe));
        assertThat(value(found, "out")).isCloseTo(6, within(ROUNDING));
        assertThat(found.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void unknownNamesAndMissingUncertaintyAreTold() {
        assertThatThrownBy(() -> Reconciliation.of(
                        List.of(measured("in", 5, 1)),
                        List.of(Node.of("pipe", List.of("in"), List.of("elsewhere"), 0))))
                .hasMessageContaining("pipe names the stream elsewhere");
        assertThatThrownBy(() -> Reconciliation.of(
                        List.of(new Stream("in", Optional.of(Noted.of(5))), measured("out", 7, 1)),
                        List.of(Node.of("pipe", List.of("in"), List.of("out"), 0))))
                .hasMessageContaining("in was measured and states no standard deviation");
    }
}
