// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.MeasuredSettling;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Mixing;

/** Van der Perk, M. (2013) Soil and Water Contamination, 2nd edition. */
class VanDerPerk2013Test {
    private static final double DAY = 86400;
    /** ROUNDING: a dozen operations. */
    private static final double EXACT = 1e-12;

    /**
     * Depth 1.2 m, u 0.2 m/s, settling 5.8 m/d, tau_cd 1.0 N/m2; u* = 0.1 u, tau = 1000 u*^2 = 0.4 N/m2. Printed: k = 2.9 /d,
     * 0.478 d to one quarter, 8260 m. The printed step "5702 s x 0.2 m/s = 8260 m" is a misprint for 41,302 s: see
     * docs/validation/errata.md.
     */
    @Test
    @Reference(key = "vanderperk2013", locator = "example 12.3, p. 244-245")
    void example12Point3HinderedDeposition() {
        double shearVelocity = 0.1 * 0.2;
        double shear = 1000 * shearVelocity * shearVelocity;
        ParticleClass silt = new ParticleClass(
                "silt", 2e-5, 2650, new MeasuredSettling(5.8 / DAY), true, 1.0, 5, OptionalDouble.empty(), 1);
        double w = silt.law().velocity(silt.diameter(), silt.density(), 1000, 1e-6);
        double rate = Deposition.rate(silt, w, new Deposition.Flow(0.2, 1.2, shearVelocity, shear, 0));
        assertThat(rate * DAY).isCloseTo(2.9, within(EXACT));

        double time = StrictMath.log(4) / rate;
        double printedTime = 0.0005;
        assertThat(time / DAY).isCloseTo(0.478, within(printedTime));
        assertThat(time).as("not the 5702 s of the printed step").isCloseTo(41302, within(0.5));
        double printedLength = 5;
        assertThat(time * 0.2).isCloseTo(8260, within(printedLength));

        double[] out = new double[1];
        Propagator propagator = new Propagator(1, 0);
        propagator.prepare(new double[] {-rate}, 0, 8260.4 / 0.2);
        propagator.apply(new double[] {1}, new double[] {0}, out, new double[1], 0, 1);
        double printedShare = 1e-5;
        assertThat(out[0]).as("one quarter is left after 8260.4 m").isCloseTo(0.25, within(printedShare));
    }

    /**
     * Eq. 11.33, D = 0.011 u^2 B^2/(H u*), for b 20 m, h 1.5 m, u 0.88980 m/s, u* = sqrt(9.81 x 1.5 x 5e-4) = 0.08578 m/s: 27.08 m2/s, evaluated outside
     * this program. Full mixing 0.4 and 0.1 u B^2/(0.6 H u*): 1844 and 461 m (coefficients from memory).
     */
    @Test
    @Reference(key = "vanderperk2013", locator = "eq. 11.33, p. 225")
    @Reference(key = "fischer1979", locator = "transverse mixing, from memory")
    void equation11Point33Dispersion() {
        double shearVelocity = StrictMath.sqrt(9.81 * 1.5 * 5e-4);
        double printedDispersion = 0.005;
        double printedLength = 0.5;
        assertThat(Mixing.longitudinal(0.88980, 20, 1.5, shearVelocity)).isCloseTo(27.08, within(printedDispersion));
        assertThat(Mixing.fullMixingLength(Mixing.BANK, 0.88980, 20, 1.5, shearVelocity, 0.6))
                .isCloseTo(1844, within(printedLength));
        assertThat(Mixing.fullMixingLength(Mixing.MID_CHANNEL, 0.88980, 20, 1.5, shearVelocity, 0.6))
                .isCloseTo(461, within(printedLength));
    }
}
