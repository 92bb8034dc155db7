// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.FirstOrder;

/** Weak-acid dissociable cyanide beside mercury. */
class CyanideTest {
    /** PRINTED: 12 significant digits are half a unit of 1e-11 at worst, and the case states 1e-12. */
    private static final double STATED = 6e-12;
    /** ROUNDING: a few dozen products and sums of doubles. */
    private static final double ROUNDING = 1e-12;

    private static final double PER_DAY = 1.0 / 86400;

    private static Cyanide run(TestRiver river, double rate, double theta, double freeShare) {
        TransportInput input = river.input();
        List<Cyanide.Release> releases = input.sites().stream()
                .map(s -> new Cyanide.Release(s.name(), s.reach(), s.mercury(), s.water(), s.atBank()))
                .toList();
        Cyanide.Fate fate = new Cyanide.Fate(
                new FirstOrder(ByStateAndKind.same(rate), theta, false),
                Collections.nCopies(input.stateCount(), river.celsius),
                freeShare);
        return Cyanide.run(input, releases, fate);
    }

    private static double end(Cyanide cyanide, TestRiver river, String id) {
        StateSolution solution = cyanide.result().solution(Bound.CARRIED_THROUGH, 0);
        return solution.loadOut(river.index(id), 0);
    }

    /**
     * Case 05 of the independent implementation (reference/cases-numeric): its mercury-cyanide complex sorbs nothing and breaks
     * down at one first-order rate, as cyanide does here; what it turns into is left aside.
     */
    @Test
    void case05CyanideFallsAsTheComplexDoes() throws IOException {
        NumericCase numeric = NumericCase.read("05_cyanide");
        NumericCase reaction = numeric.at("inputs", "reactions", 0);
        TestRiver river = NumericCasesTest.withAllForms(numeric.at("inputs"));
        Cyanide cyanide = run(river, reaction.number("rate_20c_per_s"), reaction.number("theta"), 1);
        for (String id : river.ids) {
            NumericCase expected = numeric.at("expected", "reaches", id);
            assertThat(end(cyanide, river, id) / expected.number("load_out_kg_per_s", "HgCN"))
                    .isCloseTo(1, within(STATED));
        }
        NumericCase last = numeric.at("expected", "reaches", "p3");
        double water = last.number("q_out_m3_per_s");
        assertThat(cyanide.result()
                        .solution(Bound.LAID_DOWN, 0)
                        .part(Cyanide.wad(), river.index("p3"), StateSolution.Place.END, 0, true))
                .isCloseTo(last.number("load_out_kg_per_s", "HgCN") / water, within(STATED * 1e-6));
        Balance balance = cyanide.balance(0);
        assertThat(balance.sum(Process.RELEASED)).isEqualTo(6e-7);
        assertThat(balance.sum(Process.LOST) + balance.sum(Process.EXPORTED)).isCloseTo(6e-7, within(6e-7 * ROUNDING));
        assertThat(balance.closure()).isLessThan(ROUNDING);
        assertThat(balance.rows()).allMatch(row -> row.form().equals(Cyanide.FORM));
    }

    /** W_out = W e^(-k t) along any widening river, t the travel time; free cyanide is a share of it. */
    @Test
    void lateralWaterDilutesAndTimeTakes() {
        TestRiver river = TestRiver.chain(3, 5000, 2).cohesive("silt", 1e-4, 0.1, 200, 1);
        river.along.replaceAll(q -> 1.0);
        river.cut = true;
        river.sediment = 0.1;
        river.site("r0", 1e-4, 1);
        Cyanide cyanide = run(river, 0.5 * PER_DAY, 1, 0.25);
        double time = 15000 / 0.4;
        double load = 1e-4 * StrictMath.exp(-0.5 * PER_DAY * time);
        assertThat(end(cyanide, river, "r2") / load).isCloseTo(1, within(ROUNDING));
        int last = river.index("r2");
        assertThat(cyanide.result().high(0, last, cyanide.free())
                        / cyanide.result().high(0, last, Cyanide.wad()))
                .isCloseTo(0.25, within(ROUNDING));
        assertThat(cyanide.result().low(0, last, Cyanide.wad()))
                .isEqualTo(cyanide.result().high(0, last, Cyanide.wad()));
    }

    /** With no loss and no abstraction the outlet gets all of it; with an abstraction it gets 1 - q/Q. */
    @Test
    void nothingIsLostUnlessStated() {
        TestRiver river = TestRiver.chain(3, 5000, 2).cohesive("silt", 1e-3, 0.1, 200, 1);
        river.site("r0", 1e-4, 1);
        assertThat(end(run(river, 0, 1, 1), river, "r2")).isCloseTo(1e-4, within(1e-4 * ROUNDING));
        river.abstraction.put("r1", 0.5);
        Cyanide cyanide = run(river, 0, 1, 1);
        assertThat(end(cyanide, river, "r2")).isCloseTo(0.75e-4, within(1e-4 * ROUNDING));
        assertThat(cyanide.balance(0).sum(Process.ABSTRACTED)).isCloseTo(0.25e-4, within(1e-4 * ROUNDING));
    }

    /** A mixed tank of volume V passes on W/(1 + k V/Q): three quarters of a day in it at 1 /d leave 1/1.75. */
    @Test
    void stillWaterTakesWhatItsTimeTakes() {
        TestRiver river = TestRiver.chain(3, 2000, 4).cohesive("silt", 1e-6, 0.1, 200, 1);
        river.lake("Round Lake", 0.75 * 86400 * 4 / 5, 5, "r1");
        river.velocity.replaceAll(u -> 1e15);
        river.site("r0", 1e-4, 1);
        Cyanide cyanide = run(river, PER_DAY, 1, 1);
        assertThat(end(cyanide, river, "r2") / 1e-4).isCloseTo(1 / 1.75, within(ROUNDING));
        assertThat(cyanide.balance(0).closure()).isLessThan(ROUNDING);
    }

    /** Right below a bank outfall the value is above the mixed one, and never above the release's own. */
    @Test
    void nearTheBankItIsStrongerButNeverStrongerThanTheRelease() {
        TestRiver river = TestRiver.chain(2, 2000, 5).cohesive("silt", 1e-4, 0.1, 200, 1);
        river.site(new TestRiver.Site("tank", "r0", 1e-4, java.util.OptionalDouble.of(1), List.of(1.0), 0, 0.01, true));
        Cyanide cyanide = run(river, 0, 1, 1);
        double mixed = 1e-4 / 5.01;
        double highest = cyanide.result().high(0, river.index("r0"), Cyanide.wad());
        assertThat(highest).isGreaterThan(1.5 * mixed).isLessThanOrEqualTo(1e-4 / 0.01);
    }

    /** A loss that is scaled after the fact must break the budget, or closure would prove nothing. */
    @Test
    void closureNoticesAWrongLoss() {
        TestRiver river = TestRiver.chain(2, 5000, 2).cohesive("silt", 1e-4, 0.1, 200, 1);
        river.site("r0", 1e-4, 1);
        Balance right = run(river, PER_DAY, 1, 1).balance(0);
        Balance wrong = new Balance(right.rows().stream()
                .map(row -> row.process() == Process.LOST
                        ? new Balance.Row(row.process(), row.form(), row.rate() * (1 + 1e-6))
                        : row)
                .toList());
        assertThat(right.closure()).isLessThan(ROUNDING);
        assertThat(wrong.closure()).isGreaterThan(1e-9);
    }
}
