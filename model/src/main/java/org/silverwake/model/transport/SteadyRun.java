// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.numerics.NumericalException;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * The steady run: cells, then for every flow state hydraulics, background, and solids and mercury in both bounds. Refuses to
 * return a budget that does not close to 1e-9.
 */
public final class SteadyRun {
    /** Largest relative closure that is accepted [-]. */
    public static final double CLOSURE = 1e-9;

    private SteadyRun() {}

    /**
     * Runs.
     *
     * @throws OutsideModelException if a reach holds more than 200 g/L of solids
     * @throws NumericalException if a budget does not close
     */
    public static SteadyResult run(TransportInput input) {
        return solve(input, CellCutter.cut(input));
    }

    /**
     * What cutting the cells once more in two changes.
     *
     * @param loads largest relative change [-] of the load at the end of a reach, over states, bounds and variants, where more
     *     than 1 % of what is released above still passes
     * @param beds largest relative change [-] of the content of a bed with at least twice its background; empty without a bed
     */
    public record Change(double loads, OptionalDouble beds) {}

    /** Runs on cells cut once more in two, to show what cutting changes. Still water stays whole. */
    public static Change changeOnHalving(TransportInput input, SteadyResult result) {
        Cells finer = result.cells().finer(2, input.hydraulics()::isStill);
        double worst = 0;
        List<StateHydraulics> waters = new ArrayList<>();
        List<BackgroundSweep> backgrounds = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            double[] above = result.releasedAbove(s);
            StateHydraulics water = StateHydraulics.of(input.hydraulics(), finer, s);
            BackgroundSweep background = BackgroundSweep.run(input, finer, water);
            if (input.bed().isPresent()) {
                waters.add(water);
                backgrounds.add(background);
            }
            for (Bound bound : Bound.both()) {
                // one at a time, and no state's water longer than the bed needs it: a large network would not hold them
                // all
                StateSolution fine = StateSolution.solve(input, finer, water, background, bound);
                requireClosed(s, bound, fine);
                worst = Math.max(worst, change(result.solution(bound, s), fine, above));
            }
        }
        Optional<BedAnswer> bed = bed(input, finer, waters, backgrounds);
        for (int s = 0; bed.isPresent() && s < input.stateCount(); s++) {
            StateSolution coarse = result.solution(Bound.WITH_BED, s);
            worst = Math.max(worst, change(coarse, bed.get().solution(s), result.releasedAbove(s)));
        }
        return new Change(
                worst,
                bed.stream()
                        .mapToDouble(fine -> change(result.bedAnswer().orElseThrow(), fine, result))
                        .findFirst());
    }

    private static double change(BedAnswer coarse, BedAnswer fine, SteadyResult result) {
        double worst = 0;
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
            for (int v = 0; v < result.variants() && coarse.hasBed(r); v++) {
                double exact = fine.content(r, v);
                if (exact > 2 * fine.backgroundContent(r)) {
                    worst = Math.max(worst, Math.abs(coarse.content(r, v) - exact) / exact);
                }
            }
        }
        return worst;
    }

    private static double change(StateSolution coarse, StateSolution fine, double[] above) {
        double worst = 0;
        for (int v = 0; v < coarse.variants(); v++) {
            for (int r = 0; r < above.length; r++) {
                double exact = fine.loadOut(r, v);
                if (exact > SteadyResult.COUNTS * above[r]) {
                    worst = Math.max(worst, Math.abs(coarse.loadOut(r, v) - exact) / exact);
                }
            }
        }
        return worst;
    }

    static SteadyResult solve(TransportInput input, Cells cells) {
        List<StateSolution> laidDown = new ArrayList<>();
        List<StateSolution> carried = new ArrayList<>();
        List<StateHydraulics> waters = new ArrayList<>();
        List<BackgroundSweep> backgrounds = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            StateHydraulics water = StateHydraulics.of(input.hydraulics(), cells, s);
            BackgroundSweep background = BackgroundSweep.run(input, cells, water);
            waters.add(water);
            backgrounds.add(background);
            laidDown.add(StateSolution.solve(input, cells, water, background, Bound.LAID_DOWN));
            carried.add(StateSolution.solve(input, cells, water, background, Bound.CARRIED_THROUGH));
        }
        Optional<BedAnswer> bed = bed(input, cells, waters, backgrounds);
        SteadyResult result = new SteadyResult(input, cells, laidDown, carried, bed);
        for (int s = 0; s < input.stateCount(); s++) {
            for (Bound bound : result.bounds()) {
                requireClosed(s, bound, result.solution(bound, s));
            }
        }
        return result;
    }

    /** River and bed in balance; a bed too slow for that within its horizon as it is then, from the background on. */
    private static Optional<BedAnswer> bed(
            TransportInput input, Cells cells, List<StateHydraulics> waters, List<BackgroundSweep> backgrounds) {
        if (input.bed().isEmpty()) {
            return Optional.empty();
        }
        BedInput shared = input.bed().get();
        BedSolids.Outcome solids = BedSolids.run(input, shared, cells, waters);
        BedAnswer balanced =
                BedAnswer.steady(new BedWater(input, shared, cells, waters, backgrounds, solids), shared.horizon());
        requireClosed(balanced);
        if (!(balanced.longestResidence() > shared.horizon())) {
            return Optional.of(balanced);
        }
        YearsResult years = BedYears.run(input, cells, atThisRate(input), List.of());
        BedAnswer then = balanced.after(shared.horizonYears(), years.lastStock());
        requireClosed(then);
        return Optional.of(then);
    }

    /** The years up to the horizon at the present rate. */
    static History atThisRate(TransportInput input) {
        int years = input.bed().orElseThrow().horizonYears();
        return new History(years, List.of(new History.Era(0, input.sites())), List.of(), Optional.empty());
    }

    private static void requireClosed(BedAnswer bed) {
        double closure = bed.worstClosure();
        if (!(closure <= CLOSURE)) {
            throw new NumericalException(
                    "river and bed",
                    "the mercury budget does not close: " + closure + " of what enters is left over, at most " + CLOSURE
                            + " is allowed; nothing was written; please report it with the scenario",
                    closure);
        }
    }

    private static void requireClosed(int state, Bound bound, StateSolution solution) {
        for (int v = 0; v < solution.variants(); v++) {
            double closure = solution.worstClosure(v);
            if (!(closure <= CLOSURE)) {
                throw new NumericalException(
                        "flow state " + (state + 1) + " of the scenario, "
                                + bound.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        "the mass budget does not close: " + closure + " of what enters is left over, at most "
                                + CLOSURE + " is allowed; nothing was written; please report it with the scenario",
                        closure);
            }
        }
    }
}
