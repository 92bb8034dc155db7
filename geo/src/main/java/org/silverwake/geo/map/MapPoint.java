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
 * @param color of a sample's class as #rrggbb; "" for the kind's own look
 */
public record MapPoint(Kind kind, String label, double longitude, double latitude, String color) {
    /** A point in its kind's own look. */
    public MapPoint(Kind kind, String label, double longitude, double latitude) {
        this(kind, label, longitude, latitude, "");
    }

    /** Kinds of point; names are placed in this order. */
    public enum Kind {
        VILLAGE,
        INTAKE,
        FISHING,
        SITE,
        GAUGE,
        OTHER,
        /** Sites of a group together, by the mercury that they give to the river in a year: under 1 kg. */
        GROUP_SMALL,
        /** The same, 1 to 10 kg. */
        GROUP_MIDDLE,
        /** The same, 10 kg and more. */
        GROUP_LARGE,
        /** A field sample, in the color of its class. */
        SAMPLE,
        /** A field sample below the laboratory's limit. */
        SAMPLE_BELOW_LIMIT,
        /** A field sample whose limit is above the value compared with: it does not tell. */
        SAMPLE_CANNOT_TELL;

        /** Whether it is a field sample. */
        public boolean isSample() {
            return this == SAMPLE || this == SAMPLE_BELOW_LIMIT || this == SAMPLE_CANNOT_TELL;
        }
    }
}
