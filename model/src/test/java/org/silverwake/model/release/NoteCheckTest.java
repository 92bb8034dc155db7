// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.release.Sheds.STATES;
import static org.silverwake.model.release.Sheds.YEAR;
import static org.silverwake.model.release.Sheds.noted;
import static org.silverwake.model.release.Sheds.some;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class NoteCheckTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private static FieldNotes worked(FieldNotes.Burning burning) {
        return Sheds.worked().with(burning);
    }

    /** Without the sponge gold, which the plain shed notes as pure. */
    private static List<String> texts(FieldNotes notes, boolean refused) {
        return NoteCheck.of(notes).stream()
                .filter(f -> f.refused() == refused && !f.note().contains("sponge"))
                .map(NoteFinding::text)
                .toList();
    }

    @Test
    void soundNotesSayNothing() {
        assertThat(NoteCheck.of(Sheds.worked())).isEmpty();
    }

    /** 950 g squeezed back and 20 g x 45 % in the amalgam, of 800 g put in; sd 95, 0.9 and 80 g: 159 g over, 1.28 sd, is not told. */
    @Test
    void moreOutThanIn() {
        FieldNotes within = Sheds.worked().with(Sheds.charge(0.8, noted(0.95)));
        assertThat(texts(within, true)).isEmpty();
        FieldNotes weighed = Sheds.worked()
                .with(new FieldNotes.Mercury(
                        Optional.of(Noted.of(0.8, 0.01)),
                        Optional.of(Noted.of(0.95, 0.01)),
                        Optional.empty(),
                        Optional.empty(),
                        0));
        assertThat(texts(weighed, true))
                .containsExactly(
                        "mercury squeezed back and in the amalgam per cycle is 959 g; more mercury comes out than the"
                                + " 800 g put in");
        // within their uncertainty or not, what remains for the tailings is below 0, and that is refused as well
        assertThatThrownBy(() -> SiteBalance.of(within, STATES))
                .isInstanceOf(NotesException.class)
                .hasMessageContaining("mercury in the tailings is -477 kg/yr")
                .hasMessageContaining("more mercury comes out than goes in");
    }

    @Test
    void retortOf120Percent() {
        FieldNotes stated = worked(Sheds.burning(noted(0.02), noted(0.45), some(1), some(1.2), 0.02));
        assertThat(texts(stated, true))
                .containsExactly(
                        "share that the retort gives back is 120 %; a retort cannot give back more than was in the"
                                + " amalgam; usual 75 to 95 % (75 to 95 %, 95 % well run (from memory))");
        // the same from what came back: 10.8 g of 20 g of amalgam at 45 %
        FieldNotes weighed = worked(new FieldNotes.Burning(
                noted(0.02),
                noted(0.45),
                some(1),
                UNKNOWN,
                noted(0.0108),
                some(0.02),
                new FieldNotes.Nearby(0, 0, false)));
        assertThat(texts(weighed, true))
                .singleElement()
                .asString()
                .startsWith("share that the retort gives back is 120 %");
    }

    /** Kept: mercury that was hardly squeezed. 100 % cannot be. */
    @Test
    void amalgamOf98Percent() {
        FieldNotes wet = worked(Sheds.burning(noted(0.02), noted(0.98), some(0.5), some(0.9), 0.02));
        assertThat(texts(wet, true)).isEmpty();
        assertThat(texts(wet, false))
                .singleElement()
                .asString()
                .startsWith(
                        "mercury's share of the amalgam is 98 %; outside the usual range, and kept; usual 40 to 75 %");
        assertThat(SiteBalance.of(wet, STATES).findings())
                .anyMatch(f -> f.note().startsWith("mercury's share"));
        FieldNotes all = worked(Sheds.burning(noted(0.02), noted(1.0), some(0.5), some(0.9), 0.02));
        assertThat(texts(all, true)).singleElement().asString().contains("100 %; it must be between");
    }

    /** 2 of 15 kg is 133,333 mg/kg, 380 times the highest published; and more than the 1 kg put into 30 kg of ore. */
    @Test
    void tableTestThatGivesTwoOfFifteenKilograms() {
        TableTest test = new TableTest(Noted.of(15), Noted.of(2), Optional.empty());
        FieldNotes bare = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(Sheds.cycles(noted(1 / YEAR), 1))
                .with(Sheds.tableTest(test));
        assertThat(texts(bare, true)).isEmpty();
        assertThat(texts(bare, false))
                .containsExactly(
                        "mercury content by table test is 133333 mg/kg; outside the usual range, and kept; usual 0.3 to"
                                + " 350 mg/kg (Opiso et al. 2018 and Velasquez-Lopez 2010, 0.3 to 350 mg/kg)");
        assertThat(texts(bare.with(Sheds.charge(1, Optional.empty())), true))
                .singleElement()
                .asString()
                .contains("more mercury would come out than was put in, 33333 mg/kg");
        TableTest over = new TableTest(Noted.of(2), Noted.of(15), Optional.empty());
        assertThat(texts(bare.with(Sheds.tableTest(over)), true))
                .singleElement()
                .asString()
                .contains("15 kg");
    }

    /** Everything at once, in the exception as in the list. */
    @Test
    void allAtOnce() {
        FieldNotes notes = FieldNotes.of("shed", Amalgamation.WHOLE_ORE)
                .with(new FieldNotes.Work(some(30), UNKNOWN, some(400), Optional.empty(), 0))
                .with(Sheds.burning(noted(0.02), noted(1.2), some(1.5), some(-0.1), 2))
                .with(Sheds.tailings(new FieldNotes.Fate(0, 0, 0.5, 0.4, 0.5)));
        assertThatThrownBy(() -> SiteBalance.of(notes, STATES))
                .isInstanceOfSatisfying(
                        NotesException.class, e -> assertThat(e.findings()).hasSizeGreaterThanOrEqualTo(9))
                .hasMessageContaining("shed: number of sheds is 0")
                .hasMessageContaining("working days is 400 d/yr")
                .hasMessageContaining("cycles per day, working days: numbers per cycle are given")
                .hasMessageContaining("share of burns in a retort is 150 %")
                .hasMessageContaining("share that the retort gives back is -10 %")
                .hasMessageContaining("mercury's share of the sponge gold is 200 %")
                .hasMessageContaining("stored, leached and river together is 140 %")
                .hasMessageContaining("leach tank: tailings are leached");
    }

    @Test
    void fateMustBeNoted() {
        FieldNotes notes = FieldNotes.of("shed", Amalgamation.WHOLE_ORE).with(Sheds.gold(1));
        assertThat(texts(notes, true)).singleElement().asString().startsWith("where tailings go: is not noted");
    }

    /** A heap with shares for two flow states where there are three is told with the rest. */
    @Test
    void storageMustFitTheYear() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(Sheds.tailings(Sheds.RIVER, Optional.empty(), new Storage.Heap(List.of(0.0, 1.0))));
        assertThatThrownBy(() -> SiteBalance.of(notes, STATES))
                .isInstanceOf(NotesException.class)
                .hasMessageContaining("when tailings go: a heap states 2 washed-out shares");
    }

    /** A ratio of 80 in whole-ore amalgamation is beyond what was seen, and is kept. */
    @Test
    void unusualRatioIsKept() {
        FieldNotes notes = Sheds.goldOnly(Amalgamation.WHOLE_ORE, 1)
                .with(new FieldNotes.Mercury(Optional.empty(), Optional.empty(), Optional.empty(), noted(80), 0));
        SiteBalance site = SiteBalance.of(notes, STATES);
        assertThat(site.middle().used() * YEAR).isCloseTo(80, within(1e-9)); // ROUNDING
        assertThat(texts(notes, false)).singleElement().asString().contains("usual 3 to 50");
        assertThat(site.assumed()).doesNotContain(Published.WHOLE_ORE_RATIO);
    }

    /** A tank that gives more than its tailings bring: 2 m3 x 60 at 5 g/L is 600 kg/yr. */
    @Test
    void tankGivesMoreThanItGets() {
        FieldNotes notes = Sheds.worked().with(new FieldNotes.Tank(2, 60, noted(5), 0, 1, 1, false));
        assertThat(texts(notes, false))
                .singleElement()
                .asString()
                .contains("5000 mg/L")
                .contains("0.1 to 10 mg/L");
        assertThatThrownBy(() -> SiteBalance.of(notes, STATES))
                .hasMessageContaining("600 kg/yr; more comes out of the tank than the 27.6");
    }
}
