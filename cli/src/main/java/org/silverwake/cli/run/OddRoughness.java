// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/** Reaches whose slope, depth and velocity imply a Manning n outside 0.015 to 0.2, as defects. */
final class OddRoughness {
    private OddRoughness() {}

    static List<Defect> find(Basin basin, SteadyResult result) {
        List<Defect> defects = new ArrayList<>();
        for (int r = 0; r < basin.network().size(); r++) {
            double odd = worst(result, r);
            if (odd > 0) {
                defects.add(basin.map()
                        .defectAt(
                                basin.network().inputIndex(r),
                                Defect.Kind.ROUGHNESS_OUT_OF_RANGE,
                                "slope, depth and velocity imply Manning n " + Numbers.shown(odd, 2)
                                        + ", outside 0.015 to 0.2",
                                "check slope and channel shape there, or state channel.manning-n"));
            }
        }
        return defects;
    }

    private static double worst(SteadyResult result, int reach) {
        Cells cells = result.cells();
        for (int s = 0; s < result.input().stateCount(); s++) {
            StateHydraulics water = result.solution(Bound.LAID_DOWN, s).water();
            for (int c = cells.start(reach); c < cells.start(reach + 1); c++) {
                if (water.isWet(c) && water.isRoughnessOdd(c)) {
                    return water.impliedRoughness(c);
                }
            }
        }
        return 0;
    }
}
