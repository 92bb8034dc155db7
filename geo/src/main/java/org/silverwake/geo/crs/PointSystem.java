// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.List;
import org.silverwake.geo.GeoDataException;

/**
 * The system in which a person wrote down a point. {@link PointReader} brings such points to WGS 84 degrees.
 *
 * @param kind what its two numbers are
 * @param zone UTM zone, 1 to 60; 0 where it is none
 * @param south whether the UTM zone counts from the south
 * @param datum EPSG code of the datum's degrees, or of the whole system where {@code kind} is {@code GRID}
 */
public record PointSystem(Kind kind, int zone, boolean south, String datum) {
    private static final int ZONES = 60;

    /** What the two numbers of a point are. */
    public enum Kind {
        /** x and y in the river layer's own system. */
        LAYER,
        /** Longitude and latitude in degrees, on a datum. */
        DEGREES,
        /** Easting and northing of a UTM zone [m], on a datum. */
        UTM,
        /** Easting and northing of a projected system, by its code. */
        GRID
    }

    /** Checks the zone. */
    public PointSystem {
        if (kind == Kind.UTM && (zone < 1 || zone > ZONES)) {
            throw new GeoDataException("UTM zone " + zone + " is not allowed; give 1 to 60");
        }
    }

    /** The river layer's own. */
    public static PointSystem layer() {
        return new PointSystem(Kind.LAYER, 0, false, "");
    }

    /** WGS 84 degrees, longitude first. */
    public static PointSystem wgs84() {
        return degrees(Datums.WGS84);
    }

    /** Degrees on a datum, by the EPSG code of {@link Datums#code}. */
    public static PointSystem degrees(String datum) {
        return new PointSystem(Kind.DEGREES, 0, false, datum);
    }

    /** A UTM zone on a datum. */
    public static PointSystem utm(int zone, boolean south, String datum) {
        return new PointSystem(Kind.UTM, zone, south, datum);
    }

    /** A projected system by its code, such as EPSG:29191. */
    public static PointSystem grid(String code) {
        return new PointSystem(Kind.GRID, 0, false, code);
    }

    /** UTM zones that are easily written in place of this one: the other hemisphere's and the neighbors. */
    public List<PointSystem> slips() {
        return kind == Kind.UTM
                ? List.of(
                        utm(zone, !south, datum),
                        utm(zone % ZONES + 1, south, datum),
                        utm((zone + ZONES - 2) % ZONES + 1, south, datum))
                : List.of();
    }

    /** Whether it is WGS 84 degrees. */
    public boolean isWgs84() {
        return kind == Kind.DEGREES && datum.equals(Datums.WGS84);
    }

    /** In a reader's words. */
    public String text() {
        String on = Datums.find(datum).map(Datum::title).orElse(datum.equals(Datums.WGS84) ? "WGS 84" : datum);
        return switch (kind) {
            case LAYER -> "the layer's system";
            case DEGREES -> "degrees, " + on;
            case UTM -> "UTM zone " + zone + (south ? " south, " : " north, ") + on;
            case GRID -> on;
        };
    }
}
