// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicMask;
import org.locationtech.jts.geom.Coordinate;

/**
 * Distances on the WGS 84 ellipsoid between points in degrees, longitude first. Short lines use the radii of curvature
 * at the middle latitude, whose relative error stays below 1e-6 up to {@link #SHORT_DEGREES}; longer ones the exact geodesic.
 */
public final class Ground {
    private static final double AXIS = Geodesic.WGS84.EquatorialRadius();
    private static final double FLATTENING = Geodesic.WGS84.Flattening();
    private static final double ECCENTRICITY2 = FLATTENING * (2 - FLATTENING);
    private static final double SHORT_DEGREES = 0.1;
    private static final double POLAR = 85;

    private Ground() {}

    /** Length of a degree along the meridian [m], at a latitude [degrees]. Radius of curvature a (1 - e2) / W^3. */
    public static double metersPerDegreeNorth(double latitude) {
        double s = Math.sin(Math.toRadians(latitude));
        double w2 = 1 - ECCENTRICITY2 * s * s;
        return Math.toRadians(AXIS * (1 - ECCENTRICITY2) / (w2 * Math.sqrt(w2)));
    }

    /** Length of a degree along the parallel [m], at a latitude [degrees]. Radius a cos(latitude) / W. */
    public static double metersPerDegreeEast(double latitude) {
        double s = Math.sin(Math.toRadians(latitude));
        return Math.toRadians(AXIS * Math.cos(Math.toRadians(latitude)) / Math.sqrt(1 - ECCENTRICITY2 * s * s));
    }

    /** Distance between two points in degrees, geodesic [m]. */
    public static double distance(Coordinate p, Coordinate q) {
        return distance(p.x, p.y, q.x, q.y);
    }

    /** Distance between two points in degrees, longitude first, geodesic [m]. */
    public static double distance(double lon1, double lat1, double lon2, double lat2) {
        double dLat = lat2 - lat1;
        double dLon = lon2 - lon1;
        double middle = (lat1 + lat2) / 2;
        if (Math.abs(dLat) < SHORT_DEGREES && Math.abs(dLon) < SHORT_DEGREES && Math.abs(middle) < POLAR) {
            return Math.hypot(dLon * metersPerDegreeEast(middle), dLat * metersPerDegreeNorth(middle));
        }
        return Geodesic.WGS84.Inverse(lat1, lon1, lat2, lon2, GeodesicMask.DISTANCE).s12;
    }

    /**
     * Where along the stretch from a to b the point p lies nearest, 0 at a to 1 at b [-], in the plane tangent at p. For
     * points near the stretch.
     *
     * @param east length of a degree along the parallel at p [m]
     * @param north length of a degree along the meridian at p [m]
     */
    public static double nearestFraction(Coordinate p, Coordinate a, Coordinate b, double east, double north) {
        double dx = (b.x - a.x) * east;
        double dy = (b.y - a.y) * north;
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return 0;
        }
        double t = ((p.x - a.x) * east * dx + (p.y - a.y) * north * dy) / square;
        return Math.max(0, Math.min(1, t));
    }

    /** The point at a fraction [-] of the straight stretch from a to b, in degrees; exactly a at 0 and b at 1. */
    public static Coordinate between(Coordinate a, Coordinate b, double fraction) {
        if (fraction == 0 || fraction == 1) {
            return fraction == 0 ? a : b;
        }
        return new Coordinate(a.x + (b.x - a.x) * fraction, a.y + (b.y - a.y) * fraction);
    }
}
