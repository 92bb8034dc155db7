// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ScreeningRow;

/**
 * Several scenarios of one river, the first being what the others are compared with. A reach of the first is matched by its
 * user's feature and the stretch of it; where another scenario is cut elsewhere, the largest value of water on that stretch
 * is taken, and the mean by length of the bed.
 */
public final class Comparison {
    private static final double OVERLAP = 1; // m

    private final List<NamedOutcome> scenarios;
    private final List<Guideline> guidelines = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<List<List<Piece>>> pieces = new ArrayList<>();

    /** A reach of another scenario, and how much of the first one's it covers [m]. */
    private record Piece(int reach, double meters) {}

    private record Part(String feature, int part) {}

    private Comparison(List<NamedOutcome> scenarios) {
        this.scenarios = List.copyOf(scenarios);
        for (NamedOutcome scenario : scenarios) {
            pieces.add(match(first(), scenario.outcome()));
        }
        chooseGuidelines();
    }

    /**
     * Compares.
     *
     * @param paths where the scenarios came from, to tell equal titles apart
     * @throws ScenarioException if they have not the same flow states, or nothing of the first river is found in another
     */
    public static Comparison of(List<Path> paths, List<Outcome> outcomes) {
        List<NamedOutcome> named = new ArrayList<>();
        List<String> titles =
                outcomes.stream().map(o -> o.scenario().project().title()).toList();
        for (int k = 0; k < outcomes.size(); k++) {
            String title = titles.get(k);
            boolean twice = titles.indexOf(title) != titles.lastIndexOf(title);
            String file =
                    String.valueOf(paths.get(k).toAbsolutePath().normalize().getFileName());
            named.add(new NamedOutcome(twice ? title + " (" + file + ")" : title, outcomes.get(k)));
        }
        requireAlike(named);
        Comparison comparison = new Comparison(named);
        comparison.requireSameRiver();
        return comparison;
    }

    private static void requireAlike(List<NamedOutcome> scenarios) {
        List<String> problems = new ArrayList<>();
        List<String> states = states(scenarios.get(0).outcome());
        for (NamedOutcome other : scenarios.subList(1, scenarios.size())) {
            if (!states(other.outcome()).equals(states)) {
                problems.add(other.name() + ": flow states " + String.join(", ", states(other.outcome()))
                        + " are not those of " + scenarios.get(0).name() + ", " + String.join(", ", states)
                        + "; give all scenarios the same flow states in the same order");
            }
        }
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
    }

    private static List<String> states(Outcome outcome) {
        return outcome.scenario().states().stream()
                .map(ScenarioInput.FlowState::name)
                .toList();
    }

    private void requireSameRiver() {
        List<String> problems = new ArrayList<>();
        for (int k = 1; k < scenarios.size(); k++) {
            long found = pieces.get(k).stream().filter(p -> !p.isEmpty()).count();
            int all = pieces.get(k).size();
            if (found == 0) {
                problems.add(scenarios.get(k).name() + ": none of its features is one of "
                        + scenarios.get(0).name()
                        + "; compare scenarios of one river layer with the same ids (rivers.id)");
            } else if (found < all) {
                notes.add(scenarios.get(k).name() + ": " + (all - found) + " of " + all + " reaches of "
                        + scenarios.get(0).name() + " are not in it and are not compared");
            }
        }
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
    }

    private static List<List<Piece>> match(Outcome first, Outcome other) {
        Map<Part, List<Integer>> byPart = new HashMap<>();
        for (int r = 0; r < other.basin().network().size(); r++) {
            byPart.computeIfAbsent(part(other, r), p -> new ArrayList<>()).add(r);
        }
        List<List<Piece>> matched = new ArrayList<>();
        for (int r = 0; r < first.basin().network().size(); r++) {
            var own = first.basin().reach(r).part();
            List<Piece> found = new ArrayList<>();
            double covers = Math.min(OVERLAP, (own.toMeters() - own.fromMeters()) / 2);
            for (int candidate : byPart.getOrDefault(part(first, r), List.of())) {
                var there = other.basin().reach(candidate).part();
                double meters =
                        Math.min(own.toMeters(), there.toMeters()) - Math.max(own.fromMeters(), there.fromMeters());
                if (meters > covers) {
                    found.add(new Piece(candidate, meters));
                }
            }
            matched.add(List.copyOf(found));
        }
        return matched;
    }

    private static Part part(Outcome outcome, int reach) {
        var part = outcome.basin().reach(reach).part();
        return new Part(part.featureId(), part.part());
    }

    private void chooseGuidelines() {
        for (Guideline guideline : first().screening().compared()) {
            boolean everywhere = scenarios.stream()
                    .allMatch(s -> s.outcome().screening().compared().contains(guideline)
                            && s.outcome().screening().isModelled(guideline));
            if (everywhere) {
                guidelines.add(guideline);
            } else if (first().screening().isModelled(guideline)) {
                notes.add(guideline.displayName() + " is not assessed in all scenarios and is left out");
            }
        }
    }

    /** All scenarios, the first one first. */
    public List<NamedOutcome> scenarios() {
        return scenarios;
    }

    /** What the others are compared with. */
    public Outcome first() {
        return scenarios.get(0).outcome();
    }

    /** Guideline values that all scenarios are compared with. */
    public List<Guideline> guidelines() {
        return List.copyOf(guidelines);
    }

    /** What could not be compared, one line each. */
    public List<String> notes() {
        return List.copyOf(notes);
    }

    /** Rows of a scenario on the stretch of a reach of the first, as the value asks; empty where it does not apply. */
    private List<ScreeningRow> rows(int scenario, Guideline guideline, int reach) {
        var screening = scenarios.get(scenario).outcome().screening();
        return pieces.get(scenario).get(reach).stream()
                .map(Piece::reach)
                .filter(r -> screening.applies(guideline, r))
                .map(r -> screening.row(guideline, r))
                .toList();
    }

    /** A reach's worst row in a scenario; empty where the value does not apply, or the reach is not there. */
    public Optional<ScreeningRow> worst(int scenario, Guideline guideline, int reach) {
        return rows(scenario, guideline, reach).stream()
                .reduce((a, b) -> b.answer().compareTo(a.answer()) < 0 ? b : a);
    }

    /** Low and high estimate of a scenario on the stretch of a reach of the first; empty where there is none. */
    public Optional<Estimate> estimate(int scenario, Guideline guideline, int reach) {
        boolean mean = guideline.observable().medium() == Medium.BED_SEDIMENT;
        var screening = scenarios.get(scenario).outcome().screening();
        double low = 0;
        double high = 0;
        double length = 0;
        for (Piece piece : pieces.get(scenario).get(reach)) {
            Optional<ScreeningRow.Values> values = screening.applies(guideline, piece.reach())
                    ? screening.row(guideline, piece.reach()).values()
                    : Optional.empty();
            if (values.isPresent()) {
                var band = values.get().band();
                low = mean ? low + band.low() * piece.meters() : Math.max(low, band.low());
                high = mean ? high + band.high() * piece.meters() : Math.max(high, band.high());
                length += piece.meters();
            }
        }
        if (length == 0) {
            return Optional.empty();
        }
        return Optional.of(mean ? new Estimate(low / length, high / length) : new Estimate(low, high));
    }

    /** High estimate of a scenario over that of the first [-]; empty where either has none, or the first is 0. */
    public Optional<Double> change(int scenario, Guideline guideline, int reach) {
        Optional<Estimate> before = estimate(0, guideline, reach).filter(e -> e.high() > 0);
        return before.flatMap(b -> estimate(scenario, guideline, reach).map(after -> after.high() / b.high()));
    }

    /**
     * Estimates.
     *
     * @param low low estimate [kg/m3 or kg/kg]
     * @param high high estimate [kg/m3 or kg/kg]
     */
    public record Estimate(double low, double high) {}
}
