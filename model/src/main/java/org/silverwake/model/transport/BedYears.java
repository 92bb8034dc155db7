// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.numerics.NumericalException;
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
    private final double[] yearMean;
    private final NetworkParts parts;
    private final List<BedPart> beds = new ArrayList<>();
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
        RiverNetwork network = input.hydraulics().reaches().network();
        List<HeadLoads> arriving = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            StateHydraulics flow = StateHydraulics.of(input.hydraulics(), cells, s);
            water.add(flow);
            arriving.add(new HeadLoads(network, input.hydraulics().water(s), width));
            background.add(BackgroundSweep.run(input, cells, flow));
        }
        this.stock = new double[cells.count() * width];
        this.yearMean = new double[stock.length];
        this.parts = NetworkParts.of(network, cells);
        for (int p = 0; p < parts.count(); p++) {
            beds.add(new BedPart(input, cells, parts.reaches(p), arriving, stock, yearMean));
        }
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
        int threads = Runtime.getRuntime().availableProcessors();
        return new BedYears(input, cells, history, heldBack).run(parts, threads);
    }

    /** The same with a number of threads [-]; results do not depend on it. */
    static YearsResult run(SteadyResult steady, History history, List<SampledPart> parts, int threads) {
        return new BedYears(steady.input(), steady.cells(), history, HeldBack.forgotten()).run(parts, threads);
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

    private YearsResult run(List<SampledPart> sampled, int threads) {
        YearsResult result = new YearsResult(input, cells, history.years(), sampled);
        try (PartSteps turns = new PartSteps(parts, threads)) {
            int era = -1;
            BedWater over = null;
            YearBudget total = new YearBudget(members);
            for (int year = 0; year < history.years(); year++) {
                if (era + 1 < history.eras().size()
                        && history.eras().get(era + 1).from() == year) {
                    era++;
                    TransportInput now = during(history.eras().get(era));
                    over = new BedWater(now, bed, cells, water, background, BedSolids.run(now, bed, cells, water));
                    enter(over, result.water(), turns);
                    if (year == 0) {
                        fill(over);
                        total.begin(stock);
                    }
                }
                YearBudget budget = total.next();
                result.water().newYear();
                year(over, turns);
                budget.sum(beds.stream().map(BedPart::budget).toList());
                budget.setStore(stock);
                total = total.plus(budget);
                result.endYear(year, over, yearMean, stock, total, closure(year, budget, total));
            }
        }
        return result;
    }

    /** Makes all parts ready for an era. */
    private void enter(BedWater over, WaterYears sampled, PartSteps turns) {
        BedSteps steps = new BedSteps(over, kinds);
        sampled.era(nearBank(over));
        turns.each((part, step) -> beds.get(part).era(over, steps, sampled.new Look()));
    }

    private void year(BedWater over, PartSteps turns) {
        double[] exchangeable = heldBack.year(cells.count(), c -> over.exchangeable(stock, c * width));
        turns.each((part, step) -> beds.get(part).beginYear(exchangeable));
        turns.run(kindOf.size(), (part, step) -> beds.get(part).step(kindOf.get(step)));
    }

    private static double closure(int year, YearBudget budget, YearBudget total) {
        double closure = Math.max(budget.closure(), total.closure());
        if (!(closure <= CLOSURE)) {
            throw new NumericalException(
                    "year " + (year + 1),
                    "the mercury budget does not close: " + closure + " of what enters is left over, at most " + CLOSURE
                            + " is allowed; nothing was written; please report it with the scenario",
                    closure);
        }
        return closure;
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

    /** Fills the bed as it is in the beginning: with its background in balance, and what is measured above that. */
    private void fill(BedWater over) {
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
    }

    private List<NearBank> nearBank(BedWater over) {
        List<NearBank> banks = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            banks.add(NearBank.run(over.input(), cells, water.get(s), over.rates(s)));
        }
        return banks;
    }
}
