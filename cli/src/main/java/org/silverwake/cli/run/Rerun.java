// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Optional;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyRun;
import org.silverwake.model.transport.TransportInput;

/**
 * The steady run again with other practices at its sites: their mercury, their solids and their water, the river and what is
 * screened of it all the same.
 *
 * @param scenario with the discharge points that were run
 * @param result what the run found
 * @param screening what it answers
 */
public record Rerun(ScenarioInput scenario, SteadyResult result, Screening screening) {
    /**
     * Runs.
     *
     * @param outcome the run whose river it is
     * @param taken which practices each site has taken up
     * @throws org.silverwake.model.transport.OutsideModelException if solids or water lie outside the model
     */
    public static Rerun of(Outcome outcome, NotedSites.Taken taken) {
        ScenarioInput asked = outcome.scenario();
        ScenarioInput scenario = asked.withSites(
                NotedSites.expand(asked.fieldNotes(), taken, asked.fieldNotes().year()));
        Basin basin = outcome.basin();
        return of(outcome, scenario, MercuryStep.input(scenario, basin, WaterStep.run(scenario, basin)));
    }

    /** The run as it was. */
    static Rerun present(Outcome outcome) {
        return new Rerun(outcome.scenario(), outcome.result(), outcome.screening());
    }

    /** Runs the same river with other input. */
    static Rerun of(Outcome outcome, TransportInput input) {
        return of(outcome, outcome.scenario(), input);
    }

    private static Rerun of(Outcome outcome, ScenarioInput scenario, TransportInput input) {
        Basin basin = outcome.basin();
        SteadyResult result = SteadyRun.run(input);
        Optional<FishRun> fish = outcome.fish().isPresent()
                ? FishStep.run(scenario, basin, result, outcome.samples(), new ArrayList<>())
                : Optional.empty();
        Screening screening = ScreeningStep.run(
                        scenario,
                        basin,
                        result,
                        Optional.empty(),
                        outcome.classes(),
                        Breaks.of(scenario, basin, result),
                        fish)
                .screening();
        return new Rerun(scenario, result, screening);
    }
}
