// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.validation.Reference;

/** Portions against tables of the authority whose equations they use. */
class PortionsTest {
    /** Reference dose of MeHg [kg/kg/d], 1e-4 mg/kg/d: US EPA (2001). */
    private static final double DOSE = 1e-10;

    private static final double MILLIGRAM_PER_KILOGRAM = 1e-6;

    private static final double DAYS_PER_MONTH = 365.25 / 12;

    /**
     * Monthly consumption limits for methylmercury of 70 kg adults and meals of 8 ounces (0.227 kg): the content at which a
     * number of meals a month ends, two digits printed. The table is from memory.
     */
    @ParameterizedTest
    @CsvSource({"16, 0.059", "12, 0.078", "8, 0.12", "4, 0.23", "3, 0.31", "2, 0.47", "1, 0.94", "0.5, 1.9"})
    @Reference(key = "epa2000fish", locator = "table of monthly limits for methylmercury, from memory")
    void monthlyMeals(double meals, double printed) {
        double content = printed * MILLIGRAM_PER_KILOGRAM;
        double found = Eaters.portions(Eaters.consumptionLimit(DOSE, 70, content), DAYS_PER_MONTH, 0.227);
        assertThat(found).isCloseTo(meals, within(meals * halfDigit(printed) / printed * 1.02));
    }

    /**
     * Contents at which one, two and three servings of 4 ounces a week bring the reference dose to an average pregnant woman:
     * 0.46, 0.23 and 0.15 ug/g (printed values seen); her 75 kg and the 113.4 g of a serving are from memory.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.46", "2, 0.23", "3, 0.15"})
    @Reference(key = "epafda2017", locator = "screening values for categories of fish")
    void weeklyServings(double servings, double printed) {
        double content = printed * MILLIGRAM_PER_KILOGRAM;
        double found = Eaters.portions(Eaters.consumptionLimit(DOSE, 75, content), 7, 0.1134);
        assertThat(found).isCloseTo(servings, within(servings * halfDigit(printed) / printed * 1.02));
    }

    /** PRINTED: half the last of the printed digits; 2 % of it more for dividing by the printed number. */
    private static double halfDigit(double printed) {
        return printed < 0.1 ? 0.0005 : printed < 1 ? 0.005 : 0.05;
    }
}
