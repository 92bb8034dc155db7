// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.place.PlacedPoint;

/** Where profiles begin and end: at the head of a feature, or at a point by its name. */
public final class ProfileEnds {
    private static final int MOST_LISTED = 30;

    private ProfileEnds() {}

    /**
     * Looks every start and end up, before anything is computed.
     *
     * @throws ScenarioException with a line for each that is not there
     */
    public static void check(ScenarioInput scenario, Basin basin) {
        List<String> problems = problems(scenario, basin);
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
    }

    /** A line for each start and end that is not there. A point that found no place is told elsewhere. */
    public static List<String> problems(ScenarioInput scenario, Basin basin) {
        List<String> problems = new ArrayList<>();
        for (Outputs.Profile profile : scenario.outputs().profiles()) {
            List<String> ends = new ArrayList<>(List.of(profile.from()));
            profile.to().ifPresent(ends::add);
            for (String end : ends) {
                if (find(basin, end).isEmpty() && !isUnplaced(basin, end)) {
                    problems.add("scenario.yaml outputs.profiles: profile \"" + profile.name() + "\": " + end
                            + " is neither a feature of the river layer nor a site or place; " + hint(basin, end));
                }
            }
        }
        return problems;
    }

    private static boolean isUnplaced(Basin basin, String name) {
        return basin.unplaced().stream()
                .anyMatch(point -> point.request().name().equals(name));
    }

    /** The reach that begins at a feature's upstream end, or else at a point of that name. */
    public static Optional<Integer> find(Basin basin, String name) {
        for (int r = 0; r < basin.network().size(); r++) {
            if (basin.reach(r).part().featureId().equals(name)) {
                return Optional.of(r);
            }
        }
        return basin.points().stream()
                .filter(point -> point.request().name().equals(name))
                .findFirst()
                .map(basin::reachAt);
    }

    static String hint(Basin basin, String word) {
        List<String> known = new ArrayList<>();
        basin.map().reaches().forEach(reach -> known.add(reach.part().featureId()));
        basin.points().stream().map(PlacedPoint::request).forEach(request -> known.add(request.name()));
        List<String> distinct = known.stream().distinct().toList();
        return Nearest.hint(word, distinct.size() > MOST_LISTED ? near(word, distinct) : distinct);
    }

    private static List<String> near(String word, List<String> known) {
        return Nearest.find(word, known).map(List::of).orElse(known.subList(0, MOST_LISTED));
    }
}
