// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.sample.AgreementSummary;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported;

/** Samples in counts: by what was measured, and printed. It says how near model and samples are, never that one proves the other. */
public final class SampleSummary {
    private static final int MOST_PRINTED = 12;

    private SampleSummary() {}

    /**
     * Counts of one kind of sample.
     *
     * @param words what was measured
     * @param counts of those compared
     * @param notCompared how many are not
     * @param above how many are above a guideline value
     * @param againstEstimate how many of those where the estimate says below
     */
    record Line(String words, AgreementSummary counts, long notCompared, long above, long againstEstimate) {}

    /**
     * Samples of one station and kind.
     *
     * @param station its name, or else its place
     * @param finding any of them
     * @param values all of them
     */
    record Group(String station, Finding finding, List<Reported> values) {
        long limits() {
            return values.stream().filter(v -> !v.isDetected()).count();
        }
    }

    static List<Line> of(Outcome outcome) {
        Map<String, List<ComparedSample>> kinds = new TreeMap<>();
        for (ComparedSample each : outcome.compared()) {
            kinds.computeIfAbsent(finding(each).words(), k -> new ArrayList<>()).add(each);
        }
        List<Line> lines = new ArrayList<>();
        kinds.forEach((words, samples) -> lines.add(line(outcome, words, samples)));
        if (lines.size() > 1) {
            lines.add(line(outcome, "all", outcome.compared()));
        }
        return lines;
    }

    private static Line line(Outcome outcome, String words, List<ComparedSample> samples) {
        AgreementSummary counts = AgreementSummary.of(samples.stream()
                .map(ComparedSample::agreement)
                .flatMap(Optional::stream)
                .toList());
        return new Line(
                words,
                counts,
                samples.stream().filter(s -> s.agreement().isEmpty()).count(),
                count(outcome, samples, SampleAgainst::isAbove),
                count(outcome, samples, SampleAgainst::isAgainstEstimate));
    }

    private static long count(Outcome outcome, List<ComparedSample> samples, Predicate<SampleAgainst> which) {
        return samples.stream()
                .filter(s -> SampleAgainst.of(outcome, s).stream().anyMatch(which))
                .count();
    }

    /** Stations with several values of the same kind, none beyond the measuring range. */
    static List<Group> groups(Outcome outcome) {
        Map<List<String>, List<ComparedSample>> groups = new LinkedHashMap<>();
        for (ComparedSample each : outcome.compared()) {
            String station = each.located().sample().row().station();
            if (!station.isEmpty()) {
                groups.computeIfAbsent(List.of(station, finding(each).words()), k -> new ArrayList<>())
                        .add(each);
            }
        }
        List<Group> kept = new ArrayList<>();
        groups.forEach((key, samples) -> {
            List<Reported> values =
                    samples.stream().map(s -> finding(s).reported()).toList();
            if (values.size() > 1 && values.stream().noneMatch(v -> v.kind() == Reported.Kind.ABOVE)) {
                kept.add(new Group(key.get(0), finding(samples.get(0)), values));
            }
        });
        return kept;
    }

    private static Finding finding(ComparedSample sample) {
        return sample.located().sample().row().finding().orElseThrow();
    }

    /** Prints what was understood of the rows, in counts with reasons. */
    public static void understood(List<LocatedSample> samples, PrintWriter print) {
        if (samples.isEmpty()) {
            return;
        }
        Map<Standing, Long> standings = new TreeMap<>(samples.stream()
                .collect(Collectors.groupingBy(s -> s.sample().row().standing(), Collectors.counting())));
        print.println("  samples: " + samples.size() + " rows, "
                + standings.entrySet().stream()
                        .map(e -> e.getValue() + " " + e.getKey().words())
                        .collect(Collectors.joining(", ")));
        Map<String, Long> reasons = new LinkedHashMap<>();
        for (LocatedSample each : samples) {
            String standing = each.sample().row().standing().words() + ": ";
            List<String> own = each.sample().row().reasons();
            if (!own.isEmpty()) {
                reasons.merge(standing + plain(String.join("; ", own)), 1L, Long::sum);
            }
            if (!each.unplaced().isEmpty()) {
                reasons.merge("not placed: " + plain(each.unplaced()), 1L, Long::sum);
            }
        }
        reasons.entrySet().stream()
                .limit(MOST_PRINTED)
                .forEach(e -> print.println("    " + e.getValue() + " " + e.getKey()));
        if (reasons.size() > MOST_PRINTED) {
            print.println("    and " + (reasons.size() - MOST_PRINTED) + " more reasons, row by row in samples.csv");
        }
    }

    /** Reasons that differ in their numbers alone are one. */
    private static String plain(String reason) {
        return reason.replaceAll("as \\S+:\\d+", "as another row");
    }

    /** Prints how near model and samples are. */
    static void compared(Outcome outcome, PrintWriter print) {
        if (outcome.samples().isEmpty()) {
            return;
        }
        understood(outcome.samples(), print);
        print.println("  samples beside the model's range (ratio to the nearest bound, 1 inside; nothing is fitted):");
        for (Line line : of(outcome)) {
            AgreementSummary c = line.counts();
            print.println("    " + line.words() + ": "
                    + (c.detected() == 0
                            ? "none with a number"
                            : c.inside() + " of " + c.detected() + " inside, " + c.within2() + " within 2, "
                                    + c.within5() + " within 5, " + c.within10() + " within 10")
                    + (c.limits() == 0 ? "" : "; " + c.consistent() + " of " + c.limits() + " limits consistent")
                    + (line.notCompared() == 0 ? "" : "; " + line.notCompared() + " not compared"));
        }
        if (groups(outcome).stream().anyMatch(g -> g.limits() > 0)) {
            print.println(
                    "    means with 0, half the limit and the limit in place of \"below\" are in samples-means.csv");
        }
    }
}
