// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {
    /** ROUNDING: three products of doubles, in percent. */
    private static final double ROUNDING = 1e-13;

    /**
     * Expected values by hand from the definitions: SI prefixes; litre = 1e-3 m3; tonne = 1000 kg; year = 365.25 d;
     * international foot = 0.3048 m and mile = 1609.344 m exactly (international yard and pound agreement, 1959).
     */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 3 ft, 0.9144",
        "LENGTH, 5 um, 5e-6",
        "LENGTH, 5 \u00b5m, 5e-6",
        "LENGTH, 5 \u03bcm, 5e-6",
        "LENGTH, 2km, 2000",
        "AREA, 1 mi2, 2589988.110336",
        "AREA, 3 ha, 30000",
        "AREA, 1 km\u00b2, 1e6",
        "DISCHARGE, 1000 cfs, 28.316846592",
        "DISCHARGE, 1000 ft3/s, 28.316846592",
        "DISCHARGE, 2 m\u00b3/s, 2",
        "DISCHARGE, 2 m^3 / s, 2",
        "DISCHARGE, 500 l/s, 0.5",
        "DISCHARGE, 86.4 ML/d, 1",
        "SPECIFIC_DISCHARGE, 7 L/s/km2, 7e-9",
        "SPECIFIC_DISCHARGE, 365.25 mm/yr, 1.1574074074074074e-8",
        "LATERAL_DISCHARGE, 3 L/s/km, 3e-6",
        "VELOCITY, 10 ft/s, 3.048",
        "VELOCITY, 2 mm/yr, 6.33761756280579e-11",
        "MASS_FLOW, 12 kg/yr, 3.8025705376834735e-07",
        "MASS_FLOW, 12 kg/a, 3.8025705376834735e-07",
        "MASS_FLOW, 86.4 t/d, 1",
        "CONCENTRATION, 18 mg/L, 0.018",
        "CONCENTRATION, 18 mg/l, 0.018",
        "CONCENTRATION, 6 \u00b5g/L, 6e-6",
        "CONCENTRATION, 6 \u03bcg/L, 6e-6",
        "CONCENTRATION, 6 ug/L, 6e-6",
        "CONCENTRATION, -1.5e-1 g/m3, -1.5e-4",
        "RATE, 1 1/d, 1.1574074074074073e-5",
        "PER_LENGTH, 5 1/km, 0.005",
        "DENSITY, 2.65 g/cm3, 2650",
        "PRESSURE, 0.1 Pa, 0.1",
        "SLOPE, 0.5 %, 0.005",
        "SLOPE, 2 m/km, 0.002",
        "DIMENSIONLESS, 55 %, 0.55",
        "DIMENSIONLESS, 0.55, 0.55",
        "ANGLE, \u221220.1, -20.1",
        "ANGLE, -20.1 deg, -20.1",
    })
    void textToSi(Dimension dimension, String text, double si) {
        assertThat(Quantity.parse(text, dimension).si()).isCloseTo(si, withinPercentage(ROUNDING));
    }

    @Test
    void nanogramPerLiterIsOneTrillionthOfWater() {
        // 1 ng = 1e-12 kg, 1 L = 1e-3 m3
        assertThat(Quantity.parse("1 ng/L", Dimension.CONCENTRATION).si()).isCloseTo(1e-9, withinPercentage(ROUNDING));
    }

    @Test
    void milligramPerKilogramIsAMillionth() {
        assertThat(Quantity.parse("1 mg/kg", Dimension.MASS_CONTENT).si()).isCloseTo(1e-6, withinPercentage(ROUNDING));
    }

    @Test
    void literPerKilogramIsAThousandth() {
        assertThat(Quantity.parse("1 L/kg", Dimension.PARTITION_COEFFICIENT).si())
                .isCloseTo(1e-3, withinPercentage(ROUNDING));
    }

    @Test
    void logarithmIsABareNumber() {
        Dimension log = Dimension.LOG10_PARTITION_COEFFICIENT;
        assertThat(Quantity.parse("5.3", log).si()).isCloseTo(5.3, within(ROUNDING));
        assertThatThrownBy(() -> Quantity.parse("5.3 L/kg", log))
                .hasMessageContaining("L/kg is a unit of partition coefficient, not of base-10 logarithm of L/kg");
    }

    @Test
    void celsiusBecomesKelvin() {
        // 0 degC = 273.15 K, 68 degF = 20 degC by definition
        assertThat(Quantity.parse("21 degC", Dimension.TEMPERATURE).si()).isCloseTo(294.15, withinPercentage(ROUNDING));
        assertThat(Quantity.parse("21 \u00b0C", Dimension.TEMPERATURE).si())
                .isCloseTo(294.15, withinPercentage(ROUNDING));
        assertThat(Quantity.parse("68 degF", Dimension.TEMPERATURE).in("degC")).isCloseTo(20, withinPercentage(1e-11));
    }

    @Test
    void yearIsSaidOnce() {
        assertThat(Quantity.parse("1 yr", Dimension.TIME).si())
                .isCloseTo(Quantity.SECONDS_PER_YEAR, withinPercentage(ROUNDING));
        assertThat(Quantity.SECONDS_PER_YEAR).isCloseTo(31557600, withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyUnitGoesThereAndBack(Dimension dimension) {
        for (Unit unit : dimension.units()) {
            Quantity quantity = Quantity.parse("3.5 " + unit.name(), dimension);
            assertThat(quantity.in(unit.name())).isCloseTo(3.5, withinPercentage(1e-10));
        }
        assertThat(dimension.units().get(0).toSi()).isCloseTo(1, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CONCENTRATION | 120         | 120 has no unit; give a concentration in one of kg/m3, g/L",
                "CONCENTRATION | 120 mg/kg   | mg/kg is a unit of content per dry mass, not of concentration; give one of",
                "LENGTH        | 10 deg      | deg is a unit of angle, not of length",
                "MASS_FLOW     | 12 kg       | kg is a unit of mass, not of mass per time",
                "CONCENTRATION | 3 ppm       | ppm is not known as a unit of concentration",
                "CONCENTRATION | 3 MG/L      | MG/L is not known as a unit",
                "CONCENTRATION | 0,5 mg/L    | \"0,5\" has a decimal comma; give decimals with a point, 0.5",
                "CONCENTRATION | 1,234 mg/L  | \"1,234\" could be 1234 or 1.234",
                "CONCENTRATION | 1.234,5 g/L | could be 1234.5 or 1.2345",
                "CONCENTRATION | 1 000 mg/L  | has blanks inside the number",
                "CONCENTRATION | much        | is not a concentration; give a number and one of",
                "CONCENTRATION | 1e999 mg/L  | too large",
                "CONCENTRATION | NaN mg/L    | is not a concentration",
                "ANGLE         | much        | \"much\" is not an angle; give",
                "AREA          | 3           | has no unit; give an area in one of",
                "DIMENSIONLESS | 1.2.3       | is not a number",
            })
    void refusals(Dimension dimension, String text, String message) {
        assertThatThrownBy(() -> Quantity.parse(text, dimension))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void decimalCommaWhereItIsTheRule() {
        assertThat(Quantity.parse("0,0002 mg/L", Dimension.CONCENTRATION, DecimalMark.COMMA)
                        .si())
                .isCloseTo(2e-7, withinPercentage(ROUNDING));
        assertThatThrownBy(() -> DecimalMark.COMMA.parse("1.234,5")).hasMessageContaining("1234.5 or 1.2345");
        assertThatThrownBy(() -> DecimalMark.COMMA.parse("1.234")).hasMessageContaining("1234 or 1,234");
        assertThat(DecimalMark.COMMA.parse("0.125")).isCloseTo(0.125, within(ROUNDING));
    }
}
