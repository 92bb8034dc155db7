// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.Optional;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Substance;

/** Values that ask for a second look at the unit. */
final class Plausible {
    /** Solubility of Hg(0) in water near 25 degC, about 60 ug/L (Clever, Johnson and Derrick 1985, from memory) [kg/m3]. */
    private static final double SOLUBILITY = 60e-6;

    private Plausible() {}

    /** What a laboratory may well have found, beside a leach tank, where cyanide holds mercury in solution. */
    static Optional<String> doubt(Finding finding) {
        return isAboveSolubility(finding)
                ? Optional.of(LabRow.ABOVE_SOLUBILITY + "; right beside a leach tank that may be, else check the unit")
                : Optional.empty();
    }

    private static boolean isAboveSolubility(Finding finding) {
        return isMercury(finding)
                && finding.fraction() == Fraction.FILTERED
                && finding.reported().value() > SOLUBILITY;
    }

    private static boolean isMercury(Finding finding) {
        return finding.substance() == Substance.TOTAL_MERCURY
                || finding.substance() == Substance.INORGANIC_MERCURY
                || finding.substance() == Substance.METHYLMERCURY;
    }

    /**
     * Why a value cannot stand as it is; empty where it may.
     *
     * @param implied whether the unit was read out of parts per million or the like
     */
    static Optional<String> check(Finding finding, boolean implied) {
        double value = finding.reported().value();
        boolean mercury = isMercury(finding);
        if (implied && isAboveSolubility(finding)) {
            return Optional.of("is above 60 ug/L in filtered water, the solubility of Hg(0): which unit is it?");
        }
        if (!finding.medium().isWater() && value > 1) {
            return Optional.of("is above 1e6 mg/kg, more than there is of the sample: which unit is it?");
        }
        if (finding.medium().isWater() && mercury && value > 1) {
            return Optional.of("is above 1 g/L of water: which unit is it?");
        }
        return Optional.empty();
    }
}
