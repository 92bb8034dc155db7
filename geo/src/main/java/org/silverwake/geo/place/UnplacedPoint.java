// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;

/**
 * A point that found no place on the network.
 *
 * @param request what was asked
 * @param longitude the point as given, WGS 84 degrees; empty where its position cannot be read
 * @param latitude the point as given, WGS 84 degrees; empty where its position cannot be read
 * @param reason where, what was found, what is allowed, what to do, in one line
 */
public record UnplacedPoint(PointRequest request, OptionalDouble longitude, OptionalDouble latitude, String reason) {
    static UnplacedPoint at(PointRequest request, Coordinate at, String reason) {
        return new UnplacedPoint(request, OptionalDouble.of(at.x), OptionalDouble.of(at.y), reason);
    }

    static UnplacedPoint nowhere(PointRequest request, String reason) {
        return new UnplacedPoint(request, OptionalDouble.empty(), OptionalDouble.empty(), reason);
    }
}
