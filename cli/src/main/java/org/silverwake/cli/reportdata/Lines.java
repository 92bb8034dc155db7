// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.write.Corners;

/**
 * Lines of units as the map of the page needs them: points that a line can do without go (Douglas and Peucker 1973, planar in
 * degrees with longitudes shortened by the cosine of the latitude), the harder the more there are.
 */
final class Lines {
    /** Points up to which lines are as fine as they get: about 0.5 MB (chosen). */
    private static final int MOST_POINTS = 60_000;

    /** Finest tolerance: 1e-4 degrees, about 11 m. */
    private static final double FINEST = 1e-4;

    /** Coarsest tolerance: 0.01 degrees, about 1 km; a line keeps its two ends whatever. */
    private static final double COARSEST = 1e-2;

    private Lines() {}

    /** One line: longitudes and latitudes [degrees]. */
    record Line(List<double[]> points) {}

    /** Lines of all units. */
    static List<Line> of(List<List<RiverMap.Reach>> units) {
        List<Line> whole =
                units.stream().map(reaches -> new Line(joined(reaches))).toList();
        double tolerance = FINEST;
        List<Line> simple = simplified(whole, tolerance);
        while (simple.stream().mapToInt(line -> line.points().size()).sum() > MOST_POINTS && tolerance < COARSEST) {
            tolerance *= 2;
            simple = simplified(whole, tolerance);
        }
        return simple;
    }

    private static List<double[]> joined(List<RiverMap.Reach> reaches) {
        List<double[]> points = new ArrayList<>();
        for (RiverMap.Reach reach : reaches) {
            // the first point of a further part is the cut, which must not be told
            boolean further = !points.isEmpty();
            if (further) {
                points.remove(points.size() - 1);
            }
            for (int k = further ? 1 : 0; k < reach.pointCount(); k++) {
                points.add(new double[] {reach.longitude(k), reach.latitude(k)});
            }
        }
        return points;
    }

    private static List<Line> simplified(List<Line> lines, double tolerance) {
        return lines.stream().map(line -> simplified(line, tolerance)).toList();
    }

    private static Line simplified(Line line, double tolerance) {
        List<double[]> points = line.points();
        BitSet kept = Corners.kept(
                points.size(), tolerance, (k, from, to) -> distance(points.get(k), points.get(from), points.get(to)));
        return new Line(kept.stream().mapToObj(points::get).toList());
    }

    /** From a point to a stretch between two others. */
    private static double distance(double[] at, double[] from, double[] to) {
        double cosine = Math.cos(Math.toRadians(at[1]));
        double dx = (to[0] - from[0]) * cosine;
        double dy = to[1] - from[1];
        double x = (at[0] - from[0]) * cosine;
        double y = at[1] - from[1];
        double square = dx * dx + dy * dy;
        double along = square > 0 ? Math.max(0, Math.min(1, (x * dx + y * dy) / square)) : 0;
        return Math.hypot(x - along * dx, y - along * dy);
    }
}
