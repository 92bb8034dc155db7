// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.StateSolution.Place;

/**
 * What a part of a run's mercury has of its values, background or that of some sites. Values of water and of suspended solids
 * are given spot by spot, since a reach's value is the largest of them and sites need not be largest where the whole is: the
 * spots of a reach are the same, in the same order, for all parts, bounds and variants.
 */
public final class MercuryPart {
    private static final Place[] PLACES = Place.values();

    private final SteadyResult result;
    private final StateLayout layout;
    private final Map<Bound, double[]> depositing;
    private final Map<Bound, List<Carried>> carried;
    private final BedStock stock;

    /** What is carried of it in a flow state and a bound. */
    interface Carried {
        /** Load of a form at a cell's head or end [kg/s]. */
        double load(int cell, Place place, int form, int variant);

        /** Time integral of a form's load in a cell [kg]. */
        double time(int cell, int form, int variant);

        /** On top of the mixed concentration near the bank [kg/m3]. */
        double extra(int cell, Place place, int form, int variant);

        /** Its budget. */
        Balance balance(int variant);

        /** Whether a reach lies within the full-mixing length of one of its outfalls. */
        boolean isNearBank(int reach);

        /** Whether a whole reach lies nearer to one of its outfalls than one width. */
        boolean isWithinOneWidth(int reach);
    }

    /** What the bed of a cell holds of it [kg]. */
    @FunctionalInterface
    interface BedStock {
        /** By form and variant. */
        double at(int cell, int form, int variant);
    }

    MercuryPart(
            SteadyResult result, Map<Bound, double[]> depositing, Map<Bound, List<Carried>> carried, BedStock stock) {
        this.result = result;
        this.layout = result.input().layout();
        this.depositing = new EnumMap<>(depositing);
        this.carried = new EnumMap<>(carried);
        this.stock = stock;
    }

    /** Of a part of water samples at each spot of a reach where there is water [kg/m3], near-bank values included. */
    public double[] water(Bound bound, int variant, int state, int reach, SampledPart part) {
        StateSolution solution = result.solution(bound, state);
        Carried own = carried.get(bound).get(state);
        int[] cells = result.cellsOf(reach);
        double[] values = new double[cells.length * PLACES.length];
        int spots = 0;
        for (int c : cells) {
            for (Place place : PLACES) {
                if (solution.hasWater(c, place)) {
                    values[spots++] = at(solution, own, c, place, variant, part);
                }
            }
        }
        return java.util.Arrays.copyOf(values, spots);
    }

    private double at(StateSolution solution, Carried own, int cell, Place place, int variant, SampledPart part) {
        int alike = solution.water().alike(cell);
        Place where = solution.water().isStill(cell) ? Place.END : place;
        double discharge = solution.discharge(cell, place);
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            double weight = part.weight(layout, form, solution.filteredShare(cell, form));
            if (weight > 0) {
                sum += weight
                        * (own.load(alike, where, form, variant) / discharge + own.extra(cell, place, form, variant));
            }
        }
        return sum;
    }

    /**
     * On suspended solids in each cell of a reach that has any [kg/kg dry].
     *
     * @param whole the part of whole water samples that counts
     */
    public double[] onSolids(Bound bound, int variant, int state, int reach, SampledPart whole) {
        StateSolution solution = result.solution(bound, state);
        Carried own = carried.get(bound).get(state);
        int[] cells = result.cellsOf(reach);
        double[] values = new double[cells.length];
        int spots = 0;
        for (int c : cells) {
            double solids = solution.water().isWet(c) ? solution.sediment(c) : 0;
            if (solids > 0) {
                int alike = solution.water().alike(c);
                double volume = solution.water().mean(alike) * solution.water().travelTime(alike);
                double held = 0;
                for (int form = 0; form < layout.count(); form++) {
                    double filtered = solution.filteredShare(c, form);
                    held += whole.weight(layout, form, filtered) * (1 - filtered) * own.time(alike, form, variant);
                }
                values[spots++] = held / volume / solids;
            }
        }
        return java.util.Arrays.copyOf(values, spots);
    }

    /** In a reach's bed [kg/kg dry], as {@link SteadyResult#bed} has it; only where the bed is assessed. */
    public double bed(Bound bound, int variant, int reach) {
        double sum = 0;
        double length = 0;
        for (int c : result.cellsOf(reach)) {
            double solids = bound == Bound.WITH_BED
                    ? result.bedAnswer().orElseThrow().over().exchange().solids(c)
                    : depositing.get(bound)[c];
            if (bound == Bound.WITH_BED || solids > 0) {
                sum += (bound == Bound.WITH_BED ? stocked(c, variant) : deposited(bound, c, variant))
                        / solids
                        * result.cells().length(c);
                length += result.cells().length(c);
            }
        }
        return length > 0 ? sum / length : 0;
    }

    private double stocked(int cell, int variant) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += stock.at(cell, form, variant);
        }
        return sum;
    }

    private double deposited(Bound bound, int cell, int variant) {
        double sum = 0;
        for (int s = 0; s < result.input().stateCount(); s++) {
            StateSolution solution = result.solution(bound, s);
            double share = result.input().hydraulics().share(s);
            for (int form = 0; solution.water().isWet(cell) && form < layout.count(); form++) {
                sum += share
                        * solution.rates().gross(cell, form)
                        * carried.get(bound).get(s).time(cell, form, variant);
            }
        }
        return sum;
    }

    /** Its budget, mean of the year over the flow states [kg/s]; processes that have none are left out. */
    public Map<Balance.Process, Double> yearly(Bound bound, int variant) {
        Map<Balance.Process, Double> sums = new EnumMap<>(Balance.Process.class);
        for (int s = 0; s < result.input().stateCount(); s++) {
            double share = result.input().hydraulics().share(s);
            for (Balance.Row row : carried.get(bound).get(s).balance(variant).rows()) {
                if (row.rate() > 0) {
                    sums.merge(row.process(), share * row.rate(), Double::sum);
                }
            }
        }
        return sums;
    }

    /** Whether a reach lies within the full-mixing length of one of its bank outfalls in a flow state. */
    public boolean isNearBank(int state, int reach) {
        return carried.get(Bound.CARRIED_THROUGH).get(state).isNearBank(reach);
    }

    /** Whether in some flow state a whole reach lies nearer to one of its bank outfalls than one width. */
    public boolean isWithinOneWidth(int reach) {
        return carried.get(Bound.LAID_DOWN).stream().anyMatch(state -> state.isWithinOneWidth(reach));
    }
}
