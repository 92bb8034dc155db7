// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.ElevationSource;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/** Ground heights at the ends of reaches. */
public final class ReachHeights {
    /** Key of the height at the upstream end [m]. */
    public static final String UPPER = "dem-elevation-upper";

    /** Key of the height at the downstream end [m]. */
    public static final String LOWER = "dem-elevation-lower";

    private ReachHeights() {}

    /** The same network with the heights of each reach's ends among its numbers [m]; where there is none, none is put. */
    public static RiverMap sample(RiverMap map, ElevationSource source) {
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (RiverMap.Reach r : map.reaches()) {
            Map<String, Double> numbers = new HashMap<>(r.numbers());
            put(numbers, UPPER, r.line().getCoordinateN(0), source);
            put(numbers, LOWER, r.line().getCoordinateN(r.line().getNumPoints() - 1), source);
            reaches.add(new RiverMap.Reach(
                    r.id(),
                    r.part(),
                    r.fromNode(),
                    r.toNode(),
                    r.lengthMeters(),
                    r.line(),
                    r.name(),
                    numbers,
                    r.texts()));
        }
        return new RiverMap(reaches, map.nodeCount(), map.defects());
    }

    /** Whether there is a height anywhere at the vertices of a layer's lines; true where it has none, which is another matter. */
    public static boolean reach(VectorLayer layer, ElevationSource source) {
        boolean empty = true;
        for (LayerFeature feature : layer.features()) {
            if (feature.geometry() != null) {
                for (Coordinate at : feature.geometry().getCoordinates()) {
                    empty = false;
                    if (source.elevation(at.x, at.y).isPresent()) {
                        return true;
                    }
                }
            }
        }
        return empty;
    }

    private static void put(Map<String, Double> numbers, String key, Coordinate at, ElevationSource source) {
        numbers.remove(key);
        source.elevation(at.x, at.y).ifPresent(height -> numbers.put(key, height));
    }
}
