// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.Carried;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.Outfall;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.TransportInput;

/** Cyanide of the sites for which it is given, down the river that mercury goes down. */
final class CyanideStep {
    private CyanideStep() {}

    /** Carries it; empty where no site's cyanide is given. */
    static Optional<Cyanide> run(ScenarioInput scenario, Basin basin, TransportInput river) {
        List<Cyanide.Release> releases = new ArrayList<>();
        for (int i = 0; i < scenario.sites().size(); i++) {
            Site site = scenario.sites().get(i);
            int reach = basin.reachAt(basin.points("site").get(i));
            site.cyanide()
                    .ifPresent(rates -> releases.add(new Cyanide.Release(
                            site.name(), reach, rates, site.water(), site.outfall() == Outfall.BANK)));
        }
        if (releases.isEmpty()) {
            return Optional.empty();
        }
        FirstOrder loss = new FirstOrder(
                ChemistryStep.varying(scenario, "cyanide.loss-rate"),
                scenario.settings().value("cyanide.loss-theta"),
                false);
        List<Double> celsius = scenario.states().stream()
                .map(ScenarioInput.FlowState::temperature)
                .toList();
        return Optional.of(Cyanide.run(
                river,
                releases,
                new Cyanide.Fate(loss, celsius, scenario.settings().value("cyanide.free-share"))));
    }

    /** Reaches at and below leach tanks of which no cyanide is given. */
    static BitSet notGiven(ScenarioInput scenario, Basin basin) {
        BitSet tanks = new BitSet();
        for (int i = 0; i < scenario.sites().size(); i++) {
            if (Carried.isWithoutItsCyanide(scenario.sites().get(i))) {
                tanks.set(basin.reachAt(basin.points("site").get(i)));
            }
        }
        return basin.network().below(tanks);
    }

    /** What is to be said of it. */
    static List<String> warnings(ScenarioInput scenario, Optional<Cyanide> cyanide, Screening screening) {
        List<String> warnings = new ArrayList<>();
        if (cyanide.isEmpty()) {
            return warnings;
        }
        if (screening.compared().stream()
                .noneMatch(g -> g.observable().substance().isCyanide())) {
            warnings.add("cyanide is given, but none of the chosen guideline values is one of cyanide; add"
                    + " USEPA-CN-acute or another to guidelines.use (silverwake guidelines lists them)");
        }
        for (int s = 0; s < scenario.states().size(); s++) {
            String state = scenario.states().get(s).name();
            double number = cyanide.get().result().dispersionNumber(s);
            if (number > MainRun.DISPERSION_SHOWS) {
                warnings.add(state + ": k D/U^2 of cyanide is " + number
                        + "; above 0.05 dispersion, which this model leaves out, shows in the answer");
            }
            if (cyanide.get().balance(s).sum(Balance.Process.HELD_DRY) > 0) {
                warnings.add(
                        state + ": cyanide comes to where there is no water; it is counted as held dry and not carried"
                                + " on when water comes back");
            }
        }
        return warnings;
    }
}
