// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Stretches;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.crs.PointReader;
import org.silverwake.geo.crs.PointSystem;

/** What to tell about a point that is too far from every reach: how far, which reach, and a likely slip of the pen. */
final class FarPoint {
    private static final double MINUTES = 60;
    private static final double HUNDRED = 100;

    private FarPoint() {}

    static String text(PointRequest request, Coordinate at, RiverMap map, Stretches stretches) {
        StringBuilder text = new StringBuilder(Positions.name(request) + ": ");
        Optional<Stretches.Hit> nearest = stretches.nearest(at);
        if (nearest.isEmpty()) {
            return text.append("the network has no reach near it").toString();
        }
        Stretches.Hit hit = nearest.get();
        text.append("lies ").append(distance(hit.distance())).append(" from the nearest reach, ");
        text.append(RiverNames.of(map.reach(hit.line())));
        text.append("; at most ").append(distance(request.maxDistanceMeters())).append(" is allowed");
        guess(request, at, stretches)
                .ifPresentOrElse(
                        text::append, () -> text.append("; correct the position, or allow a larger snap-distance"));
        return text.toString();
    }

    static String distance(double meters) {
        if (meters < 10) {
            return String.format(Locale.ROOT, "%.1f m", meters);
        }
        return meters < 1000
                ? String.format(Locale.ROOT, "%.0f m", meters)
                : String.format(Locale.ROOT, "%.1f km", meters / 1000);
    }

    private static Optional<String> guess(PointRequest request, Coordinate at, Stretches stretches) {
        PointReader reader = new PointReader(LayerCrs.wgs84());
        for (PointSystem other : request.system().slips()) {
            try {
                PointReader.Fix fix = reader.read(other, request.x(), request.y());
                Coordinate c = new Coordinate(fix.longitude(), fix.latitude());
                if (!stretches.within(c, request.maxDistanceMeters()).isEmpty()) {
                    return Optional.of("; in " + other.text() + " it would lie on the network: is that it?");
                }
            } catch (GeoDataException noSuchPoint) {
                continue;
            }
        }
        for (Map.Entry<String, Coordinate> slip : slips(at).entrySet()) {
            Coordinate c = slip.getValue();
            if (Math.abs(c.y) <= 90
                    && !stretches.within(c, request.maxDistanceMeters()).isEmpty()) {
                return Optional.of("; " + slip.getKey() + " (" + Positions.degrees(c.x, c.y)
                        + ", longitude first) it would lie on the network: is that it?");
            }
        }
        return Optional.empty();
    }

    private static Map<String, Coordinate> slips(Coordinate at) {
        double lon = minutes(at.x);
        double lat = minutes(at.y);
        Map<String, Coordinate> slips = new LinkedHashMap<>();
        slips.put("with longitude and latitude swapped", new Coordinate(at.y, at.x));
        slips.put("with the longitude's sign changed", new Coordinate(-at.x, at.y));
        slips.put("with the latitude's sign changed", new Coordinate(at.x, -at.y));
        slips.put("with both signs changed", new Coordinate(-at.x, -at.y));
        slips.put("read as degrees and minutes", new Coordinate(lon, lat));
        slips.put("with the longitude read as degrees and minutes", new Coordinate(lon, at.y));
        slips.put("with the latitude read as degrees and minutes", new Coordinate(at.x, lat));
        slips.put("with longitude and latitude swapped and a sign changed", new Coordinate(-at.y, at.x));
        slips.put("swapped with the other sign changed", new Coordinate(at.y, -at.x));
        return slips;
    }

    /** 12.30 meant as 12 degrees 30 minutes is 12.5 degrees; values that cannot be meant so stay. */
    static double minutes(double degrees) {
        double whole = degrees < 0 ? Math.ceil(degrees) : Math.floor(degrees);
        double minutes = (degrees - whole) * HUNDRED;
        return Math.abs(minutes) < MINUTES ? whole + minutes / MINUTES : degrees;
    }
}
