// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The first lines of every summary: people, intakes and length of river by answer, for one guideline or several together,
 * flow states averaged as each guideline asks or in one state alone. Over several, a place or reach has the worst answer
 * among the values that apply to it and can be assessed; it is not assessed only where none of them can be. Immutable.
 */
public final class ScreeningSummary {
    private final Screening screening;
    private final double[] lengths;

    private ScreeningSummary(Screening screening, double[] lengths) {
        this.screening = screening;
        this.lengths = lengths.clone();
    }

    /**
     * One line. Over all lines people, intakes and places add up to what there is.
     *
     * @param answer one of the four answers; empty where none of the values applies
     * @param people people at places with this answer whose number is known [-]
     * @param withoutNumber places with this answer whose number of people is not known [-]
     * @param intakes drinking-water intakes and wells by the river with this answer [-]
     * @param riverLength length of river with this answer [m]; 0 for values compared at places alone
     */
    public record Line(Optional<Answer> answer, long people, int withoutNumber, int intakes, double riverLength) {}

    /**
     * Of a screening.
     *
     * @param lengths length of each reach [m], above 0
     * @throws IllegalArgumentException if there are not as many lengths as reaches
     */
    public static ScreeningSummary of(Screening screening, double[] lengths) {
        if (lengths.length != screening.reaches()) {
            throw new IllegalArgumentException("one length per reach is needed");
        }
        return new ScreeningSummary(screening, lengths);
    }

    /** Mercury values for drinking water among those compared, as far as what they are values of is computed. */
    public List<Guideline> drinkingWater() {
        return mercuryIn(Medium.DRINKING_WATER);
    }

    /** Mercury values for water of the river among those compared, as far as what they are values of is computed. */
    public List<Guideline> riverWater() {
        return mercuryIn(Medium.SURFACE_WATER);
    }

    private List<Guideline> mercuryIn(Medium medium) {
        return screening.compared().stream()
                .filter(g -> g.observable().medium() == medium)
                .filter(g -> g.observable().substance().isMercury())
                .filter(screening::isModelled)
                .toList();
    }

    /** Names of the places whose number of people is not known, in the order given. */
    public List<String> placesWithoutNumber() {
        return screening.receptors().stream()
                .filter(r -> r.people().isEmpty())
                .map(Receptor::name)
                .toList();
    }

    /**
     * Five lines: the four answers in their order, then what none of the values applies to.
     *
     * @param guidelines values that are compared, one or several
     * @param state a flow state alone; empty for the averaging each value asks
     */
    public List<Line> lines(List<Guideline> guidelines, OptionalInt state) {
        int kinds = Answer.values().length + 1;
        long[] people = new long[kinds];
        int[] withoutNumber = new int[kinds];
        int[] intakes = new int[kinds];
        for (Receptor receptor : screening.receptors()) {
            int at = at(worst(guidelines, receptor, state));
            people[at] += receptor.people().orElse(0);
            withoutNumber[at] += receptor.people().isEmpty() ? 1 : 0;
            intakes[at] += receptor.kind() == Receptor.Kind.INTAKE ? 1 : 0;
        }
        double[] river = river(guidelines, state, kinds);
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at < kinds; at++) {
            Optional<Answer> answer = Arrays.stream(Answer.values()).skip(at).findFirst();
            lines.add(new Line(answer, people[at], withoutNumber[at], intakes[at], river[at]));
        }
        return lines;
    }

    private double[] river(List<Guideline> guidelines, OptionalInt state, int kinds) {
        double[] river = new double[kinds];
        List<Guideline> alongRivers =
                guidelines.stream().filter(g -> g.scope() == Medium.Scope.REACH).toList();
        if (!alongRivers.isEmpty()) {
            for (int reach = 0; reach < lengths.length; reach++) {
                river[at(worst(alongRivers, reach, state))] += lengths[reach];
            }
        }
        return river;
    }

    private static int at(Optional<Answer> answer) {
        return answer.map(Answer::ordinal).orElse(Answer.values().length);
    }

    private Optional<Answer> worst(List<Guideline> guidelines, Receptor receptor, OptionalInt state) {
        Optional<Answer> worst = Optional.empty();
        for (Guideline guideline : guidelines) {
            Optional<ScreeningRule.Verdict> verdict = state.isPresent()
                    ? screening.verdict(guideline, receptor, state.getAsInt())
                    : screening.verdict(guideline, receptor);
            worst = worse(worst, verdict.map(ScreeningRule.Verdict::answer));
        }
        return worst;
    }

    /** The worst answer of a reach; empty where none of the values applies to it. */
    public Optional<Answer> worst(List<Guideline> guidelines, int reach, OptionalInt state) {
        Optional<Answer> worst = Optional.empty();
        for (Guideline guideline : guidelines) {
            if (screening.applies(guideline, reach)) {
                ScreeningRow row = state.isPresent()
                        ? screening.inState(guideline, reach, state.getAsInt())
                        : screening.row(guideline, reach);
                worst = worse(worst, Optional.of(row.answer()));
            }
        }
        return worst;
    }

    /** Answers stand from the worst to "not assessed". */
    private static Optional<Answer> worse(Optional<Answer> one, Optional<Answer> other) {
        return at(other) < at(one) ? other : one;
    }
}
