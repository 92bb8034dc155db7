// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.report.MapBases;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.GuidelineLine;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Answer;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;

/**
 * A map of what changes from the first scenario to another, by the ratio of their high estimates. Its colors are others than
 * those of answers: a fall is no "below".
 */
final class ChangeMap {
    private static final double KILOMETER = 1000;

    /** How a reach changes; the upper limit is that of the ratio after to before [-]. */
    private enum Change {
        TENTH(0.1, new LineClass("tenth", "Falls to a tenth or less", "#1b1464", 6.4, List.of())),
        HALF(0.5, new LineClass("half", "Falls to less than a half", "#3d3390", 5.2, List.of())),
        LESS(0.9, new LineClass("less", "Falls by 10 to 50 %", "#6256b4", 4.2, List.of(13.0, 2.5))),
        SAME(1.1, new LineClass("same", "Changes by less than 10 %", "#b4bac2", 2, List.of())),
        MORE(
                Double.POSITIVE_INFINITY,
                new LineClass("more", "Rises by 10 % or more", "#d46c28", 5.2, List.of(3.0, 3.0)));

        private final double upTo;
        private final LineClass look;

        Change(double upTo, LineClass look) {
            this.upTo = upTo;
            this.look = look;
        }

        static Change of(double ratio) {
            return Arrays.stream(values())
                    .filter(change -> ratio <= change.upTo)
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static final int UNKNOWN = Change.values().length;

    private final Comparison comparison;
    private final int scenario;
    private final Guideline guideline;

    ChangeMap(Comparison comparison, int scenario, Guideline guideline) {
        this.comparison = comparison;
        this.scenario = scenario;
        this.guideline = guideline;
    }

    MapSheet sheet(boolean withSites) {
        var basin = comparison.first().basin();
        double[] lengths = new double[UNKNOWN + 1];
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < basin.map().reachCount(); i++) {
            int reach = basin.network().reachOfInput(i);
            int look = comparison
                    .change(scenario, guideline, reach)
                    .map(ratio -> Change.of(ratio).ordinal())
                    .orElse(UNKNOWN);
            lengths[look] += basin.table().length(reach);
            marks.add(new ReachMark(look, false, false, false));
        }
        List<LineClass> classes = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (Change change : Change.values()) {
            classes.add(change.look);
        }
        classes.add(ReachShade.NOT_ASSESSED.withLegend("Not assessed in both"));
        for (int k = 0; k < classes.size(); k++) {
            lines.add(classes.get(k).legend() + ": " + Numbers.shown(lengths[k] / KILOMETER, 3) + " km");
        }
        lines.add("No longer above: " + kilometers(true) + " km");
        lines.add("Newly above: " + kilometers(false) + " km");
        return new MapSheet(
                MapBases.basis(comparison.first(), withSites),
                "What changes: " + guideline.observable().words() + ", " + name(0) + " to " + name(scenario),
                "High estimate: " + name(scenario) + " over " + name(0),
                classes,
                new MapSheet.Summary("Length of river", lines),
                marks,
                List.of(new GuidelineLine(
                        guideline.id(),
                        guideline.printed() + ", " + guideline.observable().words() + ", protects "
                                + guideline.protects(),
                        guideline.source().words(),
                        guideline.checked() == Guideline.Checked.SEEN)),
                "This map says how much changes, not whether what is left is too much: see the maps of each scenario.");
    }

    private String name(int which) {
        return comparison.scenarios().get(which).name();
    }

    /** River whose answer turns from above to another, or to above from another. */
    private String kilometers(boolean leaves) {
        double sum = 0;
        for (int r = 0; r < comparison.first().basin().network().size(); r++) {
            boolean before = isAbove(comparison.worst(0, guideline, r));
            boolean after = isAbove(comparison.worst(scenario, guideline, r));
            if (before != after && before == leaves) {
                sum += comparison.first().basin().table().length(r);
            }
        }
        return Numbers.shown(sum / KILOMETER, 3);
    }

    private static boolean isAbove(Optional<ScreeningRow> row) {
        return row.filter(r -> r.answer() == Answer.ABOVE).isPresent();
    }
}
