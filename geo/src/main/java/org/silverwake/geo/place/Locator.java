// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
    private final OtherRivers otherRivers;
    private final PointReader reader;
    private final ShiftNotes shifts = new ShiftNotes();

    /** For the reaches of a map, cut or not, and points some of which are given in the layer's own system. */
    public Locator(RiverMap map, LayerCrs crs) {
        this.map = map;
        this.reader = new PointReader(crs);
        this.stretches = new Stretches(
                map.reaches().stream().map(r -> r.line().getCoordinates()).toList());
        this.wholes = ReachCutting.partLengths(map);
        this.otherRivers = new OtherRivers(map, stretches);
    }

    /**
     * The place of a point on the nearest reach; where reaches meet there, on one that begins there.
     *
     * @param request the point
     */
    public LocatedPoint locate(PointRequest request) {
        List<UnplacedPoint> unplaced = new ArrayList<>();
        Optional<PointReader.Fix> fix = Positions.read(request, reader, unplaced);
        fix.flatMap(PointReader.Fix::shift).ifPresent(shift -> shifts.add(request, shift));
        Optional<Coordinate> at = fix.map(f -> new Coordinate(f.longitude(), f.latitude()));
        if (at.isEmpty()) {
            return refused(request, unplaced.get(0).reason());
        }
        Optional<Stretches.Hit> hit = nearest(at.get(), request.maxDistanceMeters());
        if (hit.isEmpty()) {
            return refused(request, FarPoint.text(request, at.get(), map, stretches));
        }
        List<String> warnings = Stream.of(
                        RiverNames.check(request, at.get(), hit.get(), map, stretches),
                        otherRivers.check(request, at.get(), hit.get()))
                .flatMap(Optional::stream)
                .toList();
        return new LocatedPoint(request, Optional.of(onReach(at.get(), hit.get())), "", warnings);
    }

    /** What older datums did to the points so far, one line for each datum and transformation. */
    public List<String> shifts() {
        return shifts.lines();
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
