// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.silverwake.model.validation.Reference;

class CompensatedSumTest {
    /** 1 + 1e100 + 1 - 1e100 = 2, the textbook case that plain and Kahan's sums get wrong (0). */
    @Test
    @Reference(key = "neumaier1974", locator = "improved Kahan-Babuska sum, from memory")
    void largeTermsDoNotSwallowSmallOnes() {
        CompensatedSum sum = new CompensatedSum();
        for (double term : new double[] {1, 1e100, 1, -1e100}) {
            sum.add(term);
        }
        assertThat(sum.value()).isEqualTo(2);
    }

    @Test
    void agreesWithExactDecimalArithmetic() {
        Random random = new Random(20260101);
        CompensatedSum sum = new CompensatedSum();
        BigDecimal exact = BigDecimal.ZERO;
        double plain = 0;
        for (int i = 0; i < 20000; i++) {
            double term = (random.nextDouble() - 0.3) * StrictMath.pow(10, random.nextInt(12) - 6);
            sum.add(term);
            plain += term;
            exact = exact.add(new BigDecimal(term));
        }
        double ulp = Math.ulp(exact.doubleValue());
        assertThat(Math.abs(sum.value() - exact.doubleValue())).isLessThanOrEqualTo(ulp);
        assertThat(Math.abs(plain - exact.doubleValue()))
                .as("a plain sum must err here, else this test says nothing")
                .isGreaterThan(ulp);
    }

    @Test
    void nothingAddedIsZero() {
        assertThat(new CompensatedSum().value()).isZero();
    }
}
