// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.silverwake.model.validation.Reference;

/** The three ways to shear, in the order the model names them; values by hand. */
class ShearTest {
    private static final double EXACT = 1e-12;
    private static final Section DEEP = new Section(10, 8, 0.5, 8, false);
    private static final Section OWN_RADIUS = new Section(10, 8, 0.5, 3, true);

    @Test
    void slopeWithTheSectionsOwnRadiusComesFirst() {
        // 1000 x 9.81 x 3 x 1e-4
        assertThat(Shear.of(OWN_RADIUS, 1e-4, 0.05, 1000, 1e-3).total()).isCloseTo(2.943, within(EXACT));
    }

    @Test
    void thenAStatedRoughness() {
        // 1000 x 9.81 x 0.04^2 x 0.25/8^(1/3) = 3.924/2
        assertThat(Shear.of(DEEP, 1e-4, 0.04, 1000, 1e-3).total()).isCloseTo(1.962, within(EXACT));
        assertThat(Shear.of(DEEP, 0, 0.04, 1000, 1e-3).total()).isCloseTo(1.962, within(EXACT));
        assertThat(Shear.of(DEEP, 0, 0.04, 1000, 1e-3).impliedRoughness()).isZero();
    }

    @Test
    void thenDepthAndSlope() {
        // 1000 x 9.81 x 8 x 1e-4; implied n = 8^(2/3) x 0.01/0.5 = 0.08
        Shear shear = Shear.of(DEEP, 1e-4, 0, 1000, 1e-3);
        assertThat(shear.total()).isCloseTo(7.848, within(EXACT));
        assertThat(shear.impliedRoughness()).isCloseTo(0.08, within(EXACT));
        assertThat(shear.isRoughnessOdd()).isFalse();
        assertThat(shear.velocity(1000)).isCloseTo(StrictMath.sqrt(0.007848), within(EXACT));
        assertThatThrownBy(() -> Shear.of(DEEP, 0, 0, 1000, 1e-3)).hasMessageContaining("neither slope nor Manning n");
    }

    /** Strickler: n_g = d50^(1/6)/21.1, 1 mm gives 0.015 (from memory). */
    @Test
    @Reference(key = "strickler1923", locator = "grain roughness, from memory")
    void grainRoughnessAndSkinShear() {
        double printed = 5e-5;
        assertThat(Shear.grainRoughness(1e-3)).isCloseTo(0.0150, within(printed));
        // d50 = 1e-6 x 21.1^6 x 0.02^6: n_g = 0.02, a quarter of the implied 0.08: tau' = tau/8
        double d50 = StrictMath.pow(21.1 * 0.02, 6);
        Shear shear = Shear.of(DEEP, 1e-4, 0, 1000, d50);
        assertThat(shear.skin()).isCloseTo(7.848 / 8, within(EXACT));
        Shear stated = Shear.of(DEEP, 1e-4, 0.02, 1000, d50);
        assertThat(stated.skin()).as("all of it where n is the grains'").isCloseTo(stated.total(), within(EXACT));
        Shear rough = Shear.of(DEEP, 1e-4, 0.01, 1000, d50);
        assertThat(rough.skin()).as("never more than all").isCloseTo(rough.total(), within(EXACT));
    }

    @Test
    void anOddImpliedRoughnessIsHeldInRangeAndMarked() {
        // S 4e-2: implied 8^(2/3) x 0.2/0.5 = 1.6, held at 0.2: (0.02/0.2)^1.5
        double d50 = StrictMath.pow(21.1 * 0.02, 6);
        Shear steep = Shear.of(DEEP, 4e-2, 0, 1000, d50);
        assertThat(steep.isRoughnessOdd()).isTrue();
        assertThat(steep.impliedRoughness()).isCloseTo(1.6, within(EXACT));
        assertThat(steep.skin() / steep.total()).isCloseTo(StrictMath.pow(0.1, 1.5), within(EXACT));
        // S 1e-6: implied 0.008, held at 0.015: n_g 0.012 of 0.015
        Shear flat = Shear.of(DEEP, 1e-6, 0, 1000, StrictMath.pow(21.1 * 0.012, 6));
        assertThat(flat.isRoughnessOdd()).isTrue();
        assertThat(flat.skin() / flat.total()).isCloseTo(StrictMath.pow(0.8, 1.5), within(EXACT));
    }
}
