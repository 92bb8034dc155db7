// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.silverwake.model.screening.Observable.CarriedForm;

class ObservableTest {
    /** Three products and sums near 1: a few ulp. */
    private static final double ROUNDING = 1e-15;

    private static Observable water(Substance substance, Fraction fraction) {
        return new Observable(Medium.SURFACE_WATER, substance, fraction, Basis.NONE, Averaging.YEAR);
    }

    /** By hand: exchangeable 3, grain-bound 5, a quarter of the exchangeable passes the filter. */
    @Test
    void partsOfASample() {
        Observable whole = water(Substance.TOTAL_MERCURY, Fraction.WHOLE);
        Observable filtered = water(Substance.TOTAL_MERCURY, Fraction.FILTERED);
        Observable suspended = new Observable(
                Medium.SUSPENDED_SOLIDS, Substance.TOTAL_MERCURY, Fraction.NONE, Basis.DRY_WEIGHT, Averaging.YEAR);
        assertThat(whole.value(3, 5, 0.25)).isCloseTo(8, within(ROUNDING));
        assertThat(filtered.value(3, 5, 0.25)).isCloseTo(0.75, within(ROUNDING));
        assertThat(suspended.value(3, 5, 0.25)).isCloseTo(7.25, within(ROUNDING));
        assertThat(water(Substance.INORGANIC_MERCURY, Fraction.WHOLE).value(3, 5, 0.25))
                .isCloseTo(8, within(ROUNDING));
    }

    /** The bed takes all forms that settle, whatever they are in water. */
    @Test
    void bedTakesAllForms() {
        Observable bed = new Observable(
                Medium.BED_SEDIMENT, Substance.TOTAL_MERCURY, Fraction.NONE, Basis.DRY_WEIGHT, Averaging.BED);
        for (CarriedForm form : CarriedForm.values()) {
            assertThat(bed.weight(form, 0.25)).isCloseTo(1, within(ROUNDING));
        }
    }

    @Test
    void formsThatAreNotCarried() {
        assertThat(water(Substance.METHYLMERCURY, Fraction.WHOLE).isModelled()).isFalse();
        assertThat(water(Substance.FREE_CYANIDE, Fraction.WHOLE).isModelled()).isFalse();
        assertThat(water(Substance.TOTAL_MERCURY, Fraction.FILTERED).isModelled())
                .isTrue();
        assertThat(new Observable(Medium.FISH, Substance.TOTAL_MERCURY, Fraction.NONE, Basis.WET_WEIGHT, Averaging.FISH)
                        .isModelled())
                .isFalse();
        assertThatThrownBy(() -> water(Substance.METHYLMERCURY, Fraction.WHOLE).value(1, 1, 0.5))
                .hasMessage("MeHg in surface water is not carried");
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> water(Substance.TOTAL_MERCURY, Fraction.NONE))
                .hasMessage("fraction: none is not allowed for surface water; give whole or filtered");
        assertThatThrownBy(() ->
                        new Observable(Medium.SOIL, Substance.TOTAL_MERCURY, Fraction.NONE, Basis.NONE, Averaging.SOIL))
                .hasMessage("basis: none is not allowed for soil; give dry weight");
        assertThatThrownBy(() -> new Observable(
                        Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.WHOLE, Basis.NONE, Averaging.EFFLUENT))
                .hasMessageContaining("compare: effluent is not allowed for surface water");
        assertThatThrownBy(() -> water(Substance.TOTAL_MERCURY, Fraction.WHOLE).weight(CarriedForm.EXCHANGEABLE, 1.5))
                .hasMessageContaining("give 0 to 1");
    }
}
