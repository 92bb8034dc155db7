// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;

/** Which guideline is drawn by default. */
public final class Shown {
    private Shown() {}

    /**
     * The scenario's own choice; else the first mercury value of filtered surface water that was chosen, else of whole water,
     * else of other substances of water, else of any medium compared with every reach. Empty where there is none.
     *
     * @throws ScenarioException if the scenario's choice is not among the guidelines used
     */
    public static Optional<Guideline> guideline(Outcome outcome) {
        List<Guideline> drawable = drawable(outcome);
        Optional<String> asked = outcome.scenario().outputs().mapGuideline();
        if (asked.isPresent()) {
            Optional<Guideline> found =
                    drawable.stream().filter(g -> g.id().equals(asked.get())).findFirst();
            if (found.isEmpty()) {
                throw new ScenarioException(List.of("scenario.yaml outputs.map.guideline: " + asked.get()
                        + " is not compared with reaches here; "
                        + (drawable.isEmpty()
                                ? "none of the chosen guidelines is: add one to guidelines.use (silverwake guidelines lists them)"
                                : "give one of "
                                        + String.join(
                                                ", ",
                                                drawable.stream()
                                                        .map(Guideline::id)
                                                        .toList()))));
            }
            requireMedium(outcome, found.get());
            return found;
        }
        List<Guideline> mercury = drawable.stream()
                .filter(g -> g.observable().substance().isMercury())
                .toList();
        return mercury.stream()
                .filter(g -> g.observable().fraction() == Fraction.FILTERED)
                .findFirst()
                .or(() -> mercury.stream()
                        .filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                        .findFirst())
                .or(() -> drawable.stream()
                        .filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                        .findFirst())
                .or(() -> drawable.stream().findFirst());
    }

    private static void requireMedium(Outcome outcome, Guideline guideline) {
        String medium = guideline.observable().medium().word();
        outcome.scenario().outputs().mapMedium().filter(m -> !m.equals(medium)).ifPresent(m -> {
            throw new ScenarioException(List.of("scenario.yaml outputs.map.medium: " + m + " is not what "
                    + guideline.id() + " is a value of; give " + medium + ", or another guideline"));
        });
    }

    /** Guidelines compared with every reach whose medium is modelled. */
    public static List<Guideline> drawable(Outcome outcome) {
        return outcome.screening().compared().stream()
                .filter(outcome.screening()::isOfReaches)
                .toList();
    }
}
