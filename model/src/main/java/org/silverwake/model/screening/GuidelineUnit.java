// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Units in which guideline values are written, and their factor to SI. */
enum GuidelineUnit {
    NANOGRAMS_PER_LITER("ng/L", 1e-9, true),
    MICROGRAMS_PER_LITER("ug/L", 1e-6, true),
    MILLIGRAMS_PER_LITER("mg/L", 1e-3, true),
    NANOGRAMS_PER_GRAM("ng/g", 1e-9, false),
    MICROGRAMS_PER_KILOGRAM("ug/kg", 1e-9, false),
    MICROGRAMS_PER_GRAM("ug/g", 1e-6, false),
    MILLIGRAMS_PER_KILOGRAM("mg/kg", 1e-6, false);

    private final String word;
    private final double toSi;
    private final boolean perVolume;

    GuidelineUnit(String word, double toSi, boolean perVolume) {
        this.word = word;
        this.toSi = toSi;
        this.perVolume = perVolume;
    }

    /** The unit as it is written; the Greek mu and the micro sign are read as u. */
    static Optional<GuidelineUnit> find(String text) {
        String plain = text.replace('\u00B5', 'u').replace('\u03BC', 'u');
        return Arrays.stream(values()).filter(u -> u.word.equals(plain)).findFirst();
    }

    /** Units of a medium. */
    static List<String> wordsFor(Medium medium) {
        return Arrays.stream(values())
                .filter(u -> u.fits(medium))
                .map(GuidelineUnit::word)
                .toList();
    }

    String word() {
        return word;
    }

    /** Factor to kg/m3 or kg/kg [-]. */
    double toSi() {
        return toSi;
    }

    boolean fits(Medium medium) {
        return perVolume == medium.isWater();
    }
}
