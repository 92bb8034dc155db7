// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;
import static org.silverwake.model.release.Sheds.noted;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Practices at the shed worked by hand in SiteBalanceTest: grams per cycle, 3 kg/yr for each. */
class PracticeTest {
    /** ROUNDING: kg/yr of order 1 to 1000. */
    private static final double ROUNDING = 1e-9;

    private static final double DRIVEN_OFF = 9 - 0.22 / 0.98;
    private static final Practice.Cost FREE = new Practice.Cost(Spread.exact(0), Spread.exact(0), 1);

    private static Practice practice(double siteShare, Effect... effects) {
        return new Practice("change", List.of(effects), 2027, siteShare, FREE, 0, Optional.empty());
    }

    private static YearBalance after(Practice practice) {
        SiteBalance site = SiteBalance.of(practice.apply(Sheds.worked()), STATES);
        assertThat(site.range(YearBalance::closure).high()).isLessThan(1e-12); // ROUNDING
        return site.middle();
    }

    private static double grams(YearBalance year, SitePath path) {
        return year.rate(path) * YEAR / 3;
    }

    /** 40 % of the open burns move into retorts that give back 90 %: open 0.6 x 0.5, recovered 0.45 + 0.18, escaping 0.05 + 0.02. */
    @Test
    void retorts() {
        YearBalance year = after(practice(1, new Effect.Retorts(0.4, 0.9)));
        assertThat(grams(year, SitePath.AIR_OPEN)).isCloseTo(0.30 * DRIVEN_OFF, within(ROUNDING));
        assertThat(grams(year, SitePath.RETORT_RECOVERED)).isCloseTo(0.63 * DRIVEN_OFF, within(ROUNDING));
        assertThat(grams(year, SitePath.AIR_RETORT)).isCloseTo(0.07 * DRIVEN_OFF, within(ROUNDING));
        assertThat(grams(year, SitePath.SLURRY_UNSPLIT)).isCloseTo(18.45, within(ROUNDING));
    }

    /** Half the sheds: half way. */
    @Test
    void shareOfSheds() {
        YearBalance year = after(practice(0.5, new Effect.Retorts(0.4, 0.9)));
        assertThat(grams(year, SitePath.AIR_OPEN)).isCloseTo(0.40 * DRIVEN_OFF, within(ROUNDING));
        assertThat(grams(year, SitePath.RETORT_RECOVERED)).isCloseTo(0.54 * DRIVEN_OFF, within(ROUNDING));
    }

    /** Four fifths contained: 18.45 and 3.65 g fall to a fifth, kept 14.72 + 17.68; solids fall alike. */
    @Test
    void contained() {
        YearBalance year = after(practice(1, new Effect.Contained(0.8)));
        assertThat(grams(year, SitePath.SLURRY_UNSPLIT)).isCloseTo(3.69, within(ROUNDING));
        assertThat(grams(year, SitePath.TANK_RESIDUE)).isCloseTo(0.73, within(ROUNDING));
        assertThat(grams(year, SitePath.KEPT)).isCloseTo(14.72 + 0.8 * 22.1, within(ROUNDING));
        assertThat(grams(year, SitePath.TANK_COMPLEX)).isCloseTo(0.08, within(ROUNDING));
        assertThat(year.solids() * YEAR).isCloseTo(90_000 * 0.6 * 0.2, within(1e-6)); // ROUNDING
    }

    /** Half the tailings over a table that takes 60 %: 30 % of 36.9 g more is recovered, and all else falls by 30 %. */
    @Test
    void reprocessed() {
        YearBalance year = after(practice(1, new Effect.Reprocessed(0.5, 0.6)));
        assertThat(grams(year, SitePath.TAILINGS_RECOVERED)).isCloseTo(4.1 + 0.3 * 36.9, within(ROUNDING));
        assertThat(grams(year, SitePath.SLURRY_UNSPLIT)).isCloseTo(0.7 * 18.45, within(ROUNDING));
        assertThat(grams(year, SitePath.KEPT)).isCloseTo(0.7 * 14.72, within(ROUNDING));
    }

    @Test
    void detoxified() {
        YearBalance year = after(practice(1, new Effect.Detoxified(0.9)));
        assertThat(grams(year, SitePath.TANK_COMPLEX)).isCloseTo(0.008, within(ROUNDING));
        assertThat(grams(year, SitePath.KEPT)).isCloseTo(14.792, within(ROUNDING));
    }

    /** A third of the ore by gravity alone: all paths fall by a third. */
    @Test
    void mercuryFree() {
        YearBalance year = after(practice(1, new Effect.MercuryFree(1.0 / 3)));
        YearBalance before = SiteBalance.of(Sheds.worked(), STATES).middle();
        before.rates().forEach((path, rate) -> assertThat(year.rate(path)).isCloseTo(rate * 2 / 3, within(1e-18)));
    }

    /**
     * Concentrate for the same 11 g of gold: 1.3 x 11 = 14.3 g used, three quarters driven off, 10.725 g, shared as before (half
     * open), 0.224490 g in the sponge, the rest 3.350510 g in place of 41 g of tailings' mercury.
     */
    @Test
    void concentrateInPlaceOfWholeOre() {
        YearBalance year = after(practice(1, new Effect.ConcentrateOnly(1)));
        double tailings = 14.3 - 10.725 - 0.22 / 0.98;
        assertThat(year.used() * YEAR / 3).isCloseTo(14.3, within(ROUNDING));
        assertThat(grams(year, SitePath.AIR_OPEN)).isCloseTo(10.725 / 2, within(ROUNDING));
        assertThat(grams(year, SitePath.RETORT_RECOVERED)).isCloseTo(10.725 * 0.45, within(ROUNDING));
        assertThat(grams(year, SitePath.SLURRY_UNSPLIT)).isCloseTo(18.45 * tailings / 41, within(ROUNDING));
        SiteBalance site =
                SiteBalance.of(practice(1, new Effect.ConcentrateOnly(1)).apply(Sheds.worked()), STATES);
        assertThat(site.assumed()).contains(Published.CONCENTRATE_RATIO, Published.CONCENTRATE_TO_AIR);
    }

    /**
     * Use stops; drums hold 5 kg and lose it with a decay time of 2 years: 5 (1 - e^-0.5) = 1.967347 kg in the first year, e^-0.5
     * of that in the second; half of the tailings go to the river. All years together give the 5 kg.
     */
    @Test
    void drumsGoOnBleeding() {
        Practice stop = new Practice(
                "gravity",
                List.of(new Effect.MercuryFree(1)),
                2027,
                1,
                FREE,
                0,
                Optional.of(new DrumBleed(5, 2 * YEAR)));
        YearBalance first = after(stop);
        assertThat(first.rate(SitePath.FROM_DRUMS) * YEAR).isCloseTo(1.967346701436833, within(ROUNDING));
        assertThat(first.river() * YEAR).isCloseTo(1.967346701436833 / 2, within(ROUNDING));
        assertThat(first.used()).isZero();
        FieldNotes notes = stop.apply(Sheds.worked());
        SiteBalance second = SiteBalance.of(notes.in(2028), STATES);
        assertThat(second.middle().river() / first.river()).isCloseTo(StrictMath.exp(-0.5), within(1e-12)); // ROUNDING
        assertThat(SiteBalance.of(notes.in(2026), STATES).middle().river() * YEAR)
                .isCloseTo(3 * 22.18, within(ROUNDING));
        double all = 0;
        for (int year = 0; year < 100; year++) {
            all += new DrumBleed(5, 2 * YEAR).rate(year) * YEAR;
        }
        assertThat(all).isCloseTo(5, within(ROUNDING));
        assertThat(second.worst()).isEmpty();
    }

    /**
     * Retorts at 25 a kilogram of mercury, four sheds of which half take them up: 90 % of 4.387755 g more recovered, 11.846939 kg/yr
     * a shed that does, 23.693878 kg/yr for two, worth 592.35. At 60 to 120 once for three years and 0 to 40 a year they cost
     * 40 to 160 for two sheds: they pay.
     */
    @Test
    void retortsPayForThemselves() {
        FieldNotes notes = Sheds.worked().with(Sheds.cycles(Optional.empty(), 4));
        Practice retorts = new Practice(
                "retorts",
                List.of(new Effect.Retorts(1, 0.9)),
                2027,
                0.5,
                new Practice.Cost(new Spread(60, 90, 120), new Spread(0, 20, 40), 3),
                0,
                Optional.empty());
        Gain gain = Gain.of(retorts, notes, STATES, new Gain.Prices(25, 60_000));
        double kilograms = 2 * 3 * 0.9 * 0.5 * DRIVEN_OFF;
        assertThat(gain.mercury().middle() * YEAR).isCloseTo(kilograms, within(ROUNDING));
        assertThat(gain.givenBack().middle()).isCloseTo(25 * kilograms, within(1e-6)); // ROUNDING
        assertThat(gain.cost().low()).isCloseTo(40, within(ROUNDING));
        assertThat(gain.cost().middle()).isCloseTo(100, within(ROUNDING));
        assertThat(gain.cost().high()).isCloseTo(160, within(ROUNDING));
        assertThat(gain.verdict()).isEqualTo(Gain.Verdict.PAYS);
        assertThat(Gain.of(retorts, notes, STATES, new Gain.Prices(4, 60_000)).verdict())
                .isEqualTo(Gain.Verdict.MAY_PAY);
        assertThat(Gain.of(retorts, notes, STATES, new Gain.Prices(1, 60_000)).verdict())
                .isEqualTo(Gain.Verdict.DOES_NOT_PAY);
    }

    /**
     * Retorts for 1 kg of gold a year by concentrate, nothing else known: 1 to 2 kg of mercury used, 70 to 80 % of it driven off,
     * nine tenths of that given back: 0.63 to 1.44 kg, 0.8775 kg in the middle. Each combination is taken alike before and after.
     */
    @Test
    void savedMercuryIsARange() {
        Practice retorts = practice(1, new Effect.Retorts(1, 0.9));
        FieldNotes notes = Sheds.goldOnly(Amalgamation.CONCENTRATE, 1);
        Spread saved =
                Gain.of(retorts, notes, STATES, new Gain.Prices(25, 60_000)).mercury();
        assertThat(saved.low() * YEAR).isCloseTo(0.63, within(ROUNDING));
        assertThat(saved.middle() * YEAR).isCloseTo(0.8775, within(ROUNDING));
        assertThat(saved.high() * YEAR).isCloseTo(1.44, within(ROUNDING));
    }

    /** 10 % more gold of 33 kg/yr at 60,000: 198,000 a year. */
    @Test
    void goldGainedCounts() {
        Practice gravity =
                new Practice("gravity", List.of(new Effect.MercuryFree(1)), 2027, 1, FREE, 0.1, Optional.empty());
        Gain gain = Gain.of(gravity, Sheds.worked(), STATES, new Gain.Prices(0, 60_000));
        assertThat(gain.givenBack().middle()).isCloseTo(198_000, within(1e-5)); // ROUNDING
    }

    /** What Annex C names, before and after. */
    @Test
    void worstPractices() {
        assertThat(SiteBalance.of(Sheds.worked(), STATES).worst())
                .containsExactlyInAnyOrder(
                        WorstPractice.WHOLE_ORE, WorstPractice.OPEN_BURNING, WorstPractice.CYANIDE_AFTER_MERCURY);
        FieldNotes better = practice(1, new Effect.Retorts(1, 0.9), new Effect.ConcentrateOnly(1))
                .apply(Sheds.worked())
                .with(new FieldNotes.Tank(2, 60, noted(5e-3), 0.5, 0.8, 0.4, true));
        assertThat(SiteBalance.of(better, STATES).worst()).isEmpty();
        FieldNotes atHome = Sheds.worked()
                .with(new FieldNotes.Burning(
                        noted(0.02),
                        noted(0.45),
                        OptionalDouble.of(1),
                        OptionalDouble.of(0.9),
                        Optional.empty(),
                        OptionalDouble.of(0.02),
                        new FieldNotes.Nearby(0, 0, true)));
        assertThat(SiteBalance.of(atHome, STATES).worst())
                .contains(WorstPractice.RESIDENTIAL_BURNING)
                .doesNotContain(WorstPractice.OPEN_BURNING);
        FieldNotes half = practice(0.5, new Effect.ConcentrateOnly(1)).apply(Sheds.worked());
        assertThat(SiteBalance.of(half, STATES).worst()).contains(WorstPractice.WHOLE_ORE);
    }

    @Test
    void sharesAreChecked() {
        assertThatThrownBy(() -> new Effect.Retorts(1.2, 0.9)).hasMessageContaining("retorts.share is 1.2");
        assertThatThrownBy(() -> practice(-0.1)).hasMessageContaining("siteShare is -0.1");
        assertThatThrownBy(() -> new Practice.Cost(Spread.exact(1), Spread.exact(1), 0))
                .hasMessageContaining("life is 0.0 yr");
    }
}
