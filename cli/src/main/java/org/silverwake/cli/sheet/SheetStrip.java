// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.report.Profiles;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.geo.map.WallSheet.Strip;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;

/** One of the scenario's profiles as a strip, where the sheet shows mercury in river water. */
final class SheetStrip {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    /** In public, values are the lowest and highest of so many stretches of one length, so that no step tells where a site is. Chosen. */
    private static final int STRETCHES = 24;

    private final Outcome outcome;
    private final Guideline guideline;
    private final SheetWords words;
    private final Outputs.Profile wanted;

    SheetStrip(Outcome outcome, Guideline guideline, SheetWords words, Outputs.Profile wanted) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.words = words;
        this.wanted = wanted;
    }

    /** What the strip shows, and along which river. */
    String heading() {
        return words.texts().text("strip.heading", wanted.name(), words.medium(guideline));
    }

    Optional<Strip> of(int state, String heading, boolean withSites) {
        boolean isShown = guideline.observable().medium() == Medium.SURFACE_WATER
                && guideline.observable().substance().isMercury();
        if (!isShown) {
            return Optional.empty();
        }
        Profile profile = Profiles.shown(outcome, withSites, wanted, state);
        List<List<Strip.At>> stretches = new ArrayList<>();
        for (Profile.Stretch stretch : profile.stretches()) {
            stretches.add(stretch.points().stream()
                    .map(p -> new Strip.At(p.kilometers(), p.low(), p.high()))
                    .toList());
        }
        if (stretches.stream().allMatch(List::isEmpty)) {
            return Optional.empty();
        }
        List<Strip.Place> places = profile.marks().stream()
                .filter(mark -> mark.kind() == Profile.Mark.Kind.PLACE)
                .sorted(Comparator.comparingDouble(Profile.Mark::kilometers))
                .map(mark -> new Strip.Place(mark.kilometers(), mark.name()))
                .toList();
        double end = stretches.stream()
                .flatMap(List::stream)
                .mapToDouble(Strip.At::kilometers)
                .max()
                .orElse(0);
        return Optional.of(new Strip(
                heading,
                withSites ? stretches : coarse(stretches, end),
                guideline.value() * NANOGRAMS_PER_LITER,
                words.texts().text("strip.guide", words.value(guideline)),
                levels(),
                places,
                words.texts().text("strip.length", words.number(end))));
    }

    /** Powers of ten from a picogram to a milligram in a liter. */
    private List<Strip.Level> levels() {
        return IntStream.rangeClosed(-3, 6)
                .mapToObj(power -> new Strip.Level(
                        Math.pow(10, power), words.value(guideline, Math.pow(10, power) / NANOGRAMS_PER_LITER)))
                .toList();
    }

    private static List<List<Strip.At>> coarse(List<List<Strip.At>> stretches, double end) {
        List<List<Strip.At>> coarse = new ArrayList<>();
        double step = end / STRETCHES;
        for (List<Strip.At> stretch : stretches) {
            List<Strip.At> steps = new ArrayList<>();
            for (int k = 0; k < STRETCHES; k++) {
                double from = k * step;
                List<Strip.At> within = stretch.stream()
                        .filter(at -> at.kilometers() >= from && at.kilometers() <= from + step)
                        .toList();
                if (!within.isEmpty()) {
                    double low =
                            within.stream().mapToDouble(Strip.At::low).min().orElseThrow();
                    double high =
                            within.stream().mapToDouble(Strip.At::high).max().orElseThrow();
                    steps.add(new Strip.At(from, low, high));
                    steps.add(new Strip.At(from + step, low, high));
                }
            }
            coarse.add(steps);
        }
        return coarse;
    }
}
