// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.numerics.NumericalException;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.OutsideModelException;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.SiteShares;
import org.silverwake.model.transport.SiteShares.Parts;
import org.silverwake.model.transport.SitesOverYears;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.SteadyRun;
import org.silverwake.model.transport.TransportInput;
import org.silverwake.model.water.Hydraulics;

/**
 * Shares out what arrives at places: the main run, then each site's share at the run's solids and water, then a run for
 * each site without it, its solids and its water.
 */
public final class ApportionRun {
    /** Farthest that sites and background may be from the run's own value [-]. */
    static final double SUMS = 1e-10;

    private static final List<SampledPart> PARTS = List.of(Fraction.WHOLE, Fraction.FILTERED);

    private final Outcome outcome;
    private final SteadyResult result;
    private final List<Integer> places;
    private final List<String> notes = new ArrayList<>();

    private ApportionRun(Outcome outcome, List<Integer> places) {
        this.outcome = outcome;
        this.result = outcome.result();
        this.places = places;
    }

    /**
     * Runs.
     *
     * @param at names of places; all places where none is named
     * @throws ScenarioException for everything wrong in the scenario, and for a name that is no place
     * @throws NumericalException if shares do not add up to 1e-10
     */
    public static Apportioned run(Path path, List<String> at, MainRun.Progress progress) {
        ScenarioInput scenario = Scenarios.read(path);
        List<Integer> places = places(scenario, at);
        Outcome outcome = MainRun.run(path, progress);
        ApportionRun run = new ApportionRun(outcome, places);
        progress.step("share out to sites");
        List<Found> found = run.shares();
        progress.step("close each site in turn");
        return run.closed(found);
    }

    /** Shares alone, of all places of a run that is there, without closing any site. */
    public static Apportioned shares(Outcome outcome) {
        List<Integer> places =
                IntStream.range(0, outcome.scenario().places().size()).boxed().toList();
        ApportionRun run = new ApportionRun(outcome, places);
        List<SharedValue> values = run.shares().stream()
                .map(v -> new SharedValue(v.place(), v.what(), v.state(), v.bound(), v.variant(), v.parts(), List.of()))
                .toList();
        return new Apportioned(outcome, places, values, run.notes);
    }

    private static List<Integer> places(ScenarioInput scenario, List<String> at) {
        List<String> names =
                scenario.places().stream().map(ScenarioInput.Place::name).toList();
        if (names.isEmpty()) {
            throw new ScenarioException(List.of(
                    "scenario: no place is listed at which to share out what arrives; add the table of places"));
        }
        if (scenario.sites().isEmpty()) {
            throw new ScenarioException(
                    List.of("scenario: no site is listed to which to share anything out; add the table of sites"));
        }
        if (at.isEmpty()) {
            return IntStream.range(0, names.size()).boxed().toList();
        }
        List<String> problems = at.stream()
                .filter(name -> find(names, name).isEmpty())
                .map(name -> "--at " + name + " is no place of the scenario; " + Nearest.hint(name, names))
                .toList();
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
        return at.stream()
                .map(name -> find(names, name).orElseThrow())
                .distinct()
                .toList();
    }

    private static Optional<Integer> find(List<String> names, String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return IntStream.range(0, names.size())
                .filter(i -> names.get(i).toLowerCase(Locale.ROOT).equals(wanted))
                .boxed()
                .findFirst();
    }

    /** A value shared out, before any site is closed. */
    private record Found(int place, What what, int state, Bound bound, int variant, Parts parts) {}

    private int reach(int place) {
        return outcome.basin().reachAt(outcome.basin().points("place").get(place));
    }

    private List<Found> shares() {
        Optional<SitesOverYears> years =
                SitesOverYears.of(result, places.stream().map(this::reach).toList());
        List<Found> found = new ArrayList<>();
        for (int place : places) {
            noteNearOutfall(place);
            SiteShares shares = SiteShares.of(result, reach(place), PARTS, years);
            for (Bound bound : result.bounds()) {
                for (int v = 0; v < result.variants(); v++) {
                    for (int s = 0; s < result.input().stateCount(); s++) {
                        for (int p = 0; p < PARTS.size(); p++) {
                            What what = p == 0 ? What.WHOLE : What.FILTERED;
                            Optional<Parts> parts = shares.water(bound, v, s, p);
                            if (parts.isPresent()) {
                                found.add(new Found(place, what, s, bound, v, parts.get()));
                            }
                        }
                    }
                    Optional<Parts> bed = result.isBedAssessed(reach(place)) ? shares.bed(bound, v) : Optional.empty();
                    if (bed.isPresent()) {
                        found.add(new Found(place, What.BED, SharedValue.WHOLE_YEAR, bound, v, bed.get()));
                    }
                }
            }
        }
        return found;
    }

    private void noteNearOutfall(int place) {
        for (int s = 0; s < result.input().stateCount(); s++) {
            if (result.solution(Bound.LAID_DOWN, s).isWithinOneWidth(reach(place))) {
                notes.add(outcome.scenario().places().get(place).name()
                        + " lies nearer to a bank outfall than one width of the river, where no value is assessed: its shares"
                        + " tell no more than which outfall it is");
                return;
            }
        }
    }

    private Apportioned closed(List<Found> found) {
        int sites = outcome.scenario().sites().size();
        List<List<Double>> after = new ArrayList<>();
        found.forEach(each -> after.add(new ArrayList<>()));
        for (int i = 0; i < sites; i++) {
            Optional<SteadyResult> without = without(i);
            for (int k = 0; k < found.size(); k++) {
                Found value = found.get(k);
                after.get(k).add(without.map(run -> value(run, value)).orElse(Double.NaN));
            }
        }
        List<SharedValue> values = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            Found v = found.get(k);
            values.add(
                    new SharedValue(v.place(), v.what(), v.state(), v.bound(), v.variant(), v.parts(), after.get(k)));
        }
        Apportioned apportioned = new Apportioned(outcome, places, values, notes);
        double worst = apportioned.worstSum();
        if (!(worst <= SUMS)) {
            throw new NumericalException(
                    "shares of sites",
                    "sites and background do not add up to the run's own value: they are off by " + worst
                            + " of it, at most " + SUMS + " is allowed; please report it with the scenario",
                    worst);
        }
        return apportioned;
    }

    /** The whole run without a site; empty where it cannot be made. */
    private Optional<SteadyResult> without(int site) {
        SiteRelease release = result.input().sites().get(site);
        Hydraulics hydraulics = release.water().stream().anyMatch(q -> q > 0)
                ? WaterStep.without(outcome.scenario(), outcome.basin(), site).hydraulics()
                : result.input().hydraulics();
        TransportInput input = result.input().closed(site, hydraulics);
        try {
            return Optional.of(SteadyRun.run(input));
        } catch (OutsideModelException e) {
            notes.add("closing " + release.name() + " cannot be computed: without its water, flow state "
                    + outcome.scenario().states().get(e.state()).name() + ", " + e.getMessage());
            return Optional.empty();
        }
    }

    private double value(SteadyResult run, Found value) {
        int reach = reach(value.place());
        if (value.what() == What.BED) {
            boolean there = run.isBedAssessed(reach)
                    && run.bounds().contains(value.bound())
                    && (value.bound() != Bound.WITH_BED
                            || run.bedAnswer().orElseThrow().hasBed(reach));
            return there ? run.bed(value.bound(), value.variant(), reach) : Double.NaN;
        }
        SampledPart part = PARTS.get(value.what() == What.WHOLE ? 0 : 1);
        return run.isWet(value.state(), reach)
                ? run.largest(value.bound(), value.variant(), value.state(), reach, part)
                : Double.NaN;
    }
}
