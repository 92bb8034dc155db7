// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.place.LocatedPoint.OnReach;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.SampleAnswer;
import org.silverwake.model.sample.SampleVerdict;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Screening;

/**
 * A sample held against a guideline value, beside what the estimate says of the same place. A sample is above or it is not;
 * where it is, an estimate of "below" does not stand, and a summary must say so first.
 *
 * @param sample the sample
 * @param guideline the value
 * @param verdict how the sample stands to it
 * @param estimate the estimate's worst answer there in the sample's flow states; empty where the value is not compared there
 */
record SampleAgainst(ComparedSample sample, Guideline guideline, SampleVerdict verdict, Optional<Answer> estimate) {
    /** So far above a place, along the river, a sample still speaks of its water: common practice, no source [m]. */
    private static final double NEAR = 500;

    private static final int MOST_NAMED = 8;

    /** Every value that a sample says something of. */
    static List<SampleAgainst> of(Outcome outcome, ComparedSample sample) {
        List<SampleAgainst> all = new ArrayList<>();
        Finding finding = sample.located().sample().row().finding().orElseThrow();
        for (Guideline guideline : outcome.screening().compared()) {
            boolean drinking = guideline.scope() == Medium.Scope.DRINKING_PLACE;
            OptionalInt reach = reach(outcome, sample, guideline);
            finding.against(guideline, drinking && reach.isPresent())
                    .ifPresent(verdict -> all.add(new SampleAgainst(
                            sample, guideline, verdict, estimate(outcome, sample, guideline, reach))));
        }
        return List.copyOf(all);
    }

    /** The reach of the sample, or the next one if a place where the value is compared lies close below. */
    private static OptionalInt reach(Outcome outcome, ComparedSample sample, Guideline guideline) {
        Optional<OnReach> at = sample.located().at();
        if (at.isEmpty()) {
            return OptionalInt.empty();
        }
        Screening screening = outcome.screening();
        RiverNetwork network = outcome.basin().network();
        int own = network.reachOfInput(at.get().reach());
        if (screening.applies(guideline, own)) {
            return OptionalInt.of(own);
        }
        int node = network.toNode(own);
        boolean close = outcome.basin().table().length(own) - at.get().reachMeters() <= NEAR;
        for (int k = 0; close && k < network.outCount(node); k++) {
            if (guideline.scope() == Medium.Scope.DRINKING_PLACE
                    && screening.applies(guideline, network.out(node, k))) {
                return OptionalInt.of(network.out(node, k));
            }
        }
        return OptionalInt.empty();
    }

    private static Optional<Answer> estimate(
            Outcome outcome, ComparedSample sample, Guideline guideline, OptionalInt reach) {
        return reach.isEmpty()
                ? Optional.empty()
                : sample.states().stream()
                        .map(s -> outcome.screening()
                                .inState(guideline, reach.getAsInt(), s)
                                .answer())
                        .min(Answer::compareTo);
    }

    boolean isAbove() {
        return verdict.answer() == SampleAnswer.ABOVE;
    }

    /** Whether the sample is above the value where the estimate says below. */
    boolean isAgainstEstimate() {
        return isAbove()
                && estimate.filter(a -> a == Answer.BELOW_BY_THIS_ESTIMATE).isPresent();
    }

    /** "A1 at Glimmer Weir". */
    String name() {
        String code = sample.located().sample().name();
        String station = sample.located().sample().row().station();
        return station.isEmpty() || code.contains(station) ? code : code + " at " + station;
    }

    /** What a summary says right below the people: how many samples are above a value, and which of them against the estimate. */
    static List<String> lines(Outcome outcome) {
        List<SampleAgainst> held = new ArrayList<>();
        outcome.compared().forEach(s -> held.addAll(of(outcome, s)));
        if (held.isEmpty()) {
            return List.of();
        }
        List<SampleAgainst> against =
                held.stream().filter(SampleAgainst::isAgainstEstimate).toList();
        List<String> lines = new ArrayList<>();
        lines.add("samples above a value where the estimate says below: " + named(against, true));
        if (!against.isEmpty()) {
            lines.add(
                    "  a sample outranks the estimate: take these places as above the value, whatever the answers before this line");
        }
        lines.add("samples above a value in all: "
                + samples(held.stream().filter(SampleAgainst::isAbove).toList()) + " of " + samples(held)
                + " that are held against one");
        return lines;
    }

    /** A line for a map where samples are above its value though the estimate says below; empty elsewhere. */
    static Optional<String> forMap(Outcome outcome, Guideline guideline, OptionalInt state) {
        List<SampleAgainst> against = outcome.compared().stream()
                .filter(s -> state.isEmpty() || s.states().contains(state.getAsInt()))
                .flatMap(s -> of(outcome, s).stream())
                .filter(a -> a.guideline().equals(guideline) && a.isAgainstEstimate())
                .toList();
        return against.isEmpty()
                ? Optional.empty()
                : Optional.of("Samples above it where the estimate says below: " + named(against, false));
    }

    private static long samples(List<SampleAgainst> list) {
        return list.stream().map(SampleAgainst::sample).distinct().count();
    }

    /** "2 (A1 at Tallowby: CCME-FW-iHg; ...)". */
    private static String named(List<SampleAgainst> against, boolean values) {
        if (against.isEmpty()) {
            return "0";
        }
        List<ComparedSample> samples =
                against.stream().map(SampleAgainst::sample).distinct().toList();
        String names = samples.stream()
                .limit(MOST_NAMED)
                .map(s -> against.stream().filter(a -> a.sample().equals(s)).toList())
                .map(list -> list.get(0).name() + (values ? ": " + ids(list) : ""))
                .collect(Collectors.joining("; "));
        int more = samples.size() - MOST_NAMED;
        return samples.size() + " (" + names + (more > 0 ? "; and " + more + " more" : "") + ")";
    }

    private static String ids(List<SampleAgainst> list) {
        return list.stream().map(a -> a.guideline().displayName()).collect(Collectors.joining(", "));
    }
}
