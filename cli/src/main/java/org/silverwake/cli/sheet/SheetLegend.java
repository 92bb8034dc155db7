// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.silverwake.cli.report.RecoveryClasses;
import org.silverwake.cli.text.Texts;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet.Answer;

/** Legends of sheets: each answer in large words, its classes below it. Classes with no answer stand only where they occur. */
final class SheetLegend {
    private static final double FAR = 10;
    private static final int DIGITS = 3;

    /** A look and what the legend says of it. */
    private record Row(ReachShade shade, String words) {}

    private final List<Answer> answers = new ArrayList<>();
    private final List<ReachShade> order = new ArrayList<>();

    private SheetLegend() {}

    /**
     * Of a comparison with a guide value.
     *
     * @param factor the stated one [-]
     * @param used which looks occur
     */
    static SheetLegend ofAnswers(Texts texts, double factor, Set<ReachShade> used) {
        String f = texts.number(factor, DIGITS);
        String far = texts.number(FAR * factor, DIGITS);
        SheetLegend legend = new SheetLegend();
        legend.add(
                texts.text("answer.above"),
                List.of(
                        new Row(ReachShade.FAR_ABOVE, texts.text("class.far-above", far)),
                        new Row(ReachShade.ABOVE, texts.text("class.above", f, far))));
        legend.add(
                texts.text("answer.may-be-above"),
                List.of(
                        new Row(ReachShade.LIKELY_ABOVE, texts.text("class.likely-above")),
                        new Row(ReachShade.MAY_BE_ABOVE, texts.text("class.may-be-above"))));
        legend.add(texts.text("answer.below"), List.of(new Row(ReachShade.BELOW, texts.text("class.below", f))));
        legend.addNoAnswer(texts, used);
        return legend;
    }

    /** Of how long it takes; counted from a year on, looked at until another. */
    static SheetLegend ofRecovery(Texts texts, int now, int last, Set<ReachShade> used) {
        SheetLegend legend = new SheetLegend();
        String soon = texts.number(RecoveryClasses.SOON, DIGITS);
        String late = texts.number(RecoveryClasses.LATE, DIGITS);
        legend.add(
                texts.text("recovery.still", Integer.toString(last)),
                List.of(new Row(ReachShade.FAR_ABOVE, texts.text("recovery.still.class"))));
        legend.add(
                texts.text("recovery.later"),
                List.of(
                        new Row(ReachShade.ABOVE, texts.text("recovery.late", late)),
                        new Row(ReachShade.LIKELY_ABOVE, texts.text("recovery.middle", soon, late)),
                        new Row(ReachShade.MAY_BE_ABOVE, texts.text("recovery.soon", soon))));
        legend.add(
                texts.text("recovery.not-above"),
                List.of(new Row(ReachShade.BELOW, texts.text("recovery.not-above.class", Integer.toString(now)))));
        legend.addNoAnswer(texts, used);
        return legend;
    }

    private void addNoAnswer(Texts texts, Set<ReachShade> used) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(ReachShade.NOT_ASSESSED, texts.text("class.not-assessed")));
        if (used.contains(ReachShade.NO_WATER)) {
            rows.add(new Row(ReachShade.NO_WATER, texts.text("class.no-water")));
        }
        if (used.contains(ReachShade.DOES_NOT_APPLY)) {
            rows.add(new Row(ReachShade.DOES_NOT_APPLY, texts.text("class.does-not-apply")));
        }
        add(texts.text("answer.not-assessed"), rows);
    }

    private void add(String words, List<Row> rows) {
        List<LineClass> classes = new ArrayList<>();
        for (Row row : rows) {
            classes.add(row.shade().withLegend(row.words()));
            order.add(row.shade());
        }
        answers.add(new Answer(words, classes));
    }

    List<Answer> answers() {
        return answers;
    }

    /** The class number of a look. */
    int number(ReachShade shade) {
        return order.indexOf(shade);
    }

    /** The looks of some reaches. */
    static Set<ReachShade> used(List<ReachShade> shades) {
        Set<ReachShade> used = EnumSet.noneOf(ReachShade.class);
        used.addAll(shades);
        return used;
    }
}
