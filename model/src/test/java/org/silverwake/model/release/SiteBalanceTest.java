// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.RIVER;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;
import static org.silverwake.model.release.Sheds.noted;
import static org.silverwake.model.release.Sheds.some;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SiteBalanceTest {
    /** ROUNDING: kg/yr of order 1 to 1000, a few hundred operations. */
    private static final double ROUNDING = 1e-9;
    /** ROUNDING: the closure that the project asks for. */
    private static final double CLOSED = 1e-12;

    private static double perYear(YearBalance balance, SitePath path) {
        return balance.rate(path) * YEAR;
    }

    private static void assertClosed(SiteBalance site) {
        for (Spread.Level level : Spread.Level.values()) {
            assertThat(site.at(level).closure()).isLessThan(CLOSED);
            assertThat(site.at(level).rates().values()).allMatch(rate -> rate >= 0);
        }
        assertThat(site.range(YearBalance::closure).high()).isLessThan(CLOSED);
    }

    /**
     * By hand, per cycle: 1000 g put in, 950 g squeezed back, so 50 g used. 20 g of amalgam at 45 % hold 9 g, and 11 g of gold;
     * 41 g go with the tailings. The sponge keeps 0.02/0.98 x 11 = 0.224490 g; 8.775510 g are driven off, half in retorts that
     * give back 90 %: 3.948980 g. Open 4.387755 g, from retorts 0.438776 g. A fifth of the tailings is reprocessed, half of it
     * gained: 4.1 g. Of 36.9 g left a quarter is stored, 9.225 g, a quarter leached, 9.225 g, half to the river, 18.45 g. The
     * tank lets go 2 m3 x 60 at 5 mg/L = 0.6 kg/yr, 0.2 g a cycle; half is thrown out; of 0.1 g four fifths to the river,
     * 0.08 g. Residue 9.125 g, two fifths to the river, 3.65 g. Kept 9.225 + 0.02 + 5.475 = 14.72 g. Sum 3.948980 + 4.826531 +
     * 0.224490 + 4.1 + 18.45 + 0.08 + 3.65 + 14.72 = 50. Times 3000 cycles, 3 kg/yr for each gram.
     */
    @Test
    void workedByHand() {
        SiteBalance site = SiteBalance.of(Sheds.worked(), STATES);
        YearBalance year = site.middle();
        Map<SitePath, Double> grams = Map.ofEntries(
                Map.entry(SitePath.CHARGED, 1000.0),
                Map.entry(SitePath.SQUEEZED_BACK, 950.0),
                Map.entry(SitePath.RETORT_RECOVERED, 0.45 * (9 - 0.22 / 0.98)),
                Map.entry(SitePath.AIR_OPEN, 0.5 * (9 - 0.22 / 0.98)),
                Map.entry(SitePath.AIR_RETORT, 0.05 * (9 - 0.22 / 0.98)),
                Map.entry(SitePath.PRODUCT, 0.22 / 0.98),
                Map.entry(SitePath.TAILINGS_RECOVERED, 4.1),
                Map.entry(SitePath.SLURRY_UNSPLIT, 18.45),
                Map.entry(SitePath.TANK_COMPLEX, 0.08),
                Map.entry(SitePath.TANK_RESIDUE, 3.65),
                Map.entry(SitePath.KEPT, 14.72));
        grams.forEach((path, g) -> assertThat(perYear(year, path)).isCloseTo(3 * g, within(ROUNDING)));
        assertThat(year.river() * YEAR).isCloseTo(3 * 22.18, within(ROUNDING));
        assertThat(year.bought() * YEAR).isCloseTo(3 * (50 - 4.1 - 0.45 * (9 - 0.22 / 0.98)), within(ROUNDING));
        assertThat(site.gold() * YEAR).isCloseTo(33, within(ROUNDING));
        // 30 kg x 3000 cycles; half to the river, and two fifths of the quarter that is leached
        assertThat(year.solids() * YEAR).isCloseTo(90_000 * 0.6, within(1e-6)); // ROUNDING
        assertClosed(site);
        assertThat(site.reconciliation().orElseThrow().degreesOfFreedom()).isZero();
        assertThat(site.assumed())
                .extracting(Assumed::what)
                .containsExactly("grain-bound share of the mercury in leached tailings");
    }

    /** 41 g in 30 kg of tailings is 1367 mg/kg, four times the most that was published: kept, and told. */
    @Test
    void unusualContentIsTold() {
        assertThat(SiteBalance.of(Sheds.worked(), STATES).findings())
                .extracting(NoteFinding::text)
                .anyMatch(text -> text.startsWith("mercury content of tailings, by the balance, is 1367 mg/kg")
                        && text.contains("usual 0.3 to 350 mg/kg"));
    }

    /** A wrong split does show in the closure: one gram in fifty thousand is seen. */
    @Test
    void closureSeesAnError() {
        YearBalance year = SiteBalance.of(Sheds.worked(), STATES).middle();
        double wrong = year.plus(SitePath.KEPT, 1e-9 * year.rate(SitePath.KEPT)).closure();
        assertThat(wrong).isBetween(1e-12, 1e-10);
    }

    /** Ten sheds are ten times one. */
    @Test
    void groupOfSheds() {
        FieldNotes one = Sheds.worked();
        YearBalance ten = SiteBalance.of(one.with(Sheds.cycles(Optional.empty(), 10)), STATES)
                .middle();
        YearBalance single = SiteBalance.of(one, STATES).middle();
        single.rates().forEach((path, rate) -> assertThat(ten.rate(path)).isCloseTo(10 * rate, within(1e-15)));
        assertThat(ten.solids()).isCloseTo(10 * single.solids(), within(1e-12));
    }

    /** Check D14: 1 kg of gold, 1.3 kg of mercury per kg, three quarters to the air: 0.975 kg, and 0.325 kg to land and water. */
    @Test
    void concentrateByRatio() {
        SiteBalance site = SiteBalance.of(Sheds.goldOnly(Amalgamation.CONCENTRATE, 1), STATES);
        assertThat(site.middle().air() * YEAR).isCloseTo(0.975, within(ROUNDING));
        assertThat(site.middle().river() * YEAR).isCloseTo(0.325, within(ROUNDING));
        assertThat(site.middle().used() * YEAR).isCloseTo(1.3, within(ROUNDING));
        assertClosed(site);
    }

    /**
     * Check D9 (from memory): concentrate 1, 1.3, 2, whole ore 3, 5, 50, never a silent default. Least to the river with the least
     * used and the most burned off: 3 x 0.29 and 1 x 0.20; most 50 x 0.75 and 2 x 0.30.
     */
    @Test
    void goldAndPracticeAloneGiveThreeBalances() {
        SiteBalance whole = SiteBalance.of(Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1), STATES);
        assertThat(whole.low().used() * YEAR).isCloseTo(3, within(ROUNDING));
        assertThat(whole.middle().used() * YEAR).isCloseTo(5, within(ROUNDING));
        assertThat(whole.high().used() * YEAR).isCloseTo(50, within(ROUNDING));
        assertThat(whole.low().river() * YEAR).isCloseTo(0.87, within(ROUNDING));
        assertThat(whole.high().river() * YEAR).isCloseTo(37.5, within(ROUNDING));
        assertThat(whole.range(YearBalance::air).high() * YEAR).isCloseTo(35.5, within(ROUNDING));
        assertThat(whole.assumed()).contains(Published.WHOLE_ORE_RATIO, Published.WHOLE_ORE_TO_AIR);
        assertClosed(whole);
        SiteBalance concentrate = SiteBalance.of(Sheds.goldOnly(Amalgamation.CONCENTRATE, 1), STATES);
        assertThat(concentrate.low().river() * YEAR).isCloseTo(0.2, within(ROUNDING));
        assertThat(concentrate.high().river() * YEAR).isCloseTo(0.6, within(ROUNDING));
        assertThat(concentrate.high().used() * YEAR).isCloseTo(2, within(ROUNDING));
    }

    /** Check D12: 10 g of amalgam, 40 % mercury, 95 % recovery: 3.8 g recovered, 0.2 g lost. */
    @Test
    void retortGivesBack() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.CONCENTRATE, 0)
                .with(Sheds.cycles(Optional.empty(), 1))
                .with(Sheds.burning(noted(0.010), noted(0.40), some(1), some(0.95), 0));
        YearBalance year = SiteBalance.of(notes, STATES).middle();
        assertThat(perYear(year, SitePath.RETORT_RECOVERED)).isCloseTo(3.8 * 3, within(ROUNDING));
        assertThat(perYear(year, SitePath.AIR_RETORT)).isCloseTo(0.2 * 3, within(ROUNDING));
        assertThat(year.rate(SitePath.AIR_OPEN)).isZero();
    }

    /**
     * Common practice, no source: in whole-ore amalgamation about twice as much mercury goes out with the tailings as into the
     * amalgam. 20 g of amalgam at 45 %: 9 g, and 18 g with the tailings.
     */
    @Test
    void tailingsTwiceTheAmalgam() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 0)
                .with(Sheds.cycles(Optional.empty(), 1))
                .with(Sheds.burning(noted(0.020), noted(0.45), OptionalDouble.empty(), OptionalDouble.empty(), 0));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.middle().river() * YEAR).isCloseTo(3 * 18, within(ROUNDING));
        assertThat(site.findings())
                .anyMatch(f -> f.text().contains("mercury used per gold, whole ore, by the balance,"));
        assertClosed(site);
    }

    /**
     * 1000 g put in, 950 g squeezed back, nothing else: of 50 g a third is driven off, and the sponge's P = 0.035/0.965 of the gold,
     * which is 55/45 of the amalgam's mercury A = 50/3 + P: P = k (50/3)/(1 - k) with k = 0.035/0.965 x 55/45.
     */
    @Test
    void chargeAndClothAlone() {
        FieldNotes notes = FieldNotes.of("drum", Amalgamation.WHOLE_ORE)
                .with(Sheds.cycles(Optional.empty(), 1))
                .with(Sheds.charge(1.0, noted(0.95)))
                .with(Sheds.tailings(RIVER));
        SiteBalance site = SiteBalance.of(notes, STATES);
        double k = 0.035 / 0.965 * 55 / 45;
        double product = k * (50.0 / 3) / (1 - k);
        assertThat(site.middle().air() * YEAR).isCloseTo(50, within(ROUNDING));
        assertThat(perYear(site.middle(), SitePath.PRODUCT)).isCloseTo(3 * product, within(ROUNDING));
        assertThat(site.middle().river() * YEAR).isCloseTo(100 - 3 * product, within(ROUNDING));
        assertClosed(site);
    }

    /** A heap, a pond and runoff of what came down nearby: all the year's mass is accounted for. */
    @Test
    void storageAndAirAreInTheBalance() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 10)
                .with(new FieldNotes.Burning(
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        some(0),
                        new FieldNotes.Nearby(0.1, 0.2, true)))
                .with(Sheds.tailings(RIVER, Optional.empty(), new Storage.Heap(List.of(0.0, 0.5, 0.3))));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertClosed(site);
        // 50 kg used, a third of it to the air; a tenth of that comes down, a fifth of which runs off
        double air = 50.0 / 3;
        assertThat(perYear(site.middle(), SitePath.AIR_OPEN)).isCloseTo(0.9 * air, within(ROUNDING));
        assertThat(perYear(site.middle(), SitePath.LAID_DOWN)).isCloseTo(0.08 * air, within(ROUNDING));
        assertThat(perYear(site.middle(), SitePath.RUNOFF)).isCloseTo(0.02 * air, within(ROUNDING));
        // of 33.3 kg of tailings' mercury 0.6 is laid up, a fifth of which stays
        assertThat(perYear(site.middle(), SitePath.KEPT)).isCloseTo(0.12 * 100 / 3, within(ROUNDING));
        for (Spread.Level level : Spread.Level.values()) {
            double sent = 0;
            for (PathRelease release : site.releases(level)) {
                sent += release.mean(STATES);
            }
            double river = site.at(level).river() + site.at(level).rate(SitePath.RUNOFF);
            assertThat(sent).isCloseTo(river, within(CLOSED * river));
        }
        assertThat(site.releases(Spread.Level.MIDDLE))
                .extracting(PathRelease::path)
                .containsExactly(PathRelease.Path.SLURRY, PathRelease.Path.RUNOFF);
    }

    /** A pond that lets 5 % go: of 5 kg of mercury used a third is driven off, 1/6 kg and 4.5 of 90 t go to the river. */
    @Test
    void pondKeepsMercuryAndSolids() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(Sheds.cycles(noted(1 / YEAR), 1))
                .with(Sheds.tailings(RIVER, Optional.empty(), new Storage.Pond(0.05)));
        YearBalance year = SiteBalance.of(notes, STATES).middle();
        assertThat(year.river() * YEAR).isCloseTo(0.05 * 10 / 3, within(ROUNDING));
        assertThat(perYear(year, SitePath.KEPT)).isCloseTo(0.95 * 10 / 3, within(ROUNDING));
        assertThat(year.solids() * YEAR).isCloseTo(4500, within(1e-8)); // ROUNDING
    }

    /** Forms and water of the worked shed as transport takes them. */
    @Test
    void releasesForTransport() {
        FieldNotes worked = Sheds.worked();
        FieldNotes notes = worked.with(new FieldNotes.Tailings(
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                worked.tailings().fate(),
                Optional.of(new FieldNotes.Forms(0.2, 0.3, 0.5)),
                new Storage.Straight(),
                0.1));
        SiteBalance site = SiteBalance.of(notes, STATES);
        PathRelease slurry = site.releases(Spread.Level.MIDDLE).get(0);
        // 18.45 g by form and 3.65 g of residue, bound in grains
        assertThat(slurry.droplets()).isCloseTo(0.2 * 18.45 / 22.1, within(CLOSED));
        assertThat(slurry.exchangeable().orElseThrow()).isCloseTo(0.3 * 18.45 / (0.8 * 18.45 + 3.65), within(CLOSED));
        assertThat(slurry.water().get(0) * YEAR).isCloseTo(0.1 * 3000 * 0.5, within(ROUNDING));
        PathRelease tank = site.releases(Spread.Level.MIDDLE).get(1);
        assertThat(tank.complex()).isCloseTo(1, within(CLOSED));
        assertThat(tank.water().get(0) * YEAR).isCloseTo(120 * 0.8, within(ROUNDING));
        SiteRelease release =
                slurry.toSiteRelease("worked", 3, List.of(1.0), true, Map.of("small", 0.25, "large", 0.75), "complex");
        assertThat(release.furtherShares().get("large")).isCloseTo(0.75 * slurry.droplets(), within(CLOSED));
        assertThat(release.extremes()).isEqualTo(1);
        SiteRelease unsplit = SiteBalance.of(worked, STATES)
                .releases(Spread.Level.MIDDLE)
                .get(0)
                .toSiteRelease("worked", 3, List.of(1.0), true, Map.of("small", 0.25, "large", 0.75), "complex");
        assertThat(unsplit.extremes()).isEqualTo(3);
    }

    /** Old heap: 5000 t at 20 mg/kg, 1 % a year: 1 kg/yr. Ground: 12 ha x 100 t/ha/yr x 0.1 mg/kg = 0.12 kg/yr. */
    @Test
    void groundWithoutPractice() {
        Storage wet = new Storage.HeapByLength(List.of(true, false, false));
        SiteBalance heap = SiteBalance.of(
                new Eroded.LegacyHeap("heap", 5e6, Noted.of(20e-6, 5e-6), 0.01 / YEAR, Optional.empty(), wet), STATES);
        assertThat(heap.middle().river() * YEAR).isCloseTo(1, within(ROUNDING));
        assertThat(heap.middle().solids() * YEAR).isCloseTo(50_000, within(1e-6)); // ROUNDING
        assertThat(heap.high().river() * YEAR).isCloseTo(1 + 1.96 * 0.25, within(ROUNDING));
        PathRelease release = heap.releases(Spread.Level.MIDDLE).get(0);
        assertThat(release.mercury().get(0)).isZero();
        assertThat(release.mean(STATES) * YEAR).isCloseTo(1, within(ROUNDING));
        SiteBalance ground = SiteBalance.of(
                new Eroded.DisturbedGround(
                        "ground", 12e4, 10 / YEAR, Noted.of(0.1e-6), Optional.empty(), new Storage.Straight()),
                STATES);
        assertThat(ground.middle().river() * YEAR).isCloseTo(0.12, within(ROUNDING));
        assertClosed(heap);
        assertClosed(ground);
    }

    /** No mercury, no release; gold is kept. */
    @Test
    void mercuryFreeSite() {
        SiteBalance site = SiteBalance.of(Sheds.goldOnly(Amalgamation.NONE, 2), STATES);
        assertThat(site.middle().used()).isZero();
        assertThat(site.releases(Spread.Level.HIGH)).isEmpty();
        assertThat(site.gold() * YEAR).isCloseTo(2, within(ROUNDING));
    }

    /** Samples of 100 +- 20 mg/kg: 90 t hold 9 kg, 5.472 to 12.528 kg with 1.96 standard deviations. */
    @Test
    void uncertainSamplesGiveARange() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 5)
                .with(Sheds.cycles(noted(5 / YEAR), 1))
                .with(Sheds.tailings(RIVER, Optional.of(Noted.of(100e-6, 20e-6)), new Storage.Straight()));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.low().river() * YEAR).isCloseTo(5.472, within(ROUNDING));
        assertThat(site.middle().river() * YEAR).isCloseTo(9, within(ROUNDING));
        assertThat(site.high().river() * YEAR).isCloseTo(12.528, within(ROUNDING));
        assertClosed(site);
    }

    /** Where nothing says how much mercury there is, that is told, and what to note. */
    @Test
    void tooLittleIsRefused() {
        FieldNotes notes = FieldNotes.of("bare", Amalgamation.CONCENTRATE).with(Sheds.tailings(RIVER));
        assertThatThrownBy(() -> SiteBalance.of(notes, STATES))
                .isInstanceOf(NotesException.class)
                .hasMessageContaining("bare: mercury: the notes do not determine it");
    }
}
