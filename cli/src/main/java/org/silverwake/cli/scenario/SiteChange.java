// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.Effluent;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.ScenarioInput.Tailings;

/** A discharge point that releases otherwise, the same place all the same. */
public final class SiteChange {
    private SiteChange() {}

    /** Closed: neither mercury nor tailings nor water, nor cyanide. */
    public static Site closed(Site site) {
        return with(
                site,
                site.mercury().map(SiteChange::none),
                site.tailings().map(t -> new Tailings(none(t.mass()), t.content())),
                site.effluent().map(e -> new Effluent(none(e.flow()), e.concentration())),
                Optional.of(none(site.water())),
                none(site.water()));
    }

    private static List<Double> none(List<Double> rates) {
        return Collections.nCopies(rates.size(), 0.0);
    }

    /**
     * With so many times its mercury; tailings and water stay.
     *
     * @param factor of the mercury [-], at least 0
     */
    static Site withMercury(Site site, double factor) {
        return with(
                site,
                site.mercury().map(rates -> rates.stream().map(r -> factor * r).toList()),
                site.tailings().map(t -> new Tailings(t.mass(), factor * t.content())),
                site.effluent().map(e -> new Effluent(e.flow(), factor * e.concentration())),
                site.cyanide(),
                site.water());
    }

    private static Site with(
            Site site,
            Optional<List<Double>> mercury,
            Optional<Tailings> tailings,
            Optional<Effluent> effluent,
            Optional<List<Double>> cyanide,
            List<Double> water) {
        return new Site(
                site.where(),
                site.name(),
                site.group(),
                site.position(),
                site.path(),
                mercury,
                tailings,
                effluent,
                cyanide,
                site.exchangeableShare(),
                site.furtherShares(),
                site.classShares(),
                water,
                site.outfall(),
                site.riverName(),
                site.note());
    }
}
