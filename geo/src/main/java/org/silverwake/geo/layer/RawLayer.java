// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.crs.LayerCrs;

/**
 * A layer as a reader found it: coordinates still in the file's system, ids not chosen yet.
 *
 * @param name the layer's name
 * @param columns column names in file order, without the geometry
 * @param system the code or well-known text of the system that the file states, if it does
 * @param assumed the system its format prescribes where the file states none and the user gives none
 * @param features in file order
 * @param warnings what had to be passed over, one line each
 */
record RawLayer(
        String name,
        List<String> columns,
        Optional<String> system,
        Optional<LayerCrs> assumed,
        List<Feature> features,
        List<String> warnings) {

    RawLayer {
        columns = List.copyOf(columns);
        features = List.copyOf(features);
        warnings = List.copyOf(warnings);
    }

    /**
     * One feature.
     *
     * @param fileId the id the file itself gives, if it does
     * @param attributes values by column, absent where null
     * @param geometry in the file's system, null for a null shape
     */
    record Feature(Optional<String> fileId, Map<String, Object> attributes, Geometry geometry) {
        Feature {
            attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
        }
    }
}
