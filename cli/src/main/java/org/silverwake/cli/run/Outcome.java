// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.Water;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyRun;

/**
 * Everything a run found, before it is written.
 *
 * @param scenario what was asked
 * @param basin the river
 * @param water its water
 * @param result solids and mercury
 * @param cyanide cyanide; empty where no site's is given
 * @param screening the answers
 * @param classes classes of reaches that choose guideline values
 * @param years river and bed through the years, where the scenario has a history
 * @param fish fish, where the scenario has to do with them
 * @param gaps "no national value" lines
 * @param breaks where mercury leaves the network though water may go on
 * @param changeOnHalving what cutting cells once more in two changes
 * @param samples every row of the laboratories' tables, and where it lies
 * @param compared understood samples beside the model
 * @param warnings one line each
 */
public record Outcome(
        ScenarioInput scenario,
        Basin basin,
        Water water,
        SteadyResult result,
        Optional<Cyanide> cyanide,
        Screening screening,
        ReachClasses classes,
        Optional<YearsRun> years,
        Optional<FishRun> fish,
        List<String> gaps,
        Breaks breaks,
        SteadyRun.Change changeOnHalving,
        List<LocatedSample> samples,
        List<ComparedSample> compared,
        List<String> warnings) {
    /** Copies the lists. */
    public Outcome {
        gaps = List.copyOf(gaps);
        samples = List.copyOf(samples);
        compared = List.copyOf(compared);
        warnings = List.copyOf(warnings);
    }

    /** The same as everybody may see it: whatever the scenario said, sheets and page show no single site. */
    public Outcome forEverybody() {
        return new Outcome(
                scenario.forEverybody(),
                basin,
                water,
                result,
                cyanide,
                screening,
                classes,
                years,
                fish,
                gaps,
                breaks,
                changeOnHalving,
                samples,
                compared,
                warnings);
    }
}
