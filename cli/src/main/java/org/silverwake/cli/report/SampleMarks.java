// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.place.LocatedPoint.OnReach;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported;
import org.silverwake.model.sample.SampleAnswer;
import org.silverwake.model.sample.SampleVerdict;
import org.silverwake.model.screening.Guideline;

/** Field samples as they are drawn: on the map of their state and medium, on profiles where they were taken. */
final class SampleMarks {
    private static final double FAR = 10;
    private static final double KILOMETER = 1000;
    private static final double NANOGRAMS_PER_LITER = 1e9;
    /** As many stand on one another on a map. */
    private static final int MOST_AT_A_PLACE = 3;

    private static final String NOT_KNOWN = "*";

    private final Outcome outcome;

    SampleMarks(Outcome outcome) {
        this.outcome = outcome;
    }

    /**
     * Samples of a guideline's medium in a state (negative: in all), the worst last so that it stands on top: above the value
     * over can't tell over not above, then by the number. Of many at one place the worst three are drawn; the topmost says how
     * many more there are.
     */
    List<MapPoint> onMap(Guideline guideline, int state) {
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        Map<List<Double>, List<MapPoint>> places = new LinkedHashMap<>();
        outcome.compared().stream()
                .filter(s -> isShown(s, guideline, state))
                .sorted(Comparator.comparingInt((ComparedSample s) -> badness(answer(s, guideline)))
                        .thenComparingDouble(s -> finding(s).reported().value()))
                .map(s -> point(s, guideline, factor))
                .forEach(p -> places.computeIfAbsent(List.of(p.longitude(), p.latitude()), k -> new ArrayList<>())
                        .add(p));
        return places.values().stream().flatMap(list -> worst(list).stream()).toList();
    }

    private static List<MapPoint> worst(List<MapPoint> place) {
        int more = place.size() - MOST_AT_A_PLACE;
        if (more <= 0) {
            return place;
        }
        List<MapPoint> kept = new ArrayList<>(place.subList(more, place.size() - 1));
        MapPoint top = place.get(place.size() - 1);
        kept.add(new MapPoint(
                top.kind(), top.label() + " (and " + more + " more)", top.longitude(), top.latitude(), top.color()));
        return kept;
    }

    private static int badness(SampleAnswer answer) {
        return switch (answer) {
            case NOT_ABOVE -> 0;
            case CANNOT_TELL -> 1;
            case ABOVE -> 2;
        };
    }

    private static SampleAnswer answer(ComparedSample sample, Guideline guideline) {
        return finding(sample)
                .against(guideline, false)
                .map(SampleVerdict::answer)
                .orElse(SampleAnswer.CANNOT_TELL);
    }

    /** What is a value of the same, and what is above though it is but a part of it. */
    private static boolean isShown(ComparedSample sample, Guideline guideline, int state) {
        return sample.located().at().isPresent()
                && (finding(sample).matches(guideline) || answer(sample, guideline) == SampleAnswer.ABOVE)
                && (state < 0 || sample.states().contains(state));
    }

    /** A sentence where the flow state of some sample is not known, so that it stands on every state's map. */
    String remark(Guideline guideline, int state) {
        boolean some = state >= 0
                && outcome.compared().stream()
                        .anyMatch(s -> isShown(s, guideline, state) && label(s).endsWith(NOT_KNOWN));
        return some ? " Samples marked " + NOT_KNOWN + " do not say in which flow state they were taken." : "";
    }

    private MapPoint point(ComparedSample sample, Guideline guideline, double factor) {
        OnReach at = sample.located().at().orElseThrow();
        Reported reported = finding(sample).reported();
        SampleAnswer answer = answer(sample, guideline);
        MapPoint.Kind kind = answer == SampleAnswer.CANNOT_TELL
                ? MapPoint.Kind.SAMPLE_CANNOT_TELL
                : reported.kind() == Reported.Kind.BELOW ? MapPoint.Kind.SAMPLE_BELOW_LIMIT : MapPoint.Kind.SAMPLE;
        String color = kind == MapPoint.Kind.SAMPLE ? color(reported.value() / guideline.value(), factor) : "";
        return new MapPoint(kind, label(sample), at.longitude(), at.latitude(), color);
    }

    /** The color that reaches have on the same scale of ratios. */
    private static String color(double ratio, double factor) {
        ReachShade shade;
        if (ratio > FAR * factor) {
            shade = ReachShade.FAR_ABOVE;
        } else if (ratio > factor) {
            shade = ReachShade.ABOVE;
        } else if (ratio > 1) {
            shade = ReachShade.LIKELY_ABOVE;
        } else {
            shade = ratio >= 1 / factor ? ReachShade.MAY_BE_ABOVE : ReachShade.BELOW;
        }
        return shade.withLegend("").color();
    }

    private String label(ComparedSample sample) {
        Sample of = sample.located().sample();
        String name = of.row().code().isEmpty() ? of.row().station() : of.row().code();
        boolean unknown = sample.stateWords().startsWith("not known")
                && outcome.scenario().states().size() > 1;
        return unknown ? name + NOT_KNOWN : name;
    }

    /**
     * Samples of river water along a path.
     *
     * @param starts distance from the path's start to the head of each of its reaches [m]
     * @param shown which are drawn
     */
    List<Profile.Sample> onProfile(Map<Integer, Double> starts, int state, Predicate<Finding> shown) {
        List<Profile.Sample> samples = new ArrayList<>();
        for (ComparedSample each : outcome.compared()) {
            Finding finding = finding(each);
            Optional<OnReach> at = each.located().at();
            boolean drawn = at.isPresent() && each.states().contains(state) && shown.test(finding);
            if (!drawn) {
                continue;
            }
            Double start =
                    starts.get(outcome.basin().network().reachOfInput(at.get().reach()));
            if (start != null) {
                samples.add(new Profile.Sample(
                        (start + at.get().reachMeters()) / KILOMETER,
                        finding.reported().value() * NANOGRAMS_PER_LITER,
                        kind(finding.reported()),
                        label(each)));
            }
        }
        return samples;
    }

    private static Profile.Sample.Kind kind(Reported reported) {
        return switch (reported.kind()) {
            case DETECTED, ESTIMATED -> Profile.Sample.Kind.VALUE;
            case BELOW -> Profile.Sample.Kind.BELOW;
            case ABOVE -> Profile.Sample.Kind.ABOVE;
        };
    }

    private static Finding finding(ComparedSample sample) {
        return sample.located().sample().row().finding().orElseThrow();
    }
}
