// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.GuidelineFiles;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.ReachClass;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.place.ReachesInside;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineChoice.ReachGroup;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;

/**
 * The scenario's classes of reaches, found on the river.
 *
 * @param groups the classes with their reaches, in the scenario's order
 * @param warnings one line each
 */
public record ReachClasses(List<ReachGroup> groups, List<String> warnings) {
    private static final int MOST_LISTED = 12;
    private static final double KILOMETER = 1000;

    /** Copies the lists. */
    public ReachClasses {
        groups = List.copyOf(groups);
        warnings = List.copyOf(warnings);
    }

    /**
     * Finds the reaches of every class.
     *
     * @throws ScenarioException with a line for each thing that is not there, and for each class without a reach
     */
    public static ReachClasses find(ScenarioInput scenario, Basin basin) {
        Search search = new Search(basin);
        List<BitSet> found = new ArrayList<>();
        for (ReachClass each : scenario.reachClasses()) {
            found.add(search.find(each));
        }
        BitSet rest = new BitSet();
        rest.set(0, basin.network().size());
        found.forEach(rest::andNot);
        List<ReachGroup> groups = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            ReachClass each = scenario.reachClasses().get(k);
            boolean isRest = each.selection() instanceof ReachClass.Rest;
            List<Integer> reaches =
                    (isRest ? rest : found.get(k)).stream().boxed().toList();
            if (reaches.isEmpty() && isRest) {
                search.warnings.add(each.where() + ": every reach lies in another class, so this one has none");
            }
            groups.add(new ReachGroup(each.name(), each.guidelines(), reaches));
        }
        if (!search.problems.isEmpty()) {
            throw new ScenarioException(search.problems);
        }
        withoutRiverWater(scenario, basin, groups, search.warnings);
        return new ReachClasses(groups, search.warnings);
    }

    /** A class chooses all values of its reaches; one without a value of river water says nothing of the water there. */
    private static void withoutRiverWater(
            ScenarioInput scenario, Basin basin, List<ReachGroup> groups, List<String> warnings) {
        if (ScreeningStep.chosen(scenario, new ArrayList<>()).stream().noneMatch(ReachClasses::isOfRiverWater)) {
            return;
        }
        GuidelineLibrary library = GuidelineFiles.library(scenario.guidelines().ownTable());
        for (int k = 0; k < groups.size(); k++) {
            ReachGroup group = groups.get(k);
            if (group.guidelines().stream().map(library::require).noneMatch(ReachClasses::isOfRiverWater)) {
                double length = group.reaches().stream()
                        .mapToDouble(basin.table()::length)
                        .sum();
                List<String> places = basin.points("place").stream()
                        .filter(point -> group.reaches().contains(basin.reachAt(point)))
                        .map(point -> point.request().name())
                        .toList();
                warnings.add(scenario.reachClasses().get(k).where() + ".guidelines: class " + group.name()
                        + " has no value of river water, so nothing is said of the water of "
                        + Numbers.shown(length / KILOMETER, 4) + " km of river"
                        + (places.isEmpty() ? "" : " and of " + String.join(", ", places)));
            }
        }
    }

    private static boolean isOfRiverWater(Guideline guideline) {
        return guideline.isOfReaches() && guideline.observable().medium() == Medium.SURFACE_WATER;
    }

    /** Notes what is not there while it searches. */
    private static final class Search {
        private final Basin basin;
        private final Stretch stretch;
        private final List<String> problems = new ArrayList<>();
        private final List<String> warnings = new ArrayList<>();

        Search(Basin basin) {
            this.basin = basin;
            this.stretch = new Stretch(basin);
        }

        BitSet find(ReachClass each) {
            int before = problems.size();
            BitSet reaches = new BitSet();
            if (each.selection() instanceof ReachClass.ByColumn column) {
                byColumn(each, column, reaches);
            } else if (each.selection() instanceof ReachClass.Along along) {
                along.ranges().forEach(range -> along(each, range, reaches));
            } else if (each.selection() instanceof ReachClass.Within within) {
                within(each, within, reaches);
            } else {
                return reaches;
            }
            if (reaches.isEmpty() && problems.size() == before) {
                problems.add(each.where() + ": no reach of the river belongs to it; correct it or leave the class out");
            }
            return reaches;
        }

        private void byColumn(ReachClass each, ReachClass.ByColumn by, BitSet reaches) {
            List<String> columns = basin.layer().columns();
            if (!columns.contains(by.column())) {
                problems.add(each.where() + ".column: " + by.column() + " is not a column of "
                        + basin.layer().label() + "; " + Nearest.hint(by.column(), columns));
                return;
            }
            Set<String> there = new TreeSet<>();
            Set<String> missing = new LinkedHashSet<>(by.values());
            for (int r = 0; r < basin.network().size(); r++) {
                int feature = basin.reach(r).part().feature();
                Object value =
                        basin.layer().features().get(feature).attributes().get(by.column());
                if (value != null) {
                    there.add(String.valueOf(value));
                    for (String wanted : by.values()) {
                        if (isSame(value, wanted)) {
                            reaches.set(r);
                            missing.remove(wanted);
                        }
                    }
                }
            }
            List<String> known = there.stream().limit(MOST_LISTED).toList();
            for (String wanted : missing) {
                problems.add(each.where() + ".values: no reach has " + wanted + " in column " + by.column() + "; "
                        + (known.isEmpty() ? "the column is empty" : Nearest.hint(wanted, known)));
            }
        }

        private static boolean isSame(Object value, String wanted) {
            if (value instanceof Number number) {
                try {
                    return Double.compare(number.doubleValue(), Double.parseDouble(wanted)) == 0;
                } catch (NumberFormatException e) {
                    return false;
                }
            }
            return String.valueOf(value).strip().equals(wanted);
        }

        private void along(ReachClass each, ReachClass.Range range, BitSet reaches) {
            try {
                stretch.reaches(range).forEach(reaches::set);
            } catch (Stretch.NotFound e) {
                problems.add(each.where() + ".ranges: " + e.getMessage());
            }
        }

        private void within(ReachClass each, ReachClass.Within within, BitSet reaches) {
            try {
                ReachesInside inside = ReachesInside.find(
                        basin.map(),
                        new LayerSource(
                                within.file(),
                                within.layer(),
                                within.crs(),
                                within.filter(),
                                java.util.Optional.empty()));
                inside.reaches().forEach(i -> reaches.set(basin.network().reachOfInput(i)));
                inside.warnings().forEach(w -> warnings.add(each.where() + ".polygons: " + w));
            } catch (GeoDataException e) {
                e.getMessage()
                        .lines()
                        .forEach(line -> problems.add(
                                each.where() + ".polygons: " + line.replace("rivers.crs", "polygons.crs")));
            }
        }
    }
}
