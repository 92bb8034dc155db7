// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.geo.crs.PointSystem;

/**
 * A point to be placed on the network.
 *
 * @param kind site, place, gauge or abstraction
 * @param name its name
 * @param where file and line that gave it, for messages
 * @param x longitude [degrees], or easting in the system's unit
 * @param y latitude [degrees], or northing in the system's unit
 * @param system the system of x and y
 * @param accuracyMeters how far off the position may be, as the person or the receiver stated it [m]
 * @param maxDistanceMeters farthest reach accepted [m]
 * @param riverName name of the river it should lie on, if given
 */
public record PointRequest(
        String kind,
        String name,
        String where,
        double x,
        double y,
        PointSystem system,
        OptionalDouble accuracyMeters,
        double maxDistanceMeters,
        Optional<String> riverName) {
    /** A point in WGS 84 degrees or in the layer's system, of no stated accuracy. */
    public PointRequest(
            String kind,
            String name,
            String where,
            double x,
            double y,
            boolean inLayerCrs,
            double maxDistanceMeters,
            Optional<String> riverName) {
        this(
                kind,
                name,
                where,
                x,
                y,
                inLayerCrs ? PointSystem.layer() : PointSystem.wgs84(),
                OptionalDouble.empty(),
                maxDistanceMeters,
                riverName);
    }
}
