// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.report.RecoveryClasses;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.model.screening.Guideline;

/** The sheet of how many years it takes until the high estimate is below a guide value for good. */
final class RecoverySheet {
    private final Outcome outcome;
    private final YearsRun run;
    private final Guideline guideline;
    private final SheetWords words;
    private final SheetGround ground;

    RecoverySheet(Outcome outcome, YearsRun run, Guideline guideline) {
        this.outcome = outcome;
        this.run = run;
        this.guideline = guideline;
        this.words = new SheetWords(outcome);
        this.ground = new SheetGround(outcome);
    }

    WallSheet sheet() {
        RecoveryClasses classes = new RecoveryClasses(outcome, run);
        List<ReachShade> shades = classes.shades(guideline);
        SheetLegend legend =
                SheetLegend.ofRecovery(words.texts(), classes.now(), run.lastYear(), SheetLegend.used(shades));
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            ReachShade shade = shades.get(outcome.basin().network().reachOfInput(i));
            marks.add(new ReachMark(legend.number(shade), false, false, false));
        }
        String now = Integer.toString(classes.now());
        return new WallSheet(
                words.paper(),
                words.head(
                        words.texts()
                                .text(
                                        "sheet.title.recovery",
                                        outcome.scenario().project().title()),
                        words.texts().text("sheet.recovery", now, words.medium(guideline)),
                        ground.withSites()),
                List.of(new WallSheet.Figure(
                        "", ground.seen(marks, legend.number(ReachShade.NOT_ASSESSED)), ground.points())),
                ground.ground(),
                Optional.empty(),
                List.of(),
                new WallSheet.Legend(
                        "",
                        legend.answers(),
                        words.marks(),
                        words.texts().text("sheet.area"),
                        words.notes(ground.withSites())),
                new WallSheet.Blocks(words.forPeople(), List.of(words.source(guideline, List.of()))),
                words.cautions(),
                words.foot(),
                words.scale());
    }
}
