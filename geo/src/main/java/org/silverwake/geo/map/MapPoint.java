// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

/**
 * A point shown on a map.
 *
 * @param kind what it is
 * @param label its name
 * @param longitude WGS 84 degrees
 * @param latitude WGS 84 degrees
 */
public record MapPoint(Kind kind, String label, double longitude, double latitude) {
    /** Kinds of point; names are placed in this order. */
    public enum Kind {
        VILLAGE,
        INTAKE,
        FISHING,
        SITE,
        GAUGE,
        OTHER
    }
}
