// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.ReachCutting;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Stretches;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.crs.PointReader;

/** Finds where points lie on a network and leaves the network as it is. */
public final class Locator {
    /** Where several reaches meet, distances to them are the same within this [m]. */
    private static final double SAME_DISTANCE = 1e-6;

    private final RiverMap map;
    private final Stretches stretches;
    private final Map<List<Integer>, Double> wholes;

    /** For the reaches of a map, cut or not. */
    public Locator(RiverMap map) {
        this.map = map;
        this.stretches = new Stretches(
                map.reaches().stream().map(r -> r.line().getCoordinates()).toList());
        this.wholes = ReachCutting.partLengths(map);
    }

    /**
     * The place of a point on the nearest reach; where reaches meet there, on one that begins there.
     *
     * @param request the point
     * @param crs the system of points given in the layer's own
     */
    public LocatedPoint locate(PointRequest request, LayerCrs crs) {
        List<UnplacedPoint> unplaced = new ArrayList<>();
        Optional<Coordinate> at = Positions.read(request, new PointReader(crs), unplaced)
                .map(fix -> new Coordinate(fix.longitude(), fix.latitude()));
        if (at.isEmpty()) {
            return refused(request, unplaced.get(0).reason());
        }
        Optional<Stretches.Hit> hit = nearest(at.get(), request.maxDistanceMeters());
        if (hit.isEmpty()) {
            return refused(request, FarPoint.text(request, at.get(), map, stretches));
        }
        List<String> warnings = RiverNames.check(request, at.get(), hit.get(), map, stretches).stream()
                .toList();
        return new LocatedPoint(request, Optional.of(onReach(at.get(), hit.get())), "", warnings);
    }

    private static LocatedPoint refused(PointRequest request, String text) {
        return new LocatedPoint(request, Optional.empty(), text.replace(Positions.name(request) + ": ", ""), List.of());
    }

    private Optional<Stretches.Hit> nearest(Coordinate at, double meters) {
        List<Stretches.Hit> hits = new ArrayList<>(stretches.within(at, meters));
        double least = hits.stream().mapToDouble(Stretches.Hit::distance).min().orElse(0);
        return hits.stream()
                .filter(hit -> hit.distance() <= least + SAME_DISTANCE)
                .min(Comparator.comparing((Stretches.Hit hit) -> stretches.chainage(hit) > SAME_DISTANCE)
                        .thenComparingInt(Stretches.Hit::line));
    }

    private LocatedPoint.OnReach onReach(Coordinate at, Stretches.Hit hit) {
        ReachPart part = map.reach(hit.line()).part();
        double whole = wholes.get(List.of(part.feature(), part.part()));
        double along = stretches.chainage(hit);
        double head = part.flipped() ? whole - part.toMeters() : part.fromMeters();
        return new LocatedPoint.OnReach(at.x, at.y, hit.distance(), part.featureId(), head + along, hit.line(), along);
    }
}
