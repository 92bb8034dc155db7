// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.PointReader;
import org.silverwake.geo.crs.PointSystem;

/** Reads the positions of requests into WGS 84 degrees, longitude first. */
final class Positions {
    private static final double MAX_LONGITUDE = 180;
    private static final double MAX_LATITUDE = 90;

    private Positions() {}

    static String name(PointRequest request) {
        return request.where() + " " + request.kind() + " \"" + request.name() + "\"";
    }

    static String degrees(double x, double y) {
        return String.format(Locale.ROOT, "%.6f, %.6f", x, y);
    }

    /** The position; where it cannot be read, the point is added to those without a place. */
    static Optional<PointReader.Fix> read(PointRequest request, PointReader reader, List<UnplacedPoint> unplaced) {
        double x = request.x();
        double y = request.y();
        if (x == 0 && y == 0) {
            unplaced.add(UnplacedPoint.nowhere(
                    request, name(request) + ": (0, 0) is no position fix; give the place where it really is"));
            return Optional.empty();
        }
        if (request.system().kind() == PointSystem.Kind.DEGREES
                && !(Math.abs(x) <= MAX_LONGITUDE && Math.abs(y) <= MAX_LATITUDE)) {
            unplaced.add(UnplacedPoint.nowhere(
                    request,
                    name(request) + ": longitude " + x + ", latitude " + y
                            + " is no place on Earth; give longitude first (-180 to 180), then latitude (-90 to 90), in degrees"
                            + " with decimals, or easting and northing as coordinates of the layer"));
            return Optional.empty();
        }
        try {
            return Optional.of(reader.read(request.system(), x, y));
        } catch (GeoDataException e) {
            unplaced.add(UnplacedPoint.nowhere(request, name(request) + ": " + e.getMessage()));
            return Optional.empty();
        }
    }
}
