// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.fieldkit.Bottle.Role;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/** Bottles, counted by hand. */
class SamplePlanTest {
    private static final Analysis WHOLE = new Analysis(Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.WHOLE);
    private static final Analysis SEDIMENT = new Analysis(Medium.BED_SEDIMENT, Substance.TOTAL_MERCURY, Fraction.NONE);

    private static List<Stop> stops(int count, PlaceUse... uses) {
        List<Stop> stops = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            stops.add(new Stop("Place " + i, -20, -30, "", List.of(uses), ""));
        }
        return stops;
    }

    private static List<Guideline> guidelines(String... ids) {
        return java.util.Arrays.stream(ids)
                .map(GuidelineLibrary.builtIn()::require)
                .toList();
    }

    /** One of each for every ten begun. */
    @ParameterizedTest
    @CsvSource({"1, 10, 1", "10, 10, 1", "11, 10, 2", "12, 10, 2", "20, 10, 2", "21, 10, 3", "12, 4, 3", "3, 1, 3"})
    void duplicatesAndBlanksAreCountedIn(int places, int every, int extra) {
        SamplePlan plan = SamplePlan.of("A", stops(places, PlaceUse.VILLAGE), List.of(), every);
        assertThat(plan.count(WHOLE, Role.SAMPLE)).isEqualTo(places);
        assertThat(plan.count(WHOLE, Role.DUPLICATE)).isEqualTo(extra);
        assertThat(plan.count(WHOLE, Role.BLANK)).isEqualTo(extra);
        assertThat(plan.count(SEDIMENT, Role.DUPLICATE)).isEqualTo(extra);
        assertThat(plan.count(SEDIMENT, Role.BLANK))
                .as("a blank makes sense in water alone")
                .isZero();
        Set<String> codes = new HashSet<>();
        plan.bottles().forEach(b -> assertThat(codes.add(b.code())).as(b.code()).isTrue());
    }

    @Test
    void theGuidelinesSayWhatFor() {
        SamplePlan plan = SamplePlan.of("Lantern", stops(2, PlaceUse.LIVESTOCK), guidelines("CCME-FW-iHg"), 10);
        assertThat(plan.analyses()).hasSize(1);
        assertThat(plan.bottles().get(0).code()).matches("LANT-01-[WF]");
    }

    @Test
    void drinkingWaterIsTakenWherePeopleDrawIt() {
        List<Stop> stops = new ArrayList<>(stops(2, PlaceUse.LIVESTOCK));
        stops.addAll(stops(1, PlaceUse.DRINKING_INTAKE));
        SamplePlan plan = SamplePlan.of("A", stops, guidelines("WHO-DW-iHg"), 10);
        assertThat(plan.bottles())
                .isNotEmpty()
                .allSatisfy(b -> assertThat(b.stop()).isEqualTo(2));
        assertThat(plan.bottles().get(0).analysis().medium()).isEqualTo(Medium.SURFACE_WATER);
    }

    @Test
    void fishAreTakenWherePeopleFishElseEverywhere() {
        GuidelineLibrary library = GuidelineLibrary.builtIn();
        Guideline fish = library.all().stream()
                .filter(g -> g.observable().medium() == Medium.FISH)
                .findFirst()
                .orElseThrow();
        List<Stop> stops = new ArrayList<>(stops(2, PlaceUse.VILLAGE));
        assertThat(SamplePlan.of("A", stops, List.of(fish), 10).bottles())
                .filteredOn(b -> b.role() == Role.SAMPLE)
                .hasSize(2);
        stops.addAll(stops(1, PlaceUse.FISHING));
        assertThat(SamplePlan.of("A", stops, List.of(fish), 10).bottles())
                .allSatisfy(b -> assertThat(b.stop()).isEqualTo(2));
    }

    /** Every combination that may stand in a guideline table has letters of its own. */
    @Test
    void noTwoAnalysesHaveTheSameLetters() {
        Set<String> letters = new HashSet<>();
        for (Medium medium : List.of(Medium.SURFACE_WATER, Medium.SUSPENDED_SOLIDS, Medium.BED_SEDIMENT, Medium.FISH)) {
            for (Substance substance : Substance.values()) {
                for (Fraction fraction : Fraction.values()) {
                    boolean fits = medium.isWater() == (fraction != Fraction.NONE);
                    if (fits && substance != Substance.INORGANIC_MERCURY) {
                        Analysis analysis = new Analysis(medium, substance, fraction);
                        assertThat(letters.add(analysis.letters()))
                                .as(analysis.words() + " " + analysis.letters())
                                .isTrue();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"Río Ñandú, RION", "Ð, S", "'3 Lamps', 3LAM", "Лена, S"})
    void codesBeginWithTheTitlesPlainLetters(String title, String prefix) {
        assertThat(SamplePlan.of(title, stops(1, PlaceUse.VILLAGE), List.of(), 10)
                        .bottles()
                        .get(0)
                        .code())
                .startsWith(prefix + "-01-");
    }
}
