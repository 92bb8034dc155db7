// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.validation.Reference;

class PartitioningTest {
    private static final double KG_PER_MG_AND_LITERS = 1e-3;
    private static final double DAY = 86400;
    /** PRINTED: half of the last of four decimals. */
    private static final double PRINTED = 5.0001e-5;
    /** ROUNDING: a dozen operations. */
    private static final double EXACT = 1e-14;

    /** f_d = 1/(1 + Kd SPM 1e-6), Kd in L/kg, at 1, 10, 50, 100, 500, 700, 1000 mg/L; evaluated outside this program. */
    @ParameterizedTest
    @Reference(key = "thomann1987", locator = "dissolved fraction, from memory")
    @CsvSource({
        "3.8, 0.9937, 0.9406, 0.7602, 0.6131, 0.2407, 0.1846, 0.1368",
        "4.9, 0.9264, 0.5573, 0.2011, 0.1118, 0.0246, 0.0177, 0.0124",
        "5.0, 0.9091, 0.5000, 0.1667, 0.0909, 0.0196, 0.0141, 0.0099",
        "5.3, 0.8337, 0.3339, 0.0911, 0.0477, 0.0099, 0.0071, 0.0050",
        "6.0, 0.5000, 0.0909, 0.0196, 0.0099, 0.0020, 0.0014, 0.0010"
    })
    void dissolvedFraction(
            double log10,
            double at1,
            double at10,
            double at50,
            double at100,
            double at500,
            double at700,
            double at1000) {
        double[] sediment = {1, 10, 50, 100, 500, 700, 1000};
        double[] printed = {at1, at10, at50, at100, at500, at700, at1000};
        for (int i = 0; i < printed.length; i++) {
            double capacity = Partitioning.coefficient(log10, 0, 0, 1) * sediment[i] * KG_PER_MG_AND_LITERS;
            Partitioning parts = Partitioning.of(0, capacity);
            assertThat(parts.filtered()).as("%s mg/L", sediment[i]).isCloseTo(printed[i], within(PRINTED));
            assertThat(parts.filtered() + parts.sorbed(capacity)).isCloseTo(1, within(EXACT));
        }
    }

    /**
     * Kd 1e5 L/kg, 100 mg/L, w 1e-4 m/s, H 1.5 m, 0.1 /d on the dissolved part, U 0.4 m/s: k = 5.24545 /d, C/C0 at 20 km =
     * 0.0480476; all particulate and settling alone 0.0356740. Evaluated outside this program.
     */
    @Test
    @Reference(key = "thomann1987", locator = "combined loss, from memory")
    void combinedLossOver20Kilometers() {
        double capacity = Partitioning.coefficient(5, 0, 0, 1) * 0.1;
        Partitioning parts = Partitioning.of(0, capacity);
        double settling = 1e-4 / 1.5;
        double rate = parts.sorbed(capacity) * settling + parts.free() * 0.1 / DAY;
        double printedRate = 5e-6;
        double printedShare = 5e-8;
        assertThat(rate * DAY).isCloseTo(5.24545, within(printedRate));
        assertThat(left(rate, 20000 / 0.4)).isCloseTo(0.0480476, within(printedShare));
        assertThat(left(settling, 20000 / 0.4)).isCloseTo(0.0356740, within(printedShare));
    }

    /** Plug flow, C/C0 = exp(-k x/u) with u 0.3 m/s, k 1 /d, x 10 km: 0.679905 (the row with D = 0). */
    @Test
    @Reference(key = "fischer1979", locator = "steady first-order loss, D = 0")
    void plugFlowWithLoss() {
        double printed = 5e-7;
        assertThat(left(1 / DAY, 10000 / 0.3)).isCloseTo(0.679905, within(printed));
    }

    @Test
    void dissolvedOrganicMatterCountsAsFiltered() {
        // K_doc [DOC] = 3, capacity 4: free 1/8, filtered 4/8, sorbed 4/8
        Partitioning parts = Partitioning.of(3, 4);
        assertThat(parts.free()).isCloseTo(0.125, within(EXACT));
        assertThat(parts.filtered()).isCloseTo(0.5, within(EXACT));
        assertThat(parts.sorbed(4)).isCloseTo(0.5, within(EXACT));
        assertThat(parts.sorbed(1)).as("a class with a quarter of the capacity").isCloseTo(0.125, within(EXACT));
    }

    @Test
    void nothingToSorbToLeavesEverythingFiltered() {
        Partitioning parts = Partitioning.of(0, 0);
        assertThat(parts.filtered()).isEqualTo(1);
        assertThat(parts.sorbed(0)).isZero();
    }

    @Test
    void theCoefficientFallsWithSediment() {
        // 10^(5 - 0.5 log10(100)) L/kg = 1e4 L/kg = 10 m3/kg; no sediment or b = 0 leaves 1e5 L/kg
        assertThat(Partitioning.coefficient(5, 0.5, 1, 0.01) / 10).isCloseTo(1, within(EXACT));
        assertThat(Partitioning.coefficient(5, 0.5, 0, 0.01) / 100).isCloseTo(1, within(EXACT));
        assertThat(Partitioning.coefficient(5, 0, 7, 0.01) / 100).isCloseTo(1, within(EXACT));
    }

    private static double left(double rate, double time) {
        double[] out = new double[1];
        Propagator propagator = new Propagator(1, 0);
        propagator.prepare(new double[] {-rate}, 0, time);
        propagator.apply(new double[] {1}, new double[] {0}, out, new double[1], 0, 1);
        return out[0];
    }
}
