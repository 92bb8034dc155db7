// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.ElevationSource;
import org.silverwake.geo.assembly.RiverMap;

/** Heights of reach ends from a raster, as the numbers elevation-upper and elevation-lower [m], where the layer gave none. */
public final class ReachElevations {
    /** Key of the height at a reach's head [m]. */
    public static final String UPPER = "elevation-upper";
    /** Key of the height at a reach's end [m]. */
    public static final String LOWER = "elevation-lower";

    private ReachElevations() {}

    /** The same network with heights. */
    public static RiverMap sample(RiverMap map, ElevationSource source) {
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (RiverMap.Reach reach : map.reaches()) {
            Map<String, Double> numbers = new HashMap<>(reach.numbers());
            if (!numbers.containsKey(UPPER) && !numbers.containsKey(LOWER)) {
                put(numbers, UPPER, source, reach.line().getCoordinateN(0));
                put(
                        numbers,
                        LOWER,
                        source,
                        reach.line().getCoordinateN(reach.line().getNumPoints() - 1));
            }
            reaches.add(new RiverMap.Reach(
                    reach.id(),
                    reach.part(),
                    reach.fromNode(),
                    reach.toNode(),
                    reach.lengthMeters(),
                    reach.line(),
                    reach.name(),
                    numbers,
                    reach.texts()));
        }
        return new RiverMap(reaches, map.nodeCount(), map.defects());
    }

    private static void put(Map<String, Double> numbers, String key, ElevationSource source, Coordinate at) {
        OptionalDouble height = source.elevation(at.x, at.y);
        if (height.isPresent()) {
            numbers.put(key, height.getAsDouble());
        }
    }
}
