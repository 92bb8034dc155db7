// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.model.numerics.NumericalException;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * River and bed through the years. Water is quasi-steady in each step; the bed of each cell goes through the step exactly
 * for what its water brings on average, and gives back its own average, so that every budget closes whatever the step.
 * Flow states follow one another through the year, none for longer than a month at a time, or are taken together.
 */
public final class BedYears {
    /** Largest relative closure that is accepted through the years [-]. */
    public static final double CLOSURE = 1e-8;

    private static final int MONTHS = 12;

    private final TransportInput input;
    private final BedInput bed;
    private final Cells cells;
    private final List<StateHydraulics> water;
    private final List<BackgroundSweep> background;
    private final History history;
    private final int states;
    private final int forms;
    private final int members;
    private final int width;
    private final double[] stock;
    private final List<BedSteps.Kind> kinds = new ArrayList<>();
    private final List<Integer> kindOf = new ArrayList<>();
    private YearBudget budget;
    private final Propagator propagator;
    private final double[][] load;
    private final double[] source;
    private final double[] out;
    private final double[] time;
    private final double[] brought;
    private final double[] after;
    private final double[] held;
    private final double[] yearMean;
    private final List<HeadLoads> arriving = new ArrayList<>();

    private final HeldBack heldBack;

    private BedYears(TransportInput input, Cells cells, History history, HeldBack heldBack) {
        this.heldBack = heldBack;
        this.input = input;
        this.bed = input.bed().orElseThrow(() -> new IllegalArgumentException("a history needs a bed"));
        this.cells = cells;
        this.history = history;
        this.states = input.stateCount();
        this.forms = input.layout().count();
        this.members = input.variantCount() + 1;
        this.width = forms * members;
        this.water = new ArrayList<>();
        this.background = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            StateHydraulics flow = StateHydraulics.of(input.hydraulics(), cells, s);
            water.add(flow);
            arriving.add(new HeadLoads(
                    input.hydraulics().reaches().network(), input.hydraulics().water(s), width));
            background.add(BackgroundSweep.run(input, cells, flow));
        }
        this.stock = new double[cells.count() * width];
        this.budget = new YearBudget(members);
        this.propagator = new Propagator(input.layout().core(), input.layout().feeders());
        this.load = new double[states][width];
        this.source = new double[width];
        this.out = new double[width];
        this.time = new double[width];
        this.brought = new double[width];
        this.after = new double[width];
        this.held = new double[width];
        this.yearMean = new double[stock.length];
        steps();
    }

    /**
     * Runs a history.
     *
     * @param steady the steady result with a bed, whose cells and water are used
     * @param parts parts of water samples of which every year's values are kept
     * @throws IllegalArgumentException if a site of an era has more extremes of its split than those of the steady run
     * @throws NumericalException if a year's budget does not close to 1e-8
     */
    public static YearsResult run(SteadyResult steady, History history, List<SampledPart> parts) {
        return run(steady.input(), steady.cells(), history, parts);
    }

    static YearsResult run(TransportInput input, Cells cells, History history, List<SampledPart> parts) {
        return run(input, cells, history, parts, HeldBack.forgotten());
    }

    static YearsResult run(
            TransportInput input, Cells cells, History history, List<SampledPart> parts, HeldBack heldBack) {
        return new BedYears(input, cells, history, heldBack).run(parts);
    }

    private void steps() {
        if (history.isTogether()) {
            List<Double> shares = new ArrayList<>();
            for (int s = 0; s < states; s++) {
                shares.add(input.hydraulics().share(s));
            }
            kinds.add(new BedSteps.Kind(shares, Quantity.SECONDS_PER_YEAR));
            kindOf.add(0);
            return;
        }
        for (int s : history.order()) {
            List<Double> weight = new ArrayList<>();
            for (int other = 0; other < states; other++) {
                weight.add(other == s ? 1.0 : 0.0);
            }
            double share = input.hydraulics().share(s)
                    / history.order().stream().filter(o -> o == s).count();
            int pieces = (int) Math.ceil(share * MONTHS - 1e-9);
            BedSteps.Kind kind = new BedSteps.Kind(weight, share * Quantity.SECONDS_PER_YEAR / pieces);
            if (!kinds.contains(kind)) {
                kinds.add(kind);
            }
            for (int k = 0; k < pieces; k++) {
                kindOf.add(kinds.indexOf(kind));
            }
        }
    }

    private YearsResult run(List<SampledPart> parts) {
        YearsResult result = new YearsResult(input, cells, history.years(), parts);
        int era = -1;
        BedWater over = null;
        BedSteps steps = null;
        List<double[]> releases = new ArrayList<>();
        YearBudget total = budget;
        for (int year = 0; year < history.years(); year++) {
            if (era + 1 < history.eras().size() && history.eras().get(era + 1).from() == year) {
                era++;
                TransportInput now = during(history.eras().get(era));
                over = new BedWater(now, bed, cells, water, background, BedSolids.run(now, bed, cells, water));
                steps = new BedSteps(over, kinds);
                if (year == 0) {
                    begin(over);
                }
                result.water().era(nearBank(over));
                releases.clear();
                for (int s = 0; s < states; s++) {
                    releases.add(over.releases(s));
                }
            }
            BedWater now = over;
            steps.holdBack(heldBack.year(cells.count(), c -> now.exchangeable(stock, c * width)));
            budget = total.next();
            result.water().newYear();
            Arrays.fill(yearMean, 0);
            for (int kind : kindOf) {
                step(over, steps, releases, kind, result);
            }
            budget.setStore(stock);
            total = total.plus(budget);
            double closure = Math.max(budget.closure(), total.closure());
            if (!(closure <= CLOSURE)) {
                throw new NumericalException(
                        "year " + (year + 1),
                        "the mercury budget does not close: " + closure + " of what enters is left over, at most "
                                + CLOSURE + " is allowed; nothing was written; please report it with the scenario",
                        closure);
            }
            result.endYear(year, over, yearMean, stock, total, closure);
        }
        return result;
    }

    /** The input in an era: a site with most extremes stays and releases nothing, so that there are as many variants in all eras. */
    private TransportInput during(History.Era era) {
        List<SiteRelease> sites = new ArrayList<>(era.sites());
        input.sites().stream()
                .max(Comparator.comparingInt(SiteRelease::extremes))
                .ifPresent(site -> sites.add(site.times(0)));
        TransportInput now = input.withSites(sites);
        if (now.variantCount() != members - 1) {
            throw new IllegalArgumentException("a site from year " + era.from() + " on has " + now.variantCount()
                    + " extremes of its split, the steady run " + (members - 1)
                    + "; give the steady run that site too");
        }
        return now;
    }

    /** The bed in the beginning: its background in balance, and what is measured above that. */
    private void begin(BedWater over) {
        TransportInput alone = over.input().withSites(List.of());
        BedWater without = new BedWater(alone, bed, cells, water, background, BedSolids.run(alone, bed, cells, water));
        BedStocks natural = BedAnswer.steady(without, bed.horizon()).stocks();
        int variants = members - 1;
        for (int c = 0; c < cells.count(); c++) {
            double all = 0;
            for (int i = 0; i < forms; i++) {
                double own = natural.at(c, i, natural.members() - 1);
                stock[c * width + i * members + variants] = own;
                all += own;
            }
            if (history.content().isPresent()) {
                double measured = history.content().get().get(cells.reach(c))
                        * over.exchange().solids(c);
                for (int v = 0; v < variants; v++) {
                    stock[c * width + input.layout().exchangeable() * members + v] = Math.max(0, measured - all);
                }
            }
        }
        budget.begin(stock);
    }

    private List<NearBank> nearBank(BedWater over) {
        List<NearBank> banks = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            banks.add(NearBank.run(over.input(), cells, water.get(s), over.rates(s)));
        }
        return banks;
    }

    private void step(BedWater over, BedSteps steps, List<double[]> releases, int kind, YearsResult result) {
        double[] weight = kinds.get(kind).weights();
        int[] active = IntStream.range(0, states).filter(s -> weight[s] > 0).toArray();
        double duration = kinds.get(kind).duration();
        budget.duration(duration);
        for (int r = 0; r < input.hydraulics().reaches().size(); r++) {
            for (int s : active) {
                enter(arriving.get(s), releases.get(s), s, r, weight[s]);
            }
            for (int c = cells.start(r); c < cells.start(r + 1); c++) {
                cell(over, steps, kind, c, weight, active, result);
            }
            for (int s : active) {
                if (input.hydraulics().water(s).isWet(r)) {
                    result.water().leave(r, s, weight[s], duration);
                    arriving.get(s).leave(r, load[s], 0);
                    if (input.hydraulics().reaches().network().isOutlet(r)) {
                        budget.add(YearBudget.Term.EXPORTED, load[s], weight[s]);
                    }
                }
            }
        }
    }

    private void enter(HeadLoads arriving, double[] releases, int s, int r, double weight) {
        arriving.arriving(r, releases, load[s]);
        budget.addAt(YearBudget.Term.ENTERED, releases, r * width, width, weight);
        double taken = input.hydraulics().water(s).abstractedShare(r);
        if (taken > 0) {
            budget.add(YearBudget.Term.ABSTRACTED, load[s], weight * taken);
            for (int i = 0; i < width; i++) {
                load[s][i] *= 1 - taken;
            }
        }
        if (!input.hydraulics().water(s).isWet(r)) {
            budget.add(YearBudget.Term.HELD_DRY, load[s], weight);
            arriving.leaveNothing(r);
        }
    }

    private void cell(
            BedWater over, BedSteps steps, int kind, int c, double[] weight, int[] active, YearsResult result) {
        double duration = kinds.get(kind).duration();
        Arrays.fill(brought, 0);
        for (int s : active) {
            if (water.get(s).isWet(c)) {
                int at = over.takeUpIndex();
                load[s][at] += background.get(s).takenUp(c);
                Arrays.fill(source, 0);
                over.background(s, c, source);
                budget.addOne(
                        YearBudget.Term.ENTERED,
                        members - 1,
                        weight[s]
                                * (background.get(s).takenUp(c)
                                        + source[at] * water.get(s).travelTime(c)));
                steps.takeWater(propagator, s, c);
                for (int m = 0; m < members; m++) {
                    propagator.apply(load[s], source, out, time, m, members);
                }
                over.addBrought(s, c, weight[s], time, brought);
            }
        }
        steps.takeBed(propagator, kind, c);
        System.arraycopy(stock, c * width, held, 0, width);
        for (int m = 0; m < members; m++) {
            propagator.apply(held, brought, after, time, m, members);
        }
        System.arraycopy(after, 0, stock, c * width, width);
        for (int i = 0; i < width; i++) {
            held[i] = time[i] / duration;
            yearMean[c * width + i] += time[i] / Quantity.SECONDS_PER_YEAR;
        }
        over.addBuried(c, held, budget);
        for (int s : active) {
            if (water.get(s).isWet(c)) {
                Arrays.fill(source, 0);
                over.background(s, c, source);
                over.addReturned(s, c, held, source);
                steps.takeWater(propagator, s, c);
                for (int m = 0; m < members; m++) {
                    propagator.apply(load[s], source, out, time, m, members);
                }
                over.addLosses(s, c, weight[s], time, budget);
                result.water().pass(over.rates(s), water.get(s), c, load[s], out);
                System.arraycopy(out, 0, load[s], 0, width);
            }
        }
    }
}
