// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.solids.Stokes1851;

class ObservableTest {
    /** ROUNDING of six products and their sum, near 20. */
    private static final double ROUNDING = 1e-14;

    private static Observable water(Substance substance, Fraction fraction) {
        return new Observable(Medium.SURFACE_WATER, substance, fraction, Basis.NONE, Averaging.YEAR);
    }

    private static Observable suspended(Substance substance) {
        return new Observable(Medium.SUSPENDED_SOLIDS, substance, Fraction.NONE, Basis.DRY_WEIGHT, Averaging.YEAR);
    }

    /** Exchangeable, MeHg, complex, droplets of 3 and 100 um, grain-bound of one class. */
    private static StateLayout layout() {
        Partitioned some = new Partitioned(List.of(5.0), List.of(0.0));
        ParticleClass silt =
                new ParticleClass("silt", 2e-5, 2650, new Stokes1851(), true, 0.1, 5, OptionalDouble.empty(), 1);
        return StateLayout.of(
                List.of(silt),
                List.of(
                        new Form(Form.METHYL, true, some, false),
                        new Form(Form.COMPLEX, false, some, false),
                        new Form("droplets 3 um", false, Droplets.of(3e-6), false),
                        new Form("droplets 100 um", false, Droplets.of(1e-4), false)));
    }

    private static double value(Observable observable) {
        double[] concentration = {3, 0.2, 7, 0.5, 11, 5};
        double[] filtered = {0.25, 0.4, 1, 0, 0, 0};
        double sum = 0;
        for (int state = 0; state < concentration.length; state++) {
            sum += concentration[state] * observable.weight(layout(), state, filtered[state]);
        }
        return sum;
    }

    /** By hand: what a filter lets pass is 0.75 of Hg(II), 0.08 of MeHg and all 7 of the complex. */
    @Test
    void partsOfASample() {
        assertThat(layout().count()).isEqualTo(6);
        assertThat(value(water(Substance.TOTAL_MERCURY, Fraction.WHOLE))).isCloseTo(15.7, within(ROUNDING));
        assertThat(value(water(Substance.INORGANIC_MERCURY, Fraction.WHOLE))).isCloseTo(15.5, within(ROUNDING));
        assertThat(value(water(Substance.METHYLMERCURY, Fraction.WHOLE))).isCloseTo(0.2, within(ROUNDING));
        assertThat(value(water(Substance.TOTAL_MERCURY, Fraction.FILTERED))).isCloseTo(7.83, within(ROUNDING));
        assertThat(value(water(Substance.INORGANIC_MERCURY, Fraction.FILTERED))).isCloseTo(7.75, within(ROUNDING));
        assertThat(value(water(Substance.METHYLMERCURY, Fraction.FILTERED))).isCloseTo(0.08, within(ROUNDING));
        assertThat(value(suspended(Substance.TOTAL_MERCURY))).isCloseTo(15.7 - 7.83, within(ROUNDING));
        assertThat(value(suspended(Substance.METHYLMERCURY))).isCloseTo(0.12, within(ROUNDING));
    }

    /** The bed takes all forms that settle, large droplets too, whatever they are in water. */
    @Test
    void bedTakesAllForms() {
        Observable bed = new Observable(
                Medium.BED_SEDIMENT, Substance.TOTAL_MERCURY, Fraction.NONE, Basis.DRY_WEIGHT, Averaging.BED);
        assertThat(value(bed)).isCloseTo(26.7, within(ROUNDING));
    }

    /** What a run carries decides: methylmercury in water, not in the bed, where it would have to be made. */
    @Test
    void methylmercuryIsModelledWhereItIsCarried() {
        Set<Substance> carried = EnumSet.of(Substance.TOTAL_MERCURY, Substance.METHYLMERCURY);
        assertThat(water(Substance.METHYLMERCURY, Fraction.WHOLE).isModelled(carried))
                .isTrue();
        assertThat(new Observable(
                                Medium.BED_SEDIMENT,
                                Substance.METHYLMERCURY,
                                Fraction.NONE,
                                Basis.DRY_WEIGHT,
                                Averaging.BED)
                        .isModelled(carried))
                .isFalse();
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
        assertThatThrownBy(() -> water(Substance.FREE_CYANIDE, Fraction.WHOLE).weight(layout(), 0, 0.5))
                .hasMessage("free cyanide in surface water is no form of mercury");
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
        assertThatThrownBy(() -> water(Substance.TOTAL_MERCURY, Fraction.WHOLE).weight(layout(), 0, 1.5))
                .hasMessageContaining("give 0 to 1");
    }
}
