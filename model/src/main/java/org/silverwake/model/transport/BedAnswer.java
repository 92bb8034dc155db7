// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.numerics.CompensatedSum;
import org.silverwake.model.water.Cells;

/**
 * River and bed together: the water of every flow state over the stocks of the one bed under them. Contents are per dry
 * solids of the active layer, length-weighted over a reach's cells.
 */
public final class BedAnswer {
    private final BedWater over;
    private final Cells cells;
    private final ReachCells reachCells;
    private final StateLayout layout;
    private final int variants;
    private final BedStocks stocks;
    private final List<StateLoads> loads;
    private final List<StateSolution> solutions = new ArrayList<>();
    private final OptionalInt afterYears;

    private BedAnswer(BedWater over, List<StateLoads> loads, BedStocks stocks, OptionalInt afterYears) {
        this.over = over;
        this.afterYears = afterYears;
        this.cells = over.cells();
        this.reachCells = new ReachCells(over.input(), cells);
        this.layout = over.input().layout();
        this.variants = over.input().variantCount();
        this.stocks = stocks;
        this.loads = List.copyOf(loads);
        for (int s = 0; s < loads.size(); s++) {
            solutions.add(new StateSolution(
                    over.input(),
                    cells,
                    over.water().get(s),
                    over.solids().water().get(s),
                    over.rates(s),
                    loads.get(s),
                    new Background(s)));
        }
    }

    /** The answer in balance; a form that never leaves the bed again is laid down for the horizon. */
    static BedAnswer steady(BedWater over, double horizon) {
        List<StateLoads> loads = loads(over);
        return new BedAnswer(over, loads, BedSteady.solve(over, loads, horizon), OptionalInt.empty());
    }

    /** The answer after some years at the present rate, from stocks by cell, form and member [kg]. */
    BedAnswer after(int years, double[] stock) {
        List<StateLoads> loads = loads(over);
        BedStocks then = stocks.with(stock);
        BedSteady.carry(over, loads, then);
        return new BedAnswer(over, loads, then, OptionalInt.of(years));
    }

    /** The answer after the same years when other sites release mercury into the same water and solids, from their stocks [kg]. */
    BedAnswer of(TransportInput others, double[] stock) {
        return new BedAnswer(over.of(others), List.of(), stocks, afterYears).after(afterYears.orElseThrow(), stock);
    }

    private static List<StateLoads> loads(BedWater over) {
        List<StateLoads> loads = new ArrayList<>();
        for (int s = 0; s < over.input().stateCount(); s++) {
            loads.add(over.loads(s));
        }
        return loads;
    }

    /** After how many years at the present rate it is [-]; empty where river and bed are in balance. */
    public OptionalInt afterYears() {
        return afterYears;
    }

    /**
     * How long released mercury stays in a reach's bed in the mean, longest of its cells [s]; 0 where none is, infinite where
     * some of it never leaves.
     */
    public double residence(int reach) {
        double longest = 0;
        for (int c : cellsOf(reach)) {
            longest = Math.max(longest, stocks.residence(c));
        }
        return longest;
    }

    /** The longest of {@link #residence} over all reaches [s]. */
    public double longestResidence() {
        double longest = 0;
        for (int r = 0; r < over.input().hydraulics().reaches().size(); r++) {
            longest = Math.max(longest, residence(r));
        }
        return longest;
    }

    /** The background's part of the loads, whose last member it is. */
    private final class Background implements BackgroundLoads {
        private final int state;

        Background(int state) {
            this.state = state;
        }

        @Override
        public double head(int cell, int form) {
            return loads.get(state).head(cell, form, variants);
        }

        @Override
        public double end(int cell, int form) {
            return loads.get(state).end(cell, form, variants);
        }

        @Override
        public double time(int cell, int form) {
            return loads.get(state).time(cell, form, variants);
        }

        @Override
        public double taken(int reach) {
            return loads.get(state).taken(reach, variants);
        }

        @Override
        public Balance balance() {
            List<Balance.Row> rows = new ArrayList<>();
            for (Balance.Row row :
                    loads.get(state).balance(over.rates(state), variants).rows()) {
                boolean enters = row.process() == Process.RELEASED || row.process() == Process.LATERAL;
                rows.add(new Balance.Row(enters ? Process.BACKGROUND : row.process(), row.form(), row.rate()));
            }
            return new Balance(rows);
        }
    }

    /** The water of a flow state. */
    public StateSolution solution(int state) {
        return solutions.get(state);
    }

    private int[] cellsOf(int reach) {
        return reachCells.of(reach);
    }

    /** Whether a reach has a bed: it carries water at some time. */
    public boolean hasBed(int reach) {
        return over.exchange().solids(cellsOf(reach)[0]) > 0;
    }

    /** Content of a form in a reach's bed, background included [kg/kg dry]; there must be a bed. */
    public double content(int reach, int form, int variant) {
        double sum = 0;
        double length = 0;
        for (int c : cellsOf(reach)) {
            sum += stocks.at(c, form, variant, true) / over.exchange().solids(c) * cells.length(c);
            length += cells.length(c);
        }
        return sum / length;
    }

    /** Content of all forms in a reach's bed, background included [kg/kg dry]; there must be a bed. */
    public double content(int reach, int variant) {
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            sum += content(reach, form, variant);
        }
        return sum;
    }

    /** The same of background mercury alone [kg/kg dry]. */
    public double backgroundContent(int reach) {
        return backgroundContent(reach, form -> true);
    }

    /** The same of some forms [kg/kg dry]; there must be a bed. */
    public double backgroundContent(int reach, IntPredicate forms) {
        double sum = 0;
        double length = 0;
        for (int c : cellsOf(reach)) {
            for (int form = 0; form < layout.count(); form++) {
                if (!forms.test(form)) {
                    continue;
                }
                sum += stocks.at(c, form, variants) / over.exchange().solids(c) * cells.length(c);
            }
            length += cells.length(c);
        }
        return sum / length;
    }

    /** Loads of a state; the last member is the background. */
    StateLoads loads(int state) {
        return loads.get(state);
    }

    /** The water over it. */
    BedWater over() {
        return over;
    }

    /** The stocks. */
    BedStocks stocks() {
        return stocks;
    }

    /** What a cell's bed holds of a form, released mercury alone [kg]. */
    double stock(int cell, int form, int variant) {
        return stocks.at(cell, form, variant);
    }

    /** What a reach's bed holds of all forms, released mercury alone [kg]. */
    public double stockOf(int reach, int variant) {
        return sum(reach, (c, form) -> stocks.at(c, form, variant));
    }

    /** Rate at which a reach's bed buries all forms, released mercury alone [kg/s]. */
    public double buriedOf(int reach, int variant) {
        return sum(reach, (c, form) -> over.exchange().buried(c, form) * stocks.at(c, form, variant));
    }

    private interface OfForm {
        double in(int cell, int form);
    }

    private double sum(int reach, OfForm value) {
        double sum = 0;
        for (int c = cells.start(reach); c < cells.start(reach + 1); c++) {
            for (int form = 0; form < layout.count(); form++) {
                sum += value.in(c, form);
            }
        }
        return sum;
    }

    /** What all beds hold of a form, released mercury alone [kg]. */
    public double stock(int form, int variant) {
        CompensatedSum sum = new CompensatedSum();
        for (int c = 0; c < cells.count(); c++) {
            sum.add(stocks.at(c, form, variant));
        }
        return sum.value();
    }

    /** Rate at which all beds bury a form, released mercury alone [kg/s]. */
    public double buried(int form, int variant) {
        CompensatedSum sum = new CompensatedSum();
        for (int c = 0; c < cells.count(); c++) {
            sum.add(over.exchange().buried(c, form) * stocks.at(c, form, variant));
        }
        return sum.value();
    }

    /**
     * Worst relative closure [-]: of the water of each flow state, and, in balance, of the bed over the year, whose every form
     * takes in what settles and gives up what it gives back and buries, or keeps what never leaves, released mercury and background each by itself.
     */
    public double worstClosure() {
        double worst = 0;
        for (int member = 0; member <= variants; member++) {
            CompensatedSum difference = new CompensatedSum();
            double in = 0;
            for (int s = 0; s < loads.size(); s++) {
                Balance balance = loads.get(s).balance(over.rates(s), member);
                worst = Math.max(worst, balance.closure());
                double share = over.input().hydraulics().share(s);
                double down = share * (balance.sum(Process.SETTLED) + balance.sum(Process.TO_PORES));
                difference.add(down);
                difference.add(-share * balance.sum(Process.FROM_BED));
                in += down;
            }
            for (int form = 0; form < layout.count(); form++) {
                difference.add(-buried(form, member));
            }
            difference.add(-stocks.staying(member));
            boolean balanced = afterYears.isEmpty() && in > 0;
            worst = balanced ? Math.max(worst, Math.abs(difference.value()) / in) : worst;
        }
        return worst;
    }

    /** Whether a reach's bed would lose more than it gains, so that its erosion was scaled down. */
    public boolean isEaten(int reach) {
        return over.solids().motion().isEaten(reach);
    }

    /** Whether less is laid down in a reach than the stated burial. */
    public boolean isShortOfSolids(int reach) {
        return over.solids().motion().isShortOfSolids(reach);
    }

    /** Whether no flow state of a reach erodes by itself, so that what is laid down goes back in the state that brought it. */
    public boolean isQuiet(int reach) {
        return over.solids().motion().isQuiet(reach);
    }
}
