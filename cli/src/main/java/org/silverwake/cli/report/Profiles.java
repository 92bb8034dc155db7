// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.chart.ProfileChart;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.Fonts;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.water.Cells;

/** Reach profiles of the scenario: one chart for each path and flow state, with the bounds as a band. */
public final class Profiles {
    private static final double KILOMETER = 1000;
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double TITLE_SIZE = 12;

    private final Outcome outcome;
    private final SteadyResult result;
    private final boolean filtered;
    private final boolean withSites;

    private Profiles(Outcome outcome, boolean withSites) {
        this.outcome = outcome;
        this.withSites = withSites;
        this.result = outcome.result();
        this.filtered = Shown.guideline(outcome)
                .filter(g -> g.observable().fraction() == Fraction.FILTERED)
                .isPresent();
    }

    /** Draws all, with or without single sites. */
    public static void draw(Outcome outcome, Path folder, boolean withoutSites) {
        Profiles profiles = new Profiles(
                outcome, !withoutSites && !outcome.scenario().sites().isEmpty());
        ProfileChart chart = new ProfileChart(Fonts.regular(TITLE_SIZE), Fonts.bold(TITLE_SIZE));
        try {
            Files.createDirectories(folder);
            for (ScenarioInput.Profile wanted : outcome.scenario().outputs().profiles()) {
                List<Integer> path = RiverPath.of(outcome, wanted);
                for (int s = 0; s < outcome.scenario().states().size(); s++) {
                    String name = fileName(wanted.name()) + "-"
                            + outcome.scenario().states().get(s).name() + ".png";
                    chart.write(profiles.profile(wanted, path, s), folder.resolve(name));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String fileName(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    }

    private Profile profile(ScenarioInput.Profile wanted, List<Integer> path, int state) {
        List<Profile.Stretch> stretches = new ArrayList<>();
        List<Profile.Gap> gaps = new ArrayList<>();
        List<Profile.Mark> marks = new ArrayList<>();
        List<Profile.Point> points = new ArrayList<>();
        double at = 0;
        Set<Integer> onPath = new HashSet<>(path);
        Map<Integer, Double> starts = new HashMap<>();
        for (int r : path) {
            marks.addAll(marksAt(r, at, onPath));
            starts.put(r, at);
            if (result.isWet(state, r)) {
                points.addAll(points(r, at, state));
            } else {
                if (!points.isEmpty()) {
                    stretches.add(new Profile.Stretch(points));
                    points = new ArrayList<>();
                }
                gaps.add(new Profile.Gap(
                        at / KILOMETER, (at + outcome.basin().table().length(r)) / KILOMETER, "no water"));
            }
            at += outcome.basin().table().length(r);
        }
        if (!points.isEmpty()) {
            stretches.add(new Profile.Stretch(points));
        }
        ScenarioInput.FlowState flow = outcome.scenario().states().get(state);
        ScenarioInput.Project project = outcome.scenario().project();
        return new Profile(
                wanted.name() + ", " + project.title(),
                "flow state: " + flow.name() + " (" + Numbers.shown(100 * flow.share(), 3) + " % of the year)",
                quantity(),
                "ng/L",
                wanted.from(),
                stretches,
                gaps,
                marks,
                guidelines(),
                new SampleMarks(outcome).onProfile(starts, state, filtered),
                (withSites ? "NOT FOR POSTING: names single sites. " : "")
                        + "A screening from a model, not a finding of safety. Fish advice is the health authority's.",
                project.preparedBy() + ", " + project.date());
    }

    /** The substance of the guideline drawn: inorganic and total mercury are the same as long as no MeHg is carried. */
    private String quantity() {
        return Shown.guideline(outcome)
                .filter(g -> g.observable().medium() == Medium.SURFACE_WATER)
                .map(g -> g.observable().words())
                .orElse("whole total Hg in surface water");
    }

    private List<Profile.Point> points(int reach, double at, int state) {
        List<Profile.Point> points = new ArrayList<>();
        Cells cells = result.cells();
        for (int c = cells.start(reach); c < cells.start(reach + 1); c++) {
            point(c, Place.HEAD, at + cells.from(c), state).ifPresent(points::add);
            point(c, Place.END, at + cells.to(c), state).ifPresent(points::add);
        }
        return points;
    }

    private Optional<Profile.Point> point(int cell, Place place, double at, int state) {
        if (!result.solution(Bound.LAID_DOWN, state).hasWater(cell, place)) {
            return Optional.empty();
        }
        Profile.Range all = range(result.bounds(), cell, place, state);
        Optional<Profile.Range> withBed =
                result.bedAnswer().map(bed -> range(List.of(Bound.WITH_BED), cell, place, state));
        StateSolution solution = result.solution(Bound.CARRIED_THROUGH, state);
        double background = filtered ? solution.backgroundFiltered(cell, place) : solution.backgroundWhole(cell, place);
        return Optional.of(
                new Profile.Point(at / KILOMETER, all.low(), all.high(), background * NANOGRAMS_PER_LITER, withBed));
    }

    private Profile.Range range(List<Bound> bounds, int cell, Place place, int state) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : bounds) {
            StateSolution solution = result.solution(bound, state);
            for (int v = 0; v < result.variants(); v++) {
                double value =
                        filtered ? solution.filtered(cell, place, v, true) : solution.whole(cell, place, v, true);
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return new Profile.Range(low * NANOGRAMS_PER_LITER, high * NANOGRAMS_PER_LITER);
    }

    private List<Profile.Mark> marksAt(int reach, double at, Set<Integer> onPath) {
        List<Profile.Mark> marks = new ArrayList<>();
        for (PlacedPoint point : outcome.basin().points()) {
            if (outcome.basin().reachAt(point) == reach) {
                boolean site = point.request().kind().equals("site");
                if (site && !withSites) {
                    continue;
                }
                marks.add(new Profile.Mark(
                        at / KILOMETER,
                        point.request().name(),
                        site ? Profile.Mark.Kind.SITE : Profile.Mark.Kind.PLACE));
            }
        }
        RiverNetwork network = outcome.basin().network();
        int node = network.fromNode(reach);
        for (int k = 0; k < network.inCount(node); k++) {
            int up = network.in(node, k);
            Optional<String> river = outcome.basin().reach(up).name();
            boolean tributary = !onPath.contains(up)
                    && river.isPresent()
                    && !river.equals(outcome.basin().reach(reach).name());
            if (tributary && at > 0) {
                marks.add(new Profile.Mark(at / KILOMETER, river.get(), Profile.Mark.Kind.TRIBUTARY));
            }
        }
        return marks;
    }

    /** Values of surface water of the fraction drawn; tap values only where people drink, so not here. */
    private List<Profile.GuidelineValue> guidelines() {
        List<Profile.GuidelineValue> values = new ArrayList<>();
        for (Guideline guideline : Shown.drawable(outcome)) {
            boolean same = guideline.observable().medium() == Medium.SURFACE_WATER
                    && (guideline.observable().fraction() == Fraction.FILTERED) == filtered
                    && guideline.observable().substance() != Substance.METHYLMERCURY
                    && guideline.observable().averaging() != Averaging.BED;
            if (same) {
                values.add(new Profile.GuidelineValue(
                        guideline.displayName(),
                        guideline.printed() + ", "
                                + guideline.observable().substance().word()
                                + ", for the "
                                + guideline.observable().averaging().words().split(",")[0],
                        guideline.value() * NANOGRAMS_PER_LITER));
            }
        }
        return values;
    }
}
