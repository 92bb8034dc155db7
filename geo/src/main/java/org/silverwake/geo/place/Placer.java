// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.ReachCutting;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Stretches;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.crs.PointReader;

/** Places points on the network and cuts reaches there. Start reading at {@link #place}. */
public final class Placer {
    /** Cuts nearer together than this share one [m]. */
    static final double APART = 1;

    private static final double SAME_DISTANCE = 1e-6;

    private record Spot(PointRequest request, Coordinate at, Stretches.Hit hit, double chainage) {}

    private record Cut(int index, double chainage) {}

    private final RiverMap map;
    private final Stretches stretches;
    private final OtherRivers otherRivers;
    private final List<UnplacedPoint> unplaced = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    private Placer(RiverMap map) {
        this.map = map;
        this.stretches = new Stretches(
                map.reaches().stream().map(r -> r.line().getCoordinates()).toList());
        this.otherRivers = new OtherRivers(map, stretches);
    }

    /**
     * Puts each point on the nearest reach within its distance and cuts the reach there, so that a reach begins at each
     * point. A point nearer than 1 m to a reach's head uses that head; one nearer to its end leaves a short piece, so that
     * it stays on its own side of the confluence.
     *
     * @param map the network
     * @param crs the system of points given in the layer's own
     * @param requests the points
     * @throws GeoDataException with one line for each point that cannot be placed
     */
    public static Placement place(RiverMap map, LayerCrs crs, List<PointRequest> requests) {
        Placement placement = placeWhereFound(map, crs, requests);
        placement.requireAll();
        return placement;
    }

    /** The same; a point that cannot be placed is among {@link Placement#unplaced()}, with the reason. */
    public static Placement placeWhereFound(RiverMap map, LayerCrs crs, List<PointRequest> requests) {
        Placer placer = new Placer(map);
        PointReader reader = new PointReader(crs);
        ShiftNotes shifts = new ShiftNotes();
        List<Spot> spots = new ArrayList<>();
        for (PointRequest request : requests) {
            Optional<PointReader.Fix> fix = Positions.read(request, reader, placer.unplaced);
            fix.flatMap(PointReader.Fix::shift).ifPresent(shift -> shifts.add(request, shift));
            fix.flatMap(at -> placer.spot(request, new Coordinate(at.longitude(), at.latitude())))
                    .ifPresent(spots::add);
        }
        placer.warnings.addAll(shifts.lines());
        return placer.cut(spots);
    }

    private Optional<Spot> spot(PointRequest request, Coordinate at) {
        Optional<Stretches.Hit> hit = nearest(at, request.maxDistanceMeters());
        if (hit.isEmpty()) {
            unplaced.add(UnplacedPoint.at(request, at, FarPoint.text(request, at, map, stretches)));
            return Optional.empty();
        }
        RiverNames.check(request, at, hit.get(), map, stretches).ifPresent(warnings::add);
        otherRivers.check(request, at, hit.get()).ifPresent(warnings::add);
        return Optional.of(new Spot(request, at, hit.get(), stretches.chainage(hit.get())));
    }

    /** The nearest reach; where several meet at the nearest place, one that begins there. */
    private Optional<Stretches.Hit> nearest(Coordinate at, double meters) {
        List<Stretches.Hit> hits = new ArrayList<>(stretches.within(at, meters));
        if (hits.isEmpty()) {
            return Optional.empty();
        }
        double least = hits.stream().mapToDouble(Stretches.Hit::distance).min().getAsDouble();
        return hits.stream()
                .filter(hit -> hit.distance() <= least + SAME_DISTANCE)
                .min(Comparator.comparing((Stretches.Hit hit) -> stretches.chainage(hit) > SAME_DISTANCE)
                        .thenComparingInt(Stretches.Hit::line));
    }

    private Placement cut(List<Spot> spots) {
        List<List<Double>> cuts = new ArrayList<>();
        map.reaches().forEach(reach -> cuts.add(new ArrayList<>()));
        List<Spot> upstreamFirst = new ArrayList<>(spots);
        upstreamFirst.sort(Comparator.comparingDouble(Spot::chainage));
        Map<Spot, Cut> chosen = new HashMap<>();
        for (Spot spot : upstreamFirst) {
            chosen.put(spot, choose(spot, cuts.get(spot.hit.line())));
        }
        int[] first = new int[map.reachCount()];
        for (int i = 1; i < first.length; i++) {
            first[i] = first[i - 1] + 1 + cuts.get(i - 1).size();
        }
        RiverMap cutMap = ReachCutting.cut(map, cuts);
        Map<List<Integer>, Double> wholes = ReachCutting.partLengths(map);
        List<PlacedPoint> points = new ArrayList<>();
        for (Spot spot : spots) {
            Cut cut = chosen.get(spot);
            points.add(placed(spot, cut, first[spot.hit.line()] + cut.index, cutMap, wholes));
        }
        return new Placement(cutMap, points, unplaced, warnings);
    }

    private Cut choose(Spot spot, List<Double> cuts) {
        double length = map.reach(spot.hit.line()).lengthMeters();
        double room = Math.min(APART, length / 2);
        double at = Math.min(spot.chainage, length - room);
        if (spot.chainage < room) {
            return new Cut(0, 0);
        }
        int last = cuts.size();
        if (last > 0 && at - cuts.get(last - 1) < APART) {
            return new Cut(last, cuts.get(last - 1));
        }
        cuts.add(at);
        return new Cut(last + 1, at);
    }

    private PlacedPoint placed(Spot spot, Cut cut, int head, RiverMap cutMap, Map<List<Integer>, Double> wholes) {
        ReachPart part = cutMap.reach(head).part();
        Coordinate place = cutMap.reach(head).line().getCoordinateN(0);
        double whole = wholes.get(List.of(part.feature(), part.part()));
        return new PlacedPoint(
                spot.request,
                spot.at.x,
                spot.at.y,
                Geodesy.wrap(place.x),
                place.y,
                spot.hit.distance(),
                part.featureId(),
                part.flipped() ? whole - part.toMeters() : part.fromMeters(),
                head);
    }
}
