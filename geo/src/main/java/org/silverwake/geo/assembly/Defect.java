// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import org.silverwake.geo.crs.Geodesy;

/**
 * Something wrong, or repaired, in a river layer.
 *
 * @param kind what it is
 * @param longitude where, WGS 84 degrees, brought to -180 to 180
 * @param latitude where, WGS 84 degrees
 * @param featureIds the user's features concerned
 * @param text what was found, in one line with numbers and units
 * @param remedy what to do, in one line; for a repair, what was done
 * @param repaired whether the program mended it
 * @param settled whether the user has accepted or refused it already, so that nothing is left to ask
 */
public record Defect(
        Kind kind,
        double longitude,
        double latitude,
        List<String> featureIds,
        String text,
        String remedy,
        boolean repaired,
        boolean settled) {
    /** Copies the list and wraps the longitude. */
    public Defect {
        longitude = Geodesy.wrap(longitude);
        featureIds = List.copyOf(featureIds);
    }

    /** One that the user has said nothing about. */
    public Defect(
            Kind kind,
            double longitude,
            double latitude,
            List<String> featureIds,
            String text,
            String remedy,
            boolean repaired) {
        this(kind, longitude, latitude, featureIds, text, remedy, repaired, false);
    }

    /** Kinds of defect, in the order in which they are listed. */
    public enum Kind {
        NULL_SHAPE,
        NOT_A_LINE,
        ONE_POINT_LINE,
        REPEATED_POINT,
        ZERO_LENGTH,
        DUPLICATE_LINE,
        DUPLICATE_ID,
        GAP,
        SPLIT_AT_JUNCTION,
        CROSSING_WITHOUT_NODE,
        FLIPPED_LINE,
        LAYER_REVERSED,
        ISOLATED_PART,
        LOOP,
        CYCLE,
        UPHILL_REACH,
        ROUGHNESS_OUT_OF_RANGE
    }
}
