// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.List;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.StateHydraulics;

/**
 * Takes one part of the network through the steps of the years: its reaches upstream first, and cell by cell the water over the
 * bed, the bed over what the water brought, and the water again over what the bed gives back. It writes to stocks and loads of
 * its own reaches alone. One thread at a time.
 */
final class BedPart {
    private final Hydraulics hydraulics;
    private final Cells cells;
    private final int[] reaches;
    private final List<HeadLoads> arriving;
    private final double[] stock;
    private final double[] yearMean;
    private final int width;
    private final int members;
    private final Propagator[] waters;
    private final Propagator beds;
    private final double[][] load;
    private final double[] source;
    private final double[] out;
    private final double[] time;
    private final double[] brought;
    private final double[] after;
    private final double[] held;
    private BedWater over;
    private BedSteps steps;
    private BedSteps.Maker maker;
    private WaterYears.Look look;
    private YearBudget budget;

    /**
     * A part.
     *
     * @param reaches its reaches, upstream first
     * @param arriving loads at the ends of all reaches, by flow state
     * @param stock what all beds hold, index (cell x forms + form) x members + member [kg]
     * @param yearMean the same in the mean of the year [kg]
     */
    BedPart(
            TransportInput input,
            Cells cells,
            int[] reaches,
            List<HeadLoads> arriving,
            double[] stock,
            double[] yearMean) {
        this.hydraulics = input.hydraulics();
        this.cells = cells;
        this.reaches = reaches;
        this.arriving = arriving;
        this.stock = stock;
        this.yearMean = yearMean;
        this.members = input.variantCount() + 1;
        this.width = input.layout().count() * members;
        this.waters = new Propagator[input.stateCount()];
        Arrays.setAll(
                waters,
                s -> new Propagator(input.layout().core(), input.layout().feeders()));
        this.beds = new Propagator(input.layout().core(), input.layout().feeders());
        this.load = new double[input.stateCount()][width];
        this.source = new double[width];
        this.out = new double[width];
        this.time = new double[width];
        this.brought = new double[width];
        this.after = new double[width];
        this.held = new double[width];
        this.budget = new YearBudget(members);
    }

    /** Makes ready for an era. */
    void era(BedWater over, BedSteps steps, WaterYears.Look look) {
        this.over = over;
        this.steps = steps;
        this.maker = steps.maker();
        this.look = look;
        for (int r : reaches) {
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                maker.prepare(c);
            }
        }
    }

    /** Begins a year with the exchangeable mercury by cell that holds methylation back [kg]. */
    void beginYear(double[] exchangeable) {
        budget = new YearBudget(members);
        for (int r : reaches) {
            Arrays.fill(yearMean, cells.start(r) * width, cells.start(r + 1) * width, 0);
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                maker.holdBack(c, exchangeable[c]);
            }
        }
    }

    /** Where mercury of this part went in the year. */
    YearBudget budget() {
        return budget;
    }

    void step(int kind) {
        double[] weight = steps.weight(kind);
        double duration = steps.duration(kind);
        budget.duration(duration);
        for (int r : reaches) {
            for (int s : steps.active(kind)) {
                enter(arriving.get(s), s, r, weight[s]);
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                cell(kind, c, weight);
            }
            for (int s : steps.active(kind)) {
                if (hydraulics.water(s).isWet(r)) {
                    look.leave(r, s, weight[s], duration);
                    arriving.get(s).leave(r, load[s], 0);
                    if (hydraulics.reaches().network().isOutlet(r)) {
                        budget.add(YearBudget.Term.EXPORTED, load[s], weight[s]);
                    }
                }
            }
        }
    }

    private void enter(HeadLoads arriving, int s, int r, double weight) {
        double[] releases = steps.releases(s);
        arriving.arriving(r, releases, load[s]);
        budget.addAt(YearBudget.Term.ENTERED, releases, r * width, width, weight);
        double taken = hydraulics.water(s).abstractedShare(r);
        if (taken > 0) {
            budget.add(YearBudget.Term.ABSTRACTED, load[s], weight * taken);
            for (int i = 0; i < width; i++) {
                load[s][i] *= 1 - taken;
            }
        }
        if (!hydraulics.water(s).isWet(r)) {
            budget.add(YearBudget.Term.HELD_DRY, load[s], weight);
            arriving.leaveNothing(r);
        }
    }

    private void cell(int kind, int c, double[] weight) {
        Arrays.fill(brought, 0);
        for (int s : steps.active(kind)) {
            if (over.water().get(s).isWet(c)) {
                bring(s, c, weight[s]);
            }
        }
        bed(kind, c);
        for (int s : steps.active(kind)) {
            StateHydraulics water = over.water().get(s);
            if (water.isWet(c)) {
                Arrays.fill(source, 0);
                over.background(s, c, source);
                over.addReturned(s, c, held, source);
                waters[s].applyAll(load[s], source, out, time, members);
                over.addLosses(s, c, weight[s], time, budget);
                look.pass(over.rates(s), water, c, load[s], out);
                System.arraycopy(out, 0, load[s], 0, width);
            }
        }
    }

    /** What the water of a state brings to a cell's bed. */
    private void bring(int s, int c, double weight) {
        int at = over.takeUpIndex();
        double takenUp = over.takenUp(s, c);
        load[s][at] += takenUp;
        Arrays.fill(source, 0);
        over.background(s, c, source);
        double along = source[at] * over.water().get(s).travelTime(c);
        budget.addOne(YearBudget.Term.ENTERED, members - 1, weight * (takenUp + along));
        steps.takeWater(waters[s], s, c);
        waters[s].applyAll(load[s], source, out, time, members);
        over.addBrought(s, c, weight, time, brought);
    }

    private void bed(int kind, int c) {
        steps.takeBed(beds, kind, c);
        System.arraycopy(stock, c * width, held, 0, width);
        beds.applyAll(held, brought, after, time, members);
        System.arraycopy(after, 0, stock, c * width, width);
        for (int i = 0; i < width; i++) {
            held[i] = time[i] / steps.duration(kind);
            yearMean[c * width + i] += time[i] / Quantity.SECONDS_PER_YEAR;
        }
        over.addBuried(c, held, budget);
    }
}
