// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.List;
import org.silverwake.geo.assembly.RiverMap;

/**
 * The network cut at every point, and the points on it, in the order asked.
 *
 * @param map the cut network
 * @param points the points
 * @param warnings one line each
 */
public record Placement(RiverMap map, List<PlacedPoint> points, List<String> warnings) {
    /** Copies the lists. */
    public Placement {
        points = List.copyOf(points);
        warnings = List.copyOf(warnings);
    }
}
