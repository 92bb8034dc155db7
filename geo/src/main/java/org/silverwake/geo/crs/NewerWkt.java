// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.geo.GeoDataException;

/**
 * From the newer well-known text (ISO 19162:2019: PROJCRS, GEOGCRS, BOUNDCRS, COMPOUNDCRS) to the older one (OGC
 * 01-009), longitude or easting first. Kept: ellipsoid, prime meridian, method with its parameters, unit, and a bound
 * system's seven-parameter shift to WGS 84.
 */
final class NewerWkt {
    private static final double DEGREE = Math.PI / 180;
    private static final double SAME_UNIT = 1e-9;
    private static final String[] UNITS = {"LENGTHUNIT", "ANGLEUNIT", "SCALEUNIT", "UNIT"};
    private static final String[] GEOGRAPHIC = {
        "GEOGCRS", "GEODCRS", "GEOGRAPHICCRS", "GEODETICCRS", "BASEGEOGCRS", "BASEGEODCRS"
    };
    /** EPSG operation parameter codes 8605 to 8611, by the start of their names. */
    private static final List<String> SHIFT = List.of(
            "x-axis translation",
            "y-axis translation",
            "z-axis translation",
            "x-axis rotation",
            "y-axis rotation",
            "z-axis rotation",
            "scale difference");
    /** Parameter names of EPSG methods that the library knows under another name only. */
    private static final Map<String, String> PARAMETERS = Map.of(
            "latitude of standard parallel", "standard_parallel_1",
            "latitude of pseudo standard parallel", "pseudo_standard_parallel_1",
            "co-latitude of cone axis", "azimuth");

    private NewerWkt() {}

    static boolean speaks(WktNode root) {
        return root.is(GEOGRAPHIC) || root.is("PROJCRS", "PROJECTEDCRS", "BOUNDCRS", "COMPOUNDCRS");
    }

    static WktNode toOlder(WktNode root) {
        return switch (root.keyword()) {
            case "COMPOUNDCRS" -> toOlder(root.need("PROJCRS", "PROJECTEDCRS", "BOUNDCRS", "GEOGCRS", "GEODCRS"));
            case "BOUNDCRS" -> bound(root);
            case "PROJCRS", "PROJECTEDCRS" -> projected(root, Optional.empty());
            default -> geographic(root, Optional.empty());
        };
    }

    private static WktNode bound(WktNode root) {
        WktNode inner = (WktNode) root.need("SOURCECRS").arguments().get(0);
        Optional<WktNode> shift = root.child("ABRIDGEDTRANSFORMATION").flatMap(NewerWkt::shift);
        if (inner.is("COMPOUNDCRS")) {
            inner = inner.need("PROJCRS", "PROJECTEDCRS", "GEOGCRS", "GEODCRS");
        }
        return inner.is("PROJCRS", "PROJECTEDCRS") ? projected(inner, shift) : geographic(inner, shift);
    }

    /** Seven parameters in the position vector convention; none where the shift is by a grid. */
    private static Optional<WktNode> shift(WktNode transformation) {
        Double[] values = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0};
        boolean any = false;
        for (WktNode parameter : transformation.children("PARAMETER")) {
            int place = SHIFT.indexOf(parameter.name().toLowerCase(Locale.ROOT));
            if (place >= 0) {
                values[place] = parameter.number(0);
                any = true;
            }
        }
        // Abridged transformations give the scale as a factor near 1; WKT 1 wants parts per million.
        double scale = values[6];
        values[6] = Math.abs(scale - 1) < 0.1 ? (scale - 1) * 1e6 : scale;
        String method = transformation.child("METHOD").map(WktNode::name).orElse("");
        if (method.toLowerCase(Locale.ROOT).startsWith("coordinate frame")) {
            for (int i = 3; i < 6; i++) {
                values[i] = -values[i];
            }
        }
        return any ? Optional.of(new WktNode("TOWGS84", List.of(values))) : Optional.empty();
    }

    private static WktNode geographic(WktNode root, Optional<WktNode> shift) {
        if (root.child("CS")
                .map(cs -> cs.arguments().contains(new WktNode.Word("Cartesian")))
                .orElse(false)) {
            throw new GeoDataException("coordinate system \"" + root.name()
                    + "\" counts from the earth's centre; give one of longitude and latitude, or a projected one");
        }
        return geographic(root, shift, angleUnit(root));
    }

    private static WktNode geographic(WktNode root, Optional<WktNode> shift, double unit) {
        WktNode datum = root.need("DATUM", "GEODETICDATUM", "TRF", "ENSEMBLE");
        WktNode ellipsoid = datum.need("ELLIPSOID", "SPHEROID");
        double semiMajor = ellipsoid.number(0)
                * ellipsoid.child(UNITS).map(u -> u.number(0)).orElse(1.0);
        List<Object> old = new ArrayList<>();
        old.add(datum.name());
        old.add(WktNode.of("SPHEROID", ellipsoid.name(), semiMajor, ellipsoid.number(1)));
        shift.ifPresent(old::add);
        Optional<WktNode> meridian = root.child("PRIMEM", "PRIMEMERIDIAN");
        double offset = meridian.map(
                        m -> m.number(0) * m.child(UNITS).map(u -> u.number(0)).orElse(angleUnit(root)) / unit)
                .orElse(0.0);
        List<Object> arguments = new ArrayList<>(List.of(
                root.name(),
                new WktNode("DATUM", old),
                WktNode.of("PRIMEM", meridian.map(WktNode::name).orElse("Greenwich"), offset),
                WktNode.of("UNIT", isDegree(unit) ? "degree" : "angle", isDegree(unit) ? DEGREE : unit)));
        authority(root).ifPresent(arguments::add);
        return new WktNode("GEOGCS", arguments);
    }

    private static WktNode projected(WktNode root, Optional<WktNode> shift) {
        WktNode base = root.need("BASEGEOGCRS", "BASEGEODCRS");
        WktNode conversion = root.need("CONVERSION");
        double length = unit(root).orElse(1.0);
        double baseAngle = angleUnit(base);
        List<Object> arguments = new ArrayList<>();
        arguments.add(root.name());
        arguments.add(geographic(base, shift, DEGREE));
        arguments.add(
                WktNode.of("PROJECTION", conversion.need("METHOD", "PROJECTION").name()));
        for (WktNode parameter : conversion.children("PARAMETER")) {
            arguments.add(parameter(parameter, length, baseAngle));
        }
        arguments.add(WktNode.of("UNIT", length == 1 ? "metre" : "length", length));
        root.children("AXIS").stream().map(NewerWkt::axis).forEach(arguments::add);
        authority(root).ifPresent(arguments::add);
        return new WktNode("PROJCS", arguments);
    }

    private static WktNode axis(WktNode axis) {
        Object direction = axis.arguments().size() > 1 ? axis.arguments().get(1) : "";
        String word = direction instanceof WktNode.Word w ? w.text() : "other";
        return WktNode.of("AXIS", axis.name(), new WktNode.Word(word.toUpperCase(Locale.ROOT)));
    }

    private static WktNode parameter(WktNode parameter, double length, double baseAngle) {
        String name = parameter.name().toLowerCase(Locale.ROOT);
        double own = parameter.child(UNITS).map(u -> u.number(0)).orElse(Double.NaN);
        double value = parameter.number(0);
        if (name.startsWith("scale")) {
            value *= Double.isNaN(own) ? 1 : own;
        } else if (name.contains("easting") || name.contains("northing")) {
            value *= Double.isNaN(own) ? 1 : own / length;
        } else {
            double angle = Double.isNaN(own) ? baseAngle : own;
            value *= isDegree(angle) ? 1 : angle / DEGREE;
        }
        return WktNode.of("PARAMETER", PARAMETERS.getOrDefault(name, parameter.name()), value);
    }

    private static Optional<WktNode> authority(WktNode root) {
        return root.code().map(code -> code.split(":", 2)).map(c -> WktNode.of("AUTHORITY", c[0], c[1]));
    }

    private static double angleUnit(WktNode root) {
        double unit = unit(root).orElse(DEGREE);
        return isDegree(unit) ? DEGREE : unit;
    }

    private static Optional<Double> unit(WktNode root) {
        Optional<WktNode> own = root.child(UNITS);
        if (own.isEmpty()) {
            own = root.child("AXIS").flatMap(axis -> axis.child(UNITS));
        }
        Optional<Double> unit = own.map(u -> u.number(0));
        if (unit.isPresent() && !(unit.get() > 0)) {
            throw new GeoDataException("coordinate system text: the unit of \"" + root.name() + "\" is " + unit.get());
        }
        return unit;
    }

    private static boolean isDegree(double unit) {
        return Math.abs(unit / DEGREE - 1) < SAME_UNIT;
    }
}
