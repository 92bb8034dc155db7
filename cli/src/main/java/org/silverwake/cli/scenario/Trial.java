// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/**
 * What a person tried with the sliders of the report page, so that it can be run: practices taken up besides those in force, sites
 * that release less. Tailings and water change with practices and with closing, not with a site's factor.
 *
 * @param practices share of the sheds that would take it up [-], 0 to 1, by practice
 * @param sites so many times its mercury [-], 0 to 1, by site or group
 * @param closed sites or groups that release neither mercury nor tailings nor water, nor cyanide
 * @param bleeds whether drums that practices put out of use go on losing mercury, which only a river that carries droplets can take
 */
public record Trial(Map<String, Double> practices, Map<String, Double> sites, List<String> closed, boolean bleeds) {
    /** Nothing tried. */
    public static final Trial NONE = new Trial(Map.of(), Map.of(), List.of(), false);

    /** Copies maps and list. */
    public Trial {
        practices = Collections.unmodifiableMap(new LinkedHashMap<>(practices));
        sites = Collections.unmodifiableMap(new LinkedHashMap<>(sites));
        closed = List.copyOf(closed);
    }

    /** Whether nothing is tried. */
    public boolean isEmpty() {
        return practices.isEmpty() && sites.isEmpty() && closed.isEmpty();
    }

    /** Share of the sheds that take a practice up [-], 0 where it is not tried. */
    double share(String practice) {
        return practices.getOrDefault(practice, 0.0);
    }

    /**
     * A discharge point as it is tried.
     *
     * @param site the site as it stands in the table
     * @param point one of its discharge points
     */
    Site at(Site site, Site point) {
        if (closed.contains(site.name()) || closed.contains(site.group())) {
            return SiteChange.closed(point);
        }
        double factor = sites.getOrDefault(site.name(), 1.0)
                * (site.group().equals(site.name()) ? 1 : sites.getOrDefault(site.group(), 1.0));
        return factor == 1 ? point : SiteChange.withMercury(point, factor);
    }

    /** In words, one for each thing that is tried. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        practices.forEach((name, share) -> words.add(name + " in " + Key.show(100 * share) + " % of the sheds"));
        sites.forEach((name, factor) -> words.add(name + " at " + Key.show(factor) + " of its mercury"));
        closed.forEach(name -> words.add(name + " closed"));
        return words;
    }
}
