// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.FormChecks;
import org.silverwake.model.transport.SteadyResult;

/** What must be known of the further forms of mercury of a run. */
public final class FormNotes {
    private static final int NAMED = 5;

    private FormNotes() {}

    /** What the checks after the sweep found, one line each. */
    static List<String> warnings(ScenarioInput scenario, Basin basin, SteadyResult result) {
        List<String> warnings = new ArrayList<>();
        FormChecks checks = new FormChecks(result);
        for (int s = 0; s < scenario.states().size(); s++) {
            String state = scenario.states().get(s).name();
            listed(
                    warnings,
                    basin,
                    state,
                    checks.nearlySaturated(s),
                    "dissolved Hg(0) is above a tenth of its solubility, so droplets dissolve more slowly there than computed");
            listed(
                    warnings,
                    basin,
                    state,
                    checks.heldDepth(s),
                    "the depth was held within the range of the formula by which Hg(0) goes to the air");
            listed(
                    warnings,
                    basin,
                    state,
                    checks.strangeVelocity(s),
                    "the velocity is outside the range of the formula by which Hg(0) goes to the air, and was used as it is");
        }
        return warnings;
    }

    private static void listed(List<String> warnings, Basin basin, String state, BitSet reaches, String what) {
        int count = reaches.cardinality();
        if (count > 0) {
            List<String> ids =
                    reaches.stream().mapToObj(r -> basin.reach(r).id()).toList();
            int more = count - NAMED;
            warnings.add(state + ": in " + count + (count == 1 ? " reach " : " reaches ") + what + ": "
                    + String.join(", ", ids.subList(0, Math.min(NAMED, count)))
                    + (more > 0 ? " and " + more + " more (run.json)" : ""));
        }
    }

    /** What stands on every map, one sentence each. */
    public static List<String> cautions(SteadyResult result) {
        List<String> cautions = new ArrayList<>();
        StateLayout layout = result.input().layout();
        if (IntStream.range(0, layout.count()).anyMatch(form -> !layout.isSampled(form))) {
            cautions.add("Mercury droplets above 63 um are left out of values of water, as samples miss them.");
        }
        FormChecks checks = new FormChecks(result);
        if (IntStream.range(0, result.input().stateCount())
                .anyMatch(s -> !checks.nearlySaturated(s).isEmpty())) {
            cautions.add("In places droplets dissolve more slowly than computed: Hg(0) nears its solubility.");
        }
        return cautions;
    }
}
