// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.report.MapBases;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.GroupArea;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.place.PlacedPoint;

/** What of places and sites the audience of a run may see: all in the office; in public nothing that gives a single site away. */
final class SheetGround {
    private final Outcome outcome;
    private final boolean withSites;

    SheetGround(Outcome outcome) {
        this.outcome = outcome;
        this.withSites = outcome.scenario().outputs().audience() == Outputs.Audience.OFFICE
                && !outcome.scenario().sites().isEmpty();
    }

    /** Whether single sites show, so that the sheet must not be hung up. */
    boolean withSites() {
        return withSites;
    }

    /** Places that people know, and sites where they may be seen. */
    List<MapPoint> points() {
        return MapBases.basis(outcome, withSites).points().stream()
                .filter(point -> point.kind() != MapPoint.Kind.GAUGE)
                .toList();
    }

    /** Places alone, for small maps; the map of one state shows the sites. */
    List<MapPoint> places() {
        return points().stream()
                .filter(point -> point.kind() != MapPoint.Kind.SITE)
                .toList();
    }

    WallSheet.Ground ground() {
        List<WallSheet.NamedArea> areas = new ArrayList<>();
        if (!withSites) {
            groups().forEach((name, sites) -> GroupArea.around(
                            corners(sites), outcome.basin().map())
                    .ifPresent(area -> areas.add(new WallSheet.NamedArea(name, area))));
        }
        return new WallSheet.Ground(
                outcome.basin().ground(), outcome.basin().waters().shapes(), areas);
    }

    /** Groups by name, each with its sites' places in the scenario's list. */
    private Map<String, List<Integer>> groups() {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < outcome.scenario().sites().size(); i++) {
            groups.computeIfAbsent(outcome.scenario().sites().get(i).group(), g -> new ArrayList<>())
                    .add(i);
        }
        return groups;
    }

    /** The groups that may be told by name; the others are other sources. */
    Map<String, List<Integer>> told() {
        Map<String, List<Integer>> groups = groups();
        groups.values().removeIf(sites -> GroupArea.places(corners(sites)) < GroupArea.FEWEST);
        return groups;
    }

    private List<GroupArea.Corner> corners(List<Integer> sites) {
        List<PlacedPoint> points = outcome.basin().points("site");
        return sites.stream()
                .map(i -> new GroupArea.Corner(
                        points.get(i).longitude(), points.get(i).latitude()))
                .toList();
    }

    /**
     * The marks as the audience may see them. Reaches are cut at sites, and looks change there: in public the stretch above each
     * site, up to the next place or confluence, looks as bad as the one below it, and no bank is marked.
     *
     * @param answers how many of the classes, which come first, are answers
     */
    List<ReachMark> seen(List<ReachMark> marks, int answers) {
        if (withSites) {
            return marks;
        }
        var map = outcome.basin().map();
        List<ReachMark> seen = new ArrayList<>();
        marks.forEach(m -> seen.add(new ReachMark(m.lineClass(), m.hatched(), false, m.aboveFromBackground())));
        List<PlacedPoint> sites = outcome.basin().points("site").stream()
                .sorted(Comparator.comparingInt(site -> -outcome.basin().reachAt(site)))
                .toList();
        for (PlacedPoint site : sites) {
            RiverMap.Reach head = map.reach(site.headReach());
            ReachMark below = seen.get(site.headReach());
            for (int r = 0; r < marks.size(); r++) {
                ReachMark above = seen.get(r);
                boolean isAbove = map.reach(r).toNode() == head.fromNode()
                        && map.reach(r).part().featureId().equals(site.featureId());
                if (isAbove && above.lineClass() < answers && below.lineClass() <= above.lineClass()) {
                    seen.set(r, new ReachMark(below.lineClass(), below.hatched(), false, above.aboveFromBackground()));
                }
            }
        }
        return seen;
    }
}
