// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BaselineTest {
    /** ROUNDING: kg/yr of order 1 to 1000. */
    private static final double ROUNDING = 1e-9;

    /** Once changes leave no whole ore, or no mercury, a site counts with concentrate, or with none. */
    @Test
    void changesMoveSitesToOtherRows() {
        List<SiteBalance> sites = new ArrayList<>();
        for (Effect effect :
                List.of(new Effect.ConcentrateOnly(0.5), new Effect.ConcentrateOnly(1), new Effect.MercuryFree(1))) {
            Practice change = new Practice(
                    "change",
                    List.of(effect),
                    2027,
                    1,
                    new Practice.Cost(Spread.exact(0), Spread.exact(0), 1),
                    0,
                    Optional.empty());
            sites.add(SiteBalance.of(change.apply(Sheds.worked()), STATES));
        }
        assertThat(Baseline.of(sites).rows())
                .extracting(Baseline.Row::practice)
                .containsExactly(Amalgamation.WHOLE_ORE, Amalgamation.CONCENTRATE, Amalgamation.NONE);
    }

    /** Two whole-ore sites of 1 and 2 kg of gold: 3 x 3, 3 x 5, 3 x 50 kg of mercury; the worked shed with retorts on its own row. */
    @Test
    void sumsByPractice() {
        List<SiteBalance> sites = new ArrayList<>();
        for (FieldNotes notes : new FieldNotes[] {
            Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1),
            Sheds.worked().with(Sheds.cycles(Optional.empty(), 4)),
            Sheds.goldOnly(Amalgamation.WHOLE_ORE, 2)
        }) {
            sites.add(SiteBalance.of(notes, STATES));
        }
        Baseline table = Baseline.of(sites);
        assertThat(table.rows()).hasSize(2);
        Baseline.Row open = table.rows().get(0);
        assertThat(open.sites()).isEqualTo(2);
        assertThat(open.retorts()).isFalse();
        assertThat(open.gold() * YEAR).isCloseTo(3, within(ROUNDING));
        assertThat(open.used().low() * YEAR).isCloseTo(9, within(ROUNDING));
        assertThat(open.used().middle() * YEAR).isCloseTo(15, within(ROUNDING));
        assertThat(open.used().high() * YEAR).isCloseTo(150, within(ROUNDING));
        Baseline.Row retorts = table.rows().get(1);
        assertThat(retorts.retorts()).isTrue();
        assertThat(retorts.sheds()).isCloseTo(4, within(ROUNDING));
        assertThat(retorts.used().middle() * YEAR).isCloseTo(4 * 150, within(ROUNDING));
        assertThat(retorts.river().middle() * YEAR).isCloseTo(4 * 3 * 22.18, within(ROUNDING));
        double out = retorts.recovered().middle()
                + retorts.air().middle()
                + retorts.river().middle()
                + retorts.kept().middle();
        assertThat((retorts.used().middle() - out) * YEAR).isCloseTo(12 * 0.22 / 0.98, within(ROUNDING)); // in the gold
    }
}
