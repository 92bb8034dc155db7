// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Ground;

/**
 * Reaches as one line for a phone: corners that it can do without go (Douglas and Peucker 1973, planar with the lengths of degrees at the line's
 * first point), both ends stay. WGS 84 degrees, longitude first, -180 to 180.
 */
final class PhoneLine {
    /** How far a corner may lie from the line without it [m]: what a phone's own position is uncertain by, chosen. */
    static final double TOLERANCE = 5;

    private PhoneLine() {}

    static List<Coordinate> of(RiverMap map, List<Integer> reaches) {
        List<Coordinate> all = joined(map, reaches);
        double east = Ground.metersPerDegreeEast(all.get(0).y);
        double north = Ground.metersPerDegreeNorth(all.get(0).y);
        Coordinate[] plane = new Coordinate[all.size()];
        for (int k = 0; k < plane.length; k++) {
            plane[k] = new Coordinate(all.get(k).x * east, all.get(k).y * north, k);
        }
        List<Coordinate> kept = new ArrayList<>();
        for (Coordinate corner : DouglasPeuckerSimplifier.simplify(
                        new GeometryFactory().createLineString(plane), TOLERANCE)
                .getCoordinates()) {
            Coordinate at = all.get((int) corner.getZ());
            kept.add(new Coordinate(at.x - 360 * Math.floor((at.x + 180) / 360), at.y));
        }
        return kept;
    }

    /** Where two reaches meet is a cut of the line at a point, which must not be told. */
    private static List<Coordinate> joined(RiverMap map, List<Integer> reaches) {
        List<Coordinate> all = new ArrayList<>();
        for (int reach : reaches) {
            Coordinate[] own = map.reach(reach).line().getCoordinates();
            boolean further = !all.isEmpty();
            if (further) {
                all.remove(all.size() - 1);
            }
            all.addAll(List.of(own).subList(further ? 1 : 0, own.length));
        }
        return all;
    }
}
