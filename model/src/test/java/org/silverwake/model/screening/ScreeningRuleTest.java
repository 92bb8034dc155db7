// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.input.Settings;
import org.silverwake.model.screening.ScreeningRule.Band;
import org.silverwake.model.screening.ScreeningRule.Verdict;

/** The rule as the design states it: above if r_lo > F, below if r_hi < 1/F. F = 4 and a value of 1 keep limits exact. */
class ScreeningRuleTest {
    private static final ScreeningRule RULE = new ScreeningRule(4, 8, 3);

    private static Guideline guideline(Medium medium) {
        Fraction fraction = medium.isWater() ? Fraction.WHOLE : Fraction.NONE;
        Averaging averaging = medium == Medium.FISH ? Averaging.FISH : Averaging.YEAR;
        return new Guideline(
                "G",
                new Observable(medium, Substance.TOTAL_MERCURY, fraction, medium.basis(), averaging),
                1,
                "1e6 mg/kg",
                "",
                "",
                new Guideline.Source("", "", "", ""),
                Guideline.Status.CURRENT,
                Guideline.Checked.SEEN,
                "");
    }

    @ParameterizedTest
    @CsvSource({
        "4.0000001, 5, ABOVE",
        "4, 5, MAY_BE_ABOVE",
        "0.3, 9, MAY_BE_ABOVE",
        "0, 9, MAY_BE_ABOVE",
        "0.1, 0.25, MAY_BE_ABOVE",
        "0.1, 0.2499999, BELOW_BY_THIS_ESTIMATE",
        "0, 0.2, BELOW_BY_THIS_ESTIMATE"
    })
    void answersAtTheirLimits(double low, double high, Answer answer) {
        Verdict verdict = RULE.judge(new Band(low, high, 0), guideline(Medium.SURFACE_WATER));
        assertThat(verdict.answer()).isEqualTo(answer);
        assertThat(verdict.reason()).isEmpty();
    }

    @Test
    void fishHasItsOwnFactor() {
        assertThat(RULE.judge(new Band(5, 6, 0), guideline(Medium.FISH)).answer())
                .isEqualTo(Answer.MAY_BE_ABOVE);
        assertThat(RULE.judge(new Band(9, 9, 0), guideline(Medium.FISH)).answer())
                .isEqualTo(Answer.ABOVE);
    }

    @ParameterizedTest
    @CsvSource({"1, 2, false", "1.0000001, 2, true", "0.9, 100, false"})
    void leansAboveWhereTheLowBoundExceeds(double low, double high, boolean leans) {
        assertThat(RULE.judge(new Band(low, high, 0), guideline(Medium.SURFACE_WATER))
                        .leansAbove())
                .isEqualTo(leans);
    }

    @ParameterizedTest
    @CsvSource({"1, 3, false", "1, 3.0000001, true", "0, 0.1, true", "2, 2, false"})
    void hatchedWhereTheBoundsDiffer(double low, double high, boolean hatched) {
        assertThat(RULE.judge(new Band(low, high, 0), guideline(Medium.SURFACE_WATER))
                        .hatched())
                .isEqualTo(hatched);
    }

    @ParameterizedTest
    @CsvSource({"1, false", "1.0000001, true"})
    void aboveFromBackgroundAlone(double background, boolean above) {
        assertThat(RULE.judge(new Band(2, 2, background), guideline(Medium.SURFACE_WATER))
                        .aboveFromBackground())
                .isEqualTo(above);
    }

    /** Stated factors of the design: 5 for water and bed, 10 for fish, 3 for hatching. */
    @Test
    void defaultsOfARun() {
        ScreeningRule rule = ScreeningRule.of(Settings.of(Map.of()));
        assertThat(rule).isEqualTo(new ScreeningRule(5, 10, 3));
        assertThat(rule.factor(Medium.BED_SEDIMENT)).isEqualTo(rule.factorWaterBed());
    }

    @Test
    void impossibleBandsAndFactorsAreRefused() {
        assertThatThrownBy(() -> new Band(2, 1, 0)).hasMessageContaining("low to high");
        assertThatThrownBy(() -> new Band(0, Double.NaN, 0)).hasMessageContaining("finite");
        assertThatThrownBy(() -> new Band(-1, 1, 0)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> new ScreeningRule(0.5, 10, 3)).hasMessageContaining("at least 1");
    }

    /** No answer speaks of safety. */
    @Test
    void answersDoNotReassure() {
        for (Answer answer : Answer.values()) {
            for (String word : List.of("safe", "ok", "pass", "clean", "good")) {
                assertThat(answer.words()).doesNotContain(word);
            }
        }
    }
}
