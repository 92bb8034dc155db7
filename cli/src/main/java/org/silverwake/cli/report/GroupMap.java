// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.quantity.Quantity;

/**
 * Kilograms a year by group of sites, where field notes are given: what each group gives to the river and to the air. On a map
 * without single sites, groups of fewer than three are left out, as they would show them.
 */
final class GroupMap {
    private static final int A_GROUP = 3;
    private static final double ONE = 1;
    private static final double TEN = 10;
    private static final int DIGITS = 3;

    private final Outcome outcome;
    private final boolean withSites;
    private final Map<String, Group> groups = new LinkedHashMap<>();

    /** Sums of a group. */
    private static final class Group {
        private final List<String> rows = new ArrayList<>();
        private double river;
        private double air;
        private double longitude;
        private double latitude;
        private int points;
    }

    private GroupMap(Outcome outcome, boolean withSites) {
        this.outcome = outcome;
        this.withSites = withSites;
        List<PlacedPoint> points = outcome.basin().points("site");
        for (int i = 0; i < points.size(); i++) {
            Site site = outcome.scenario().sites().get(i);
            Group group = groups.computeIfAbsent(site.group(), g -> new Group());
            group.river += outcome.result().input().meanRelease(i) * Quantity.SECONDS_PER_YEAR;
            group.longitude += points.get(i).longitude();
            group.latitude += points.get(i).latitude();
            group.points++;
            if (!group.rows.contains(site.where())) {
                group.rows.add(site.where());
            }
        }
        var plan = outcome.scenario().fieldNotes();
        for (Site site : plan.sites()) {
            NotedSites.balance(plan, site)
                    .ifPresent(balance -> groups.get(site.group()).air +=
                            balance.at(plan.level()).air() * Quantity.SECONDS_PER_YEAR);
        }
        if (!withSites) {
            groups.values().removeIf(group -> group.rows.size() < A_GROUP);
        }
    }

    static void draw(Outcome outcome, MapFiles files, boolean withSites) {
        if (outcome.scenario().fieldNotes().noted().isEmpty()) {
            return;
        }
        GroupMap map = new GroupMap(outcome, withSites);
        if (!map.groups.isEmpty()) {
            files.draw(outcome.basin().map(), map.sheet(), "mercury-by-group");
        }
    }

    private MapSheet sheet() {
        List<MapPoint> points = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        groups.forEach((name, group) -> {
            points.add(new MapPoint(
                    kind(group.river),
                    name + ": " + Numbers.shown(group.river, DIGITS) + " kg/yr",
                    group.longitude / group.points,
                    group.latitude / group.points));
            lines.add(name + ": " + Numbers.shown(group.river, DIGITS) + " kg to the river, "
                    + Numbers.shown(group.air, DIGITS) + " kg to the air");
        });
        lines.add("Mercury in the air is a hazard to whoever is near, whatever the river shows.");
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            marks.add(new ReachMark(0, false, false, false));
        }
        return new MapSheet(
                MapBases.basis(outcome, withSites).withoutSites().withPoints(points),
                "Mercury to the river in a year, by group of sites, "
                        + outcome.scenario().fieldNotes().year(),
                "Rivers",
                List.of(new LineClass("river", "River; nothing is compared on this map", "#92b6e2", 2.2, List.of())),
                new MapSheet.Summary("In a year, by field notes and as stated", lines),
                marks,
                List.of(),
                "Ranges and what was assumed are in site-balance.csv and field-notes-assumed.csv.");
    }

    private static MapPoint.Kind kind(double kilograms) {
        return kilograms < ONE
                ? MapPoint.Kind.GROUP_SMALL
                : kilograms < TEN ? MapPoint.Kind.GROUP_MIDDLE : MapPoint.Kind.GROUP_LARGE;
    }
}
