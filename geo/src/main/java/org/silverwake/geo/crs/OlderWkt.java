// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.geo.GeoDataException;

/**
 * Brings well-known text of any dialect to the one that the library reads rightly: older version, one horizontal system,
 * easting first, and the library's names for methods that programs write in different ways.
 */
final class OlderWkt {
    private static final double DEGREE = Math.PI / 180;
    private static final String SOUTHWARD = "Transverse Mercator (South Orientated)";
    private static final Map<String, String> METHODS = Map.of(
            "transverse mercator south orientated", SOUTHWARD,
            "transverse mercator south oriented", SOUTHWARD,
            "equidistant conic", "Equidistant_Conic");
    /** Methods that the library computes on a sphere whatever the ellipsoid: kilometers off, as a comparison with PROJ 9.1 showed. */
    private static final Set<String> REFUSED = Set.of(
            "equal earth",
            "cylindrical equal area",
            "lambert cylindrical equal area",
            "lambert cylindrical equal area spherical",
            "behrmann");

    private OlderWkt() {}

    static WktNode tidy(WktNode given) {
        WktNode root = NewerWkt.speaks(given) ? NewerWkt.toOlder(given) : given;
        if (root.is("COMPD_CS")) {
            root = root.need("PROJCS", "GEOGCS");
        }
        if (!root.is("PROJCS", "GEOGCS")) {
            throw new GeoDataException("coordinate system \"" + root.name() + "\" (" + root.keyword()
                    + ") has no tie to the earth; give rivers.crs as a code such as EPSG:32726");
        }
        boolean westward =
                root.children("AXIS").stream().anyMatch(axis -> axis.arguments().contains(new WktNode.Word("WEST")));
        WktNode bare = root.without("EXTENSION", "METADATA", "VERTCS", "AXIS");
        if (bare.is("GEOGCS")) {
            return meridian(bare);
        }
        List<Object> arguments = new ArrayList<>();
        for (Object argument : bare.arguments()) {
            arguments.add(argument instanceof WktNode node && node.is("GEOGCS") ? meridian(node) : argument);
        }
        return method(bare.with(arguments), westward);
    }

    /** Prime meridians are in degrees in one dialect, whatever the unit; the library takes them in the unit. */
    private static WktNode meridian(WktNode geographic) {
        Optional<WktNode> unit = geographic.child("UNIT");
        Optional<WktNode> prime = geographic.child("PRIMEM");
        if (!geographic.name().startsWith("GCS_") || unit.isEmpty() || prime.isEmpty()) {
            return geographic;
        }
        double inUnit = prime.get().number(0) * DEGREE / unit.get().number(0);
        return replaced(geographic, "PRIMEM", WktNode.of("PRIMEM", prime.get().name(), inUnit));
    }

    private static WktNode method(WktNode root, boolean westward) {
        String written = root.need("PROJECTION").name();
        String plain = checked(written);
        String known = METHODS.getOrDefault(plain, written);
        if (plain.equals("polar stereographic") && Math.abs(parameter(root, "latitude_of_origin", 90)) < 90) {
            return polarByParallel(root);
        }
        if (plain.equals("krovak") && parameter(root, "x_scale", 1) < 0) {
            known = "Krovak (North Orientated)";
        }
        WktNode renamed = replaced(root, "PROJECTION", WktNode.of("PROJECTION", known));
        return westward || known.equals(SOUTHWARD) ? southwest(renamed) : renamed;
    }

    /** The bare name of a method, which must be one that is computed rightly. */
    static String checked(String method) {
        String plain =
                method.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip();
        if (REFUSED.contains(plain)) {
            throw new GeoDataException("projection \"" + method
                    + "\" is not read; give the layer in another system, such as a UTM zone or longitude and latitude");
        }
        return plain;
    }

    /** A latitude of origin off the pole is the latitude of true scale (EPSG method 9829). */
    private static WktNode polarByParallel(WktNode root) {
        List<Object> arguments = new ArrayList<>();
        for (Object argument : root.arguments()) {
            boolean isParallel = argument instanceof WktNode node
                    && node.is("PARAMETER")
                    && node.name().equalsIgnoreCase("latitude_of_origin");
            boolean isScale = argument instanceof WktNode node
                    && node.is("PARAMETER")
                    && node.name().equalsIgnoreCase("scale_factor");
            if (isParallel) {
                arguments.add(WktNode.of("PARAMETER", "standard_parallel_1", ((WktNode) argument).number(0)));
            } else if (!isScale) {
                arguments.add(argument);
            }
        }
        return replaced(
                root.with(arguments), "PROJECTION", WktNode.of("PROJECTION", "Polar Stereographic (variant B)"));
    }

    /** With axes to the west and the south, where the coordinates count that way. */
    private static WktNode southwest(WktNode root) {
        List<Object> arguments = new ArrayList<>();
        for (Object argument : root.arguments()) {
            arguments.add(argument);
            if (argument instanceof WktNode node && node.is("UNIT")) {
                arguments.add(WktNode.of("AXIS", "Westing", new WktNode.Word("WEST")));
                arguments.add(WktNode.of("AXIS", "Southing", new WktNode.Word("SOUTH")));
            }
        }
        return root.with(arguments);
    }

    private static double parameter(WktNode root, String name, double otherwise) {
        return root.children("PARAMETER").stream()
                .filter(p -> p.name().equalsIgnoreCase(name))
                .findFirst()
                .map(p -> p.number(0))
                .orElse(otherwise);
    }

    private static WktNode replaced(WktNode root, String keyword, WktNode other) {
        List<Object> arguments = new ArrayList<>();
        for (Object argument : root.arguments()) {
            arguments.add(argument instanceof WktNode node && node.is(keyword) ? other : argument);
        }
        return root.with(arguments);
    }
}
