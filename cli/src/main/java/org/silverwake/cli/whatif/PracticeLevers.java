// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.Rerun;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.whatif.Lever.End;
import org.silverwake.cli.whatif.Lever.Full;
import org.silverwake.cli.whatif.Lever.Kilograms;
import org.silverwake.cli.whatif.Lever.Kind;
import org.silverwake.cli.whatif.Lever.PracticeGain;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.FieldNotes;
import org.silverwake.model.release.Gain;
import org.silverwake.model.release.NotesException;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.release.Spread;
import org.silverwake.model.transport.OutsideModelException;
import org.silverwake.model.transport.TransportInput;

/**
 * A lever for each practice that is not in force everywhere it is for: it multiplies the mercury of its sites' discharge points.
 * What it also does to tailings, to water and to the form of mercury is not in that; a full run says how much it matters.
 */
final class PracticeLevers {
    private static final String NOT_RUN = "how much its tailings and water matter was not computed on so large a river";
    private static final String CANNOT_RUN = "the river cannot be run with it, so it is left out";
    private static final String AIR_ALONE = "acts on the air; the river stays as it is";
    private static final String NEW_PATH = "it also opens a new way to the river, which the slider does not show";

    /** Roundings of releases that are put together anew [-]. */
    private static final double ROUNDING = 1e-9;

    private static final double HALF = 0.5;

    private final Linear linear;
    private final Outcome outcome;
    private final FieldNotesPlan plan;
    private final List<OfferedPractice> offered;
    private final boolean run;
    private final List<Lever> levers;

    PracticeLevers(Linear linear) {
        this.linear = linear;
        this.outcome = linear.outcome();
        this.plan = outcome.scenario().fieldNotes();
        this.offered = plan.practices().stream()
                .filter(practice -> !sites(practice).isEmpty())
                .toList();
        this.run = Levers.isCheap(linear, 2 * offered.size() + 1);
        this.levers = offered.parallelStream().map(this::lever).toList();
    }

    /** Sites that could take a practice up. */
    private List<Site> sites(OfferedPractice practice) {
        return plan.sites().stream()
                .filter(site -> practice.isFor(site) && !plan.isInForce(practice, site))
                .filter(site ->
                        NotedSites.find(plan, site).flatMap(NotedSite::notes).isPresent())
                .toList();
    }

    List<Lever> levers() {
        return levers;
    }

    /** How far all at once are off; empty with fewer than two, or where it was not run. */
    Optional<Deviation> together() {
        if (!run || levers.size() < 2) {
            return Optional.empty();
        }
        double[] factors = Levers.now(linear);
        List<Correction> corrections = new ArrayList<>();
        for (Lever lever : levers) {
            lever.ends().forEach(end -> factors[end.contributor()] *= end.factor());
            lever.full().map(Full::correction).ifPresent(corrections::add);
        }
        try {
            return Optional.of(Deviation.of(linear, factors, corrections, 1, Rerun.taking(outcome, offered, 1)));
        } catch (OutsideModelException | NotesException | ScenarioException e) {
            return Optional.empty();
        }
    }

    private Lever lever(OfferedPractice practice) {
        try {
            TransportInput then = Rerun.released(outcome, List.of(practice));
            List<End> ends = ends(then);
            boolean exact = isMercuryAlone(then);
            boolean air = ends.isEmpty() && exact;
            return new Lever(
                    practice.practice().name(),
                    Kind.PRACTICE,
                    ends,
                    exact,
                    exact || !run ? Optional.empty() : Optional.of(full(practice, ends)),
                    kilograms(practice, then),
                    Optional.of(gain(practice)),
                    air ? AIR_ALONE : !exact && !run ? NOT_RUN : hasNew(then) ? NEW_PATH : "");
        } catch (OutsideModelException | NotesException | ScenarioException e) {
            return new Lever(
                    practice.practice().name(),
                    Kind.PRACTICE,
                    List.of(),
                    false,
                    Optional.empty(),
                    new Kilograms(0, 0),
                    Optional.empty(),
                    CANNOT_RUN);
        }
    }

    private Full full(OfferedPractice practice, List<End> ends) {
        double[] factors = Levers.now(linear);
        double[] half = Levers.now(linear);
        ends.forEach(end -> {
            factors[end.contributor()] = end.factor();
            half[end.contributor()] = 1 + HALF * (end.factor() - 1);
        });
        Rerun end = Rerun.taking(outcome, List.of(practice), 1);
        Correction correction = Correction.of(linear, factors, end);
        return new Full(
                Deviation.of(linear, factors, List.of(), 1, end),
                correction,
                Optional.of(Deviation.of(
                        linear, half, List.of(correction), HALF, Rerun.taking(outcome, List.of(practice), HALF))));
    }

    /** What becomes of each contributor's mercury over the year; those that keep theirs are left out. */
    private List<End> ends(TransportInput then) {
        TransportInput now = outcome.result().input();
        Map<String, Integer> places = places(then);
        List<End> ends = new ArrayList<>();
        for (int k = 0; k < linear.contributors().size(); k++) {
            double before = 0;
            double after = 0;
            for (int point : linear.contributors().get(k).points()) {
                before += now.meanRelease(point);
                Integer place = places.get(now.sites().get(point).name());
                after += place == null ? 0 : then.meanRelease(place);
            }
            if (before > 0 && after != before) {
                ends.add(new End(k, after / before));
            }
        }
        return ends;
    }

    private static Map<String, Integer> places(TransportInput input) {
        Map<String, Integer> places = new LinkedHashMap<>();
        for (int i = 0; i < input.sites().size(); i++) {
            places.put(input.sites().get(i).name(), i);
        }
        return places;
    }

    private boolean hasNew(TransportInput then) {
        Collection<String> known = places(outcome.result().input()).keySet();
        return then.sites().stream()
                .anyMatch(site ->
                        !known.contains(site.name()) && site.mercury().stream().anyMatch(m -> m > 0));
    }

    /** Whether all that changes is how much mercury is released, alike in all flow states. */
    private boolean isMercuryAlone(TransportInput then) {
        TransportInput now = outcome.result().input();
        boolean alike = now.sites().size() == then.sites().size();
        for (int i = 0; alike && i < now.sites().size(); i++) {
            SiteRelease before = now.sites().get(i);
            SiteRelease after = then.sites().get(i);
            double factor = before.mercury().equals(after.mercury()) ? 1 : then.meanRelease(i) / now.meanRelease(i);
            boolean nothing = after.mercury().stream().allMatch(rate -> rate == 0);
            // where no mercury is released, nothing hangs on its forms
            alike = nothing
                    ? before.reach() == after.reach()
                            && before.solids().equals(after.solids())
                            && before.water().equals(after.water())
                            && before.classShares().equals(after.classShares())
                    : before.withMercury(after.mercury()).equals(after);
            for (int s = 0; alike && s < now.stateCount(); s++) {
                double scaled = factor * before.mercury().get(s);
                alike = Math.abs(after.mercury().get(s) - scaled) <= ROUNDING * scaled;
            }
        }
        return alike;
    }

    private Kilograms kilograms(OfferedPractice practice, TransportInput then) {
        List<String> rows = sites(practice).stream().map(Site::where).toList();
        List<Integer> points = new ArrayList<>();
        for (int i = 0; i < outcome.scenario().sites().size(); i++) {
            if (rows.contains(outcome.scenario().sites().get(i).where())) {
                points.add(i);
            }
        }
        double all = 0;
        for (int i = 0; i < then.sites().size(); i++) {
            all += then.meanRelease(i) * Quantity.SECONDS_PER_YEAR;
        }
        double before = 0;
        for (int i = 0; i < outcome.result().input().sites().size(); i++) {
            before += outcome.result().input().meanRelease(i) * Quantity.SECONDS_PER_YEAR;
        }
        double now = Levers.kilograms(linear, points);
        return new Kilograms(now, Math.max(0, now + all - before));
    }

    private PracticeGain gain(OfferedPractice offered) {
        Practice practice = Rerun.inFirstYear(outcome.scenario(), offered.practice(), 1);
        Gain.Prices prices = plan.prices().orElse(new Gain.Prices(0, 0));
        double air = 0;
        Spread cost = Spread.exact(0);
        Spread left = Spread.exact(0);
        for (Site site : sites(offered)) {
            NotedSite noted = NotedSites.find(plan, site).orElseThrow();
            List<Practice> now = new ArrayList<>(NotedSites.inForce(plan).by(site));
            double before = noted.balance(now, plan.year()).at(plan.level()).air();
            FieldNotes notes = noted.notes().orElseThrow();
            for (Practice each : now) {
                notes = each.apply(notes);
            }
            now.add(practice);
            air += before - noted.balance(now, plan.year()).at(plan.level()).air();
            Gain gain = Gain.of(practice, notes, noted.year(), prices);
            cost = plus(cost, gain.cost());
            left = plus(left, gain.net());
        }
        return new PracticeGain(
                air * Quantity.SECONDS_PER_YEAR,
                cost.high() > 0 ? Optional.of(cost) : Optional.empty(),
                plan.prices().isPresent() ? Optional.of(left) : Optional.empty());
    }

    private static Spread plus(Spread one, Spread other) {
        return new Spread(one.low() + other.low(), one.middle() + other.middle(), one.high() + other.high());
    }
}
