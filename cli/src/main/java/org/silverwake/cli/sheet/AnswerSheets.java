// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.report.Shading;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.map.WallSheet.Figure;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.transport.Bound;

/** Sheets of the answers to a guide value: one state of flow or the year, and all states on one sheet. */
final class AnswerSheets {
    static final int ALL_STATES = -1;

    private final Outcome outcome;
    private final Guideline guideline;
    private final SheetWords words;
    private final SheetGround ground;

    AnswerSheets(Outcome outcome, Guideline guideline) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.words = new SheetWords(outcome);
        this.ground = new SheetGround(outcome);
    }

    /** A map of one flow state, or of the year. */
    WallSheet one(int state) {
        String subtitle = state == ALL_STATES ? words.texts().text("sheet.year") : words.state(state);
        return sheet(title(), subtitle, List.of(state), List.of(""), strips(state), remarks(state));
    }

    /** The first profile that the scenario asks for; none of the year. */
    private List<WallSheet.Strip> strips(int state) {
        return outcome.scenario().outputs().profiles().stream()
                .limit(state == ALL_STATES ? 0 : 1)
                .map(profile -> new SheetStrip(outcome, guideline, words, profile))
                .flatMap(strip -> strip.of(state, strip.heading(), ground.withSites()).stream())
                .toList();
    }

    /** All flow states on one sheet. */
    WallSheet states() {
        List<Integer> states =
                IntStream.range(0, outcome.scenario().states().size()).boxed().toList();
        List<String> captions = states.stream().map(words::state).toList();
        return sheet(title(), words.texts().text("sheet.states"), states, captions, List.of(), remarks(0));
    }

    String title() {
        return words.texts()
                .text(
                        "sheet.title",
                        words.medium(guideline),
                        outcome.scenario().project().title());
    }

    List<String> remarks(int state) {
        Averaging averaging = guideline.observable().averaging();
        boolean longer = state != ALL_STATES && (averaging == Averaging.YEAR || averaging == Averaging.THIRTY_DAY);
        return longer ? List.of(words.texts().text("guide.longer")) : List.of();
    }

    private WallSheet sheet(
            String title,
            String subtitle,
            List<Integer> states,
            List<String> captions,
            List<WallSheet.Strip> strips,
            List<String> remarks) {
        List<ReachShade> all = new ArrayList<>();
        states.forEach(state -> all.addAll(shades(state)));
        SheetLegend legend = SheetLegend.ofAnswers(words.texts(), words.factor(guideline), SheetLegend.used(all));
        List<Figure> figures = new ArrayList<>();
        for (int k = 0; k < states.size(); k++) {
            figures.add(new Figure(
                    captions.get(k),
                    marks(legend, states.get(k)),
                    states.size() == 1 ? ground.points() : ground.places()));
        }
        return new WallSheet(
                words.paper(),
                words.head(title, subtitle, ground.withSites()),
                figures,
                ground.ground(),
                Optional.empty(),
                strips,
                new WallSheet.Legend(
                        words.texts().text("sheet.compared", words.medium(guideline)),
                        legend.answers(),
                        words.marks(),
                        words.texts().text("sheet.area"),
                        words.notes(ground.withSites())),
                new WallSheet.Blocks(
                        states.size() == 1 ? words.forPeople() : List.of(words.toAsk()),
                        List.of(words.source(guideline, remarks))),
                words.cautions(),
                words.foot(),
                words.scale());
    }

    /** Figure of the year or of one state for sheets that set runs side by side. */
    List<ReachMark> marks(SheetLegend legend, int state) {
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            int reach = outcome.basin().network().reachOfInput(i);
            int look = legend.number(shade(state, reach));
            if (outcome.screening().isLeftOut(guideline, reach)) {
                marks.add(new ReachMark(look, false, false, false));
            } else {
                ScreeningRow row = row(state, reach);
                marks.add(new ReachMark(
                        look,
                        row.verdict().hatched(),
                        look < legend.number(ReachShade.NOT_ASSESSED) && isNearBank(state, reach),
                        row.verdict().aboveFromBackground()));
            }
        }
        return ground.seen(marks, legend.number(ReachShade.NOT_ASSESSED));
    }

    boolean isNearBank(int state, int reach) {
        return state != ALL_STATES
                && guideline.observable().substance().isMercury()
                && outcome.result().solution(Bound.CARRIED_THROUGH, state).isNearBank(reach);
    }

    ScreeningRow row(int state, int reach) {
        return state == ALL_STATES
                ? outcome.screening().row(guideline, reach)
                : outcome.screening().inState(guideline, reach, state);
    }

    ReachShade shade(int state, int reach) {
        return outcome.screening().isLeftOut(guideline, reach)
                ? ReachShade.DOES_NOT_APPLY
                : Shading.of(row(state, reach), words.factor(guideline));
    }

    /** Looks of all reaches. */
    List<ReachShade> shades(int state) {
        return IntStream.range(0, outcome.screening().reaches())
                .mapToObj(reach -> shade(state, reach))
                .toList();
    }
}
