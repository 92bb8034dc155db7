// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * One feature to write.
 *
 * @param geometry WGS 84 degrees, x = longitude, y = latitude; null for a feature without place
 * @param values one per column, in their order; null where missing
 */
public record Row(Geometry geometry, List<Object> values) {
    /** Copies the values. */
    public Row {
        values = Collections.unmodifiableList(new ArrayList<>(values));
    }

    /**
     * A line.
     *
     * @param lonLat longitude, latitude, longitude, latitude ... [degrees], at least two points
     * @param values one per column
     * @throws IllegalArgumentException if there are fewer than two points or half a point
     */
    public static Row line(double[] lonLat, List<Object> values) {
        if (lonLat.length < 4 || lonLat.length % 2 != 0) {
            throw new IllegalArgumentException("a line of " + lonLat.length
                    + " coordinates is not allowed; give longitude and latitude of two or more points");
        }
        Coordinate[] points = new Coordinate[lonLat.length / 2];
        for (int k = 0; k < points.length; k++) {
            points[k] = new Coordinate(lonLat[2 * k], lonLat[2 * k + 1]);
        }
        return new Row(new GeometryFactory().createLineString(points), values);
    }

    /**
     * A point.
     *
     * @param longitude [degrees], -180 to 180
     * @param latitude [degrees], -90 to 90
     * @param values one per column
     */
    public static Row point(double longitude, double latitude, List<Object> values) {
        return new Row(new GeometryFactory().createPoint(new Coordinate(longitude, latitude)), values);
    }
}
