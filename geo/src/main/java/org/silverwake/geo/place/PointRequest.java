// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.Optional;

/**
 * A point to be placed on the network.
 *
 * @param kind site, place, gauge or abstraction
 * @param name its name
 * @param where file and line that gave it, for messages
 * @param x longitude [degrees], or easting in the layer's system
 * @param y latitude [degrees], or northing in the layer's system
 * @param inLayerCrs whether x and y are in the layer's system
 * @param maxDistanceMeters farthest reach accepted [m]
 * @param riverName name of the river it should lie on, if given
 */
public record PointRequest(
        String kind,
        String name,
        String where,
        double x,
        double y,
        boolean inLayerCrs,
        double maxDistanceMeters,
        Optional<String> riverName) {}
