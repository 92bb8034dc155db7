// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.StateSolution.Place;

/**
 * Which site brings how much of what a steady run found in one reach, and how much is background: exact at the run's own
 * solids and water. One sweep from the reach upward, the run's sweep transposed, weighs the release of every site at once; what is on top near the
 * bank is each site's own. Where the value is the largest in the reach, that spot is shared out.
 *
 * <p>Over a bed in balance the transposed sweep goes through the bed, at the methylation that the run found where its ceiling is hit.
 * Over a bed too slow for that, which is shown after some years, the years are gone through once for each site, at the methylation of the whole run.
 *
 * <p>Shares are not what closing a site would change: its solids and its water would go too. That takes a run of its own, {@link
 * TransportInput#closed}.
 */
public final class SiteShares {
    private final SteadyResult result;
    private final TransportInput input;
    private final StateLayout layout;
    private final int reach;
    private final List<SampledPart> parts;
    private final BedReadings beds;
    private final Map<Bound, Swept> swept = new HashMap<>();
    private final Map<Integer, NearBank> nearBank = new HashMap<>();
    private final Optional<SitesOverYears> years;

    private SiteShares(SteadyResult result, int reach, List<SampledPart> parts, Optional<SitesOverYears> years) {
        this.result = result;
        this.input = result.input();
        this.layout = input.layout();
        this.reach = reach;
        this.parts = List.copyOf(parts);
        this.beds = new BedReadings(result);
        this.years = years;
    }

    /**
     * Shares in one reach.
     *
     * @param parts the parts of water samples that will be asked for
     * @param years what each site left in slow beds, as {@link SitesOverYears#of} finds it
     */
    public static SiteShares of(
            SteadyResult result, int reach, List<SampledPart> parts, Optional<SitesOverYears> years) {
        return new SiteShares(result, reach, parts, years);
    }

    /**
     * One value and what makes it up.
     *
     * @param value the run's own value [kg/m3 in water, kg/kg dry in beds], at least 0
     * @param background what is background of it [as the value], at least 0
     * @param sites what each site brings of it, in the order of the input [as the value], at least 0
     */
    public record Parts(double value, double background, List<Double> sites) {
        /** Copies the list. */
        public Parts {
            sites = List.copyOf(sites);
        }

        /** All of it but what the value itself holds [as the value]: background and sites added up. */
        public double sum() {
            double sum = background;
            for (double site : sites) {
                sum += site;
            }
            return sum;
        }
    }

    /** Where in a reach a value of water is the largest. */
    private record Spot(int cell, Place place) {}

    /** What identifies a reading of water. */
    private record Key(int state, int part, Spot spot) {}

    /** The transposed sweep of a bound, and which of its readings is which; water readings by key, the bed's is the last. */
    private record Swept(TransposedSweep sweep, Map<Key, Integer> places, int bed) {}

    /**
     * The largest value in the reach, near-bank values included: {@link SteadyResult#largest}; empty where there is no water.
     *
     * @param part place in the list of parts
     */
    public Optional<Parts> water(Bound bound, int variant, int state, int part) {
        Optional<Spot> spot = spot(bound, variant, state, parts.get(part));
        return spot.map(at -> water(bound, variant, new Key(state, part, at)));
    }

    private Parts water(Bound bound, int variant, Key key) {
        StateSolution solution = result.solution(bound, key.state());
        SampledPart part = parts.get(key.part());
        int cell = key.spot().cell();
        Place place = key.spot().place();
        List<Double> sites = new ArrayList<>();
        for (int i = 0; i < input.sites().size(); i++) {
            double mixed = isAfterYears(bound)
                    ? years.orElseThrow().mixed(i, key.state(), variant, weights(solution, part, cell, place))
                    : fromSweep(swept(bound), swept(bound).places().get(key), i, variant);
            sites.add(mixed + nearBank(bound, key, i, variant));
        }
        return new Parts(
                solution.part(part, cell, place, variant, true), solution.background(part, cell, place), sites);
    }

    /**
     * Content of the reach's bed: {@link SteadyResult#bed}; empty where it is not assessed.
     */
    public Optional<Parts> bed(Bound bound, int variant) {
        if (!beds.isThere(bound, reach)) {
            return Optional.empty();
        }
        List<Double> sites = new ArrayList<>();
        for (int i = 0; i < input.sites().size(); i++) {
            sites.add(
                    isAfterYears(bound)
                            ? years.orElseThrow().content(i, reach, variant)
                            : fromSweep(swept(bound), swept(bound).bed(), i, variant));
        }
        return Optional.of(new Parts(result.bed(bound, variant, reach), beds.background(bound, reach), sites));
    }

    private boolean isAfterYears(Bound bound) {
        return bound == Bound.WITH_BED
                && result.bedAnswer().orElseThrow().afterYears().isPresent();
    }

    private double fromSweep(Swept bound, int reading, int site, int variant) {
        SiteRelease release = input.sites().get(site);
        double sum = 0;
        double[] released = new double[layout.count()];
        for (int s = 0; s < input.stateCount(); s++) {
            Arrays.fill(released, 0);
            Releases.add(layout, release, s, variant, released, 0, 1);
            for (int form = 0; form < released.length; form++) {
                sum += released[form] * bound.sweep().perRelease(s, release.reach(), form, reading);
            }
        }
        return sum;
    }

    private Swept swept(Bound bound) {
        return swept.computeIfAbsent(bound, this::sweep);
    }

    private Swept sweep(Bound bound) {
        Map<Key, Integer> places = new HashMap<>();
        List<Reading> readings = new ArrayList<>();
        for (int s = 0; s < input.stateCount(); s++) {
            for (int p = 0; p < parts.size(); p++) {
                for (int v = 0; v < result.variants(); v++) {
                    Optional<Spot> spot = spot(bound, v, s, parts.get(p));
                    Key key = new Key(s, p, spot.orElse(new Spot(0, Place.HEAD)));
                    if (spot.isPresent() && places.putIfAbsent(key, readings.size()) == null) {
                        readings.add(reading(bound, key));
                    }
                }
            }
        }
        readings.add(beds.isThere(bound, reach) ? beds.reading(bound, reach) : empty());
        TransposedSweep sweep = TransposedSweep.run(
                input,
                result.cells(),
                IntStream.range(0, input.stateCount())
                        .mapToObj(s -> result.solution(bound, s))
                        .toList(),
                bound == Bound.WITH_BED ? result.bedAnswer() : Optional.empty(),
                readings);
        return new Swept(sweep, places, readings.size() - 1);
    }

    private Reading empty() {
        return new Reading(result.cells().count(), layout.count());
    }

    private Reading reading(Bound bound, Key key) {
        Reading reading = empty();
        WaterWeights weights = weights(
                result.solution(bound, key.state()),
                parts.get(key.part()),
                key.spot().cell(),
                key.spot().place());
        for (int form = 0; form < layout.count(); form++) {
            double weight = weights.weight().get(form);
            if (weights.atHead()) {
                reading.head(key.state(), weights.cell(), form, weight);
            } else {
                reading.end(key.state(), weights.cell(), form, weight);
            }
        }
        return reading;
    }

    /**
     * How loads make a mixed value.
     *
     * @param cell the cell whose loads count
     * @param atHead whether those at its head, else those at its end
     * @param weight of each form's load [s/m3]
     */
    record WaterWeights(int cell, boolean atHead, List<Double> weight) {}

    private WaterWeights weights(StateSolution solution, SampledPart part, int cell, Place place) {
        List<Double> weight = new ArrayList<>();
        for (int form = 0; form < layout.count(); form++) {
            weight.add(part.weight(layout, form, solution.filteredShare(cell, form)) / solution.discharge(cell, place));
        }
        boolean atHead = place == Place.HEAD && !solution.water().isStill(cell);
        return new WaterWeights(solution.water().alike(cell), atHead, weight);
    }

    private Optional<Spot> spot(Bound bound, int variant, int state, SampledPart part) {
        StateSolution solution = result.solution(bound, state);
        Optional<Spot> spot = Optional.empty();
        double largest = -1;
        for (int c : result.cellsOf(reach)) {
            for (Place place : Place.values()) {
                double value = solution.hasWater(c, place) ? solution.part(part, c, place, variant, true) : -1;
                if (value > largest) {
                    largest = value;
                    spot = Optional.of(new Spot(c, place));
                }
            }
        }
        return spot;
    }

    private double nearBank(Bound bound, Key key, int site, int variant) {
        StateSolution solution = result.solution(bound, key.state());
        int cell = key.spot().cell();
        if (!solution.isNearBank(result.cells().reach(cell))) {
            return 0;
        }
        int at = (bound.ordinal() * input.stateCount() + key.state())
                        * input.sites().size()
                + site;
        NearBank own = nearBank.computeIfAbsent(
                at, k -> NearBank.run(input.mercuryOf(site), result.cells(), solution.water(), solution.rates()));
        double sum = 0;
        for (int form = 0; form < layout.count(); form++) {
            double extra =
                    key.spot().place() == Place.HEAD ? own.head(cell, form, variant) : own.end(cell, form, variant);
            sum += extra * parts.get(key.part()).weight(layout, form, solution.filteredShare(cell, form));
        }
        return sum;
    }
}
