// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Rerun;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.whatif.Lever.End;
import org.silverwake.cli.whatif.Lever.Full;
import org.silverwake.cli.whatif.Lever.Kilograms;
import org.silverwake.cli.whatif.Lever.Kind;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.OutsideModelException;

/**
 * The levers of a page: of sites, or of groups, each exact for mercury alone, with the deviation where they close altogether; on
 * an office page with single sites also those of practices.
 *
 * @param levers in the order of the page
 * @param together how far all practices at their far ends at once are off a full run
 * @param closedTogether how far all sites or groups that can be closed are off a full run when all of them are
 */
public record Levers(List<Lever> levers, Optional<Deviation> together, Optional<Deviation> closedTogether) {
    /** Cells times runs up to which full runs are made for sites, and again for practices: a second or two (chosen). */
    private static final long MOST_WORK = 15_000;

    /** Copies the list. */
    public Levers {
        levers = List.copyOf(levers);
    }

    /**
     * The levers of a run, with full runs of the river where those are made at all.
     *
     * @param audience practices and single sites are for the office alone
     * @param grouping how far sites were put together
     */
    public static Levers of(Linear linear, Audience audience, Contributors.Grouping grouping) {
        boolean single = audience == Audience.OFFICE && grouping == Contributors.Grouping.NONE;
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int k = 0; k < linear.contributors().size(); k++) {
            Contributor contributor = linear.contributors().get(k);
            rows.computeIfAbsent(
                            single ? contributor.rows().get(0) : contributor.name() + " " + k, row -> new ArrayList<>())
                    .add(k);
        }
        Set<List<Integer>> run = largest(linear, rows.values());
        List<Lever> levers = new ArrayList<>(rows.values().stream().toList().parallelStream()
                .map(of -> ofSource(linear, of, single ? Kind.SITE : Kind.GROUP, run.contains(of)))
                .toList());
        Optional<Deviation> closed = closedTogether(linear, levers);
        if (!single) {
            return new Levers(levers, Optional.empty(), closed);
        }
        PracticeLevers practices = new PracticeLevers(linear);
        levers.addAll(practices.levers());
        return new Levers(levers, practices.together(), closed);
    }

    /** Empty with fewer than two, or where the river cannot be run without them. */
    private static Optional<Deviation> closedTogether(Linear linear, List<Lever> levers) {
        List<Lever> closing =
                levers.stream().filter(lever -> lever.full().isPresent()).toList();
        if (closing.size() < 2) {
            return Optional.empty();
        }
        List<Integer> contributors = closing.stream()
                .flatMap(lever -> lever.ends().stream())
                .map(End::contributor)
                .toList();
        double[] factors = now(linear);
        contributors.forEach(k -> factors[k] = 0);
        try {
            return Optional.of(Deviation.of(
                    linear,
                    factors,
                    closing.stream()
                            .map(lever -> lever.full().orElseThrow().correction())
                            .toList(),
                    1,
                    Rerun.closing(linear.outcome(), points(linear, contributors))));
        } catch (OutsideModelException | ScenarioException e) {
            return Optional.empty();
        }
    }

    /** Whether so many full runs are worth a person's waiting. */
    static boolean isCheap(Linear linear, int runs) {
        return runs <= affordable(linear);
    }

    private static long affordable(Linear linear) {
        return MOST_WORK / Math.max(1, linear.outcome().result().cells().count());
    }

    /** As many sources as can be run, those that release most first. */
    private static Set<List<Integer>> largest(Linear linear, Collection<List<Integer>> sources) {
        return sources.stream()
                .sorted(Comparator.comparingDouble((List<Integer> of) -> -kilograms(linear, points(linear, of))))
                .limit(affordable(linear))
                .collect(Collectors.toSet());
    }

    private static List<Integer> points(Linear linear, List<Integer> contributors) {
        return contributors.stream()
                .flatMap(k -> linear.contributors().get(k).points().stream())
                .toList();
    }

    private static Lever ofSource(Linear linear, List<Integer> contributors, Kind kind, boolean run) {
        List<Integer> points = points(linear, contributors);
        double[] factors = now(linear);
        contributors.forEach(k -> factors[k] = 0);
        return new Lever(
                linear.contributors().get(contributors.get(0)).name(),
                kind,
                contributors.stream().map(k -> new End(k, 0)).toList(),
                true,
                run ? closed(linear, factors, points) : Optional.empty(),
                new Kilograms(kilograms(linear, points), 0),
                Optional.empty(),
                "");
    }

    /** Empty where the river cannot be run without them. */
    private static Optional<Full> closed(Linear linear, double[] factors, List<Integer> points) {
        try {
            Rerun run = Rerun.closing(linear.outcome(), points);
            return Optional.of(new Full(
                    Deviation.of(linear, factors, List.of(), 1, run),
                    Correction.of(linear, factors, run),
                    Optional.empty()));
        } catch (OutsideModelException | ScenarioException e) {
            return Optional.empty();
        }
    }

    /** Mercury of discharge points, mean of the year [kg/yr]. */
    public static double kilograms(Linear linear, List<Integer> points) {
        return points.stream()
                        .mapToDouble(linear.outcome().result().input()::meanRelease)
                        .sum()
                * Quantity.SECONDS_PER_YEAR;
    }

    /** Contributors as they are now. */
    static double[] now(Linear linear) {
        return IntStream.range(0, linear.contributors().size())
                .mapToDouble(k -> 1)
                .toArray();
    }
}
