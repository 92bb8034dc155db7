// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.release.Spread;
import org.silverwake.model.release.Spread.Level;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.SteadyRun;

/**
 * What the low and high balances of field notes make of the values at places, one site or group after the other, the others at the
 * middle of their balances. Mercury alone changes: solids and water are those of the run, so that a value is its background and so
 * many times the share of each site. Where other balances also change a site's forms, its part is found by a run of its own.
 */
public final class SwingRun {
    private static final double ROUNDING = 1e-12;

    private final Apportioned apportioned;
    private final Outcome outcome;
    private final FieldNotesPlan plan;
    private final List<SiteRelease> sites;
    private final Map<Level, List<Optional<SiteRelease>>> releases = new EnumMap<>(Level.class);
    private final Map<List<Integer>, SteadyResult> reruns = new LinkedHashMap<>();

    private SwingRun(Apportioned apportioned) {
        this.apportioned = apportioned;
        this.outcome = apportioned.outcome();
        this.plan = outcome.scenario().fieldNotes();
        this.sites = outcome.result().input().sites();
        for (Level level : Level.values()) {
            releases.put(level, releases(level));
        }
    }

    /** Values of whole water at the places of a run, as far as some site with field notes reaches them; none without notes. */
    public static List<Swing> run(Apportioned apportioned) {
        List<Swing> swings = new ArrayList<>();
        if (apportioned.outcome().scenario().fieldNotes().noted().isEmpty()) {
            return swings;
        }
        SwingRun run = new SwingRun(apportioned);
        for (int place : apportioned.places()) {
            for (int s = 0; s < apportioned.outcome().scenario().states().size(); s++) {
                Swing swing = run.swing(place, s);
                if (swing.bars().stream().anyMatch(bar -> bar.width() > 0)) {
                    swings.add(swing);
                }
            }
        }
        return swings;
    }

    private Swing swing(int place, int state) {
        List<SharedValue> values = apportioned.values().stream()
                .filter(v -> v.place() == place && v.what() == What.WHOLE && v.state() == state)
                .toList();
        List<Swing.Bar> bars = new ArrayList<>();
        groups().forEach((name, members) -> bars.add(new Swing.Bar(
                name, release(members), highest(values, members, Level.LOW), highest(values, members, Level.HIGH))));
        bars.sort(Comparator.comparingDouble(Swing.Bar::width).reversed());
        return new Swing(place, state, highest(values, List.of(), Level.MIDDLE), bars);
    }

    /** Discharge points of each site with notes, or of each group where single sites are not to show. */
    private Map<String, List<Integer>> groups() {
        boolean single = outcome.scenario().outputs().audience() == Outputs.Audience.OFFICE;
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (ScenarioInput.Site noted : plan.sites()) {
            if (NotedSites.find(plan, noted).isPresent()) {
                List<Integer> members =
                        groups.computeIfAbsent(single ? noted.name() : noted.group(), k -> new ArrayList<>());
                for (int i = 0; i < sites.size(); i++) {
                    if (outcome.scenario().sites().get(i).where().equals(noted.where())) {
                        members.add(i);
                    }
                }
            }
        }
        return groups;
    }

    private Spread release(List<Integer> members) {
        double[] sums = new double[Level.values().length];
        for (Level level : Level.values()) {
            for (int i : members) {
                sums[level.ordinal()] +=
                        releases.get(level).get(i).map(this::mean).orElse(0.0);
            }
        }
        return new Spread(sums[0], sums[1], sums[2]);
    }

    private double mean(SiteRelease release) {
        double mean = 0;
        for (int s = 0; s < release.mercury().size(); s++) {
            mean += release.mercury().get(s)
                    * outcome.scenario().states().get(s).share();
        }
        return mean;
    }

    /** Of bounds and extremes the highest, with some discharge points at a level and the others at the middle. */
    private double highest(List<SharedValue> values, List<Integer> changed, Level level) {
        double highest = 0;
        for (SharedValue value : values) {
            double sum = value.parts().background();
            for (int i = 0; i < sites.size(); i++) {
                sum += part(value, i, changed.contains(i) ? level : Level.MIDDLE);
            }
            highest = Math.max(highest, sum);
        }
        return highest;
    }

    /** What a discharge point brings of a value when its release is at a level. */
    private double part(SharedValue value, int site, Level level) {
        double own = value.parts().sites().get(site);
        SiteRelease release = sites.get(site);
        Optional<SiteRelease> other = releases.get(level).get(site);
        if (other.isEmpty()) {
            return 0;
        }
        double factor = factor(release, other.get());
        if (Double.isFinite(factor)) {
            return own * factor;
        }
        SteadyResult run = reruns.computeIfAbsent(
                List.of(site, level.ordinal()),
                k -> SteadyRun.run(outcome.result().input().withSites(with(site, other.get()))));
        int reach = outcome.basin().reachAt(outcome.basin().points("place").get(value.place()));
        return own
                + run.largest(value.bound(), value.variant(), value.state(), reach, Fraction.WHOLE)
                - value.parts().value();
    }

    private List<SiteRelease> with(int site, SiteRelease other) {
        List<SiteRelease> changed = new ArrayList<>(sites);
        changed.set(site, other);
        return changed;
    }

    /** How many times the mercury of one is that of the other; not a number where they differ in anything else. */
    private static double factor(SiteRelease of, SiteRelease other) {
        double factor = Double.NaN;
        for (int s = 0; s < of.mercury().size(); s++) {
            double here = of.mercury().get(s);
            double there = other.mercury().get(s);
            if (here == 0 && there == 0) {
                continue;
            }
            double ratio = there / here;
            if (!Double.isNaN(factor) && Math.abs(ratio - factor) > ROUNDING * factor) {
                return Double.NaN;
            }
            factor = ratio;
        }
        boolean same = near(of.exchangeable(0), other.exchangeable(0))
                && of.extremes() == other.extremes()
                && of.furtherShares().keySet().equals(other.furtherShares().keySet())
                && of.furtherShares().keySet().stream()
                        .allMatch(form -> near(
                                of.furtherShares().get(form),
                                other.furtherShares().get(form)));
        return same ? (Double.isNaN(factor) ? 1 : factor) : Double.NaN;
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= ROUNDING;
    }

    /** Releases at a level in the order of the run, with the run's solids and water; empty where a path then carries nothing. */
    private List<Optional<SiteRelease>> releases(Level level) {
        FieldNotesPlan at = plan.at(level);
        ScenarioInput scenario = outcome.scenario().withSites(NotedSites.expand(at, NotedSites.inForce(at), at.year()));
        Basin basin = outcome.basin();
        List<SiteRelease> found = MercuryStep.input(scenario, basin, WaterStep.run(scenario, basin))
                .sites();
        List<Optional<SiteRelease>> matched = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            Optional<SiteRelease> match = Optional.empty();
            ScenarioInput.Site own = outcome.scenario().sites().get(i);
            for (int k = 0; k < found.size(); k++) {
                ScenarioInput.Site there = scenario.sites().get(k);
                if (there.where().equals(own.where()) && there.path() == own.path()) {
                    match = Optional.of(found.get(k).withCarriersOf(sites.get(i)));
                }
            }
            matched.add(match);
        }
        return matched;
    }
}
