// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.silverwake.model.screening.GuidelineChoice.ReachGroup;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.ScreeningSummary.Line;

/** Five reaches of 1, 2, 4, 8 and 16 km, two flow states (0.75 and 0.25 of the year), counted by hand. */
class ScreeningSummaryTest {
    private static final double[] LENGTHS = {1000, 2000, 4000, 8000, 16000};
    private static final GuidelineLibrary LIBRARY = GuidelineLibrary.builtIn();
    /** 0.026 ug/L, whole, mean over the year. */
    private static final Guideline YEAR = LIBRARY.require("CCME-FW-iHg");
    /** 0.77 ug/L, filtered, any state. */
    private static final Guideline FILTERED = LIBRARY.require("USEPA-AL-chronic");
    /** 6 ug/L, raw water. */
    private static final Guideline TAP = LIBRARY.require("WHO-DW-iHg");

    private static final Guideline METHYL = LIBRARY.require("CCME-FW-MeHg");
    private static final OptionalInt AS_ASKED = OptionalInt.empty();
    private static final double MICROGRAM_PER_LITER = 1e-6;

    private static final List<Receptor> RECEPTORS = List.of(
            new Receptor("Intake", OptionalInt.of(0), OptionalInt.of(100), Receptor.Kind.INTAKE),
            new Receptor("Village", OptionalInt.of(1), OptionalInt.of(40), Receptor.Kind.VILLAGE),
            new Receptor("Hamlet", OptionalInt.of(1), OptionalInt.empty(), Receptor.Kind.VILLAGE),
            new Receptor("Ford", OptionalInt.of(2), OptionalInt.of(7), Receptor.Kind.OTHER),
            new Receptor("Far", OptionalInt.empty(), OptionalInt.of(3), Receptor.Kind.VILLAGE));

    private static void set(ReachValues.Builder to, int state, int reach, double micrograms) {
        for (Estimate estimate : Estimate.values()) {
            for (Measure measure : List.of(Measure.WHOLE_WATER, Measure.FILTERED_WATER)) {
                to.water(measure, estimate, state, reach, micrograms * MICROGRAM_PER_LITER);
            }
        }
    }

    /** Reach 0: 40 and 0.001 ug/L; 1: 0.001; 2: no water, then 0.02; 3: none; 4: beside an outfall. */
    private static Screening screening(GuidelineChoice choice) {
        ReachValues.Builder values = ReachValues.builder(LENGTHS.length, List.of(0.75, 0.25));
        set(values, 0, 0, 40);
        set(values, 1, 0, 0.001);
        set(values, 0, 1, 0.001);
        set(values, 1, 1, 0.001);
        values.noWater(0, 2);
        set(values, 1, 2, 0.02);
        values.noWater(0, 3).noWater(1, 3);
        values.notAssessed(4, NotAssessed.NEAR_BANK_OUTFALL);
        return Screening.of(
                values.build(), List.of(YEAR, FILTERED, TAP, METHYL), RECEPTORS, new ScreeningRule(5, 10, 3), choice);
    }

    private static ScreeningSummary summary(GuidelineChoice choice) {
        return ScreeningSummary.of(screening(choice), LENGTHS);
    }

    private static Line line(Answer answer, int people, int withoutNumber, int intakes, double length) {
        return new Line(Optional.ofNullable(answer), people, withoutNumber, intakes, length);
    }

    /** Year's mean of reach 0 is 30.00025 ug/L, over 5 x 0.026; reach 2 has 0.02, within a factor 5; 0.001 is below 0.026 / 5. */
    @Test
    void oneGuidelineAsItAsks() {
        assertThat(summary(GuidelineChoice.everywhere()).lines(List.of(YEAR), AS_ASKED))
                .containsExactly(
                        line(Answer.ABOVE, 100, 0, 1, 1000),
                        line(Answer.MAY_BE_ABOVE, 7, 0, 0, 4000),
                        line(Answer.BELOW_BY_THIS_ESTIMATE, 40, 1, 0, 2000),
                        line(Answer.NOT_ASSESSED, 3, 0, 0, 24000),
                        line(null, 0, 0, 0, 0));
    }

    /** 30 cities of 100 million each are more than an int holds. */
    @Test
    void manyPeopleAddUp() {
        ReachValues.Builder values = ReachValues.builder(1, List.of(0.75, 0.25));
        set(values, 0, 0, 40);
        set(values, 1, 0, 40);
        List<Receptor> cities = IntStream.range(0, 30)
                .mapToObj(i ->
                        new Receptor("City " + i, OptionalInt.of(0), OptionalInt.of(100_000_000), Receptor.Kind.OTHER))
                .toList();
        Screening screening = Screening.of(
                values.build(), List.of(YEAR), cities, new ScreeningRule(5, 10, 3), GuidelineChoice.everywhere());
        assertThat(ScreeningSummary.of(screening, new double[] {1000})
                        .lines(List.of(YEAR), AS_ASKED)
                        .get(0)
                        .people())
                .isEqualTo(3_000_000_000L);
    }

    /** In state 1 reach 0 carries 0.001 ug/L and reach 2 has its water. */
    @Test
    void oneStateAlone() {
        assertThat(summary(GuidelineChoice.everywhere()).lines(List.of(YEAR), OptionalInt.of(1)))
                .containsExactly(
                        line(Answer.ABOVE, 0, 0, 0, 0),
                        line(Answer.MAY_BE_ABOVE, 7, 0, 0, 4000),
                        line(Answer.BELOW_BY_THIS_ESTIMATE, 140, 1, 1, 3000),
                        line(Answer.NOT_ASSESSED, 3, 0, 0, 24000),
                        line(null, 0, 0, 0, 0));
    }

    /** At the ford 0.02 ug/L is below 0.77 / 5, but within a factor 5 of 0.026; methylmercury, never assessed, hides nothing. */
    @Test
    void theWorstOfSeveralCounts() {
        ScreeningSummary summary = summary(GuidelineChoice.everywhere());
        assertThat(summary.lines(List.of(FILTERED), AS_ASKED).get(2).people()).isEqualTo(47);
        assertThat(summary.lines(List.of(FILTERED, YEAR, METHYL), AS_ASKED))
                .isEqualTo(summary.lines(List.of(YEAR), AS_ASKED));
        assertThat(summary.riverWater()).containsExactly(YEAR, FILTERED);
        assertThat(summary.drinkingWater()).containsExactly(TAP);
    }

    /** The ford is no drinking place; a place without a number is told, not counted as none. */
    @Test
    void everybodyIsCountedOnce() {
        ScreeningSummary summary = summary(GuidelineChoice.everywhere());
        List<Line> lines = summary.lines(List.of(TAP), AS_ASKED);
        assertThat(lines)
                .containsExactly(
                        line(Answer.ABOVE, 100, 0, 1, 0),
                        line(Answer.MAY_BE_ABOVE, 0, 0, 0, 0),
                        line(Answer.BELOW_BY_THIS_ESTIMATE, 40, 1, 0, 0),
                        line(Answer.NOT_ASSESSED, 3, 0, 0, 0),
                        line(null, 7, 0, 0, 0));
        assertThat(lines.stream().mapToLong(Line::people).sum()).isEqualTo(100 + 40 + 7 + 3);
        assertThat(summary.placesWithoutNumber()).containsExactly("Hamlet");
    }

    @Test
    void aClassChoosesWhatIsComparedOnItsReaches() {
        GuidelineChoice choice = GuidelineChoice.of(
                List.of(YEAR.id(), TAP.id()),
                List.of(
                        new ReachGroup("canal", List.of(FILTERED.id()), List.of(0, 1)),
                        new ReachGroup("park", List.of(YEAR.id(), METHYL.id()), List.of(1))));
        Screening screening = screening(choice);
        assertThat(screening.classes(1)).containsExactly("canal", "park");
        assertThat(screening.classes(4)).isEmpty();
        assertThat(screening.applies(YEAR, 0)).isFalse();
        assertThat(screening.isLeftOut(YEAR, 0)).isTrue();
        assertThat(screening.applies(FILTERED, 0)).isTrue();
        // in two classes: the values of both
        assertThat(screening.applies(YEAR, 1) && screening.applies(FILTERED, 1) && screening.applies(METHYL, 1))
                .isTrue();
        // in none: the general list
        assertThat(screening.applies(YEAR, 2)).isTrue();
        assertThat(screening.applies(FILTERED, 2)).isFalse();
        assertThat(screening.rows(YEAR)).extracting(ScreeningRow::reach).containsExactly(1, 2, 3, 4);
        assertThatThrownBy(() -> screening.row(YEAR, 0)).hasMessageContaining("not chosen by the classes of reach 0");
        assertThat(screening.verdict(YEAR, RECEPTORS.get(0))).isEmpty();
    }

    /** A class that does not name the drinking-water value does not take it from the intake on its reach. */
    @Test
    void noClassTakesADrinkingWaterValueAway() {
        GuidelineChoice canal = GuidelineChoice.of(
                List.of(YEAR.id(), TAP.id()), List.of(new ReachGroup("canal", List.of(FILTERED.id()), List.of(0))));
        assertThat(screening(canal).applies(TAP, 0)).isTrue();
        assertThat(screening(canal).isLeftOut(TAP, 0)).isFalse();
        GuidelineChoice added = GuidelineChoice.of(
                List.of(YEAR.id()), List.of(new ReachGroup("source", List.of(TAP.id()), List.of(0, 2))));
        assertThat(screening(added).applies(TAP, 0)).isTrue();
        assertThat(screening(added).applies(TAP, 1)).isFalse();
        assertThat(screening(added).applies(TAP, 2)).as("nobody drinks there").isFalse();
    }

    @Test
    void riverToWhichNoneApplies() {
        GuidelineChoice choice = GuidelineChoice.of(
                List.of(YEAR.id()), List.of(new ReachGroup("canal", List.of(FILTERED.id()), List.of(0, 3))));
        List<Line> lines = summary(choice).lines(List.of(YEAR), AS_ASKED);
        assertThat(lines.get(4)).isEqualTo(line(null, 100, 0, 1, 9000));
        assertThat(lines.stream().mapToDouble(Line::riverLength).sum()).isEqualTo(31000);
        assertThat(summary(choice).lines(List.of(YEAR, FILTERED), AS_ASKED).get(0))
                .isEqualTo(line(Answer.ABOVE, 100, 0, 1, 1000));
    }
}
