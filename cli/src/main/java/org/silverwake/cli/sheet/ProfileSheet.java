// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.geo.map.Ground;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.model.screening.Guideline;

/** The sheet of mercury down a river: a profile for each state of flow, below each other, all by the same way. */
final class ProfileSheet {
    private final Outcome outcome;
    private final Guideline guideline;
    private final SheetWords words;
    private final boolean withSites;

    ProfileSheet(Outcome outcome, Guideline guideline) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.words = new SheetWords(outcome);
        this.withSites = new SheetGround(outcome).withSites();
    }

    /** Empty where the river has no water with mercury to show by that way. */
    Optional<WallSheet> of(Outputs.Profile wanted) {
        SheetStrip strip = new SheetStrip(outcome, guideline, words, wanted);
        List<WallSheet.Strip> strips = new ArrayList<>();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            strip.of(s, words.state(s), withSites).ifPresent(strips::add);
        }
        return strips.isEmpty() ? Optional.empty() : Optional.of(sheet(strip.heading(), strips));
    }

    private WallSheet sheet(String heading, List<WallSheet.Strip> strips) {
        String title = words.texts()
                .text("sheet.title.profile", outcome.scenario().project().title());
        return new WallSheet(
                words.paper(),
                words.head(title, heading, withSites),
                List.of(),
                new WallSheet.Ground(Ground.bare(), List.of(), List.of()),
                Optional.empty(),
                strips,
                new WallSheet.Legend(
                        words.texts().text("sheet.compared", words.medium(guideline)),
                        List.of(new WallSheet.Answer(
                                words.texts().text("strip.key"),
                                List.of(
                                        WallSheet.Strip.band(words.texts().text("strip.key.band")),
                                        WallSheet.Strip.guideLine(words.texts().text("strip.key.guide"))))),
                        words.marks(),
                        "",
                        List.of(
                                words.texts().text("strip.key.levels"),
                                words.texts().text("strip.key.distance"))),
                new WallSheet.Blocks(words.forPeople(), List.of(words.source(guideline, List.of()))),
                words.cautions(),
                words.foot(),
                words.scale());
    }
}
