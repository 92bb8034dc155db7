// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.chart.ProfileChart;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;

/**
 * Reach profiles of the scenario: one chart for each path and flow state, with the bounds as a band; and more of them for forms
 * of mercury by themselves, where the scenario asks for them.
 */
public final class Profiles {
    private static final double NANOGRAMS_PER_LITER = 1e9;

    private final Outcome outcome;
    private final SteadyResult result;
    private final boolean withSites;

    private Profiles(Outcome outcome, boolean withSites) {
        this.outcome = outcome;
        this.withSites = withSites;
        this.result = outcome.result();
    }

    /** Draws all, with or without single sites. */
    public static void draw(Outcome outcome, MapFiles files, boolean withoutSites) {
        boolean withSites = !withoutSites && !outcome.scenario().sites().isEmpty();
        Profiles profiles = new Profiles(outcome, withSites);
        ProfileView shown = ProfileView.shown(outcome);
        List<FormValues> forms = FormValues.asked(outcome);
        for (Outputs.Profile wanted : outcome.scenario().outputs().profiles()) {
            Along along = new Along(outcome, withSites, RiverPath.of(outcome, wanted));
            for (int s = 0; s < outcome.scenario().states().size(); s++) {
                Profile profile = profiles.ofWater(wanted, along, shown, s);
                String name = fileName(wanted.name()) + "-"
                        + outcome.scenario().states().get(s).name();
                files.each(name, file -> ProfileChart.write(profile, file));
            }
            for (FormValues values : forms) {
                for (int s : values.states()) {
                    Profile profile = values.isOfWater()
                            ? profiles.ofWater(wanted, along, ProfileView.of(values), s)
                            : profiles.ofSolids(wanted, along, values, s);
                    String name = fileName(wanted.name()) + "-" + FormMaps.fileName(outcome, values, s);
                    files.each(name, file -> ProfileChart.write(profile, file));
                }
            }
        }
    }

    /** The water of one of the scenario's profiles in a flow state, as its guideline asks. */
    public static Profile shown(Outcome outcome, boolean withSites, Outputs.Profile wanted, int state) {
        Along along = new Along(outcome, withSites, RiverPath.of(outcome, wanted));
        return new Profiles(outcome, withSites).ofWater(wanted, along, ProfileView.shown(outcome), state);
    }

    /** A file's name from words. */
    public static String fileName(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    /** Values at every cell's head and end. */
    private Profile ofWater(Outputs.Profile wanted, Along along, ProfileView view, int state) {
        IntPredicate wet = r -> result.isWet(state, r);
        List<Profile.Stretch> stretches =
                along.stretches(wet, (cell, place, at) -> point(view, cell, place, at, state)).stream()
                        .map(Profile.Stretch::new)
                        .toList();
        ScenarioInput.Project project = outcome.scenario().project();
        return new Profile(
                wanted.name() + ", " + project.title(),
                subtitle(outcome, state),
                view.quantity(),
                "ng/L",
                wanted.from(),
                result.bounds(view.part()).size() > 1,
                stretches,
                along.gaps(wet, "no water"),
                along.marks(),
                view.guidelines(outcome),
                new SampleMarks(outcome).onProfile(along.starts(), state, view.samples()),
                caution(withSites),
                project.preparedBy() + ", " + project.date());
    }

    /** One value for each reach. */
    private Profile ofSolids(Outputs.Profile wanted, Along along, FormValues values, int state) {
        IntPredicate has = r -> values.has(state, r);
        List<Profile.Stretch> stretches = along
                .stretches(has, (cell, place, at) -> {
                    int reach = result.cells().reach(cell);
                    double high = values.high(state, reach);
                    double low = values.low(state, reach);
                    return Optional.of(new Profile.Point(at, low, high, values.background(state, reach)));
                })
                .stream()
                .map(Profile.Stretch::new)
                .toList();
        ScenarioInput.Project project = outcome.scenario().project();
        return new Profile(
                wanted.name() + ", " + project.title(),
                state == FormValues.ALL_STATES ? "over the year" : subtitle(outcome, state),
                values.words(),
                values.unit(),
                wanted.from(),
                values.isOfBounds(),
                stretches,
                along.gaps(has, "not assessed"),
                along.marks(),
                List.of(),
                List.of(),
                caution(withSites),
                project.preparedBy() + ", " + project.date());
    }

    /** Flow state and its share of the year. */
    public static String subtitle(Outcome outcome, int state) {
        ScenarioInput.FlowState flow = outcome.scenario().states().get(state);
        return "flow state: " + flow.name() + " (" + Numbers.shown(100 * flow.share(), 3) + " % of the year)";
    }

    /** The caution on every profile. */
    public static String caution(boolean withSites) {
        return (withSites ? "NOT FOR POSTING: names single sites. " : "")
                + "A screening from a model, not a finding of safety. Fish advice is the health authority's.";
    }

    private Optional<Profile.Point> point(ProfileView view, int cell, Place place, double at, int state) {
        if (!result.solution(Bound.LAID_DOWN, state).hasWater(cell, place)) {
            return Optional.empty();
        }
        Profile.Range all = range(result.bounds(view.part()), view, cell, place, state);
        Optional<Profile.Range> withBed = result.bounds(view.part()).size() > 2
                ? Optional.of(range(List.of(Bound.WITH_BED), view, cell, place, state))
                : Optional.empty();
        StateSolution solution = result.solution(Bound.CARRIED_THROUGH, state);
        double background = solution.background(view.part(), cell, place);
        return Optional.of(new Profile.Point(at, all.low(), all.high(), background * NANOGRAMS_PER_LITER, withBed));
    }

    private Profile.Range range(List<Bound> bounds, ProfileView view, int cell, Place place, int state) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : bounds) {
            StateSolution solution = result.solution(bound, state);
            for (int v = 0; v < result.variants(); v++) {
                double value = solution.part(view.part(), cell, place, v, true);
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return new Profile.Range(low * NANOGRAMS_PER_LITER, high * NANOGRAMS_PER_LITER);
    }
}
