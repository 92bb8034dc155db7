// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ScreeningSummary;
import org.silverwake.model.screening.ScreeningSummary.Line;

/** The first lines of a summary in words: people and intakes by answer, river by answer; for print, tables and maps. */
public final class SummaryLines {
    /** In place of an answer where none of the values applies. */
    public static final String DOES_NOT_APPLY = "does not apply";

    /** Said where people stand otherwise. */
    static final String NOBODY = "no village, intake or other place is listed, so nobody is counted";

    private static final double KILOMETER = 1000;
    private static final int DIGITS = 4;
    private static final int MAP_DIGITS = 3;
    private static final String UNKNOWN = "*";
    /** Room of a cell of the table by flow state. */
    private static final String CELL = " %20s";

    private static final OptionalInt AS_ASKED = OptionalInt.empty();

    private final Outcome outcome;
    private final ScreeningSummary summary;

    private SummaryLines(Outcome outcome) {
        this.outcome = outcome;
        double[] lengths = new double[outcome.basin().network().size()];
        for (int r = 0; r < lengths.length; r++) {
            lengths[r] = outcome.basin().table().length(r);
        }
        this.summary = ScreeningSummary.of(outcome.screening(), lengths);
    }

    /** Of a run. */
    public static SummaryLines of(Outcome outcome) {
        return new SummaryLines(outcome);
    }

    /**
     * Values that are told together, the worst answer of them counting.
     *
     * @param title "drinking-water values (WHO-DW-iHg)"
     * @param note what is compared, and which answer counts
     * @param guidelines the values, at least one
     */
    public record Group(String title, String note, List<Guideline> guidelines) {
        /** Copies the list. */
        public Group {
            guidelines = List.copyOf(guidelines);
        }
    }

    /** Drinking-water values where any place is listed, then river-water values, as far as any were chosen. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        if (isPlaced()) {
            addGroup(
                    groups,
                    "drinking-water values",
                    "river water as it is, before any treatment, where people drink",
                    summary.drinkingWater());
        }
        addGroup(groups, "river-water values", "river water at each place", summary.riverWater());
        return groups;
    }

    private static void addGroup(List<Group> groups, String title, String note, List<Guideline> guidelines) {
        if (!guidelines.isEmpty()) {
            String ids = guidelines.stream().map(Guideline::displayName).collect(Collectors.joining(", "));
            String protects = "; protects "
                    + guidelines.stream().map(Guideline::protects).distinct().collect(Collectors.joining(", "));
            String worst = guidelines.size() == 1 ? "" : "; the worst answer of those that apply counts";
            groups.add(new Group(title + " (" + ids + ")", note + protects + worst, guidelines));
        }
    }

    /** What is counted. */
    public ScreeningSummary summary() {
        return summary;
    }

    /** A short paragraph on people first, as it is printed: a group's answers in words, then a small table by flow state. */
    List<String> paragraph(Group group) {
        boolean withRiver = isAlongRivers(group.guidelines());
        List<String> lines = new ArrayList<>();
        String whom = isPlaced() ? "People and intakes" : "River";
        lines.add((withRiver && isPlaced() ? "People, intakes and river" : whom) + " by " + group.title() + ": "
                + group.note());
        for (Line line : summary.lines(group.guidelines(), AS_ASKED)) {
            if (line.answer().isPresent() || isAnything(line)) {
                lines.add(String.format(Locale.ROOT, "    %-24s %s", answer(line), counts(line, "%6d", withRiver)));
            }
        }
        lines.addAll(byState(group.guidelines(), withRiver));
        return lines;
    }

    private List<String> byState(List<Guideline> guidelines, boolean withRiver) {
        List<List<Line>> columns = new ArrayList<>();
        StringBuilder heading = new StringBuilder();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            columns.add(summary.lines(guidelines, OptionalInt.of(s)));
            heading.append(String.format(
                    Locale.ROOT, CELL, outcome.scenario().states().get(s).name() + " alone"));
        }
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "    %-24s%s", unit(withRiver), heading));
        for (int k = 0; k < columns.get(0).size(); k++) {
            int row = k;
            if (k < Answer.values().length || columns.stream().anyMatch(c -> isAnything(c.get(row)))) {
                String cells = columns.stream()
                        .map(c -> String.format(Locale.ROOT, CELL, cell(c.get(row), withRiver)))
                        .collect(Collectors.joining());
                lines.add(String.format(
                        Locale.ROOT, "    %-24s%s", answer(columns.get(0).get(k)), cells));
            }
        }
        return lines;
    }

    private boolean isPlaced() {
        return !outcome.scenario().places().isEmpty();
    }

    private String unit(boolean withRiver) {
        return isPlaced() ? "people / intakes" + (withRiver ? " / km" : "") : "km";
    }

    private String cell(Line line, boolean withRiver) {
        if (!isPlaced()) {
            return kilometers(line, DIGITS);
        }
        return line.people() + mark(line) + " / " + line.intakes()
                + (withRiver ? " / " + kilometers(line, DIGITS) : "");
    }

    /** "above 0 people, 0 intakes; may be above ..." as the value asks, without the answers that nothing has. */
    public String inOneLine(Guideline guideline) {
        List<Guideline> alone = List.of(guideline);
        return summary.lines(alone, AS_ASKED).stream()
                .filter(SummaryLines::isAnything)
                .map(line -> answer(line) + " " + counts(line, "%d", isAlongRivers(alone)))
                .collect(Collectors.joining("; "));
    }

    /** Four or five lines for a map's panel: "Above: 0 people, 0 intakes, 12 km". */
    List<String> forMap(Guideline guideline, OptionalInt state) {
        List<String> lines = new ArrayList<>();
        for (Line line : summary.lines(List.of(guideline), state)) {
            if (line.answer().isPresent() || isAnything(line)) {
                String people = line.people() + mark(line) + " people, " + plural(line.intakes(), "intake") + ", ";
                lines.add(sentence(answer(line)) + ": " + (isPlaced() ? people : "") + kilometers(line, MAP_DIGITS)
                        + " km");
            }
        }
        if (!isPlaced()) {
            lines.add(sentence(NOBODY));
        }
        int unknown = summary.placesWithoutNumber().size();
        if (unknown > 0) {
            lines.add(UNKNOWN + " and people of " + plural(unknown, "place") + ", number not known");
        }
        return lines;
    }

    /** Beside a number of people that leaves out a place whose number is not known. */
    private static String mark(Line line) {
        return line.withoutNumber() > 0 ? UNKNOWN : "";
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Whose people are not among those counted; empty where every place has its number. */
    List<String> uncounted() {
        if (!isPlaced()) {
            return List.of(NOBODY + "; list where people live, drink, fish and water their fields (places)");
        }
        List<String> names = summary.placesWithoutNumber();
        return names.isEmpty()
                ? List.of()
                : List.of(UNKNOWN + " how many people depend on "
                        + (names.size() == 1 ? "1 place" : names.size() + " places")
                        + " is not known, so they are not among the people counted: " + String.join(", ", names));
    }

    /** The answer, or that none applies. */
    public static String answer(Line line) {
        return line.answer().map(Answer::words).orElse(DOES_NOT_APPLY);
    }

    static boolean isAlongRivers(List<Guideline> guidelines) {
        return guidelines.stream().anyMatch(g -> g.scope() == Medium.Scope.REACH);
    }

    static boolean isAnything(Line line) {
        return line.people() > 0 || line.withoutNumber() > 0 || line.intakes() > 0 || line.riverLength() > 0;
    }

    private String counts(Line line, String number, boolean withRiver) {
        if (!isPlaced()) {
            return kilometers(line, DIGITS) + " km";
        }
        String people = String.format(Locale.ROOT, number + " people", line.people());
        String unknown = line.withoutNumber() == 0
                ? ""
                : " and " + plural(line.withoutNumber(), "place") + " (number not known)";
        String river = withRiver ? ", " + kilometers(line, DIGITS) + " km" : "";
        return people + unknown + ", " + plural(line.intakes(), "intake") + river;
    }

    private static String kilometers(Line line, int digits) {
        return Numbers.shown(line.riverLength() / KILOMETER, digits);
    }

    private static String plural(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
