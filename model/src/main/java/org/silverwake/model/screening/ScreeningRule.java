// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Optional;
import org.silverwake.model.input.Settings;

/**
 * From the two bounds and a guideline to an answer. With r the bound over the guideline and F the stated factor: above if
 * r_lo &gt; F, below by this estimate if r_hi &lt; 1/F, may be above otherwise.
 *
 * @param factorWaterBed stated factor for water and solids [-], at least 1
 * @param factorFish stated factor for fish [-], at least 1
 * @param boundsRatio ratio of the bounds above which a reach is hatched [-], at least 1; not of fish, whose range is wide by
 *     their own factors
 */
public record ScreeningRule(double factorWaterBed, double factorFish, double boundsRatio) {
    /** Refuses factors below 1. */
    public ScreeningRule {
        if (!(factorWaterBed >= 1 && factorFish >= 1 && boundsRatio >= 1)) {
            throw new IllegalArgumentException("screening factors and the bounds' ratio must be at least 1");
        }
    }

    /** With the factors of a run. */
    public static ScreeningRule of(Settings settings) {
        return new ScreeningRule(
                settings.value("screening.factor-water-bed"),
                settings.value("screening.factor-fish"),
                settings.value("screening.bounds-ratio"));
    }

    /** Stated factor for a medium [-]. */
    public double factor(Medium medium) {
        return medium == Medium.FISH ? factorFish : factorWaterBed;
    }

    /**
     * A verdict.
     *
     * @param answer one of the four answers
     * @param reason why it is not assessed; empty for the other answers
     * @param leansAbove whether even the low bound exceeds the guideline: the darker shade within "may be above"
     * @param hatched whether the answer depends on what the bed gives back: the bounds differ by more than the ratio
     * @param aboveFromBackground whether background alone exceeds the guideline
     */
    public record Verdict(
            Answer answer,
            Optional<NotAssessed> reason,
            boolean leansAbove,
            boolean hatched,
            boolean aboveFromBackground) {
        static Verdict notAssessed(NotAssessed reason) {
            return new Verdict(Answer.NOT_ASSESSED, Optional.of(reason), false, false, false);
        }
    }

    /**
     * Low and high bound and background alone, all for one observable.
     *
     * @param low lower bound [kg/m3 or kg/kg], at least 0
     * @param high higher bound [kg/m3 or kg/kg], at least {@code low}
     * @param background background alone [kg/m3 or kg/kg], at least 0
     */
    public record Band(double low, double high, double background) {
        /** Refuses bounds that are negative, not finite or the wrong way round. */
        public Band {
            if (!(low >= 0 && high >= low && background >= 0 && high + background < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("bounds " + low + " to " + high + ", background " + background
                        + ": must be finite, not negative, low to high");
            }
        }
    }

    /** The verdict on a band of values. */
    public Verdict judge(Band band, Guideline guideline) {
        double factor = factor(guideline.observable().medium());
        double low = band.low() / guideline.value();
        double high = band.high() / guideline.value();
        Answer answer = Answer.MAY_BE_ABOVE;
        if (low > factor) {
            answer = Answer.ABOVE;
        } else if (high < 1 / factor) {
            answer = Answer.BELOW_BY_THIS_ESTIMATE;
        }
        return new Verdict(
                answer,
                Optional.empty(),
                low > 1,
                guideline.observable().medium() != Medium.FISH && band.high() > boundsRatio * band.low(),
                band.background() > guideline.value());
    }
}
