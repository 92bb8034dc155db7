// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.quantity.Quantity;

/** Notes of invented sheds. */
final class Sheds {
    static final double YEAR = Quantity.SECONDS_PER_YEAR;
    static final FlowYear STATES = FlowYear.even(List.of(0.6, 0.3, 0.1));
    static final FieldNotes.Fate RIVER = new FieldNotes.Fate(0, 0, 0, 0, 1);

    private Sheds() {}

    static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    static Optional<Noted> noted(double value) {
        return Optional.of(Noted.of(value));
    }

    static FieldNotes.Work gold(double kgPerYear) {
        return new FieldNotes.Work(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), noted(kgPerYear / YEAR), 1);
    }

    /** 30 kg of ore a cycle, 10 cycles a day, 300 days: 3000 cycles a year. */
    static FieldNotes.Work cycles(Optional<Noted> gold, double sheds) {
        return new FieldNotes.Work(some(30), some(10), some(300), gold, sheds);
    }

    static FieldNotes.Tailings tailings(FieldNotes.Fate fate) {
        return tailings(fate, Optional.empty(), new Storage.Straight());
    }

    static FieldNotes.Tailings tailings(FieldNotes.Fate fate, Optional<Noted> content, Storage storage) {
        return new FieldNotes.Tailings(
                OptionalDouble.empty(), content, Optional.empty(), Optional.of(fate), Optional.empty(), storage, 0);
    }

    static FieldNotes.Tailings tableTest(TableTest test) {
        return new FieldNotes.Tailings(
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(test),
                Optional.of(RIVER),
                Optional.empty(),
                new Storage.Straight(),
                0);
    }

    static FieldNotes.Burning burning(
            Optional<Noted> amalgam,
            Optional<Noted> share,
            OptionalDouble retorts,
            OptionalDouble recovery,
            double sponge) {
        return new FieldNotes.Burning(
                amalgam, share, retorts, recovery, Optional.empty(), some(sponge), new FieldNotes.Nearby(0, 0, false));
    }

    /** No sponge remainder, nothing else noted. */
    static FieldNotes.Burning open() {
        return burning(Optional.empty(), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0);
    }

    static FieldNotes.Mercury charge(double charged, Optional<Noted> squeezed) {
        return new FieldNotes.Mercury(noted(charged), squeezed, Optional.empty(), Optional.empty(), 0);
    }

    /** Gold and practice alone are known; tailings go to the river. */
    static FieldNotes goldOnly(Amalgamation practice, double kgPerYear) {
        return FieldNotes.of("shed", practice)
                .with(gold(kgPerYear))
                .with(open())
                .with(tailings(RIVER));
    }

    /** The shed worked by hand in SiteBalanceTest. */
    static FieldNotes worked() {
        return FieldNotes.of("worked", Amalgamation.WHOLE_ORE)
                .with(cycles(Optional.empty(), 1))
                .with(charge(1.0, noted(0.95)))
                .with(burning(noted(0.020), noted(0.45), some(0.5), some(0.9), 0.02))
                .with(tailings(new FieldNotes.Fate(0.2, 0.5, 0.25, 0.25, 0.5)))
                .with(new FieldNotes.Tank(2, 60, noted(5e-3), 0.5, 0.8, 0.4, false));
    }
}
