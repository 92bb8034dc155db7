// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.BitSet;
import java.util.List;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.terrain.ElevationModel;
import org.silverwake.geo.terrain.TerrainAreas;
import org.silverwake.model.network.RiverNetwork;

/** Drainage areas from the elevation raster, where the layer has none, and what is to be said of them. */
final class RasterAreas {
    private static final int NAMED = 5;
    private static final int DIGITS = 4;
    private static final double SQUARE_KILOMETER = 1e6;

    private RasterAreas() {}

    /** The network with areas of the raster among its numbers; unchanged where every reach has one of the layer. */
    static RiverMap put(RiverMap map, ElevationModel model, List<PlacedPoint> points, List<String> warnings) {
        long lacking = map.reaches().stream().filter(RasterAreas::lacksArea).count();
        if (lacking == 0) {
            warnings.add("drainage area: every reach has one in the river layer; the raster's are not used"
                    + " (rivers.elevation.drainage-area)");
            return map;
        }
        TerrainAreas areas = TerrainAreas.of(map, model);
        warnings.add("drainage area: of " + lacking + " of " + map.reachCount() + " reaches from " + model + "; "
                + squareKilometers(areas.drained()) + " drain to the rivers, " + squareKilometers(areas.edge())
                + " of its land run off over its edge"
                + (areas.unknown() > 0
                        ? ", " + squareKilometers(areas.unknown())
                                + " without heights amid land are taken as pits, filled"
                        : ""));
        open(map, areas, points, warnings);
        return areas.map();
    }

    private static boolean lacksArea(RiverMap.Reach reach) {
        return reach.number("drainage-area").isEmpty()
                && reach.number("local-area").isEmpty();
    }

    /** Where the raster ends before the land does, areas are lower bounds, all the way down. */
    private static void open(RiverMap map, TerrainAreas areas, List<PlacedPoint> points, List<String> warnings) {
        RiverNetwork network = Basin.network(map);
        BitSet open = new BitSet();
        for (int r = 0; r < network.size(); r++) {
            open.set(r, areas.isOpen(network.inputIndex(r)));
        }
        if (!open.isEmpty()) {
            List<String> names = open.stream().mapToObj(network::id).toList();
            BitSet below = network.below(open);
            List<String> at = points.stream()
                    .filter(point -> below.get(network.reachOfInput(point.headReach())))
                    .map(point -> point.request().name())
                    .distinct()
                    .toList();
            warnings.add("drainage area: land at the raster's edge drains to " + names.size() + " reaches ("
                    + first(names)
                    + "), or they leave the raster; what lies beyond is not known, so that areas of these and of"
                    + " those below, " + below.cardinality() + " of " + map.reachCount()
                    + ", may be too small and their discharge wrong"
                    + (at.isEmpty() ? "; none of the scenario's points lies there" : "; there lie " + first(at))
                    + "; give a raster that covers the basin up to its divides");
        }
    }

    private static String first(List<String> names) {
        return String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
                + (names.size() > NAMED ? ", ..." : "");
    }

    private static String squareKilometers(double area) {
        return Numbers.shown(area / SQUARE_KILOMETER, DIGITS) + " km2";
    }
}
