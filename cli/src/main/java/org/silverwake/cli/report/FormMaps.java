// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.transport.Bound;

/**
 * Maps of forms of mercury by themselves, where the scenario asks for them: how much there is, by decades, compared with
 * nothing. Their colors are others than those of answers, which they must not be taken for.
 */
final class FormMaps {
    private static final double KILOMETER = 1000;
    /** A ramp of falling lightness from indigo to lavender. */
    private static final List<LineClass> LOOKS = List.of(
            new LineClass("decade-1", "", "#1b1464", 6.4, List.of()),
            new LineClass("decade-2", "", "#4a3fa0", 5.2, List.of()),
            new LineClass("decade-3", "", "#8478c9", 4.2, List.of(13.0, 2.5)),
            new LineClass("decade-4", "", "#b9aee2", 3.4, List.of(6.0, 2.5)));

    private static final int REST = LOOKS.size();
    private static final int UNKNOWN = REST + 1;

    private final Outcome outcome;
    private final boolean withSites;
    private final FormValues values;
    private final DecadeClasses decades;

    private FormMaps(Outcome outcome, boolean withSites, FormValues values) {
        this.outcome = outcome;
        this.withSites = withSites;
        this.values = values;
        this.decades = new DecadeClasses(values.largest(), LOOKS.size());
    }

    static void draw(Outcome outcome, MapFiles files, boolean withSites) {
        for (FormValues values : FormValues.asked(outcome)) {
            FormMaps maps = new FormMaps(outcome, withSites, values);
            for (int state : values.states()) {
                files.draw(outcome.basin().map(), maps.sheet(state), fileName(outcome, values, state));
            }
        }
    }

    /** "methyl-whole-water-dry". */
    static String fileName(Outcome outcome, FormValues values, int state) {
        String what = Words.plain(values.group().form().name()) + " "
                + Words.plain(values.medium().name());
        String where = state == FormValues.ALL_STATES
                ? ""
                : " " + outcome.scenario().states().get(state).name();
        return Profiles.fileName(what + where);
    }

    private ReachMark mark(int state, int reach) {
        if (!values.has(state, reach)) {
            return new ReachMark(UNKNOWN, false, false, false);
        }
        int decade = decades.of(values.high(state, reach));
        boolean doubtful = decade == REST && outcome.breaks().doubt(reach).isPresent();
        boolean apart = decade < REST
                && values.isApart(state, reach, outcome.screening().rule().boundsRatio());
        boolean nearBank = decade < REST
                && values.isOfWater()
                && outcome.result().solution(Bound.CARRIED_THROUGH, state).isNearBank(reach);
        return new ReachMark(doubtful ? UNKNOWN : decade, apart, nearBank, false);
    }

    private MapSheet sheet(int state) {
        List<ReachMark> marks = new ArrayList<>();
        double[] lengths = new double[UNKNOWN + 1];
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            int reach = outcome.basin().network().reachOfInput(i);
            ReachMark mark = mark(state, reach);
            lengths[mark.lineClass()] += outcome.basin().table().length(reach);
            marks.add(mark);
        }
        List<LineClass> classes = new ArrayList<>();
        for (String words : decades.words(values.unit())) {
            LineClass look = LOOKS.get(classes.size());
            classes.add(new LineClass(look.key(), words, look.color(), look.width(), look.dash()));
        }
        classes.add(new LineClass("rest", "Less, or none", "#9aa7b5", 1.8, List.of()));
        classes.add(ReachShade.NOT_ASSESSED.withLegend("Not assessed"));
        List<String> lines = new ArrayList<>();
        for (int k = 0; k < classes.size(); k++) {
            lines.add(classes.get(k).legend() + ": " + Numbers.shown(lengths[k] / KILOMETER, 3) + " km");
        }
        return new MapSheet(
                MapBases.basis(outcome, withSites),
                subtitle(state),
                "High estimate; compared with no guideline",
                classes,
                new MapSheet.Summary("Length of river", lines),
                marks,
                List.of(),
                "Compared with nothing: this map says how much there is, not whether it is too much. Maps of guideline values say that.");
    }

    private String subtitle(int state) {
        String words =
                Character.toUpperCase(values.words().charAt(0)) + values.words().substring(1);
        if (state == FormValues.ALL_STATES) {
            return words + ", over the year";
        }
        return words + ", " + Profiles.subtitle(outcome, state);
    }
}
