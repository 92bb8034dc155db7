// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Optional;
import java.util.Set;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.SampledPart;

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
public record Observable(Medium medium, Substance substance, Fraction fraction, Basis basis, Averaging averaging)
        implements SampledPart {
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

    /** The part of the carried forms that a sample of this observable holds, by medium. */
    private enum Part {
        ALL,
        WHOLE,
        FILTERED,
        PARTICULATE
    }

    /** Whether every run computes what this observable measures. */
    public boolean isModelled() {
        return isModelled(Substance.always());
    }

    /**
     * Whether a run that carries these substances in its water computes what this observable measures. All mercury of fish is
     * taken to be methylmercury.
     */
    public boolean isModelled(Set<Substance> carried) {
        if (medium == Medium.FISH) {
            return carried.contains(Substance.METHYLMERCURY)
                    && (substance == Substance.METHYLMERCURY || substance == Substance.TOTAL_MERCURY);
        }
        boolean goes = substance != Substance.SUSPENDED_SOLIDS || fraction == Fraction.WHOLE;
        boolean made = substance != Substance.METHYLMERCURY || medium != Medium.BED_SEDIMENT;
        return medium.scope() != Medium.Scope.LISTED
                && carried.contains(substance)
                && (medium.isWater() || !substance.isCyanide())
                && goes
                && made;
    }

    /**
     * Weight of a carried state in this observable. Inorganic mercury is total less methylmercury. What a filter does not let
     * pass counts as particulate; a sample of water has no droplets above 63 um, the bed has all.
     *
     * @param layout the carried states
     * @param state place of the state in it
     * @param filteredShare share of the state that passes a filter, here and in this flow state [-], 0 to 1
     * @return weight [-], 0 to 1; for suspended and bed solids the sum is still to be divided by solids
     * @throws IllegalArgumentException if this is no observable of mercury or the share is out of range
     */
    @Override
    public double weight(StateLayout layout, int state, double filteredShare) {
        if (!substance.isMercury()) {
            throw new IllegalArgumentException(substance.word() + " in " + medium.word() + " is no form of mercury");
        }
        if (!(filteredShare >= 0 && filteredShare <= 1)) {
            throw new IllegalArgumentException("filtered share " + filteredShare + " is not allowed; give 0 to 1");
        }
        boolean methyl = layout.name(state).equals(Form.METHYL);
        if (substance != Substance.TOTAL_MERCURY && methyl != (substance == Substance.METHYLMERCURY)) {
            return 0;
        }
        double sampled = layout.isSampled(state) ? 1 : 0;
        return switch (part()) {
            case ALL -> 1;
            case WHOLE -> sampled;
            case FILTERED -> filteredShare;
            case PARTICULATE -> Math.max(0, sampled - filteredShare);
        };
    }

    private Part part() {
        if (medium == Medium.SUSPENDED_SOLIDS) {
            return Part.PARTICULATE;
        }
        if (!medium.isWater()) {
            return Part.ALL;
        }
        return fraction == Fraction.FILTERED ? Part.FILTERED : Part.WHOLE;
    }

    /** In words, for legends: "filtered total Hg in surface water". */
    public String words() {
        String unweighed = fraction == Fraction.NONE ? "" : fraction.word() + " ";
        String weighed = basis == Basis.NONE ? "" : ", " + basis.word();
        return unweighed + substance.word() + " in " + medium.word() + weighed;
    }
}
