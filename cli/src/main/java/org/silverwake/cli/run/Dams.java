// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;

/** Dams at the lower ends of features, as far as fish are concerned. */
public final class Dams {
    private Dams() {}

    /**
     * Looks every feature up, before anything is computed.
     *
     * @throws ScenarioException with a line for each that is not there
     */
    static void check(ScenarioInput scenario, Basin basin) {
        List<String> problems = problems(scenario, basin);
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
    }

    /** A line for each feature that is not there. */
    public static List<String> problems(ScenarioInput scenario, Basin basin) {
        return scenario.fish().map(ScenarioInput.Fish::dams).orElse(List.of()).stream()
                .filter(feature -> node(feature, basin).isEmpty())
                .map(feature -> "scenario.yaml fish.dams: " + feature + " is no feature of the river layer; "
                        + ProfileEnds.hint(basin, feature))
                .toList();
    }

    /** The nodes at which they stand. */
    static Set<Integer> nodes(ScenarioInput.Fish asked, Basin basin) {
        return asked.dams().stream()
                .map(feature -> node(feature, basin).orElseThrow())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Where the last of a feature's reaches ends; reaches stand in downstream order. */
    private static Optional<Integer> node(String feature, Basin basin) {
        return IntStream.range(0, basin.network().size())
                .filter(r -> basin.reach(r).part().featureId().equals(feature))
                .boxed()
                .reduce((above, below) -> below)
                .map(basin.network()::toNode);
    }
}
