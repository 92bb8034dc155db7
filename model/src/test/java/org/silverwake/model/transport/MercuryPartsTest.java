// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.transport.SteadyResult.Fraction;

/**
 * Background and what each site brings add up to the run, spot by spot, on random networks with everything in them: arms,
 * abstractions, dry reaches, still water, near-bank values, unknown splits, all forms, beds in balance and after years.
 */
class MercuryPartsTest {
    /** ROUNDING: sums of up to eight parts; 1e-10 relative is asked for. */
    private static final double EXACT = 1e-10;

    /** ROUNDING: the run's own value on solids is a difference of two sums, each of all that the water holds. */
    private static final double DIFFERENCE = 1e-14;

    private static final int SEEDS = 20;

    /** The parts of a run, background first. */
    private static List<MercuryPart> parts(SteadyResult result) {
        MercuryParts of = MercuryParts.of(result);
        List<MercuryPart> parts = new ArrayList<>(List.of(of.background()));
        for (int i = 0; i < result.input().sites().size(); i++) {
            parts.add(of.of(only(i)));
        }
        return parts;
    }

    private static BitSet only(int... sites) {
        BitSet set = new BitSet();
        for (int site : sites) {
            set.set(site);
        }
        return set;
    }

    private static double largest(List<MercuryPart> parts, Function<MercuryPart, double[]> spots) {
        double[] sum = spots.apply(parts.get(0)).clone();
        for (MercuryPart part : parts.subList(1, parts.size())) {
            double[] own = spots.apply(part);
            assertThat(own).hasSameSizeAs(sum);
            for (int i = 0; i < sum.length; i++) {
                sum[i] += own[i];
            }
        }
        double largest = 0;
        for (double each : sum) {
            largest = Math.max(largest, each);
        }
        return largest;
    }

    private static void same(String what, double found, double expected) {
        same(what, found, expected, EXACT);
    }

    private static void same(String what, double found, double expected, double tolerance) {
        assertThat(Math.abs(found - expected))
                .as("%s: %s for %s", what, found, expected)
                .isLessThanOrEqualTo(tolerance * expected);
    }

    /** Compares a run with its parts; gives the number of values looked at. */
    private static int sums(String what, SteadyResult result) {
        List<MercuryPart> parts = parts(result);
        SuspendedValues solids = new SuspendedValues(result);
        int looked = 0;
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
            int reach = r;
            for (int s = 0; s < result.input().stateCount(); s++) {
                int state = s;
                double low = Double.POSITIVE_INFINITY;
                double high = 0;
                for (Bound bound : result.bounds()) {
                    for (int v = 0; v < result.variants(); v++) {
                        int variant = v;
                        String where = what + " " + bound + " " + v + " state " + s + " reach " + r;
                        for (Fraction part : Fraction.values()) {
                            double sum = largest(parts, p -> p.water(bound, variant, state, reach, part));
                            same(where + " " + part, sum, result.largest(bound, v, s, r, part));
                            looked++;
                        }
                        double on = largest(parts, p -> p.onSolids(bound, variant, state, reach, Fraction.WHOLE));
                        low = Math.min(low, on);
                        high = Math.max(high, on);
                    }
                }
                double held = result.high(s, r, Fraction.WHOLE) / solids.sediment(Bound.LAID_DOWN, s, r);
                double rounding = low > 0 ? DIFFERENCE * held / low + EXACT : EXACT;
                same(what + " on solids, low", low, solids.contentLow(s, r, Fraction.WHOLE), rounding);
                same(what + " on solids, high", high, solids.contentHigh(s, r, Fraction.WHOLE), rounding);
            }
            looked += beds(what, result, parts, r);
        }
        return looked;
    }

    private static int beds(String what, SteadyResult result, List<MercuryPart> parts, int r) {
        int looked = 0;
        for (Bound bound : result.bounds()) {
            for (int v = 0; result.isBedAssessed(r) && v < result.variants(); v++) {
                double sum = 0;
                for (MercuryPart part : parts) {
                    sum += part.bed(bound, v, r);
                }
                same(what + " bed " + bound + " of reach " + r, sum, result.bed(bound, v, r));
                looked++;
            }
        }
        return looked;
    }

    @Test
    void partsAddUpToTheRun() {
        int looked = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            looked += sums("seed " + seed, SiteSharesTest.river(seed).run());
        }
        assertThat(looked).isGreaterThan(SEEDS * 150);
    }

    @Test
    void stillWaterIsTakenApartWhole() {
        for (long seed = 0; seed < SEEDS; seed++) {
            TestRiver river = SiteSharesTest.river(seed);
            assertThat(ConservationTest.withLake(river, seed)).isTrue();
            sums("seed " + seed, SteadyRun.run(river.input().over(new TestBed().input(2))));
        }
    }

    @Test
    void allFormsOverAnyBedAddUpWhereMethylationIsNotHeldBack() {
        int later = 0;
        int looked = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            TestRiver river = BedPropertiesTest.river(random, seed);
            TestBed bed = BedPropertiesTest.bed(random);
            bed.ceiling = Double.POSITIVE_INFINITY;
            SteadyResult result = SteadyRun.run(river.input().over(bed.input(2)));
            assertThat(result.isMethylationHeldBack()).isFalse();
            looked += sums("seed " + seed, result);
            later += result.bedAnswer().orElseThrow().afterYears().isPresent() ? 1 : 0;
        }
        assertThat(looked).isGreaterThan(SEEDS * 100);
        assertThat(later).isBetween(1, SEEDS - 1);
    }

    @Test
    void sitesTogetherAreTheSumOfEach() {
        for (long seed = 0; seed < SEEDS; seed++) {
            SteadyResult result = SiteSharesTest.river(seed).run();
            MercuryParts of = MercuryParts.of(result);
            MercuryPart both = of.of(only(0, 2));
            List<MercuryPart> each = List.of(of.of(only(0)), of.of(only(2)));
            for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
                int reach = r;
                double sum = largest(each, p -> p.water(Bound.LAID_DOWN, 0, 0, reach, Fraction.FILTERED));
                double found = largest(List.of(both), p -> p.water(Bound.LAID_DOWN, 0, 0, reach, Fraction.FILTERED));
                same("seed " + seed + " reach " + r, found, sum);
                assertThat(found == 0 || of.reached(only(0, 2)).get(r)).isTrue();
            }
        }
    }

    /** What enters with a part leaves with it, and all parts together are the run's budget. */
    @Test
    void budgetsAddUpToo() {
        for (long seed = 0; seed < SEEDS; seed++) {
            SteadyResult result = SiteSharesTest.river(seed).run();
            List<MercuryPart> parts = parts(result);
            for (Process process : Process.values()) {
                double sum = 0;
                for (MercuryPart part : parts) {
                    Map<Process, Double> flows = part.yearly(Bound.CARRIED_THROUGH, 0);
                    sum += flows.getOrDefault(process, 0.0);
                }
                same("seed " + seed + " " + process, sum, result.yearly(Bound.CARRIED_THROUGH, 0, process));
            }
        }
    }
}
