// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.place.WaterPolygons;

/**
 * The surface of a still water or wetland, drawn in the look of a reach that runs through it.
 *
 * @param shape polygon, WGS 84, longitude first [degrees]
 * @param reach index of the reach in the map
 */
public record WaterShape(Geometry shape, int reach) {
    /** The surface of a polygon. */
    public static WaterShape of(WaterPolygons.Polygon polygon, int reach) {
        return new WaterShape(polygon.shape(), reach);
    }
}
