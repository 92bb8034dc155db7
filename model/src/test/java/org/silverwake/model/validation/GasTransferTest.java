// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.Reaeration;
import org.silverwake.model.mercury.TwoFilm;

/**
 * Exchange of Hg(0) with the air. Henry's law: Sander (2023), the compilation's 1.3e-3 mol/m3/Pa and 2600 K, against Sanemasa's
 * (1975) log10 k = -1078/T + 6.250, read as atm per mole fraction, and exp(-2404.3/T + 6.92) (from memory). Reaeration: the formulas
 * of Chin (2006) evaluated outside this program, four to five digits.
 */
@Reference(key = "sander2023", locator = "Hg, Hscp")
@Reference(key = "chin2006", locator = "reaeration formulas, metric")
class GasTransferTest {
    /** PRINTED: three digits. */
    private static final double PRINTED = 0.0005;
    /** MEASUREMENT: the three published relations part by up to 5 %. */
    private static final double RELATIONS_PERCENT = 5;
    /** PRINTED: half of the fifth digit of the smallest value. */
    private static final double FIVE_DIGITS = 0.00005;

    @ParameterizedTest
    @CsvSource({
        "10, 0.206, 0.215, 0.208",
        "15, 0.237, 0.246, 0.241",
        "20, 0.272, 0.281, 0.278",
        "25, 0.310, 0.318, 0.319",
        "30, 0.352, 0.360, 0.364"
    })
    void airOverWater(double celsius, double sander, double sanemasa, double other) {
        double ours = ElementalMercury.airOverWater(celsius);
        assertThat(ours).isCloseTo(sander, within(PRINTED));
        assertThat(ours).isCloseTo(sanemasa, withinPercentage(RELATIONS_PERCENT));
        assertThat(ours).isCloseTo(other, withinPercentage(RELATIONS_PERCENT));
    }

    /** Kuss, Holzmann &amp; Ludwig (2009): activation energy seen in print, factor from memory. */
    @ParameterizedTest
    @CsvSource({"10, 1.30e-9", "15, 1.48e-9", "20, 1.67e-9", "25, 1.87e-9", "30, 2.10e-9"})
    @Reference(key = "kuss2009", locator = "fresh water")
    void diffusivity(double celsius, double expected) {
        assertThat(ElementalMercury.diffusivity(celsius)).isCloseTo(expected, within(0.5e-11));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1.0, 2.7789, 2.6150, 3.3437", "0.3, 0.5, 6.0883, 4.9928, 8.5603"})
    void reaeration(double velocity, double depth, double oconnorDobbins, double churchill, double owens) {
        assertThat(Reaeration.OCONNOR_DOBBINS.perDay(velocity, depth)).isCloseTo(oconnorDobbins, within(FIVE_DIGITS));
        assertThat(Reaeration.CHURCHILL.perDay(velocity, depth)).isCloseTo(churchill, within(FIVE_DIGITS));
        assertThat(Reaeration.OWENS.perDay(velocity, depth)).isCloseTo(owens, within(FIVE_DIGITS));
    }

    /** Worked: 2.78 /d over 1 m for oxygen; times (1.874e-5/2.1e-5)^(1/2) for Hg(0) at 25 degC, 2.625 /d, before theta and the air's film. */
    @Test
    void mercuryFollowsOxygen() {
        double oxygen = Reaeration.OCONNOR_DOBBINS.filmVelocity(0.5, 1, 20) * 86400;
        assertThat(oxygen).isCloseTo(2.7789, within(FIVE_DIGITS));
        double ratio = ElementalMercury.diffusivity(25) / TwoFilm.oxygenDiffusivity(25);
        assertThat(oxygen * StrictMath.sqrt(ratio)).isCloseTo(2.625, within(0.0005));
    }

    /** The same formulas in feet, 12.9 U^0.5/D^1.5, 11.6 U/D^1.67, 21.6 U^0.67/D^1.85 (check C11): 3.932, 5.233, 5.316 in meters. */
    @Test
    void formulasInFeet() {
        double foot = 0.3048;
        double oconnorDobbins = 12.9 * foot;
        double churchill = 11.6 * StrictMath.pow(foot, 0.67);
        double owens = 21.6 * StrictMath.pow(foot, 1.18);
        // PRINTED: the metric coefficients have three digits
        assertThat(Reaeration.OCONNOR_DOBBINS.perDay(1, 1)).isCloseTo(oconnorDobbins, within(0.005));
        assertThat(Reaeration.CHURCHILL.perDay(1, 1)).isCloseTo(churchill, within(0.005));
        assertThat(Reaeration.OWENS.perDay(1, 1)).isCloseTo(owens, within(0.005));
        assertThat(oconnorDobbins).isCloseTo(3.932, within(PRINTED));
        assertThat(churchill).isCloseTo(5.233, within(PRINTED));
        assertThat(owens).isCloseTo(5.316, within(PRINTED));
    }

    /** Limits: a fast air leaves the water's film alone; a still one lets nothing through. */
    @Test
    void filmsInSeries() {
        double oxygen = 3e-5;
        double water = oxygen * StrictMath.sqrt(ElementalMercury.diffusivity(20) / TwoFilm.oxygenDiffusivity(20));
        assertThat(TwoFilm.velocity(oxygen, 1e9, 20)).isCloseTo(water, withinPercentage(1e-10));
        assertThat(TwoFilm.velocity(oxygen, 1e-15, 20))
                .isCloseTo(1e-15 * ElementalMercury.airOverWater(20), withinPercentage(1e-6));
        assertThat(TwoFilm.velocity(0, 1, 20)).isZero();
    }

    @Test
    void depthsAreHeldWithinTheFormulasRange() {
        assertThat(Reaeration.OWENS.isWithin(0.05)).isFalse();
        assertThat(Reaeration.OWENS.filmVelocity(0.3, 0.05, 20)).isEqualTo(Reaeration.OWENS.filmVelocity(0.3, 0.1, 20));
        assertThat(Reaeration.at(0.3, 20)).isEqualTo(Reaeration.OCONNOR_DOBBINS);
        assertThat(Reaeration.OCONNOR_DOBBINS.filmVelocity(0.3, 20, 20))
                .isEqualTo(Reaeration.OCONNOR_DOBBINS.filmVelocity(0.3, 9, 20));
    }
}
