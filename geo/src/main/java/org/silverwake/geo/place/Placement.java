// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.List;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;

/**
 * The network cut at every point, and the points on it, in the order asked.
 *
 * @param map the cut network
 * @param points the points
 * @param unplaced points that found no place on it, with the reason
 * @param warnings one line each
 */
public record Placement(RiverMap map, List<PlacedPoint> points, List<UnplacedPoint> unplaced, List<String> warnings) {
    /** Copies the lists. */
    public Placement {
        points = List.copyOf(points);
        unplaced = List.copyOf(unplaced);
        warnings = List.copyOf(warnings);
    }

    /**
     * Goes on only if every point has its place.
     *
     * @throws GeoDataException with one line for each point that has none
     */
    public void requireAll() {
        if (!unplaced.isEmpty()) {
            throw new GeoDataException(String.join(
                    "\n", unplaced.stream().map(UnplacedPoint::reason).toList()));
        }
    }
}
