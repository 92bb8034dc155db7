// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.model.sample.Reported.Kind;
import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/** Values of guidelines.csv: WHO-DW-iHg 6 ug/L, CCME-FW-iHg 26 ng/L, both of whole water; USEPA-FISH-MeHg 0.3 mg/kg. */
class SampleVerdictTest {
    private static final Guideline DRINKING = GuidelineLibrary.builtIn().require("WHO-DW-iHg");
    private static final Guideline RIVER = GuidelineLibrary.builtIn().require("CCME-FW-iHg");
    private static final Guideline FISH = GuidelineLibrary.builtIn().require("USEPA-FISH-MeHg");

    private static Finding water(Fraction fraction, Kind kind, double nanograms) {
        return new Finding(
                Medium.SURFACE_WATER,
                Substance.TOTAL_MERCURY,
                fraction,
                Basis.NONE,
                new Reported(kind, nanograms * 1e-9));
    }

    private static Finding fish(Substance substance, Kind kind, double milligrams) {
        return new Finding(
                Medium.FISH, substance, Fraction.NONE, Basis.WET_WEIGHT, new Reported(kind, milligrams * 1e-6));
    }

    private static String words(Optional<SampleVerdict> verdict) {
        return verdict.map(SampleVerdict::words).orElse("");
    }

    @Test
    void riverWaterIsHeldAgainstDrinkingWaterWherePeopleDrink() {
        Finding high = water(Fraction.WHOLE, Kind.DETECTED, 8000);
        assertThat(words(high.against(DRINKING, true))).isEqualTo("above (raw water against a drinking-water value)");
        assertThat(high.against(DRINKING, false)).isEmpty();
        assertThat(words(water(Fraction.WHOLE, Kind.BELOW, 8000).against(DRINKING, true)))
                .startsWith("can't tell");
    }

    /** What passes the filter is part of the whole: common practice, no source. */
    @Test
    void filteredShowsThatWholeIsAboveNeverThatItIsNot() {
        assertThat(words(water(Fraction.FILTERED, Kind.DETECTED, 900).against(RIVER, false)))
                .isEqualTo("above (already in its filtered part)");
        assertThat(words(water(Fraction.FILTERED, Kind.ABOVE, 30).against(RIVER, false)))
                .startsWith("above");
        for (Kind kind : Kind.values()) {
            assertThat(words(water(Fraction.FILTERED, kind, 20).against(RIVER, false)))
                    .isEqualTo("can't tell (filtered, the value is for whole water)");
        }
        assertThat(words(water(Fraction.WHOLE, Kind.DETECTED, 900).against(RIVER, true)))
                .isEqualTo("above");
    }

    @Test
    void totalInFishShowsThatMethylmercuryIsNotAboveNeverThatItIs() {
        assertThat(words(fish(Substance.TOTAL_MERCURY, Kind.DETECTED, 0.42).against(FISH, false)))
                .isEqualTo("can't tell (total, the value is for MeHg, and total is over it)");
        assertThat(words(fish(Substance.TOTAL_MERCURY, Kind.DETECTED, 0.2).against(FISH, false)))
                .startsWith("not above");
        assertThat(words(fish(Substance.TOTAL_MERCURY, Kind.BELOW, 0.4).against(FISH, false)))
                .startsWith("can't tell");
        assertThat(words(fish(Substance.METHYLMERCURY, Kind.DETECTED, 0.42).against(FISH, false)))
                .isEqualTo("above");
        assertThat(fish(Substance.TOTAL_MERCURY, Kind.DETECTED, 0.42).against(RIVER, false))
                .isEmpty();
    }
}
