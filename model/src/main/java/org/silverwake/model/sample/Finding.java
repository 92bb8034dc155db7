// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import java.util.Optional;
import java.util.Set;
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
    /** Why a run that carries these substances has nothing to set beside it; empty where it has. */
    public Optional<String> notCompared(Set<Substance> carried) {
        if (medium == Medium.FISH) {
            return Optional.of(
                    carried.contains(Substance.METHYLMERCURY)
                            ? "fish that were measured take the place of the estimate (fish.csv)"
                            : "the model does not carry mercury into fish yet");
        }
        if (substance == Substance.METHYLMERCURY && !carried.contains(substance)) {
            return Optional.of("the model does not carry methylmercury yet");
        }
        if (basis != medium.basis()) {
            return Optional.of(
                    "a content by wet weight cannot be set beside one by dry weight without the water content");
        }
        boolean river =
                medium == Medium.SURFACE_WATER || medium == Medium.SUSPENDED_SOLIDS || medium == Medium.BED_SEDIMENT;
        if (!river || !observable().isModelled(carried)) {
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
        return isOf(other.substance())
                && medium == other.medium()
                && fraction == other.fraction()
                && basis == other.basis();
    }

    /**
     * How it stands to a guideline, by what a part says of its whole: filtered water is part of whole water, so it may show
     * that whole water is above, never that it is not; methylmercury is part of total mercury, so total mercury may show that
     * it is not above, never that it is.
     *
     * @param isDrunk whether people drink the river's water where it was taken; it is then held against values of drinking water
     * @return empty where one says nothing of the other
     */
    public Optional<SampleVerdict> against(Guideline guideline, boolean isDrunk) {
        Observable other = guideline.observable();
        boolean raw = isDrunk && medium == Medium.SURFACE_WATER && other.medium() == Medium.DRINKING_WATER;
        boolean part = fraction == Fraction.FILTERED && other.fraction() == Fraction.WHOLE;
        boolean more = substance == Substance.TOTAL_MERCURY && other.substance() == Substance.METHYLMERCURY;
        boolean goes = (raw || medium == other.medium())
                && basis == other.basis()
                && (part || fraction == other.fraction())
                && (more || isOf(other.substance()));
        if (!goes || part && more) {
            return Optional.empty();
        }
        SampleAnswer plain = reported.against(guideline.value());
        SampleVerdict verdict = part ? byPart(plain) : more ? byTotal(plain) : new SampleVerdict(plain, "");
        String water = raw ? "raw water against a drinking-water value" : "";
        String join = water.isEmpty() || verdict.remark().isEmpty() ? "" : ", ";
        return Optional.of(new SampleVerdict(verdict.answer(), verdict.remark() + join + water));
    }

    private static SampleVerdict byPart(SampleAnswer plain) {
        return plain == SampleAnswer.ABOVE
                ? new SampleVerdict(plain, "already in its filtered part")
                : new SampleVerdict(SampleAnswer.CANNOT_TELL, "filtered, the value is for whole water");
    }

    private static SampleVerdict byTotal(SampleAnswer plain) {
        return switch (plain) {
            case NOT_ABOVE -> new SampleVerdict(plain, "not even its total Hg, which holds the MeHg");
            case ABOVE ->
                new SampleVerdict(SampleAnswer.CANNOT_TELL, "total, the value is for MeHg, and total is over it");
            case CANNOT_TELL -> new SampleVerdict(plain, "total, the value is for MeHg");
        };
    }

    private boolean isOf(Substance other) {
        return substance == other || substance == Substance.TOTAL_MERCURY && other == Substance.INORGANIC_MERCURY;
    }

    /** Of what, in words: "filtered total Hg in surface water". */
    public String words() {
        String part = fraction == Fraction.NONE ? "" : fraction.word() + " ";
        String weighed = basis == Basis.NONE ? "" : ", " + basis.word();
        return part + substance.word() + " in " + medium.word() + weighed;
    }
}
