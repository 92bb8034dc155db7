// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.water.Cells;

/**
 * Bed and water of every reach year by year, and where all mercury is. Values hold background. Low and high are over the
 * variants of an unknown split. A reach's water value is the largest among the heads and ends of its cells, near-bank values
 * included; its bed value, mean of the year, the length-weighted mean of its cells.
 */
public final class YearsResult {
    private final TransportInput input;
    private final Cells cells;
    private final ReachCells reachCells;
    private final StateLayout layout;
    private final int reaches;
    private final int years;
    private final int variants;
    private final int members;
    private final int methyl;
    private final WaterYears water;
    private final YearBand bed;
    private final Optional<YearBand> bedMethyl;
    private final double[] buried;
    private final List<YearBudget> budgets = new ArrayList<>();
    private final double[][] total;
    private final double[][] made;
    private double[] lastStock = new double[0];
    private double worstClosure;

    YearsResult(TransportInput input, Cells cells, int years, List<SampledPart> parts) {
        this.input = input;
        this.cells = cells;
        this.reachCells = new ReachCells(input, cells);
        this.layout = input.layout();
        this.reaches = input.hydraulics().reaches().size();
        this.years = years;
        this.variants = input.variantCount();
        this.members = variants + 1;
        this.methyl = layout.find(Form.METHYL).orElse(-1);
        this.water = new WaterYears(input, cells, years, parts);
        this.bed = new YearBand(years, reaches);
        this.bedMethyl = methyl >= 0 ? Optional.of(new YearBand(years, reaches)) : Optional.empty();
        this.buried = new double[years * reaches];
        this.total = new double[variants][reaches];
        this.made = new double[variants][reaches];
    }

    /** What hears of the water. */
    WaterYears water() {
        return water;
    }

    void endYear(int year, BedWater over, double[] mean, double[] stock, YearBudget budget, double closure) {
        budgets.add(budget);
        worstClosure = Math.max(worstClosure, closure);
        lastStock = stock;
        water.endYear(year);
        for (int r = 0; r < reaches; r++) {
            buried[year * reaches + r] = buried(over, r);
            contents(over, r, mean);
            bed.put(year, r, total);
            if (bedMethyl.isPresent()) {
                bedMethyl.get().put(year, r, made);
            }
        }
    }

    private double buried(BedWater over, int reach) {
        double sum = 0;
        double length = 0;
        for (int c : reachCells.of(reach)) {
            sum += over.solids().motion().burial(c) * cells.length(c);
            length += cells.length(c);
        }
        return sum / length * Quantity.SECONDS_PER_YEAR;
    }

    private void contents(BedWater over, int reach, double[] stock) {
        double length = 0;
        for (int v = 0; v < variants; v++) {
            total[v][reach] = 0;
            made[v][reach] = 0;
        }
        for (int c : reachCells.of(reach)) {
            double solids = over.exchange().solids(c);
            if (solids > 0) {
                length += cells.length(c);
                for (int form = 0; form < layout.count(); form++) {
                    int at = (c * layout.count() + form) * members;
                    for (int v = 0; v < variants; v++) {
                        double content = (stock[at + v] + stock[at + members - 1]) / solids * cells.length(c);
                        total[v][reach] += content;
                        made[v][reach] += form == methyl ? content : 0;
                    }
                }
            }
        }
        for (int v = 0; v < variants && length > 0; v++) {
            total[v][reach] /= length;
            made[v][reach] /= length;
        }
    }

    /** Number of years [-]. */
    public int years() {
        return years;
    }

    /** All mercury in the bed [kg/kg dry]. */
    public YearBand bed() {
        return bed;
    }

    /** Thickness of the layer that a reach's bed buries in a year, counted from 0 [m]; its content is that year's. */
    public double buried(int year, int reach) {
        return buried[year * reaches + reach];
    }

    /** MeHg in the bed [kg/kg dry]; empty where it is not carried. */
    public Optional<YearBand> bedMethyl() {
        return bedMethyl;
    }

    /** Mean over the year of a part of the water, by its place in the list asked for [kg/m3]. */
    public YearBand mean(int part) {
        return water.mean(part);
    }

    /** Highest value in the year of a part of the water, by its place in the list asked for [kg/m3]. */
    public YearBand worst(int part) {
        return water.worst(part);
    }

    /** Where released mercury is. */
    public enum Whereabouts {
        /** Was in the beds in the beginning, above background. */
        BEGAN,
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
            case BEGAN -> budget.began(variant);
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

    /** Worst relative closure of any year, and of all years up to it [-]. */
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
