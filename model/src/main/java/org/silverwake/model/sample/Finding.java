// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import java.util.Optional;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Observable;
import org.silverwake.model.screening.Substance;

/**
 * One result of a sample: of what, and what was found.
 *
 * @param medium water, sediment, fish ...
 * @param substance what was measured
 * @param fraction part of a water sample, {@code NONE} outside water
 * @param basis what a content is divided by, {@code NONE} in water
 * @param reported what was found
 */
public record Finding(Medium medium, Substance substance, Fraction fraction, Basis basis, Reported reported) {
    /** Why the model has nothing to set beside it; empty where it has. */
    public Optional<String> notCompared() {
        if (medium == Medium.FISH) {
            return Optional.of("the model does not carry mercury into fish yet");
        }
        if (substance == Substance.METHYLMERCURY) {
            return Optional.of("the model does not carry methylmercury yet");
        }
        if (basis != medium.basis()) {
            return Optional.of(
                    "a content by wet weight cannot be set beside one by dry weight without the water content");
        }
        boolean river =
                medium == Medium.SURFACE_WATER || medium == Medium.SUSPENDED_SOLIDS || medium == Medium.BED_SEDIMENT;
        if (!river || !observable().isModelled()) {
            return Optional.of("the model does not compute " + words());
        }
        return Optional.empty();
    }

    private Observable observable() {
        Averaging some = medium.averaging().stream().sorted().findFirst().orElseThrow();
        return new Observable(medium, substance, fraction, basis, some);
    }

    /**
     * Whether it may be held against a guideline: same medium, fraction and basis, and the same substance. Total mercury
     * may be held against a value of inorganic mercury, as the model does as long as it carries no methylmercury.
     */
    public boolean matches(Guideline guideline) {
        Observable other = guideline.observable();
        boolean same = substance == other.substance()
                || substance == Substance.TOTAL_MERCURY && other.substance() == Substance.INORGANIC_MERCURY;
        return same && medium == other.medium() && fraction == other.fraction() && basis == other.basis();
    }

    /** Of what, in words: "filtered total Hg in surface water". */
    public String words() {
        String part = fraction == Fraction.NONE ? "" : fraction.word() + " ";
        String weighed = basis == Basis.NONE ? "" : ", " + basis.word();
        return part + substance.word() + " in " + medium.word() + weighed;
    }
}
