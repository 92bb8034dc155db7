// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.model.transport.SiteShares.WaterWeights;
import org.silverwake.model.transport.StateSolution.Place;

/**
 * What each site left in beds that are shown after some years at the present rate, and has in the water over them: the years
 * gone through once for each site, at the solids, the water and the methylation of the whole run. Kept of it are the reaches
 * asked for.
 */
public final class SitesOverYears {
    private final SteadyResult result;
    private final List<Map<Integer, OfCell>> sites;

    private SitesOverYears(SteadyResult result, List<Map<Integer, OfCell>> sites) {
        this.result = result;
        this.sites = List.copyOf(sites);
    }

    /** One site's loads at a cell's head and end, by state, form and variant [kg/s], and what it has in its bed, by form and variant [kg]. */
    private static final class OfCell {
        private final int forms;
        private final int variants;
        private final double[] head;
        private final double[] end;
        private final double[] stock;

        OfCell(BedAnswer alone, int cell, int states, int forms) {
            this.forms = forms;
            this.variants = alone.solution(0).variants();
            this.head = new double[states * forms * variants];
            this.end = new double[states * forms * variants];
            this.stock = new double[forms * variants];
            for (int form = 0; form < forms; form++) {
                for (int v = 0; v < variants; v++) {
                    for (int s = 0; s < states; s++) {
                        head[at(s, form, v)] = alone.solution(s).released(cell, Place.HEAD, form, v);
                        end[at(s, form, v)] = alone.solution(s).released(cell, Place.END, form, v);
                    }
                    stock[at(0, form, v)] = alone.stock(cell, form, v);
                }
            }
        }

        private int at(int state, int form, int variant) {
            return (state * forms + form) * variants + variant;
        }
    }

    /**
     * Of a result; empty where its bed is in balance, or there is none. Takes as many runs through the years as there are sites,
     * and one.
     *
     * @param reaches those that shares will be asked of
     */
    public static Optional<SitesOverYears> of(SteadyResult result, Collection<Integer> reaches) {
        if (result.bedAnswer().isEmpty()
                || result.bedAnswer().get().afterYears().isEmpty()) {
            return Optional.empty();
        }
        TransportInput input = result.input();
        Set<Integer> cells = cells(result, reaches);
        HeldBack held = HeldBack.kept();
        BedYears.run(input, result.cells(), SteadyRun.atThisRate(input), List.of(), held);
        List<Map<Integer, OfCell>> sites = new ArrayList<>();
        for (int i = 0; i < input.sites().size(); i++) {
            TransportInput one = input.mercuryOf(i);
            YearsResult years = BedYears.run(one, result.cells(), SteadyRun.atThisRate(one), List.of(), held.again());
            BedAnswer alone = result.bedAnswer().get().of(one, years.lastStock());
            Map<Integer, OfCell> kept = new HashMap<>();
            for (int c : cells) {
                kept.put(
                        c,
                        new OfCell(alone, c, input.stateCount(), input.layout().count()));
            }
            sites.add(kept);
        }
        return Optional.of(new SitesOverYears(result, sites));
    }

    /** The cells of reaches, and in each state those whose water is theirs. */
    private static Set<Integer> cells(SteadyResult result, Collection<Integer> reaches) {
        Set<Integer> cells = new TreeSet<>();
        for (int r : reaches) {
            for (int c : result.cellsOf(r)) {
                cells.add(c);
                for (int s = 0; s < result.input().stateCount(); s++) {
                    cells.add(result.solution(Bound.WITH_BED, s).water().alike(c));
                }
            }
        }
        return cells;
    }

    /** What a site has in the water [kg/m3]. */
    double mixed(int site, int state, int variant, WaterWeights weights) {
        OfCell kept = sites.get(site).get(weights.cell());
        double[] loads = weights.atHead() ? kept.head : kept.end;
        double sum = 0;
        for (int form = 0; form < weights.weight().size(); form++) {
            sum += weights.weight().get(form) * loads[kept.at(state, form, variant)];
        }
        return sum;
    }

    /** What a site has in a reach's bed [kg/kg dry]. */
    double content(int site, int reach, int variant) {
        BedExchange exchange = result.bedAnswer().orElseThrow().over().exchange();
        double sum = 0;
        double length = 0;
        for (int c : result.cellsOf(reach)) {
            OfCell kept = sites.get(site).get(c);
            for (int form = 0; form < kept.forms; form++) {
                sum += kept.stock[kept.at(0, form, variant)]
                        / exchange.solids(c)
                        * result.cells().length(c);
            }
            length += result.cells().length(c);
        }
        return sum / length;
    }
}
