// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.silverwake.model.transport.SiteShares.Parts;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult.Fraction;

/**
 * Shares of sites by the transposed sweep, against the run's own value and against runs with the mercury of one site alone, on
 * random networks with everything in them: arms, abstractions, dry reaches, still water, near-bank values, unknown splits, all
 * forms, the bed in balance and after years.
 */
class SiteSharesTest {
    /** ROUNDING: issue 5 asks for 1e-10 relative. */
    private static final double EXACT = 1e-10;
    /** Smaller than this part of the value, digits of one site are not asked for. */
    private static final double NOTHING = 1e-30;

    private static final int SEEDS = 25;
    /** Of every network's reaches, one in so many is looked at. */
    private static final int EACH = 3;

    private static final int DRAWS = 60;
    private static final List<SampledPart> PARTS = List.of(Fraction.WHOLE, Fraction.FILTERED);

    static TestRiver river(long seed) {
        Random random = new Random(seed * 17 + 3);
        TestRiver river = ConservationTest.random(seed, true);
        river.cohesive("fine", 2e-5, 0.1, 200, 0.8);
        river.particles("sand", 5e-3, false, 1, 5, OptionalDouble.empty(), 0.2);
        river.cohesive("tailings", 3e-4, 0.07, 40, 0);
        river.grainRelease = 2e-6;
        river.content = 1e-7;
        river.filtered = 2e-9;
        river.flow = new double[] {1, 5};
        river.share = new double[] {0.7, 0.3};
        river.flood = List.of(false, true);
        river.overbank = 2e-5;
        river.netSedimentation = 1e-7;
        river.cut = true;
        for (int k = 0; k < river.ids.size(); k++) {
            if (random.nextInt(6) == 0) {
                river.along.set(k, -2 * random.nextDouble());
            }
        }
        river.abstraction.put("r7", 0.2);
        river.abstraction.put("r20", 0.3);
        for (int k = 0; k < 7; k++) {
            String reach = river.ids.get(random.nextInt(river.ids.size()));
            OptionalDouble split = k % 2 == 0 ? OptionalDouble.empty() : OptionalDouble.of(random.nextDouble());
            river.site(reach, 1e-6 * random.nextDouble(), split, 0.05 * random.nextDouble(), 0.01, k % 3 == 0);
        }
        return river;
    }

    /** What the run found largest, the spot looked for anew, in a run with the mercury of one site and no background. */
    private static double there(
            SteadyResult whole, SteadyResult one, Bound bound, int v, int state, int reach, SampledPart part) {
        StateSolution solution = whole.solution(bound, state);
        double largest = -1;
        double there = Double.NaN;
        for (int c : whole.cellsOf(reach)) {
            for (Place place : Place.values()) {
                if (solution.hasWater(c, place) && solution.part(part, c, place, v, true) > largest) {
                    largest = solution.part(part, c, place, v, true);
                    there = one.solution(bound, state).part(part, c, place, v, true);
                }
            }
        }
        return there;
    }

    private static void sumsUp(String what, Parts parts, double own) {
        assertThat(parts.value()).as(what).isEqualTo(own);
        assertThat(Math.abs(parts.sum() - own)).as("%s: %s", what, parts).isLessThanOrEqualTo(EXACT * own);
        assertThat(parts.sites()).as(what).allMatch(site -> site >= 0);
        assertThat(parts.background()).as(what).isNotNegative();
    }

    private static List<Integer> reaches(SteadyResult result) {
        List<Integer> reaches = new ArrayList<>();
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r += EACH) {
            reaches.add(r);
        }
        return reaches;
    }

    /** Reaches of a run: sums; the number of values looked at. */
    private static int sums(String what, SteadyResult result) {
        Optional<SitesOverYears> years = SitesOverYears.of(result, reaches(result));
        int looked = 0;
        for (int r : reaches(result)) {
            SiteShares shares = SiteShares.of(result, r, PARTS, years);
            for (Bound bound : result.bounds()) {
                for (int v = 0; v < result.variants(); v++) {
                    for (int s = 0; s < result.input().stateCount(); s++) {
                        for (int p = 0; p < PARTS.size(); p++) {
                            Optional<Parts> parts = shares.water(bound, v, s, p);
                            String where = what + " " + bound + " " + v + " " + s + " reach " + r + " " + PARTS.get(p);
                            if (parts.isPresent()) {
                                sumsUp(where, parts.get(), result.largest(bound, v, s, r, PARTS.get(p)));
                                looked++;
                            }
                        }
                    }
                    Optional<Parts> bed = shares.bed(bound, v);
                    if (bed.isPresent()) {
                        sumsUp(what + " bed " + bound + " " + v + " reach " + r, bed.get(), result.bed(bound, v, r));
                        looked++;
                    }
                }
            }
        }
        return looked;
    }

    /** Reaches of a run against the runs with one site's mercury each. */
    private static int oneByOne(String what, SteadyResult whole, List<SteadyResult> alone) {
        Optional<SitesOverYears> years = SitesOverYears.of(whole, reaches(whole));
        int looked = 0;
        for (int r : reaches(whole)) {
            SiteShares shares = SiteShares.of(whole, r, PARTS, years);
            for (Bound bound : whole.bounds()) {
                for (int v = 0; v < whole.variants(); v++) {
                    for (int s = 0; s < whole.input().stateCount(); s++) {
                        for (int p = 0; p < PARTS.size(); p++) {
                            Optional<Parts> parts = shares.water(bound, v, s, p);
                            for (int i = 0; parts.isPresent() && i < alone.size(); i++) {
                                double expected = there(whole, alone.get(i), bound, v, s, r, PARTS.get(p));
                                same(what + " reach " + r + " " + bound, parts.get(), i, expected);
                                looked += expected > 0 ? 1 : 0;
                            }
                        }
                    }
                    Optional<Parts> bed = shares.bed(bound, v);
                    for (int i = 0; bed.isPresent() && i < alone.size(); i++) {
                        double expected = alone.get(i).bed(bound, v, r);
                        same(what + " bed of reach " + r + " " + bound, bed.get(), i, expected);
                        looked += expected > 0 ? 1 : 0;
                    }
                }
            }
        }
        return looked;
    }

    private static void same(String what, Parts parts, int site, double expected) {
        double found = parts.sites().get(site);
        assertThat(Math.abs(found - expected))
                .as("%s site %d: %s for %s", what, site, found, expected)
                .isLessThanOrEqualTo(EXACT * expected + NOTHING * parts.value());
    }

    /** Solids and water of the whole, cells too; the mercury of one site; no background. */
    private static List<SteadyResult> alone(TestRiver river, SteadyResult whole, Optional<BedInput> bed) {
        river.content = 0;
        river.filtered = 0;
        TransportInput bare = bed.map(river.input()::over).orElseGet(river::input);
        List<SteadyResult> alone = new ArrayList<>();
        for (int i = 0; i < bare.sites().size(); i++) {
            alone.add(SteadyRun.solve(bare.mercuryOf(i), whole.cells()));
        }
        return alone;
    }

    @Test
    void sharesAndBackgroundSumToTheRunsOwnValue() {
        int looked = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            looked += sums("seed " + seed, river(seed).run());
        }
        assertThat(looked).isGreaterThan(SEEDS * 150);
    }

    @Test
    void eachSitesShareIsWhatItBringsAlone() {
        int looked = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            TestRiver river = river(seed);
            SteadyResult whole = river.run();
            looked += oneByOne("seed " + seed, whole, alone(river, whole, Optional.empty()));
        }
        assertThat(looked).isGreaterThan(SEEDS * 150);
    }

    @Test
    void stillWaterIsSharedOutWhole() {
        for (long seed = 0; seed < SEEDS; seed++) {
            TestRiver river = river(seed);
            assertThat(ConservationTest.withLake(river, seed)).isTrue();
            BedInput bed = new TestBed().input(2);
            SteadyResult whole = SteadyRun.run(river.input().over(bed));
            sums("seed " + seed, whole);
            oneByOne("seed " + seed, whole, alone(river, whole, Optional.of(bed)));
        }
    }

    @Test
    void allFormsOverAnyBedSumUpWhereverMethylationIsHeldBack() {
        int heldBack = 0;
        int later = 0;
        for (long seed : seeds()) {
            Random random = new Random(seed);
            TestRiver river = BedPropertiesTest.river(random, seed);
            SteadyResult result = SteadyRun.run(
                    river.input().over(BedPropertiesTest.bed(random).input(2)));
            sums("seed " + seed, result);
            BedAnswer bed = result.bedAnswer().orElseThrow();
            later += bed.afterYears().isPresent() ? 1 : 0;
            for (int c = 0; c < result.cells().count(); c++) {
                heldBack += bed.stocks().methylation(c) < 1 ? 1 : 0;
            }
        }
        assertThat(heldBack).isGreaterThan(DRAWS);
        assertThat(later).isBetween(DRAWS / 5, DRAWS - DRAWS / 10);
    }

    @Test
    void allFormsOverAnyBedAreWhatEachSiteBringsAlone() {
        int looked = 0;
        for (long seed : seeds()) {
            Random random = new Random(seed);
            TestRiver river = BedPropertiesTest.river(random, seed);
            TestBed bed = BedPropertiesTest.bed(random);
            bed.ceiling = Double.POSITIVE_INFINITY;
            SteadyResult whole = SteadyRun.run(river.input().over(bed.input(2)));
            List<SteadyResult> alone = alone(river, whole, Optional.of(bed.input(2)));
            boolean asSoon = alone.stream()
                    .allMatch(one -> one.bedAnswer()
                            .orElseThrow()
                            .afterYears()
                            .equals(whole.bedAnswer().orElseThrow().afterYears()));
            looked += asSoon ? oneByOne("seed " + seed, whole, alone) : 0;
        }
        assertThat(looked).isGreaterThan(DRAWS * 15);
    }

    private static List<Long> seeds() {
        List<Long> seeds = new ArrayList<>();
        for (long seed = 0; seed < DRAWS; seed++) {
            seeds.add(seed);
        }
        seeds.add(System.nanoTime());
        return seeds;
    }

    /**
     * By hand: 2 m3/s; site 1 releases 4e-7 kg/s at the head of r0, site 2 1e-7 kg/s at the head of r1; no solids settle and
     * nothing is lost, so at r1 there are 5e-7/2 = 2.5e-7 kg/m3, and 0.1 ng/L = 1e-10 kg/m3 of filtered background on top.
     */
    @Test
    void twoSitesInALineByHand() {
        TestRiver river = TestRiver.chain(2, 1000, 2);
        river.filtered = 1e-10;
        river.cohesive("fine", 0, 0.1, 200, 1);
        river.site("r0", 4e-7, 1).site("r1", 1e-7, 1);
        Parts parts = SiteShares.of(river.run(), 1, PARTS, Optional.empty())
                .water(Bound.LAID_DOWN, 0, 0, 0)
                .orElseThrow();
        assertThat(parts.sites().get(0) / 2e-7).isCloseTo(1, within(EXACT));
        assertThat(parts.sites().get(1) / 0.5e-7).isCloseTo(1, within(EXACT));
        assertThat(parts.background() / 1e-10).isCloseTo(1, within(EXACT));
    }

    /** Clear water settles less of another site's mercury than tailings do not: closing a muddy site is not its share. */
    @Test
    void closingASiteTakesItsSolidsAndItsWaterToo() {
        TestRiver river = TestRiver.chain(2, 5000, 2);
        river.sediment = 0.01;
        river.cohesive("fine", 2e-4, 1, 200, 1);
        river.site("r0", 4e-7, OptionalDouble.of(1), 0, 0, false);
        river.site("r0", 1e-7, OptionalDouble.of(1), 0.2, 0.1, false);
        SteadyResult whole = river.run();
        Parts parts = SiteShares.of(whole, 1, PARTS, Optional.empty())
                .water(Bound.LAID_DOWN, 0, 0, 0)
                .orElseThrow();
        TestRiver without = TestRiver.chain(2, 5000, 2);
        without.sediment = 0.01;
        without.cohesive("fine", 2e-4, 1, 200, 1);
        without.site("r0", 4e-7, OptionalDouble.of(1), 0, 0, false);
        SteadyResult closed =
                SteadyRun.run(whole.input().closed(1, without.input().hydraulics()));
        double after = closed.largest(Bound.LAID_DOWN, 0, 0, 1, Fraction.WHOLE);
        double never = without.run().largest(Bound.LAID_DOWN, 0, 0, 1, Fraction.WHOLE);
        assertThat(after / never).isCloseTo(1, within(EXACT));
        assertThat(after).isGreaterThan(1.05 * (parts.value() - parts.sites().get(1)));
    }
}
