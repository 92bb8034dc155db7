// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.StateSolution.Place;

/**
 * A steady run taken apart: what each site, or several together, bring of every value, and what is background, at the run's own
 * solids, water and methylation. Parts add up to the run. A part of sites takes one sweep of its mercury for each flow state and
 * bound, over the reaches it gets to; with a bed one pass down the network, and where beds are shown after some years, those
 * years once more.
 */
public final class MercuryParts {
    private final SteadyResult result;
    private final TransportInput input;
    private final Map<Bound, double[]> depositing = new EnumMap<>(Bound.class);
    private final Optional<HeldBack> held;

    private MercuryParts(SteadyResult result) {
        this.result = result;
        this.input = result.input();
        for (Bound bound : Bound.both()) {
            double[] solids = new double[result.cells().count()];
            for (int c = 0; c < solids.length; c++) {
                solids[c] = result.depositing(bound, c);
            }
            depositing.put(bound, solids);
        }
        this.held = result.bedAnswer()
                .filter(bed -> bed.afterYears().isPresent())
                .map(bed -> {
                    HeldBack kept = HeldBack.kept();
                    BedYears.run(input, result.cells(), SteadyRun.atThisRate(input), List.of(), kept);
                    return kept;
                });
    }

    /** Of a run. */
    public static MercuryParts of(SteadyResult result) {
        return new MercuryParts(result);
    }

    /** What is background. */
    public MercuryPart background() {
        Map<Bound, List<MercuryPart.Carried>> carried = new EnumMap<>(Bound.class);
        for (Bound bound : result.bounds()) {
            List<MercuryPart.Carried> states = new ArrayList<>();
            for (int s = 0; s < input.stateCount(); s++) {
                states.add(new OfBackground(result.solution(bound, s).backgroundLoads()));
            }
            carried.put(bound, states);
        }
        MercuryPart.BedStock stock = (cell, form, variant) ->
                result.bedAnswer().orElseThrow().stocks().at(cell, form, result.variants());
        return new MercuryPart(result, depositing, carried, stock);
    }

    /**
     * What some sites bring.
     *
     * @param sites their places in the list of the run's input
     */
    public MercuryPart of(BitSet sites) {
        TransportInput alone = input.mercuryOf(sites);
        Map<Bound, List<MercuryPart.Carried>> carried = new EnumMap<>(Bound.class);
        for (Bound bound : Bound.both()) {
            List<MercuryPart.Carried> states = new ArrayList<>();
            for (int s = 0; s < input.stateCount(); s++) {
                StateSolution of = result.solution(bound, s);
                StateLoads loads = MercurySweep.run(alone, result.cells(), of.water(), of.rates());
                states.add(sites(alone, of, loads));
            }
            carried.put(bound, states);
        }
        if (result.bedAnswer().isEmpty()) {
            return new MercuryPart(result, depositing, carried, (cell, form, variant) -> 0);
        }
        BedAnswer bed = bedOf(alone);
        List<MercuryPart.Carried> states = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            states.add(sites(alone, result.solution(Bound.WITH_BED, s), bed.loads(s)));
        }
        carried.put(Bound.WITH_BED, states);
        return new MercuryPart(result, depositing, carried, bed::stock);
    }

    private OfSites sites(TransportInput alone, StateSolution of, StateLoads loads) {
        return new OfSites(loads, of.rates(), NearBank.run(alone, result.cells(), of.water(), of.rates()));
    }

    private BedAnswer bedOf(TransportInput alone) {
        BedAnswer whole = result.bedAnswer().orElseThrow();
        if (held.isEmpty()) {
            return BedAnswer.steady(
                    whole.over().of(alone), input.bed().orElseThrow().horizon());
        }
        YearsResult years = BedYears.run(
                alone,
                result.cells(),
                SteadyRun.atThisRate(alone),
                List.of(),
                held.get().again());
        return whole.of(alone, years.lastStock());
    }

    /** Reaches that the mercury of some sites gets to: those below, and the whole of a still water that it enters. */
    public BitSet reached(BitSet sites) {
        BitSet heads = new BitSet();
        sites.stream().mapToObj(input.sites()::get).map(SiteRelease::reach).forEach(heads::set);
        return result.reached(heads);
    }

    /** What sites bring: loads as a sweep or a pass over the bed found them, by variant. */
    private record OfSites(StateLoads loads, CellRates rates, NearBank nearBank) implements MercuryPart.Carried {
        @Override
        public double load(int cell, Place place, int form, int variant) {
            return place == Place.HEAD ? loads.head(cell, form, variant) : loads.end(cell, form, variant);
        }

        @Override
        public double time(int cell, int form, int variant) {
            return loads.time(cell, form, variant);
        }

        @Override
        public double extra(int cell, Place place, int form, int variant) {
            return place == Place.HEAD ? nearBank.head(cell, form, variant) : nearBank.end(cell, form, variant);
        }

        @Override
        public Balance balance(int variant) {
            return loads.balance(rates, variant);
        }

        @Override
        public boolean isNearBank(int reach) {
            return nearBank.isMarked(reach);
        }

        @Override
        public boolean isWithinOneWidth(int reach) {
            return nearBank.isWithinOneWidth(reach);
        }
    }

    /** Background, which no outfall brings. */
    private record OfBackground(BackgroundLoads loads) implements MercuryPart.Carried {
        @Override
        public double load(int cell, Place place, int form, int variant) {
            return place == Place.HEAD ? loads.head(cell, form) : loads.end(cell, form);
        }

        @Override
        public double time(int cell, int form, int variant) {
            return loads.time(cell, form);
        }

        @Override
        public double extra(int cell, Place place, int form, int variant) {
            return 0;
        }

        @Override
        public Balance balance(int variant) {
            return loads.balance();
        }

        @Override
        public boolean isNearBank(int reach) {
            return false;
        }

        @Override
        public boolean isWithinOneWidth(int reach) {
            return false;
        }
    }
}
