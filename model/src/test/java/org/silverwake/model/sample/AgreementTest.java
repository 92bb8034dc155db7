// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.sample.Reported.Kind;

class AgreementTest {
    /** ROUNDING: one division. */
    private static final double ROUNDING = 1e-12;

    /** The model says 2 to 8. */
    @ParameterizedTest
    @CsvSource({
        "DETECTED,5,1,inside the model's range",
        "DETECTED,2,1,inside the model's range",
        "DETECTED,8,1,inside the model's range",
        "DETECTED,16,2,sample above the model's range",
        "DETECTED,0.5,0.25,sample below the model's range",
        "ESTIMATED,0.5,0.25,sample below the model's range",
        "BELOW,50,1,consistent with the limit",
        "BELOW,2,1,consistent with the limit",
        "BELOW,5,1,consistent with the limit",
        "BELOW,1,0.5,model above the limit",
        "ABOVE,5,1,consistent with the limit",
        "ABOVE,1,1,consistent with the limit",
        "ABOVE,16,2,model below the limit"
    })
    void ratioIsToTheNearestBound(Kind kind, double value, double ratio, String words) {
        Agreement agreement = Agreement.of(new Reported(kind, value), new ModelRange(2, 8));
        assertThat(agreement.ratio()).isCloseTo(ratio, within(ROUNDING));
        assertThat(agreement.words()).isEqualTo(words);
        assertThat(agreement.isInside()).isEqualTo(ratio == 1);
    }

    @Test
    void factorsCountEitherWay() {
        ModelRange model = new ModelRange(2, 8);
        assertThat(Agreement.of(new Reported(Kind.DETECTED, 1), model).isWithin(2))
                .isTrue();
        assertThat(Agreement.of(new Reported(Kind.DETECTED, 0.99), model).isWithin(2))
                .isFalse();
        assertThat(Agreement.of(new Reported(Kind.DETECTED, 80), model).isWithin(10))
                .isTrue();
        assertThat(Agreement.of(new Reported(Kind.DETECTED, 81), model).isWithin(10))
                .isFalse();
        Agreement nothing = Agreement.of(new Reported(Kind.DETECTED, 1), new ModelRange(0, 0));
        assertThat(nothing.isWithin(10)).isFalse();
        assertThat(nothing.ratio()).isInfinite();
        assertThat(Agreement.of(new Reported(Kind.BELOW, 1), new ModelRange(0, 0))
                        .isInside())
                .isTrue();
    }

    @Test
    void summaryCountsLimitsApart() {
        ModelRange model = new ModelRange(2, 8);
        AgreementSummary summary = AgreementSummary.of(List.of(
                Agreement.of(new Reported(Kind.DETECTED, 5), model),
                Agreement.of(new Reported(Kind.DETECTED, 12), model),
                Agreement.of(new Reported(Kind.ESTIMATED, 0.5), model),
                Agreement.of(new Reported(Kind.DETECTED, 900), model),
                Agreement.of(new Reported(Kind.BELOW, 3), model),
                Agreement.of(new Reported(Kind.BELOW, 1), model)));
        assertThat(summary).isEqualTo(new AgreementSummary(4, 1, 2, 3, 3, 2, 1, 2, 1));
    }

    /** A limit above the value compared with tells nothing: neither above nor not above. */
    @ParameterizedTest
    @CsvSource({
        "DETECTED,27,ABOVE",
        "DETECTED,26,NOT_ABOVE",
        "ESTIMATED,27,ABOVE",
        "BELOW,50,CANNOT_TELL",
        "BELOW,26,NOT_ABOVE",
        "BELOW,2,NOT_ABOVE",
        "ABOVE,20,CANNOT_TELL",
        "ABOVE,26,ABOVE"
    })
    void limitAboveTheGuidelineCannotTell(Kind kind, double value, SampleAnswer answer) {
        assertThat(new Reported(kind, value).against(26)).isEqualTo(answer);
    }

    /** ../shared/reference/cases.md, "Which substitution": all three means, and whether the verdict hangs on the choice. */
    @Test
    void meansUnderThreeSubstitutions() {
        Substitution mean = Substitution.of(List.of(new Reported(Kind.DETECTED, 31), new Reported(Kind.BELOW, 50)));
        assertThat(mean.zero()).isCloseTo(15.5, within(ROUNDING));
        assertThat(mean.half()).isCloseTo(28, within(ROUNDING));
        assertThat(mean.limit()).isCloseTo(40.5, within(ROUNDING));
        assertThat(mean.dependsOnChoice(26)).isTrue();
        assertThat(mean.dependsOnChoice(30)).isTrue();
        assertThat(mean.dependsOnChoice(15)).isFalse();
        assertThat(mean.dependsOnChoice(41)).isFalse();
        assertThatThrownBy(() -> Substitution.of(List.of(new Reported(Kind.ABOVE, 1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nothingIsNoReport() {
        assertThatThrownBy(() -> new Reported(Kind.DETECTED, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new ModelRange(3, 2)).hasMessageContaining("not allowed");
    }
}
