// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.water.WaterProperties;

/** Water density by Kell (1975) and viscosity: table values (from memory). */
@Reference(key = "kell1975", locator = "density table, from memory")
class Kell1975Test {
    /** PRINTED: half of the last of three decimals. */
    private static final double PRINTED = 5e-4;

    @ParameterizedTest
    @CsvSource({"0, 999.840", "4, 999.972", "10, 999.700", "20, 998.204", "25, 997.045", "30, 995.647", "35, 994.032"})
    void density(double celsius, double printed) {
        assertThat(WaterProperties.at(celsius).density()).isCloseTo(printed, within(PRINTED));
    }

    /** mu = 2.414e-5 x 10^(247.8/(T - 140)), printed to four or five digits, and nu = mu/rho [1e-6 m2/s] to three decimals. */
    @ParameterizedTest
    @CsvSource({"10, 1.2995e-3, 1.300", "20, 1.0017e-3, 1.004", "25, 8.904e-4, 0.893", "30, 7.972e-4, 0.801"})
    void viscosityFormula(double celsius, double dynamic, double kinematic) {
        WaterProperties water = WaterProperties.at(celsius);
        assertThat(water.kinematicViscosity() * 1e6).isCloseTo(kinematic, within(PRINTED));
        double half = 0.5e-7;
        assertThat(water.kinematicViscosity() * water.density()).isCloseTo(dynamic, within(half));
    }

    /** Handbook viscosities (from memory), 1.3059, 1.0016, 0.8900, 0.7972 mPa s: MEASUREMENT, the formula's own error is 0.5 %. */
    @ParameterizedTest
    @CsvSource({"10, 1.3059e-3", "20, 1.0016e-3", "25, 0.8900e-3", "30, 0.7972e-3"})
    void viscosityAgainstHandbookValues(double celsius, double dynamic) {
        WaterProperties water = WaterProperties.at(celsius);
        double percent = 0.5;
        assertThat(water.kinematicViscosity() * water.density()).isCloseTo(dynamic, withinPercentage(percent));
    }

    @Test
    void waterIsDensestNear4Degrees() {
        double densest = WaterProperties.at(4).density();
        for (double t = 0; t <= 60; t += 0.5) {
            assertThat(WaterProperties.at(t).density()).as("%s degC", t).isLessThanOrEqualTo(densest);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 60.01, 293.15, Double.NaN})
    void temperaturesOutsideAreRefused(double celsius) {
        assertThatThrownBy(() -> WaterProperties.at(celsius))
                .hasMessageContaining("degC is not allowed")
                .hasMessageContaining("give 0 to 60 degC");
    }
}
