// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.water.Cells;

/**
 * Bed and water of every reach year by year, and where all mercury is. Values hold background. Low and high are over the
 * variants of an unknown split. A reach's water value is the largest among the heads and ends of its cells, near-bank values
 * included; its bed value the length-weighted mean of its cells.
 */
public final class YearsResult {
    private final TransportInput input;
    private final Cells cells;
    private final StateLayout layout;
    private final int reaches;
    private final int years;
    private final int variants;
    private final int members;
    private final int methyl;
    private final Map<Series, float[]> low = new EnumMap<>(Series.class);
    private final Map<Series, float[]> high = new EnumMap<>(Series.class);
    private final List<YearBudget> budgets = new ArrayList<>();
    private final double[][][] mean;
    private final double[][][] worst;
    private final double[][][] now;
    private List<NearBank> nearBank = List.of();
    private double[] lastStock = new double[0];
    private double worstClosure;

    /** What is kept of every reach and year. */
    public enum Series {
        /** All mercury in the bed's solids at the year's end [kg/kg dry]. */
        BED_TOTAL,
        /** MeHg in the bed's solids at the year's end [kg/kg dry]. */
        BED_METHYL,
        /** All mercury of whole water, mean of the year [kg/m3]. */
        WHOLE_MEAN,
        /** All mercury of whole water, highest in the year [kg/m3]. */
        WHOLE_WORST,
        /** All mercury of filtered water, mean of the year [kg/m3]. */
        FILTERED_MEAN,
        /** All mercury of filtered water, highest in the year [kg/m3]. */
        FILTERED_WORST,
        /** MeHg of whole water, mean of the year [kg/m3]. */
        METHYL_WHOLE_MEAN,
        /** MeHg of whole water, highest in the year [kg/m3]. */
        METHYL_WHOLE_WORST,
        /** MeHg of filtered water, mean of the year [kg/m3]. */
        METHYL_FILTERED_MEAN,
        /** MeHg of filtered water, highest in the year [kg/m3]. */
        METHYL_FILTERED_WORST
    }

    private static final int MEASURES = 4;

    YearsResult(TransportInput input, Cells cells, int years) {
        this.input = input;
        this.cells = cells;
        this.layout = input.layout();
        this.reaches = input.hydraulics().reaches().size();
        this.years = years;
        this.variants = input.variantCount();
        this.members = variants + 1;
        this.methyl = layout.find(Form.METHYL).orElse(-1);
        for (Series series : Series.values()) {
            if (methyl >= 0 || !series.name().contains("METHYL")) {
                low.put(series, new float[years * reaches]);
                high.put(series, new float[years * reaches]);
            }
        }
        this.mean = new double[MEASURES][variants][reaches];
        this.worst = new double[MEASURES][variants][reaches];
        this.now = new double[input.stateCount()][MEASURES][variants];
    }

    /** Takes the near-bank values of a new era. */
    void era(List<NearBank> banks) {
        nearBank = List.copyOf(banks);
    }

    void newYear() {
        for (int k = 0; k < MEASURES; k++) {
            for (int v = 0; v < variants; v++) {
                Arrays.fill(mean[k][v], 0);
                Arrays.fill(worst[k][v], 0);
            }
        }
    }

    /** Looks at a cell's head and end; the reach keeps the largest. */
    void pass(CellRates rates, int state, int c, double[] head, double headFlow, double[] end, double endFlow) {
        look(rates, state, c, head, headFlow, true);
        look(rates, state, c, end, endFlow, false);
    }

    private void look(CellRates rates, int state, int c, double[] load, double discharge, boolean atHead) {
        if (!(discharge > 0)) {
            return;
        }
        NearBank bank = nearBank.get(state);
        boolean marked = bank.isMarked(cells.reach(c));
        double[][] largest = now[state];
        for (int v = 0; v < variants; v++) {
            double whole = 0;
            double filtered = 0;
            double methylWhole = 0;
            double methylFiltered = 0;
            for (int form = 0; form < layout.count(); form++) {
                double value = (load[form * members + v] + load[form * members + members - 1]) / discharge;
                if (marked) {
                    value += atHead ? bank.head(c, form, v) : bank.end(c, form, v);
                }
                double passes = value * rates.filtered(c, form);
                whole += layout.isSampled(form) ? value : 0;
                filtered += passes;
                if (form == methyl) {
                    methylWhole = value;
                    methylFiltered = passes;
                }
            }
            largest[0][v] = Math.max(largest[0][v], whole);
            largest[1][v] = Math.max(largest[1][v], filtered);
            largest[2][v] = Math.max(largest[2][v], methylWhole);
            largest[MEASURES - 1][v] = Math.max(largest[MEASURES - 1][v], methylFiltered);
        }
    }

    /** Ends a reach in a flow state of a step. */
    void leave(int reach, int state, double weight, double duration) {
        double share = weight * duration / Quantity.SECONDS_PER_YEAR;
        for (int k = 0; k < MEASURES; k++) {
            for (int v = 0; v < variants; v++) {
                mean[k][v][reach] += share * now[state][k][v];
                worst[k][v][reach] = Math.max(worst[k][v][reach], now[state][k][v]);
                now[state][k][v] = 0;
            }
        }
    }

    void endYear(int year, BedWater over, double[] stock, YearBudget budget, double closure) {
        budgets.add(budget);
        worstClosure = Math.max(worstClosure, closure);
        lastStock = stock;
        Series[] water = Series.values();
        int first = Series.WHOLE_MEAN.ordinal();
        for (int r = 0; r < reaches; r++) {
            for (int k = 0; k < (methyl >= 0 ? MEASURES : 2); k++) {
                keep(water[first + 2 * k], year, r, mean[k]);
                keep(water[first + 2 * k + 1], year, r, worst[k]);
            }
            bed(over, year, r, stock);
        }
    }

    private void keep(Series series, int year, int reach, double[][] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double[] variant : values) {
            least = Math.min(least, variant[reach]);
            most = Math.max(most, variant[reach]);
        }
        low.get(series)[year * reaches + reach] = (float) least;
        high.get(series)[year * reaches + reach] = (float) most;
    }

    private void bed(BedWater over, int year, int reach, double[] stock) {
        double[][] total = new double[variants][1];
        double[][] made = new double[variants][1];
        double length = 0;
        for (int c = cells.start(reach); c < cells.start(reach + 1); c++) {
            double solids = over.exchange().solids(c);
            if (solids > 0) {
                length += cells.length(c);
                for (int form = 0; form < layout.count(); form++) {
                    int at = (c * layout.count() + form) * members;
                    for (int v = 0; v < variants; v++) {
                        double content = (stock[at + v] + stock[at + members - 1]) / solids * cells.length(c);
                        total[v][0] += content;
                        made[v][0] += form == methyl ? content : 0;
                    }
                }
            }
        }
        for (int v = 0; v < variants; v++) {
            total[v][0] = length > 0 ? total[v][0] / length : 0;
            made[v][0] = length > 0 ? made[v][0] / length : 0;
        }
        keepOne(Series.BED_TOTAL, year, reach, total);
        if (methyl >= 0) {
            keepOne(Series.BED_METHYL, year, reach, made);
        }
    }

    private void keepOne(Series series, int year, int reach, double[][] values) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double[] variant : values) {
            least = Math.min(least, variant[0]);
            most = Math.max(most, variant[0]);
        }
        low.get(series)[year * reaches + reach] = (float) least;
        high.get(series)[year * reaches + reach] = (float) most;
    }

    /** Number of years [-]. */
    public int years() {
        return years;
    }

    /** Whether a series was kept: those of MeHg only where it is carried. */
    public boolean has(Series series) {
        return low.containsKey(series);
    }

    /** Lowest value of a series over variants in a year, counted from 0 [kg/m3 or kg/kg]. */
    public double low(Series series, int year, int reach) {
        return low.get(series)[year * reaches + reach];
    }

    /** Highest value of a series over variants in a year, counted from 0 [kg/m3 or kg/kg]. */
    public double high(Series series, int year, int reach) {
        return high.get(series)[year * reaches + reach];
    }

    /** Where released mercury is. */
    public enum Whereabouts {
        /** Came in from sites. */
        RELEASED,
        /** In the active layer of all beds. */
        BED,
        /** Below it. */
        BURIED,
        /** In the air. */
        EVADED,
        /** Past the outlets. */
        EXPORTED,
        /** On flooded land. */
        OVERBANK,
        /** Taken with water. */
        ABSTRACTED,
        /** Where a reach had no water. */
        HELD_DRY
    }

    /** Released mercury since the beginning, by where it is at a year's end, in a variant, background left out [kg]. */
    public double amount(Whereabouts where, int year, int variant) {
        YearBudget budget = budgets.get(year);
        return switch (where) {
            case RELEASED -> budget.amount(YearBudget.Term.ENTERED, variant);
            case BED -> budget.store(variant);
            case BURIED -> budget.amount(YearBudget.Term.BURIED, variant);
            case EVADED -> budget.amount(YearBudget.Term.EVADED, variant);
            case EXPORTED -> budget.amount(YearBudget.Term.EXPORTED, variant);
            case OVERBANK -> budget.amount(YearBudget.Term.OVERBANK, variant);
            case ABSTRACTED -> budget.amount(YearBudget.Term.ABSTRACTED, variant);
            case HELD_DRY -> budget.amount(YearBudget.Term.HELD_DRY, variant);
        };
    }

    /** Worst relative closure of any year [-]. */
    public double worstClosure() {
        return worstClosure;
    }

    /** What the bed of a cell holds in the end, index (cell x forms + form) x members + member [kg]. */
    double[] lastStock() {
        return lastStock;
    }

    /** The input. */
    public TransportInput input() {
        return input;
    }
}
