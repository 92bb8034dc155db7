// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * The solution of one flow state in one bound: concentrations at heads and ends of cells, background included. All cells of a
 * still water have that of its mixed water, at their heads as at their ends.
 */
public final class StateSolution {
    private final StateLayout layout;
    private final Cells cells;
    private final StateHydraulics water;
    private final SolidsState solids;
    private final CellRates rates;
    private final StateLoads sweep;
    private final BackgroundLoads background;
    private final NearBank nearBank;
    private final int variants;

    StateSolution(
            TransportInput input,
            Cells cells,
            StateHydraulics water,
            SolidsState solids,
            CellRates rates,
            StateLoads sweep,
            BackgroundLoads background) {
        this.layout = input.layout();
        this.cells = cells;
        this.water = water;
        this.background = background;
        this.solids = solids;
        this.rates = rates;
        this.sweep = sweep;
        this.nearBank = NearBank.run(input, cells, water, rates);
        this.variants = input.variantCount();
    }

    static StateSolution solve(
            TransportInput input, Cells cells, StateHydraulics water, BackgroundLoads background, Bound bound) {
        SolidsState solids = SolidsState.sweep(input, cells, water, bound);
        CellRates rates = CellRates.of(input, cells, water, solids);
        return new StateSolution(
                input, cells, water, solids, rates, MercurySweep.run(input, cells, water, rates), background);
    }

    /** Where in a cell, and with what. */
    public enum Place {
        /** The cell's head, mixed. */
        HEAD,
        /** The cell's end, mixed. */
        END
    }

    /** The hydraulics. */
    public StateHydraulics water() {
        return water;
    }

    /** The rates. */
    CellRates rates() {
        return rates;
    }

    /** The background. */
    BackgroundLoads backgroundLoads() {
        return background;
    }

    /** Number of variants of the split [-]. */
    public int variants() {
        return variants;
    }

    /** Whether there is water at a place of a cell. */
    public boolean hasWater(int cell, Place place) {
        return discharge(cell, place) > 0;
    }

    /** Discharge that dilutes what is mixed at a place of a cell [m3/s]. */
    double discharge(int cell, Place place) {
        return place == Place.HEAD && !water.isStill(cell) ? water.head(cell) : water.end(water.alike(cell));
    }

    /** Concentration of one form, mixed, background included in the exchangeable [kg/m3]; there must be water. */
    public double form(int cell, Place place, int form, int variant) {
        int at = water.alike(cell);
        double load = place == Place.HEAD && !water.isStill(cell)
                ? sweep.head(at, form, variant) + background.head(at, form)
                : sweep.end(at, form, variant) + background.end(at, form);
        return load / discharge(cell, place);
    }

    private double extra(int cell, Place place, int form, int variant) {
        return place == Place.HEAD ? nearBank.head(cell, form, variant) : nearBank.end(cell, form, variant);
    }

    /** Load of a form, released alone [kg/s]. */
    public double released(int cell, Place place, int form, int variant) {
        return place == Place.HEAD ? sweep.head(cell, form, variant) : sweep.end(cell, form, variant);
    }

    /** Load of background, all forms [kg/s]. */
    public double backgroundLoad(int cell, Place place) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += place == Place.HEAD ? background.head(cell, form) : background.end(cell, form);
        }
        return sum;
    }

    /** Concentration of a part of the carried forms [kg/m3], with what is on top near the bank if asked. */
    public double part(SampledPart part, int cell, Place place, int variant, boolean nearBankToo) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            double value = form(cell, place, form, variant) + (nearBankToo ? extra(cell, place, form, variant) : 0);
            sum += value * part.weight(layout, form, filteredShare(cell, form));
        }
        return sum;
    }

    /** Total mercury in whole water, droplets above 63 um left out as samples do [kg/m3], with what is on top near the bank if asked. */
    public double whole(int cell, Place place, int variant, boolean nearBankToo) {
        return part(SteadyResult.Fraction.WHOLE, cell, place, variant, nearBankToo);
    }

    /** Filtered total mercury [kg/m3], with what is on top near the bank if asked. */
    public double filtered(int cell, Place place, int variant, boolean nearBankToo) {
        return part(SteadyResult.Fraction.FILTERED, cell, place, variant, nearBankToo);
    }

    /** Background alone, whole water [kg/m3]. */
    public double backgroundWhole(int cell, Place place) {
        return background(SteadyResult.Fraction.WHOLE, cell, place);
    }

    private double background(int cell, Place place, int form) {
        int at = water.alike(cell);
        double load =
                place == Place.HEAD && !water.isStill(cell) ? background.head(at, form) : background.end(at, form);
        return load / discharge(cell, place);
    }

    /** Background alone, filtered [kg/m3]. */
    public double backgroundFiltered(int cell, Place place) {
        return background(SteadyResult.Fraction.FILTERED, cell, place);
    }

    /** A part of background alone [kg/m3]; there must be water. */
    public double background(SampledPart part, int cell, Place place) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += background(cell, place, form) * part.weight(layout, form, filteredShare(cell, form));
        }
        return sum;
    }

    /** Mean concentration of one form over a cell's water, background included in the exchangeable [kg/m3]. */
    public double mean(int cell, int form, int variant) {
        int at = water.alike(cell);
        double tau = water.travelTime(at);
        double mass = sweep.time(at, form, variant) + background.time(at, form);
        return mass / (water.mean(at) * tau);
    }

    /** Filtered share of exchangeable mercury [-]. */
    public double filteredShare(int cell) {
        return filteredShare(cell, layout.exchangeable());
    }

    /** Filtered share of a form [-]. */
    public double filteredShare(int cell, int form) {
        return rates.filtered(water.alike(cell), form);
    }

    /** Suspended sediment, tailings included, mean of the cell [kg/m3]. */
    public double sediment(int cell) {
        return solids.sediment(water.alike(cell));
    }

    /** Tailings solids, mean of the cell [kg/m3]. */
    public double tailings(int cell) {
        double sum = 0;
        for (int j = 0; j < layout.classCount(); j++) {
            sum += solids.tailings(water.alike(cell), j);
        }
        return sum;
    }

    /** Reaches marked as slurry. */
    public List<Integer> slurry() {
        return solids.slurry();
    }

    /** Whether part of a reach lies within the full-mixing length of a bank outfall. */
    public boolean isNearBank(int reach) {
        return nearBank.isMarked(reach);
    }

    /** Whether a whole reach lies nearer to a bank outfall than one width. */
    public boolean isWithinOneWidth(int reach) {
        return nearBank.isWithinOneWidth(reach);
    }

    /** Gross deposition of solids in a cell [kg/s]. */
    double solidsDeposition(int cell) {
        double sum = 0;
        double volume = water.mean(cell) * water.travelTime(cell);
        for (int j = 0; j < layout.classCount(); j++) {
            sum += solids.rate(cell, j) * solids.solids(cell, j) * volume;
        }
        return sum;
    }

    /** Gross deposition of mercury in a cell, released alone [kg/s]. */
    double mercuryDeposition(int cell, int variant) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += rates.gross(cell, form) * sweep.time(cell, form, variant);
        }
        return sum;
    }

    /** Gross deposition of background mercury in a cell [kg/s]. */
    double backgroundDeposition(int cell) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += rates.gross(cell, form) * background.time(cell, form);
        }
        return sum;
    }

    /** Settling rate of a form as the bound has it [1/s]. */
    public double settlingRate(int cell, int form) {
        return rates.settled(cell, form);
    }

    /** Rate at which a form escapes to the air [1/s]. */
    public double evasionRate(int cell, int form) {
        return rates.evaded(cell, form);
    }

    /** Time integral of a form's load in a cell, released alone [kg]. */
    double time(int cell, int form, int variant) {
        return sweep.time(cell, form, variant);
    }

    /** Rate at which a form leaves as itself [1/s]: settling as the bound has it, overbank, evasion, turning into another form. */
    double lossRate(int cell, int form) {
        return rates.lossRate(cell, form);
    }

    /** Load of a form at a reach's end, released alone [kg/s]. */
    public double loadOut(int reach, int form, int variant) {
        return sweep.end(cells.start(reach + 1) - 1, form, variant);
    }

    /** Load of all forms at a reach's end, released alone [kg/s]. */
    public double loadOut(int reach, int variant) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += loadOut(reach, form, variant);
        }
        return sum;
    }

    /** Load of a form at a reach's head, after releases and abstraction, released alone [kg/s]. */
    public double loadIn(int reach, int form, int variant) {
        return sweep.head(cells.start(reach), form, variant);
    }

    /** Rate at which a reach loses all forms over its banks, released alone [kg/s]. */
    double overbank(int reach, int variant) {
        double sum = 0;
        for (int c = cells.start(reach); c < cells.start(reach + 1) && water.isWet(c); c++) {
            for (int form = 0; form < layout.count(); form++) {
                sum += rates.overbank(c, form) * sweep.time(c, form, variant);
            }
        }
        return sum;
    }

    /** What declared abstractions at a reach's head take, all forms, background included [kg/s]. */
    public double abstracted(int reach, int variant) {
        return sweep.taken(reach, variant) + background.taken(reach);
    }

    /** The budget of a variant, background included. */
    public Balance balance(int variant) {
        return sweep.balance(rates, variant).plus(background.balance());
    }

    /** The budget of released mercury alone. */
    Balance releasedBalance(int variant) {
        return sweep.balance(rates, variant);
    }

    /** Worst relative closure [-] of released mercury and of background, each by itself so that neither hides the other. */
    double worstClosure(int variant) {
        return Math.max(releasedBalance(variant).closure(), background.balance().closure());
    }

    /** The budget of released mercury with one settling rate scaled after the fact; closure must notice. */
    Balance perturbedBalance(int variant, int cell, int form, double factor) {
        return sweep.balance(rates.perturbed(cell, form, factor), variant);
    }
}
