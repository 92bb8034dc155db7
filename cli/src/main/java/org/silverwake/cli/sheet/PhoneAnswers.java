// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.write.PhoneMap;
import org.silverwake.geo.write.PhoneMap.Fact;
import org.silverwake.model.screening.Guideline;

/** The answers to a guide value in one state of flow or over the year, as a phone shows them. */
final class PhoneAnswers implements PhoneFigure {
    private final Outcome outcome;
    private final Guideline guideline;
    private final int state;
    private final SheetWords words;
    private final AnswerSheets answers;
    private final PhoneTable table;
    private final boolean withSites;

    PhoneAnswers(Outcome outcome, Guideline guideline, int state) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.state = state;
        this.words = new SheetWords(outcome);
        this.answers = new AnswerSheets(outcome, guideline);
        this.table = new PhoneTable(words, guideline);
        this.withSites = new SheetGround(outcome).withSites();
    }

    PhoneMap map() {
        return new PhoneSheet(outcome, words, this)
                .map(
                        answers.title(),
                        state == AnswerSheets.ALL_STATES ? words.texts().text("sheet.year") : words.state(state),
                        words.texts().text("sheet.compared", words.medium(guideline)),
                        words.source(guideline, answers.remarks(state)));
    }

    /** Those of all answers, and others that occur. */
    @Override
    public List<ReachShade> order() {
        Set<ReachShade> used = EnumSet.range(ReachShade.FAR_ABOVE, ReachShade.NOT_ASSESSED);
        used.addAll(answers.shades(state));
        return List.copyOf(used);
    }

    @Override
    public String legend(ReachShade shade) {
        return table.legend(shade);
    }

    @Override
    public ReachShade shade(int reach) {
        return answers.shade(state, reach);
    }

    @Override
    public double badness(int reach) {
        return isLeftOut(reach) ? 0 : answers.row(state, reach).ratioHigh().orElse(0.0);
    }

    @Override
    public List<Fact> facts(int reach) {
        return isLeftOut(reach) ? table.leftOut() : table.facts(answers.row(state, reach));
    }

    @Override
    public List<String> remarks(int reach) {
        return isLeftOut(reach)
                ? List.of()
                : table.remarks(answers.row(state, reach), withSites && answers.isNearBank(state, reach));
    }

    private boolean isLeftOut(int reach) {
        return outcome.screening().isLeftOut(guideline, reach);
    }
}
