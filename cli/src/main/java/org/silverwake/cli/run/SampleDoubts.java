// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Names;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported.Kind;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Medium;

/** Samples that are understood and used, and yet ask for a second look: each doubt one warning. */
final class SampleDoubts {
    /** Mercury could be told in water at trace levels only later than this: common practice, no source. */
    private static final LocalDate OLDEST = LocalDate.of(1950, 1, 1);

    /** By so much may two results differ by the laboratory's scatter alone: common practice, no source [-]. */
    private static final double SCATTER = 1.2;

    private static final int MOST_NAMED = 5;

    private SampleDoubts() {}

    static List<String> of(ScenarioInput scenario) {
        List<Sample> samples = scenario.samples().stream()
                .filter(s -> s.row().finding().isPresent())
                .toList();
        LocalDate today = scenario.project().date();
        List<String> doubts = new ArrayList<>();
        add(
                doubts,
                samples,
                s -> s.row().date().filter(d -> d.isAfter(today)).isPresent(),
                "dated after the scenario's own date " + today + ": check the year");
        add(
                doubts,
                samples,
                s -> s.row().date().filter(d -> d.isBefore(OLDEST)).isPresent(),
                "dated before 1950: check the year");
        add(
                doubts,
                samples,
                s -> isOutOfSeason(scenario, s),
                "of a flow state whose months do not hold the sample's date; the state is taken as given");
        filtered(doubts, samples);
        return doubts;
    }

    private static void add(List<String> doubts, List<Sample> samples, Predicate<Sample> which, String text) {
        List<Sample> some = samples.stream().filter(which).toList();
        if (!some.isEmpty()) {
            doubts.add("samples: " + some.size() + (some.size() == 1 ? " is " : " are ") + text + " (" + named(some)
                    + ")");
        }
    }

    private static String named(List<Sample> some) {
        return Names.first(
                some.stream()
                        .map(s -> s.name().equals(s.where()) ? s.where() : s.where() + " " + s.name())
                        .toList(),
                MOST_NAMED);
    }

    private static boolean isOutOfSeason(ScenarioInput scenario, Sample sample) {
        Optional<String> state = sample.row().state();
        Optional<LocalDate> date = sample.row().date();
        return date.isPresent()
                && scenario.states().stream()
                        .filter(s -> state.filter(s.name()::equals).isPresent())
                        .anyMatch(s -> !s.months().isEmpty()
                                && !s.months().contains(date.get().getMonthValue()));
    }

    private static void filtered(List<String> doubts, List<Sample> samples) {
        for (Sample filtered : samples) {
            samples.stream()
                    .filter(whole -> isMoreThanWhole(filtered, whole))
                    .findFirst()
                    .ifPresent(whole -> doubts.add("samples: " + named(List.of(filtered)) + ", filtered, is above "
                            + named(List.of(whole)) + ", whole, of the same place and day; the filtered part cannot be"
                            + " more than the whole: are bottles swapped, or is the filter contaminated?"));
        }
    }

    private static boolean isMoreThanWhole(Sample filtered, Sample whole) {
        Finding part = filtered.row().finding().orElseThrow();
        Finding all = whole.row().finding().orElseThrow();
        boolean pair = part.fraction() == Fraction.FILTERED
                && all.fraction() == Fraction.WHOLE
                && part.medium() == Medium.SURFACE_WATER
                && all.medium() == Medium.SURFACE_WATER
                && part.substance() == all.substance()
                && part.reported().kind() != Kind.BELOW
                && all.reported().kind() != Kind.ABOVE
                && part.reported().value() > SCATTER * all.reported().value();
        return pair
                && filtered.row().date().isPresent()
                && filtered.row().date().equals(whole.row().date())
                && filtered.row().time().equals(whole.row().time())
                && isSamePlace(filtered, whole);
    }

    private static boolean isSamePlace(Sample one, Sample other) {
        return one.position().isPresent() && other.position().isPresent()
                ? one.position().equals(other.position())
                : !one.row().station().isEmpty()
                        && one.row().station().equals(other.row().station());
    }
}
