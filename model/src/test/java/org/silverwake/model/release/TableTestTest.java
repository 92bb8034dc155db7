// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;
import static org.silverwake.model.release.Sheds.noted;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class TableTestTest {
    /** ROUNDING: contents of order 1e-4. */
    private static final double ROUNDING = 1e-15;

    /**
     * By hand: 15 +- 0.1 kg give 1.5 +- 0.1 g, the rest holds 40 +- 10 mg/kg: 1e-4 + 40e-6 (1 - 1e-4) = 139.996 mg/kg. Its sd from
     * 0.99996/15 x 1e-4 = 6.6664e-6, 0.99996 x 1e-4/15 x 0.1 = 6.6664e-7 and 0.9999 x 10e-6: 12.0373e-6.
     */
    @Test
    void contentAndUncertainty() {
        TableTest test = new TableTest(Noted.of(15, 0.1), Noted.of(0.0015, 1e-4), Optional.of(Noted.of(40e-6, 10e-6)));
        assertThat(test.content().value()).isCloseTo(139.996e-6, within(ROUNDING));
        double byRecovered = 0.99996 / 15 * 1e-4;
        double byMass = 0.99996 * 1e-4 / 15 * 0.1;
        double byAssay = 0.9999 * 10e-6;
        double sd = StrictMath.sqrt(byRecovered * byRecovered + byMass * byMass + byAssay * byAssay);
        assertThat(test.content().sd().orElseThrow()).isCloseTo(sd, within(ROUNDING));
        assertThat(sd).isCloseTo(12.0363e-6, within(5e-9)); // PRINTED
        assertThat(test.isLowerBound()).isFalse();
    }

    /** Without the assay 1.5 g of 15 kg is 100 mg/kg, or more. */
    @Test
    void lowerBound() {
        TableTest test = new TableTest(Noted.of(15), Noted.of(0.0015), Optional.empty());
        assertThat(test.isLowerBound()).isTrue();
        assertThat(test.content().value()).isCloseTo(1e-4, within(ROUNDING));
    }

    /** The assayed test is the tailings' content: 139.996 mg/kg of 90 t. */
    @Test
    void assayedTestSetsTheTailings() {
        TableTest test = new TableTest(Noted.of(15, 0), Noted.of(0.0015, 0), Optional.of(Noted.of(40e-6, 0)));
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(Sheds.cycles(noted(5 / YEAR), 1))
                .with(Sheds.tableTest(test));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.middle().river() * YEAR).isCloseTo(139.996e-6 * 90_000, within(1e-9)); // ROUNDING
        assertThat(site.assumed()).contains(Published.AMALGAM_SHARE).doesNotContain(Published.WHOLE_ORE_RATIO);
    }

    /** 1 kg of gold at the published ratio leaves 0.87 to 37.5 kg; the test says at least 1e-4 x 90,000 = 9 kg. */
    @Test
    void lowerBoundLiftsTheLowBalance() {
        TableTest test = new TableTest(Noted.of(15), Noted.of(0.0015), Optional.empty());
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(Sheds.cycles(noted(1 / YEAR), 1))
                .with(Sheds.tableTest(test));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.low().river() * YEAR).isCloseTo(9, within(1e-9)); // ROUNDING
        assertThat(site.high().river() * YEAR).isCloseTo(37.5, within(1e-9)); // ROUNDING
        assertThat(site.low().closure()).isLessThan(1e-12);
    }
}
