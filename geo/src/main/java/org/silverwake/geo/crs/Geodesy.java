// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import net.sf.geographiclib.PolygonArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Lengths and areas on the WGS 84 ellipsoid. All coordinates are WGS 84 degrees, x = longitude, y = latitude; all lengths are
 * geodesic meters. Lines over the antimeridian are measured the short way. Between two vertices a line is taken as the
 * geodesic for its length, and as straight in degrees for the place of a point on it: the two lie within a millimeter of
 * each other for segments of up to 100 m.
 *
 * <p>Source: C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43-55.
 */
public final class Geodesy {
    private static final double FULL_TURN = 360;
    private static final double HALF_TURN = 180;

    private Geodesy() {}

    /** Geodesic distance [m] between two points [degrees]. */
    public static double distance(double longitude1, double latitude1, double longitude2, double latitude2) {
        return Geodesic.WGS84.Inverse(latitude1, longitude1, latitude2, longitude2, GeodesicMask.DISTANCE).s12;
    }

    /** Geodesic distance [m] between two points [degrees, longitude first]. */
    public static double distance(Coordinate a, Coordinate b) {
        return distance(a.x, a.y, b.x, b.y);
    }

    /** Geodesic length [m] of a line [degrees, longitude first]. */
    public static double length(LineString line) {
        double[] chainages = chainages(line);
        return chainages.length == 0 ? 0 : chainages[chainages.length - 1];
    }

    /** Geodesic distance [m] from the line's start to each of its vertices, along the line; 0 at the first. */
    public static double[] chainages(LineString line) {
        CoordinateSequence s = line.getCoordinateSequence();
        double[] chainages = new double[s.size()];
        for (int i = 1; i < chainages.length; i++) {
            chainages[i] = chainages[i - 1] + distance(s.getX(i - 1), s.getY(i - 1), s.getX(i), s.getY(i));
        }
        return chainages;
    }

    /** Geodesic area [m2] of polygons [degrees, longitude first], holes left out; 0 of anything else. */
    public static double area(Geometry geometry) {
        double area = 0;
        for (int k = 0; k < geometry.getNumGeometries(); k++) {
            Geometry part = geometry.getGeometryN(k);
            if (part instanceof Polygon polygon) {
                area += ringArea(polygon.getExteriorRing());
                for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                    area -= ringArea(polygon.getInteriorRingN(h));
                }
            } else if (part.getNumGeometries() > 1) {
                area += area(part);
            }
        }
        return area;
    }

    private static double ringArea(LineString ring) {
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            area.AddPoint(ring.getCoordinateN(i).y, ring.getCoordinateN(i).x);
        }
        return Math.abs(area.Compute().area);
    }

    /**
     * The point at a distance along a line.
     *
     * @param line the line [degrees, longitude first]
     * @param meters geodesic distance from its start [m]; below 0 gives the start, beyond the length the end
     */
    public static Coordinate pointAt(LineString line, double meters) {
        double[] chainages = chainages(line);
        int i = segmentAt(chainages, meters);
        return onSegment(line, chainages, i, meters);
    }

    /**
     * The stretch of a line between two distances from its start, in the drawn direction.
     *
     * @param line the line [degrees, longitude first]
     * @param fromMeters where it starts, geodesic [m], at least 0
     * @param toMeters where it ends, geodesic [m], at least {@code fromMeters}; clamped to the length
     */
    public static LineString part(LineString line, double fromMeters, double toMeters) {
        double[] chainages = chainages(line);
        int first = segmentAt(chainages, fromMeters);
        int last = segmentAt(chainages, toMeters);
        CoordinateList points = new CoordinateList();
        points.add(onSegment(line, chainages, first, fromMeters), true);
        for (int i = first + 1; i <= last; i++) {
            points.add(line.getCoordinateN(i).copy(), false);
        }
        Coordinate end = onSegment(line, chainages, last, toMeters);
        points.add(end, points.size() < 2);
        return line.getFactory().createLineString(points.toCoordinateArray());
    }

    private static int segmentAt(double[] chainages, double meters) {
        int i = 0;
        while (i < chainages.length - 2 && chainages[i + 1] <= meters) {
            i++;
        }
        return i;
    }

    private static Coordinate onSegment(LineString line, double[] chainages, int i, double meters) {
        Coordinate a = line.getCoordinateN(i);
        Coordinate b = line.getCoordinateN(i + 1);
        double length = chainages[i + 1] - chainages[i];
        double share = length > 0 ? Math.max(0, Math.min(1, (meters - chainages[i]) / length)) : 0;
        if (share <= 0) {
            return a.copy();
        }
        if (share >= 1) {
            return b.copy();
        }
        double x = wrap(a.x + share * wrap(b.x - a.x));
        double y = a.y + share * (b.y - a.y);
        return new Coordinate(x, y, a.getZ() + share * (b.getZ() - a.getZ()));
    }

    /** A longitude, or a difference of two, brought to -180 to 180 [degrees]. */
    public static double wrap(double longitude) {
        if (longitude >= -HALF_TURN && longitude <= HALF_TURN) {
            return longitude;
        }
        return longitude - FULL_TURN * Math.rint(longitude / FULL_TURN);
    }
}
