// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.RIVER;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;
import static org.silverwake.model.release.Sheds.noted;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Notes that say the same mercury twice. Grams per cycle, 3000 cycles. */
class OverdeterminedNotesTest {
    /** ROUNDING: kg/yr of order 1000. */
    private static final double ROUNDING = 1e-8;

    private static FieldNotes notes(double tailingsGrams) {
        return FieldNotes.of("drum", Amalgamation.WHOLE_ORE)
                .with(Sheds.cycles(Optional.empty(), 1))
                .with(new FieldNotes.Mercury(
                        Optional.of(Noted.of(1.0, 0.02)),
                        Optional.of(Noted.of(0.94, 0.02)),
                        Optional.empty(),
                        Optional.empty(),
                        0))
                .with(Sheds.burning(
                        Optional.of(Noted.of(0.020, 0)),
                        noted(0.45),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0))
                .with(Sheds.tailings(
                        RIVER, Optional.of(Noted.of(tailingsGrams / 30_000, 5.0 / 30_000)), new Storage.Straight()));
    }

    /**
     * 1000 +- 20 put in, 940 +- 20 squeezed back, 9 exactly in the amalgam, 30 +- 5 in the tailings by samples: 21 g are missing.
     * By variance, 400 : 400 : 25 of 825: put in 1000 - 21 x 400/825, squeezed back 940 + the same, tailings 30 + 21 x 25/825.
     * Objective 21^2/825, one degree of freedom.
     */
    @Test
    void missingMercuryIsSharedByVariance() {
        SiteBalance site = SiteBalance.of(notes(30), STATES);
        double part = 21.0 / 825;
        assertThat(site.middle().rate(SitePath.CHARGED) * YEAR).isCloseTo(3 * (1000 - 400 * part), within(ROUNDING));
        assertThat(site.middle().rate(SitePath.SQUEEZED_BACK) * YEAR)
                .isCloseTo(3 * (940 + 400 * part), within(ROUNDING));
        assertThat(site.middle().river() * YEAR).isCloseTo(3 * (30 + 25 * part), within(ROUNDING));
        assertThat(site.middle().closure()).isLessThan(1e-12);
        Reconciliation sheet = site.reconciliation().orElseThrow();
        assertThat(sheet.degreesOfFreedom()).isEqualTo(1);
        assertThat(sheet.objective()).isCloseTo(21 * 21 / 825.0, within(ROUNDING));
        assertThat(site.findings()).noneMatch(f -> f.text().contains("improbable"));
    }

    /** 300 g in the tailings against 51 g that are missing: 8.7 standard deviations, and all three notes are named. */
    @Test
    void improbableNotesAreNamed() {
        SiteBalance site = SiteBalance.of(notes(300), STATES);
        Reconciliation sheet = site.reconciliation().orElseThrow();
        assertThat(sheet.objective()).isCloseTo(249 * 249 / 825.0, within(1e-6)); // ROUNDING
        assertThat(sheet.pValue()).isLessThan(1e-15);
        assertThat(site.findings().stream()
                        .filter(f -> f.text().contains("improbable"))
                        .map(NoteFinding::note))
                .containsExactlyInAnyOrder(Circuit.CHARGED, Circuit.SQUEEZED, Circuit.TAILINGS);
    }

    /** Amalgam by its share, 9 +- 0.9 g, and by weight less gold, 20 - 10 = 10 g +- 1 of the gold: between them by variance. */
    @Test
    void amalgamTwice() {
        FieldNotes notes = FieldNotes.of("drum", Amalgamation.CONCENTRATE)
                .with(Sheds.cycles(Optional.of(Noted.of(30 / YEAR, 3 / YEAR)), 1))
                .with(Sheds.burning(
                        Optional.of(Noted.of(0.020, 0)),
                        Optional.of(Noted.of(0.45, 0.045)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0))
                .with(Sheds.tailings(RIVER));
        SiteBalance site = SiteBalance.of(notes, STATES);
        double expected = (9 / 0.81 + 10 / 1.0) / (1 / 0.81 + 1);
        assertThat(site.middle().air() * YEAR).isCloseTo(3 * expected, within(ROUNDING));
        assertThat(site.gold() * YEAR).isCloseTo(3 * (20 - expected), within(ROUNDING));
    }

    /** Bought 30 kg/yr and the amalgam: what is bought is used, as no retort gives back; 27 kg burned, 3 kg with the tailings. */
    @Test
    void boughtMercury() {
        FieldNotes notes = FieldNotes.of("drum", Amalgamation.CONCENTRATE)
                .with(Sheds.cycles(Optional.empty(), 1))
                .with(new FieldNotes.Mercury(Optional.empty(), Optional.empty(), noted(30 / YEAR), Optional.empty(), 0))
                .with(Sheds.burning(noted(0.020), noted(0.45), OptionalDouble.empty(), OptionalDouble.empty(), 0))
                .with(Sheds.tailings(RIVER));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.middle().air() * YEAR).isCloseTo(27, within(ROUNDING));
        assertThat(site.middle().river() * YEAR).isCloseTo(3, within(ROUNDING));
        assertThat(site.middle().bought() * YEAR).isCloseTo(30, within(ROUNDING));
    }
}
