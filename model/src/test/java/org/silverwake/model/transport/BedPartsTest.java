// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.transport.History.Era;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.YearsResult.Whereabouts;

/** The bed's years in parts of the network: the same bits with one thread as with several, and budgets that close. */
class BedPartsTest {
    private static final int STATES = 3;
    private static final int YEARS = 4;
    private static final int CHAIN = 300;
    private static final int TRUNK = 300;

    @AfterEach
    void noInterruptIsLeft() {
        Thread.interrupted();
    }

    /**
     * Five chains of 300 reaches, each with a tributary at every tenth; two join, then the others one by one, at a trunk that
     * parts into an arm that joins it again and one with an outlet of its own. A sixth chain runs to the sea alone.
     */
    private static TestRiver river() {
        TestRiver river = new TestRiver();
        int chains = 5;
        int node = 1000;
        for (int b = 0; b <= chains; b++) {
            for (int k = 0; k < CHAIN; k++) {
                int last = b < chains ? Math.max(0, b - 1) : 999;
                int to = k == CHAIN - 1 ? last : node + 1;
                river.reach("c" + b + "-" + k, node++, to, 1500, k == 0 ? 0.5 : 0, 1e-3);
                if (k % 10 == 9) {
                    river.reach("t" + b + "-" + k, 100_000 + node, to, 1500, 0.2, 0);
                }
            }
            node++;
        }
        for (int k = 0; k < TRUNK; k++) {
            river.reach("trunk-" + k, k, k + 1, 1500, 0, 1e-3);
        }
        river.reach("arm", 100, 600, 1500, 0, 0).reach("arm end", 600, 150, 1500, 0, 0);
        river.reach("delta", 200, 601, 1500, 0, 0).reach("delta end", 601, 602, 1500, 0, 0);
        river.split.putAll(Map.of("arm", 0.3, "trunk-100", 0.7, "delta", 0.4, "trunk-200", 0.6));
        river.abstraction.put("trunk-50", 0.3);
        river.sediment = 0.08;
        river.flow = new double[] {1, 3, 9};
        river.share = new double[] {0.5, 0.3, 0.2};
        river.flood = Collections.nCopies(STATES, false);
        river.shape = Optional.of(TestRiver.geometry());
        river.slope = OptionalDouble.of(2e-5);
        river.content = 5e-8;
        river.cohesive("silt", 2e-4, 0.3, 100, 0.4).cohesive("sand", 5e-3, 0.3, 10, 0.6);
        river.chemistry = new Chemistry(
                List.of(new Form(
                        Form.METHYL,
                        true,
                        new Partitioned(List.of(5.4, 5.4), Collections.nCopies(STATES, 0.0)),
                        false)),
                List.of(),
                Collections.nCopies(STATES, 22.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1e-2),
                ByStateAndKind.same(Double.NaN),
                0);
        for (String reach : List.of("c0-3", "c1-200", "c3-40", "c5-7")) {
            river.site(reach, 1e-6, OptionalDouble.empty(), 0, 0, true);
        }
        return river;
    }

    private static SteadyResult steady() {
        TestBed bed = new TestBed();
        bed.burial = 1e-3 / TestBed.YEAR;
        bed.ceiling = 2e-8;
        bed.kd(Form.METHYL, 8);
        bed.reaction("Hg(II)", Form.METHYL, 0.001 / 86400).reaction(Form.METHYL, "Hg(II)", 0.1 / 86400);
        return SteadyRun.run(river().input().over(bed.input(STATES)));
    }

    private static YearsResult years(SteadyResult steady, List<Integer> order, int threads) {
        List<Era> eras = List.of(
                new Era(0, steady.input().sites()),
                new Era(2, List.of(steady.input().sites().get(0))));
        History history = new History(YEARS, eras, order, Optional.empty());
        return BedYears.run(steady, history, List.of(Fraction.values()), threads);
    }

    @Test
    void bitsDoNotDependOnThreads() {
        SteadyResult steady = steady();
        for (List<Integer> order : List.of(List.of(0, 2, 1), List.<Integer>of())) {
            YearsResult one = years(steady, order, 1);
            assertThat(one.worstClosure()).isLessThanOrEqualTo(BedYears.CLOSURE);
            for (int threads : new int[] {2, 5}) {
                same(one, years(steady, order, threads), steady);
            }
        }
    }

    private static void same(YearsResult one, YearsResult other, SteadyResult steady) {
        assertThat(other.lastStock()).isEqualTo(one.lastStock());
        assertThat(other.worstClosure()).isEqualTo(one.worstClosure());
        int reaches = steady.input().hydraulics().reaches().size();
        for (int year = 0; year < YEARS; year++) {
            for (int v = 0; v < steady.variants(); v++) {
                for (Whereabouts where : Whereabouts.values()) {
                    assertThat(other.amount(where, year, v)).isEqualTo(one.amount(where, year, v));
                }
            }
            for (int part = 0; part < Fraction.values().length; part++) {
                same(one.mean(part), other.mean(part), year, reaches);
                same(one.worst(part), other.worst(part), year, reaches);
            }
            same(one.bed(), other.bed(), year, reaches);
        }
    }

    private static void same(YearBand one, YearBand other, int year, int reaches) {
        for (int r = 0; r < reaches; r++) {
            if (other.low(year, r) != one.low(year, r) || other.high(year, r) != one.high(year, r)) {
                assertThat(other.high(year, r)).as("year %d, reach %d", year, r).isEqualTo(one.high(year, r));
                assertThat(other.low(year, r)).as("year %d, reach %d", year, r).isEqualTo(one.low(year, r));
            }
        }
    }

    /** Every reach lies in one part, what runs to it in the same or in an earlier one, and no part is much larger than others. */
    @Test
    void waterRunsFromPartsToLaterOnes() {
        SteadyResult steady = steady();
        RiverNetwork network = steady.input().hydraulics().reaches().network();
        NetworkParts parts = NetworkParts.of(network, steady.cells());
        assertThat(parts.count()).isGreaterThan(3);
        BitSet done = new BitSet();
        int[] partOf = new int[network.size()];
        for (int p = 0; p < parts.count(); p++) {
            int cells = 0;
            for (int q : parts.feeding(p)) {
                assertThat(q).isLessThan(p);
                assertThat(parts.fed(q)).contains(p);
            }
            for (int r : parts.reaches(p)) {
                assertThat(done.get(r)).isFalse();
                for (int k = 0; k < network.inCount(network.fromNode(r)); k++) {
                    int up = network.in(network.fromNode(r), k);
                    assertThat(done.get(up)).isTrue();
                    if (partOf[up] != p) {
                        assertThat(parts.feeding(p)).contains(partOf[up]);
                    }
                }
                done.set(r);
                partOf[r] = p;
                cells += steady.cells().start(r + 1) - steady.cells().start(r);
            }
            assertThat(cells).isBetween(1, 2 * steady.cells().count() / parts.count());
        }
        assertThat(done.cardinality()).isEqualTo(network.size());
    }

    /** The failure that comes first in the order of steps and parts comes out as it was thrown, and what waits for it is not done. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void theFirstFailureComesOut(int threads) {
        SteadyResult steady = steady();
        NetworkParts parts =
                NetworkParts.of(steady.input().hydraulics().reaches().network(), steady.cells());
        AtomicIntegerArray steps = new AtomicIntegerArray(parts.count());
        try (PartSteps turns = new PartSteps(parts, threads)) {
            assertThatThrownBy(() -> turns.run(4, (part, step) -> {
                        if (step == 1 && part > 0) {
                            throw new OutsideModelException(step, "part " + part);
                        }
                        steps.incrementAndGet(part);
                    }))
                    .isExactlyInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("part 1");
        }
        assertThat(steps.get(1)).isEqualTo(1);
    }

    /** An interrupt does not tear the work apart, and is still there afterwards. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void anInterruptIsKept(int threads) {
        SteadyResult steady = steady();
        NetworkParts parts =
                NetworkParts.of(steady.input().hydraulics().reaches().network(), steady.cells());
        AtomicIntegerArray steps = new AtomicIntegerArray(parts.count());
        Thread.currentThread().interrupt();
        try (PartSteps turns = new PartSteps(parts, threads)) {
            turns.run(
                    20, (part, step) -> assertThat(steps.getAndIncrement(part)).isEqualTo(step));
        }
        assertThat(Thread.currentThread().isInterrupted()).isTrue();
        for (int p = 0; p < parts.count(); p++) {
            assertThat(steps.get(p)).isEqualTo(20);
        }
    }
}
