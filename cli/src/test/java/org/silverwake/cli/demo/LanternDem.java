// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.demo.Plane.Spot;
import org.silverwake.geo.write.Grid;

/**
 * Ground that fits the rivers: at each cell the lowest, over all points of all rivers, of the river's height plus a valley side
 * that rises with distance. Rivers so lie at the bottom of their valleys, to a meter or
 * two. Far from all rivers, out at sea, there is no value.
 */
final class LanternDem {
    private static final double CELL_DEGREES = 0.004;
    private static final double WEST = -20.52;
    private static final double NORTH = -29.72;
    private static final int COLUMNS = 250;
    private static final int ROWS = 150;
    /** Distance between the river points that are looked at [km]. */
    private static final double SPACING = 0.15;
    /** Valley side: rise = STEEP x²/(x + FLAT), level by the river and STEEP far from it [m/km], [km]. */
    private static final double STEEP = 35;

    private static final double FLAT = 1.2;

    /** Farther than this from every river lies no value [km]. */
    private static final double LAND = 6;

    private LanternDem() {}

    private record Point(double x, double y, double height) {}

    static Grid of(List<Reach> reaches) {
        List<Point> points = new ArrayList<>();
        for (Reach reach : reaches) {
            addPoints(reach, points);
        }
        float[] values = new float[COLUMNS * ROWS];
        for (int k = 0; k < values.length; k++) {
            double longitude = WEST + (k % COLUMNS + 0.5) * CELL_DEGREES;
            double latitude = NORTH - (k / COLUMNS + 0.5) * CELL_DEGREES;
            values[k] = (float) (StrictMath.rint(20 * height(points, Plane.fromDegrees(longitude, latitude))) / 20);
        }
        return new Grid(WEST, NORTH, CELL_DEGREES, COLUMNS, values);
    }

    private static void addPoints(Reach reach, List<Point> points) {
        for (int k = 1; k < reach.line().size(); k++) {
            Spot a = reach.line().get(k - 1);
            Spot b = reach.line().get(k);
            int pieces = Math.max(1, (int) StrictMath.ceil(a.distance(b) / SPACING));
            for (int piece = 0; piece <= pieces; piece++) {
                double share = (double) piece / pieces;
                Spot at = a.towards(b, share);
                double low = reach.heights().get(k - 1);
                points.add(
                        new Point(at.x(), at.y(), low + share * (reach.heights().get(k) - low)));
            }
        }
    }

    private static double height(List<Point> points, Spot at) {
        double lowest = Double.MAX_VALUE;
        double nearest = Double.MAX_VALUE;
        for (Point point : points) {
            double dx = point.x() - at.x();
            double dy = point.y() - at.y();
            double square = dx * dx + dy * dy;
            double rise = STEEP * square / (StrictMath.sqrt(square) + FLAT);
            lowest = Math.min(lowest, point.height() + rise);
            nearest = Math.min(nearest, square);
        }
        return nearest < LAND * LAND ? lowest : Double.NaN;
    }
}
