// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.YEAR;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws of any notes, on random ones: whatever is known or not, each balance closes, and what is sent is what the balance says. */
class SiteBalancePropertiesTest {
    /** ROUNDING: the closure that the project asks for. */
    private static final double CLOSED = 1e-12;

    private static final int SITES = 15;
    private final FlowYear year = new FlowYear(List.of(0.5, 0.4, 0.1), List.of(0.7, 0.3, 0.0));
    private int balances;
    private int refusals;

    private static OptionalDouble maybe(SplittableRandom random, double low, double high) {
        return random.nextBoolean() ? OptionalDouble.of(random.nextDouble(low, high)) : OptionalDouble.empty();
    }

    private static Optional<Noted> maybeNoted(SplittableRandom random, double low, double high) {
        if (random.nextBoolean()) {
            return Optional.empty();
        }
        double value = random.nextInt(10) == 0 ? 0 : random.nextDouble(low, high);
        return Optional.of(random.nextBoolean() ? Noted.of(value) : Noted.of(value, 0.15 * value));
    }

    private static FieldNotes notes(SplittableRandom random) {
        double stored = random.nextDouble();
        double leached = random.nextBoolean() ? 0 : (1 - stored) * random.nextDouble();
        List<Storage> storages = List.of(
                new Storage.Straight(),
                new Storage.Pond(random.nextDouble()),
                new Storage.Heap(List.of(0.0, 0.6, 0.3)));
        double droplets = random.nextDouble();
        FieldNotes notes = FieldNotes.of(
                        "random", random.nextBoolean() ? Amalgamation.WHOLE_ORE : Amalgamation.CONCENTRATE)
                .with(new FieldNotes.Work(
                        OptionalDouble.of(30),
                        OptionalDouble.of(random.nextDouble(1, 20)),
                        OptionalDouble.of(random.nextDouble(50, 350)),
                        maybeNoted(random, 1 / YEAR, 20 / YEAR),
                        random.nextInt(1, 40)))
                .with(new FieldNotes.Mercury(
                        maybeNoted(random, 0.1, 1),
                        maybeNoted(random, 0.05, 0.9),
                        maybeNoted(random, 1 / YEAR, 100 / YEAR),
                        maybeNoted(random, 1, 20),
                        0))
                .with(new FieldNotes.Burning(
                        maybeNoted(random, 0.005, 0.05),
                        maybeNoted(random, 0.4, 0.7),
                        maybe(random, 0, 1),
                        maybe(random, 0.7, 1),
                        random.nextInt(4) == 0 ? Optional.of(Noted.of(random.nextDouble(0, 0.01))) : Optional.empty(),
                        maybe(random, 0, 0.05),
                        new FieldNotes.Nearby(random.nextDouble(), random.nextDouble(), random.nextBoolean())))
                .with(new FieldNotes.Tailings(
                        OptionalDouble.of(25),
                        maybeNoted(random, 1e-6, 300e-6),
                        Optional.empty(),
                        Optional.of(new FieldNotes.Fate(
                                random.nextDouble(), random.nextDouble(), stored, leached, 1 - stored - leached)),
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(new FieldNotes.Forms(
                                        droplets, (1 - droplets) / 3, 1 - droplets - (1 - droplets) / 3)),
                        storages.get(random.nextInt(storages.size())),
                        random.nextDouble()))
                .with(new FieldNotes.Tank(
                        random.nextDouble(1, 10),
                        random.nextDouble(10, 100),
                        Optional.empty(),
                        random.nextDouble(),
                        random.nextDouble(),
                        random.nextDouble(),
                        random.nextBoolean()));
        Practice change = new Practice(
                "change",
                List.of(
                        new Effect.Retorts(random.nextDouble(), random.nextDouble()),
                        new Effect.ConcentrateOnly(random.nextDouble()),
                        new Effect.Reprocessed(random.nextDouble(), random.nextDouble()),
                        new Effect.Contained(random.nextDouble()),
                        new Effect.Detoxified(random.nextDouble()),
                        new Effect.MercuryFree(random.nextDouble())),
                2027,
                random.nextDouble(),
                new Practice.Cost(Spread.exact(1), Spread.exact(1), 5),
                0,
                Optional.of(new DrumBleed(random.nextDouble(), YEAR * random.nextDouble(0.1, 10))));
        return random.nextBoolean() ? change.apply(notes) : notes;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void closesWhateverIsKnown(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < SITES; i++) {
            FieldNotes notes = notes(random);
            try {
                check(seed + "/" + i, SiteBalance.of(notes, year));
                balances++;
            } catch (NotesException refused) {
                assertThat(refused.findings()).anyMatch(NoteFinding::refused);
                assertThat(refused.getMessage()).doesNotContain("NaN").doesNotContain("Infinity");
                refusals++;
            }
        }
        assertThat(balances).as("balances, seed " + seed).isGreaterThan(3);
        assertThat(refusals).isLessThan(SITES);
    }

    private void check(String where, SiteBalance site) {
        assertThat(site.range(YearBalance::closure).high()).as(where).isLessThan(CLOSED);
        for (Spread.Level level : Spread.Level.values()) {
            YearBalance balance = site.at(level);
            assertThat(balance.rates().values()).as(where).allMatch(rate -> rate >= 0);
            double sent = 0;
            double solids = 0;
            for (PathRelease release : site.releases(level)) {
                sent += release.mean(year);
                solids += year.mean(release.solids());
            }
            double river = balance.river() + balance.rate(SitePath.RUNOFF);
            assertThat(sent).as(where).isCloseTo(river, within(CLOSED * river));
            assertThat(solids).as(where).isCloseTo(balance.solids(), within(CLOSED * balance.solids()));
            Spread range = site.range(YearBalance::river);
            assertThat(range.holds(balance.river())).as(where).isTrue();
        }
        assertThat(site.findings())
                .as(where)
                .noneMatch(f -> f.text().contains("NaN") || f.text().contains("Infinity"));
        assertThat(site.assumed()).as(where).allMatch(a -> !a.source().isEmpty());
    }
}
