// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.screening.Substance;

/** What a scenario's river carries, mercury and cyanide. */
public final class Carried {
    private Carried() {}

    /** Substances in the water. */
    public static Set<Substance> substances(ScenarioInput scenario) {
        return substances(scenario.mercury(), scenario.sites());
    }

    static Set<Substance> substances(Mercury mercury, List<Site> sites) {
        Set<Substance> carried = mercury.substances();
        if (sites.stream().anyMatch(site -> site.cyanide().isPresent())) {
            carried.add(Substance.WAD_CYANIDE);
            carried.add(Substance.FREE_CYANIDE);
        }
        return carried;
    }

    /** Whether a site is a leach tank whose cyanide nobody gave. */
    public static boolean isWithoutItsCyanide(Site site) {
        return site.path() == ReleasePath.LEACH_TANK && site.cyanide().isEmpty();
    }
}
