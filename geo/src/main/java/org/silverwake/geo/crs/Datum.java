// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.Comparator;
import java.util.List;

/**
 * A geodetic datum with its known ways to WGS 84.
 *
 * @param code EPSG code of its degrees, longitude and latitude, such as EPSG:4618
 * @param name EPSG name
 * @param ellipsoid EPSG name
 * @param semiMajor [m]
 * @param inverseFlattening [-]
 * @param shifts ways to WGS 84; none where EPSG gives none that is a shift of axes
 */
record Datum(
        String code, String name, String ellipsoid, double semiMajor, double inverseFlattening, List<Shift> shifts) {
    private static final double FULL_TURN = 360;

    Datum {
        shifts = List.copyOf(shifts);
    }

    /**
     * A way to WGS 84 by seven parameters (EPSG methods 9603 and 9606, position vector rotation), or three and zeros.
     *
     * @param operation EPSG code
     * @param parameters dx, dy, dz [m], rx, ry, rz [seconds of arc], scale [parts per million], as TOWGS84 has them
     * @param accuracy as EPSG states it [m]; infinite where it states none
     * @param area where it holds, in words
     * @param south of its box [degrees]
     * @param north of its box [degrees]
     * @param west of its box [degrees]
     * @param east of its box [degrees]; less than west where the box holds the antimeridian
     * @param sea whether its area lies at sea alone
     */
    record Shift(
            String operation,
            List<Double> parameters,
            double accuracy,
            String area,
            double south,
            double north,
            double west,
            double east,
            boolean sea) {
        Shift {
            parameters = List.copyOf(parameters);
        }

        boolean covers(double longitude, double latitude) {
            boolean along =
                    west <= east ? longitude >= west && longitude <= east : longitude >= west || longitude <= east;
            return along && latitude >= south && latitude <= north;
        }

        private double box() {
            return (north - south) * ((east - west + FULL_TURN) % FULL_TURN);
        }

        /** What it is, for people: its EPSG code, area and accuracy. */
        String title() {
            return operation + " (" + area + "; "
                    + (Double.isInfinite(accuracy) ? "accuracy not known" : "good to " + whole(accuracy) + " m") + ")";
        }

        /** As far as the accuracy tells [m]; of those that tell none, 1. */
        double doubt() {
            return Double.isInfinite(accuracy) ? 1 : accuracy;
        }

        private static String whole(double meters) {
            return meters == Math.rint(meters) ? String.valueOf((long) meters) : String.valueOf(meters);
        }

        private int number() {
            return Integer.parseInt(operation.replaceAll("\\D", ""));
        }
    }

    /**
     * The ways whose area's box holds a place, the one of best stated accuracy first, of equal ones the newest; those of
     * areas at sea and those without a stated accuracy last. A box is no border: a neighbor country's may be among them,
     * and first.
     */
    List<Shift> shiftsAt(double longitude, double latitude) {
        return shifts.stream()
                .filter(shift -> shift.covers(longitude, latitude))
                .sorted(Comparator.comparing(Shift::sea)
                        .thenComparingDouble(Shift::accuracy)
                        .thenComparing(Comparator.comparingInt(Shift::number).reversed())
                        .thenComparingDouble(Shift::box))
                .toList();
    }

    String title() {
        return name + " (" + code + ")";
    }

    /** Well-known text of its degrees. */
    String degrees(Shift shift) {
        return "GEOGCS[\"" + name + "\",DATUM[\"" + name + "\",SPHEROID[\"" + ellipsoid + "\"," + semiMajor + ","
                + inverseFlattening + "],TOWGS84" + shift.parameters() + "],PRIMEM[\"Greenwich\",0],"
                + "UNIT[\"degree\",0.017453292519943295]]";
    }

    /** Well-known text of a UTM zone on it (EPSG method 9807 with the parameters of UTM). */
    String utm(int zone, boolean south, Shift shift) {
        return "PROJCS[\"" + name + " / UTM zone " + zone + (south ? "S" : "N") + "\"," + degrees(shift)
                + ",PROJECTION[\"Transverse_Mercator\"],PARAMETER[\"central_meridian\"," + (zone * 6 - 183)
                + "],PARAMETER[\"latitude_of_origin\",0],PARAMETER[\"scale_factor\",0.9996],"
                + "PARAMETER[\"false_easting\",500000],PARAMETER[\"false_northing\"," + (south ? 10_000_000 : 0)
                + "],UNIT[\"metre\",1]]";
    }
}
