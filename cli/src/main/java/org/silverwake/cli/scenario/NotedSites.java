// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.ScenarioInput.Effluent;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.ScenarioInput.Tailings;
import org.silverwake.model.release.PathRelease;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.Spread;

/** From field notes to discharge points: one for each path by which a site's mercury gets to the river. */
public final class NotedSites {
    private static final double ROUNDING = 1e-9;

    private NotedSites() {}

    /** Which practices a site has taken up. */
    @FunctionalInterface
    public interface Taken {
        /** The practices, in order. */
        List<Practice> by(Site site);
    }

    /** Those that are in force, those tried behind them. */
    public static Taken inForce(FieldNotesPlan plan) {
        return site -> Stream.of(true, false)
                .flatMap(given -> plan.practices().stream()
                        .filter(offered -> plan.isInForce(offered, site))
                        .filter(offered -> plan.isGiven(offered, site) == given))
                .map(offered -> plan.taken(offered, site))
                .toList();
    }

    /**
     * Discharge points of a year, as they are tried. Sites without notes stay as they are in the table otherwise.
     *
     * @throws org.silverwake.model.release.NotesException if some notes allow no balance
     */
    public static List<Site> expand(FieldNotesPlan plan, Taken taken, int year) {
        List<Site> expanded = new ArrayList<>();
        for (Site site : plan.sites()) {
            Optional<NotedSite> noted = find(plan, site);
            List<Site> points = noted.isEmpty()
                    ? List.of(site)
                    : points(site, noted.get().balance(taken.by(site), year), plan.level());
            points.forEach(point -> expanded.add(plan.trial().at(site, point)));
        }
        return expanded;
    }

    /** The notes of a site, if there are any. */
    public static Optional<NotedSite> find(FieldNotesPlan plan, Site site) {
        return plan.noted().stream().filter(n -> n.site().equals(site.name())).findFirst();
    }

    /** The balance of a site in the year that is run, with the practices in force there; empty without notes. */
    public static Optional<SiteBalance> balance(FieldNotesPlan plan, Site site) {
        return find(plan, site).map(noted -> noted.balance(inForce(plan).by(site), plan.year()));
    }

    private static List<Site> points(Site site, SiteBalance balance, Spread.Level level) {
        List<Site> points = new ArrayList<>();
        for (PathRelease release : balance.releases(level)) {
            String name = points.isEmpty() ? site.name() : site.name() + ", " + words(release.path());
            points.add(point(site, name, release));
        }
        return points;
    }

    private static String words(PathRelease.Path path) {
        return path.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }

    private static Site point(Site site, String name, PathRelease release) {
        ReleasePath path = ReleasePath.valueOf(release.path().name());
        double content = ratio(release.mercury(), release.solids());
        double concentration = ratio(release.mercury(), release.water());
        boolean tank = path == ReleasePath.LEACH_TANK && !Double.isNaN(concentration);
        boolean tailings = !tank && !Double.isNaN(content);
        Map<FurtherForm, Double> further = new EnumMap<>(FurtherForm.class);
        if (release.droplets() > 0) {
            further.put(FurtherForm.DROPLETS, release.droplets());
        }
        if (release.complex() > 0) {
            further.put(FurtherForm.COMPLEX, release.complex());
        }
        boolean isKnown = release.exchangeable().isPresent();
        return new Site(
                site.where(),
                name,
                site.group(),
                site.position(),
                path,
                tank || tailings ? Optional.empty() : Optional.of(release.mercury()),
                tailings ? Optional.of(new Tailings(release.solids(), content)) : Optional.empty(),
                tank ? Optional.of(new Effluent(release.water(), concentration)) : Optional.empty(),
                path == ReleasePath.LEACH_TANK ? site.cyanide() : Optional.empty(),
                isKnown ? release.exchangeable() : OptionalDouble.empty(),
                isKnown || !further.isEmpty() ? further : site.furtherShares(),
                site.classShares(),
                release.water(),
                site.outfall(),
                site.riverName(),
                site.note());
    }

    /** Mercury over what carries it, where that is the same in all states; NaN where there is nothing to carry it. */
    private static double ratio(List<Double> mercury, List<Double> carrier) {
        double ratio = Double.NaN;
        for (int s = 0; s < mercury.size(); s++) {
            if (carrier.get(s) > 0) {
                double here = mercury.get(s) / carrier.get(s);
                if (!Double.isNaN(ratio) && Math.abs(here - ratio) > ROUNDING * Math.max(here, ratio)) {
                    throw new IllegalStateException("mercury and what carries it go apart: " + here + ", " + ratio);
                }
                ratio = Double.isNaN(ratio) ? here : ratio;
            } else if (mercury.get(s) > 0) {
                return Double.NaN;
            }
        }
        return ratio;
    }
}
