// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.SiteChange;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.release.Practice;
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

    /**
     * Runs with some practices more than are in force, as in their first year, at the sites that have notes.
     *
     * @param share of those who would take them up [-], 0 to 1
     */
    public static Rerun taking(Outcome outcome, Collection<OfferedPractice> more, double share) {
        return of(outcome, withMore(outcome, more, share));
    }

    /** What is released then, without running it; water is still routed as now. */
    public static TransportInput released(Outcome outcome, Collection<OfferedPractice> more) {
        FieldNotesPlan plan = outcome.scenario().fieldNotes();
        List<Site> sites = NotedSites.expand(plan, withMore(outcome, more, 1), plan.year());
        return outcome.result().input().withSites(MercuryStep.releases(outcome.scenario(), outcome.basin(), sites));
    }

    /** A practice as in its first year, taken up by a share of those who would [-]. */
    public static Practice inFirstYear(ScenarioInput scenario, Practice practice, double share) {
        return PlanRun.inFirstYear(scenario, practice, share);
    }

    private static NotedSites.Taken withMore(Outcome outcome, Collection<OfferedPractice> more, double share) {
        FieldNotesPlan plan = outcome.scenario().fieldNotes();
        return site -> {
            List<Practice> taken = new ArrayList<>(NotedSites.inForce(plan).by(site));
            if (NotedSites.find(plan, site).flatMap(NotedSite::notes).isPresent()) {
                more.stream()
                        .filter(offered -> offered.isFor(site) && !plan.isInForce(offered, site))
                        .forEach(offered -> taken.add(inFirstYear(outcome.scenario(), offered.practice(), share)));
            }
            return taken;
        };
    }

    /**
     * Runs without some discharge points: neither their mercury nor their tailings nor their water.
     *
     * @param points their places in the scenario's list of sites
     */
    public static Rerun closing(Outcome outcome, Collection<Integer> points) {
        List<Site> sites = new ArrayList<>(outcome.scenario().sites());
        points.forEach(i -> sites.set(i, SiteChange.closed(sites.get(i))));
        return of(outcome, sites);
    }

    private static Rerun of(Outcome outcome, List<Site> sites) {
        ScenarioInput scenario = outcome.scenario().withSites(sites);
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
