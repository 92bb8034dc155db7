// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Stretches;

/** Compares the river a point should lie on with the one it was put on. */
final class RiverNames {
    private RiverNames() {}

    /** A reach for messages: its id and its river's name. */
    static String of(RiverMap.Reach reach) {
        return reach.id() + reach.name().map(name -> " (" + name + ")").orElse("");
    }

    /** A name without case, accents and surplus spaces. */
    static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .strip()
                .replaceAll("\\s+", " ");
    }

    /** A warning where the name differs: with the distance of the nearest reach of the wanted name, if there is one. */
    static Optional<String> check(
            PointRequest request, Coordinate at, Stretches.Hit hit, RiverMap map, Stretches stretches) {
        if (request.riverName().isEmpty()) {
            return Optional.empty();
        }
        String wanted = plain(request.riverName().get());
        RiverMap.Reach reach = map.reach(hit.line());
        if (is(reach, wanted)) {
            return Optional.empty();
        }
        String text = Positions.name(request) + ": put on " + of(reach) + ", " + FarPoint.distance(hit.distance())
                + " away, but its row names the river \"" + request.riverName().get() + "\", ";
        return Optional.of(text
                + stretches
                        .nearest(at, line -> is(map.reach(line), wanted))
                        .map(other -> "of which " + of(map.reach(other.line())) + " lies "
                                + FarPoint.distance(other.distance()) + " away; move the point or correct the name")
                        .orElseGet(() -> absent(map)));
    }

    private static String absent(RiverMap map) {
        return map.reaches().stream().anyMatch(reach -> reach.name().isPresent())
                ? "and there is no river of that name in the layer; correct the name"
                : "and the reaches have no names to compare; give the layer's column of river names";
    }

    private static boolean is(RiverMap.Reach reach, String wanted) {
        return reach.name().map(RiverNames::plain).filter(wanted::equals).isPresent();
    }
}
