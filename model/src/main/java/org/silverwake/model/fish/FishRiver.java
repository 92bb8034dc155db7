// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.water.ReachTable;

/**
 * What fish need of a river.
 *
 * @param reaches its reaches
 * @param discharge mean over the year at each reach's end [m3/s]; 0 where there is never water
 * @param dams nodes at which a dam stands
 * @param methyl methylmercury in filtered water; empty where it is not carried
 */
record FishRiver(ReachTable reaches, List<Double> discharge, Set<Integer> dams, Optional<MethylWater> methyl) {
    FishRiver {
        discharge = List.copyOf(discharge);
        dams = Set.copyOf(dams);
    }

    static FishRiver of(SteadyResult result, Set<Integer> dams, boolean isMethylCarried) {
        List<Double> discharge = new ArrayList<>();
        ReachTable reaches = result.input().hydraulics().reaches();
        for (int r = 0; r < reaches.size(); r++) {
            double mean = 0;
            for (int s = 0; s < result.input().stateCount(); s++) {
                double end = result.solution(Bound.CARRIED_THROUGH, s)
                        .water()
                        .end(result.cells().start(r + 1) - 1);
                mean += result.isWet(s, r) ? result.input().hydraulics().share(s) * end : 0;
            }
            discharge.add(mean);
        }
        return new FishRiver(
                reaches, discharge, dams, isMethylCarried ? Optional.of(MethylWater.of(result)) : Optional.empty());
    }

    boolean hasWater(int reach) {
        return discharge.get(reach) > 0;
    }
}
