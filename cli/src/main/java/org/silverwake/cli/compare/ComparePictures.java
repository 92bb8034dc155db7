// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.chart.ProfileChart;
import org.silverwake.cli.chart.ScenarioProfile;
import org.silverwake.cli.chart.ScenarioProfile.Course;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.Maps;
import org.silverwake.cli.report.Profiles;
import org.silverwake.cli.report.Shown;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.ProfileEnds;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.geo.map.MapFormat;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;

/** Pictures of a comparison: maps of each scenario in the same colors, maps of what changes, profiles with all scenarios. */
public final class ComparePictures {

    private final Comparison comparison;
    private final boolean withSites;

    private ComparePictures(Comparison comparison, boolean withSites) {
        this.comparison = comparison;
        this.withSites = withSites;
    }

    /** Draws all below a folder. */
    public static void draw(Comparison comparison, Path folder, Set<MapFormat> formats, boolean withoutSites) {
        boolean anySites = comparison.scenarios().stream()
                .anyMatch(s -> !s.outcome().scenario().sites().isEmpty());
        ComparePictures pictures = new ComparePictures(comparison, anySites && !withoutSites);
        MapFiles maps = new MapFiles(folder.resolve("maps"), formats);
        pictures.changes(maps);
        pictures.profiles(maps.in(folder.resolve("profiles")));
        for (int k = 0; k < comparison.scenarios().size(); k++) {
            Maps.draw(
                    comparison.scenarios().get(k).outcome(),
                    maps.in(maps.folder().resolve(pictures.name(k))),
                    Optional.empty(),
                    false,
                    withoutSites);
        }
    }

    private String name(int scenario) {
        return (scenario + 1) + "-"
                + Profiles.fileName(comparison.scenarios().get(scenario).name());
    }

    /** What the first scenario's map shows, and the first value of beds. */
    private List<Guideline> drawn() {
        List<Guideline> drawn = new ArrayList<>();
        Shown.guideline(comparison.first())
                .filter(comparison.guidelines()::contains)
                .ifPresent(drawn::add);
        comparison.guidelines().stream()
                .filter(g -> g.observable().averaging() == Averaging.BED && !drawn.contains(g))
                .findFirst()
                .ifPresent(drawn::add);
        return drawn;
    }

    private void changes(MapFiles maps) {
        for (Guideline guideline : drawn()) {
            for (int k = 1; k < comparison.scenarios().size(); k++) {
                maps.draw(
                        comparison.first().basin().map(),
                        new ChangeMap(comparison, k, guideline).sheet(withSites),
                        "change-" + guideline.id() + "-" + name(k));
            }
        }
    }

    private void profiles(MapFiles files) {
        Outcome first = comparison.first();
        for (Outputs.Profile wanted : first.scenario().outputs().profiles()) {
            for (int s = 0; s < first.scenario().states().size(); s++) {
                String state = first.scenario().states().get(s).name();
                profile(wanted, s)
                        .ifPresent(shown -> files.each(
                                Profiles.fileName(wanted.name()) + "-" + state,
                                file -> ProfileChart.write(shown, file)));
            }
        }
    }

    /** The first ones, as far as they can be told apart, of which the river has water there. */
    private Optional<ScenarioProfile> profile(Outputs.Profile wanted, int state) {
        List<Course> courses = new ArrayList<>();
        Profile frame = Profiles.shown(comparison.first(), withSites, wanted, state);
        for (NamedOutcome scenario : comparison.scenarios()) {
            boolean there = ProfileEnds.find(scenario.outcome().basin(), wanted.from())
                            .isPresent()
                    && wanted.to()
                            .map(to -> ProfileEnds.find(scenario.outcome().basin(), to)
                                    .isPresent())
                            .orElse(true);
            if (there && courses.size() < ScenarioProfile.MOST) {
                courses.add(new Course(
                        scenario.name(),
                        Profiles.shown(scenario.outcome(), withSites, wanted, state)
                                .stretches()));
            }
        }
        return frame.stretches().isEmpty()
                ? Optional.empty()
                : Optional.of(new ScenarioProfile(frame.ofScenarios(), courses));
    }
}
