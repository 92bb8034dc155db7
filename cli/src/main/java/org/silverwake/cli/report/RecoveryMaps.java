// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.GuidelineLine;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Guideline;

/** Maps of how long recovery takes: years from the work's date until the high estimate is below a value for good. */
final class RecoveryMaps {
    private final Outcome outcome;
    private final YearsRun run;
    private final boolean withSites;
    private final RecoveryClasses classes;

    private RecoveryMaps(Outcome outcome, YearsRun run, boolean withSites) {
        this.outcome = outcome;
        this.run = run;
        this.withSites = withSites;
        this.classes = new RecoveryClasses(outcome, run);
    }

    static void draw(Outcome outcome, MapFiles files, boolean all, boolean withSites) {
        if (outcome.years().isEmpty()) {
            return;
        }
        RecoveryMaps maps = new RecoveryMaps(outcome, outcome.years().get(), withSites);
        for (Guideline guideline : maps.classes.drawn(all)) {
            files.draw(outcome.basin().map(), maps.sheet(guideline), "recovery-" + guideline.id());
        }
    }

    private MapSheet sheet(Guideline guideline) {
        List<ReachShade> shades = classes.shades(guideline);
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            int reach = outcome.basin().network().reachOfInput(i);
            boolean fromBackground = Recoveries.of(outcome, run, guideline, reach)
                    .filter(Recoveries.Range::fromBackground)
                    .isPresent();
            marks.add(new ReachMark(RecoveryClasses.ORDER.indexOf(shades.get(reach)), false, false, fromBackground));
        }
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        return new MapSheet(
                MapBases.basis(outcome, withSites),
                "How long until below the guideline: " + guideline.observable().words(),
                "Years from " + classes.now() + " until the high estimate is below",
                classes.classes(shades.contains(ReachShade.DOES_NOT_APPLY)),
                new MapSheet.Summary("People and river by this estimate", classes.summary(shades)),
                marks,
                List.of(new GuidelineLine(
                        guideline.id(),
                        guideline.printed() + ", " + guideline.observable().words() + ", protects "
                                + guideline.protects(),
                        guideline.source().words(),
                        guideline.checked() == Guideline.Checked.SEEN)),
                Recoveries.supposed(outcome) + " The estimate may be wrong by a factor of " + Numbers.shown(factor, 3)
                        + " either way, and these times with it.");
    }
}
