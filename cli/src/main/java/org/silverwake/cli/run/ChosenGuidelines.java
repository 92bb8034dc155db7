// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.screening.Guideline;

/** The guideline values that a scenario is compared with, for those who plan before a run. */
public final class ChosenGuidelines {
    private ChosenGuidelines() {}

    /** By id, then by jurisdiction, each once. */
    public static List<Guideline> of(ScenarioInput scenario) {
        return ScreeningStep.chosen(scenario, new ArrayList<>());
    }
}
