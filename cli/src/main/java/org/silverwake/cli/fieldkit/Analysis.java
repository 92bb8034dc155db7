// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Observable;
import org.silverwake.model.screening.Substance;

/**
 * What one bottle is analyzed for. Total and inorganic mercury come from one bottle; water that people drink is river water at
 * the place where they draw it.
 *
 * @param medium what is taken
 * @param substance what is measured
 * @param fraction part of a water sample
 */
record Analysis(Medium medium, Substance substance, Fraction fraction) implements Comparable<Analysis> {
    /** What an observable needs a bottle for. */
    static Analysis of(Observable observable) {
        return new Analysis(
                observable.medium() == Medium.DRINKING_WATER ? Medium.SURFACE_WATER : observable.medium(),
                observable.substance() == Substance.INORGANIC_MERCURY
                        ? Substance.TOTAL_MERCURY
                        : observable.substance(),
                observable.fraction());
    }

    /** Letters that end a bottle's code; no two analyses have the same. */
    String letters() {
        String matter = medium.isWater() ? water() : solids();
        return fraction == Fraction.FILTERED && substance != Substance.TOTAL_MERCURY ? matter + "F" : matter;
    }

    private String water() {
        return substance == Substance.TOTAL_MERCURY && fraction == Fraction.FILTERED ? "F" : substanceLetter("W");
    }

    private String solids() {
        String first = switch (medium) {
            case SUSPENDED_SOLIDS -> "P";
            case BED_SEDIMENT -> "S";
            case FISH -> "T";
            default -> "X" + medium.ordinal();
        };
        return first + substanceLetter("");
    }

    private String substanceLetter(String mercury) {
        return switch (substance) {
            case METHYLMERCURY -> "M";
            case FREE_CYANIDE -> "C";
            case WAD_CYANIDE -> "K";
            case SUSPENDED_SOLIDS -> "D";
            default -> mercury;
        };
    }

    /** Basis on which the laboratory gives the result. */
    Basis basis() {
        return medium.basis();
    }

    /** In words: "surface water, whole, total Hg". */
    String words() {
        return medium.word() + (fraction == Fraction.NONE ? "" : ", " + fraction.word()) + ", " + substance.word();
    }

    /** Water first, then solids, then fish. */
    @Override
    public int compareTo(Analysis other) {
        int byMedium = medium.compareTo(other.medium);
        int bySubstance = byMedium != 0 ? byMedium : substance.compareTo(other.substance);
        return bySubstance != 0 ? bySubstance : fraction.compareTo(other.fraction);
    }
}
