// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Ground;

/**
 * Reaches as lines for a phone: corners that they can do without go (Douglas and Peucker 1973, planar with the lengths of degrees at the line's
 * first point), both ends stay. WGS 84 degrees, longitude first, -180 to 180.
 */
final class PhoneLines {
    /** How far a corner may lie from the line without it [m]: what a phone's own position is uncertain by, chosen. */
    static final double FINEST = 5;
    /** The same, at most; the ends of lines stay whatever. */
    static final double COARSEST = 320;
    /** Corners up to which lines are as fine as they get, some 2 MB of text: chosen. */
    static final int MOST_CORNERS = 100_000;

    private PhoneLines() {}

    /** A line for each list of reaches; the coarser the more there are. */
    static List<List<Coordinate>> of(RiverMap map, List<List<Integer>> stretches) {
        List<List<Coordinate>> whole =
                stretches.stream().map(reaches -> joined(map, reaches)).toList();
        double tolerance = FINEST;
        List<List<Coordinate>> lines = all(whole, tolerance);
        while (lines.stream().mapToInt(List::size).sum() > MOST_CORNERS && tolerance < COARSEST) {
            tolerance *= 2;
            lines = all(whole, tolerance);
        }
        return lines;
    }

    private static List<List<Coordinate>> all(List<List<Coordinate>> lines, double tolerance) {
        return lines.stream().map(line -> simplified(line, tolerance)).toList();
    }

    private static List<Coordinate> simplified(List<Coordinate> line, double tolerance) {
        double east = Ground.metersPerDegreeEast(line.get(0).y);
        double north = Ground.metersPerDegreeNorth(line.get(0).y);
        Coordinate[] plane = line.stream()
                .map(at -> new Coordinate(at.x * east, at.y * north))
                .toArray(Coordinate[]::new);
        BitSet kept = Corners.kept(
                plane.length, tolerance, (k, from, to) -> Distance.pointToSegment(plane[k], plane[from], plane[to]));
        return kept.stream().mapToObj(line::get).map(PhoneLines::wrapped).toList();
    }

    private static Coordinate wrapped(Coordinate at) {
        return new Coordinate(at.x - 360 * Math.floor((at.x + 180) / 360), at.y);
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
