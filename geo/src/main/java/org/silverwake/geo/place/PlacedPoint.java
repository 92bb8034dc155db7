// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

/**
 * A point on the network. Reaches are cut there, so it sits at the head of a reach.
 *
 * @param request what was asked
 * @param longitude the point as given, WGS 84 degrees
 * @param latitude the point as given, WGS 84 degrees
 * @param snappedLongitude its place on the line, WGS 84 degrees
 * @param snappedLatitude its place on the line, WGS 84 degrees
 * @param distanceMeters from the point to the line, geodesic [m]
 * @param featureId the user's feature it lies on
 * @param chainageMeters along the parent feature's part in flow direction, from its upstream end, geodesic [m]
 * @param headReach index in the cut map of the reach that begins at the point
 */
public record PlacedPoint(
        PointRequest request,
        double longitude,
        double latitude,
        double snappedLongitude,
        double snappedLatitude,
        double distanceMeters,
        String featureId,
        double chainageMeters,
        int headReach) {}
