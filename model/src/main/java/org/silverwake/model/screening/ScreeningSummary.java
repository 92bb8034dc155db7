// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The first lines of every summary: people, intakes and length of river by guideline and answer. */
public final class ScreeningSummary {
    private ScreeningSummary() {}

    /**
     * One line.
     *
     * @param guideline the guideline
     * @param answer one of the four answers
     * @param people people at places with this answer [-]
     * @param intakes drinking-water intakes with this answer [-]
     * @param riverLength length of river with this answer [m]; 0 for values compared at places alone
     */
    public record Line(Guideline guideline, Answer answer, int people, int intakes, double riverLength) {}

    /**
     * Four lines per compared guideline, in the order of the answers.
     *
     * @param lengths length of each reach [m], above 0
     * @throws IllegalArgumentException if there are not as many lengths as reaches
     */
    public static List<Line> of(Screening screening, double[] lengths) {
        if (lengths.length != screening.reaches()) {
            throw new IllegalArgumentException("one length per reach is needed");
        }
        List<Line> lines = new ArrayList<>();
        for (Guideline guideline : screening.compared()) {
            double[] river = river(screening, guideline, lengths);
            int[] people = new int[Answer.values().length];
            int[] intakes = new int[Answer.values().length];
            for (Receptor receptor : screening.receptors()) {
                Optional<ScreeningRule.Verdict> verdict = screening.verdict(guideline, receptor);
                if (verdict.isPresent()) {
                    int at = verdict.get().answer().ordinal();
                    people[at] += receptor.people();
                    intakes[at] += receptor.kind() == Receptor.Kind.INTAKE ? 1 : 0;
                }
            }
            for (Answer answer : Answer.values()) {
                int at = answer.ordinal();
                lines.add(new Line(guideline, answer, people[at], intakes[at], river[at]));
            }
        }
        return lines;
    }

    private static double[] river(Screening screening, Guideline guideline, double[] lengths) {
        double[] river = new double[Answer.values().length];
        if (guideline.scope() == Medium.Scope.REACH) {
            for (ScreeningRow row : screening.rows(guideline)) {
                river[row.answer().ordinal()] += lengths[row.reach()];
            }
        }
        return river;
    }
}
