// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/**
 * From places on the ground to places on the page. An equirectangular frame on the WGS 84 ellipsoid whose middle is the map's: lengths are
 * true there (radii of curvature N cos(latitude) and M, Snyder 1987, Map projections, USGS Professional Paper 1395, equations
 * 4-20 and 4-19), off by less than 1 % within 1 degree of latitude at 30 degrees; north is up everywhere. Longitudes enter by their
 * difference from the middle, so a map may lie across the antimeridian.
 */
public final class MapFrame {
    private static final double SEMI_MAJOR = 6378137;
    private static final double FLATTENING = 1 / 298.257223563;
    private static final double E2 = FLATTENING * (2 - FLATTENING);
    private static final double SMALLEST_EXTENT = 200;
    private static final double LOWEST = 0.5;

    private final Rectangle2D view;
    private final double longitude;
    private final double latitude;
    private final double metersPerLongitude;
    private final double metersPerLatitude;
    private final double height;
    private final double pointsPerMeter;

    /**
     * Fits places into a view.
     *
     * @param places one or more, WGS 84 degrees, longitude first
     * @param view where on the page [points]
     * @param padding kept free around them [points], less than half the view
     */
    public MapFrame(List<Coordinate> places, Rectangle2D view, double padding) {
        this.view = (Rectangle2D) view.clone();
        double first = places.get(0).x;
        double west = 0;
        double east = 0;
        double south = 90;
        double north = -90;
        for (Coordinate place : places) {
            double turn = wrap(place.x - first);
            west = Math.min(west, turn);
            east = Math.max(east, turn);
            south = Math.min(south, place.y);
            north = Math.max(north, place.y);
        }
        longitude = wrap(first + (west + east) / 2);
        latitude = (south + north) / 2;
        double phi = Math.toRadians(latitude);
        double w = 1 - E2 * Math.sin(phi) * Math.sin(phi);
        metersPerLongitude = Math.toRadians(1) * SEMI_MAJOR / Math.sqrt(w) * Math.cos(phi);
        metersPerLatitude = Math.toRadians(1) * SEMI_MAJOR * (1 - E2) / Math.pow(w, 1.5);
        double width = Math.max(SMALLEST_EXTENT, (east - west) * metersPerLongitude);
        height = Math.max(SMALLEST_EXTENT, (north - south) * metersPerLatitude);
        pointsPerMeter = Math.min((view.getWidth() - 2 * padding) / width, (view.getHeight() - 2 * padding) / height);
    }

    /** The same, with a view no higher than the places need at the scale that fills its width, but at least half the room. */
    public static MapFrame fitted(List<Coordinate> places, Rectangle2D room, double padding) {
        MapFrame whole = new MapFrame(places, room, padding);
        double needed = 2 * padding + whole.height * whole.pointsPerMeter;
        double height = Math.min(room.getHeight(), Math.max(LOWEST * room.getHeight(), needed));
        Rectangle2D view = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), height);
        return new MapFrame(places, view, padding);
    }

    private static double wrap(double degrees) {
        return degrees - 360 * Math.floor((degrees + 180) / 360);
    }

    /** The map's part of the page [points]. */
    public Rectangle2D view() {
        return (Rectangle2D) view.clone();
    }

    /** A place [degrees] on the page [points]. */
    public Point2D toPage(double lon, double lat) {
        return new Point2D.Double(x(lon), y(lat));
    }

    /** A point of the page [points] as longitude (x) and latitude (y) [degrees]. */
    public Coordinate toGround(double x, double y) {
        return new Coordinate(
                wrap(longitude + (x - view.getCenterX()) / (metersPerLongitude * pointsPerMeter)),
                latitude - (y - view.getCenterY()) / (metersPerLatitude * pointsPerMeter));
    }

    /** A copy of a geometry [degrees] on the page [points]. */
    public Geometry toPage(Geometry ground) {
        Geometry page = ground.copy();
        page.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int k) {
                points.setOrdinate(k, 0, x(points.getX(k)));
                points.setOrdinate(k, 1, y(points.getY(k)));
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return page;
    }

    /** A line of the ground on the page, thinned. */
    PageLine pageLine(LineString ground) {
        CoordinateSequence points = ground.getCoordinateSequence();
        double[] xs = new double[points.size()];
        double[] ys = new double[points.size()];
        for (int k = 0; k < xs.length; k++) {
            xs[k] = x(points.getX(k));
            ys[k] = y(points.getY(k));
        }
        return PageLine.of(xs, ys);
    }

    private double x(double lon) {
        return view.getCenterX() + wrap(lon - longitude) * metersPerLongitude * pointsPerMeter;
    }

    private double y(double lat) {
        return view.getCenterY() - (lat - latitude) * metersPerLatitude * pointsPerMeter;
    }

    /** Scale at the middle of the map: points of the page per meter of the ground. */
    public double pointsPerMeter() {
        return pointsPerMeter;
    }

    /** Degrees of longitude to a point of the page, above 0. */
    double degreesEastPerPoint() {
        return 1 / (metersPerLongitude * pointsPerMeter);
    }

    /** Degrees of latitude to a point of the page, above 0. */
    double degreesNorthPerPoint() {
        return 1 / (metersPerLatitude * pointsPerMeter);
    }

    /** Scale denominator as styles use it, on the page as laid out, 1/72 inch to the point. */
    double scaleDenominator() {
        return 72 / 0.0254 / pointsPerMeter;
    }
}
