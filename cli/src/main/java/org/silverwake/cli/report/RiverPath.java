// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.ProfileEnds;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.model.network.RiverNetwork;

/** Reaches down the network from a feature or place, along the arm with the larger share at bifurcations. */
final class RiverPath {
    private RiverPath() {}

    /**
     * The path of a profile.
     *
     * @throws IllegalStateException if its start or end is not there, which ProfileEnds has checked
     */
    static List<Integer> of(Outcome outcome, Outputs.Profile profile) {
        RiverNetwork network = outcome.basin().network();
        int first = find(outcome, profile.from(), profile.name());
        Optional<Integer> last = profile.to().map(to -> find(outcome, to, profile.name()));
        List<Integer> path = new ArrayList<>();
        int reach = first;
        while (reach >= 0 && !(last.isPresent() && last.get() == reach)) {
            path.add(reach);
            reach = below(outcome, network, reach);
        }
        return path;
    }

    private static int below(Outcome outcome, RiverNetwork network, int reach) {
        int node = network.toNode(reach);
        int best = -1;
        for (int k = 0; k < network.outCount(node); k++) {
            int arm = network.out(node, k);
            double share =
                    outcome.result().input().hydraulics().water(0).splits().share(arm);
            if (best < 0
                    || share
                            > outcome.result()
                                    .input()
                                    .hydraulics()
                                    .water(0)
                                    .splits()
                                    .share(best)) {
                best = arm;
            }
        }
        return best;
    }

    private static int find(Outcome outcome, String name, String profile) {
        return ProfileEnds.find(outcome.basin(), name)
                .orElseThrow(() -> new IllegalStateException("profile " + profile + " ends nowhere: " + name));
    }
}
