// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.screening.ReachValues.Measure;

/** Five reaches, two flow states (0.75 and 0.25 of the year), by hand. */
class ScreeningTest {
    /** A handful of products and sums, in percent. */
    private static final double ROUNDING = 1e-12;

    private static final int REACHES = 5;
    private static final GuidelineLibrary LIBRARY = GuidelineLibrary.builtIn();
    /** 0.026 ug/L, whole, mean over the year. */
    private static final Guideline YEAR = LIBRARY.require("CCME-FW-iHg");
    /** 0.77 ug/L, filtered, any state. */
    private static final Guideline FILTERED = LIBRARY.require("USEPA-AL-chronic");

    private static final Guideline TAP = LIBRARY.require("WHO-DW-iHg");
    private static final Guideline BED = LIBRARY.require("CCME-SED-ISQG");
    private static final Guideline METHYL = LIBRARY.require("CCME-FW-MeHg");
    private static final Guideline FISH = LIBRARY.require("USEPA-FISH-MeHg");
    private static final Guideline EFFLUENT = LIBRARY.require("IFC-MIN");
    private static final Guideline SOIL = LIBRARY.require("CR-SOIL-AGR");
    private static final double MICROGRAM_PER_LITER = 1e-6;

    private static final List<Receptor> RECEPTORS = List.of(
            new Receptor("Intake", OptionalInt.of(0), OptionalInt.of(100), Receptor.Kind.INTAKE),
            new Receptor("Village", OptionalInt.of(1), OptionalInt.of(40), Receptor.Kind.VILLAGE),
            new Receptor("Ford", OptionalInt.of(2), OptionalInt.of(7), Receptor.Kind.OTHER),
            new Receptor("Far", OptionalInt.empty(), OptionalInt.of(3), Receptor.Kind.VILLAGE));

    private static void set(ReachValues.Builder to, int state, int reach, double laid, double carried, double back) {
        for (Measure measure : List.of(Measure.WHOLE_WATER, Measure.FILTERED_WATER)) {
            to.water(measure, Estimate.LAID_DOWN, state, reach, laid * MICROGRAM_PER_LITER);
            to.water(measure, Estimate.CARRIED_THROUGH, state, reach, carried * MICROGRAM_PER_LITER);
            to.water(measure, Estimate.BACKGROUND, state, reach, back * MICROGRAM_PER_LITER);
        }
    }

    private static ReachValues.Builder builder() {
        ReachValues.Builder values = ReachValues.builder(REACHES, List.of(0.75, 0.25));
        set(values, 0, 0, 4, 12, 0.03);
        set(values, 1, 0, 8, 20, 0.03);
        set(values, 0, 1, 0.001, 0.002, 0.001);
        set(values, 1, 1, 0.001, 0.003, 0.001);
        values.noWater(0, 2);
        set(values, 1, 2, 0.02, 0.02, 0.001);
        values.noWater(0, 3).noWater(1, 3);
        values.notAssessed(4, NotAssessed.NEAR_BANK_OUTFALL);
        for (int r = 0; r < 2; r++) {
            values.bed(Estimate.LAID_DOWN, r, 2e-6)
                    .bed(Estimate.CARRIED_THROUGH, r, 0.1e-6)
                    .bed(Estimate.BACKGROUND, r, 0.05e-6);
        }
        return values;
    }

    private static Screening screening() {
        return Screening.of(
                builder().build(),
                List.of(YEAR, FILTERED, TAP, BED, METHYL, FISH, EFFLUENT, SOIL),
                RECEPTORS,
                new ScreeningRule(5, 10, 3));
    }

    /** Means: low 0.75 x 4 + 0.25 x 8 = 5, high 0.75 x 12 + 0.25 x 20 = 14 ug/L; background 0.03 exceeds 0.026. */
    @Test
    void boundsAreAveragedOverTheYear() {
        ScreeningRow row = screening().row(YEAR, 0);
        ScreeningRow.Values values = row.values().orElseThrow();
        assertThat(row.answer()).isEqualTo(Answer.ABOVE);
        assertThat(values.band().low()).isCloseTo(5e-6, withinPercentage(ROUNDING));
        assertThat(values.band().high()).isCloseTo(14e-6, withinPercentage(ROUNDING));
        assertThat(values.worst()).isCloseTo(20e-6, withinPercentage(ROUNDING));
        assertThat(values.worstState()).isEqualTo(1);
        assertThat(row.ratioLow().orElseThrow()).isCloseTo(5 / 0.026, withinPercentage(ROUNDING));
        assertThat(row.ratioHigh().orElseThrow()).isCloseTo(14 / 0.026, withinPercentage(ROUNDING));
        assertThat(row.verdict().aboveFromBackground()).isTrue();
        assertThat(row.verdict().hatched()).isFalse();
    }

    @Test
    void oneStateForItsMap() {
        ScreeningRow row = screening().inState(YEAR, 0, 0);
        assertThat(row.values().orElseThrow().band().high()).isCloseTo(12e-6, withinPercentage(ROUNDING));
        assertThat(screening().inState(YEAR, 2, 0).verdict().reason()).contains(NotAssessed.NO_WATER);
    }

    @Test
    void statesWithoutWaterAreLeftOutAndSaid() {
        ScreeningRow row = screening().row(YEAR, 2);
        assertThat(row.answer()).isEqualTo(Answer.MAY_BE_ABOVE);
        assertThat(row.statesLeftOut()).containsExactly(0);
        assertThat(row.values().orElseThrow().band().high()).isCloseTo(0.02e-6, withinPercentage(ROUNDING));
    }

    @Test
    void reasonsForNoAnswer() {
        Screening screening = screening();
        assertThat(screening.row(YEAR, 3).verdict().reason()).contains(NotAssessed.NO_WATER);
        assertThat(screening.row(YEAR, 4).verdict().reason()).contains(NotAssessed.NEAR_BANK_OUTFALL);
        assertThat(screening.row(METHYL, 0).verdict().reason()).contains(NotAssessed.NOT_MODELLED);
        assertThat(screening.row(FISH, 0).verdict().reason()).contains(NotAssessed.NOT_MODELLED);
        assertThat(screening.row(BED, 3).verdict().reason()).contains(NotAssessed.NO_SOLIDS_DEPOSIT);
        assertThat(screening.row(METHYL, 0).answer()).isEqualTo(Answer.NOT_ASSESSED);
        assertThat(screening.row(METHYL, 0).ratioHigh()).isEmpty();
    }

    /** Nothing upstream at all gives no answer rather than "below". */
    @Test
    void nothingUpstreamIsNotBelow() {
        ReachValues.Builder values = ReachValues.builder(1, List.of(1.0));
        set(values, 0, 0, 0, 0, 0);
        Screening screening = Screening.of(values.build(), List.of(YEAR, BED), List.of(), new ScreeningRule(5, 10, 3));
        assertThat(screening.row(YEAR, 0).verdict().reason()).contains(NotAssessed.NO_SOURCE_UPSTREAM);
        assertThat(screening.row(BED, 0).verdict().reason()).contains(NotAssessed.NOT_MODELLED);
    }

    /** Bed: the laid-down content is the higher one; 2 / 0.1 mg/kg is hatched. */
    @Test
    void bedTakesTheHigherContent() {
        ScreeningRow row = screening().row(BED, 0);
        assertThat(row.answer()).isEqualTo(Answer.MAY_BE_ABOVE);
        assertThat(row.ratioHigh().orElseThrow()).isCloseTo(2 / 0.17, withinPercentage(ROUNDING));
        assertThat(row.verdict().hatched()).isTrue();
    }

    @Test
    void tapValuesAtDrinkingPlacesAlone() {
        Screening screening = screening();
        assertThat(screening.rows(TAP)).extracting(ScreeningRow::reach).containsExactly(0, 1);
        assertThat(screening.rows(YEAR)).hasSize(REACHES);
        assertThatThrownBy(() -> screening.row(TAP, 2)).hasMessageContaining("intakes and villages alone");
        assertThat(TAP.observable().averaging().words()).startsWith("raw water against a drinking-water value");
        assertThat(screening.verdict(TAP, RECEPTORS.get(2))).isEmpty();
        assertThat(screening.verdict(TAP, RECEPTORS.get(3)).orElseThrow().reason())
                .contains(NotAssessed.OFF_NETWORK);
    }

    @Test
    void effluentAndSoilAreListedNotCompared() {
        Screening screening = screening();
        assertThat(screening.listed()).containsExactly(EFFLUENT, SOIL);
        assertThat(screening.compared()).doesNotContain(EFFLUENT, SOIL);
        assertThatThrownBy(() -> screening.row(EFFLUENT, 0)).hasMessageContaining("never with a reach");
    }

    @Test
    void missingValuesAreRefused() {
        ReachValues.Builder values = ReachValues.builder(1, List.of(1.0));
        values.water(Measure.WHOLE_WATER, Estimate.LAID_DOWN, 0, 0, 1);
        assertThatThrownBy(values::build).hasMessageContaining("1 of 3 estimates given");
        ReachValues.Builder bed = ReachValues.builder(1, List.of(1.0)).bed(Estimate.LAID_DOWN, 0, 1);
        assertThatThrownBy(bed::build).hasMessageContaining("bed content of reach 0");
        assertThatThrownBy(() -> values.water(Measure.WHOLE_WATER, Estimate.LAID_DOWN, 0, 0, -1))
                .hasMessageContaining("not negative");
        assertThatThrownBy(() -> ReachValues.builder(1, List.of(0.0))).hasMessageContaining("above 0");
    }

    /** Whole and filtered water do not stand in for each other. */
    @Test
    void fractionsAreKeptApart() {
        ReachValues.Builder values = ReachValues.builder(1, List.of(1.0));
        for (Estimate estimate : Estimate.values()) {
            values.water(Measure.WHOLE_WATER, estimate, 0, 0, 1e-3);
        }
        Screening screening =
                Screening.of(values.build(), List.of(YEAR, FILTERED), List.of(), new ScreeningRule(5, 10, 3));
        assertThat(screening.row(YEAR, 0).answer()).isEqualTo(Answer.ABOVE);
        assertThat(screening.row(FILTERED, 0).verdict().reason()).contains(NotAssessed.NOT_MODELLED);
    }
}
