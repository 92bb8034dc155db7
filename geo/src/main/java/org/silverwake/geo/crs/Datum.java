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
    Datum {
        shifts = List.copyOf(shifts);
    }

    /**
     * A way to WGS 84 by seven parameters (EPSG methods 9603 and 9606, position vector rotation), or three and zeros.
     *
     * @param operation EPSG code
     * @param parameters dx, dy, dz [m], rx, ry, rz [seconds of arc], scale [parts per million], as TOWGS84 has them
     * @param accuracy as EPSG states it [m]
     * @param area where it holds, in words
     * @param south of its box [degrees]
     * @param north of its box [degrees]
     * @param west of its box [degrees]
     * @param east of its box [degrees]
     */
    record Shift(
            String operation,
            List<Double> parameters,
            double accuracy,
            String area,
            double south,
            double north,
            double west,
            double east) {
        Shift {
            parameters = List.copyOf(parameters);
        }

        boolean covers(double longitude, double latitude) {
            return latitude >= south && latitude <= north && longitude >= west && longitude <= east;
        }

        private double box() {
            return (north - south) * (east - west);
        }

        private int number() {
            return Integer.parseInt(operation.replaceAll("\\D", ""));
        }
    }

    /** The ways that hold at a place, the one of best stated accuracy first, of equal ones the newest. */
    List<Shift> shiftsAt(double longitude, double latitude) {
        return shifts.stream()
                .filter(shift -> shift.covers(longitude, latitude))
                .sorted(Comparator.comparingDouble(Shift::accuracy)
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
