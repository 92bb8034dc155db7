// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;

/**
 * One feature as its file holds it.
 *
 * @param id the feature's id: the user's id column, else the file's own id, else its place in the file from 1
 * @param attributes values by column name, in file order: Long, Double, String, Boolean or LocalDate; absent where null
 * @param geometry in WGS 84, x = longitude, y = latitude, degrees; null for a null shape
 */
public record LayerFeature(String id, Map<String, Object> attributes, Geometry geometry) {
    /** Copies the attributes. */
    public LayerFeature {
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
    }
}
