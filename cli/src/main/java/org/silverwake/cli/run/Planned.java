// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.planning.CostCurve;
import org.silverwake.model.planning.Cut;
import org.silverwake.model.planning.Limit;
import org.silverwake.model.planning.Option;
import org.silverwake.model.planning.PlanRange;
import org.silverwake.model.screening.Guideline;

/**
 * What a search for the cheapest set of practices found.
 *
 * @param outcome the run at present
 * @param choices what can be done, in the order of the plans' shares
 * @param held what is to be reached, in the order of the plans' outcomes
 * @param plans the cheapest sets
 * @param curve what each budget buys
 * @param equalCut by how much all sites' releases would have to fall alike
 * @param cheapestCut cuts by site at the least cost of the kilograms that the practices keep out; empty where no practice
 *     tells of some site
 */
public record Planned(
        Outcome outcome,
        List<Choice> choices,
        List<Held> held,
        PlanRange plans,
        CostCurve curve,
        Cut equalCut,
        Optional<Cut> cheapestCut) {
    /** Copies the lists. */
    public Planned {
        choices = List.copyOf(choices);
        held = List.copyOf(held);
    }

    /** One practice at a site, or several together. */
    public record Choice(List<OfferedPractice> offered, Site site, Option option) {
        /** Copies the list. */
        public Choice {
            offered = List.copyOf(offered);
        }
    }

    /**
     * A value that is to be reached.
     *
     * @param place its place in the scenario's list of places
     * @param guideline the value
     * @param state a flow state alone; -1 for all as the value asks
     * @param limit as the search takes it [kg/m3 or kg/kg]
     */
    public record Held(int place, Guideline guideline, int state, Limit limit) {}
}
