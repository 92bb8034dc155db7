// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

/** The demo's plane: x km east and y km north of 20 W 30 S, with the lengths of a degree there. */
final class Plane {
    /** Lengths of a degree at 30 S on WGS 84 [km]. */
    private static final double KM_PER_DEGREE_EAST = 96.486;

    private static final double KM_PER_DEGREE_NORTH = 110.852;
    private static final double DIGITS = 1e6;

    private Plane() {}

    /** A place on the plane. */
    record Spot(double x, double y) {
        Spot plus(double dx, double dy) {
            return new Spot(x + dx, y + dy);
        }

        double distance(Spot other) {
            double dx = other.x - x;
            double dy = other.y - y;
            return StrictMath.sqrt(dx * dx + dy * dy);
        }

        Spot towards(Spot other, double share) {
            return new Spot(x + share * (other.x - x), y + share * (other.y - y));
        }

        /** Degrees east, to six decimals (0.1 m). */
        double longitude() {
            return StrictMath.rint((-20 + x / KM_PER_DEGREE_EAST) * DIGITS) / DIGITS;
        }

        /** Degrees north, to six decimals (0.1 m). */
        double latitude() {
            return StrictMath.rint((-30 + y / KM_PER_DEGREE_NORTH) * DIGITS) / DIGITS;
        }
    }

    static Spot fromDegrees(double longitude, double latitude) {
        return new Spot((longitude + 20) * KM_PER_DEGREE_EAST, (latitude + 30) * KM_PER_DEGREE_NORTH);
    }
}
