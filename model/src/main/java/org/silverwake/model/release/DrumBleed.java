// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import org.silverwake.model.quantity.Quantity;

/**
 * Mercury that contaminated drums go on losing after use stops: what they hold falls by a factor e in each decay time.
 *
 * @param held what the drums of a shed hold when use stops [kg]
 * @param decayTime [s], above 0
 */
public record DrumBleed(double held, double decayTime) {
    /** Checks the numbers. */
    public DrumBleed {
        if (!(held >= 0 && decayTime > 0)) {
            throw new IllegalArgumentException("drums need mercury held of at least 0 and a decay time above 0");
        }
    }

    /**
     * Mean rate through one year [kg/s], held (e^(-n yr/T) - e^(-(n + 1) yr/T))/yr.
     *
     * @param yearsSince whole years n since use stopped, at least 0
     */
    public double rate(int yearsSince) {
        double year = Quantity.SECONDS_PER_YEAR;
        double left = held * StrictMath.exp(-yearsSince * year / decayTime);
        return left * -StrictMath.expm1(-year / decayTime) / year;
    }
}
