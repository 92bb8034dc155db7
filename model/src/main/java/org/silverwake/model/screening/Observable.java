// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Optional;

/**
 * What is compared, mapped, shared out and sampled: a medium, a substance, a fraction, a basis and an averaging. In one
 * reach and flow state it is one linear functional of the carried forms, given by {@link #weight}: the value in water is
 * the sum of weight x concentration over all carried forms, the bed's content the sum of weight x deposited mercury over
 * deposited solids. A transposed solve starts from the same weights.
 *
 * @param medium what the value is a value of
 * @param substance what is measured
 * @param fraction part of the water sample, {@code NONE} outside water
 * @param basis what a content is divided by, {@code NONE} in water
 * @param averaging how flow states make one value
 */
public record Observable(Medium medium, Substance substance, Fraction fraction, Basis basis, Averaging averaging) {
    /**
     * @throws IllegalArgumentException if fraction, basis or averaging does not go with the medium; the message says why
     */
    public Observable {
        Optional<String> refusal = refusal(medium, fraction, basis, averaging);
        if (refusal.isPresent()) {
            throw new IllegalArgumentException(refusal.get());
        }
    }

    /** Why a combination is refused; empty where it is allowed. */
    static Optional<String> refusal(Medium medium, Fraction fraction, Basis basis, Averaging averaging) {
        if (medium.isWater() && fraction == Fraction.NONE) {
            return Optional.of("fraction: none is not allowed for " + medium.word() + "; give whole or filtered");
        }
        if (!medium.isWater() && fraction != Fraction.NONE) {
            return Optional.of("fraction: " + fraction.word() + " is not allowed for " + medium.word()
                    + ", which is not a water sample; leave it empty");
        }
        if (basis != medium.basis()) {
            String wanted = medium.basis() == Basis.NONE
                    ? "leave it empty"
                    : "give " + medium.basis().word();
            String found = basis == Basis.NONE ? "none" : basis.word();
            return Optional.of("basis: " + found + " is not allowed for " + medium.word() + "; " + wanted);
        }
        if (!medium.averaging().contains(averaging)) {
            return Optional.of("compare: " + averaging.word() + " is not allowed for " + medium.word() + "; give "
                    + Words.list(medium.averaging().stream()
                            .map(Averaging::word)
                            .sorted()
                            .toList()));
        }
        return Optional.empty();
    }

    /** A form of mercury the transport carries. */
    public enum CarriedForm {
        /** Hg(II) that sorbs and desorbs at equilibrium. */
        EXCHANGEABLE,
        /** Mercury locked in grains; never passes a filter. */
        GRAIN_BOUND
    }

    /** The part of the carried forms that a sample of this observable holds, by medium. */
    private enum Part {
        ALL,
        FILTERED,
        PARTICULATE
    }

    /** Whether transport carries what this observable measures. Methylmercury, fish and cyanide are not carried yet. */
    public boolean isModelled() {
        boolean mercury = substance == Substance.TOTAL_MERCURY || substance == Substance.INORGANIC_MERCURY;
        boolean solids = substance == Substance.SUSPENDED_SOLIDS && fraction == Fraction.WHOLE;
        return medium != Medium.FISH && medium.scope() != Medium.Scope.LISTED && (mercury || solids);
    }

    /**
     * Weight of a carried form in this observable. Inorganic mercury is total less methylmercury; as none is carried yet,
     * the two are equal.
     *
     * @param form carried form
     * @param filteredShare share of the exchangeable form that passes a filter, here and in this state [-], 0 to 1
     * @return weight [-], 0 to 1
     * @throws IllegalArgumentException if the observable is not a modelled form of mercury or the share is out of range
     */
    public double weight(CarriedForm form, double filteredShare) {
        if (!isModelled() || substance == Substance.SUSPENDED_SOLIDS) {
            throw new IllegalArgumentException(substance.word() + " in " + medium.word() + " is not carried");
        }
        if (!(filteredShare >= 0 && filteredShare <= 1)) {
            throw new IllegalArgumentException("filtered share " + filteredShare + " is not allowed; give 0 to 1");
        }
        Part part = part();
        if (part == Part.ALL) {
            return 1;
        }
        double passes = form == CarriedForm.EXCHANGEABLE ? filteredShare : 0;
        return part == Part.FILTERED ? passes : 1 - passes;
    }

    /**
     * Value of the functional for the two carried groups.
     *
     * @param exchangeable exchangeable mercury [kg/m3], or its deposition for the bed [kg/m2/s]
     * @param grainBound grain-bound mercury, all classes, in the same unit [kg/m3]
     * @param filteredShare share of the exchangeable form that passes a filter [-], 0 to 1
     * @return the value in the unit of the arguments [kg/m3]; for suspended and bed solids still to be divided by solids
     */
    public double value(double exchangeable, double grainBound, double filteredShare) {
        return weight(CarriedForm.EXCHANGEABLE, filteredShare) * exchangeable
                + weight(CarriedForm.GRAIN_BOUND, filteredShare) * grainBound;
    }

    private Part part() {
        if (medium == Medium.SUSPENDED_SOLIDS) {
            return Part.PARTICULATE;
        }
        return fraction == Fraction.FILTERED ? Part.FILTERED : Part.ALL;
    }

    /** In words, for legends: "filtered total Hg in surface water". */
    public String words() {
        String unweighed = fraction == Fraction.NONE ? "" : fraction.word() + " ";
        String weighed = basis == Basis.NONE ? "" : ", " + basis.word();
        return unweighed + substance.word() + " in " + medium.word() + weighed;
    }
}
