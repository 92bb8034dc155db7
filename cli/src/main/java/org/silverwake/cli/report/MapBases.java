// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.geo.map.MapBasis;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.MapWords;
import org.silverwake.geo.map.Paper;
import org.silverwake.geo.place.PlacedPoint;

/** What all maps of a run have in common: places, sites and gauges, waters, cautions, maker. */
public final class MapBases {
    private MapBases() {}

    /** Of a run, with or without single sites. */
    public static MapBasis basis(Outcome outcome, boolean withSites) {
        ScenarioInput.Project project = outcome.scenario().project();
        return new MapBasis(
                project.title(),
                of(outcome, withSites),
                outcome.basin().waters().shapes(),
                Cautions.of(outcome),
                project.preparedBy(),
                project.date(),
                withSites,
                MapWords.english(),
                Paper.A4,
                outcome.basin().ground());
    }

    private static List<MapPoint> of(Outcome outcome, boolean withSites) {
        List<MapPoint> points = new ArrayList<>();
        List<PlacedPoint> places = outcome.basin().points("place");
        for (int i = 0; i < places.size(); i++) {
            points.add(point(kind(outcome.scenario().places().get(i).uses()), places.get(i)));
        }
        if (withSites) {
            outcome.basin().points("site").forEach(at -> points.add(point(MapPoint.Kind.SITE, at)));
        }
        outcome.basin().points("gauge").forEach(at -> points.add(point(MapPoint.Kind.GAUGE, at)));
        return points;
    }

    private static MapPoint point(MapPoint.Kind kind, PlacedPoint at) {
        return new MapPoint(kind, at.request().name(), at.longitude(), at.latitude());
    }

    private static MapPoint.Kind kind(List<PlaceUse> uses) {
        if (uses.contains(PlaceUse.DRINKING_INTAKE) || uses.contains(PlaceUse.RIVERSIDE_WELL)) {
            return MapPoint.Kind.INTAKE;
        }
        if (uses.contains(PlaceUse.VILLAGE) || uses.contains(PlaceUse.SCHOOL)) {
            return MapPoint.Kind.VILLAGE;
        }
        return uses.contains(PlaceUse.FISHING) ? MapPoint.Kind.FISHING : MapPoint.Kind.OTHER;
    }
}
