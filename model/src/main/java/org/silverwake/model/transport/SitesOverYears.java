// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.transport.SiteShares.WaterWeights;

/**
 * What each site left in beds that are shown after some years at the present rate, and has in the water over them: the years
 * gone through once for each site, at the solids, the water and the methylation of the whole run.
 */
public final class SitesOverYears {
    private final SteadyResult result;
    private final List<BedAnswer> alone;

    private SitesOverYears(SteadyResult result, List<BedAnswer> alone) {
        this.result = result;
        this.alone = List.copyOf(alone);
    }

    /** Of a result; empty where its bed is in balance, or there is none. Takes as many runs through the years as there are sites, and one. */
    public static Optional<SitesOverYears> of(SteadyResult result) {
        if (result.bedAnswer().isEmpty()
                || result.bedAnswer().get().afterYears().isEmpty()) {
            return Optional.empty();
        }
        BedAnswer whole = result.bedAnswer().get();
        HeldBack held = HeldBack.kept();
        BedYears.run(result.input(), result.cells(), SteadyRun.atThisRate(result.input()), List.of(), held);
        List<BedAnswer> alone = new ArrayList<>();
        for (int i = 0; i < result.input().sites().size(); i++) {
            TransportInput one = result.input().mercuryOf(i);
            YearsResult years = BedYears.run(one, result.cells(), SteadyRun.atThisRate(one), List.of(), held.again());
            alone.add(whole.of(one, years.lastStock()));
        }
        return Optional.of(new SitesOverYears(result, alone));
    }

    /** What a site has in the water [kg/m3]. */
    double mixed(int site, int state, int variant, WaterWeights weights) {
        StateSolution solution = alone.get(site).solution(state);
        double sum = 0;
        for (int form = 0; form < weights.weight().size(); form++) {
            StateSolution.Place place = weights.atHead() ? StateSolution.Place.HEAD : StateSolution.Place.END;
            sum += weights.weight().get(form) * solution.released(weights.cell(), place, form, variant);
        }
        return sum;
    }

    /** What a site has in a reach's bed [kg/kg dry]. */
    double content(int site, int reach, int variant) {
        BedAnswer own = alone.get(site);
        double sum = 0;
        double length = 0;
        for (int c : result.cellsOf(reach)) {
            for (int form = 0; form < result.input().layout().count(); form++) {
                sum += own.stock(c, form, variant)
                        / own.over().exchange().solids(c)
                        * result.cells().length(c);
            }
            length += result.cells().length(c);
        }
        return sum / length;
    }
}
