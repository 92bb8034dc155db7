// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.Locale;
import java.util.Optional;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import org.geotools.api.referencing.operation.TransformException;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;

/**
 * The coordinate system of a layer, and the way between it and WGS 84 degrees. Longitude or easting comes first always,
 * whatever order the system's authority gives. This package is the only place that names a coordinate system. Immutable.
 *
 * <p>Systems on the ellipsoid of WGS 84 or GRS 80 without a stated shift are taken as WGS 84 (they agree within 2 m);
 * older datums without one raise {@link #doubt()}.
 */
public final class LayerCrs {
    private static final LayerCrs WGS84 = new LayerCrs(CrsBuilder.fromCode("OGC:CRS84"));
    private static final double MAX_LATITUDE = 90;
    /** Longitudes up to a full turn are read, since layers over the antimeridian often run from 0 to 360. */
    private static final double MAX_LONGITUDE = 360;

    private final CrsBuilder.Built built;
    private final MathTransform inverse;

    private LayerCrs(CrsBuilder.Built built) {
        this.built = built;
        this.inverse = built.toLonLat().map(LayerCrs::inverse).orElse(null);
    }

    private static MathTransform inverse(MathTransform way) {
        try {
            return way.inverse();
        } catch (NoninvertibleTransformException e) {
            throw new GeoDataException("coordinate system: its projection cannot be inverted; give another", e);
        }
    }

    /** WGS 84 degrees, longitude first. */
    public static LayerCrs wgs84() {
        return WGS84;
    }

    /**
     * From a code or from well-known text.
     *
     * @param text a code (EPSG:32726, ESRI:102008, OGC:CRS84, also as URN or address), or well-known text of either
     *     version (OGC 01-009 as in .prj files and GeoPackages, or ISO 19162)
     * @throws GeoDataException if it is neither, or a code or method that is not known
     */
    public static LayerCrs of(String text) {
        String stripped = text.strip();
        Optional<String> code = CrsCodes.normalize(stripped);
        if (code.isPresent()) {
            return new LayerCrs(CrsBuilder.fromCode(code.get()));
        }
        if (stripped.indexOf('[') < 0 && stripped.indexOf('(') < 0) {
            throw new GeoDataException("coordinate system \"" + stripped
                    + "\": is neither a code such as EPSG:32726 nor well-known text; give one of these");
        }
        return new LayerCrs(CrsBuilder.fromTree(WktNode.parse(stripped)));
    }

    /** Name for people, with its code where it has one. */
    public String name() {
        return built.name();
    }

    /** Whether its coordinates are longitude and latitude. */
    public boolean isDegrees() {
        return built.degrees();
    }

    /** What is doubtful about places given in it, as one line for the user; empty where nothing is. */
    public Optional<String> doubt() {
        return built.doubt();
    }

    /**
     * Longitude and latitude, WGS 84 degrees, of a point given in this system.
     *
     * @param x easting or longitude, in the system's unit
     * @param y northing or latitude, in the system's unit
     * @return longitude (-180 to 180) and latitude
     * @throws GeoDataException if the point is none of the system's
     */
    public double[] toLonLat(double x, double y) {
        checkDegrees(x, y);
        double[] lonLat = through(built.toLonLat().orElse(null), x, y);
        if (!isPlace(lonLat[0], lonLat[1])) {
            throw outside(x, y, null);
        }
        lonLat[0] = Geodesy.wrap(lonLat[0]);
        return lonLat;
    }

    private void checkDegrees(double x, double y) {
        if (built.degrees() && !(Math.abs(y) <= MAX_LATITUDE && Math.abs(x) <= MAX_LONGITUDE)) {
            throw new GeoDataException(point(x, y) + " is not a place in degrees: longitude comes first (-180 to 180),"
                    + " then latitude (-90 to 90); correct the order, or give the system the numbers are in as"
                    + " rivers.crs");
        }
    }

    private static boolean isPlace(double longitude, double latitude) {
        return Math.abs(latitude) <= MAX_LATITUDE && Double.isFinite(longitude);
    }

    /**
     * The point of this system at a longitude and latitude.
     *
     * @param longitude WGS 84 degrees
     * @param latitude WGS 84 degrees
     * @return x and y in the system's unit, easting or longitude first
     */
    public double[] fromLonLat(double longitude, double latitude) {
        double[] xy = through(inverse, longitude, latitude);
        if (!(Double.isFinite(xy[0]) && Double.isFinite(xy[1]))) {
            throw outside(longitude, latitude, null);
        }
        return xy;
    }

    /** A copy of a geometry of this system, in WGS 84 degrees, longitude first; height and measure stay. */
    public Geometry toLonLat(Geometry geometry) {
        return Reshape.sequences(geometry, this::toLonLat);
    }

    private void toLonLat(CoordinateSequence points) {
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.getX(i);
            xy[2 * i + 1] = points.getY(i);
            checkDegrees(xy[2 * i], xy[2 * i + 1]);
        }
        double[] lonLat = xy.clone();
        transform(built.toLonLat().orElse(null), lonLat, xy);
        for (int i = 0; i < points.size(); i++) {
            if (!isPlace(lonLat[2 * i], lonLat[2 * i + 1])) {
                throw outside(xy[2 * i], xy[2 * i + 1], null);
            }
            points.setOrdinate(i, CoordinateSequence.X, Geodesy.wrap(lonLat[2 * i]));
            points.setOrdinate(i, CoordinateSequence.Y, lonLat[2 * i + 1]);
        }
    }

    /**
     * Geodesic distance [m] between the places that this system and another give the same numbers, infinite where one of
     * them has no such point. Small for two spellings of one system, large for different ones.
     */
    public double disagreement(LayerCrs other, double x, double y) {
        try {
            double[] mine = toLonLat(x, y);
            double[] theirs = other.toLonLat(x, y);
            return Geodesy.distance(mine[0], mine[1], theirs[0], theirs[1]);
        } catch (GeoDataException noSuchPoint) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private double[] through(MathTransform way, double x, double y) {
        double[] point = {x, y};
        transform(way, point, point.clone());
        return point;
    }

    /** Transforms pairs in place; {@code given} is what they were, for the message. */
    private void transform(MathTransform way, double[] pairs, double[] given) {
        if (way == null) {
            return;
        }
        try {
            way.transform(pairs, 0, pairs, 0, pairs.length / 2);
        } catch (TransformException | AssertionError e) {
            if (given.length == 2) {
                throw outside(given[0], given[1], e);
            }
            for (int i = 0; i < given.length; i += 2) {
                through(way, given[i], given[i + 1]);
            }
            throw outside(given[0], given[1], e);
        }
    }

    private GeoDataException outside(double x, double y, Throwable cause) {
        return new GeoDataException(
                point(x, y) + " lies outside of what " + name()
                        + " covers; check the numbers, or give the system they are in as rivers.crs",
                cause);
    }

    private static String point(double x, double y) {
        return "x = " + number(x) + ", y = " + number(y);
    }

    private static String number(double value) {
        return Math.abs(value) < 1000
                ? String.format(Locale.ROOT, "%.6g", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    @Override
    public String toString() {
        return name();
    }
}
