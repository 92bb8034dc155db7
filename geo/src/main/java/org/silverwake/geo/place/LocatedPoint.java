// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.List;
import java.util.Optional;

/**
 * Where a point lies on the network, without any reach being cut there.
 *
 * @param request what was asked
 * @param at its place; empty where it lies too far from every reach, or has no position
 * @param refusal why it has no place, or ""
 * @param warnings one line each
 */
public record LocatedPoint(PointRequest request, Optional<OnReach> at, String refusal, List<String> warnings) {
    /** Copies the list. */
    public LocatedPoint {
        warnings = List.copyOf(warnings);
    }

    /**
     * A place on a reach.
     *
     * @param longitude the point as given, WGS 84 degrees
     * @param latitude the point as given, WGS 84 degrees
     * @param distanceMeters from the point to the line, geodesic [m]
     * @param featureId the user's feature it lies on
     * @param chainageMeters along the parent feature's part in flow direction, geodesic [m]
     * @param reach index of the reach in the map
     * @param reachMeters along the reach from its head, geodesic [m]
     */
    public record OnReach(
            double longitude,
            double latitude,
            double distanceMeters,
            String featureId,
            double chainageMeters,
            int reach,
            double reachMeters) {}
}
