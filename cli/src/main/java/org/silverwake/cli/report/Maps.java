// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.GuidelineLine;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.OwnStyle;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.SteadyResult;

/** Concentration maps: by default one guideline for every flow state; all of them on request. */
public final class Maps {
    private static final int ALL_STATES = -1;

    private final Outcome outcome;
    private final boolean withSites;
    private final SummaryLines summary;

    private Maps(Outcome outcome, boolean withSites) {
        this.outcome = outcome;
        this.withSites = withSites;
        this.summary = SummaryLines.of(outcome);
    }

    /**
     * Draws.
     *
     * @param style draws reaches on maps of one flow state
     * @param all every guideline compared with reaches, not the default one alone
     * @param withoutSites leaves single sites off, so that the maps may be posted
     */
    public static void draw(
            Outcome outcome, MapFiles files, Optional<OwnStyle> style, boolean all, boolean withoutSites) {
        Maps maps =
                new Maps(outcome, !withoutSites && !outcome.scenario().sites().isEmpty());
        List<Guideline> drawn = all
                ? Shown.drawable(outcome)
                : Shown.guideline(outcome).stream().toList();
        RecoveryMaps.draw(outcome, files, all, maps.withSites);
        Overbank.draw(outcome, files, maps.withSites);
        GroupMap.draw(outcome, files, maps.withSites);
        FormMaps.draw(outcome, files, maps.withSites);
        for (Guideline guideline : drawn) {
            for (int state : maps.statesOf(guideline)) {
                String name = state == ALL_STATES
                        ? guideline.id()
                        : guideline.id() + "-"
                                + outcome.scenario().states().get(state).name();
                files.draw(
                        outcome.basin().map(),
                        maps.sheet(guideline, state),
                        style.filter(s -> state != ALL_STATES).map(s -> Layers.look(outcome, state, s)),
                        name);
            }
        }
    }

    private List<Integer> statesOf(Guideline guideline) {
        if (guideline.observable().averaging().isOneForAllStates()) {
            return List.of(ALL_STATES);
        }
        List<Integer> states = new ArrayList<>();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            states.add(s);
        }
        return states;
    }

    private MapSheet sheet(Guideline guideline, int state) {
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            marks.add(mark(guideline, state, outcome.basin().network().reachOfInput(i)));
        }
        return new MapSheet(
                MapBases.basis(outcome, withSites).withPoints(new SampleMarks(outcome).onMap(guideline, state)),
                subtitle(guideline, state),
                "Estimate compared with the guideline",
                Shading.classes(factor, isSomewhereLeftOut(guideline)),
                new MapSheet.Summary(
                        state == ALL_STATES
                                ? "People and river by this value"
                                : "People and river, this flow state alone",
                        forMap(guideline, state == ALL_STATES ? OptionalInt.empty() : OptionalInt.of(state))),
                marks,
                List.of(new GuidelineLine(
                        guideline.id(),
                        guideline.printed() + ", "
                                + guideline.observable().words() + ", protects " + guideline.protects()
                                + meant(guideline, state),
                        guideline.source().words(),
                        guideline.checked() == Guideline.Checked.SEEN)),
                "Stated factor: " + Numbers.shown(factor, 3)
                        + ". The estimate may be wrong by that factor either way; between the two, nobody can tell without samples."
                        + new SampleMarks(outcome).remark(guideline, state));
    }

    private List<String> forMap(Guideline guideline, OptionalInt state) {
        List<String> lines = new ArrayList<>(summary.forMap(guideline, state));
        SampleAgainst.forMap(outcome, guideline, state).ifPresent(lines::add);
        return lines;
    }

    /** A state's map shows that state alone; where the value is meant for something else, the legend says so. */
    private String meant(Guideline guideline, int state) {
        boolean other = state != ALL_STATES
                && (guideline.observable().averaging() == Averaging.YEAR
                        || guideline.observable().averaging() == Averaging.THIRTY_DAY);
        return other
                ? ". It is meant for the "
                        + guideline.observable().averaging().words().split(",")[0]
                        + "; this map shows one flow state alone. Answers as meant are in screening.csv"
                : "";
    }

    private String subtitle(Guideline guideline, int state) {
        String what = guideline.observable().words();
        if (state == ALL_STATES) {
            return what + ", over the year";
        }
        return what + ", " + Profiles.subtitle(outcome, state);
    }

    private boolean isSomewhereLeftOut(Guideline guideline) {
        return IntStream.range(0, outcome.screening().reaches())
                .anyMatch(r -> outcome.screening().isLeftOut(guideline, r));
    }

    /** The run whose outfalls a value has to do with. */
    private SteadyResult carrying(Guideline guideline) {
        return outcome.cyanide()
                .filter(carried -> guideline.observable().substance().isCyanide())
                .map(Cyanide::result)
                .orElse(outcome.result());
    }

    private ReachMark mark(Guideline guideline, int state, int reach) {
        if (outcome.screening().isLeftOut(guideline, reach)) {
            return new ReachMark(ReachShade.DOES_NOT_APPLY.ordinal(), false, false, false);
        }
        ScreeningRow row = state == ALL_STATES
                ? outcome.screening().row(guideline, reach)
                : outcome.screening().inState(guideline, reach, state);
        boolean nearBank = state != ALL_STATES
                && carrying(guideline).solution(Bound.CARRIED_THROUGH, state).isNearBank(reach)
                && row.answer() != Answer.NOT_ASSESSED;
        return new ReachMark(
                Shading.of(
                                row,
                                outcome.screening()
                                        .rule()
                                        .factor(guideline.observable().medium()))
                        .ordinal(),
                row.verdict().hatched(),
                nearBank,
                row.verdict().aboveFromBackground());
    }
}
