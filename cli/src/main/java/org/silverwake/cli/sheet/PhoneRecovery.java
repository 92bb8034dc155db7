// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.report.RecoveryClasses;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.write.PhoneMap;
import org.silverwake.geo.write.PhoneMap.Fact;
import org.silverwake.model.screening.Guideline;

/** How long until below a guide value, as a phone shows it. */
final class PhoneRecovery implements PhoneFigure {
    private final Outcome outcome;
    private final Guideline guideline;
    private final SheetWords words;
    private final PhoneTable table;
    private final RecoveryClasses classes;
    private final List<ReachShade> shades;
    /** Words of the answer, and those of its class, which on sheets stand below each other. */
    private final Map<String, String> legend = new HashMap<>();

    PhoneRecovery(Outcome outcome, YearsRun run, Guideline guideline) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.words = new SheetWords(outcome);
        this.table = new PhoneTable(words, guideline);
        this.classes = new RecoveryClasses(outcome, run);
        this.shades = classes.shades(guideline);
        SheetLegend legendOfSheets =
                SheetLegend.ofRecovery(words.texts(), classes.now(), run.lastYear(), SheetLegend.used(shades));
        for (WallSheet.Answer answer : legendOfSheets.answers()) {
            for (LineClass look : answer.classes()) {
                legend.put(
                        look.key(), answer.words().isEmpty() ? look.legend() : answer.words() + ": " + look.legend());
            }
        }
    }

    PhoneMap map() {
        String subtitle =
                words.texts().text("sheet.recovery", Integer.toString(classes.now()), words.medium(guideline));
        String title = words.texts()
                .text("sheet.title.recovery", outcome.scenario().project().title());
        return new PhoneSheet(outcome, words, this).map(title, subtitle, subtitle, words.source(guideline, List.of()));
    }

    @Override
    public List<ReachShade> order() {
        Set<ReachShade> used = EnumSet.range(ReachShade.FAR_ABOVE, ReachShade.NOT_ASSESSED);
        used.addAll(shades);
        return List.copyOf(used);
    }

    @Override
    public String legend(ReachShade shade) {
        return legend.get(shade.key());
    }

    @Override
    public ReachShade shade(int reach) {
        return shades.get(reach);
    }

    @Override
    public double badness(int reach) {
        return 0;
    }

    @Override
    public List<Fact> facts(int reach) {
        return List.of(new Fact(words.texts().text("page.answer"), legend(shades.get(reach))), table.value());
    }

    @Override
    public List<String> remarks(int reach) {
        return List.of();
    }
}
