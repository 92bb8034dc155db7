// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.cli.scenario.ScenarioInput;

/**
 * What sends mercury down the river as one: a discharge point, or all of a group.
 *
 * @param name its words
 * @param group group of sites
 * @param points places of its discharge points in the scenario's list of sites
 * @param rows rows of the table of sites they come from
 */
public record Contributor(String name, String group, List<Integer> points, List<String> rows) {
    /** Copies the lists. */
    public Contributor {
        points = List.copyOf(points);
        rows = List.copyOf(rows);
    }

    /** Whether it is one group of sites, by the group's own name and whole. */
    public boolean isGroupOf(ScenarioInput scenario) {
        List<Integer> own = IntStream.range(0, scenario.sites().size())
                .filter(i -> scenario.sites().get(i).group().equals(name))
                .boxed()
                .toList();
        return !own.isEmpty() && own.equals(points.stream().sorted().toList());
    }

    /** The points as a set. */
    BitSet set() {
        BitSet set = new BitSet();
        points.forEach(set::set);
        return set;
    }
}
