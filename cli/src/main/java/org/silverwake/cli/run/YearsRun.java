// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.model.fish.FishYears;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.YearBand;
import org.silverwake.model.transport.YearsResult;

/**
 * River and bed through the years, with the calendar.
 *
 * @param firstYear calendar year that year 0 is
 * @param carried substances that the water carries
 * @param measures what was kept of the water, in the order of the result's parts
 * @param result values
 * @param fish fish of the years; empty where the run has none, or carries no methylmercury for them
 * @param otherTogether largest relative change of a bed's content in any year if all flow states were taken together [-], of
 *     beds with at least twice the least content of their years; empty where they are
 */
public record YearsRun(
        int firstYear,
        Set<Substance> carried,
        List<Measure> measures,
        YearsResult result,
        Optional<FishYears> fish,
        OptionalDouble otherTogether) {
    /** What fish take up: filtered MeHg. */
    static final Measure FISH = new Measure(Medium.SURFACE_WATER, Substance.METHYLMERCURY, Fraction.FILTERED);

    /** Copies set and list. */
    public YearsRun {
        carried = Set.copyOf(carried);
        measures = List.copyOf(measures);
    }

    /** Last calendar year. */
    public int lastYear() {
        return firstYear + result.years() - 1;
    }

    /** Whether the years tell of a medium in a reach. */
    public boolean isKnown(Medium medium, int reach) {
        return medium != Medium.FISH
                || fish.flatMap(years -> years.find(0, reach, TrophicLevel.FOUR))
                        .isPresent();
    }

    /**
     * The yearly values that a guideline is compared with: the mean for a yearly value, the highest for others, what is in
     * the bed for one of beds, fish of trophic level 4 for one of fish. Empty where the years hold no such value.
     */
    public Optional<YearBand> band(Guideline guideline) {
        Medium medium = guideline.observable().medium();
        if (medium == Medium.BED_SEDIMENT) {
            return guideline.observable().substance() == Substance.METHYLMERCURY
                    ? result.bedMethyl()
                    : Optional.of(result.bed());
        }
        if (medium == Medium.FISH) {
            return fish.map(years -> years.contents(TrophicLevel.FOUR));
        }
        boolean mean = guideline.observable().averaging() == Averaging.YEAR;
        return ReachValues.measure(guideline.observable(), carried)
                .map(measures::indexOf)
                .filter(part -> part >= 0)
                .map(part -> mean ? result.mean(part) : result.worst(part));
    }
}
