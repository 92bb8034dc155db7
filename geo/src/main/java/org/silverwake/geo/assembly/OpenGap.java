// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.crs.Ground;

/**
 * A gap over which water may flow, left open and not ruled on by the user. Start at {@link #of}.
 *
 * @param upper index in the map of the reach that ends at the gap, or passes it, and may lose its water there
 * @param lower index in the map of the reach that would take the water up
 * @param defect the gap as it is listed
 */
public record OpenGap(int upper, int lower, Defect defect) {
    /** A free end lies at its defect but for rounding [m]. */
    private static final double AT = 1;

    /** Every open gap of a network, in the order in which gaps are listed. */
    public static List<OpenGap> of(RiverMap map) {
        List<OpenGap> gaps = new ArrayList<>();
        for (Defect defect : map.defects()) {
            if (defect.kind() == Defect.Kind.GAP
                    && !defect.repaired()
                    && !defect.settled()
                    && defect.featureIds().size() == 2) {
                of(map, defect).ifPresent(gaps::add);
            }
        }
        return List.copyOf(gaps);
    }

    private static Optional<OpenGap> of(RiverMap map, Defect defect) {
        Optional<Integer> ending = nearest(map, defect, 0, -1);
        if (ending.isEmpty()) {
            return Optional.empty();
        }
        int own = ending.get();
        boolean leaves = distance(end(map.reach(own), true), defect) <= AT;
        return nearest(map, defect, 1, own)
                .map(other -> leaves
                        ? new OpenGap(own, taking(map, other, defect), defect)
                        : new OpenGap(other, own, defect));
    }

    /** Where the gap lies at a reach's lower end, the one reach that goes on from there takes the water, if it is one. */
    private static int taking(RiverMap map, int reach, Defect defect) {
        boolean atEnd = distance(end(map.reach(reach), true), defect) <= toLine(map.reach(reach), defect) + AT;
        int[] next = IntStream.range(0, map.reachCount())
                .filter(r -> map.reach(r).fromNode() == map.reach(reach).toNode())
                .toArray();
        return atEnd && next.length == 1 ? next[0] : reach;
    }

    /** The reach of one of the two features that lies nearest. */
    private static Optional<Integer> nearest(RiverMap map, Defect defect, int which, int not) {
        String feature = defect.featureIds().get(which);
        return IntStream.range(0, map.reachCount())
                .filter(r -> r != not && map.reach(r).part().featureId().equals(feature))
                .boxed()
                .min(Comparator.comparingDouble(r -> which == 0
                        ? Math.min(
                                distance(end(map.reach(r), false), defect), distance(end(map.reach(r), true), defect))
                        : toLine(map.reach(r), defect)));
    }

    private static Coordinate end(RiverMap.Reach reach, boolean lower) {
        return reach.line().getCoordinateN(lower ? reach.pointCount() - 1 : 0);
    }

    private static double toLine(RiverMap.Reach reach, Defect defect) {
        double east = Ground.metersPerDegreeEast(defect.latitude());
        double north = Ground.metersPerDegreeNorth(defect.latitude());
        Coordinate[] points = reach.line().getCoordinates();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < points.length; i++) {
            Coordinate at = new Coordinate(defect.longitude(), defect.latitude());
            double fraction = Ground.nearestFraction(at, points[i - 1], points[i], east, north);
            least = Math.min(least, distance(Ground.between(points[i - 1], points[i], fraction), defect));
        }
        return least;
    }

    private static double distance(Coordinate from, Defect to) {
        return Ground.distance(from.x, from.y, to.longitude(), to.latitude());
    }
}
